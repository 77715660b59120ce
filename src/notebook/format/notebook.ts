/** A value of JSON. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };
export type JsonObject = { readonly [key: string]: Json };

/** Renderings of one thing by media type; text types are one string here, however many lines the file cut them into. */
export type MimeBundle = JsonObject;

/** What a cell put out, as nbformat 4.5 names it. */
export type Output =
  | { readonly output_type: 'stream'; readonly name: string; readonly text: string }
  | { readonly output_type: 'display_data'; readonly data: MimeBundle; readonly metadata: JsonObject }
  | {
      readonly output_type: 'execute_result';
      readonly execution_count: number | null;
      readonly data: MimeBundle;
      readonly metadata: JsonObject;
    }
  | {
      readonly output_type: 'error';
      readonly ename: string;
      readonly evalue: string;
      readonly traceback: readonly string[];
    };

interface CellBase {
  readonly id: string;
  readonly metadata: JsonObject;
  readonly source: string;
}
export interface CodeCell extends CellBase {
  readonly cell_type: 'code';
  readonly execution_count: number | null;
  readonly outputs: readonly Output[];
}
export interface TextCell extends CellBase {
  readonly cell_type: 'markdown' | 'raw';
  readonly attachments?: { readonly [name: string]: MimeBundle };
}
export type Cell = CodeCell | TextCell;

/** A notebook in memory: nbformat 4.5, whatever older minor version the file was. */
export interface Notebook {
  readonly nbformat: 4;
  readonly nbformat_minor: 5;
  readonly metadata: JsonObject;
  readonly cells: readonly Cell[];
}

/** Where in a notebook file something is wrong. Lines and columns count from 1, cells too. */
export interface Fault {
  readonly file: string;
  readonly line?: number;
  readonly column?: number;
  readonly cell?: number;
  /** Path of the field, such as `cells[2].outputs[0].text`; empty for the whole file. */
  readonly field: string;
}

/** A file that is no notebook, or a broken one. The message names the place, what stood there and what belongs there. */
export class NotebookError extends Error {
  override readonly name = 'NotebookError';
  constructor(
    readonly fault: Fault,
    readonly complaint: string,
  ) {
    const place =
      fault.line === undefined
        ? fault.file
        : `${fault.file}, line ${fault.line}, column ${fault.column ?? 1}`;
    const cell = fault.cell === undefined ? '' : `cell ${fault.cell}, `;
    super(`${place}: ${cell}${fault.field === '' ? '' : `${fault.field}: `}${complaint}`);
  }
}

/** The text of a JSON value, as an error message quotes it. */
export function quoted(value: unknown): string {
  const text =
    (JSON.stringify(value) as string | undefined) ?? (value === undefined ? 'nothing' : typeof value);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}
