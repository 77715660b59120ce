import { constants, type Stats } from 'node:fs';
import { lstat, open, realpath, stat, type FileHandle } from 'node:fs/promises';
import { basename, dirname, join, sep } from 'node:path';
import { HttpError } from './http-error.js';

/**
 * The one folder the server shows. Paths come from the network, so every one goes through `resolve`: no step upward, no hidden name,
 * no link that leads outside.
 */
export class ContentsRoot {
  private constructor(readonly folder: string) {}

  static async at(folder: string): Promise<ContentsRoot> {
    return new ContentsRoot(await realpath(folder));
  }

  /** `path` as the API spells it: '/' between names, none in front. Throws 403 for a step outside, 404 for a hidden name. */
  split(path: string): string[] {
    const names = path.split('/').filter((name) => name !== '');
    for (const name of names) {
      if (name === '..' || name === '.' || /[\0\\]/.test(name))
        throw new HttpError(403, `path: ${JSON.stringify(path.slice(0, 120))} leaves the notebooks folder`);
      if (name.startsWith('.'))
        throw new HttpError(
          404,
          `path: hidden files are not shown, got ${JSON.stringify(name.slice(0, 80))}`,
        );
      if (Buffer.byteLength(name) > 200) throw new HttpError(400, 'path: a name takes at most 200 bytes');
    }
    return names;
  }

  /** Where `path` is on disk, links followed. The file itself need not exist yet, its folder must. */
  async resolve(path: string): Promise<string> {
    const entry = await this.resolveEntry(path);
    const link = await lstat(entry).catch(() => undefined);
    if (link === undefined || entry === this.folder) return entry;
    const real = await realpath(entry).catch(() => {
      throw new HttpError(403, `path: ${JSON.stringify(path)} is a link that leads nowhere`);
    });
    this.#mustBeInside(real, path);
    return real;
  }

  /** The entry itself, which may be a link: for what concerns the name and not the content, as deleting. */
  async resolveEntry(path: string): Promise<string> {
    const names = this.split(path);
    const wanted = join(this.folder, ...names);
    if (names.length === 0) return this.folder;
    const folder = await realpath(dirname(wanted)).catch(() => {
      throw new HttpError(404, `path: no folder ${JSON.stringify(names.slice(0, -1).join('/'))}`);
    });
    this.#mustBeInside(folder, path);
    return join(folder, basename(wanted));
  }

  /**
   * Opens a plain file for reading. First opened, then checked: what was opened must be the file inside the folder, so a link that is
   * exchanged between check and use gains nothing. A pipe or a device is turned down and never waited for.
   */
  async open(path: string): Promise<{ readonly file: FileHandle; readonly stats: Stats }> {
    const real = await this.resolve(path);
    const file = await open(real, constants.O_RDONLY | (constants.O_NONBLOCK || 0)).catch(
      (error: unknown) => {
        throw notReadable(path, error);
      },
    );
    try {
      const stats = await file.stat();
      if (stats.isDirectory()) throw new HttpError(400, `path: ${JSON.stringify(path)} is a folder`);
      mustBePlain(stats, path);
      const checked = await this.resolve(path);
      const there = await stat(checked).catch(() => undefined);
      if (there?.dev !== stats.dev || there.ino !== stats.ino)
        throw new HttpError(409, `path: ${JSON.stringify(path)} was exchanged while it was read; try again`);
      return { file, stats };
    } catch (error) {
      await file.close();
      throw error;
    }
  }

  async read(path: string): Promise<Buffer> {
    const { file } = await this.open(path);
    try {
      return await file.readFile();
    } finally {
      await file.close();
    }
  }

  /**
   * Works in the folder of `real`, a path that {@link resolve} gave. The folder is opened first and then checked; on Linux the work gets
   * the opened folder itself, so that a folder exchanged for a link meanwhile is never written through.
   */
  async inFolderOf<T>(real: string, work: (entry: string) => Promise<T>): Promise<T> {
    const folder = dirname(real);
    const flags = constants.O_RDONLY | (constants.O_DIRECTORY || 0) | (constants.O_NOFOLLOW || 0);
    const handle = await open(folder, flags).catch((error: unknown) => {
      throw notReadable(folder, error);
    });
    try {
      const [opened, resolved] = [await handle.stat(), await realpath(folder)];
      this.#mustBeInside(resolved, basename(real));
      const there = await stat(resolved);
      if (there.dev !== opened.dev || there.ino !== opened.ino)
        throw new HttpError(
          409,
          `path: the folder of ${JSON.stringify(basename(real))} was exchanged; try again`,
        );
      const base = process.platform === 'linux' ? `/proc/self/fd/${handle.fd}` : folder;
      return await work(join(base, basename(real)));
    } finally {
      await handle.close();
    }
  }

  #mustBeInside(real: string, path: string): void {
    if (real !== this.folder && !real.startsWith(this.folder + sep))
      throw new HttpError(
        403,
        `path: ${JSON.stringify(path.slice(0, 120))} leads outside the notebooks folder`,
      );
  }
}

/** Pipes, sockets and devices are neither files nor folders: reading one may never end. */
export function mustBePlain(stats: Stats, path: string): void {
  if (!stats.isFile() && !stats.isDirectory())
    throw new HttpError(403, `path: ${JSON.stringify(path)} is a pipe or a device, not a file`);
}

function notReadable(path: string, error: unknown): HttpError {
  const { code } = error as NodeJS.ErrnoException;
  if (code === 'ENOENT') return new HttpError(404, `path: no file ${JSON.stringify(path)}`);
  if (code === 'EACCES' || code === 'EPERM')
    return new HttpError(403, `path: ${JSON.stringify(path)} may not be read; change its permissions`);
  return new HttpError(400, `path: ${JSON.stringify(path)} cannot be read (${code ?? 'unknown'})`);
}
