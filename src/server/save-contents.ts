import { createHash, randomBytes } from 'node:crypto';
import { lstat, open, readdir, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { reason } from '../notes/atomic-write.js';
import { HttpError } from './http-error.js';

/** Writes a file in an opened folder, whole or not at all. A link that took its name meanwhile is replaced, not followed. */
export async function writeEntry(entry: string, content: Buffer | string, shownAs: string): Promise<void> {
  const mode = await lstat(entry).then(
    (found) => found.mode & 0o777,
    () => 0o644,
  );
  const beside = join(dirname(entry), `.${basename(entry)}.${randomBytes(6).toString('hex')}.part`);
  try {
    const file = await open(beside, 'wx', mode);
    try {
      await file.writeFile(content);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, entry);
  } catch (error) {
    await rm(beside, { force: true }).catch(() => undefined);
    const message = `${shownAs}: could not be written: ${reason(error, 'write')}`;
    throw new HttpError((error as NodeJS.ErrnoException).code === 'ENOSPC' ? 507 : 403, message);
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

  run<T>(key: string, work: () => Promise<T>): Promise<T> {
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
