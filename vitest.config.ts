import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    setupFiles: ['test/fixed-seed.ts'],
    // A test that needs a document says so at its top: `// @vitest-environment happy-dom`.
    environment: 'node',
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
