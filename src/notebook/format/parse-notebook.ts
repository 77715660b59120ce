import {
  quoted,
  type Cell,
  type Json,
  type JsonObject,
  type MimeBundle,
  type Notebook,
  type Output,
} from './notebook.js';

/** A wrong field: its path, and the complaint. {@link parseNotebook} turns it into a NotebookError with line and column. */
export class FieldFault extends Error {
  constructor(
    readonly path: readonly (string | number)[],
    readonly complaint: string,
  ) {
    super(complaint);
  }
}

type Path = readonly (string | number)[];
const own = (o: JsonObject, key: string): Json | undefined => (Object.hasOwn(o, key) ? o[key] : undefined);

/**
 * A JSON value as a notebook: every field checked against nbformat 4 (4.0 to 4.5), text joined, ids given where
 * an older file has none. Throws FieldFault at the first field that is wrong.
 */
export function notebookFrom(value: Json): Notebook {
  const top = object(value, []);
  if (!('cells' in top) && 'worksheets' in top)
    throw new FieldFault(
      ['worksheets'],
      'is of nbformat 3; open the notebook in Jupyter and save it, then it is nbformat 4',
    );
  const major = own(top, 'nbformat');
  if (major !== 4)
    throw new FieldFault(
      ['nbformat'],
      `got ${quoted(major)}; takes 4${typeof major === 'number' && major < 4 ? ': open the notebook in Jupyter and save it' : ''}`,
    );
  const minor = count(own(top, 'nbformat_minor'), ['nbformat_minor']);
  onlyFields(top, ['nbformat', 'nbformat_minor', 'metadata', 'cells'], [], minor);
  const metadata = notebookMetadata(own(top, 'metadata'));
  const list = array(own(top, 'cells'), ['cells']);
  const taken = new Set<string>();
  const ids = new Set(list.map((c) => (isObject(c) ? own(c, 'id') : undefined)));
  let next = 0;
  const freshId = (): string => {
    // Numbered, not random: reading the same old file twice gives the same notebook.
    do next++;
    while (ids.has(`cell-${next}`));
    return `cell-${next}`;
  };
  const cells = list.map((cell, i) => {
    const read = oneCell(cell, ['cells', i], minor, freshId);
    if (taken.has(read.id))
      throw new FieldFault(
        ['cells', i, 'id'],
        `${quoted(read.id)} is the id of an earlier cell too; give each cell its own`,
      );
    taken.add(read.id);
    return read;
  });
  return { nbformat: 4, nbformat_minor: 5, metadata, cells };
}

function notebookMetadata(value: Json | undefined): JsonObject {
  const metadata = object(value, ['metadata']);
  const spec = own(metadata, 'kernelspec');
  if (spec !== undefined) {
    const s = object(spec, ['metadata', 'kernelspec']);
    for (const key of ['name', 'display_name']) string(own(s, key), ['metadata', 'kernelspec', key]);
  }
  const language = own(metadata, 'language_info');
  if (language !== undefined) {
    const l = object(language, ['metadata', 'language_info']);
    string(own(l, 'name'), ['metadata', 'language_info', 'name']);
    for (const key of ['file_extension', 'mimetype', 'pygments_lexer'])
      if (own(l, key) !== undefined) string(own(l, key), ['metadata', 'language_info', key]);
    const mode = own(l, 'codemirror_mode');
    if (mode !== undefined && typeof mode !== 'string' && !isObject(mode))
      throw new FieldFault(
        ['metadata', 'language_info', 'codemirror_mode'],
        `got ${quoted(mode)}; takes text or an object`,
      );
  }
  if (own(metadata, 'title') !== undefined) string(own(metadata, 'title'), ['metadata', 'title']);
  if (own(metadata, 'authors') !== undefined) array(own(metadata, 'authors'), ['metadata', 'authors']);
  const original = own(metadata, 'orig_nbformat');
  if (original === undefined) return metadata;
  if (!Number.isInteger(original) || (original as number) < 1)
    throw new FieldFault(
      ['metadata', 'orig_nbformat'],
      `got ${quoted(original)}; takes a whole number from 1`,
    );
  // "This should never be written to a file", says the format; it is dropped on the way in.
  return Object.fromEntries(Object.entries(metadata).filter(([key]) => key !== 'orig_nbformat'));
}

function oneCell(value: Json, path: Path, minor: number, freshId: () => string): Cell {
  const cell = object(value, path);
  const type = own(cell, 'cell_type');
  if (type !== 'code' && type !== 'markdown' && type !== 'raw')
    throw new FieldFault([...path, 'cell_type'], `got ${quoted(type)}; takes "code", "markdown" or "raw"`);
  const id =
    own(cell, 'id') === undefined && minor < 5 ? freshId() : cellId(own(cell, 'id'), [...path, 'id']);
  const metadata = cellMetadata(own(cell, 'metadata'), [...path, 'metadata']);
  const source = lines(own(cell, 'source'), [...path, 'source']);
  if (type !== 'code') {
    onlyFields(cell, ['id', 'cell_type', 'metadata', 'source', 'attachments'], path, minor);
    const attached = own(cell, 'attachments');
    if (attached === undefined) return { cell_type: type, id, metadata, source };
    const at = [...path, 'attachments'];
    const attachments = Object.fromEntries(
      Object.entries(object(attached, at)).map(([name, b]) => [name, bundle(b, [...at, name])]),
    );
    return { cell_type: type, id, metadata, source, attachments };
  }
  onlyFields(cell, ['id', 'cell_type', 'metadata', 'source', 'outputs', 'execution_count'], path, minor);
  const execution_count = countOrNull(own(cell, 'execution_count'), [...path, 'execution_count']);
  const outputs = array(own(cell, 'outputs'), [...path, 'outputs']).map((o, i) =>
    output(o, [...path, 'outputs', i], minor),
  );
  return { cell_type: 'code', id, metadata, source, execution_count, outputs };
}

