import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// Tests that need a browser: npx vitest run --config tests/browser/vitest.config.ts
export default defineConfig({
  test: {
    root: fileURLToPath(new URL('../..', import.meta.url)),
    include: ['tests/browser/**/*.test.ts'],
    testTimeout: 90_000,
    hookTimeout: 90_000,
    pool: 'threads',
    fileParallelism: false,
  },
});
