import type { AnyRecipe } from '../engine/any-recipe.js';
import { citationText } from '../engine/source.js';
import { evidenceOf, evidenceText } from '../recipes/evidence.js';
import { termsOf } from '../recipes/glossary.js';

/** A recipe as the drawer shows it: plain data, nothing to run. */
export interface RecipeCard {
  readonly name: string;
  readonly title: string;
  readonly topic: string;
  readonly about: string;
  readonly inputs: readonly {
    readonly name: string;
    readonly label: string;
    /** One sentence, '' where the label says it all. */
    readonly help: string;
    readonly expects: string;
    readonly note: string;
  }[];
  readonly outputs: readonly { readonly name: string; readonly label: string }[];
  readonly formulas: readonly { readonly latex: string; readonly label: string }[];
  readonly sources: readonly string[];
  /** What proves it, in a line. */
  readonly evidence: string;
  /** Words of the trade that it uses. */
  readonly terms: readonly { readonly term: string; readonly meaning: string }[];
  /** Other words that a search may bring: American ones, abbreviations, near things. */
  readonly also: string;
  /** A cell that runs as it stands. */
  readonly cell: string;
}

export function recipeCard(recipe: AnyRecipe): RecipeCard {
  const evidence = evidenceOf(recipe.name);
  const terms = termsOf(recipe);
  return {
    name: recipe.name,
    title: recipe.title,
    topic: recipe.topic,
    about: recipe.about,
    inputs: Object.entries(recipe.inputs).map(([name, field]) => ({
      name,
      label: field.label,
      help: field.help ?? '',
      expects: field.expects,
      note: noteOf(field),
    })),
    outputs: Object.entries(recipe.outputs).map(([name, output]) => ({ name, label: output.label })),
    formulas: recipe.formulas.map((formula) => ({ latex: formula.latex, label: formula.result.label })),
    sources: recipe.sources.map(citationText),
    evidence: evidence ? evidenceText(evidence) : '',
    terms: terms.map(({ term, meaning }) => ({ term, meaning })),
    also: terms.flatMap((e) => e.also).join(' '),
    cell: exampleCell(recipe),
  };
}

/** The recipe's own example as a cell, one field a line. */
export function exampleCell(recipe: {
  readonly name: string;
  readonly example: Readonly<Record<string, unknown>>;
  readonly isAsync: boolean;
}): string {
  const fields = Object.entries(recipe.example).map(
    ([name, value]) => `  ${name}: ${literal(value, '  ')},\n`,
  );
  return `${recipe.isAsync ? 'await ' : ''}${recipe.name}({\n${fields.join('')}})`;
}

function noteOf(field: { readonly optional: boolean; readonly default?: unknown }): string {
  if (field.default !== undefined) return `${literal(field.default, '')} by default`;
  return field.optional ? 'optional' : '';
}

/** A plain value as TypeScript: short lists and objects on one line, long ones an item a line. */
function literal(value: unknown, indent: string): string {
  if (typeof value === 'string')
    return `'${value.replace(/\\/g, '\\\\').replace(/'/g, "\\'").replace(/\n/g, '\\n')}'`;
  const more = `${indent}  `;
  if (Array.isArray(value))
    return fold(
      value.map((item) => literal(item, more)),
      '[',
      ']',
      indent,
    );
  if (typeof value === 'object' && value !== null) {
    if (Object.getPrototypeOf(value) !== Object.prototype)
      return `'${(value as { toString(): string }).toString()}'`;
    const key = (name: string): string => (/^[A-Za-z_$][\w$]*$/.test(name) ? name : literal(name, ''));
    return fold(
      Object.entries(value).map(([name, item]) => `${key(name)}: ${literal(item, more)}`),
      '{ ',
      ' }',
      indent,
    );
  }
  return JSON.stringify(value);
}

function fold(items: readonly string[], open: string, close: string, indent: string): string {
  const flat = `${open}${items.join(', ')}${close}`;
  if (items.length === 0) return flat.replace(/\s/g, '');
  if (flat.length + indent.length < 88 && !flat.includes('\n')) return flat;
  return `${open.trim()}\n${items.map((item) => `${indent}  ${item},\n`).join('')}${indent}${close.trim()}`;
}
