import type { Control } from './control.js';
import { element } from './dom.js';
import { asText, humanizeName } from './humanize.js';

/** A short table as fields, one a cell. */
export function grid(
  rows: readonly Readonly<Record<string, unknown>>[],
  id: string,
  changed: () => void,
): Control {
  const columns = [...new Set(rows.flatMap((r) => Object.keys(r)))];
  const cells = rows.map((row) =>
    columns.map((c) => {
      const text = asText(row[c]);
      const input = element('input', {
        type: 'text',
        value: text ?? '',
        'aria-label': c,
        size: Math.max(4, Math.min(14, (text ?? '').length)),
      });
      input.addEventListener('input', changed);
      return { input, was: row[c], text: text ?? '' };
    }),
  );
  const table = element(
    'table',
    { id, class: 'grid' },
    element('thead', {}, element('tr', {}, ...columns.map((c) => element('th', {}, humanizeName(c))))),
    element(
      'tbody',
      {},
      ...cells.map((row) => element('tr', {}, ...row.map((cell) => element('td', {}, cell.input)))),
    ),
  );
  // A cell that nobody touched keeps what was given, number or text, so that nothing is lost on the way.
  const valueOf = ({ input, was, text }: (typeof cells)[number][number]): unknown => {
    const written = input.value;
    if (written === text) return was;
    if (written.trim() === '') return undefined;
    return typeof was === 'number' && Number.isFinite(Number(written)) ? Number(written) : written;
  };
  return {
    element: table,
    value: () =>
      cells.map((row) =>
        Object.fromEntries(
          row
            .map((cell, i): [string, unknown] => [columns[i] ?? '', valueOf(cell)])
            .filter(([, v]) => v !== undefined),
        ),
      ),
  };
}
