// Makes a fresh clone ready: installs what is missing, builds what has changed. Only Node's own modules are used,
// since nothing else may be there yet.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * Whether every package the lock file names is there in its version, those of other platforms excepted, and those for
 * tests alone unless they are asked for.
 */
function installed({ tests }) {
  const present = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(present)) return false;
  const wanted = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')).packages;
  const have = JSON.parse(readFileSync(present, 'utf8')).packages;
  return Object.entries(wanted).every(
    ([path, p]) =>
      path === '' ||
      p.optional ||
      p.devOptional ||
      p.peer ||
      p.link ||
      (p.dev && !tests) ||
      have[path]?.version === p.version,
  );
}

/** Installs what is missing: with `tests`, what the checks and tests need too, which is a third more. */
export function install({ tests = false } = {}) {
  if (!existsSync(join(root, 'package-lock.json')) || installed({ tests })) return;
  process.stderr.write('Installing packages (once)...\n');
  const only = tests ? [] : ['--omit=dev'];
  const run = spawnSync('npm', ['ci', ...only, '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: root,
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
  });
  if (run.status !== 0) {
    process.stderr.write('npm ci failed; its own message stands above.\n');
    process.exit(1);
  }
}

function fingerprint() {
  const hash = createHash('sha256');
  const walk = (folder) => {
    for (const entry of readdirSync(join(root, folder), { withFileTypes: true }).sort((a, b) =>
      a.name < b.name ? -1 : 1,
    )) {
      const path = `${folder}/${entry.name}`;
      if (entry.name === 'node_modules') continue;
      if (entry.isDirectory()) walk(path);
      else {
        const s = statSync(join(root, path));
        hash.update(`${path}:${s.size}:${Math.round(s.mtimeMs)};`);
      }
    }
  };
  walk('src');
  for (const file of ['package.json', 'package-lock.json']) hash.update(readFileSync(join(root, file)));
  return hash.digest('hex');
}

/** Builds dist/ unless it already stands for these sources. An installed package carries dist/ and no sources. */
export async function buildIfNeeded(options = {}) {
  if (!existsSync(join(root, 'src', 'index.ts'))) return;
  const stamp = join(root, 'dist', '.stamp');
  const now = fingerprint();
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === now) return;
  process.stderr.write('Building...\n');
  const { build } = await import('./build.mjs');
  await build(options);
  mkdirSync(join(root, 'dist'), { recursive: true });
  // The catalogue may have been written anew by the build, so the print is taken again.
  writeFileSync(stamp, fingerprint());
}
