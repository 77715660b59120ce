import { danger, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { InputError } from '../../units/input-error.js';
import { nanometres } from '../../engine/nanometres.js';
import { waterfallDrawing } from './waterfall-drawing.js';

const mm = (label: string) => variable('length', label, { unit: 'mm' });
const bevelLetter = variable('angle', 'bevel of each cut', { unit: 'deg' });

const bevel = formula({
  symbol: 'B',
  result: bevelLetter,
  expression: '90 deg - a / 2',
  variables: { a: variable('angle', 'angle between top and end, inside', { unit: 'deg' }) },
  basis: 'geometry',
});
const lost = formula({
  symbol: 'l',
  result: mm('grain lost on the show face at a fold'),
  expression: 'k / cos(B) + r',
  variables: { k: mm('width of the saw cut'), B: bevelLetter, r: mm('shaved off the mitre after the saw') },
  basis: 'geometry',
});
const lengthOf = formula({
  symbol: 'L',
  result: mm('length to glue up'),
  expression: 'T + n * (H + l) + 2 e',
  variables: {
    T: mm('length of the finished top, outside'),
    n: variable('count', 'ends that fold down'),
    H: mm('height of an end, outside'),
    l: mm('grain lost on the show face at a fold'),
    e: mm('kept at each end of the strip to square it'),
  },
  basis: 'geometry',
});
const waste = formula({
  symbol: 'g',
  result: mm('width of the waste wedge on the back'),
  expression: '2 t tan(B) + l',
  variables: { t: mm('thickness'), B: bevelLetter, l: mm('grain lost on the show face at a fold') },
  basis: 'geometry',
});

/**
 * A top whose ends fold down in a mitre so that the grain runs on over the edge: what length to glue up, where to cut
 * and in which order. For one thickness of board, ends cut from the same strip.
 */
export const mitredEnd = recipe({
  name: 'mitredEnd',
  title: 'Mitred waterfall end',
  topic: 'joinery',
  about:
    'The length of strip to glue up for a top with mitred ends that carry its grain down, where to cut it, and how much grain the saw takes at each fold.',
  sources: [],
  inputs: {
    topLength: field.length({
      symbol: 'T',
      label: 'top length',
      help: 'Length of the finished top, outside to outside.',
      above: '0 mm',
      max: '20 m',
    }),
    endHeight: field.length({
      symbol: 'H',
      label: 'end height',
      help: 'Height of an end, outside.',
      above: '0 mm',
      max: '10 m',
    }),
    thickness: field.length({ symbol: 't', label: 'thickness of the strip', above: '0 mm', max: '300 mm' }),
    kerf: field.length({
      symbol: 'k',
      label: 'kerf',
      help: 'Width of the saw cut.',
      min: '0 mm',
      max: '20 mm',
      default: '3 mm',
    }),
    angle: field.angle({
      symbol: 'a',
      label: 'inside angle',
      help: 'Angle between top and end, inside.',
      min: '60 deg',
      max: '170 deg',
      default: '90 deg',
    }),
    ends: field.count({ symbol: 'n', label: 'ends that fold down', min: 1, max: 2, default: 2 }),
    trim: field.length({
      symbol: 'e',
      label: 'squaring allowance',
      help: 'Kept at each end of the strip for squaring it.',
      min: '0 mm',
      max: '500 mm',
      default: '10 mm',
    }),
    shave: field.length({
      symbol: 'r',
      label: 'mitre allowance',
      help: 'Planed off the two mitres of a fold after the saw.',
      min: '0 mm',
      max: '20 mm',
      default: '0 mm',
    }),
  },
  outputs: {
    stripLength: out.length({ label: 'length to glue up' }),
    grainBreak: out.length({ label: 'grain lost', help: 'Length lost on the show face at a fold.' }),
    bevel: out.angle({ label: 'bevel of each cut' }),
    wedge: out.length({ label: 'waste wedge', help: 'Width of the waste wedge on the back of a fold.' }),
    insideLength: out.length({ label: 'inside length', help: 'Length of the top inside, between the ends.' }),
    cutPositions: out.table(
      {
        order: out.count({ label: 'order' }),
        position: out.length({
          label: 'position',
          help: 'On the show face, from the left end of the strip.',
        }),
        tilt: out.angle({ label: 'blade off square' }),
        leans: out.text({ label: 'direction', help: 'Which way the cut runs toward the back.' }),
        makes: out.text({ label: 'what it makes' }),
      },
      { label: 'Cuts', help: 'Measured on the show face from the left end of the strip.' },
    ),
  },
  formulas: [bevel, lost, lengthOf, waste],
  solve: (given, trace) => {
    const B = trace.evaluate(bevel, { a: given.angle });
    const l = trace.evaluate(lost, { k: given.kerf, B, r: given.shave });
    const strip = trace.evaluate(lengthOf, {
      T: given.topLength,
      n: given.ends,
      H: given.endHeight,
      l,
      e: given.trim,
    });
    const g = trace.evaluate(waste, { t: given.thickness, B, l });
    const back = given.thickness * Math.tan(B);
    const inside = given.topLength - given.ends * back;
    if (nanometres(inside) <= 0)
      throw new InputError({
        field: 'topLength',
        message: `got ${(given.topLength * 1000).toFixed(1)} mm, takes more than the mitres of ${(given.ends * back * 1000).toFixed(1)} mm`,
      });
    if (nanometres(given.endHeight) <= nanometres(back))
      throw new InputError({
        field: 'endHeight',
        message: `got ${(given.endHeight * 1000).toFixed(1)} mm, takes more than the mitre of ${(back * 1000).toFixed(1)} mm`,
      });
    trace.note(
      'Mark every piece with an arrow across the folds on the show face before the first cut, so that grain meets its own grain.',
    );
    return {
      stripLength: strip,
      grainBreak: l,
      bevel: B,
      wedge: g,
      insideLength: inside,
      cutPositions: cutsOf(given, B, l).map((c, i) => ({ order: i + 1, ...c })),
    };
  },
  cautions: [
    danger(
      'support long strips at both ends, with a helper, and keep clear of the wedge that falls off: it can jam against the tilted blade',
    ),
    note('the foot cuts come last: fold and clamp the corner dry, then measure the height on it'),
    note(
      'tape the outside of the mitre before gluing; size the end grain with thinned glue first, and add a spline (see splineSlot)',
    ),
  ],
  chart: (given, answer) => waterfallDrawing({ ...given, ...answer }),
  sentence:
    'Start with a strip of {stripLength}, mitred at {bevel}; the grain misses {grainBreak} at each fold.',
  example: { topLength: '1950 mm', endHeight: '900 mm', thickness: '40 mm', kerf: '3 mm' },
});

interface Cut {
  readonly position: number;
  readonly tilt: number;
  readonly leans: string;
  readonly makes: string;
}

/** The cuts in the order they are made, `l` the grain lost at each mitre. Metres and radians. */
function cutsOf(
  given: {
    readonly trim: number;
    readonly endHeight: number;
    readonly topLength: number;
    readonly ends: number;
  },
  tilt: number,
  l: number,
): Cut[] {
  const fold = given.trim + given.endHeight;
  const start = fold + l;
  const finish = start + given.topLength;
  const left = { tilt, leans: 'toward the left end' };
  const right = { tilt, leans: 'toward the right end' };
  const square = { tilt: 0, leans: '' };
  return [
    { position: given.trim, ...square, makes: 'a square end to measure from' },
    { position: fold, ...left, makes: 'the mitre of the left end; its long point is on the show face' },
    { position: start, ...right, makes: 'the mitre of the top beside it; the wedge between them is waste' },
    ...(given.ends === 2
      ? [
          { position: finish, ...left, makes: 'the other mitre of the top' },
          { position: finish + l, ...right, makes: 'the mitre of the right end' },
          { position: finish + l + given.endHeight, ...square, makes: 'the foot of the right end' },
        ]
      : [{ position: finish, ...square, makes: 'the square end of the top' }]),
  ];
}
