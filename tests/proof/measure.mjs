// Measures what takes long and keeps the figures for the table: node tests/proof/measure.mjs kernel bench coverage hostile
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '../..');
const vitest = join(root, 'node_modules/vitest/vitest.mjs');

function keep(name, figures) {
  const file = join(here, 'figures', `${name}.json`);
  const kept = {
    date: new Date().toISOString().slice(0, 10),
    machine: `${cpus().length} cores, ${cpus()[0]?.model.trim()}, Node ${process.versions.node}`,
    ...figures,
  };
  writeFileSync(`${file}.new`, `${JSON.stringify(kept, null, 2)}\n`);
  renameSync(`${file}.new`, file);
}

function run(command, args, env = {}) {
  const done = spawnSync(command, args, {
    cwd: root,
    encoding: 'utf8',
    env: { ...process.env, ...env },
    maxBuffer: 1e8,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  process.stdout.write(done.stdout);
  return { ok: done.status === 0, lines: done.stdout.trimEnd().split('\n') };
}

const measures = {
  /** Debian's conformance suite and this project's own, against Jupyter's clients. */
  kernel() {
    const { lines } = run('bash', ['tests/jupyter/run.sh']);
    keep('kernel', { count: lines.at(-1) });
  },
  bench() {
    const lines = [];
    for (const file of readdirSync(join(root, 'tests/bench'))
      .filter((f) => f.endsWith('.bench.mjs'))
      .sort())
      lines.push(...run(process.execPath, [join('tests/bench', file)]).lines);
    keep('bench', { lines });
  },
  coverage() {
    const folder = mkdtempSync(join(tmpdir(), 'reckoner-coverage-'));
    run(
      process.execPath,
      [
        vitest,
        'run',
        '--coverage.enabled',
        '--coverage.reporter=json-summary',
        `--coverage.reportsDirectory=${folder}`,
        '--coverage.reportOnFailure',
        ...['recipe', 'quantities', 'recipes', 'timber'].map((r) => `--coverage.include=src/${r}/**`),
        '--coverage.exclude=**/catalogue.ts',
        'tests/recipe',
        'tests/recipes',
        'tests/quantities',
        'tests/laws',
        'tests/published',
        'tests/hostile',
        'tests/timber',
        'tests/explore',
      ],
      { HOSTILE_RUNS: '2000', RECKONER_HOSTILE: '1500' },
    );
    const summary = JSON.parse(readFileSync(join(folder, 'coverage-summary.json'), 'utf8'));
    rmSync(folder, { recursive: true });
    const branches = {};
    for (const [file, { branches: b }] of Object.entries(summary)) {
      const room = /src\/(recipes\/[^/]+|[^/]+)\//.exec(file)?.[1];
      if (!room || file === 'total') continue;
      branches[room] ??= { covered: 0, total: 0 };
      branches[room].covered += b.covered;
      branches[room].total += b.total;
    }
    for (const b of Object.values(branches)) b.percent = Number(((100 * b.covered) / b.total).toFixed(1));
    const least = Object.entries(summary)
      .filter(([f, s]) => f !== 'total' && s.branches.total > s.branches.covered)
      .sort(
        (a, b) => b[1].branches.total - b[1].branches.covered - (a[1].branches.total - a[1].branches.covered),
      )
      .slice(0, 25)
      .map(([f, s]) => `${f.slice(f.indexOf('src/'))}: ${s.branches.covered} of ${s.branches.total}`);
    keep('coverage', { branches, least });
  },
  /** A million hostile texts and a million hostile inputs; ten thousand spoilt files. */
  hostile() {
    const on = { RECKONER_HOSTILE: '1000000' };
    run(
      process.execPath,
      [vitest, 'run', 'tests/hostile/million-quantities.test.ts', 'tests/hostile/million-recipes.test.ts'],
      on,
    );
    run(
      process.execPath,
      [vitest, 'run', 'tests/hostile/notebooks.test.ts', 'tests/hostile/spoilt-files.test.ts'],
      { RECKONER_HOSTILE: '10000' },
    );
  },
};
const wanted = process.argv.slice(2);
for (const name of wanted.length > 0 ? wanted : Object.keys(measures)) {
  if (!Object.hasOwn(measures, name)) {
    console.error(`no measure ${name}; there are ${Object.keys(measures).join(', ')}`);
    process.exit(2);
  }
  measures[name]();
}
