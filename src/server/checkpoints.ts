import { constants } from 'node:fs';
import { mkdir, open, rm, stat } from 'node:fs/promises';
import { basename, dirname, extname, join } from 'node:path';
import type { Contents } from './contents.js';
import { HttpError } from './http-error.js';
import { mustBePlain } from './safe-path.js';
import { writeEntry } from './save-contents.js';

interface Checkpoint {
  readonly id: string;
  readonly last_modified: string;
}

/** One checkpoint a file, in the folder and under the name Jupyter's own server uses, so that either finds the other's. */
export class Checkpoints {
  constructor(private readonly contents: Contents) {}

  async list(path: string): Promise<Checkpoint[]> {
    const spot = await this.#spot(path);
    const found = await stat(spot).catch(() => undefined);
    return found === undefined ? [] : [{ id: 'checkpoint', last_modified: found.mtime.toISOString() }];
  }

  async create(path: string): Promise<Checkpoint> {
    const spot = await this.#spot(path);
    const { root } = this.contents;
    const bytes = await root.read(path);
    await root.inFolderOf(dirname(spot), async (folder) => {
      await mkdir(folder, { recursive: true });
    });
    await root.inFolderOf(spot, (entry) => writeEntry(entry, bytes, path));
    const made = (await this.list(path))[0];
    if (made === undefined) throw new HttpError(500, 'checkpoint: was written but is not there');
    return made;
  }

  async restore(path: string, id: string): Promise<void> {
    const { root, queue } = this.contents;
    const bytes = await root.inFolderOf(await this.#known(path, id), (entry) => readPlainFile(entry, path));
    const real = await root.resolve(path);
    await queue.run(real, () => root.inFolderOf(real, (entry) => writeEntry(entry, bytes, path)));
  }

  async remove(path: string, id: string): Promise<void> {
    await this.contents.root.inFolderOf(await this.#known(path, id), (entry) => rm(entry));
  }

  async #known(path: string, id: string): Promise<string> {
    const spot = await this.#spot(path);
    if (id !== 'checkpoint' || (await stat(spot).catch(() => undefined)) === undefined)
      throw new HttpError(
        404,
        `checkpoint: ${JSON.stringify(path)} has none called ${JSON.stringify(id.slice(0, 40))}`,
      );
    return spot;
  }

  async #spot(path: string): Promise<string> {
    const real = await this.contents.root.resolve(path);
    const extension = extname(real);
    return join(dirname(real), '.ipynb_checkpoints', `${basename(real, extension)}-checkpoint${extension}`);
  }
}

/** Reads what was opened, when it is a file: a link or a pipe in its place is turned down. */
async function readPlainFile(entry: string, path: string): Promise<Buffer> {
  const flags = constants.O_RDONLY | (constants.O_NOFOLLOW || 0) | (constants.O_NONBLOCK || 0);
  const file = await open(entry, flags).catch((error: unknown) => {
    const { code = 'unknown' } = error as NodeJS.ErrnoException;
    throw new HttpError(403, `checkpoint: that of ${JSON.stringify(path)} cannot be read (${code})`);
  });
  try {
    mustBePlain(await file.stat(), path);
    return await file.readFile();
  } finally {
    await file.close();
  }
}
