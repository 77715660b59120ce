import { readFileSync, readdirSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

const files = readdirSync('tests', { recursive: true, encoding: 'utf8' })
  .map((path) => `tests/${path.replaceAll('\\', '/')}`)
  .filter((path) => path.endsWith('.test.ts') && !/^tests\/(jupyter|browser)\//.test(path));

/** Files that start servers, kernels and commands as processes of their own and kill them, storm them or wait for seconds: `npm run test:processes`. */
const processes = files.filter(
  (path) =>
    readFileSync(path, 'utf8').includes("'node:child_process'") ||
    /^tests\/(server\/abort-storm|kernel\/progress)\.test\.ts$/.test(path),
);

/** Files that replace a module or something global, or run kernels, load all modules for themselves. */
const changesGlobals =
  /\bvi\.(mock|doMock|stubGlobal|resetModules|useFakeTimers)\b|\(globalThis\b|\bdelete process\.env\[/;
const isolated = files.filter(
  (path) =>
    !processes.includes(path) &&
    (/^tests\/kernel\/|^tests\/server\/kernels/.test(path) ||
      changesGlobals.test(readFileSync(path, 'utf8'))),
);
const shared = files.filter((path) => !isolated.includes(path) && !processes.includes(path));

export default defineConfig({
  test: {
    setupFiles: ['tests/setup.ts'],
    testTimeout: 30_000,
    pool: 'threads',
    // One for each core; by itself a run leaves one idle. The checks of the other lane end long before the tests.
    maxWorkers: availableParallelism(),
    coverage: { include: ['src/**/*.ts'] },
    projects: [
      // Modules are loaded once a thread and shared: loading them for each file is half of the time.
      {
        extends: true,
        test: { name: 'shared', include: shared, isolate: false },
      },
      { extends: true, test: { name: 'isolated', include: isolated } },
      { extends: true, test: { name: 'processes', include: processes } },
    ],
  },
});
