import { estimate, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import type { Trace } from '../../engine/trace.js';
import { rackingDrawing } from './racking-drawing.js';
import {
  halfLapStiffness,
  slipOfScrew,
  screwedStiffness,
  sway,
  rigidSway,
  bracedSway,
  testForce,
} from './racking-formulas.js';
import type { Situation } from './load-situation.js';
import { loadBearingCautions } from './loads-and-creep.js';
import { solidField } from './section.js';
import { sectionFacts } from './section-properties.js';
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

/** Push of the furniture test for a piece of known mass. */
const pushOfTest = (given: { mass?: number; largeTop: boolean }, trace: Trace): number | undefined =>
  given.mass === undefined
    ? undefined
    : trace.evaluate(testForce, { m: given.mass, c: given.largeTop ? 222 : 44 });

/**
 * How much an open frame of two legs and a rail sways for a push along its top: what corners, legs and rail each give.
 * A first estimate that tells a stiff corner from a loose one and a brace from both; not a proof of strength.
 */
export const rackingFrame = recipe({
  name: 'rackingFrame',
  title: 'Racking of a frame',
  topic: 'rails',
  about:
    'How far a frame of two legs and a rail sways when pushed along its top, by glued, screwed, stiff or braced corners. An estimate to compare joints by; it does not prove their strength.',
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
      help: 'Thickness of the frame by depth of its pieces in the plane of the frame.',
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
    sway: out.length({ label: 'sway', help: 'Sway at the top for the push.' }),
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
    basis: out.text({ label: 'the timber’s figures' }),
  },
  formulas: [
    halfLapStiffness,
    slipOfScrew,
    screwedStiffness,
    sway,
    rigidSway,
    bracedSway,
    testForce,
    ...materialFormulas,
  ],
  solve: (given, trace) => {
    const material = materialOf(given, trace, {
      section: given.section,
      mix: { permanent: 0, imposed: 1 },
      situation: pushed,
    });
    const facts = sectionFacts(given.section, material.E, undefined);
    const I = facts.EI / material.E;
    const F = given.push / given.frames;
    const { height: h, width: L } = given;
    const b = given.section.depth;
    const rho = material.density ?? 450;
    if (material.density === undefined && (given.joint === 'screwed half lap' || given.joint === 'braced'))
      trace.warn(note('the density is not known: 450 kg/m³ was taken for the screws'));
    let moved: number;
    let corner = given.joint === 'braced' ? undefined : given.jointStiffness;
    let shareOfJoints: number | undefined;
    if (given.joint === 'braced') {
      const s = trace.evaluate(slipOfScrew, { rho, d: given.screwDiameter });
      moved = trace.evaluate(bracedSway, {
        F,
        h,
        L,
        E: material.E,
        A: given.brace.width * given.brace.depth,
        n: given.screws,
        s,
      });
    } else {
      const free = trace.evaluate(rigidSway, { F, h, L, E: material.E, I });
      if (corner === undefined && given.joint === 'glued half lap')
        corner = trace.evaluate(halfLapStiffness, {
          G: material.G ?? material.E / 16,
          b,
          t: given.section.width,
        });
      else if (corner === undefined && given.joint === 'screwed half lap')
        corner = trace.evaluate(screwedStiffness, {
          n: given.screws,
          s: trace.evaluate(slipOfScrew, { rho, d: given.screwDiameter }),
          r: b / 4,
        });
      moved = corner === undefined ? free : trace.evaluate(sway, { F, h, L, E: material.E, I, k: corner });
      shareOfJoints = 1 - free / moved;
    }
    const test = pushOfTest(given, trace);
    return {
      sway: moved,
      swayPerForce: (moved / given.push) * 100,
      stiffness: given.push / moved,
      jointStiffness: corner,
      shareOfJoints,
      testForce: test,
      testSway: test === undefined ? undefined : (moved / given.push) * test,
      basis: material.basis,
    };
  },
  cautions: (given) => [
    ...loadBearingCautions,
    estimate(
      'feet taken as free to turn on the floor, the top as no help; real joints give more than glue alone, so build one corner and push it before trusting the figure',
    ),
    ...(given.joint === 'screwed half lap'
      ? [note('screws alone work loose under a push to and fro: glue as well, or brace')]
      : []),
  ],
  chart: (given, answer) => rackingDrawing(given, answer.sway),
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
