// The class exercises of a notebook, made from its cells as a reader makes them by running it.
import { readFileSync } from 'node:fs';
import * as library from '../../src/index.js';

/** Sources of the code cells of a notebook. */
export function codeCells(notebook: string): string[] {
  const { cells } = JSON.parse(
    readFileSync(new URL(`../../notebooks/${notebook}.ipynb`, import.meta.url), 'utf8'),
  ) as { cells: { cell_type: string; source: string[] }[] };
  return cells.filter((c) => c.cell_type === 'code').map((c) => c.source.join(''));
}

/** The named exercises that some code defines; imports go, since the library is at hand, and so do non-null marks. */
export function exercisesIn(code: string, names: readonly string[]): Record<string, library.Exercise> {
  const plain = code.replace(/^import .*$/gm, '').replace(/([\])\w])!/g, '$1');
  const globals = library as Record<string, unknown>;
  // eslint-disable-next-line @typescript-eslint/no-implied-eval -- the code is a notebook's own, and running it is the test
  const run = new Function(...Object.keys(globals), `${plain}\nreturn { ${names.join(', ')} };`) as (
    ...values: unknown[]
  ) => Record<string, library.Exercise>;
  return run(...Object.values(globals));
}
