// What a clone's `npm start` installs is all that the sources import: packages for tests alone are not there.
import { readdirSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const locked = (
  JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
    packages: Record<string, { dev?: boolean } | undefined>;
  }
).packages;
/** Whether `npm ci --omit=dev` brings it. */
const isThere = (name: string): boolean => {
  const entry = locked[`node_modules/${name}`] ?? locked[`src/launch/node_modules/${name}`];
  return entry !== undefined && entry.dev !== true;
};

/** Packages that the files of src/ import, types aside, each with a file that does. */
function imported(): Map<string, string> {
  const found = new Map<string, string>();
  const files = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' });
  for (const file of files.filter((name) => /\.(ts|mjs)$/.test(name) && !name.includes('stubs'))) {
    const text = readFileSync(join(root, 'src', file), 'utf8');
    for (const [, clause, name = ''] of text.matchAll(/^import (?!type )([^;'"]*?)from '([^'.][^']*)'/gms)) {
      if (clause === undefined) continue;
      const [scope = '', rest = ''] = name.split('/');
      found.set(scope.startsWith('@') ? `${scope}/${rest}` : scope, file);
    }
  }
  return found;
}

it('every package that src imports is installed by npm start', () => {
  const builtIn = new Set(builtinModules);
  const packages = [...imported()].filter(([name]) => !name.startsWith('node:') && !builtIn.has(name));
  expect(packages.length).toBeGreaterThan(15);
  const missing = packages.filter(([name]) => !isThere(name)).map(([name, file]) => `${name} (${file})`);
  expect(missing).toEqual([]);
});
