import { readCsv } from '../engine/csv.js';
import { NumberStyle, type NumberCell } from '../engine/csv-numbers.js';
import { readOwnFile } from '../engine/data-folder.js';
import { InputError, inspectValue } from '../units/input-error.js';

type FrameValue = string | number | boolean | null;

/** A whole cell that is a number in some way of writing: `2400`, `2.4`, `2,4`, `1.250,5`, `1 250`. */
const written =
  /^[-+]?(?:\d+(?:[.,]\d+)?|\d{1,3}(?:[., \u00a0\u2009\u202f]\d{3})+(?:[.,]\d+)?)(?:e[-+]?\d+)?$/i;
const plainNumber = /^[-+]?\d+(?:\.\d+)?(?:e[-+]?\d+)?$/i;

/**
 * Rows of a CSV file with numbers as numbers. How the file writes its numbers is decided once, from the columns that hold nothing else;
 * `note` says what was read otherwise than it stands in the file.
 * @throws InputError where the file cannot be read, or where it stays open whether `2.400` is 2.4 or 2400
 */
export function frameRows(name: string): {
  readonly rows: Record<string, FrameValue>[];
  readonly note: string | undefined;
} {
  const { rows, delimiter } = readCsv(fileText(name));
  const [head, ...all] = rows;
  const columns = (head?.cells ?? []).map((cell) => cell.trim());
  const body = all.filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
  const numbers = columns.flatMap((_column, at): NumberCell[] => {
    const cells = body
      .map(({ line, cells: texts }) => ({ line, text: (texts[at] ?? '').trim() }))
      .filter(({ text }) => text !== '');
    return cells.every(({ text }) => written.test(text)) ? cells : [];
  });
  const style = styleOf(numbers, delimiter, name);
  const value = (text: string): FrameValue => {
    if (text === '') return null;
    if (/^(?:true|false)$/i.test(text)) return text.toLowerCase() === 'true';
    const plain = written.test(text) ? style.plain(text) : text;
    return plainNumber.test(plain) ? Number(plain) : text;
  };
  return {
    rows: body.map(({ cells }) =>
      Object.fromEntries(columns.map((column, at) => [column, value((cells[at] ?? '').trim())])),
    ),
    note: style.note(numbers),
  };
}

function styleOf(numbers: readonly NumberCell[], delimiter: string, name: string): NumberStyle {
  try {
    return NumberStyle.of(numbers, delimiter);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(`frame: the file ${inspectValue(name)}: ${error.message}`);
  }
}

function fileText(name: string): string {
  try {
    return readOwnFile(name);
  } catch (error) {
    const why =
      error instanceof InputError
        ? error.message
        : `cannot be read (${(error as { code?: string }).code ?? 'unknown reason'})`;
    throw new InputError(`frame: got the file ${inspectValue(name)}, which ${why}`);
  }
}
