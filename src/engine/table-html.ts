import { escapeHtml as e } from './escape-html.js';
import type { TableBlock, ValueCell } from './result-types.js';

const num =
  'style="text-align:right;padding:.15em .9em .15em 0;white-space:nowrap;font-variant-numeric:tabular-nums;vertical-align:top"';
const words = 'style="text-align:left;padding:.15em .9em .15em 0;vertical-align:top"';
const head = (side: string): string =>
  `style="text-align:${side};padding:.15em .9em .15em 0;vertical-align:bottom;white-space:normal"`;
const wide = 'style="text-align:left;padding:.15em .9em .15em 0;vertical-align:top;min-width:8em"';

/** A table of outputs. Inches stand small below their metric figure: columns of their own would make it too wide for a page. */
export function tableHtml(t: TableBlock): string {
  const isNumber = figureColumns(t);
  const isLong = t.heads.map((_, i) => t.cells.some((r) => (r[i] as ValueCell).metric.length > 24));
  const style = (i: number): string => (isNumber[i] ? num : isLong[i] ? wide : words);
  const heads = t.heads.map((h, i) => `<th ${head(isNumber[i] ? 'right' : 'left')}>${e(h)}</th>`);
  const rows = t.cells.map(
    (r) =>
      `<tr>${r.map((c, i) => `<td ${style(i)}>${cellHtml(c, isNumber[i] === true)}</td>`).join('')}</tr>`,
  );
  return `<p style="margin:.6em 0 .2em"><strong>${e(t.label)}</strong></p><div style="overflow-x:auto"><table style="border-collapse:collapse${t.heads.length > 6 ? ';font-size:.9em' : ''}"><thead><tr>${heads.join('')}</tr></thead><tbody>${rows.join('')}</tbody></table></div>`;
}

/** Which columns hold figures alone, to be set to the right. */
export function figureColumns(t: TableBlock): boolean[] {
  return t.heads.map((_, i) =>
    t.cells.every((r) => {
      const { metric } = r[i] as ValueCell;
      return metric === '' || (/^[-−£$€\d]/.test(metric) && metric.length < 20);
    }),
  );
}

/** A cell: inches small below the metric figure, and each row of a table within the cell on a line of its own. */
export function cellHtml({ metric, inch, items }: ValueCell, figure: boolean): string {
  const write = figure ? e : unparted;
  const both = (c: Pick<ValueCell, 'metric' | 'inch'>): string =>
    write(c.metric) + (c.inch === '' ? '' : `<br><small style="font-size:.85em">${write(c.inch)}</small>`);
  if (items === undefined) return both({ metric, inch });
  const short = items.every((i) => i.metric.length <= 30);
  return items.map((i) => `<div${short ? ' style="white-space:nowrap"' : ''}>${both(i)}</div>`).join('');
}

/** Among words a figure must not part from its unit at the end of a line. */
const unparted = (text: string): string => e(text).replace(/(\d) (?=[\d°µ%a-zA-Z])/g, '$1\u00a0');
