import { renderSvg } from '../charts/svg.js';
import type { AnyRecipe } from './any-recipe.js';
import type { Field } from './field.js';
import type { Formula } from './formula.js';
import { callOf } from './recipe-call.js';
import { citationText } from './source.js';

const cell = (s: string): string => s.replace(/\|/g, '\\|').replace(/\s*\n\s*/g, ' ');

function table(head: readonly string[], rows: readonly (readonly string[])[]): string[] {
  if (rows.length === 0) return [];
  const line = (cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`;
  return [line(head), `|${head.map(() => '---').join('|')}|`, ...rows.map(line), ''];
}

const defaultOf = (f: Field): string =>
  f.default !== undefined
    ? typeof f.default === 'string'
      ? f.default
      : JSON.stringify(f.default)
    : f.optional
      ? 'optional'
      : '';

/**
 * The reference page of a recipe as Markdown: what it answers, inputs, outputs, formulas, the example with its result and
 * cautions, sources, and the recipes of the same topic given as `related`.
 */
export async function referencePage(r: AnyRecipe, related: readonly AnyRecipe[] = []): Promise<string> {
  const result = await r(r.example);
  const inputs = Object.entries(r.inputs).map(([n, f]) => [
    `\`${n}\``,
    f.help ?? f.label,
    f.expects,
    defaultOf(f),
  ]);
  const outputs = Object.entries(r.outputs).map(([n, o]) => [
    `\`${n}\`${o.optional ? ' (not always)' : ''}`,
    o.label,
    o.unit ? `${o.kind}, in ${o.unit}` : o.kind,
  ]);
  const others = related.filter((x) => x.topic === r.topic && x.name !== r.name);
  const sources = new Set(
    [...r.sources, ...r.formulas.flatMap((f) => f.source ?? []), ...result.sources].map(citationText),
  );
  return [
    `# ${r.title}`,
    '',
    r.about,
    '',
    ...(r.sketch ? [await renderSvg(r.sketch()), ''] : []),
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
    result.toMarkdown().replace(/^#/gm, '##'),
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
