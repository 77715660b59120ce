import type { Field, FieldsSchema } from './field.js';
import type { Formula } from './formula.js';
import type { Output } from './output.js';
import type { RecipeMetadata } from './recipe.js';
import type { Result } from './result.js';

/** A recipe seen without its own types: for lists, the command and pages, which read names and fields at run time. */
export interface AnyRecipe extends Omit<
  RecipeMetadata<never, never>,
  'inputs' | 'outputs' | 'example' | 'read' | 'chartOf' | 'cautionsOf' | 'limitsOf' | 'formulas' | 'schema'
> {
  (
    given: Readonly<Record<string, unknown>>,
    options?: {
      signal?: AbortSignal;
      onProgress?: (p: { done?: number; message: string; best?: number; bound?: number }) => void;
    },
  ): Result | Promise<Result>;
  readonly inputs: Readonly<Record<string, Field>>;
  readonly outputs: Readonly<Record<string, Output>>;
  readonly example: Readonly<Record<string, unknown>>;
  readonly formulas: readonly Formula[];
  readonly schema: FieldsSchema<Readonly<Record<string, Field>>>;
  read(given: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>>;
  evaluate(
    numbers: Readonly<Record<string, unknown>>,
    options?: { signal?: AbortSignal },
  ): Readonly<Record<string, unknown>> | Promise<Readonly<Record<string, unknown>>>;
  chartOf(
    given: Readonly<Record<string, unknown>>,
    out: Readonly<Record<string, unknown>>,
  ): { readonly [key: string]: unknown } | undefined;
  limitsOf(
    given: Readonly<Record<string, unknown>>,
    out: Readonly<Record<string, unknown>>,
  ): readonly string[];
}
