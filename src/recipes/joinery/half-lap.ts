import { danger, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { InputError } from '../../units/input-error.js';
import { pictureField } from './full-size-drawing.js';
import { halfLapDrawing } from './half-lap-drawing.js';
import { lapStrengthFields, lapStrengthOutputs } from './half-lap-fields.js';
import { lapCautions, lapStrength, lapStrengthFormulas } from './half-lap-strength.js';

const mm = (label: string) => variable('length', label, { unit: 'mm' });
const angle = variable('angle', 'angle between the pieces', { unit: 'deg' });

const depth = formula({
  symbol: 'd',
  result: mm('depth of each half'),
  expression: 't / 2',
  variables: { t: mm('thickness of the pieces') },
  basis: 'common practice',
});
const between = formula({
  symbol: 's',
  result: mm('between the shoulders, along the piece'),
  expression: 'w / sin(a)',
  variables: { w: mm('width of the other piece'), a: angle },
  basis: 'geometry',
});
const glued = formula({
  symbol: 'A',
  result: variable('area', 'glued face', { unit: 'mm2' }),
  expression: 'w_A w_B / sin(a)',
  variables: { w_A: mm('width of piece A'), w_B: mm('width of piece B'), a: angle },
  basis: 'geometry',
});

/**
 * A half lap where two pieces cross or meet, square or at an angle: how deep, how far apart the shoulders, how much
 * glued face, and what the cut pieces and the glued face carry: net section, rolling shear and twist. For pieces of one
 * thickness whose faces come flush. Lengths in; lengths, newtons and N·m out. Source: geometry, and the working stresses
 * of every recipe.
 */
export const halfLap = recipe({
  name: 'halfLap',
  title: 'Half lap',
  topic: 'joinery',
  about:
    'How deep to cut a half lap, how far apart its shoulders are at which angle, and what the cut pieces and the glued face carry. Both pieces of one thickness, faces flush.',
  sources: [],
  inputs: {
    widthA: field.length({ label: 'width of piece A', above: '0 mm', max: '2 m' }),
    widthB: field.length({ label: 'width of piece B', above: '0 mm', max: '2 m' }),
    thickness: field.length({ symbol: 't', label: 'thickness of both', above: '0 mm', max: '500 mm' }),
    angle: field.angle({
      symbol: 'a',
      label: 'angle between the pieces',
      min: '10 deg',
      max: '90 deg',
      default: '90 deg',
    }),
    at: field.choice(['crossing', 'end', 'corner'], {
      label: 'kind of halving',
      help: 'Whether they cross, one ends on the other, or both end.',
      default: 'crossing',
    }),
    ...lapStrengthFields,
    picture: pictureField,
  },
  outputs: {
    depth: out.length({ label: 'depth of each half' }),
    shoulders: out.table(
      {
        piece: out.text({ label: 'piece' }),
        between: out.length({
          label: 'shoulder length',
          help: 'From shoulder to shoulder, or from the end to the shoulder.',
        }),
        shoulderAngle: out.angle({ label: 'shoulder angle', help: 'Angle of the shoulder to the edge.' }),
      },
      { label: 'Shoulder lines to knife', help: 'What to knife across each piece.' },
    ),
    glueArea: out.area({ label: 'glued face' }),
    removed: out.volume({
      label: 'timber removed',
      help: 'Timber to be cut away from both pieces.',
      unit: 'cm3',
    }),
    ...lapStrengthOutputs,
  },
  formulas: [depth, between, glued, ...lapStrengthFormulas],
  solve: (given, trace) => {
    const { widthA, widthB, thickness, angle: a } = given;
    if (given.at === 'corner' && Math.round(((a * 180) / Math.PI) * 1e6) !== 90e6)
      throw new InputError({
        field: 'angle',
        message: `got ${((a * 180) / Math.PI).toFixed(1)}°, takes 90° where both pieces end; for another angle let one run over (at: "end")`,
      });
    const d = trace.evaluate(depth, { t: thickness });
    const onA = trace.evaluate(between, { w: widthB, a }, 'between the shoulders of piece A');
    const onB = trace.evaluate(between, { w: widthA, a }, 'between the shoulders of piece B');
    const glueArea = trace.evaluate(glued, { w_A: widthA, w_B: widthB, a });
    return {
      depth: d,
      shoulders: [
        { piece: 'A', between: onA, shoulderAngle: a },
        { piece: 'B', between: onB, shoulderAngle: a },
      ],
      glueArea,
      removed: 2 * d * glueArea,
      ...lapStrength(given, glueArea, trace),
    };
  },
  cautions: (given, answer) => [
    ...lapCautions(answer),
    danger(
      'clear salvaged pieces of nails before cutting; hold small pieces in a vice or a sled, not by hand',
    ),
    note(
      'knife the shoulders from the other piece itself rather than from the figure, and cut to the waste side',
    ),
    ...(given.at === 'crossing'
      ? []
      : [note('a lap at an end holds by glue alone: add a screw or a peg where it may be pulled open')]),
  ],
  chart: (given, answer) => halfLapDrawing({ ...given, ...answer }),
  sentence: (_given, out) =>
    (out.use ?? 0) > 1
      ? 'Too weak: {use} of the strength of the lap would be used.'
      : `Cut each half {depth} deep${out.use === undefined ? '' : ': it holds, with {use} of its strength used'}.`,
  mending: {
    fails: (_given, out) => (out.use ?? 0) > 1,
    remedies: [
      {
        step: 0.001,
        most: 0.15,
        kind: 'length',
        say: 'make both pieces {value} wider',
        adjust: (given, by) => ({ ...given, widthA: given.widthA + by, widthB: given.widthB + by }),
      },
      { input: 'thickness', direction: 'up', step: 0.001, kind: 'length', say: 'make them {value} thick' },
    ],
    then: '{use} of the strength is used',
  },
  example: {
    widthA: '70 mm',
    widthB: '45 mm',
    thickness: '35 mm',
    angle: '60 deg',
    category: 'hall',
    moment: '8 N m',
  },
});
