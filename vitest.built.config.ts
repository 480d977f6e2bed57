import { defineConfig } from 'vitest/config';

// Tests that start the built programs as a person does: they need `npm run build` first.
export default defineConfig({
  test: {
    include: ['*/test/**/*.built.ts'],
    exclude: ['**/node_modules/**'],
    // Vitest by itself leaves a core free for somebody who types.
    maxWorkers: 2,
    testTimeout: 60_000,
  },
});
