// npm run proof: one table of what this library's figures rest on. Published checks are calculated again each time; what takes
// long (malformed inputs by the million, mutation, the kernel's suites, benchmarks, coverage) is shown as last measured, with its date.
// `npm run proof -- --readme` puts the latest into README.md.
// `npm run proof:measure -- kernel bench coverage fuzz` measures again; `npm run proof:mutation -- units` a part of mutation.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildIfNeeded, install, root } from '../../src/launch/prepare.mjs';
import { printAttacks } from './attacks.mjs';
import { licences } from './licences.mjs';
import { rowsOf, writeReadme } from './readme.mjs';

install({ tests: true });
await buildIfNeeded();
const { catalogue, publishedChecks } = await import('../../dist/index.js');
const here = dirname(fileURLToPath(import.meta.url));
const line = (...cells) => console.log(cells.join('  ').trimEnd());
const title = (text) => console.log(`\n${text}\n${'-'.repeat(text.length)}`);

/** Figures kept by a long run; undefined where it was never run. */
function kept(name) {
  const file = join(here, 'figures', `${name}.json`);
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;
}
/** Day of the last commit that changed the code; figures of a day before are marked. */
const lastChange = spawnSync('git', ['log', '-1', '--format=%cs', '--', 'src'], {
  cwd: root,
  encoding: 'utf8',
});
const changed = (lastChange.stdout ?? '').trim();
const when = (f) => `(${f.date}${f.date < changed ? ', OLDER THAN THE CODE' : ''}; ${f.machine})`;

// 1. Published checks by recipe.
const { outcomes, passed, failed, recalled } = await publishedChecks();
const oracles = JSON.parse(readFileSync(join(here, 'oracles.json'), 'utf8'));
const byRecipe = new Map(catalogue.map((r) => [r.name, []]));
for (const o of outcomes) byRecipe.set(o.row.recipe, [...(byRecipe.get(o.row.recipe) ?? []), o]);
/** One unit of the last printed digit. */
const unitOfDigit = (printed) =>
  10 ** (Number(/e([-+]?\d+)$/i.exec(printed)?.[1] ?? 0) - (/\.(\d*)/.exec(printed)?.[1]?.length ?? 0));
title('Published checks, by recipe');
line(
  'recipe'.padEnd(22),
  'checks'.padStart(6),
  'recalled'.padStart(8),
  'own tolerance'.padStart(13),
  'worst, in units of the last printed digit'.padEnd(42),
  'sources',
);
const few = [];
for (const [recipe, list] of byRecipe) {
  const exact = list.filter((o) => o.difference !== undefined && o.row.tolerance === undefined);
  const worst = exact.reduce(
    (most, o) => Math.max(most, Math.abs(o.difference) / unitOfDigit(o.row.printed)),
    0,
  );
  const wide = list.filter((o) => o.row.tolerance !== undefined);
  const sources = [...new Set(list.map((o) => o.row.source))];
  const bad = list.filter((o) => !o.passes).length;
  if (list.length < 3 && catalogue.some((r) => r.name === recipe)) few.push(recipe);
  if (list.length === 0) continue;
  line(
    recipe.padEnd(22),
    String(list.length).padStart(6),
    String(list.filter((o) => o.row.read === 'memory').length).padStart(8),
    String(wide.length).padStart(13),
    (exact.length ? worst.toFixed(2) : 'none without a tolerance of its own').padEnd(42),
    sources.slice(0, 3).join(', ') + (sources.length > 3 ? ` and ${sources.length - 3} more` : ''),
    bad ? `  ${bad} DIFFER` : '',
  );
}
line(
  `${passed} of ${outcomes.length} agree, ${failed} differ; ${recalled} rest on a figure not yet verified; half a unit of the last digit is the usual tolerance, a wider one carries its reason in data/checks.`,
);

title('Attacks on server, page and files');
const allHeld = printAttacks();

title('Recipes with fewer than three published checks in the table, and what stands in their place');
for (const name of few)
  line(
    name.padEnd(22),
    oracles[name] ? `${oracles[name].reason} Instead: ${oracles[name].instead}` : 'NO REASON GIVEN',
  );

// 2. Laws and malformed inputs.
title('Laws and malformed inputs');
const textsOf = (folder) =>
  readdirSync(join(root, 'tests', folder), { recursive: true })
    .filter((f) => f.endsWith('.test.ts'))
    .map((f) => readFileSync(join(root, 'tests', folder, f), 'utf8'));
const count = (texts, what) => texts.reduce((n, t) => n + (t.match(what)?.length ?? 0), 0);
const laws = textsOf('properties');
line(
  'laws',
  `${count(laws, /\bfc\.assert\(/g)} properties, each over many random cases, in ${laws.length} files`,
);
line(
  'malformed inputs',
  `${count(textsOf('fuzz'), /^\s*it(\.each)?\(/gm)} tests in ${textsOf('fuzz').length} files`,
);
const texts = kept('fuzz-quantities');
if (texts)
  line(
    'texts for a quantity',
    `${texts.tried.toLocaleString('en')} tried, ${texts.read.toLocaleString('en')} read, the rest refused in one line; slowest ${texts.slowestMs} ms`,
    when(texts),
  );
