import { lstat, realpath } from 'node:fs/promises';
import { basename, dirname, join, sep } from 'node:path';
import { HttpError } from './http-error.js';

/**
 * The one folder the server shows. Paths come from the network, so every one goes through `find`: no step upward, no hidden name,
 * no link that leads outside.
 */
export class ContentsRoot {
  private constructor(readonly root: string) {}

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
    const names = this.split(path);
    const wanted = join(this.root, ...names);
    if (names.length === 0) return this.root;
    const folder = await realpath(dirname(wanted)).catch(() => {
      throw new HttpError(404, `path: no folder ${JSON.stringify(names.slice(0, -1).join('/'))}`);
    });
    this.#inside(folder, path);
    const spot = join(folder, basename(wanted));
    const link = await lstat(spot).catch(() => undefined);
    if (link === undefined) return spot;
    const real = await realpath(spot).catch(() => {
      throw new HttpError(403, `path: ${JSON.stringify(path)} is a link that leads nowhere`);
    });
    this.#inside(real, path);
    return real;
  }

  #inside(real: string, path: string): void {
    if (real !== this.root && !real.startsWith(this.root + sep))
      throw new HttpError(
        403,
        `path: ${JSON.stringify(path.slice(0, 120))} leads outside the notebooks folder`,
      );
  }
}
