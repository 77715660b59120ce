import { number } from '../units/format-quantity.js';
import { escapeHtml } from '../engine/result-display.js';
import { shortCitation } from '../engine/source.js';
import type { PropertyRange } from './property-range.js';
import type { DataRow } from './data-tables.js';
import type { Movement, Shrinkage } from './movement-data.js';
import type { Condition, Density, Gravity } from './specific-gravity.js';
import type { Mechanical } from './strength.js';

/** What is shown of a timber: its names and its published properties. */
export interface DescribedTimber {
  readonly name: string;
  readonly group: string;
  readonly botanical?: string;
  readonly isGroup: boolean;
  readonly memberIds: readonly string[];
  readonly readAs?: string;
  movements(): readonly Movement[];
  shrinkage(): Shrinkage | undefined;
  specificGravity(condition: Condition): Gravity | undefined;
  density(): Density | undefined;
  mechanical(condition: Condition): Mechanical | undefined;
}

interface Line {
  readonly what: string;
  readonly value: string;
  readonly source: string;
  readonly remark: string;
}

/** A value with its unit, and its range where it has one. */
const valueText = (s: PropertyRange | undefined, scale: number, unit: string, digits = 3): string =>
  s === undefined
    ? ''
    : s.low === s.high
      ? `${number(s.middle * scale, digits)} ${unit}`.trim()
      : `${`${number(s.middle * scale, digits)} ${unit}`.trim()} (${number(s.low * scale, digits)} to ${number(s.high * scale, digits)})`;

function from(t: DescribedTimber, rows: readonly DataRow[], count: number): Pick<Line, 'source' | 'remark'> {
  if (t.isGroup) return { source: `${count} published species`, remark: 'median (10th to 90th percentile)' };
  return {
    source: [...new Set(rows.map((r) => shortCitation(r.citation)))].join('; '),
    remark: [
      ...new Set(
        rows
          .flatMap((r) => [
            r.read === 'memory' ? 'not yet verified' : '',
            r.read === 'derived' ? 'worked out from printed figures' : '',
            r.doubt,
            r.preferred ? '' : `set aside: ${r.preferReason}`,
          ])
          .filter(Boolean),
      ),
    ].join('; '),
  };
}

function linesOf(t: DescribedTimber): Line[] {
  const out: Line[] = [];
  const add = (what: string, text: string, rows: readonly DataRow[], count: number): void => {
    if (text.trim() !== '') out.push({ what, value: text, ...from(t, rows, count) });
  };
  for (const m of t.movements())
    add(
      'movement for 1 % of moisture, along and across the rings',
      [valueText(m.tangential, 1, '%'), valueText(m.radial, 1, '%')].filter(Boolean).join(', '),
      m.rows,
      m.count,
    );
  const s = t.shrinkage();
  if (s)
    add(
      'shrinkage green to oven-dry, along and across the rings',
      [valueText(s.tangential, 100, '%'), valueText(s.radial, 100, '%')].filter(Boolean).join(', '),
      s.rows,
      s.count,
    );
  const g = t.specificGravity('green');
  if (g) add('specific gravity on green volume', valueText(g.gravity, 1, ''), g.rows, g.count);
  const d = t.density();
  if (d) add('density at 12 %', valueText(d.density, 1, 'kg/m³'), d.rows, d.count);
  const m = t.mechanical('12%');
  if (m)
    add(
      `stiffness and bending strength at 12 % (${m.basis})`,
      [valueText(m.modulus, 1e-9, 'GPa'), valueText(m.bending, 1e-6, 'MPa')].filter(Boolean).join(', '),
      m.rows,
      m.count,
    );
  return out;
}

const title = (t: DescribedTimber): string =>
  `${t.name}${t.botanical ? ` (${t.botanical})` : ''}, ${t.isGroup ? `a group of ${t.memberIds.length} entries` : t.group}`;

/** What the data hold of a timber, as text: one line a property with its source. */
export function timberText(t: DescribedTimber): string {
  return [
    title(t),
    ...linesOf(t).map((l) => `  ${l.what}: ${l.value} [${l.source}${l.remark ? `; ${l.remark}` : ''}]`),
    ...(t.readAs ? [`  ${t.readAs}`] : []),
  ].join('\n');
}

/** The same as a table. */
export function timberHtml(t: DescribedTimber): string {
  const td = 'style="text-align:left;padding:.15em .9em .15em 0;vertical-align:top"';
  const e = escapeHtml;
  return `<div class="reckoner-timber"><h4 style="margin:.2em 0 .4em">${e(title(t))}</h4><table style="border-collapse:collapse"><thead><tr>${['Property', 'Value', 'Source', 'Remark'].map((h) => `<th ${td}>${h}</th>`).join('')}</tr></thead><tbody>${linesOf(
    t,
  )
    .map(
      (l) =>
        `<tr>${[l.what, l.value, l.source, l.remark].map((c) => `<td ${td}>${e(c)}</td>`).join('')}</tr>`,
    )
    .join('')}</tbody></table>${t.readAs ? `<p>${e(t.readAs)}</p>` : ''}</div>`;
}
