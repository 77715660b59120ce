import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { packageRoot } from './dist-path.js';

/** A package that only some commands need is not installed here; the message holds the command that installs it. */
export class MissingPackageError extends Error {
  override readonly name = 'MissingPackageError';
}

/** What a session that runs cells needs. The compiler is part of the build. */
export const sessionPackages = ['@types/node'];

/**
 * Checks that packages which an install leaves out are there.
 * @param user what needs them, named first in the message
 * @param names packages among the optional peers of package.json, which give their versions
 * @throws MissingPackageError
 */
export function requirePackages(user: string, names: readonly string[]): void {
  const missing = names.filter((name) => !isInstalled(name));
  if (missing.length === 0) return;
  const versions = optionalVersions();
  const list = names.map((name) => `${name}@${versions[name] ?? 'latest'}`).join(' ');
  throw new MissingPackageError(`${user} needs ${names.join(' and ')}: npm install ${list}`);
}

/** The versions of the packages that an install may leave out. */
function optionalVersions(): Record<string, string> {
  const { peerDependencies } = JSON.parse(readFileSync(join(packageRoot, 'package.json'), 'utf8')) as {
    peerDependencies: Record<string, string>;
  };
  return peerDependencies;
}

/** The sentence for an import in a cell that names no module: a file that is not there, or a package and how to install it. */
export function missingModule(specifier: string): string {
  if (/^\.{0,2}\//.test(specifier)) return `import '${specifier}': there is no such file beside the notebook`;
  const name = specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');
  const version = optionalVersions()[name];
  const which = version === undefined ? name : `${name}@${version}`;
  return `import '${specifier}': ${name} is not installed here; in the notebook's folder: npm install ${which}`;
}

function isInstalled(name: string): boolean {
  try {
    createRequire(join(packageRoot, 'package.json')).resolve(`${name}/package.json`);
    return true;
  } catch {
    return false;
  }
}
