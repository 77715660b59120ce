import { InputError } from '../units/input-error.js';

const zipped = 'is a zipped spreadsheet; open it and save the sheet as CSV';
/** First bytes of files that are no text, each with what to do about it. */
const notText: readonly (readonly [start: readonly number[], message: string])[] = [
  [[0x50, 0x4b, 0x03], zipped],
  [[0x50, 0x4b, 0x05], zipped],
  [[0xd0, 0xcf], 'is an old spreadsheet; open it and save the sheet as CSV'],
  [[0x25, 0x50, 0x44], 'is a PDF; write the table as CSV'],
];

/**
 * The text of a file's bytes: UTF-8, UTF-16 with or without a byte order mark, or the Windows code page for western Europe.
 * @throws InputError where the file is a spreadsheet and no text
 */
export function decodeText(bytes: Uint8Array): string {
  const starts = (start: readonly number[]): boolean => start.every((byte, at) => bytes[at] === byte);
  const other = notText.find(([start]) => starts(start));
  if (other) throw new InputError(other[1]);
  if (starts([0xff, 0xfe])) return decode('utf-16le', bytes);
  if (starts([0xfe, 0xff])) return decode('utf-16be', bytes);
  const wide = widthOf(bytes);
  if (wide !== undefined) return decode(wide, bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return decode('windows-1252', bytes);
  }
}

const decode = (encoding: string, bytes: Uint8Array): string => new TextDecoder(encoding).decode(bytes);

/** UTF-16 without a mark: every second byte of western text is 0. */
function widthOf(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  const sample = bytes.subarray(0, 1000);
  if (sample.length < 4) return undefined;
  let [even, odd] = [0, 0];
  for (const [at, byte] of sample.entries()) {
    if (byte !== 0) continue;
    if (at % 2 === 0) even += 1;
    else odd += 1;
  }
  if (odd > sample.length / 4 && even === 0) return 'utf-16le';
  if (even > sample.length / 4 && odd === 0) return 'utf-16be';
  return undefined;
}
