import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/jupyter/**', 'tests/browser/**', 'node_modules/**'],
    setupFiles: ['tests/setup.ts'],
    testTimeout: 30_000,
    pool: 'threads',
    coverage: { include: ['src/**/*.ts'] },
  },
});
