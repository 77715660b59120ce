import type { AnyRecipe } from '../../../engine/any-recipe.js';
import type { Field } from '../../../engine/field.js';
import type { Output } from '../../../engine/output.js';
import { climates } from '../../../materials/climate.js';
import { allGrades } from '../../../materials/grades.js';
import { speciesNames } from '../../../materials/species.js';
import { recipeSketch } from '../../../sketches/recipe-sketch.js';
import { humanizeName } from '../../../notebook/handout/humanize.js';
import type { OutputModel, RecipeModel } from '../model/recipe-model.js';
import { fieldModel } from './field-model.js';
import { questions } from './questions.js';
import { capitalised } from '../../../units/capitalised.js';

/** A recipe as plain data for the page. */
export function recipeModel(recipe: AnyRecipe): RecipeModel {
  const text = questions[recipe.name];
  const numbers = Object.entries(recipe.outputs).filter(([, output]) => isNumber(output));
  return {
    name: recipe.name,
    title: recipe.title,
    topic: recipe.topic,
    about: recipe.about,
    isAsync: recipe.isAsync,
    question: text?.question ?? recipe.title,
    words: text?.words ?? '',
    noun: text?.noun ?? recipe.name,
    main: text?.main ?? numbers[0]?.[0],
    inputs: Object.entries(recipe.inputs).map(([name, field]) =>
      fieldModel(name, field, recipe.example[name]),
    ),
    outputs: Object.entries(recipe.outputs).map(([name, output]) => outputModel(name, output)),
    sketch: recipeSketch(recipe),
  };
}

const words = new Set(['text', 'flag', 'table', 'list', 'record']);
const isNumber = (output: Output): boolean => !words.has(output.kind);

function outputModel(name: string, output: Output): OutputModel {
  const [first = output.label] = output.label.split(/[;:]/);
  const label = first.length <= 40 ? first : humanizeName(name);
  return {
    name,
    label: capitalised(label),
    kind: output.kind,
    columns: Object.entries(output.columns ?? {}).map(([key, column]) => outputModel(key, column)),
  };
}

const kept = new Map<string, readonly string[]>();

/** Names that a field takes: timbers and grades with the data it needs, or places. `path` leads to a part or column. */
export function namesFor(recipe: AnyRecipe, path: readonly string[]): readonly string[] {
  const key = [recipe.name, ...path].join('.');
  const known = kept.get(key);
  if (known !== undefined) return known;
  const field = fieldAt(recipe, path);
  if (field === undefined) return [];
  const all =
    field.kind === 'climate'
      ? climates().map(({ place }) => place)
      : [...allGrades().map(({ name }) => name), ...speciesNames()];
  const names = [...new Set(all)].filter((name) => takes(field, name));
  kept.set(key, names);
  return names;
}

function fieldAt(recipe: AnyRecipe, path: readonly string[]): Field | undefined {
  const [first = '', ...rest] = path;
  return rest.reduce<Field | undefined>(
    (field, step) => field?.fields?.[step] ?? field?.items?.find(({ kind }) => kind === 'timber'),
    recipe.inputs[first],
  );
}

function takes(field: Field, name: string): boolean {
  try {
    field.read(name);
    return true;
  } catch {
    return false;
  }
}
