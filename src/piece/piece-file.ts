// Pieces as files: `*.piece.json`, a description and nothing else. Tables it names lie beside it.
import { readFileSync } from 'node:fs';
import { dirname, isAbsolute, join } from 'node:path';
import { isPlainObject } from '../engine/field.js';
import { decodeText } from '../engine/text-encoding.js';
import { FileError, reason, writeFileAtomically } from '../notes/atomic-write.js';
import { InputError, inspectValue } from '../units/input-error.js';
import type { PieceInput } from './description.js';
import { piece, type Piece } from './piece.js';

const ending = /\.piece\.json$/i;
const table = /\.(?:csv|tsv|txt)$/i;

/** Values of a description that may name a table in a file. */
const tablePaths: readonly (readonly [string, string])[] = [
  ['pile', 'survey'],
  ['pile', 'battens'],
  ['use', 'climate'],
  ['costs', 'lines'],
  ['top', 'gluing'],
];

function checkName(file: string): void {
  if (typeof file !== 'string' || !ending.test(file))
    throw new InputError({
      field: 'file',
      message: `got ${inspectValue(file)}, takes a name that ends in .piece.json`,
    });
}

/** Reads a description. @throws FileError, or InputError with every wrong value by its path */
export function openPiece(file: string): Piece {
  checkName(file);
  return piece(readPieceFile(file));
}

/** The description in a file, names of tables taken from its folder; `shop` may name a file of its own. */
export function readPieceFile(file: string): PieceInput {
  const folder = dirname(file);
  const whole = parsed(file);
  if (!isPlainObject(whole))
    throw new InputError({ field: file, message: 'takes a description in braces, { "name": ... }' });
  const shop = whole['shop'];
  const withShop =
    typeof shop === 'string' ? { ...whole, ...sectionsOf(parsed(join(folder, shop)), shop) } : whole;
  return tablePaths.reduce<Record<string, unknown>>((d, [section, name]) => {
    const of = d[section];
    const value = isPlainObject(of) ? of[name] : undefined;
    return isPlainObject(of) && typeof value === 'string' && table.test(value) && !isAbsolute(value)
      ? { ...d, [section]: { ...of, [name]: join(folder, value) } }
      : d;
  }, withShop) as unknown as PieceInput;
}

/** A file of the shop holds its own sections: shop, gluing, costs. */
function sectionsOf(value: unknown, file: string): Record<string, unknown> {
  const sections = ['shop', 'gluing', 'costs'];
  const stranger = isPlainObject(value) ? Object.keys(value).find((k) => !sections.includes(k)) : '';
  if (!isPlainObject(value) || stranger !== undefined)
    throw new InputError({
      field: 'shop',
      message: `${file} holds ${inspectValue(stranger)}, takes a file with ${sections.join(', ')}`,
    });
  return { shop: {}, ...value };
}

function parsed(file: string): unknown {
  let text: string;
  try {
    text = decodeText(readFileSync(file));
  } catch (error) {
    throw new FileError(file, `could not be read: ${reason(error, 'read')}`);
  }
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new InputError({
      field: file,
      message: `is not whole JSON: ${error instanceof Error ? error.message : String(error)}`,
    });
  }
}

/** Writes the description of a piece, whole or not at all. @throws FileError */
export async function savePiece(of: Piece, file: string): Promise<void> {
  checkName(file);
  await writeFileAtomically(file, `${JSON.stringify(of.toJSON(), null, 2)}\n`);
}
