// npm test: installs, builds, then runs the checks in two lanes side by side (format, lint and types; the tests that need Node
// alone, but for those that start processes of their own: `npm run test:processes`) and closes with a line for each and the
// count. Arguments go to vitest, and then nothing else runs.
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildIfNeeded, install, root } from './prepare.mjs';

const script = (...path) => join(root, 'node_modules', ...path);

/** Runs one script with Node; what it prints is shown at its end when it fails, or at once with `live`. */
function run(name, args, { live = false } = {}) {
  const began = Date.now();
  return new Promise((resolve) => {
    const child = spawn(process.execPath, args, {
      cwd: root,
      stdio: live ? 'inherit' : ['ignore', 'pipe', 'pipe'],
    });
    let text = '';
    child.stdout?.on('data', (part) => (text += part));
    child.stderr?.on('data', (part) => (text += part));
    child.on('close', (code) => {
      const seconds = Math.round((Date.now() - began) / 1000);
      resolve({ name, code: code ?? 1, text, seconds });
    });
  });
}

/** Both make and drop many small objects: with more room for them, lint takes a fifth less time. */
const youngSpace = '--max-semi-space-size=64';
const checks = [
  ['format', [youngSpace, script('prettier', 'bin', 'prettier.cjs'), '--check', '--log-level=warn', '.']],
  ['lint', [youngSpace, script('eslint', 'bin', 'eslint.js'), '.']],
  ['types', [script('typescript-native', 'bin', 'tsc'), '--noEmit', '-p', 'tsconfig.json']],
];

async function checksInTurn() {
  const results = [];
  for (const [name, args] of checks) results.push(await run(name, args));
  return results;
}

async function tests(args) {
  const folder = mkdtempSync(join(tmpdir(), 'reckoner-test-'));
  const report = join(folder, 'report.json');
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const result = await run('tests', [script('vitest', 'vitest.mjs'), 'run', ...reporters, ...args], {
    live: true,
  });
  let counts = { numPassedTests: 0, numFailedTests: 1 };
  try {
    counts = JSON.parse(readFileSync(report, 'utf8'));
  } catch {
    // Vitest ended before it could write; its exit code says so.
  }
  rmSync(folder, { recursive: true, force: true });
  return { ...result, passed: counts.numPassedTests, failed: counts.numFailedTests };
}

install({ tests: true });
await buildIfNeeded();
const chosen = process.argv.slice(2);
const [tested, checked] = await Promise.all([
  tests(chosen.length > 0 ? chosen : ['--project', '!processes']),
  chosen.length > 0 ? [] : checksInTurn(),
]);
for (const { code, text } of checked) if (code !== 0) process.stdout.write(`\n${text}`);
for (const { name, code, seconds } of [...checked, tested])
  console.log(`${name.padEnd(6)} ${code === 0 ? 'ok' : 'FAILED'} (${seconds} s)`);
const failed = tested.failed + checked.filter(({ code }) => code !== 0).length;
const crashed = tested.code !== 0 && failed === 0 ? 1 : 0;
console.log(`${tested.passed} passed, ${failed + crashed} failed`);
process.exit(failed + crashed > 0 ? 1 : 0);
