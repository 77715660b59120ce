// The page in a real browser: node tests/browser/run.mjs [word]. SHOTS=folder keeps pictures. Ends with 'N passed, N failed'.
import { existsSync } from 'node:fs';
import { buildIfNeeded } from '../../src/launch/prepare.mjs';
import { openBench } from './bench.mjs';
import accessible from './accessible.mjs';
import forms from './forms.mjs';
import journeys from './journeys.mjs';
import keeping from './keeping.mjs';
import showing from './showing.mjs';
import working from './working.mjs';

await buildIfNeeded();
const chromium = process.env.CHROMIUM ?? '/usr/bin/chromium';
if (!existsSync(chromium)) {
  console.error(`no browser at ${chromium}: install Debian's package chromium, or set CHROMIUM`);
  console.log('0 passed, 1 failed');
  process.exit(1);
}
const word = process.argv[2];
const tests = Object.entries({
  ...working,
  ...keeping,
  ...showing,
  ...forms,
  ...accessible,
  ...journeys,
}).filter(([name]) => word === undefined || name.includes(word));
const bench = await openBench();
let [passed, failed] = [0, 0];
for (const [name, test] of tests) {
  const began = Date.now();
  let late;
  try {
    await Promise.race([
      test(bench),
      new Promise(
        (_, reject) => (late = setTimeout(() => reject(new Error('took longer than 90 s')), 90_000)),
      ),
    ]);
    passed += 1;
    console.log(`  ok    ${name} (${((Date.now() - began) / 1000).toFixed(1)} s)`);
  } catch (error) {
    failed += 1;
    console.log(
      `  FAIL  ${name}\n        ${String(error?.message ?? error)
        .split('\n')
        .slice(0, 12)
        .join('\n        ')}`,
    );
  } finally {
    clearTimeout(late);
    await Promise.all(bench.browser.contexts().map((context) => context.close()));
  }
  const reached = await endKernels(bench).then(
    () => true,
    () => false,
  );
  if (!reached) {
    failed += Math.max(1, tests.length - passed - failed);
    console.log('  FAIL  the server is out of reach, and with it all tests that are left');
    break;
  }
}
await bench.close();
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);

/** Kernels stay when a page is closed; the next test starts with none. */
async function endKernels({ address: origin, key }) {
  const headers = { Authorization: `token ${key}` };
  for (const { id } of await (await fetch(`${origin}/api/sessions`, { headers })).json())
    await fetch(`${origin}/api/sessions/${id}`, { method: 'DELETE', headers });
}
