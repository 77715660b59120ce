// The licences of what an install holds: the packages bundled into dist/, from the notices that ship with it, and those it depends on.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Licences with the packages under each, the commonest first. */
export function licences(root) {
  const read = (path) => readFileSync(join(root, path), 'utf8');
  const notices = read('dist/THIRD-PARTY-NOTICES.txt').matchAll(/^-{80}\n(.+)\nLicence: (.+)$/gm);
  const bundled = [...notices].map(([, name, licence]) => [name, licence.replace(/^\((.*)\)$/, '$1')]);
  const needed = Object.keys(JSON.parse(read('package.json')).dependencies).map((name) => {
    const { version, license } = JSON.parse(read(`node_modules/${name}/package.json`));
    return [`${name} ${version}`, license];
  });
  const byLicence = new Map();
  for (const [name, licence] of [...bundled, ...needed])
    byLicence.set(licence, [...(byLicence.get(licence) ?? []), name]);
  return [...byLicence].sort((a, b) => b[1].length - a[1].length);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const [licence, names] of licences(fileURLToPath(new URL('../..', import.meta.url))))
    console.log(`${licence}: ${names.join(', ')}\n`);
}
