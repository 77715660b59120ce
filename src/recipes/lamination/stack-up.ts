import { quantileNormal } from 'vega-statistics';
import { histogram } from '../../charts/bar-chart.js';
import { note } from '../../engine/caution.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { mm } from './salvage-caution.js';
import {
  chance,
  interval,
  limitsOf,
  noteScores,
  partsOf,
  score,
  shareInside,
  simulate,
  type Part,
} from './stack-samples.js';
import { stackUpFields } from './stack-up-fields.js';

const sumOfSquares = variable('area', 'sum of the squares', { unit: 'mm2' });

const deviation = formula({
  symbol: 's',
  result: variable('length', 'standard deviation of a piece', { unit: 'mm' }),
  expression: 't / k',
  variables: {
    t: variable('length', 'how far a piece may be off', { unit: 'mm' }),
    k: variable('ratio', 'standard deviations that plus-or-minus stands for'),
  },
  basis: 'common practice',
});

const rootSum = formula({
  symbol: 'R',
  result: variable('length', 'root of the sum of the squares', { unit: 'mm' }),
  expression: 'sqrt(Q)',
  variables: { Q: sumOfSquares },
  basis: 'definition',
});

const shimOf = formula({
  symbol: 'h',
  result: variable('length', 'shim (negative: plane off)', { unit: 'mm' }),
  expression: 'G - N',
  variables: {
    G: variable('length', 'size wanted', { unit: 'mm' }),
    N: variable('length', 'nominal size of the stack', { unit: 'mm' }),
  },
  basis: 'geometry',
});

/**
 * How far a stack of pieces may come out off its size: at the very worst, and as it will most likely be, since pieces
 * seldom all err the same way. For strips of a top, layers of a slab, doors in an opening: pieces that err each by itself.
 * An error that pieces cut at one setting share is given as that part's setting, and adds up instead of averaging out.
 * Sizes in; lengths and shares out. Source: the sum of independent variances (definition); that plus-or-minus stands for
 * two standard deviations is common practice. The simulation is seeded; `.evaluate` leaves it out where the closed form is exact.
 * @throws InputError when a part has neither or both of plusMinus and sd, or limits stand the wrong way round
 */
