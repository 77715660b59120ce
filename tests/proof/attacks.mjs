// The attacks that were tried on the server, the page and the files, and whether each held: every row is a test that runs now.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from '../../src/launch/prepare.mjs';

/**
 * Rows `{ tried, held }`, by the tests named in attacks.json: of a `file` for vitest, or those of the browser suite. A row whose test
 * is not found did not hold.
 */
export function attacks() {
  const rows = JSON.parse(readFileSync(new URL('attacks.json', import.meta.url), 'utf8'));
  const results = [
    ...vitestResults([...new Set(rows.flatMap(({ file }) => file ?? []))]),
    ...browserResults(rows.filter(({ file }) => file === undefined).map(({ test }) => test)),
  ];
  return rows.map(({ tried, file = '', test }) => {
    const found = results.filter(
      (result) =>
        (file === '' ? result.file === '' : result.file.endsWith(file)) && result.name.includes(test),
    );
    return { tried, held: found.length > 0 && found.every(({ passed }) => passed) };
  });
}

function vitestResults(files) {
  const folder = mkdtempSync(join(tmpdir(), 'reckoner-attacks-'));
  const report = join(folder, 'report.json');
  const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs');
  spawnSync(process.execPath, [vitest, 'run', '--reporter=json', `--outputFile=${report}`, ...files], {
    cwd: root,
  });
  const results = resultsOf(report);
  rmSync(folder, { recursive: true, force: true });
  return results;
}

/** The browser suite prints a line for each test: `ok` or `FAIL`, its name, its seconds. */
function browserResults(tests) {
  const script = join(root, 'tests', 'browser', 'run.mjs');
  const pattern = tests.map((test) => test.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('|');
  const { stdout } = spawnSync(process.execPath, [script, pattern], { cwd: root, encoding: 'utf8' });
  return [...stdout.matchAll(/^ {2}(ok {4}|FAIL {2})(.*)$/gm)].map(([, word, name]) => ({
    file: '',
    name,
    passed: word.startsWith('ok'),
  }));
}

function resultsOf(report) {
  try {
    return JSON.parse(readFileSync(report, 'utf8')).testResults.flatMap((file) =>
      file.assertionResults.map(({ fullName, status }) => ({
        file: file.name,
        name: fullName,
        passed: status === 'passed',
      })),
    );
  } catch {
    return [];
  }
}

/** Prints a line for each attack and one that counts them; true when all were held off. */
export function printAttacks() {
  const rows = attacks();
  for (const { tried, held } of rows) console.log(`${held ? 'held  ' : 'FAILED'}  ${tried}`);
  const held = rows.filter((row) => row.held).length;
  console.log(`${rows.length} tried, ${held} held, each by a test that ran just now`);
  return held === rows.length;
}