function cellId(value: Json | undefined, path: Path): string {
  const id = string(value, path);
  if (!/^[a-zA-Z0-9_-]{1,64}$/.test(id))
    throw new FieldFault(path, `got ${quoted(id)}; takes 1 to 64 letters, digits, - or _`);
  return id;
}

function cellMetadata(value: Json | undefined, path: Path): JsonObject {
  const metadata = object(value, path);
  const check = (key: string, good: (v: Json) => boolean, takes: string): void => {
    const v = own(metadata, key);
    if (v !== undefined && !good(v)) throw new FieldFault([...path, key], `got ${quoted(v)}; takes ${takes}`);
  };
  const isTag = (t: Json): boolean => typeof t === 'string' && /^[^,]+$/.test(t);
  check('name', (v) => typeof v === 'string' && /^.+$/.test(v), 'text of at least one character');
  check(
    'tags',
    (v) => Array.isArray(v) && v.every(isTag) && new Set(v).size === v.length,
    'a list of different words without commas',
  );
  check('jupyter', isObject, 'an object');
  check('collapsed', (v) => typeof v === 'boolean', 'true or false');
  check('scrolled', (v) => v === true || v === false || v === 'auto', 'true, false or "auto"');
  check('format', (v) => typeof v === 'string', 'text');
  check(
    'execution',
    (v) => isObject(v) && Object.values(v).every((t) => typeof t === 'string'),
    'an object of times as text',
  );
  return metadata;
}

function output(value: Json, path: Path, minor: number): Output {
  const o = object(value, path);
  const type = own(o, 'output_type');
  const at = (key: string): [Json | undefined, Path] => [own(o, key), [...path, key]];
  switch (type) {
    case 'stream':
      onlyFields(o, ['output_type', 'name', 'text'], path, minor);
      return { output_type: type, name: string(...at('name')), text: lines(...at('text')) };
    case 'display_data':
      onlyFields(o, ['output_type', 'data', 'metadata'], path, minor);
      return { output_type: type, data: bundle(...at('data')), metadata: object(...at('metadata')) };
    case 'execute_result':
      onlyFields(o, ['output_type', 'execution_count', 'data', 'metadata'], path, minor);
      return {
        output_type: type,
        execution_count: countOrNull(...at('execution_count')),
        data: bundle(...at('data')),
        metadata: object(...at('metadata')),
      };
    case 'error':
      onlyFields(o, ['output_type', 'ename', 'evalue', 'traceback'], path, minor);
      return {
        output_type: type,
        ename: string(...at('ename')),
        evalue: string(...at('evalue')),
        traceback: array(...at('traceback')).map((line, i) => string(line, [...path, 'traceback', i])),
      };
    default:
      throw new FieldFault(
        [...path, 'output_type'],
        `got ${quoted(type)}; takes "stream", "display_data", "execute_result" or "error"`,
      );
  }
}

const jsonType = /^application\/(.*\+)?json$/;

function bundle(value: Json | undefined, path: Path): MimeBundle {
  const entries = Object.entries(object(value, path));
  return Object.fromEntries(
    entries.map(([type, v]) => [type, jsonType.test(type) ? v : lines(v, [...path, type])]),
  );
}

function onlyFields(o: JsonObject, known: readonly string[], path: Path, minor: number): void {
  if (minor > 5) return; // a later minor version may add fields; they are read past
  const other = Object.keys(o).find((key) => !known.includes(key));
  if (other !== undefined)
    throw new FieldFault([...path, other], `is not a field here; takes ${known.join(', ')}`);
}

function object(value: Json | undefined, path: Path): JsonObject {
  if (!isObject(value)) throw new FieldFault(path, `got ${quoted(value)}; takes an object {...}`);
  return value;
}
function isObject(value: Json | undefined): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
function array(value: Json | undefined, path: Path): readonly Json[] {
  if (!Array.isArray(value)) throw new FieldFault(path, `got ${quoted(value)}; takes a list [...]`);
  return value as readonly Json[];
}
function string(value: Json | undefined, path: Path): string {
  if (typeof value !== 'string') throw new FieldFault(path, `got ${quoted(value)}; takes text`);
  return value;
}
function lines(value: Json | undefined, path: Path): string {
  if (typeof value === 'string') return value;
  if (!Array.isArray(value))
    throw new FieldFault(path, `got ${quoted(value)}; takes text or a list of lines`);
  return value.map((line: Json, i) => string(line, [...path, i])).join('');
}
function count(value: Json | undefined, path: Path): number {
  if (!Number.isInteger(value) || (value as number) < 0)
    throw new FieldFault(path, `got ${quoted(value)}; takes a whole number from 0`);
  return value as number;
}
function countOrNull(value: Json | undefined, path: Path): number | null {
  return value === null ? null : count(value, path);
}
