/** A compiled cell as the text of a function; its first line is the cell's. */
import type { CompiledCell } from '../compiler/compile-cell.js';
import { mark } from '../compiler/transform-expressions.js';

/** `headLines` is how many lines of the text come before the cell's code. */
export const headLines = 1;

export function bodySource(cell: CompiledCell): string {
  const names = cell.bindings.map((name) => `${JSON.stringify(name)}: ${mark}${name}`).join(', ');
  const head = `${cell.hasTopLevelAwait ? 'async ' : ''}function (${mark}, require, { ${names} })`;
  return `'use strict';return (${head} {\n${cell.code}\n})`;
}
