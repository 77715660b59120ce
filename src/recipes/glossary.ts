// The words of the trade, from data/glossary.csv: one plain sentence each, with what else they are called.
import { readCsv } from '../engine/csv.js';
import { readDataFile } from '../engine/data-folder.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import { catalogue } from './catalogue.js';

/** A word of the trade. */
export interface GlossaryEntry {
  readonly term: string;
  /** One plain sentence. */
  readonly meaning: string;
  /** American words, abbreviations and near things that lead to it. */
  readonly also: readonly string[];
}

let entries: readonly GlossaryEntry[] | undefined;

/** Every word of the glossary, in the order of the alphabet. */
export function glossary(): readonly GlossaryEntry[] {
  return (entries ??= readCsv(readDataFile('glossary.csv'))
    .rows.slice(1)
    .map(({ cells }) => cells)
    .filter((cells) => (cells[0] ?? '') !== '')
    .map(([term = '', meaning = '', also = '']) => ({
      term,
      meaning,
      also: also
        .split(';')
        .map((w) => w.trim())
        .filter(Boolean),
    })));
}

const plain = (text: string): string => text.toLowerCase().replace(/[-_]/g, ' ').replace(/\s+/g, ' ').trim();

/** A word by its own name, else by another that it goes by, in either number; undefined where the glossary has none. */
export function glossaryEntry(text: string): GlossaryEntry | undefined {
  const asked = plain(text);
  const forms = [asked, asked.replace(/s$/, '')];
  const is = (word: string): boolean => forms.includes(plain(word));
  return glossary().find((e) => is(e.term)) ?? glossary().find((e) => e.also.some(is));
}

/** The value of a function for a recipe, worked out once. */
function oncePerRecipe<T>(valueOf: (recipe: AnyRecipe) => T): (recipe: AnyRecipe) => T {
  const known = new Map<AnyRecipe, T>();
  return (recipe) => {
    const value = known.get(recipe) ?? valueOf(recipe);
    known.set(recipe, value);
    return value;
  };
}

/** Everything a recipe says of itself: title, purpose, labels and their help. */
const textOf = oncePerRecipe((r) => {
  const labels = [...Object.values(r.inputs), ...Object.values(r.outputs)].map(
    (f) => `${f.label} ${f.help ?? ''}`,
  );
  return plain([r.name, r.title, r.topic, r.about, ...labels].join(' '));
});

const whole = (words: string, text: string): boolean => ` ${text} `.includes(` ${words} `);

/** Words of the glossary that a recipe uses. */
export const termsOf = oncePerRecipe((recipe): readonly GlossaryEntry[] => {
  const text = textOf(recipe)
    .replace(/[^\p{L}\p{N} ]/gu, ' ')
    .replace(/\s+/g, ' ');
  return glossary().filter((e) => whole(plain(e.term), text) || whole(`${plain(e.term)}s`, text));
});

/** Recipes that use a word of the glossary. */
export const recipesUsing = (entry: GlossaryEntry): readonly AnyRecipe[] =>
  catalogue.filter((r) => termsOf(r).includes(entry));

/**
 * Recipes for a few words, best first: those that have the words in name or title, then in their text, then those that
 * speak of the same thing by another word (`miter`, `EMC`, `enough wood`).
 */
export function recipesFor(words: string): readonly AnyRecipe[] {
  const asked = plain(words);
  if (asked === '') return catalogue;
  const near = glossary()
    .filter((e) => [e.term, ...e.also].some((w) => plain(w) === asked || plain(w) === `${asked}s`))
    .map((e) => plain(e.term));
  const rank = (r: AnyRecipe): number => {
    if (plain(r.name).includes(asked)) return 4;
    if (plain(r.title).includes(asked)) return 3;
    if (textOf(r).includes(asked)) return 2;
    return near.some((t) => textOf(r).includes(t)) ? 1 : 0;
  };
  return catalogue
    .map((recipe) => ({ recipe, rank: rank(recipe) }))
    .filter((found) => found.rank > 0)
    .sort((a, b) => b.rank - a.rank)
    .map((found) => found.recipe);
}
