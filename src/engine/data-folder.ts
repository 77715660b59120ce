// Where data/ is: the folder is found from the package's own package.json, since the built code lies deeper than the
// source. The one file of this folder that touches the disk; a browser bundle puts another file in its place.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { decodeText } from './text-encoding.js';

/** The nearest folder at or above `start` whose package.json carries the package's name. @throws Error where there is none */
export function folderAbove(start: string): string {
  let folder = start;
  for (;;) {
    const file = join(folder, 'package.json');
    if (
      existsSync(file) &&
      (JSON.parse(readFileSync(file, 'utf8')) as { name?: string }).name === 'joiners-reckoner'
    )
      return folder;
    const up = dirname(folder);
    if (up === folder) throw new Error(`the folder of joiners-reckoner was not found above ${start}`);
    folder = up;
  }
}

let found: string | undefined;

/** Folder of the package. */
export function packageFolder(): string {
  return (found ??= folderAbove(dirname(fileURLToPath(import.meta.url))));
}

/** Text of a file in data/, such as `sources.json`. */
export function readDataFile(name: string): string {
  return readFileSync(join(packageFolder(), 'data', name), 'utf8');
}

/** The files of data/ do not change while a program runs. */
export const dataRevision = (): number => 0;

/** Names of the files in data/. */
export function dataFileNames(): string[] {
  return readdirSync(join(packageFolder(), 'data'));
}

/** Text of a user's own file, in any usual encoding. @throws the file system's own error, InputError for a file that is no text */
export function readOwnFile(path: string): string {
  return decodeText(readFileSync(path));
}
