import { InputError } from '../units/input-error.js';

/**
 * The text of a file's bytes: UTF-8, UTF-16 with or without a byte order mark, or the Windows code page for western Europe.
 * @throws InputError where the file is a spreadsheet and no text
 */
export function decodeText(bytes: Uint8Array): string {
  const [a = 0, b = 0, c = 0] = bytes;
  if (a === 0x50 && b === 0x4b && (c === 0x03 || c === 0x05))
    throw new InputError('is a zipped spreadsheet; open it and save the sheet as CSV');
  if (a === 0xd0 && b === 0xcf)
    throw new InputError('is an old spreadsheet; open it and save the sheet as CSV');
  if (a === 0x25 && b === 0x50 && c === 0x44) throw new InputError('is a PDF; write the table as CSV');
  if (a === 0xff && b === 0xfe) return decode('utf-16le', bytes);
  if (a === 0xfe && b === 0xff) return decode('utf-16be', bytes);
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
