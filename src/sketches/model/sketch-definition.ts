import type * as recipes from '../../recipes/catalogue.js';
import type { Mark } from './marks.js';

/** A sketch as data: what it shows, the marks that it is drawn with, and the fields that have no place in it. */
export interface SketchDefinition<Field extends string = string> {
  /** What the sketch shows, as one sentence. */
  readonly shows: string;
  /** Height of the sheet; its width is 320. */
  readonly height: number;
  readonly marks: readonly (Mark<Field> | readonly Mark<Field>[])[];
  /** From where to where a letter measures, where the help of its field does not say so. */
  readonly measures?: { readonly [F in Field]?: string };
  /** Lengths, angles, areas and forces that no letter stands for, with the reason. */
  readonly unlettered?: { readonly [F in Field]?: string };
}

type Recipes = Omit<typeof recipes, 'catalogue'>;
type FieldName<R> = R extends { readonly inputs: infer I; readonly outputs: infer O }
  ? (keyof I | keyof O) & string
  : never;

/** A field's name, or the path to a part or column of it, such as `section.depth`. */
export type FieldPath<R> = FieldName<R> | `${FieldName<R>}.${string}`;

/** A sketch for each recipe of the catalogue; one that lacks a recipe, or letters a field that a recipe has not, does not compile. */
export type Sketches = { readonly [N in keyof Recipes]: SketchDefinition<FieldPath<Recipes[N]>> };

/** Sketches of some of the recipes, checked against the fields that each recipe has. */
export const sketchesOf = <N extends keyof Sketches>(some: Pick<Sketches, N>): Pick<Sketches, N> => some;
