import type { Fields, Parsed } from './field.js';
import type { Outputs, RawOutput } from './output.js';
import type { RecipeMetadata, RunOptions } from './recipe-definition.js';

/**
 * A recipe as the declarations of the package show it: its call takes and gives interfaces with names, each of whose members
 * has a comment, so that an editor shows what an input means where it is written.
 */
export interface DocumentedRecipe<I, R, F extends Fields, O extends Outputs> extends RecipeMetadata<F, O> {
  /** Evaluates what the user wrote, with workings, cautions and chart. @throws InputError with every wrong field */
  (given: I): R;
  /**
   * Evaluates numbers in base units (m, kg, Pa, °C; per cent as a fraction), without parsing or display: for sweeps.
   * Fields left out take their defaults. @throws InputError outside the fields' limits
   */
  evaluate(numbers: Partial<Parsed<F>>): RawOutput<O>;
}

/** The same of a recipe whose search is long. */
export interface DocumentedAsyncRecipe<I, R, F extends Fields, O extends Outputs> extends RecipeMetadata<
  F,
  O
> {
  (given: I, options?: RunOptions): Promise<R>;
  evaluate(numbers: Partial<Parsed<F>>, options?: RunOptions): Promise<RawOutput<O>>;
}

/** `D`, which compiles only where it can take the place of `T`. */
export type InPlaceOf<T, D extends T> = D;
