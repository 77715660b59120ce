import { randomBytes } from 'node:crypto';
import { mkdir, open, realpath, rename, stat, unlink } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** A file that could not be written or read, with its path and what to do about it. */
export class FileError extends Error {
  override readonly name = 'FileError';
  constructor(
    readonly file: string,
    message: string,
  ) {
    super(`${file}: ${message}`);
  }
}

/**
 * Writes a whole file or nothing: the text goes to a new file beside it, to the disk, and only then takes the old
 * one's name. A full disk, a lost power line or Ctrl-C leaves the old file as it was. Two writers at once cannot mix, since
 * each has a name of its own. Throws {@link FileError}.
 */
export async function writeFileAtomically(path: string, content: string | Uint8Array): Promise<void> {
  // A link is followed, so that a linked notebook stays a link.
  const target = await realpath(path).catch(() => path);
  const mode = await stat(target).then(
    (s) => s.mode & 0o777,
    () => 0o644,
  );
  const beside = join(dirname(target), `.${basename(target)}.${randomBytes(6).toString('hex')}.part`);
  try {
    const file = await open(beside, 'wx', mode);
    try {
      await file.writeFile(content);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, target);
  } catch (error) {
    await unlink(beside).catch(() => undefined);
    throw new FileError(path, `could not be written: ${reason(error, 'write')}`);
  }
}

/** What went wrong with the disk, in words, and how to fix it. */
export function reason(error: unknown, doing: 'read' | 'write'): string {
  const code = (error as NodeJS.ErrnoException | undefined)?.code;
  switch (code) {
    case 'ENOENT':
      return doing === 'read'
        ? 'there is no such file; check the name'
        : 'there is no such folder; make it first';
    case 'EACCES':
    case 'EPERM':
      return `you may not ${doing} here; choose another folder or change its permissions`;
    case 'EISDIR':
      return 'it is a folder; give the name of a file';
    case 'ENOTDIR':
      return 'part of the path is a file, not a folder';
    case 'ENOSPC':
      return 'the disk is full; the old file is untouched';
    case 'EROFS':
      return 'this disk is read-only; choose another';
    default:
      return error instanceof Error ? error.message : String(error);
  }
}

/** Makes a folder if it is not there. Throws {@link FileError}. */
export async function makeFolder(path: string): Promise<void> {
  await mkdir(path, { recursive: true }).catch((error: unknown) => {
    throw new FileError(path, `could not be made: ${reason(error, 'write')}`);
  });
}
