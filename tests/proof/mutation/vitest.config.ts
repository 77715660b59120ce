// One test file of the copy with faults; see drive.mjs, which sets what is read here.
import { join } from 'node:path';
import { defineConfig } from 'vitest/config';

const here = import.meta.dirname;
const folder = process.env['FAULTS_FOLDER'] as string;

export default defineConfig({
  root: folder,
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['node_modules/**'],
    setupFiles: [join(folder, 'tests/setup.ts'), join(here, 'setup.ts')],
    runner: join(here, 'runner.mjs'),
    testTimeout: 120_000,
    hookTimeout: 120_000,
    teardownTimeout: 500,
    pool: 'forks',
    maxWorkers: 1,
    isolate: true,
    fileParallelism: false,
    bail: process.env['FAULTS_ONE'] ? 1 : 0,
    reporters: [process.env['FAULTS_TALK'] ? 'default' : 'dot'],
  },
});
