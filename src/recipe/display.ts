import { renderSvg } from '../charts/svg.js';
import { Quantity } from '../quantities/quantity.js';
import { cautionWord } from './caution.js';
import { keepable } from './keepable.js';
import type { Output, Outputs } from './output.js';
import type { Answer, ResultJson, TableBlock, ValueLine } from './result.js';
import { citationText, shortCitation } from './source.js';
import type { Working } from './work.js';

/** Single-valued outputs as lines; tables apart. */
export function valueLines(a: Answer): { lines: ValueLine[]; tables: TableBlock[] } {
  const lines: ValueLine[] = [];
  const tables: TableBlock[] = [];
  for (const [name, o] of Object.entries(a.outputs)) {
    const output = o as Output;
    const raw = a.raw[name];
    if (raw === undefined) continue;
    if (output.columns && Array.isArray(raw)) {
      if (raw.length > 0)
        tables.push(
          tableBlock(name, output.says, output.columns, raw as Record<string, unknown>[], a.currency),
        );
    } else lines.push({ name, says: output.says, ...output.show(raw, a.currency) });
  }
  return { lines, tables };
}

function tableBlock(
  name: string,
  says: string,
  columns: Outputs,
  rows: readonly Record<string, unknown>[],
  currency?: string,
): TableBlock {
  const used = Object.entries(columns).filter(([n]) => rows.some((r) => r[n] !== undefined));
  const withInch = used.map(([n, o]) =>
    rows.some((r) => r[n] !== undefined && (o as Output).show(r[n], currency).inch !== ''),
  );
  const heads = used.flatMap(([n, o], i) =>
    (withInch[i] ? [`${words(n)}`, `${words(n)} (inch)`] : [words(n)]).map(
      (h) => h + ((o as Output).symbol ? '' : ''),
    ),
  );
  return {
    name,
    says,
    columns: heads,
    rows: rows.map((r) =>
      used.flatMap(([n, o], i) => {
        const value = r[n];
        const t = value === undefined ? { metric: '', inch: '' } : nested(o as Output, value, currency);
        return withInch[i] ? [t.metric, t.inch] : [t.metric];
      }),
    ),
  };
}

/** A table inside a table's cell is written out as a short list. */
function nested(o: Output, value: unknown, currency?: string): { metric: string; inch: string } {
  if (!o.columns || !Array.isArray(value)) return o.show(value, currency);
  const text = (value as Record<string, unknown>[])
    .map((row) =>
      Object.entries(o.columns as Outputs)
        .flatMap(([n, c]) => (row[n] === undefined ? [] : [(c as Output).show(row[n], currency).metric]))
        .join(' '),
    )
    .join('; ');
  return { metric: text, inch: '' };
}

/** `finalWidth` as people read it: final width. */
export function words(name: string): string {
  return name.replace(/([a-z0-9])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);
}

const basisWord = {
  published: '',
  definition: 'definition',
  geometry: 'geometry',
  estimate: 'estimate',
  'common practice': 'common practice',
} as const;

/** What a line of the workings rests on, short: the sources stand in full at the end. */
export function workingBasis(w: Working): string {
  if (w.kind === 'remark') return w.source ? shortCitation(w.source) : '';
  return [basisWord[w.basis], w.source ? shortCitation(w.source) : ''].filter(Boolean).join('; ');
}

export function textOf(a: Answer): string {
  const { lines, tables } = valueLines(a);
  const out: string[] = [a.title, ''];
  const block = (rows: readonly ValueLine[]): void => {
    const wide = Math.max(0, ...rows.map((r) => words(r.name).length));
    for (const r of rows)
      out.push(`  ${words(r.name).padEnd(wide)}  ${r.metric}${r.inch ? ` (${r.inch})` : ''}`);
  };
  out.push('Given');
  block(a.given);
  out.push('', 'Answer');
  block(lines);
  for (const t of tables) out.push('', `${t.says}`, ...textTable(t));
  const workings = a.workings();
  if (workings.length > 0) {
    out.push('', 'Workings');
    for (const w of workings) {
      if (w.kind === 'remark') out.push(`  ${w.says}`);
      else out.push(`  ${w.says}: ${w.plain}`, `    ${w.numbersPlain}`);
    }
  }
  for (const c of a.cautions())
    out.push(
      ...(c === a.cautions()[0] ? ['', 'Cautions'] : []),
      `  ${cautionWord[c.level]}: ${c.text}${c.source ? ` [${shortCitation(c.source)}]` : ''}`,
    );
  const sources = a.sources();
  if (sources.length > 0) out.push('', 'Sources', ...sources.map((s) => `  ${citationText(s)}`));
  return out.join('\n');
}

