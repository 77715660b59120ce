import { readFile } from 'node:fs/promises';
import { extname } from 'node:path';
import { FileError, reason } from './atomic-write.js';
import type { NotePart } from './note-content.js';

const pictureTypes: Readonly<Record<string, string>> = {
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.jpeg': 'image/jpeg',
  '.webp': 'image/webp',
  '.gif': 'image/gif',
  '.svg': 'image/svg+xml',
};
const largestPicture = 20 * 1024 * 1024;

/** A picture read from its file, as data. @throws FileError where it is no picture, too large or not readable */
export async function picturePart(file: string, caption: string | undefined): Promise<NotePart> {
  const type = pictureTypes[extname(file).toLowerCase()];
  if (type === undefined)
    throw new FileError(file, `is no picture by its name; takes ${Object.keys(pictureTypes).join(', ')}`);
  const bytes = await readFile(file).catch((error: unknown) => {
    throw new FileError(file, `could not be read: ${reason(error, 'read')}`);
  });
  if (bytes.length > largestPicture)
    throw new FileError(
      file,
      `is ${(bytes.length / 1048576).toFixed(1)} MB; takes a picture of at most 20 MB: make it smaller first`,
    );
  return {
    kind: 'picture',
    file,
    data: `data:${type};base64,${bytes.toString('base64')}`,
    ...(caption === undefined ? {} : { caption }),
  };
}
