// Measures what takes long and keeps the figures for the table:
// node tests/proof/measure.mjs kernel protocol soak bench coverage fuzz fresh
import { spawn, spawnSync } from 'node:child_process';
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
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

/** Seconds from `npm start` until its page answers. */
async function untilPage(folder) {
  const begin = performance.now();
  const child = spawn('npm', ['start', '--', '--no-browser', '--no-pages', '--port', '0'], {
    cwd: folder,
    detached: true,
  });
  try {
    let said = '';
    const address = await new Promise((resolve, reject) => {
      const hear = (data) => {
        said += data;
        const found = /http:\/\/\S+/.exec(said);
        if (found) resolve(found[0]);
      };
      child.stdout.on('data', hear);
      child.stderr.on('data', hear);
      child.once('exit', () => reject(new Error(`npm start ended: ${said}`)));
    });
    const page = await fetch(address);
    if (!page.ok) throw new Error(`${address}: ${page.status}`);
    return Number(((performance.now() - begin) / 1000).toFixed(1));
  } finally {
    process.kill(-child.pid, 'SIGTERM');
  }
}

const measures = {
  /** Debian's conformance suite and this project's own, against Jupyter's clients. */
  kernel() {
    const { lines } = run('bash', ['tests/jupyter/run.sh']);
    keep('kernel', { count: lines.at(-1) });
  },
  /** Start, warm and fresh cells and printing beside Python's kernel and plain tslab, in one interleaved run. */
  protocol() {
    const { lines } = run(process.execPath, ['tests/bench/kernel.mjs']);
    const from = lines.findIndex((l) => l.startsWith('medians of'));
    if (from < 0) throw new Error('the kernels were not measured; what they said stands above');
    keep('protocol', { lines: lines.slice(from) });
  },
  /** Ten thousand cells over fifty lives, and ten thousand in one. */
  soak() {
    keep('soak', { lines: run(process.execPath, ['tests/bench/soak.mjs']).lines });
  },
  /** What a person with only Node meets: a clone, its first start and test; and the package packed and put elsewhere. */
  async fresh() {
    const folder = mkdtempSync(join(tmpdir(), 'reckoner-fresh-'));
    const timed = (what, command, args, cwd) => {
      const begin = performance.now();
      const done = spawnSync(command, args, { cwd, encoding: 'utf8', maxBuffer: 1e8 });
      if (done.status !== 0) throw new Error(`${what}: ${done.stdout}${done.stderr}`);
      console.log(`${what}: ${((performance.now() - begin) / 1000).toFixed(1)} s`);
      return { seconds: Number(((performance.now() - begin) / 1000).toFixed(1)), out: done.stdout };
    };
    try {
      const clone = join(folder, 'clone');
      timed('clone', 'git', ['clone', '-q', root, clone], folder);
      const start = await untilPage(clone);
      const again = await untilPage(clone);
      console.log(`npm start: ${start} s, again ${again} s`);
      const test = timed('npm test', 'npm', ['test'], clone);
      timed('npm pack', 'npm', ['pack', '--ignore-scripts', '--pack-destination', folder], clone);
      const tarball = join(
        folder,
        readdirSync(folder).find((f) => f.endsWith('.tgz')),
      );
      const home = join(folder, 'elsewhere');
      mkdirSync(home);
      writeFileSync(join(home, 'package.json'), '{ "name": "elsewhere", "private": true, "type": "module" }');
      const install = timed(
        'npm install of the tarball',
        'npm',
        ['install', '--omit=dev', '--no-audit', '--no-fund', tarball],
        home,
      );
      const size = (path) =>
        Number(spawnSync('du', ['-sk', path], { encoding: 'utf8' }).stdout.split('\t')[0]) / 1024;
      const unpackedMB = Number(size(join(home, 'node_modules/joiners-reckoner')).toFixed(1));
      const withAllItNeedsMB = Number(size(join(home, 'node_modules')).toFixed(0));
      const code =
        "import { movementAcross } from 'joiners-reckoner'; console.log(movementAcross(movementAcross.example).change.toString())";
      const imported = timed('import', process.execPath, ['--input-type=module', '-e', code], home);
      const worked = timed(
        'reckoner work',
        join(home, 'node_modules/.bin/reckoner'),
        ['work', 'movementAcross', 'width=640 mm', 'timber=white oak', 'from=8 %', 'to=12 %'],
        home,
      );
      const { peerDependencies } = JSON.parse(
        readFileSync(join(home, 'node_modules/joiners-reckoner/package.json'), 'utf8'),
      );
      const added = ['@types/node', 'typescript', 'zeromq'].map(
        (name) => `${name}@${peerDependencies[name]}`,
      );
      timed('npm install of what the kernel needs', 'npm', ['install', ...added], home);
      timed(
        'reckoner kernel install',
        join(home, 'node_modules/.bin/reckoner'),
        ['kernel', 'install', '--prefix', join(folder, 'prefix')],
        home,
      );
      keep('fresh', {
        start,
        startAgain: again,
        test: test.seconds,
        counted: test.out.trimEnd().split('\n').at(-1),
        packedMB: Number((statSync(tarball).size / 2 ** 20).toFixed(2)),
        unpackedMB,
        withAllItNeedsMB,
        install: install.seconds,
        imported: imported.out.trim(),
        worked: worked.out.split('\n')[0],
      });
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
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
        ...['engine', 'units', 'recipes', 'materials'].map((r) => `--coverage.include=src/${r}/**`),
        '--coverage.exclude=**/catalogue.ts',
        'tests/engine',
        'tests/recipes',
        'tests/units',
        'tests/properties',
        'tests/published',
        'tests/fuzz',
        'tests/materials',
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
  /** A million malformed texts and a million malformed inputs; ten thousand corrupted files. */
  fuzz() {
    const on = { RECKONER_HOSTILE: '1000000' };
    run(
      process.execPath,
      [vitest, 'run', 'tests/fuzz/million-quantities.test.ts', 'tests/fuzz/million-recipes.test.ts'],
      on,
    );
    run(
      process.execPath,
      [vitest, 'run', 'tests/fuzz/notebooks.test.ts', 'tests/fuzz/corrupt-files.test.ts'],
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
  await measures[name]();
}
