import { closeSync, existsSync, openSync, readFileSync, readSync } from 'node:fs';
import { createRequire } from 'node:module';
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

/** The version of the TypeScript that checks cells. */
export function compilerVersion(): string {
  const built = distPath('kernel/compiler.cjs');
  const text = existsSync(built) ? firstBytes(built) : '';
  const version = /^\/\*! TypeScript ([\d.]+)\. /.exec(text)?.[1];
  return (
    version ?? (createRequire(import.meta.url)('typescript/package.json') as { version: string }).version
  );
}

function firstBytes(path: string): string {
  const file = openSync(path, 'r');
  try {
    const bytes = Buffer.alloc(64);
    return bytes.toString('latin1', 0, readSync(file, bytes));
  } finally {
    closeSync(file);
  }
}

/** A cache folder, which may be deleted: the compiler's machine code. */
export const cacheFolder = join(process.env['XDG_CACHE_HOME'] || join(homedir(), '.cache'), packageName);
