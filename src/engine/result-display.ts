import { renderSvg } from '../charts/svg.js';
import { clean } from '../units/clean-number.js';
import { Quantity } from '../units/quantity.js';
import { toSerializable } from './to-serializable.js';
import type { Output } from './output.js';
import { htmlOf } from './result-html.js';
import { markdownOf } from './result-markdown.js';
import { textOf } from './result-text.js';
import type { ResultInternals, ResultJson } from './result-types.js';
import { citationText } from './source.js';

export { escapeHtml } from './escape-html.js';
export { htmlOf } from './result-html.js';
export { markdownOf } from './result-markdown.js';
export { textOf } from './result-text.js';
export { cellHtml, figureColumns } from './table-html.js';
export { valueLines, words } from './value-table.js';
export { workingBasis } from './step-basis.js';

function jsonValue(value: unknown, o: Output | undefined): unknown {
  if (value instanceof Quantity)
    return o?.unit ? { value: clean(value.in(o.unit)), unit: o.unit } : value.toJSON();
  if (Array.isArray(value)) return value.map((v) => jsonValue(v, undefined));
  if (typeof value === 'number') return { value: clean(value), unit: '' };
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, jsonValue(v, undefined)]));
  return o && typeof value !== 'object' ? { value, unit: '' } : value;
}

export function jsonOf(a: ResultInternals): ResultJson {
  return {
    recipe: a.name,
    title: a.title,
    outputs: Object.fromEntries(
      Object.entries(a.shown).map(([n, v]) => [n, jsonValue(v, a.outputs[n] as Output)]),
    ),
    cautions: a.cautions().map((c) => ({
      level: c.level,
      text: c.text,
      ...(c.source ? { source: citationText(c.source) } : {}),
    })),
    workings: a.workings().map((w) => (w.kind === 'remark' ? w.text : w.numbersPlain)),
    sources: a.sources().map(citationText),
  };
}

/** What a page that can calculate needs to bring a shown result to life: the recipe's name and what was given. */
export const resultMimeType = 'application/vnd.joiners-reckoner.result+json';

/** The mime bundle of a result: text, Markdown, HTML, the chart as Vega-Lite and SVG, and what was given. */
export async function resultBundle(a: ResultInternals): Promise<Record<string, unknown>> {
  const chart = a.chart();
  return {
    'text/plain': textOf(a),
    'text/markdown': markdownOf(a),
    'text/html': htmlOf(a),
    [resultMimeType]: { recipe: a.name, inputs: toSerializable(a.rawInputs) },
    ...(chart ? { 'image/svg+xml': await renderSvg(chart), 'application/vnd.vegalite.v5+json': chart } : {}),
  };
}
