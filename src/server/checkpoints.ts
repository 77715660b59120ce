import { mkdir, readFile, rm, stat } from 'node:fs/promises';
import { basename, dirname, extname, join } from 'node:path';
import type { Contents } from './contents.js';
import { HttpError } from './http-error.js';
import { writeAtomically } from './save-contents.js';

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
    const bytes = await this.contents.root.read(path);
    await mkdir(dirname(spot), { recursive: true });
    await writeAtomically(spot, bytes);
    const made = (await this.list(path))[0];
    if (made === undefined) throw new HttpError(500, 'checkpoint: was written but is not there');
    return made;
  }

  async restore(path: string, id: string): Promise<void> {
    const bytes = await readFile(await this.#known(path, id));
    const real = await this.contents.root.resolve(path);
    await this.contents.queue.run(real, () => writeAtomically(real, bytes));
  }

  async remove(path: string, id: string): Promise<void> {
    await rm(await this.#known(path, id));
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