export const stackUp = recipe({
  name: 'stackUp',
  title: 'Tolerance of a glued-up stack',
  topic: 'lamination',
  about:
    'How far a glued-up stack may come out off its size: at worst, most likely, and the chance that it falls inside limits.',
  sources: [],
  inputs: stackUpFields,
  outputs: {
    nominal: out.length({
      symbol: 'N',
      label: 'nominal stack',
      help: 'Size of the stack when every piece is right.',
    }),
    worstCase: out.length({
      label: 'worst case',
      help: 'Off by at most, either way, when every piece errs its most.',
    }),
    rss: out.length({
      symbol: 'R',
      label: 'likely error',
      help: 'Root of the sum of the squares, either way.',
    }),
    low: out.length({ label: 'interval', help: 'Interval that holds that share of stacks.' }),
    high: out.length({ label: 'most of that interval' }),
    sd: out.length({ symbol: 'S', label: 'spread of stack', help: 'Standard deviation of the stack.' }),
    chanceInside: out.share({
      label: 'chance inside limits',
      help: 'Chance that the stack falls inside the limits.',
      optional: true,
    }),
    chanceSimulated: out.share({
      label: 'chance, simulated',
      help: 'Counted in simulated stacks.',
      optional: true,
    }),
    shim: out.length({
      symbol: 'h',
      label: 'shim',
      help: 'So that the middle falls on the target; negative is to be planed off.',
      optional: true,
    }),
  },
  formulas: [deviation, rootSum, score, shimOf],
  solve: (given, trace) => {
    const parts = partsOf(given, (t) => trace.evaluate(deviation, { t, k: given.sigmas }));
    const sum = (of: (p: Part) => number): number => parts.reduce((total, p) => total + p.count * of(p), 0);
    const N = sum((p) => p.nominal);
    const worst = sum((p) => p.most + p.setting);
    const pieces = parts.reduce((n, p) => n + p.count, 0);
    if (!trace.silent)
      trace.note(
        `${pieces} piece${pieces === 1 ? '' : 's'}: nominal ${mm(N, 3)}, worst case ${mm(worst, 3)} either way (all added up).`,
      );
    const rss = trace.evaluate(
      rootSum,
      { Q: sum((p) => p.most ** 2 + p.count * p.setting ** 2) },
      'off by, either way: root of the sum of the squares of plus-or-minus',
    );
    const common = sum((p) => p.count * p.settingSd ** 2);
    const S = trace.evaluate(
      rootSum,
      { Q: sum((p) => p.sd ** 2) + common },
      'standard deviation of the stack',
    );
    if (common > 0)
      trace.note(
        `An error of a setting goes into all pieces cut at it, so its part of the square grows with the square of their number: ${mm(Math.sqrt(common), 3)} of the ${mm(S, 3)}.`,
      );
    const limits = limitsOf(given, N);
    const shim = given.target === undefined ? {} : { shim: trace.evaluate(shimOf, { G: given.target, N }) };
    const half = -quantileNormal((1 - given.confidence) / 2) * S;
    const face = { nominal: N, worstCase: worst, rss, sd: S, ...shim };
    const normal = {
      ...face,
      low: N - half,
      high: N + half,
      ...(limits ? { chanceInside: chance(limits, N, S) } : {}),
    };
    if (trace.silent && given.shape === 'normal') return normal;

    const stacks = simulate(parts, given.shape, given.seed);
    const counted = limits ? { chanceSimulated: shareInside(stacks, limits) } : {};
    if (given.shape === 'even') {
      trace.note(`Pieces err evenly, so shares are counted in 20 000 simulated stacks (seed ${given.seed}).`);
      return {
        ...face,
        ...interval(stacks, given.confidence),
        ...counted,
        ...(limits ? { chanceInside: counted.chanceSimulated } : {}),
      };
    }
    if (limits && S > 0) noteScores(limits, N, S, given.seed, trace);
    return { ...normal, ...counted };
  },
  cautions: (given, answer) => [
    ...(given.parts.some((p) => p.setting === 0 && p.count > 1)
      ? [
          note(
            'pieces alike are taken to err each by itself; where one fence or stop set them all, give how far it may be off as setting',
          ),
        ]
      : []),
    ...(given.parts.some((p) => p.sd !== undefined)
      ? [
          note(
            `a normal spread has no end: for parts given by standard deviation the worst case counts ${given.sigmas} of them`,
          ),
        ]
      : []),
    ...(answer.chanceInside !== undefined && answer.chanceInside < 0.9
      ? [
          note(
            `one stack in ${Math.max(1, Math.round(1 / (1 - answer.chanceInside)))} falls outside: leave something to plane or trim, or measure the stack dry before gluing`,
          ),
        ]
      : []),
  ],
  chart: (given, answer) => {
    if (answer.sd === 0) return undefined;
    const parts = partsOf(given, (t) => t / given.sigmas);
    const stacks = simulate(parts, given.shape, given.seed);
    const limits = limitsOf(given, answer.nominal);
    return histogram({
      title: '20 000 simulated stacks',
      subtitle:
        limits && answer.chanceSimulated !== undefined
          ? `${Number((answer.chanceSimulated * 100).toFixed(1))} % fall inside the limits`
          : `${Number((given.confidence * 100).toFixed(1))} % lie from ${mm(answer.low, 2)} to ${mm(answer.high, 2)}`,
      value: { title: 'Size of the stack', unit: 'mm' },
      values: Array.from(stacks, (x) => x * 1000),
      rules: limits
        ? [
            { at: limits.low * 1000, label: 'lower limit' },
            { at: limits.high * 1000, label: 'upper limit' },
          ]
        : [
            { at: answer.low * 1000, label: 'interval, low' },
            { at: answer.high * 1000, label: 'interval, high' },
          ],
    });
  },
  sentence: 'It comes to {nominal}, from {low} to {high}.',
  example: {
    parts: [
      { name: 'strip', nominal: '45 mm', plusMinus: '0.2 mm', setting: '0.1 mm', count: 14 },
      { name: 'edge strip', nominal: '12 mm', sd: '0.2 mm' },
    ],
    target: '642 mm',
    limits: '1 mm',
  },
});
