import { barChart } from '../../charts/bar-chart.js';
import { formatQuantity } from '../../units/format-quantity.js';
import { InputError } from '../../units/input-error.js';
import { danger, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';

const passCount = variable('count', 'passes of each piece');
// A billionth is taken off before rounding up, or 3 mm by 1 mm a pass could come out as 4.
const passesFor = formula({
  symbol: 'P',
  result: passCount,
  expression: 'ceil(x / a - 10^(-9))',
  variables: {
    x: variable('length', 'to take off', { unit: 'mm' }),
    a: variable('length', 'taken off in a pass', { unit: 'mm' }),
  },
  basis: 'definition',
});
const cutting = formula({
  symbol: 't_c',
  result: variable('time', 'timber under the knives', { unit: 'min' }),
  expression: 'L P / v',
  variables: {
    L: variable('length', 'length of all pieces together', { unit: 'm' }),
    P: passCount,
    v: variable('speed', 'feed', { unit: 'm/min' }),
  },
  basis: 'definition',
});
const carrying = formula({
  symbol: 't_h',
  result: variable('time', 'handling', { unit: 'min' }),
  expression: 'b P h',
  variables: {
    b: variable('count', 'pieces'),
    P: passCount,
    h: variable('time', 'handling a piece, each pass', { unit: 'min' }),
  },
  basis: 'estimate',
});

/**
 * How long a pile takes through the thicknesser: passes from what is to come off and the cut of a pass, the time under
 * the knives, and the handling between. `totalLength` is that of all pieces together; `handling` is for one piece and
 * one pass, an estimate until you have timed your own.
 * @throws InputError when neither passes nor removal is given
 */
export const planingTime = recipe({
  name: 'planingTime',
  title: 'Time at the thicknesser',
  topic: 'machining',
  about:
    'How long a pile takes through the thicknesser, passes and handling counted. For feed by rollers; not for a hand-fed jointer.',
  sources: [],
  inputs: {
    totalLength: field.length({
      symbol: 'L',
      label: 'total length',
      help: 'Length of all pieces together.',
      above: '0 mm',
      max: '100 km',
    }),
    passes: field.count({
      symbol: 'P',
      label: 'passes',
      help: 'Passes of each piece; leave it out to work them out from what comes off.',
      min: 1,
      max: 1000,
      optional: true,
    }),
    feed: field.speed({ symbol: 'v', label: 'feed of the machine', above: '0 m/min', max: '300 m/min' }),
    handling: field.time({
      symbol: 'h',
      label: 'handling time',
      help: 'Time to handle one piece for each pass.',
      min: '0 s',
      max: '1 h',
      default: '15 s',
    }),
    pieces: field.count({ symbol: 'b', label: 'how many pieces', min: 1, max: 100_000, default: 1 }),
    removal: field.length({
      symbol: 'x',
      label: 'to take off',
      help: 'Thickness to take off each piece, both faces together.',
      above: '0 mm',
      max: '500 mm',
      optional: true,
    }),
    depthPerPass: field.length({
      symbol: 'a',
      label: 'depth per pass',
      help: 'Thickness taken off in one pass.',
      above: '0 mm',
      max: '20 mm',
      default: '1 mm',
    }),
  },
  outputs: {
    time: out.time({ label: 'in all' }),
    passes: out.count({ label: 'passes of each piece' }),
    cutting: out.time({ label: 'cutting time', help: 'Time with timber under the knives.' }),
    handlingTime: out.time({ label: 'handling' }),
    run: out.length({ label: 'length that runs through', unit: 'm' }),
  },
  formulas: [passesFor, cutting, carrying],
  solve: (given, trace) => {
    if (given.passes === undefined && given.removal === undefined)
      throw new InputError({
        field: 'passes',
        message:
          'missing; takes a whole number such as 4, or give removal, what is to come off, such as "6 mm"',
      });
    const P =
      given.passes ?? trace.evaluate(passesFor, { x: given.removal as number, a: given.depthPerPass });
    if (P > 10_000)
      throw new InputError({
        field: 'depthPerPass',
        message: `needs ${String(P)} passes, takes a cut that does it in 10 000 or fewer`,
      });
    const t_c = trace.evaluate(cutting, { L: given.totalLength, P, v: given.feed });
    const t_h = trace.evaluate(carrying, { b: given.pieces, P, h: given.handling });
    return { time: t_c + t_h, passes: P, cutting: t_c, handlingTime: t_h, run: given.totalLength * P };
  },
  limits: [
    {
      // 1/16 in, in tenths of a micrometre: the last binary digit decides nothing.
      when: (given) => given.passes === undefined && Math.round(given.depthPerPass * 1e7) > 15_875,
      message:
        'a club allows 1/16 in (1.6 mm) in a pass, a school about 1 mm, an insurer 1/8 in (3.2 mm); keep to the machine’s own plate',
      source: cite('club-planer-rules', 'maximum cut', { also: cite('insurer-planer-talk', 'maximum cut') }),
    },
    {
      // 12 in, in micrometres.
      when: (given) => Math.round((given.totalLength / given.pieces) * 1e6) < 304_800,
      message: (given) =>
        `pieces of ${formatQuantity({ kind: 'length', value: given.totalLength / given.pieces })} on average are shorter than the 12 in (305 mm) that safety rules ask for; a longer piece with waste at its end, or another method`,
      source: cite('insurer-planer-talk', 'minimum length', {
        also: cite('hse-surface-planer', 'short work'),
      }),
    },
  ],
  cautions: [
    danger(
      'stand to one side of the line of feed, keep hands out of the mouth, and pass a metal detector over salvaged timber first',
      cite('club-planer-rules', 'reclaimed lumber'),
    ),
    danger(
      'wear ear defenders: planing is loud, up to 105 dB at a planer moulder, and hearing protection is due from a daily 85 dB(A)',
      cite('hse-noise-examples', 'planer moulder', { also: cite('hse-wis13', 'action values') }),
    ),
    note('time your own handling over ten pieces and put it in: it often outweighs the cutting'),
  ],
  chart: (_given, answer) => {
    const long = answer.time >= 7200;
    const in_ = (s: number): number => s / (long ? 3600 : 60);
    const text = (s: number): string => formatQuantity({ kind: 'time', value: s }, { digits: 3 });
    return barChart({
      title: `${text(answer.time)} for ${String(answer.passes)} pass${answer.passes === 1 ? '' : 'es'} of each piece`,
      of: '',
      value: { title: 'Time', unit: long ? 'h' : 'min' },
      bars: [
        { name: 'under the knives', value: in_(answer.cutting), label: text(answer.cutting) },
        { name: 'handling', value: in_(answer.handlingTime), label: text(answer.handlingTime) },
      ],
    });
  },
  sentence: 'Allow {time}, in {passes} passes.',
  example: {
    totalLength: '31.2 m',
    pieces: 16,
    removal: '6 mm',
    depthPerPass: '1 mm',
    feed: '6 m/min',
    handling: '15 s',
  },
});
