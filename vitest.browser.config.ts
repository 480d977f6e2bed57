import { defineConfig } from 'vitest/config';

const conditions = ['source', 'module', 'node', 'development|production'];

// A real browser, the real server, the page built from the sources: see web/test/browser/support. The set-up that
// starts the server runs in an environment of its own, which would read the last build if it were not told.
export default defineConfig({
  ssr: { resolve: { conditions } },
  resolve: { conditions },
  environments: { __vitest__: { resolve: { conditions } } },
  test: {
    include: ['web/test/browser/**/*.test.ts'],
    globalSetup: ['web/test/browser/support/serve-demo.ts'],
    testTimeout: 120_000,
    hookTimeout: 120_000,
    // Two at a time, each with a browser of its own: what is timed is timed against the same machine in the same run.
    maxWorkers: 2,
  },
});
