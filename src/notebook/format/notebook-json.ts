import { findNodeAtLocation, parseTree, printParseErrorCode, type ParseError } from 'jsonc-parser';
import { FieldFault, notebookFrom } from './parse-notebook.js';
import { NotebookError, type Cell, type Json, type Notebook, type Output } from './notebook.js';

const deepest = 500;

/**
 * Text of an .ipynb file as a notebook. `name` is what errors call the file.
 * Throws {@link NotebookError} with line and column, cell and field.
 */
export function parseNotebook(text: string, name = 'notebook'): Notebook {
  if (text.trim() === '')
    throw new NotebookError(
      { file: name, line: 1, column: 1, field: '' },
      'is empty; takes a notebook in JSON (.ipynb)',
    );
  const bare = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const tooDeep = placeOfDepth(bare, deepest);
  if (tooDeep !== undefined)
    throw new NotebookError(
      { file: name, ...lineAndColumn(bare, tooDeep), field: '' },
      `is nested more than ${deepest} deep; no notebook is`,
    );
  let value: Json;
  try {
    value = JSON.parse(bare) as Json;
  } catch (error) {
    throw syntaxFault(bare, name, error);
  }
  try {
    return notebookFrom(value);
  } catch (error) {
    if (!(error instanceof FieldFault)) throw error;
    throw fieldFault(bare, name, error);
  }
}

/**
 * A notebook as the text of its file, as Jupyter itself writes it: all keys sorted, at any depth, and one line of text a line.
 * A file that Jupyter saved keeps every line that was not edited.
 */
export function notebookText(notebook: Notebook): string {
  const file = {
    cells: notebook.cells.map(fileCell),
    metadata: notebook.metadata,
    nbformat: 4,
    nbformat_minor: 5,
  };
  return `${JSON.stringify(file, sortedKeys, 1)}\n`;
}

/** A replacer for JSON.stringify that sorts the keys of every object by their code points. */
function sortedKeys(_key: string, value: unknown): unknown {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
}

function fileCell(cell: Cell): Record<string, unknown> {
  const { id, metadata } = cell;
  if (cell.cell_type !== 'code') {
    const attachments = cell.attachments === undefined ? {} : { attachments: cell.attachments };
    return { ...attachments, cell_type: cell.cell_type, id, metadata, source: cut(cell.source) };
  }
  return {
    cell_type: 'code',
    execution_count: cell.execution_count,
    id,
    metadata,
    outputs: cell.outputs.map(fileOutput),
    source: cut(cell.source),
  };
}

function fileOutput(output: Output): Record<string, unknown> {
  if (output.output_type === 'stream')
    return { name: output.name, output_type: 'stream', text: cut(output.text) };
  if (output.output_type === 'error')
    return { ename: output.ename, evalue: output.evalue, output_type: 'error', traceback: output.traceback };
  const data = Object.fromEntries(
    Object.entries(output.data).map(([type, v]) => [type, typeof v === 'string' && isCut(type) ? cut(v) : v]),
  );
  const { metadata, output_type } = output;
  return output.output_type === 'execute_result'
    ? { data, execution_count: output.execution_count, metadata, output_type }
    : { data, metadata, output_type };
}

/** Whether notebooks keep text of a media type as a list of lines. */
const isCut = (type: string): boolean =>
  type.startsWith('text/') || type === 'image/svg+xml' || type === 'application/javascript';

/** Text cut after each line end, as notebooks keep it. */
function cut(text: string): string[] {
  return text === '' ? [] : text.split(/(?<=\n)/);
}

function syntaxFault(text: string, file: string, cause: unknown): NotebookError {
  const errors: ParseError[] = [];
  parseTree(text, errors, { disallowComments: true, allowTrailingComma: false });
  const first = errors.reduce<ParseError | undefined>(
    (a, b) => (a === undefined || b.offset < a.offset ? b : a),
    undefined,
  );
  if (first === undefined)
    return new NotebookError(
      { file, line: 1, column: 1, field: '' },
      `is not JSON: ${cause instanceof Error ? cause.message : 'unknown fault'}`,
    );
  const end = first.offset > 0 && first.offset + first.length >= text.trimEnd().length;
  const words = end
    ? 'the file ends here in the middle of something; it was cut short'
    : `is not JSON here (${inWords(printParseErrorCode(first.error))})`;
  const at = end ? text.length : first.offset;
  const cell = cellAt(text, at);
  return new NotebookError(
    {
      file,
      ...lineAndColumn(text, at),
      ...(cell === undefined ? {} : { cell }),
      field: '',
    },
    words,
  );
}

/** `CommaExpected` -> `comma expected` */
function inWords(code: string): string {
  return code.replace(/(?<=[a-z])[A-Z]/g, (c) => ` ${c}`).toLowerCase();
}

/** The cell, counted from 1, that a place in broken JSON stands in: as many as have begun before it. */
function cellAt(text: string, offset: number): number | undefined {
  const begun = text.slice(0, offset).match(/"cell_type"\s*:/g)?.length ?? 0;
  return begun === 0 ? undefined : begun;
}

function fieldFault(text: string, file: string, fault: FieldFault): NotebookError {
  const tree = parseTree(text);
  let node = tree;
  // A missing field has no place of its own: the nearest thing around it has.
  for (let n = fault.path.length; tree !== undefined && n >= 0; n--) {
    node = findNodeAtLocation(tree, fault.path.slice(0, n));
    if (node !== undefined) break;
  }
  const [first, index, ...rest] = fault.path;
  const inCell = first === 'cells' && typeof index === 'number';
  const shown = inCell ? ['cells', index, ...rest] : fault.path;
  return new NotebookError(
    {
      file,
      ...(node === undefined ? {} : lineAndColumn(text, node.offset)),
      ...(inCell ? { cell: index + 1 } : {}),
      field: pathText(shown),
    },
    fault.complaint,
  );
}

function pathText(path: readonly (string | number)[]): string {
  return path.reduce<string>((text, part) => {
    if (typeof part === 'number') return `${text}[${part}]`;
    if (!/^[\w$]+$/.test(part)) return `${text}[${JSON.stringify(part)}]`;
    return text === '' ? part : `${text}.${part}`;
  }, '');
}

/** The place of an offset in a text, both counted from 1. */
export function lineAndColumn(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset);
  return { line: before.split('\n').length, column: offset - before.lastIndexOf('\n') };
}

/** Where brackets outside of strings go deeper than `limit`, if they do: JSON that deep overflows the stack of whoever writes it again. */
function placeOfDepth(text: string, limit: number): number | undefined {
  let depth = 0;
  let inString = false;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (inString) {
      if (c === 92) i++;
      else if (c === 34) inString = false;
    } else if (c === 34) inString = true;
    else if (c === 123 || c === 91) {
      if (++depth > limit) return i;
    } else if (c === 125 || c === 93) depth--;
  }
  return undefined;
}
