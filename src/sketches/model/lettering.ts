import type { AnyRecipe } from '../../engine/any-recipe.js';
import type { SketchDefinition } from './sketch-definition.js';
import type { Mark } from './marks.js';

/** What a letter of a sketch stands for. */
export interface Letter {
  readonly letter: string;
  /** Name of the field, or the path to a part or column of it. */
  readonly field: string;
  /** Whether it is given or is an answer. */
  readonly isOutput: boolean;
  readonly label: string;
  /** From where to where it is measured, or what it is; may be empty. */
  readonly meaning: string;
}

interface Named {
  readonly label: string;
  readonly help?: string;
  readonly fields?: Readonly<Record<string, Named>>;
  readonly columns?: Readonly<Record<string, Named>>;
  readonly items?: readonly Named[];
}

/** The field or output at a path; undefined where the recipe has none there. */
export function namedAt(recipe: AnyRecipe, path: string): Named | undefined {
  const [first = '', ...rest] = path.split('.');
  const root: Named | undefined = recipe.inputs[first] ?? recipe.outputs[first];
  return rest.reduce<Named | undefined>(
    (at, step) =>
      at?.fields?.[step] ??
      at?.columns?.[step] ??
      at?.items?.map((item) => item.fields?.[step]).find((field) => field !== undefined),
    root,
  );
}

/** Paths of all fields that marks have a letter for. */
export const fieldsLettered = (marks: readonly Mark[]): string[] => [
  ...new Set(marks.flatMap((mark) => ('field' in mark ? [mark.field] : []))),
];

/**
 * The letters of a sketch: A, B, C in the order of the recipe's inputs, then of its outputs.
 * @throws Error with one line when the recipe has no such field
 */
export function lettersOf(recipe: AnyRecipe, definition: SketchDefinition): Letter[] {
  const order = [...Object.keys(recipe.inputs), ...Object.keys(recipe.outputs)];
  const rank = (path: string): number => order.indexOf(path.split('.')[0] ?? '');
  const paths = fieldsLettered(definition.marks.flat()).sort((a, b) => rank(a) - rank(b));
  return paths.map((path, i) => {
    const found = namedAt(recipe, path);
    const [root = ''] = path.split('.');
    if (found === undefined)
      throw new Error(`the sketch of ${recipe.name} letters "${path}", which it lacks`);
    const whole = recipe.inputs[root] ?? recipe.outputs[root];
    return {
      letter: String.fromCharCode(65 + i),
      field: path,
      isOutput: !Object.hasOwn(recipe.inputs, root),
      label: path === root ? found.label : `${whole?.label ?? root}: ${found.label}`,
      meaning: definition.measures?.[path] ?? found.help ?? '',
    };
  });
}
