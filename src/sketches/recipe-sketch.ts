import type { AnyRecipe } from '../engine/any-recipe.js';
import { capitalised } from '../units/capitalised.js';
import { layOut } from './model/sketch-layout.js';
import { lettersOf, type Letter } from './model/lettering.js';
import type { SketchDefinition } from './model/sketch-definition.js';
import { sketchInWords, sketchSvg } from './model/sketch-svg.js';
import { letterLines, sketchPicture } from './model/sketch-text.js';
import { sketches } from './sketch-list.js';

/** The lettered sketch of a recipe: what is measured, and from where. */
export interface RecipeSketch {
  /** What it shows, as one sentence. */
  readonly shows: string;
  readonly letters: readonly Letter[];
  /** Drawn in the colour of the text around it. */
  readonly svg: string;
}

const all: Readonly<Record<string, SketchDefinition | undefined>> = sketches;

/** The sketch of a recipe of the catalogue; undefined for a recipe of one's own. */
export function recipeSketch(recipe: AnyRecipe): RecipeSketch | undefined {
  const definition = all[recipe.name];
  if (definition === undefined) return undefined;
  const letters = lettersOf(recipe, definition);
  const { shows } = definition;
  return { shows, letters, svg: sketchSvg(layOut(definition), letters, shows) };
}

/** The sketch in characters for a terminal, at most 64 wide, with a line for each letter; empty where the recipe has none. */
export function sketchLines(recipe: AnyRecipe): string[] {
  const definition = all[recipe.name];
  if (definition === undefined) return [];
  const letters = lettersOf(recipe, definition);
  return [
    definition.shows,
    '',
    ...sketchPicture(layOut(definition), letters),
    '',
    'Letters in round brackets are given, those in square brackets are answers.',
    ...letterLines(letters),
  ];
}

/** The sketch as Markdown: the picture and a table of its letters; empty where the recipe has none. */
export function sketchMarkdown(recipe: AnyRecipe): string[] {
  const definition = all[recipe.name];
  if (definition === undefined) return [];
  const letters = lettersOf(recipe, definition);
  const svg = sketchSvg(layOut(definition), letters, definition.shows, { isAlone: true });
  const alternative = sketchInWords(definition.shows, letters).replace(/[\[\]]/g, '');
  const rows = letters.map(
    ({ letter, field, label, meaning }) =>
      `| ${letter} | \`${field}\` | ${[capitalised(label), meaning].filter((text) => text !== '').join('. ')} |`,
  );
  return [
    `![${alternative}](data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')})`,
    '',
    '| Letter | Name | Meaning |',
    '|---|---|---|',
    ...rows,
    '',
    'Letters in a circle are given, those in a square are answers.',
    '',
  ];
}
