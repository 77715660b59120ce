import { randomUUID } from 'node:crypto';
import type { CodeCell, Json, Notebook } from '../notebook/format/notebook.js';
import { UsageError } from './usage.js';

/** `width=900 mm`, `knives=4`, `timbers=["oak"]`: a value is JSON where it reads as such, else text. @throws UsageError */
export function parametersOf(words: readonly string[]): Record<string, Json> {
  return Object.fromEntries(
    words.map((word) => {
      const [, name, text] = /^([A-Za-z_$][\w$]*)=(.*)$/s.exec(word) ?? [];
      if (name === undefined || text === undefined)
        throw new UsageError(`-p: got ${JSON.stringify(word.slice(0, 60))}, takes NAME=VALUE`);
      return [name, jsonOrText(text)];
    }),
  );
}

function jsonOrText(text: string): Json {
  try {
    return JSON.parse(text) as Json;
  } catch {
    return text;
  }
}

/**
 * The notebook with a cell after the one tagged `parameters` that sets the names given, tagged `injected-parameters` as
 * other runners of notebooks do; such a cell from an earlier run is replaced.
 * @throws UsageError where no cell is tagged or it does not declare a name with `let` or `var`
 */
export function withParameters(
  notebook: Notebook,
  parameters: Readonly<Record<string, Json>>,
  file: string,
): Notebook {
  const names = Object.keys(parameters);
  if (names.length === 0) return notebook;
  const cells = notebook.cells.filter((c) => !tagsOf(c).includes('injected-parameters'));
  const at = cells.findIndex((c) => c.cell_type === 'code' && tagsOf(c).includes('parameters'));
  const declaring = cells[at];
  if (!declaring) throw new UsageError(`-p: no cell of ${file} is tagged "parameters"`);
  for (const name of names)
    if (!new RegExp(`\\b(?:let|var)\\s[^;\\n]*\\b${name.replace(/\$/g, '\\$')}\\b`).test(declaring.source))
      throw new UsageError(
        `-p: the cell tagged "parameters" of ${file} does not declare ${name} with let, such as let ${name} = ...;`,
      );
  const injected: CodeCell = {
    cell_type: 'code',
    id: randomUUID().slice(0, 8),
    metadata: { tags: ['injected-parameters'] },
    source: Object.entries(parameters)
      .map(([name, value]) => `${name} = ${JSON.stringify(value)};`)
      .join('\n'),
    execution_count: null,
    outputs: [],
  };
  return { ...notebook, cells: [...cells.slice(0, at + 1), injected, ...cells.slice(at + 1)] };
}

const tagsOf = (cell: Notebook['cells'][number]): readonly Json[] => {
  const tags = cell.metadata['tags'];
  return Array.isArray(tags) ? (tags as readonly Json[]) : [];
};
