import { chmod, lstat, mkdir } from 'node:fs/promises';
import { homedir } from 'node:os';
import { dirname, isAbsolute, join } from 'node:path';

type Environment = Readonly<Record<string, string | undefined>>;

const program = 'joiners-reckoner';

/** Folder for what the program remembers of this user: XDG_STATE_HOME on Linux, the platform's own place elsewhere. */
export function stateFolder(env: Environment = process.env, platform: string = process.platform): string {
  if (platform === 'darwin') return join(homedir(), 'Library', 'Application Support', program);
  if (platform === 'win32') return join(localAppData(env), program, 'state');
  return join(absolute(env['XDG_STATE_HOME']) ?? join(homedir(), '.local', 'state'), program);
}

/** Folder for what can be made again: XDG_CACHE_HOME on Linux, the platform's own place elsewhere. */
export function cacheFolder(env: Environment = process.env, platform: string = process.platform): string {
  if (platform === 'darwin') return join(homedir(), 'Library', 'Caches', program);
  if (platform === 'win32') return join(localAppData(env), program, 'cache');
  return join(absolute(env['XDG_CACHE_HOME']) ?? join(homedir(), '.cache'), program);
}

/**
 * Makes `path` (one of the folders above or a folder in it) if it is missing, open to this user alone.
 * Throws where it is a link, or belongs to somebody else.
 */
export async function makePrivateFolder(path: string, base: string): Promise<string> {
  if (path !== base) await makePrivateFolder(dirname(path), base);
  else await mkdir(dirname(base), { recursive: true, mode: 0o700 });
  await mkdir(path, { mode: 0o700 }).catch((error: unknown) => {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
  });
  const found = await lstat(path);
  if (found.isSymbolicLink() || !found.isDirectory())
    throw new Error(`${path} takes a folder of your own, and is a link or a file; remove it`);
  const uid = process.getuid?.();
  if (uid !== undefined && found.uid !== uid)
    throw new Error(`${path} belongs to another user; remove it or set XDG_STATE_HOME and XDG_CACHE_HOME`);
  if (uid !== undefined && (found.mode & 0o077) !== 0) await chmod(path, 0o700);
  return path;
}

/** The XDG rules: a relative path is ignored. */
const absolute = (path: string | undefined): string | undefined =>
  path !== undefined && isAbsolute(path) ? path : undefined;

const localAppData = (env: Environment): string =>
  absolute(env['LOCALAPPDATA']) ?? join(homedir(), 'AppData', 'Local');
