// Where each input of a recipe came from.
import { valueAt } from './description-path.js';
import { writtenInputs, type Ask } from './recipe-ask.js';

/** One input of a recipe as the piece gave it. */
export interface PlacedInput {
  readonly recipe: string;
  readonly about?: string;
  readonly input: string;
  readonly label: string;
  readonly value: string;
  /** `top.width (given)`, `shop.kerf (assumed)`, `(masses)` for something worked out, or `set by the question`. */
  readonly from: string;
}

/** The inputs of one use of a recipe. */
export function inputsWithPlaces(asked: Ask, written: object): PlacedInput[] {
  const given = writtenInputs(asked);
  return Object.entries(given).map(([input, value]) => {
    const f = asked.recipe.inputs[input];
    const from = asked.from[input] ?? [];
    return {
      recipe: asked.recipe.name,
      ...(asked.about === undefined ? {} : { about: asked.about }),
      input,
      label: f?.label ?? input,
      value: f ? f.format(f.read(value)) : '',
      from:
        from.length === 0
          ? 'set by the question'
          : [...new Set(from.map((p) => place(p, written)))].join(', '),
    };
  });
}

function place(path: string, written: object): string {
  if (path.startsWith('(') || path.startsWith('plan ')) return path;
  return `${path} (${valueAt(written, path) === undefined ? 'assumed' : 'given'})`;
}
