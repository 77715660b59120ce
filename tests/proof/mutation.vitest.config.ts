// The tests of one part, for mutation.mjs, which names them.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: JSON.parse(process.env['MUTATION_TESTS'] ?? '[]') as string[],
    testTimeout: 30_000,
    pool: 'threads',
  },
});
