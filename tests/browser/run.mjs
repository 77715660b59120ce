// The page in real browsers: node tests/browser/run.mjs [word], or --main for the main path alone: a maker's first hour with
// notebooks and forms. BROWSER=chromium or firefox runs in that one alone; SHOTS=folder keeps pictures. Ends with 'N passed, N failed'.
import { existsSync } from 'node:fs';
import { buildIfNeeded } from '../../src/launch/prepare.mjs';
import { openBench } from './bench.mjs';
import accessible from './accessible.mjs';
import forms from './forms.mjs';
import journeys from './journeys.mjs';
import keeping from './keeping.mjs';
import reconnecting from './reconnecting.mjs';
import showing from './showing.mjs';
import staleCells from './stale-cells.mjs';
import working from './working.mjs';

const programs = {
  chromium: process.env.CHROMIUM ?? '/usr/bin/chromium',
  firefox: process.env.FIREFOX ?? '/usr/bin/firefox-esr',
};
/** What Firefox is not asked for, by the beginning of the test's name, each with the reason. */
const onlyInChromium = {
  'results go into the build notes': 'Playwright prints to PDF in Chromium only',
  'on a phone': 'Playwright has no phone in Firefox',
  'text has the contrast': 'colours are the same in both',
  'two tabs on one notebook':
    'Firefox lets the tab in front alone be typed in, and that one reads the file anew first',
  'a tab that crashes': 'Firefox has no address that crashes a tab',
  'a cold load': 'one browser is measured',
  'the page is at most': 'needs no browser',
  'forms: figures and picture are saved': 'Firefox does not tell its driver of a file that a page makes',
};

await buildIfNeeded();
const isMain = process.argv[2] === '--main';
const word = isMain ? undefined : process.argv[2];
/** What the main path has beside editing and running. */
const mainPath = [
  'what is typed is saved by itself',
  'Ctrl + S saves',
  'a kernel that dies is reported',
  'new, copy, upload',
  'every keystroke is in the draft',
  'trusted results never leave',
  'a changed value marks',
  'the side panel finds a recipe',
  'forms: a first answer',
  'forms: an error stands',
  'forms: answers are chained',
  'accessible: an answer with the keyboard alone',
  'journey: ',
];
const all = {
  ...working,
  ...keeping,
  ...reconnecting,
  ...staleCells,
  ...showing,
  ...forms,
  ...accessible,
  ...journeys,
};
const isOnMainPath = (name) => name in working || mainPath.some((start) => name.startsWith(start));
const tests = Object.entries(all).filter(
  ([name]) => (!isMain || isOnMainPath(name)) && (word === undefined || new RegExp(word).test(name)),
);
for (const start of mainPath)
  if (!Object.keys(all).some((name) => name.startsWith(start))) throw new Error(`no test begins "${start}"`);
/** Profiles that did not tell in time that they were closed: asked again, they would hold up each test that follows. */
const notClosed = new Set();
let [passed, failed] = [0, 0];
for (const browser of process.env.BROWSER ? [process.env.BROWSER] : Object.keys(programs)) {
  if (existsSync(programs[browser])) {
    await runIn(browser);
    continue;
  }
  console.error(
    `no ${browser} at ${programs[browser]}: install Debian's package, or set ${browser.toUpperCase()}`,
  );
  failed += 1;
}
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);

async function runIn(browser) {
  const left = browser === 'chromium' ? {} : onlyInChromium;
  const isLeft = (name) => Object.keys(left).some((start) => name.startsWith(start));
  const bench = await openBench(browser);
  console.log(`${browser} ${bench.browser.version()}`);
  const chosen = tests.filter(([name]) => !isLeft(name));
  for (const [done, [name, test]] of chosen.entries()) {
    await runTest(bench, name, test);
    const reached = await endKernels(bench).then(
      () => true,
      () => false,
    );
    if (reached) continue;
    failed += Math.max(1, chosen.length - done - 1);
    console.log('  FAIL  the server is out of reach, and with it all tests that are left');
    break;
  }
  await inTime(bench.close(), 30).catch((error) =>
    console.log(`  the browser was not closed: ${error.message}`),
  );
  for (const [name, why] of Object.entries(left)) console.log(`  not here: ${name} ... (${why})`);
}

async function runTest(bench, name, test) {
  const began = Date.now();
  try {
    await inTime(test(bench), 240);
    passed += 1;
    console.log(`  ok    ${name} (${((Date.now() - began) / 1000).toFixed(1)} s)`);
  } catch (error) {
    failed += 1;
    const lines = String(error?.message ?? error).split('\n');
    console.log(`  FAIL  ${name}\n        ${lines.slice(0, 12).join('\n        ')}`);
  }
  await closeProfiles(bench);
}

/** A page on its way to another address may never tell that it is closed; the next test has a profile of its own. */
async function closeProfiles({ browser }) {
  const open = browser.contexts().filter((context) => !notClosed.has(context));
  try {
    await inTime(Promise.all(open.map((context) => context.close())), 30);
  } catch (error) {
    for (const context of open) notClosed.add(context);
    console.log(`        its pages were not closed: ${error.message}`);
  }
}

/** @throws Error where the work takes longer than these seconds */
async function inTime(work, seconds) {
  let late;
  const limit = new Promise((_, reject) => {
    late = setTimeout(() => reject(new Error(`took longer than ${seconds} s`)), seconds * 1000);
  });
  return Promise.race([work, limit]).finally(() => clearTimeout(late));
}

/** Kernels stay when a page is closed; the next test starts with none. */
async function endKernels({ address: origin, key }) {
  const headers = { Authorization: `token ${key}` };
  for (const { id } of await (await fetch(`${origin}/api/sessions`, { headers })).json())
    await fetch(`${origin}/api/sessions/${id}`, { method: 'DELETE', headers });
}
