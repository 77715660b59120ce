import { createHash, type Hash } from 'node:crypto';
import { readdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';

const largest = 5_000_000;

/**
 * A hash of all that a notebook's figures depend on besides its own text: the program, and the tables beside the notebooks. What cannot
 * be read (a broken link, a pipe) is left out.
 */
export async function surroundingsHash(program: string, notebooks: string): Promise<string> {
  const hash = createHash('sha256');
  await addFolder(hash, program, /\.js$/);
  await addFolder(hash, join(program, '..', 'data'), /\.(csv|json)$/);
  await addFolder(hash, notebooks, /\.(csv|json|txt)$/);
  return hash.digest('hex');
}

async function addFolder(hash: Hash, folder: string, wanted: RegExp): Promise<void> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => []);
  for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
    const path = join(folder, entry.name);
    if (entry.isDirectory() && !entry.name.startsWith('.') && entry.name !== 'page')
      await addFolder(hash, path, wanted);
    else if (wanted.test(entry.name) && !entry.name.startsWith('.')) await addFile(hash, entry.name, path);
  }
}

async function addFile(hash: Hash, name: string, path: string): Promise<void> {
  const found = await stat(path).catch(() => undefined);
  if (found?.isFile() !== true || found.size >= largest) return;
  const content = await readFile(path).catch(() => undefined);
  if (content !== undefined) hash.update(name).update(content);
}
