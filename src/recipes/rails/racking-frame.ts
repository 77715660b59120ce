import { estimate, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { rackingDrawing } from './racking-drawing.js';
import type { Situation } from './load-situation.js';
import { loadBearingCautions } from './loads-and-creep.js';
import { solidField } from './section.js';
import { sectionFacts } from './section-properties.js';
import { materialFields } from './material-fields.js';
import { materialFormulas } from './material-formulas.js';
import { materialOf } from './design-values.js';

const E = variable('modulus', 'modulus of elasticity', { unit: 'MPa' });
const G = variable('modulus', 'shear modulus', { unit: 'MPa' });
const I = variable('secondMoment', 'second moment of area', { unit: 'mm4' });
const F = variable('force', 'force along the top');
const mm = (label: string) => variable('length', label, { unit: 'mm' });
// A radian is a pure number in these formulas.
const k = variable('moment', 'stiffness of one corner: moment for each radian', { unit: 'N mm' });

const halfLapStiffness = formula({
  symbol: 'k',
  result: k,
  expression: 'G * b^4 / (3 t)',
  variables: {
    G,
    b: mm('side of the glued square: depth of the pieces in the plane of the frame'),
    t: mm('thickness of the frame'),
  },
  basis: 'estimate',
});
const slipOfScrew = formula({
  symbol: 's',
  result: variable('springRate', 'stiffness of one screw in shear', { unit: 'N/mm', dimensionless: true }),
  expression: 'rho^1.5 d / 23',
  variables: {
    rho: variable('density', 'density of the timber', { dimensionless: true }),
    d: variable('length', 'diameter of the screw', { unit: 'mm', dimensionless: true }),
  },
  source: cite('en-1995-1-1', 'Table 7.1, slip modulus', { read: 'memory' }),
});
const screwedStiffness = formula({
  symbol: 'k',
  result: k,
  expression: 'n s r^2',
  variables: {
    n: variable('count', 'screws in the corner'),
    s: variable('springRate', 'stiffness of one screw in shear', { unit: 'N/mm' }),
    r: mm('from the middle of the corner to a screw'),
  },
  basis: 'estimate',
});
const sway = formula({
  symbol: 'delta',
  result: mm('sway at the top'),
  expression: 'F h^2 / 2 * (L / (6 E I) + 1 / k) + F h^3 / (6 E I)',
  variables: {
    F,
    h: mm('height to the middle of the rail'),
    L: mm('width between the legs, middle to middle'),
    E,
    I,
    k,
  },
  basis: 'estimate',
});
const rigidSway = formula({
  symbol: 'delta_0',
  result: mm('sway at the top if the corners did not give'),
  expression: 'F h^2 L / (12 E I) + F h^3 / (6 E I)',
  variables: {
    F,
    h: mm('height to the middle of the rail'),
    L: mm('width between the legs, middle to middle'),
    E,
    I,
  },
  basis: 'estimate',
});
const bracedSway = formula({
  symbol: 'delta',
  result: mm('sway at the top'),
  expression: 'F * (h^2 + L^2) / L^2 * (sqrt(h^2 + L^2) / (E A) + 2 / (n s))',
  variables: {
    F,
    h: mm('height'),
    L: mm('width'),
    E,
    A: variable('area', 'area of the brace', { unit: 'mm2' }),
    n: variable('count', 'screws at each end of the brace'),
    s: variable('springRate', 'stiffness of one screw in shear', { unit: 'N/mm' }),
  },
  basis: 'estimate',
});
const testForce = formula({
  symbol: 'F_A',
  result: variable('force', 'push on a leg', { dimensionless: true }),
  expression: 'min(0.5 * 9.8 m + c, 445)',
  variables: {
    m: variable('mass', 'mass of the table', { dimensionless: true }),
    c: variable('force', '222 N for large tops, 44 N for others', { dimensionless: true }),
  },
  source: cite('bifma-x5-5', 'clause in a test report, p. 6'),
});

/** A push lasts minutes: short duration, no creep. */
const pushed: Situation = {
  duration: 'short',
  serviceClass: 1,
  creep: 1,
  stays: 0,
  words: 'short duration, heated room',
};

/**
 * How much an open frame of two legs and a rail sways for a push along its top: what corners, legs and rail each give.
 * A first estimate that tells a stiff corner from a loose one and a brace from both; not a proof of strength.
 */
export const rackingFrame = recipe({
  name: 'rackingFrame',
  title: 'Sway of a frame',
  topic: 'rails',
  about:
    'How far a frame of two legs and a rail sways when pushed along its top, by glued, screwed, stiff or braced corners. An estimate to compare joints by; it does not prove their strength.',
  sources: [],
  inputs: {
    height: field.length({
      symbol: 'h',
      label: 'from the floor to the middle of the rail',
      above: '0 mm',
      max: '5 m',
    }),
    width: field.length({
      symbol: 'L',
      label: 'between the legs, middle to middle',
      above: '0 mm',
      max: '10 m',
    }),
    section: solidField({ label: 'thickness of the frame by depth of its pieces in the plane of the frame' }),
    joint: field.choice(['glued half lap', 'screwed half lap', 'stiff', 'braced'], {
      label: 'how the corners are made',
      default: 'glued half lap',
    }),
    jointStiffness: field.quantity('rotationalStiffness', {
      label: 'stiffness of one corner against turning, instead of the estimate',
      above: '0 N m/rad',
      max: '1e9 N m/rad',
      optional: true,
    }),
    screws: field.count({
      label: 'screws in each corner, or at each end of the brace',
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
    brace: solidField({ label: 'section of the brace from a foot to the far corner', default: '20 x 45 mm' }),
    frames: field.count({ label: 'frames that share the push', min: 1, max: 20, default: 1 }),
    push: field.force({
      symbol: 'F',
      label: 'push along the top',
      above: '0 N',
      max: '100 kN',
      default: '100 N',
    }),
    mass: field.mass({
      label: 'mass of the piece, for the push of the furniture test',
      above: '0 kg',
      max: '5000 kg',
      optional: true,
    }),
    largeTop: field.flag({ label: 'whether the top is over 0.46 m² and over 610 mm high', default: true }),
    ...materialFields,
  },
  outputs: {
    sway: out.length({ label: 'sway at the top for the push' }),
    swayPerForce: out.length({ label: 'sway at the top for each 100 N' }),
    stiffness: out.springRate({ label: 'push for each millimetre of sway' }),
    jointStiffness: out.quantity('rotationalStiffness', { label: 'stiffness of one corner', optional: true }),
    shareOfJoints: out.share({ label: 'share of the sway that the corners give', optional: true }),
    testForce: out.force({ label: 'push on a leg in the furniture test', optional: true }),
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
    let corner: number | undefined;
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
      if (given.jointStiffness !== undefined) corner = given.jointStiffness;
      else if (given.joint === 'glued half lap')
        corner = trace.evaluate(halfLapStiffness, {
          G: material.G ?? material.E / 16,
          b,
          t: given.section.width,
        });
      else if (given.joint === 'screwed half lap')
        corner = trace.evaluate(screwedStiffness, {
          n: given.screws,
          s: trace.evaluate(slipOfScrew, { rho, d: given.screwDiameter }),
          r: b / 4,
        });
      moved = corner === undefined ? free : trace.evaluate(sway, { F, h, L, E: material.E, I, k: corner });
      shareOfJoints = 1 - free / moved;
    }
    const test =
      given.mass === undefined
        ? undefined
        : trace.evaluate(testForce, { m: given.mass, c: given.largeTop ? 222 : 44 });
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