function textTable(t: TableBlock): string[] {
  const all = [t.columns, ...t.rows];
  const widths = t.columns.map((_, i) => Math.max(...all.map((r) => (r[i] ?? '').length)));
  return all.map((r) => `  ${r.map((c, i) => c.padEnd(widths[i] as number)).join('  ')}`.trimEnd());
}

const cell = (s: string): string => s.replace(/\|/g, '\\|').replace(/\n/g, ' ');

export function markdownOf(a: Answer): string {
  const { lines, tables } = valueLines(a);
  const out: string[] = [`### ${a.title}`, ''];
  const block = (head: string, rows: readonly ValueLine[]): void => {
    if (rows.length === 0) return;
    const inch = rows.some((r) => r.inch);
    out.push(inch ? `| ${head} | metric | inch |` : `| ${head} | |`, inch ? '|---|---|---|' : '|---|---|');
    for (const r of rows)
      out.push(
        inch
          ? `| ${cell(r.says)} | ${cell(r.metric)} | ${cell(r.inch)} |`
          : `| ${cell(r.says)} | ${cell(r.metric)} |`,
      );
    out.push('');
  };
  block('Given', a.given);
  block(
    '**Answer**',
    lines.map((l) => ({ ...l, metric: `**${l.metric}**` })),
  );
  for (const t of tables) {
    out.push(
      `**${t.says}**`,
      '',
      `| ${t.columns.map(cell).join(' | ')} |`,
      `|${t.columns.map(() => '---').join('|')}|`,
      ...t.rows.map((r) => `| ${r.map(cell).join(' | ')} |`),
      '',
    );
  }
  const workings = a.workings();
  if (workings.length > 0) {
    out.push('**Workings**', '');
    for (const w of workings) {
      if (w.kind === 'remark') out.push(`- ${w.says}`);
      else
        out.push(
          `- ${w.says}${workingBasis(w) ? ` (${workingBasis(w)})` : ''}`,
          '',
          `  $$${w.latex}$$`,
          '',
          `  $$${w.numbersLatex}$$`,
          '',
        );
    }
    out.push('');
  }
  const cautions = a.cautions();
  if (cautions.length > 0)
    out.push(
      '**Cautions**',
      '',
      ...cautions.map(
        (c) => `- **${cautionWord[c.level]}:** ${c.text}${c.source ? ` (${shortCitation(c.source)})` : ''}`,
      ),
      '',
    );
  const sources = a.sources();
  if (sources.length > 0) out.push('**Sources**', '', ...sources.map((s) => `- ${citationText(s)}`), '');
  return out.join('\n');
}

export const escapeHtml = (s: string): string =>
  s.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');

