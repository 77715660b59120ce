import { existsSync, readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const packageName = 'joiners-reckoner';

function findRoot(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  for (;;) {
    const manifest = join(folder, 'package.json');
    if (existsSync(manifest)) {
      const { name } = JSON.parse(readFileSync(manifest, 'utf8')) as { name?: string };
      if (name === packageName) return folder;
    }
    const above = dirname(folder);
    if (above === folder)
      throw new Error(`${packageName}: its package.json was not found above ${import.meta.url}`);
    folder = above;
  }
}

/** The package's own folder, the same from a checkout (src/kernel) and from the built chunks (dist/chunks). */
export const packageRoot = findRoot();

/** A file of the build, by its path under dist/. */
export const distPath = (path: string): string => join(packageRoot, 'dist', path);

export const packageVersion = (
  JSON.parse(readFileSync(join(packageRoot, 'package.json'), 'utf8')) as { version: string }
).version;

/** A cache folder, which may be deleted: the compiler's machine code. */
export const cacheFolder = join(process.env['XDG_CACHE_HOME'] || join(homedir(), '.cache'), packageName);
