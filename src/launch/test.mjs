// npm test: installs, builds, runs every test that needs Node alone, and closes with a count.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildIfNeeded, install, root } from './prepare.mjs';

install();
await buildIfNeeded();
const folder = mkdtempSync(join(tmpdir(), 'reckoner-test-'));
const report = join(folder, 'report.json');
const run = spawnSync(
  process.execPath,
  [
    join(root, 'node_modules', 'vitest', 'vitest.mjs'),
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
    ...process.argv.slice(2),
  ],
  { cwd: root, stdio: 'inherit' },
);
try {
  const { numPassedTests: passed, numFailedTests: failed } = JSON.parse(readFileSync(report, 'utf8'));
  console.log(`${passed} passed, ${failed} failed`);
} catch {
  console.log('0 passed, 1 failed');
}
rmSync(folder, { recursive: true, force: true });
process.exit(run.status ?? 1);
