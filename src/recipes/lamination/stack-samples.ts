import { cumulativeNormal, quantileNormal } from 'vega-statistics';
import { InputError } from '../../units/input-error.js';
import { field, type Parsed } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import type { Trace } from '../../engine/trace.js';
import { mulberry32 } from '../../engine/random.js';
import { mm } from './salvage-caution.js';

export const score = formula({
  symbol: 'z',
  result: variable('ratio', 'distance of a limit from the middle, in standard deviations'),
  expression: '(x - N) / S',
  variables: {
    x: variable('length', 'limit', { unit: 'mm' }),
    N: variable('length', 'nominal size of the stack', { unit: 'mm' }),
    S: variable('length', 'standard deviation of the stack', { unit: 'mm' }),
  },
  basis: 'definition',
});

/** Columns of the table of parts. */
export const columns = {
  name: field.text({ label: 'name of the part', default: 'part' }),
  nominal: field.length({
    label: 'nominal size',
    help: 'Negative for what is taken off.',
    min: '-20 m',
    max: '20 m',
  }),
  plusMinus: field.length({
    label: 'plus or minus',
    help: 'How far a piece may be off either way; or give the standard deviation.',
    min: '0 mm',
    max: '1 m',
    optional: true,
  }),
  sd: field.length({
    label: 'standard deviation',
    help: 'From measuring some pieces; or give the plus-or-minus.',
    min: '0 mm',
    max: '1 m',
    optional: true,
  }),
  count: field.count({
    label: 'count',
    help: 'Pieces alike, each off by itself.',
    min: 1,
    max: 1000,
    default: 1,
  }),
  setting: field.length({
    label: 'shared setting',
    help: 'How far a setting that all these pieces share, such as the fence, may be off either way.',
    min: '0 mm',
    max: '1 m',
    default: '0 mm',
  }),
} as const;
/** How pieces err. */
export const shapes = ['normal', 'even'] as const;

/** How many stacks are simulated. */
export const draws = 20_000;

/** A part in numbers. */
export interface Part {
  readonly nominal: number;
  /** Errs by at most this, either way; of a part given by its standard deviation, the agreed number of them. */
  readonly most: number;
  readonly sd: number;
  readonly count: number;
  /** The setting that all pieces share errs by at most this, either way, and so much on average. */
  readonly setting: number;
  readonly settingSd: number;
}
interface Given {
  readonly parts: readonly Parsed<typeof columns>[];
  readonly sigmas: number;
  readonly shape: (typeof shapes)[number];
  readonly target: number | undefined;
  readonly limits: number | Limits | undefined;
}

/** The parts in numbers; `sdOf` turns plus-or-minus into a standard deviation. @throws InputError */
export function partsOf(given: Given, sdOf: (plusMinus: number) => number): Part[] {
  const even = given.shape === 'even';
  // Evenly between -t and t the standard deviation is t / sqrt(3), whatever was agreed.
  const deviationOf = (t: number): number => (even ? t / Math.sqrt(3) : sdOf(t));
  return given.parts.map((p, i) => {
    const setting = { setting: p.setting, settingSd: p.setting === 0 ? 0 : deviationOf(p.setting) };
    if ((p.plusMinus === undefined) === (p.sd === undefined))
      throw new InputError({
        field: `parts[${i + 1}].plusMinus`,
        message: `got ${p.sd === undefined ? 'neither plusMinus nor sd' : 'both plusMinus and sd'}, takes one of them`,
      });
    if (p.plusMinus === undefined)
      return {
        nominal: p.nominal,
        most: (p.sd as number) * given.sigmas,
        sd: p.sd as number,
        count: p.count,
        ...setting,
      };
    return {
      nominal: p.nominal,
      most: p.plusMinus,
      sd: deviationOf(p.plusMinus),
      count: p.count,
      ...setting,
    };
  });
}

export interface Limits {
  readonly low: number;
  readonly high: number;
}

/** Least and most of the stack, where limits were given. @throws InputError */
export function limitsOf(given: Given, nominal: number): Limits | undefined {
  if (given.limits === undefined) return undefined;
  if (typeof given.limits === 'number')
    return { low: (given.target ?? nominal) - given.limits, high: (given.target ?? nominal) + given.limits };
  if (given.limits.low > given.limits.high)
    throw new InputError({
      field: 'limits',
      message: `got a least of ${mm(given.limits.low)} above a most of ${mm(given.limits.high)}, takes them the other way round`,
    });
  return given.limits;
}

/** Chance that a normal stack falls inside. */
export function chance(limits: Limits, N: number, S: number): number {
  if (S === 0) return N >= limits.low - 1e-12 && N <= limits.high + 1e-12 ? 1 : 0;
  return Math.max(0, cumulativeNormal(limits.high, N, S) - cumulativeNormal(limits.low, N, S));
}

/** Sizes of simulated stacks, m. Many alike pieces that err evenly add up to a normal sum, and are drawn as one. */
export function simulate(parts: readonly Part[], shape: (typeof shapes)[number], seed: number): Float64Array {
  const random = mulberry32(seed);
  const normal = (): number => quantileNormal(Math.max(random(), 1e-12));
  const stacks = new Float64Array(draws);
  for (let i = 0; i < draws; i++) {
    let x = 0;
    for (const p of parts) {
      x += p.count * p.nominal;
      if (shape === 'even' && p.count <= 12)
        for (let k = 0; k < p.count; k++) x += (2 * random() - 1) * p.sd * Math.sqrt(3);
      else x += normal() * p.sd * Math.sqrt(p.count);
      // One error of the setting goes into every piece cut at it.
      if (p.settingSd > 0)
        x += p.count * p.settingSd * (shape === 'even' ? (2 * random() - 1) * Math.sqrt(3) : normal());
    }
    stacks[i] = x;
  }
  return stacks;
}

/** Share of simulated stacks that fall inside the limits. */
export const shareInside = (stacks: Float64Array, { low, high }: Limits): number =>
  stacks.reduce((n, x) => n + Number(x >= low - 1e-12 && x <= high + 1e-12), 0) / draws;

/** The middle interval that holds a share of the simulated stacks. */
export function interval(stacks: Float64Array, confidence: number): Limits {
  const sorted = Float64Array.from(stacks).sort();
  const at = (share: number): number => sorted[Math.min(draws - 1, Math.floor(share * draws))] as number;
  return { low: at((1 - confidence) / 2), high: at((1 + confidence) / 2) };
}

/** How many standard deviations the limits are from the middle. */
export function noteScores(limits: Limits, N: number, S: number, seed: number, trace: Trace): void {
  const label = (limit: string): string => `the ${limit} limit, in standard deviations from the middle`;
  trace.evaluate(score, { x: limits.low, N, S }, label('lower'));
  trace.evaluate(score, { x: limits.high, N, S }, label('upper'));
  trace.note(
    `Chance inside by the normal distribution; counted again in 20 000 simulated stacks (seed ${seed}).`,
  );
}
