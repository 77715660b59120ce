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
  const { peerDependencies } = JSON.parse(readFileSync(join(packageRoot, 'package.json'), 'utf8')) as {
    peerDependencies: Record<string, string>;
  };
  const list = names.map((name) => `${name}@${peerDependencies[name] ?? 'latest'}`).join(' ');
  throw new MissingPackageError(`${user} needs ${names.join(' and ')}: npm install ${list}`);
}

function isInstalled(name: string): boolean {
  try {
    createRequire(join(packageRoot, 'package.json')).resolve(`${name}/package.json`);
    return true;
  } catch {
    return false;
  }
}
