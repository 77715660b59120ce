import { createHash } from 'node:crypto';
import { readdir, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { FileError, writeFileAtomically } from '../notes/atomic-write.js';
import { HttpError } from './http-error.js';

/** Writes a file whole or not at all; a disk that is full or closed is told to the page in words. */
export async function writeAtomically(path: string, content: Buffer | string): Promise<void> {
  try {
    await writeFileAtomically(path, content);
  } catch (error) {
    if (error instanceof FileError) throw new HttpError(507, error.message);
    throw error;
  }
}

const leftover = /^\..+\.[0-9a-f]{12}\.part$/;

/** Removes what a killed server left behind half written. Ours only, and old enough that no save can still be using it. */
export async function sweepLeftovers(folder: string, olderThanMs = 60_000): Promise<number> {
  let swept = 0;
  for (const name of await readdir(folder).catch(() => [])) {
    if (!leftover.test(name)) continue;
    const path = join(folder, name);
    const age = await stat(path)
      .then((s) => Date.now() - s.mtimeMs)
      .catch(() => 0);
    if (age < olderThanMs) continue;
    await rm(path, { force: true });
    swept += 1;
  }
  return swept;
}

export const hashOf = (content: Buffer | string): string =>
  createHash('sha256').update(content).digest('hex');

/** Work on one file queues up behind the last, so that 'compare, then write' cannot be interleaved. */
export class WriteQueue {
  readonly #last = new Map<string, Promise<unknown>>();

  take<T>(key: string, work: () => Promise<T>): Promise<T> {
    const before = this.#last.get(key) ?? Promise.resolve();
    const mine = before.then(work, work);
    const settled = mine.catch(() => undefined);
    this.#last.set(key, settled);
    void settled.then(() => {
      if (this.#last.get(key) === settled) this.#last.delete(key);
    });
    return mine;
  }
}
