// Mutation testing: small faults put into the sources one at a time; a fault that no test notices is printed and counted.
// node tests/proof/mutation.mjs [part ...]       parts as named below and last committed; the score of each is kept
// in tests/proof/figures/.
// node tests/proof/mutation.mjs --file src/recipes/rails/beam.ts   one file of a part as it stands, printed and not kept.
// What only draws (a recipe's chart) is tried and told apart; files of pictures are left out.
// A survivor that cannot be noticed, since it changes no answer, is explained in tests/proof/surviving-mutants/<part>.json:
// [{ "file", "line": the source line's text, "was" (needed only where one line has several alike) and "becomes": the
// piece that is replaced and its replacement as printed in brackets, "why" }].
// Stryker's instrumenter makes the faults (mutation/copy.mjs); it is fetched when first wanted and is no dependency of the package.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { copyTree, putFaults, root } from './mutation/copy.mjs';
import { drive } from './mutation/drive.mjs';
import { keep } from './mutation/figures.mjs';

/** A topic of recipes: its files, and every test that has its name. */
const topic = (name, tests = []) => ({
  mutate: [`src/recipes/${name}/**/*.ts`, `!src/recipes/${name}/**/*drawing*.ts`],
  tests: [
    ...['published', 'properties', 'fuzz', 'recipes'].map((f) => `tests/${f}/${name}*.test.ts`),
    `tests/recipes/${name}/**/*.test.ts`,
    ...tests,
  ],
});
/** What is changed, and the tests that ought to notice. */
const parts = {
  quantities: {
    mutate: ['src/units/*.ts', '!src/units/unit.ts'],
    tests: [
      'tests/units/*.test.ts',
      'tests/properties/quantities.test.ts',
      'tests/engine/formula.test.ts',
      'tests/engine/without-compiled-code.test.ts',
    ],
  },
  units: {
    mutate: ['src/units/unit.ts'],
    tests: ['tests/units/units.test.ts', 'tests/units/parse.test.ts'],
  },
  moisture: topic('moisture'),
  stock: topic('stock'),
  lamination: topic('lamination'),
  joinery: topic('joinery'),
  rails: topic('rails'),
  finish: topic('finish'),
  machining: topic('machining'),
  bill: topic('bill'),
};

const args = process.argv.slice(2);
const only = args[0] === '--file' ? args.slice(1) : [];
const wanted = only.length > 0 ? [] : args;
for (const [name, part] of Object.entries(parts)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  const began = Date.now();
  const folder = join(root, '.cache', `faults-${name}${only.length > 0 ? '-file' : ''}`);
  if (only.length > 0 && !only.some((f) => isNamed(f, part.mutate))) continue;
  copyTree(folder, only.length === 0);
  const all = ['src', 'tests']
    .flatMap((room) => readdirSync(join(folder, room), { recursive: true }).map((f) => `${room}/${f}`))
    .filter((f) => f.endsWith('.ts'))
    .sort();
  const files = all.filter((f) => isNamed(f, part.mutate) && (only.length === 0 || only.includes(f)));
  const { faults, aside } = await putFaults(folder, files);
  const tests = all.filter((f) => isNamed(f, part.tests)).sort((a, b) => slowness(a) - slowness(b));
  const seen = await drive(folder, faults, tests, (line) =>
    console.error(`${name} ${Math.round((Date.now() - began) / 1000)} s: ${line}`),
  );
  for (const b of seen.broken) console.error(`fails without any fault: ${b.test}: ${b.label}`);
  keep(name, part, faults, aside, seen, only.length > 0);
}

/** Whether the patterns name the file, and none with a leading ! takes it away. */
function isNamed(file, patterns) {
  return (
    patterns.some((p) => !p.startsWith('!') && matchesGlob(file, p)) &&
    !patterns.some((p) => p.startsWith('!') && matchesGlob(file, p.slice(1)))
  );
}

/** Tests of one recipe notice most; laws and malformed inputs take their time and come last. */
function slowness(file) {
  return ['tests/published', 'tests/properties', 'tests/fuzz'].findIndex((f) => file.startsWith(f));
}

/** `*` and `**` of the parts above; a leading ! is another matter and matches nothing. */
function matchesGlob(path, glob) {
  const pattern = glob
    .split('**/')
    .map((piece) => piece.replace(/[.+^${}()|[\]\\]/g, '\\$&').replaceAll('*', '[^/]*'))
    .join('(?:.*/)?');
  return new RegExp(`^${pattern}$`).test(path);
}
