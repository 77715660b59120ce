import type { ChartSpec } from '../charts/chart-spec.js';
import { renderSvg } from '../charts/svg.js';
import type { AnyRecipe } from './any-recipe.js';
import type { Field } from './field.js';
import type { Formula } from './formula.js';
import { callOf } from './recipe-call.js';
import { resultInternals, type Result } from './result.js';
import { citationText } from './source.js';

const cell = (s: string): string => s.replace(/\|/g, '\\|').replace(/\s*\n\s*/g, ' ');

function table(head: readonly string[], rows: readonly (readonly string[])[]): string[] {
  if (rows.length === 0) return [];
  const line = (cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`;
  return [line(head), `|${head.map(() => '---').join('|')}|`, ...rows.map(line), ''];
}

const meaning = ({ label, help }: { readonly label: string; readonly help?: string }): string =>
  help === undefined ? label : `${label}. ${help}`;

const defaultOf = (f: Field): string =>
  f.default !== undefined
    ? typeof f.default === 'string'
      ? f.default
      : JSON.stringify(f.default)
    : f.optional
      ? 'optional'
      : '';

/** The other recipes of its topic. */
export const relatedTo = (r: AnyRecipe, all: readonly AnyRecipe[]): readonly AnyRecipe[] =>
  all.filter((x) => x.topic === r.topic && x.name !== r.name);

/** What is said outside each range that its sources cover; `example` is its answer to its example. */
export const limitsOf = (r: AnyRecipe, example: Result): readonly string[] => [
  ...new Set(r.limitsOf(r.read(r.example), resultInternals(example)?.raw ?? {})),
];

/** A chart as a picture in Markdown. */
async function picture(says: string, spec: ChartSpec): Promise<string> {
  const svg = await renderSvg(spec);
  return `![${says}](data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')})`;
}

/**
 * The reference page of a recipe as Markdown: what it answers, inputs, outputs, formulas, the example with its result and
 * cautions, sources, and the recipes of the same topic given as `related`. `sketch` is the Markdown of its lettered sketch.
 */
export async function referencePage(
  r: AnyRecipe,
  related: readonly AnyRecipe[] = [],
  sketch: readonly string[] = [],
): Promise<string> {
  const result = await r(r.example);
  const inputs = Object.entries(r.inputs).map(([n, f]) => [`\`${n}\``, meaning(f), f.expects, defaultOf(f)]);
  const outputs = Object.entries(r.outputs).map(([n, o]) => [
    `\`${n}\`${o.optional ? ' (not always)' : ''}`,
    meaning(o),
    o.unit ? `${o.kind}, in ${o.unit}` : o.kind,
  ]);
  const others = relatedTo(r, related);
  const limits = limitsOf(r, result);
  const sources = new Set(
    [...r.sources, ...r.formulas.flatMap((f) => f.source ?? []), ...result.sources].map(citationText),
  );
  return [
    `# ${r.title}`,
    '',
    r.about,
    '',
    ...(sketch.length > 0 ? ['## Sketch', '', ...sketch] : []),
    '## Inputs',
    '',
    ...table(['Name', 'Meaning', 'Takes', 'Default'], inputs),
    '## Outputs',
    '',
    ...table(['Name', 'Meaning', 'Kind'], outputs),
    ...(r.formulas.length > 0 ? ['## Formulas', '', ...r.formulas.flatMap(formulaLines)] : []),
    '## Example',
    '',
    '```ts',
    callOf(r),
    '```',
    '',
    ...(result.chart === undefined ? [] : [await picture('Chart of the example', result.chart), '']),
    result.toMarkdown().replace(/^#/gm, '##'),
    ...(limits.length > 0 ? ['## Limits', '', ...limits.map((l) => `- ${l}`), ''] : []),
    ...(sources.size > 0 ? ['## Sources', '', ...[...sources].map((s) => `- ${s}`), ''] : []),
    ...(others.length > 0 ? ['## Related', '', ...others.map((x) => `- \`${x.name}\`: ${x.title}`), ''] : []),
  ].join('\n');
}

function formulaLines(f: Formula): string[] {
  const letters = Object.entries(f.variables).map(
    ([s, l]) => `${s}: ${l.label}${f.empirical && l.unit ? ` in ${l.unit}` : ''}`,
  );
  return [
    `${f.result.label} (${f.source ? citationText(f.source) : f.basis}):`,
    '',
    `$$${f.latex}$$`,
    '',
    f.empirical
      ? `${letters.join('; ')}. An empirical formula: numbers enter in these units${f.result.unit ? `, the answer is in ${f.result.unit}` : ''}.`
      : letters.join('; '),
    '',
  ];
}