/** A fragment with its own few styles inline, so that it looks the same in any notebook page, light or dark. */
export function htmlOf(a: Answer): string {
  const { lines, tables } = valueLines(a);
  const e = escapeHtml;
  const td = 'style="text-align:left;padding:.15em .9em .15em 0;vertical-align:top"';
  const label = 'style="text-align:left;padding:.15em .9em .15em 0;vertical-align:top;min-width:12em"';
  const num =
    'style="text-align:right;padding:.15em .9em .15em 0;white-space:nowrap;font-variant-numeric:tabular-nums;vertical-align:top"';
  const block = (head: string, rows: readonly ValueLine[], strong: boolean): string => {
    if (rows.length === 0) return '';
    const inch = rows.some((r) => r.inch);
    // Words stand on the left across both columns, or they would push the numbers apart.
    const isWords = (r: ValueLine): boolean =>
      !/^[-+−£$€¥A-Z]{0,4} ?\d/.test(r.metric) || r.metric.length > 40 || r.metric.includes(', ');
    return `<table style="border-collapse:collapse;margin:.4em 0"><thead><tr><th ${td}>${e(head)}</th><th ${num}></th>${inch ? `<th ${num}></th>` : ''}</tr></thead><tbody>${rows
      .map(
        (r) =>
          `<tr title="${e(r.name)}"><td ${label}>${e(r.says)}</td><td ${isWords(r) ? `${inch ? 'colspan="2" ' : ''}${td}` : num}>${strong ? `<strong>${e(r.metric)}</strong>` : e(r.metric)}${isWords(r) && r.inch ? ` (${e(r.inch)})` : ''}</td>${inch && !isWords(r) ? `<td ${num}>${e(r.inch)}</td>` : ''}</tr>`,
      )
      .join('')}</tbody></table>`;
  };
  const parts: string[] = [`<h4 style="margin:.2em 0 .4em">${e(a.title)}</h4>`, block('Answer', lines, true)];
  for (const t of tables) {
    const numeric = t.columns.map((_, i) =>
      t.rows.every((r) => r[i] === '' || (/^[-−£$€\d]/.test(r[i] as string) && (r[i] as string).length < 20)),
    );
    parts.push(
      `<p style="margin:.6em 0 .2em"><strong>${e(t.says)}</strong></p><table style="border-collapse:collapse"><thead><tr>${t.columns.map((c, i) => `<th ${numeric[i] ? num : td}>${e(c)}</th>`).join('')}</tr></thead><tbody>${t.rows.map((r) => `<tr>${r.map((c, i) => `<td ${numeric[i] ? num : td}>${e(c)}</td>`).join('')}</tr>`).join('')}</tbody></table>`,
    );
  }
  const cautions = a.cautions();
  if (cautions.length > 0)
    parts.push(
      `<ul class="reckoner-cautions" style="margin:.5em 0;padding-left:1.2em">${cautions.map((c) => `<li><strong>${e(cautionWord[c.level])}:</strong> ${e(c.text)}${c.source ? ` <small>(${e(shortCitation(c.source))})</small>` : ''}</li>`).join('')}</ul>`,
    );
  const workings = a.workings();
  const mono =
    'style="font-family:ui-monospace,Menlo,Consolas,monospace;font-size:.95em;overflow-wrap:anywhere"';
  const worked = workings
    .map((w) =>
      w.kind === 'remark'
        ? `<li>${e(w.says)}</li>`
        : `<li>${e(w.says)}${workingBasis(w) ? ` <small>(${e(workingBasis(w))})</small>` : ''}<div><code data-latex="${e(w.latex)}" ${mono}>${e(w.plain)}</code></div><div><code data-latex="${e(w.numbersLatex)}" ${mono}>${e(w.numbersPlain)}</code></div></li>`,
    )
    .join('');
  parts.push(
    `<details open><summary>Workings</summary>${block('Given', a.given, false)}<ol style="padding-left:1.4em">${worked}</ol></details>`,
  );
  const sources = a.sources();
  if (sources.length > 0)
    parts.push(
      `<details><summary>Sources</summary><ul>${sources.map((s) => `<li>${e(citationText(s))}</li>`).join('')}</ul></details>`,
    );
  return `<div class="reckoner-result">${parts.join('')}</div>`;
}

function jsonValue(value: unknown, o: Output | undefined): unknown {
  if (value instanceof Quantity) return o?.unit ? { value: value.in(o.unit), unit: o.unit } : value.toJSON();
  if (Array.isArray(value)) return value.map((v) => jsonValue(v, undefined));
  if (typeof value === 'number') return { value, unit: '' };
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, jsonValue(v, undefined)]));
  return o && typeof value !== 'object' ? { value, unit: '' } : value;
}

export function jsonOf(a: Answer): ResultJson {
  return {
    recipe: a.name,
    title: a.title,
    outputs: Object.fromEntries(
      Object.entries(a.shown).map(([n, v]) => [n, jsonValue(v, a.outputs[n] as Output)]),
    ),
    cautions: a
      .cautions()
      .map((c) => ({
        level: c.level,
        text: c.text,
        ...(c.source ? { source: citationText(c.source) } : {}),
      })),
    workings: a.workings().map((w) => (w.kind === 'remark' ? w.says : w.numbersPlain)),
    sources: a.sources().map(citationText),
  };
}

/** What a page that can reckon needs to bring a shown result to life: the recipe's name and what was given. */
export const aliveType = 'application/vnd.joiners-reckoner.result+json';

/** The mime bundle of a result: text, Markdown, HTML, the chart as Vega-Lite and SVG, and what was given. */
export async function bundleOf(a: Answer): Promise<Record<string, unknown>> {
  const chart = a.chart();
  return {
    'text/plain': textOf(a),
    'text/markdown': markdownOf(a),
    'text/html': htmlOf(a),
    [aliveType]: { recipe: a.name, inputs: keepable(a.written) },
    ...(chart ? { 'image/svg+xml': await renderSvg(chart), 'application/vnd.vegalite.v5+json': chart } : {}),
  };
}
