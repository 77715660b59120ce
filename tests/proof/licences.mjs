// The licences of the packages that come with this one when it is installed, read from what is installed here.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Licences with the packages under each, from the lock file's list of all that is not for development alone. */
export function licences(root) {
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));
  const by = new Map();
  for (const [path, p] of Object.entries(lock.packages)) {
    if (!path.startsWith('node_modules/') || p.dev || p.devOptional || p.peer || p.link) continue;
    const file = join(root, path, 'package.json');
    // Binaries of other machines are listed and not installed here.
    if (!existsSync(file)) continue;
    const { name, version, license, licenses } = JSON.parse(readFileSync(file, 'utf8'));
    const words =
      typeof license === 'string'
        ? license
        : (license?.type ?? licenses?.map((l) => l.type).join(' OR ') ?? p.license ?? 'none named');
    by.set(words, [...(by.get(words) ?? []), `${name} ${version}`]);
  }
  return [...by].sort((a, b) => b[1].length - a[1].length);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const [licence, names] of licences(fileURLToPath(new URL('../..', import.meta.url))))
    console.log(`${licence}: ${names.join(', ')}\n`);
}