const inputs = kept('fuzz-recipes');
if (inputs)
  line(
    'inputs for recipes',
    `${inputs.tried.toLocaleString('en')} tried over ${inputs.recipes} recipes, ${inputs.answered.toLocaleString('en')} answered, the rest refused by field; slowest ${inputs.slowestMs} ms (${inputs.slowestRecipe})`,
    when(inputs),
  );
for (const [name, what] of [
  ['fuzz-notebooks', 'corrupted notebooks'],
  ['fuzz-surveys', 'corrupted surveys'],
  ['fuzz-notes', 'corrupted notes'],
]) {
  const f = kept(name);
  if (f)
    line(
      what,
      `${f.tried.toLocaleString('en')} tried, ${f.read.toLocaleString('en')} read, ${f.refused.toLocaleString('en')} refused with a place; files untouched`,
      when(f),
    );
}

// 3. Mutation, coverage.
title('Faults put in on purpose, and how many the tests notice');
const sum = { date: '', tried: 0, noticed: 0, explained: 0, left: 0, drawn: 0, drawnNoticed: 0, aside: 0 };
for (const file of readdirSync(join(here, 'figures'))
  .filter((f) => f.startsWith('mutation-') && f.endsWith('.json'))
  .sort()) {
  const f = kept(file.slice(0, -5));
  const noticed = f.killed + f.timeouts;
  const pictures = f.pictures ?? { tried: 0, noticed: 0 };
  // Some that are explained stand in pictures, which are counted apart.
  const explained = f.tried - noticed - f.survivors.length;
  line(
    file.slice(9, -5).padEnd(12),
    `${f.score} %`.padStart(7),
    `of ${f.tried}: ${f.killed} noticed, ${f.timeouts} by running out of time, ${explained} that change no answer (explained), ${f.survivors.length} left, ${f.noTestComesThere} of them where no test comes`,
    when(f),
  );
  sum.tried += f.tried;
  if (f.date > sum.date) sum.date = f.date;
  sum.noticed += noticed;
  sum.explained += explained;
  sum.left += f.survivors.length;
  sum.drawn += pictures.tried;
  sum.drawnNoticed += pictures.noticed;
  sum.aside += f.leftAside;
}
line(
  `Together ${sum.noticed} of ${sum.tried} noticed, ${sum.explained} explained, ${sum.left} left. Counted: arithmetic, equality and order, conditions, logic, signs, assignments, and an operator, number or power of a formula's text.`,
);
line(
  `Apart: ${sum.drawnNoticed} of ${sum.drawn} noticed in what recipes draw; ${sum.aside} left aside (words, lists, objects, whole blocks, arrow functions, method calls, optional chains, patterns), and files of pictures.`,
);
const coverage = kept('coverage');
if (coverage) {
  title('Branches that the tests run through');
  for (const [room, c] of Object.entries(coverage.branches))
    line(room.padEnd(22), `${c.percent} %`.padStart(7), `${c.covered} of ${c.total}`);
  line(when(coverage));
}

// 4. The kernel, how fast, and a fresh clone.
const kernel = kept('kernel');
if (kernel) {
  title('Kernel against Jupyter’s own clients');
  line(kernel.count, when(kernel));
}
const told = [
  ['protocol', 'Kernel beside Python’s and plain tslab'],
  [
    'soak',
    'Kernel over ten thousand cells, 500 interrupts and 50 restarts, and over ten thousand cells in one life',
  ],
  ['bench', 'Benchmarks'],
];
for (const [name, heading] of told) {
  const figures = kept(name);
  if (!figures) continue;
  title(heading);
  for (const l of figures.lines) console.log(l);
  line(when(figures));
}
const fresh = kept('fresh');
if (fresh) {
  title('A fresh clone with only Node, and the package packed and installed in an empty folder');
  line(
    `npm start ${fresh.start} s until the page answers (again ${fresh.startAgain} s)`,
    `npm test ${fresh.test} s: ${fresh.counted}`,
  );
  line(
    `packed ${fresh.packedMB} MB, unpacked ${fresh.unpackedMB} MB, ${fresh.withAllItNeedsMB ? `with all it needs ${fresh.withAllItNeedsMB} MB, ` : ''}installed in ${fresh.install} s; import, command and kernel work there`,
  );
  line(when(fresh));
}

// 5. Licences.
title('Licences of what ships');
for (const [licence, names] of licences(root)) line(String(names.length).padStart(4), licence);

if (failed > 0 || !allHeld || few.some((n) => !oracles[n])) process.exitCode = 1;
if (process.argv.includes('--readme'))
  writeReadme(root, rowsOf({ passed, total: outcomes.length, recalled, mutation: sum, kept }));
