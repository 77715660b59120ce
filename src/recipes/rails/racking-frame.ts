import { rackingRemedies } from './rail-remedies.js';
import { danger, estimate, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import {
  crossingPolar,
  crossingStiffness,
  crossingTorque,
  frameSway,
  rollingShear,
} from '../../materials/working-stress/lap.js';
import { netMoment } from '../../materials/working-stress/notch.js';
import { InputError } from '../../units/input-error.js';
import { rackingDrawing } from './racking-drawing.js';
import { rackingFormulas, testForce } from './racking-formulas.js';
import { partUses, weakestPart } from './racking-strength.js';
import { frameOf, swayOf } from './racking-sway.js';
import type { Situation } from './load-situation.js';
import { loadBearingCautions } from './loads-and-creep.js';
import { solidField } from './section.js';
import { materialFields } from './material-fields.js';
import { materialFormulas } from './material-formulas.js';
import { materialOf } from './design-values.js';

/** A push lasts minutes: short duration, no creep. */
const pushed: Situation = {
  duration: 'short',
  serviceClass: 1,
  creep: 1,
  stays: 0,
  words: 'short duration, heated room',
};

/** Beyond this share of the height the frame lies down, and the formulas of small sway say nothing. */
const absurd = 1 / 3;

/**
 * How much an open frame of two legs and a rail sways for a push along its top, and which part gives first: members at
 * their laps, glued faces by rolling shear and twist, screws, brace. Feet free to turn; a first estimate.
 * @throws InputError where the sway passes a third of the height
 */
export const rackingFrame = recipe({
  name: 'rackingFrame',
  title: 'Racking of a frame',
  topic: 'rails',
  about:
    'How far a frame of two legs and a rail sways when pushed along its top, what push it holds and what gives first: members, glued laps, screws or brace. An estimate to compare joints by.',
  sources: [],
  inputs: {
    height: field.length({
      symbol: 'h',
      label: 'rail height',
      help: 'From the floor to the middle of the rail.',
      above: '0 mm',
      max: '5 m',
    }),
    width: field.length({
      symbol: 'L',
      label: 'leg distance',
      help: 'Between the legs, middle to middle.',
      above: '0 mm',
      max: '10 m',
    }),
    section: solidField({
      label: 'section',
      help: 'Thickness of the frame by depth of its legs in the plane of the frame.',
    }),
    rail: solidField({
      label: 'rail section',
      help: 'Thickness by depth of the rail, where it differs from the legs.',
      optional: true,
    }),
    joint: field.choice(['glued half lap', 'screwed half lap', 'stiff', 'braced'], {
      label: 'corners',
      help: 'How the corners are made.',
      default: 'glued half lap',
    }),
    jointStiffness: field.quantity('rotationalStiffness', {
      label: 'corner stiffness',
      help: 'Stiffness of one corner against turning; give it in place of the estimate.',
      above: '0 N m/rad',
      max: '1e9 N m/rad',
      optional: true,
    }),
    screws: field.count({
      label: 'screws',
      help: 'In each corner, or at each end of the brace.',
      min: 1,
      max: 20,
      default: 2,
    }),
    screwDiameter: field.length({
      label: 'diameter of those screws',
      min: '2 mm',
      max: '16 mm',
      default: '5 mm',
    }),
    brace: solidField({
      label: 'brace section',
      help: 'Section of the brace from a foot to the far corner.',
      default: '20 x 45 mm',
    }),
    frames: field.count({
      label: 'frames',
      help: 'Frames that share the push.',
      min: 1,
      max: 20,
      default: 1,
    }),
    push: field.force({
      symbol: 'F',
      label: 'push along the top',
      above: '0 N',
      max: '100 kN',
      default: '100 N',
    }),
    mass: field.mass({
      label: 'mass',
      help: 'For the push of the furniture test.',
      above: '0 kg',
      max: '5000 kg',
      optional: true,
    }),
    largeTop: field.flag({
      label: 'large and high',
      help: 'Whether the top is over 0.46 m² and over 610 mm high.',
      default: true,
    }),
    ...materialFields,
  },
  outputs: {
    verdict: out.text({ label: 'verdict', help: 'What the frame holds, and what gives first.' }),
    sway: out.length({ label: 'sway', help: 'Sway at the top for the push.' }),
    pushAllowed: out.force({
      label: 'push allowed',
      help: 'Push that the weakest part holds.',
      optional: true,
    }),
    use: out.share({
      label: 'share of strength',
      help: 'Share of the strength that the push uses.',
      optional: true,
    }),
    swayPerForce: out.length({ label: 'sway per 100 N', help: 'Sway at the top for each 100 N.' }),
    stiffness: out.springRate({ label: 'stiffness', help: 'Push for each millimetre of sway.' }),
    jointStiffness: out.quantity('rotationalStiffness', { label: 'stiffness of one corner', optional: true }),
    shareOfJoints: out.share({
      label: 'share from corners',
      help: 'Share of the sway that the corners give.',
      optional: true,
    }),
    testForce: out.force({
      label: 'test push',
      help: 'Push on a leg in the furniture test.',
      optional: true,
    }),
    testSway: out.length({ label: 'sway under that push', optional: true }),
    parts: out.table(
      {
        part: out.text({ label: 'part' }),
        use: out.share({
          label: 'share of strength',
          help: 'Share of its strength that is used.',
          optional: true,
        }),
      },
      { label: 'Parts', help: 'What the push uses of the strength of each part.' },
    ),
    basis: out.text({ label: 'the timber’s figures' }),
  },
  formulas: [
    ...rackingFormulas,
    crossingPolar,
    crossingTorque,
    crossingStiffness,
    rollingShear,
    netMoment,
    frameSway,
    ...materialFormulas,
  ],
  solve: (given, trace) => {
    const material = materialOf(given, trace, {
      section: given.section,
      mix: { permanent: 0, imposed: 1 },
      situation: pushed,
    });
    const frame = frameOf(given, material.density, trace);
    const { moved, corner, shareOfJoints } = swayOf(frame, given.jointStiffness, material, trace);
    if (moved > absurd * given.height)
      throw new InputError({
        field: 'push',
        message: `sways ${(moved * 1000).toFixed(0)} mm, over a third of the height of ${(given.height * 1000).toFixed(0)} mm: it would lie down; takes stiffer corners, a brace, thicker pieces, or a push under ${Math.floor((given.push * absurd * given.height) / moved)} N`,
      });
    const uses = partUses(frame, material, trace);
    const test =
      given.mass === undefined
        ? undefined
        : trace.evaluate(testForce, { m: given.mass, c: given.largeTop ? 222 : 44 });
    return {
      ...weakestPart(uses, given.push),
      sway: moved,
      swayPerForce: (moved / given.push) * 100,
      stiffness: given.push / moved,
      jointStiffness: corner,
      shareOfJoints,
      testForce: test,
      testSway: test === undefined ? undefined : (moved / given.push) * test,
      parts: uses.map(({ part, use }) => ({ part, use: Number.isFinite(use) ? use : undefined })),
      basis: material.basis,
    };
  },
  cautions: (given, answer) => [
    ...loadBearingCautions,
    ...(answer.use === undefined || answer.use > 1
      ? [danger(`do not build it so for this push: ${answer.verdict}`)]
      : []),
    estimate(
      'feet taken as free to turn on the floor, the top as no help; glued crossings were found half to twice as stiff, so build one corner and push it before trusting the figure',
    ),
    ...(given.joint === 'screwed half lap'
      ? [note('screws alone work loose under a push to and fro: glue as well, or brace')]
      : []),
    ...(given.joint === 'glued half lap' && given.section.depth > 0.075
      ? [note('a glued crossing wider than 75 mm works against its own shrinkage (common practice)')]
      : []),
    ...(given.joint === 'stiff' || given.jointStiffness !== undefined
      ? [note('the strength of the corner itself is not known here: only its members are checked')]
      : []),
  ],
  chart: (given, answer) => rackingDrawing(given, answer.sway),
  sentence: '{verdict}',
  mending: {
    fails: (_given, out) => (out.use ?? 0) > 1,
    remedies: rackingRemedies,
    then: 'it holds {pushAllowed}',
  },
  example: {
    height: '850 mm',
    width: '560 mm',
    section: '35 x 70 mm',
    joint: 'glued half lap',
    grade: 'C16',
    push: '100 N',
    mass: '44 kg',
    frames: 2,
  },
});
