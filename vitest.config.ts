import { defineConfig } from 'vitest/config';

// Tests read the packages' sources, so a test run needs no build.
export default defineConfig({
  ssr: { resolve: { conditions: ['source', 'module', 'node', 'development|production'] } },
  resolve: { conditions: ['source', 'module', 'node', 'development|production'] },
  test: {
    include: ['*/test/**/*.test.ts', 'tools/test/**/*.test.ts'],
    exclude: ['**/node_modules/**', '**/browser/**'],
    globalSetup: ['tools/validation/book-setup.ts'],
    // Vitest by itself leaves a core free for somebody who types.
    maxWorkers: 2,
    testTimeout: Number(process.env['LW_TEST_TIMEOUT_MS'] ?? 60_000),
  },
});
