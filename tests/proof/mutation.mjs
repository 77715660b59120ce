// Mutation testing: small faults put into the sources one at a time; a fault that no test notices is printed and counted.
// node tests/proof/mutation.mjs [part ...]   parts as named below; the score of each is kept in tests/proof/figures/.
// Stryker is about 64 MB with what it needs, so it is fetched when first wanted and is no dependency of the package.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const tool = join(root, 'node_modules/.cache/mutation');
const version = '9.6.1';
/** What is changed, and the tests that ought to notice. */
const parts = {
  quantities: {
    mutate: ['parse', 'format', 'quantity', 'refusal', 'algebra'].map((f) => `src/quantities/${f}.ts`),
    tests: ['tests/quantities/*.test.ts', 'tests/laws/quantities.test.ts'],
  },
  units: { mutate: ['src/quantities/unit.ts'], tests: ['tests/quantities/*.test.ts'], statics: true },
  machining: {
    mutate: ['src/recipes/machining/*.ts'],
    tests: ['tests/*/machining*.test.ts'],
  },
  joinery: {
    mutate: ['src/recipes/joinery/*.ts'],
    tests: ['tests/*/joinery*.test.ts', 'tests/recipes/joinery/*.test.ts'],
  },
  stock: {
    mutate: ['board-measure', 'parts-cost', 'rough-to-dressed', 'grade-yield', 'flattening-loss'].map(
      (f) => `src/recipes/stock/${f}.ts`,
    ),
    tests: ['tests/published/stock*.test.ts', 'tests/laws/stock.test.ts', 'tests/hostile/stock.test.ts'],
  },
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

const wanted = process.argv.slice(2);
for (const [name, part] of Object.entries(parts)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  const folder = join(tool, name);
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const report = join(folder, 'mutation.json');
  const config = {
    testRunner: 'vitest',
    plugins: [join(tool, 'node_modules/@stryker-mutator/vitest-runner/dist/src/index.js')],
    vitest: { configFile: 'tests/proof/mutation.vitest.config.ts', related: false },
    mutate: part.mutate,
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
    reporters: ['json', 'clear-text'],
    clearTextReporter: {
      allowColor: false,
      allowEmojis: false,
      logTests: false,
      reportTests: false,
      reportScoreTable: true,
    },
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

/** Counts of a run, and every survivor by place, for the table of the proof. */
function keep(name, part, report) {
  const { files } = JSON.parse(readFileSync(report, 'utf8'));
  const count = {};
  const survivors = [];
  for (const [path, { mutants, source }] of Object.entries(files)) {
    const lines = source.split('\n');
    for (const m of mutants) {
      count[m.status] = (count[m.status] ?? 0) + 1;
      if (m.status === 'Survived' || m.status === 'NoCoverage')
        survivors.push(
          `${path}:${m.location.start.line} ${m.mutatorName}${m.status === 'NoCoverage' ? ' (no test comes here)' : ''}: ${lines[m.location.start.line - 1].trim().slice(0, 90)} -> ${m.replacement.replace(/\s+/g, ' ').slice(0, 60)}`,
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
    survivors,
  };
  const kept = join(root, 'tests/proof/figures', `mutation-${name}.json`);
  writeFileSync(`${kept}.new`, `${JSON.stringify(figures, null, 2)}\n`);
  renameSync(`${kept}.new`, kept);
  console.log(
    `${name}: ${figures.score} % of ${tried} noticed (${Timeout} by running out of time), ${Survived} lived, ${NoCoverage} where no test comes`,
  );
}
