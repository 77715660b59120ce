// The licences of the packages that come with this one when it is installed, read from what is installed here.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/**
 * Licences with the packages under each: everything the lock file does not mark as for development alone, and, since the
 * notebook's page is bundled from them, the packages of its cells with all they need.
 */
export function licences(root) {
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')).packages;
  const shipped = new Set(
    Object.entries(lock)
      .filter(
        ([path, p]) => path.startsWith('node_modules/') && !p.dev && !p.devOptional && !p.peer && !p.link,
      )
      .map(([path]) => path),
  );
  const bundled = Object.keys(lock[''].devDependencies).filter(
    (n) => n.startsWith('@jupyterlab/') || n === 'marked',
  );
  const queue = bundled.map((n) => `node_modules/${n}`);
  while (queue.length > 0) {
    const path = queue.pop();
    if (shipped.has(path) || !lock[path] || lock[path].link) continue;
    shipped.add(path);
    for (const name of Object.keys(lock[path].dependencies ?? {})) {
      // As Node looks: beside the package first, then in each folder above it.
      for (let at = path; ; at = at.slice(0, at.lastIndexOf('/node_modules/'))) {
        if (lock[`${at}/node_modules/${name}`]) queue.push(`${at}/node_modules/${name}`);
        else if (at.includes('/node_modules/')) continue;
        else queue.push(`node_modules/${name}`);
        break;
      }
    }
  }
  const by = new Map();
  for (const path of [...shipped].sort()) {
    const file = join(root, path, 'package.json');
    // Binaries of other machines are listed and not installed here.
    if (!existsSync(file)) continue;
    const { name, version, license, licenses } = JSON.parse(readFileSync(file, 'utf8'));
    const words =
      typeof license === 'string'
        ? license.replace(/^\((.*)\)$/, '$1')
        : (license?.type ?? licenses?.map((l) => l.type).join(' OR ') ?? lock[path].license ?? 'none named');
    by.set(words, [...(by.get(words) ?? []), `${name} ${version}`]);
  }
  return [...by].sort((a, b) => b[1].length - a[1].length);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const [licence, names] of licences(fileURLToPath(new URL('../..', import.meta.url))))
    console.log(`${licence}: ${names.join(', ')}\n`);
}
