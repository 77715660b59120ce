import type { FieldModel } from '../model/recipe-model.js';

/** Rows of text from a spreadsheet, by column name. A first line that names columns is not a row of its own. */
export function pastedRows(
  text: string,
  columns: readonly FieldModel[],
  first: number,
): Record<string, string>[] {
  const lines = text
    .replace(/\r\n?/g, '\n')
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => line.split('\t').map((cell) => cell.trim()));
  const headings = lines[0]?.map((cell) => columnNamed(cell, columns));
  const hasHeadings =
    headings !== undefined && headings.filter((name) => name !== undefined).length * 2 > headings.length;
  const names = hasHeadings ? headings : columns.slice(first).map(({ name }) => name);
  return lines.slice(hasHeadings ? 1 : 0).map((cells) =>
    Object.fromEntries(
      cells.flatMap((cell, i) => {
        const name = names[i];
        return name === undefined ? [] : [[name, cell] as const];
      }),
    ),
  );
}

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[([].*$/, '')
    .replace(/[\s_-]+/g, '');

const columnNamed = (heading: string, columns: readonly FieldModel[]): string | undefined =>
  columns.find(({ name, label }) => plain(name) === plain(heading) || plain(label) === plain(heading))?.name;
