import { cumulativeNormal, quantileNormal } from 'vega-statistics';
import { InputError, inspectValue } from '../units/input-error.js';
import type { InputDistribution } from './distributions.js';

/** Inputs that vary together, such as two cuts from one setting: `{ inputs: ['left', 'right'] }`. */
export interface Correlation<Name extends string = string> {
  readonly inputs: readonly Name[];
  /** Correlation of any two of them, above 0 to 1. Default 1: one common cause sets them all. */
  readonly coefficient?: number;
}

/** What varies by itself: one input, or several that are correlated. */
export interface Factor {
  readonly name: string;
  readonly dimensions: readonly number[];
}

/** Which dimensions of a sequence of samples each input takes. */
export interface SamplePlan {
  readonly dimensions: number;
  readonly factors: readonly Factor[];
  /** Writes the shares of each input, from 0 to 1, into `into`, from the columns of the dimensions. */
  shares(columns: readonly Float64Array[], into: readonly Float64Array[]): void;
}

interface Source {
  readonly common: number | undefined;
  readonly own: number | undefined;
  readonly coefficient: number;
}

/**
 * Each input takes a dimension of its own. Correlated inputs have one in common: their normal scores are the common score
 * times the root of the coefficient, plus one of their own (a one-factor normal copula).
 * @throws InputError on names that do not vary, on an input in two groups, on a coefficient outside 0 to 1
 */
export function samplePlan(
  spreads: readonly InputDistribution[],
  correlations: readonly Correlation[],
  recipe: string,
): SamplePlan {
  const sources = new Map<string, Source>();
  const factors: Factor[] = [];
  let dimensions = 0;
  for (const { inputs, coefficient = 1 } of correlations) {
    checkGroup(inputs, coefficient, spreads, sources, recipe);
    const common = dimensions++;
    const from = common;
    for (const name of inputs)
      sources.set(name, { common, own: coefficient < 1 ? dimensions++ : undefined, coefficient });
    const all = Array.from({ length: dimensions - from }, (_, i) => from + i);
    factors.push({ name: inputs.join(' + '), dimensions: all });
  }
  for (const { name } of spreads) {
    if (sources.has(name)) continue;
    factors.push({ name, dimensions: [dimensions] });
    sources.set(name, { common: undefined, own: dimensions++, coefficient: 0 });
  }
  const bySpread = spreads.map((s) => sources.get(s.name) as Source);
  return {
    dimensions,
    factors,
    shares: (columns, into) =>
      bySpread.forEach((source, k) => fill(source, columns, into[k] as Float64Array)),
  };
}

function checkGroup(
  inputs: readonly string[],
  coefficient: number,
  spreads: readonly InputDistribution[],
  taken: ReadonlyMap<string, Source>,
  recipe: string,
): void {
  const refuse = (message: string): never => {
    throw new InputError({ field: 'correlated', message }, recipe);
  };
  const names = spreads.map((s) => s.name);
  if (inputs.length < 2) refuse(`got ${inputs.length} inputs, takes two or more that vary together`);
  for (const name of inputs) {
    if (!names.includes(name))
      refuse(`got ${inspectValue(name)}, takes inputs that vary here: ${names.join(', ')}`);
    if (taken.has(name) || inputs.indexOf(name) !== inputs.lastIndexOf(name))
      refuse(`got ${inspectValue(name)} twice, takes each input once`);
  }
  if (!(coefficient > 0 && coefficient <= 1))
    refuse(`got a coefficient of ${inspectValue(coefficient)}, takes a number above 0 and at most 1`);
}

function fill(source: Source, columns: readonly Float64Array[], into: Float64Array): void {
  const { common, own, coefficient } = source;
  if (common === undefined || own === undefined) {
    into.set(columns[(common ?? own) as number] as Float64Array);
    return;
  }
  const [a, b] = [columns[common] as Float64Array, columns[own] as Float64Array];
  const [together, alone] = [Math.sqrt(coefficient), Math.sqrt(1 - coefficient)];
  for (let i = 0; i < into.length; i++)
    into[i] = cumulativeNormal(together * score(a[i] as number) + alone * score(b[i] as number));
}

const score = (u: number): number => quantileNormal(Math.min(1 - 1e-12, Math.max(1e-12, u)));
