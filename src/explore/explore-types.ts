// Names of inputs and outputs of one recipe, and what may stand in the place of an input that varies.
import type { Quantity } from '../units/quantity.js';
import type { Fields, Input, ParsedOf } from '../engine/field.js';
import type { Outputs, RawOf, ShownOf } from '../engine/output.js';
import type { DistributionSpec } from './distribution-spec.js';
import type { Range, ValueList } from './range.js';

/** Names of the inputs that take a number: a quantity, a count or a ratio. */
export type NumberInput<F extends Fields> = {
  [K in keyof F]: Extract<ParsedOf<F[K]>, number> extends never ? never : K;
}[keyof F] &
  string;

/** Names of the outputs that are one number. */
export type NumberOutput<O extends Outputs> = {
  [K in keyof O]: [RawOf<O[K]>] extends [number] ? K : never;
}[keyof O] &
  string;

/** A value wanted of an output: text with a unit, a quantity, or a number for counts and ratios. */
export type TargetValue<Shown> = string | number | Extract<Shown, Quantity>;

/** One output with the value wanted. */
export type Target<O extends Outputs> = {
  readonly [K in NumberOutput<O>]?: TargetValue<ShownOf<O[K]>>;
};

/** Inputs of which any may be a range or a list of values. */
export type SweepInputs<F extends Fields> = Varying<Input<F>, Range | ValueList>;

/** Inputs of which any may be a distribution or a list of values that are equally likely. */
export type UncertainInputs<F extends Fields> = Varying<Input<F>, DistributionSpec | ValueList>;

/** Text stands for ranges and distributions too: `'600 mm .. 900 mm'`, `'900 mm +- 2 mm'`. */
type Varying<I, V> = { readonly [K in keyof I]: I[K] | readonly Exclude<I[K], undefined>[] | V | string };
