// Mutation testing: small faults put into the sources one at a time; a fault that no test notices is printed and counted.
// node tests/proof/mutation.mjs [part ...]       parts as named below; the score of each is kept in tests/proof/figures/.
// node tests/proof/mutation.mjs --file src/recipes/rails/beam.ts   one file of a part, printed and not kept.
// A survivor that cannot be noticed, since it changes no answer, is explained in tests/proof/survivors/<part>.json:
// [{ "file", "line": the source line's text, "becomes": the replacement as printed, "why" }].
// Stryker is about 64 MB with what it needs, so it is fetched when first wanted and is no dependency of the package.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const tool = join(root, 'node_modules/.cache/mutation');
const version = '9.6.1';
/** A topic of recipes: its files, and every test that bears its name. */
const topic = (name, tests = []) => ({
  mutate: [`src/recipes/${name}/**/*.ts`, `!src/recipes/${name}/**/*picture*.ts`],
  tests: [
    `tests/{published,laws,hostile,recipes}/${name}*.test.ts`,
    `tests/recipes/${name}/**/*.test.ts`,
    ...tests,
  ],
});
/** What is changed, and the tests that ought to notice. */
const parts = {
  quantities: {
    mutate: ['parse', 'format', 'quantity', 'refusal', 'algebra', 'kind'].map((f) => `src/quantities/${f}.ts`),
    tests: ['tests/quantities/*.test.ts', 'tests/laws/quantities.test.ts'],
  },
  units: { mutate: ['src/quantities/unit.ts'], tests: ['tests/quantities/*.test.ts'], statics: true },
  moisture: topic('moisture'),
  stock: topic('stock'),
  lamination: topic('lamination'),
  joinery: topic('joinery'),
  rails: topic('rails'),
  finish: topic('finish'),
  machining: topic('machining'),
  bill: topic('bill'),
};
// Words shown to people, and lists of fields, are looked at by other tests; here the reckoning is tried.
const excluded = ['StringLiteral', 'ObjectLiteral', 'ArrayDeclaration', 'ArrowFunction', 'BlockStatement'];

if (!existsSync(join(tool, 'node_modules/@stryker-mutator/vitest-runner/package.json'))) {
  mkdirSync(tool, { recursive: true });
  writeFileSync(join(tool, 'package.json'), '{ "private": true }\n');
  const got = spawnSync(
    'npm',
    [
      'install',
      '--legacy-peer-deps',
      '--no-audit',
      '--no-fund',
      `@stryker-mutator/core@${version}`,
      `@stryker-mutator/vitest-runner@${version}`,
    ],
    { cwd: tool, stdio: 'inherit' },
  );
  if (got.status !== 0) process.exit(1);
}

const args = process.argv.slice(2);
const only = args[0] === '--file' ? args.slice(1) : [];
const wanted = only.length > 0 ? [] : args;
for (const [name, part] of Object.entries(parts)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  const mutate = only.length > 0 ? only.filter((f) => part.mutate.some((g) => matchesGlob(f, g))) : part.mutate;
  if (mutate.length === 0) continue;
  const folder = join(tool, name);
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const report = join(folder, 'mutation.json');
  const config = {
    testRunner: 'vitest',
    plugins: [join(tool, 'node_modules/@stryker-mutator/vitest-runner/dist/src/index.js')],
    vitest: { configFile: 'tests/proof/mutation.vitest.config.ts', related: false },
    mutate,
    mutator: { excludedMutations: excluded },
    ignoreStatic: !part.statics,
    ignorePatterns: [
      'dist',
      'notebooks',
      'coverage',
      'tests/browser',
      'tests/jupyter',
      'tests/bench',
      '.cache',
    ],
    coverageAnalysis: 'perTest',
    reporters: ['json', 'progress-append-only'],
    jsonReporter: { fileName: report },
    tempDirName: `.cache/mutation-${name}`,
    concurrency: Math.max(1, cpus().length),
    timeoutMS: 15000,
    checkers: [],
    disableTypeChecks: false,
    allowEmpty: true,
  };
  const file = join(folder, 'stryker.json');
  writeFileSync(file, JSON.stringify(config, null, 2));
  const run = spawnSync(
    process.execPath,
    [join(tool, 'node_modules/@stryker-mutator/core/bin/stryker.js'), 'run', file],
    {
      cwd: root,
      stdio: 'inherit',
      env: {
        ...process.env,
        HOSTILE_RUNS: '300',
        RECKONER_HOSTILE: '500',
        MUTATION_TESTS: JSON.stringify(part.tests),
      },
    },
  );
  if (!existsSync(report)) process.exit(run.status ?? 1);
  keep(name, part, report);
}

/** `*` and `**` of the parts above; a leading ! is another matter and matches nothing. */
function matchesGlob(path, glob) {
  const pattern = glob
    .split('**/')
    .map((piece) => piece.replace(/[.+^${}()|[\]\\]/g, '\\$&').replaceAll('*', '[^/]*'))
    .join('(?:.*/)?');
  return new RegExp(`^${pattern}$`).test(path);
}

/** Counts of a run, and every survivor by place, for the table of the proof. */
function keep(name, part, report) {
  const { files } = JSON.parse(readFileSync(report, 'utf8'));
  const count = {};
  const survivors = [];
  const explained = [];
  const told = join(root, 'tests/proof/survivors', `${name}.json`);
  const reasons = existsSync(told) ? JSON.parse(readFileSync(told, 'utf8')) : [];
  for (const [path, { mutants, source }] of Object.entries(files)) {
    const lines = source.split('\n');
    for (const m of mutants) {
      count[m.status] = (count[m.status] ?? 0) + 1;
      if (m.status !== 'Survived' && m.status !== 'NoCoverage') continue;
      const line = lines[m.location.start.line - 1].trim();
      const becomes = m.replacement.replace(/\s+/g, ' ');
      const reason = reasons.find((r) => r.file === path && r.line === line && r.becomes === becomes);
      const place = `${path}:${m.location.start.line}`;
      if (reason) explained.push({ place, line, becomes, why: reason.why });
      else
        survivors.push(
          `${place} ${m.mutatorName}${m.status === 'NoCoverage' ? ' (no test comes here)' : ''}: ${line} -> ${becomes}`,
        );
    }
  }
  const { Killed = 0, Timeout = 0, Survived = 0, NoCoverage = 0, Ignored = 0 } = count;
  const tried = Killed + Timeout + Survived + NoCoverage;
  const figures = {
    date: new Date().toISOString().slice(0, 10),
    machine: `${cpus().length} cores, ${cpus()[0]?.model.trim()}, Node ${process.versions.node}`,
    files: part.mutate,
    tried,
    killed: Killed,
    timeouts: Timeout,
    survived: Survived,
    noTestComesThere: NoCoverage,
    leftAside: Ignored,
    score: tried === 0 ? 0 : Number((((Killed + Timeout) / tried) * 100).toFixed(1)),
    explained,
    survivors,
  };
  if (only.length > 0) {
    for (const s of survivors) console.log(s);
    console.log(`${figures.score} % of ${tried} noticed, ${explained.length} explained, ${survivors.length} left`);
    return;
  }
  const kept = join(root, 'tests/proof/figures', `mutation-${name}.json`);
  writeFileSync(`${kept}.new`, `${JSON.stringify(figures, null, 2)}\n`);
  renameSync(`${kept}.new`, kept);
  console.log(
    `${name}: ${figures.score} % of ${tried} noticed (${Timeout} by running out of time), ${Survived} lived, ${NoCoverage} where no test comes; ${explained.length} explained`,
  );
}
