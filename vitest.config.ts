import { readFileSync, readdirSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

const files = readdirSync('tests', { recursive: true, encoding: 'utf8' })
  .map((path) => `tests/${path.replaceAll('\\', '/')}`)
  .filter((path) => path.endsWith('.test.ts') && !/^tests\/(jupyter|browser)\//.test(path));

/** Files that replace a module or something global, or start kernels and servers, load all modules for themselves. */
const changesGlobals =
  /\bvi\.(mock|doMock|stubGlobal|resetModules|useFakeTimers)\b|\bglobalThis\b|\bprocess\.env\[/;
const isolated = files.filter(
  (path) => /^tests\/(kernel|server)\//.test(path) || changesGlobals.test(readFileSync(path, 'utf8')),
);

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
        test: { name: 'shared', include: files.filter((path) => !isolated.includes(path)), isolate: false },
      },
      { extends: true, test: { name: 'isolated', include: isolated } },
    ],
  },
});
