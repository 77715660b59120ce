import { randomBytes } from 'node:crypto';
import { constants, open, rename, unlink } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** Writes a file that this user alone can read, whole or not at all. A link of the name is replaced, never followed. */
export async function writePrivateFile(path: string, content: string): Promise<void> {
  const beside = join(dirname(path), `.${basename(path)}.${randomBytes(6).toString('hex')}.part`);
  const file = await open(beside, 'wx', 0o600);
  try {
    await file.writeFile(content);
  } finally {
    await file.close();
  }
  await rename(beside, path).catch(async (error: unknown) => {
    await unlink(beside).catch(() => undefined);
    throw error;
  });
}

/** The text of such a file; undefined where there is none, or where a link stands in its place. */
export async function readPrivateFile(path: string): Promise<string | undefined> {
  try {
    const file = await open(path, constants.O_RDONLY | (constants.O_NOFOLLOW || 0));
    try {
      return await file.readFile('utf8');
    } finally {
      await file.close();
    }
  } catch {
    return undefined;
  }
}
