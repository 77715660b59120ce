import { danger, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { InputError } from '../../units/input-error.js';
import { nanometres } from '../../engine/nanometres.js';
import { pictureField } from './full-size-drawing.js';
import { splineDrawing } from './spline-drawing.js';

const mm = (label: string) => variable('length', label, { unit: 'mm' });
const B = variable('angle', 'bevel of the mitre', { unit: 'deg' });

const bevel = formula({
  symbol: 'B',
  result: B,
  expression: '90 deg - a / 2',
  variables: { a: variable('angle', 'angle between the two pieces, inside', { unit: 'deg' }) },
  basis: 'geometry',
});
const face = formula({
  symbol: 'm',
  result: mm('length of the mitre face'),
  expression: 't / cos(B)',
  variables: { t: mm('thickness of the pieces'), B },
  basis: 'geometry',
});
const depth = formula({
  symbol: 'd',
  result: mm('depth of the slot'),
  expression: 'w / 2 + r',
  variables: { w: mm('width of the spline'), r: mm('room for glue at the bottom') },
  basis: 'definition',
});
const inside = formula({
  symbol: 'w_i',
  result: mm('wood left between the slot and the inside face'),
  expression: '(c - s / 2) * cos(B)',
  variables: {
    c: mm('from the inside corner to the middle of the slot'),
    s: mm('thickness of the spline'),
    B,
  },
  basis: 'geometry',
});
const outside = formula({
  symbol: 'w_o',
  result: mm('wood left between the slot and the outside face'),
  expression: '(m - c - s / 2) * cos(B) - d sin(B)',
  variables: {
    m: mm('length of the mitre face'),
    c: mm('from the inside corner to the middle of the slot'),
    s: mm('thickness of the spline'),
    B,
    d: mm('depth of the slot'),
  },
  basis: 'geometry',
});
const deepest = formula({
  symbol: 'd_m',
  result: mm('deepest slot that leaves the least wall outside'),
  expression: '((m - c - s / 2) * cos(B) - w_m) / sin(B)',
  variables: {
    m: mm('length of the mitre face'),
    c: mm('from the inside corner to the middle of the slot'),
    s: mm('thickness of the spline'),
    B,
    w_m: mm('least wall wanted'),
  },
  basis: 'geometry',
});

/**
 * A slot for a spline, cut square into a mitre face: how deep it is and how much wood is left to either side. The slot
 * belongs near the inside corner, where the wood behind it is thickest.
 */
export const splineSlot = recipe({
  name: 'splineSlot',
  title: 'Slot for a spline in a mitre',
  topic: 'joinery',
  about:
    'Depth of a spline’s slot cut square to a mitre face, the walls it leaves to the inside and the outside, and how deep it may be.',
  sources: [],
  inputs: {
    thickness: field.length({ symbol: 't', label: 'thickness of the pieces', above: '0 mm', max: '300 mm' }),
    splineThickness: field.length({
      symbol: 's',
      label: 'thickness of the spline',
      above: '0 mm',
      max: '100 mm',
    }),
    splineWidth: field.length({
      symbol: 'w',
      label: 'spline width',
      help: 'Width of the spline across the joint.',
      above: '0 mm',
      max: '300 mm',
    }),
    fromInside: field.length({
      symbol: 'c',
      label: 'slot position',
      help: 'From the inside corner along the mitre face to the middle of the slot.',
      above: '0 mm',
      max: '500 mm',
    }),
    angle: field.angle({
      symbol: 'a',
      label: 'inside angle',
      help: 'Angle between the two pieces, inside.',
      min: '30 deg',
      max: '170 deg',
      default: '90 deg',
    }),
    glueRoom: field.length({
      symbol: 'r',
      label: 'glue space',
      help: 'Space for glue at the bottom of each slot.',
      min: '0 mm',
      max: '10 mm',
      default: '0.5 mm',
    }),
    leastWall: field.length({
      label: 'least wall',
      help: 'Least wood to leave on either side.',
      min: '0 mm',
      max: '100 mm',
      default: '5 mm',
    }),
    picture: pictureField,
  },
  outputs: {
    depth: out.length({ label: 'slot depth', help: 'Depth of the slot in each piece.' }),
    wallInside: out.length({ label: 'inside wall', help: 'Wood left between the slot and the inside face.' }),
    wallOutside: out.length({
      label: 'outside wall',
      help: 'Wood left between the slot and the outside face.',
    }),
    ok: out.flag({ label: 'walls thick enough', help: 'Whether both walls are as thick as wanted.' }),
    deepest: out.length({ label: 'deepest slot', help: 'Deepest slot that leaves the least wall outside.' }),
    faceLength: out.length({ label: 'mitre face', help: 'Length of the mitre face.' }),
    bevel: out.angle({ label: 'bevel of the mitre' }),
  },
  formulas: [bevel, face, depth, inside, outside, deepest],
  solve: (given, trace) => {
    const { splineThickness: s, fromInside: c } = given;
    const angle = trace.evaluate(bevel, { a: given.angle });
    const m = trace.evaluate(face, { t: given.thickness, B: angle });
    if (nanometres(c) < nanometres(s / 2) || nanometres(c + s / 2) > nanometres(m))
      throw new InputError({
        field: 'fromInside',
        message: `got ${(c * 1000).toFixed(1)} mm, takes a middle that leaves the slot of ${(s * 1000).toFixed(1)} mm on the mitre face: ${((s / 2) * 1000).toFixed(1)} to ${((m - s / 2) * 1000).toFixed(1)} mm`,
      });
    const d = trace.evaluate(depth, { w: given.splineWidth, r: given.glueRoom });
    const wi = trace.evaluate(inside, { c, s, B: angle });
    const wo = trace.evaluate(outside, { m, c, s, B: angle, d });
    if (nanometres(wo) <= 0)
      throw new InputError({
        field: 'splineWidth',
        message: `the slot of ${(d * 1000).toFixed(1)} mm comes out through the outside face; takes a narrower spline or a slot nearer the inside corner`,
      });
    const most = trace.evaluate(deepest, { m, c, s, B: angle, w_m: given.leastWall });
    return {
      depth: d,
      wallInside: wi,
      wallOutside: wo,
      ok: nanometres(Math.min(wi, wo)) >= nanometres(given.leastWall),
      deepest: Math.max(0, most),
      faceLength: m,
      bevel: angle,
    };
  },
  cautions: (given, answer) => [
    danger(
      'carry the mitred end on a sled or jig with a high fence and clamp it: a piece that rocks on its point is thrown',
    ),
    ...(answer.ok
      ? []
      : [
          note(
            `a wall is under the ${(given.leastWall * 1000).toFixed(1)} mm wanted: move the slot, or make it ${(answer.deepest * 1000).toFixed(1)} mm deep at most`,
          ),
        ]),
    note('a spline of solid wood has its grain across the joint, not along it (common practice)'),
  ],
  chart: (given, answer) => splineDrawing({ ...given, ...answer }),
  sentence: (_given, out) =>
    `Cut the slot {depth} deep: {wallInside} is left inside and {wallOutside} outside${out.ok ? '' : ', too little'}.`,
  mending: {
    fails: (_given, out) => !out.ok,
    remedies: [
      {
        input: 'splineWidth',
        direction: 'down',
        step: 0.001,
        kind: 'length',
        say: 'take a spline {value} wide',
      },
      {
        input: 'fromInside',
        direction: 'up',
        step: 0.001,
        kind: 'length',
        say: 'set the slot {value} from the inside corner',
      },
      {
        input: 'fromInside',
        direction: 'down',
        step: 0.001,
        kind: 'length',
        say: 'set the slot {value} from the inside corner',
      },
      {
        input: 'splineThickness',
        direction: 'down',
        step: 0.0005,
        kind: 'length',
        say: 'take a spline {value} thick',
      },
    ],
    then: '{wallInside} is left inside and {wallOutside} outside',
  },
  example: { thickness: '40 mm', splineThickness: '6 mm', splineWidth: '24 mm', fromInside: '16 mm' },
});
