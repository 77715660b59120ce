// npm run release: packs the package, installs the tarball in an empty folder as a user would, and tries it there: a recipe by
// command and by import, and, once the packages are added that the command asks for, a notebook and a handout.
import { execFileSync, spawnSync } from 'node:child_process';
import {
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildIfNeeded, install, root } from './prepare.mjs';

/** What a user's install may be, library and command without notebooks and frames. */
const limits = { packages: 40, megabytes: 40 };

const windows = process.platform === 'win32';
const npm = (args, cwd) =>
  spawnSync('npm', [...args, '--no-audit', '--no-fund'], { cwd, encoding: 'utf8', shell: windows });

function expect(condition, message, detail = '') {
  if (condition) return;
  process.stderr.write(`${detail}\nrelease: ${message}\n`);
  process.exit(1);
}

function megabytes(folder) {
  const bytes = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .reduce((sum, entry) => sum + statSync(join(entry.parentPath, entry.name)).size, 0);
  return bytes / 1e6;
}

/** Packs into `folder`; nothing that was made here while working may be in the tarball. */
function pack(folder) {
  const run = npm(['pack', '--json', '--ignore-scripts', '--pack-destination', folder], root);
  expect(run.status === 0, 'npm pack failed', run.stderr);
  const output = JSON.parse(run.stdout);
  const [{ filename, files }] = Array.isArray(output) ? output : Object.values(output);
  const stray = files
    .map(({ path }) => path)
    .filter((path) => /^dist\/pages\/|\.map$|snapshot\.(blob|key)$/.test(path));
  expect(stray.length === 0, `the tarball holds ${stray.slice(0, 5).join(', ')}`);
  return join(folder, filename);
}

function installTarball(tarball, home) {
  mkdirSync(home);
  writeFileSync(join(home, 'package.json'), '{ "name": "release-trial", "private": true, "type": "module" }');
  const run = npm(['install', tarball], home);
  expect(run.status === 0, 'the tarball does not install', run.stderr);
  expect(!/EBADENGINE/.test(run.stderr), `a package does not accept Node ${process.version}`, run.stderr);
  const listed = JSON.parse(readFileSync(join(home, 'node_modules/.package-lock.json'), 'utf8')).packages;
  return { packages: Object.keys(listed).length, size: megabytes(join(home, 'node_modules')) };
}

/** Runs the installed command; gives what it printed and its exit code. */
function reckoner(home, args) {
  const command = join(home, 'node_modules/joiners-reckoner/src/launch/reckoner.mjs');
  return spawnSync(process.execPath, [command, ...args], { cwd: home, encoding: 'utf8' });
}

/** One recipe by command and by import give the same. */
function tryRecipe(home) {
  const command = reckoner(home, [
    'work',
    'equilibriumMoisture',
    'temperature=20 degC',
    'humidity=60 %',
    '--json',
  ]);
  expect(command.status === 0, 'reckoner work failed', command.stderr);
  const code =
    "import { equilibriumMoisture } from 'joiners-reckoner'; console.log(equilibriumMoisture({ temperature: '20 degC', humidity: '60 %' }).moisture.value);";
  const byImport = Number(execFileSync(process.execPath, ['--input-type=module', '-e', code], { cwd: home }));
  const { value: percent } = JSON.parse(command.stdout).outputs.moisture;
  // Wood Handbook (FPL-GTR-190), Table 4-2: near 11 % at 20 degC and 60 %; read from memory.
  expect(Math.abs(byImport - 0.11) < 0.002, `equilibriumMoisture gave ${byImport} by import, not near 11 %`);
  expect(
    Math.abs(percent / 100 - byImport) < 1e-12,
    `gave ${byImport} by import and ${percent} % by command`,
  );
}

/** Without the packages of the kernel a notebook is refused in one line, which says what to install; with them it runs. */
function tryNotebook(home) {
  const notebook = join(home, 'node_modules/joiners-reckoner/notebooks/01-first-calculations.ipynb');
  const refused = reckoner(home, ['run', notebook]);
  const advice = /^reckoner: .*: npm install ([^\n]*)\n$/.exec(refused.stderr);
  expect(
    refused.status !== 0 && advice,
    'the missing packages of a notebook are not named in one line',
    refused.stderr,
  );
  const added = npm(['install', ...advice[1].split(' ')], home);
  expect(added.status === 0, `npm install ${advice[1]} failed`, added.stderr);
  for (const [command, file] of [
    ['run', 'made.html'],
    ['handout', 'handout.html'],
  ]) {
    const made = reckoner(home, [command, notebook, '-o', file]);
    expect(made.status === 0, `reckoner ${command} failed`, made.stderr);
    expect(readFileSync(join(home, file), 'utf8').includes('</html>'), `${file} is no page`);
  }
}

install({ tests: true });
await buildIfNeeded();
const folder = mkdtempSync(join(tmpdir(), 'reckoner-release-'));
try {
  const tarball = pack(folder);
  const home = join(folder, 'home');
  const { packages, size } = installTarball(tarball, home);
  console.log(
    `install: ${packages} packages, ${size.toFixed(1)} MB (at most ${limits.packages} and ${limits.megabytes})`,
  );
  expect(packages <= limits.packages && size <= limits.megabytes, 'the install passes its limits');
  tryRecipe(home);
  console.log('recipe: the same by command and by import');
  tryNotebook(home);
  console.log('notebook and handout: made with the packages the command asked for');
  const kept = join(root, tarball.slice(folder.length + 1));
  renameSync(tarball, kept);
  console.log(`${kept} is ready to publish`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
