import { number } from '../units/format-quantity.js';
import { escapeHtml } from '../engine/result-display.js';
import { shortCitation } from '../engine/source.js';
import type { PropertyRange } from './property-range.js';
import type { DataRow } from './data-tables.js';
import type { Timber } from './timber.js';

interface Line {
  readonly what: string;
  readonly figure: string;
  readonly source: string;
  readonly remark: string;
}

const figure = (s: PropertyRange | undefined, scale: number, unit: string, digits = 3): string =>
  s === undefined
    ? ''
    : s.low === s.high
      ? `${number(s.middle * scale, digits)} ${unit}`.trim()
      : `${`${number(s.middle * scale, digits)} ${unit}`.trim()} (${number(s.low * scale, digits)} to ${number(s.high * scale, digits)})`;

function from(t: Timber, rows: readonly DataRow[], count: number): Pick<Line, 'source' | 'remark'> {
  if (t.isGroup) return { source: `${count} published species`, remark: 'median (10th to 90th percentile)' };
  return {
    source: [...new Set(rows.map((r) => shortCitation(r.citation)))].join('; '),
    remark: [
      ...new Set(
        rows
          .flatMap((r) => [
            r.read === 'memory' ? 'recalled, not seen in print' : '',
            r.doubt,
            r.preferred ? '' : `set aside: ${r.preferReason}`,
          ])
          .filter(Boolean),
      ),
    ].join('; '),
  };
}

function linesOf(t: Timber): Line[] {
  const out: Line[] = [];
  const add = (what: string, text: string, rows: readonly DataRow[], count: number): void => {
    if (text.trim() !== '') out.push({ what, figure: text, ...from(t, rows, count) });
  };
  for (const m of t.movements())
    add(
      'movement for 1 % of moisture, along and across the rings',
      [figure(m.tangential, 1, '%'), figure(m.radial, 1, '%')].filter(Boolean).join(', '),
      m.rows,
      m.count,
    );
  const s = t.shrinkage();
  if (s)
    add(
      'shrinkage green to ovendry, along and across the rings',
      [figure(s.tangential, 100, '%'), figure(s.radial, 100, '%')].filter(Boolean).join(', '),
      s.rows,
      s.count,
    );
  const g = t.specificGravity('green');
  if (g) add('specific gravity on green volume', figure(g.gravity, 1, ''), g.rows, g.count);
  const d = t.density();
  if (d) add('density at 12 %', figure(d.density, 1, 'kg/m³'), d.rows, d.count);
  const m = t.mechanical('12%');
  if (m)
    add(
      `stiffness and bending strength at 12 % (${m.basis})`,
      [figure(m.modulus, 1e-9, 'GPa'), figure(m.bending, 1e-6, 'MPa')].filter(Boolean).join(', '),
      m.rows,
      m.count,
    );
  return out;
}

const title = (t: Timber): string =>
  `${t.name}${t.botanical ? ` (${t.botanical})` : ''}, ${t.isGroup ? `a group of ${t.memberIds.length} entries` : t.group}`;

/** What the data hold of a timber, as text: one line a figure with its source. */
export function timberText(t: Timber): string {
  return [
    title(t),
    ...linesOf(t).map((l) => `  ${l.what}: ${l.figure} [${l.source}${l.remark ? `; ${l.remark}` : ''}]`),
    ...(t.readAs ? [`  ${t.readAs}`] : []),
  ].join('\n');
}

/** The same as a table. */
export function timberHtml(t: Timber): string {
  const td = 'style="text-align:left;padding:.15em .9em .15em 0;vertical-align:top"';
  const e = escapeHtml;
  return `<div class="reckoner-timber"><h4 style="margin:.2em 0 .4em">${e(title(t))}</h4><table style="border-collapse:collapse"><thead><tr>${['Property', 'Figure', 'Source', 'Remark'].map((h) => `<th ${td}>${h}</th>`).join('')}</tr></thead><tbody>${linesOf(
    t,
  )
    .map(
      (l) =>
        `<tr>${[l.what, l.figure, l.source, l.remark].map((c) => `<td ${td}>${e(c)}</td>`).join('')}</tr>`,
    )
    .join('')}</tbody></table>${t.readAs ? `<p>${e(t.readAs)}</p>` : ''}</div>`;
}
