import type { Field } from '../engine/field.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import { recipeJsonSchema } from '../engine/json-schema.js';
import type { Formula } from '../engine/formula.js';
import { callOf } from '../engine/recipe-call.js';
import { limitsOf, referencePage, relatedTo } from '../engine/reference-page.js';
import { catalogue } from '../recipes/catalogue.js';
import { citationText } from '../engine/source.js';
import { evidenceOf, evidenceText } from '../recipes/evidence.js';
import { sketchLines, sketchMarkdown } from '../sketches/recipe-sketch.js';
import { glossaryEntry, recipesUsing, termsOf, type GlossaryEntry } from '../recipes/glossary.js';
import { findRecipe } from './recipe-arguments.js';
import { formOf, type Words } from './usage.js';

/** `reckoner show RECIPE [--json|--markdown]`: what it takes and gives, formulas, sources, an example; `show TERM`: a word of the trade. */
export async function show(words: Words): Promise<number> {
  const folder = words.values.get('pages');
  if (folder !== undefined) return (await import('./reference-pages.js')).writePages(folder);
  const form = formOf(words, ['json', 'markdown']);
  const asked = words.plain.join(' ');
  const entry = isRecipe(asked) ? undefined : glossaryEntry(asked);
  if (entry && form === undefined) {
    process.stdout.write(`${termText(entry)}\n`);
    return 0;
  }
  const recipe = findRecipe(words.plain[0]);
  if (form === 'json') process.stdout.write(`${JSON.stringify(recipeJsonSchema(recipe), null, 2)}\n`);
  else if (form === 'markdown')
    process.stdout.write(`${await referencePage(recipe, catalogue, sketchMarkdown(recipe))}\n`);
  else process.stdout.write(`${await describe(recipe)}\n`);
  return 0;
}

const isRecipe = (name: string): boolean =>
  catalogue.some((r) => r.name.toLowerCase() === name.toLowerCase().replace(/[-_ ]/g, ''));

/** A word of the trade with its other names and the recipes that use it. */
export function termText(entry: GlossaryEntry): string {
  const used = recipesUsing(entry).map((r) => r.name);
  return [
    `${entry.term}: ${entry.meaning}`,
    ...(entry.also.length > 0 ? [`  also: ${entry.also.join(', ')}`] : []),
    ...(used.length > 0 ? [`  recipes: ${used.join(', ')}`] : []),
  ].join('\n');
}

/** The recipe as text for a terminal. */
async function describe(r: AnyRecipe): Promise<string> {
  const lines = [`${r.name}: ${r.title}  (${r.topic})`, '', r.about, ''];
  const sketch = sketchLines(r);
  if (sketch.length > 0) lines.push('Sketch', ...indented(sketch.join('\n')), '');
  lines.push('Takes');
  for (const [name, f] of Object.entries(r.inputs)) lines.push(...fieldLines(name, f, '  '));
  lines.push('', 'Gives');
  for (const [name, o] of Object.entries(r.outputs))
    lines.push(
      `  ${name}${o.optional ? '?' : ''}: ${o.label} (${o.kind})${o.help === undefined ? '' : `. ${o.help}`}`,
    );
  if (r.formulas.length > 0) lines.push('', 'Formulas', ...r.formulas.flatMap(formulaLines));
  const example = await r(r.example);
  const cited = [...r.sources, ...r.formulas.flatMap((f) => f.source ?? []), ...example.sources];
  const sources = [...new Set(cited.map(citationText))];
  if (sources.length > 0) lines.push('', 'Sources', ...sources.map((s) => `  ${s}`));
  const limits = limitsOf(r, example);
  if (limits.length > 0) lines.push('', 'Limits', ...limits.map((l) => `  ${l}`));
  const evidence = evidenceOf(r.name);
  if (evidence) lines.push('', 'Evidence', `  ${evidenceText(evidence)}`);
  const terms = termsOf(r);
  if (terms.length > 0) lines.push('', 'Words', ...terms.map((e) => `  ${e.term}: ${e.meaning}`));
  lines.push('', 'Example', `  reckoner work ${r.name} ${wordsOf(r.example)}`, '', `  ${callOf(r)}`);
  lines.push('', 'Result of the example', ...indented(example.toText()));
  const related = relatedTo(r, catalogue).map((x) => `  ${x.name}: ${x.title}`);
  if (related.length > 0) lines.push('', 'Related', ...related);
  return lines.join('\n');
}

const indented = (text: string): string[] => text.split('\n').map((line) => (line === '' ? '' : `  ${line}`));

function formulaLines(f: Formula): string[] {
  const letters = Object.entries(f.variables).map(
    ([s, l]) => `${s} ${l.label}${f.empirical && l.unit ? ` in ${l.unit}` : ''}`,
  );
  const answer = f.result.unit ? `, the answer in ${f.result.unit}` : '';
  return [
    `  ${f.plain}`,
    `      ${f.result.label}  [${f.source ? citationText(f.source) : f.basis}]`,
    `      ${letters.join('; ')}${f.empirical ? `; empirical: numbers in these units${answer}` : ''}`,
  ];
}

function fieldLines(name: string, f: Field, indent: string): string[] {
  const tail =
    f.default !== undefined
      ? `; default ${typeof f.default === 'string' ? f.default : JSON.stringify(f.default)}`
      : f.optional
        ? '; optional'
        : '';
  return [
    `${indent}${name}${f.optional ? '?' : ''}: ${f.label}${tail}`,
    ...(f.help === undefined ? [] : [`${indent}    ${f.help}`]),
    `${indent}    takes ${f.expects}`,
  ];
}

function wordsOf(example: Readonly<Record<string, unknown>>): string {
  const quote = (s: string): string => (/^[\w.,:/%+-]+$/.test(s) ? s : `'${s.replace(/'/g, "'\\''")}'`);
  return Object.entries(example)
    .map(([k, v]) => `${k}=${quote(typeof v === 'object' && v !== null ? JSON.stringify(v) : String(v))}`)
    .join(' ');
}
