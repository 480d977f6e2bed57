import { defineConfig } from 'vitest/config';

// A real browser, the real server, the page built from the sources: see web/test/browser/support.
export default defineConfig({
  ssr: { resolve: { conditions: ['source', 'module', 'node', 'development|production'] } },
  resolve: { conditions: ['source', 'module', 'node', 'development|production'] },
  test: {
    include: ['web/test/browser/**/*.test.ts'],
    globalSetup: ['web/test/browser/support/serve-demo.ts'],
    testTimeout: 120_000,
    hookTimeout: 120_000,
    fileParallelism: false,
  },
});
