import { lineChart } from '../../charts/line-chart.js';
import { danger, dataCaution, note } from '../../engine/caution.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import type { LoadCase } from '../../materials/working-stress/load-case.js';
import { stressFormulas } from '../../materials/working-stress/stress-formulas.js';
import { woodStress } from '../../materials/working-stress/wood-stress.js';
import { mm } from './salvage-caution.js';
import { caulCamberFields } from './caul-camber-fields.js';

const beamTable = cite('fpl-gtr-190', 'Eq. 9-2 and Table 9-1, p. 9-2');
const span = variable('length', 'length of the caul between its clamps', { unit: 'mm' });
const line = variable('lineLoad', 'press along the caul', { unit: 'N/mm' });
const b = variable('length', 'width of the caul, across its pressing face', { unit: 'mm' });
const d = variable('length', 'depth of the caul, the way it bends', { unit: 'mm' });

const press = formula({
  symbol: 'w',
  result: line,
  expression: '2 F / L',
  variables: { F: variable('force', 'force of the clamp at each end', { unit: 'N' }), L: span },
  basis: 'definition',
});

const second = formula({
  symbol: 'I',
  result: variable('secondMoment', 'second moment of the caul', { unit: 'mm4' }),
  expression: 'b d^3 / 12',
  variables: { b, d },
  basis: 'definition',
});

const crown = formula({
  symbol: 'y',
  result: variable('length', 'crown at the middle', { unit: 'mm' }),
  expression: '5 w L^4 / (384 E I)',
  variables: {
    w: line,
    L: span,
    E: variable('modulus', 'stiffness of the timber', { unit: 'N/mm2' }),
    I: variable('secondMoment', 'second moment of the caul', { unit: 'mm4' }),
  },
  source: beamTable,
});

const bend = formula({
  symbol: 'sigma',
  result: variable('stress', 'bending stress at the middle', { unit: 'N/mm2' }),
  expression: '6 w L^2 / (8 b d^2)',
  variables: { w: line, L: span, b, d },
  source: beamTable,
});

/** Clamps stay on for hours: a load of short duration, all of it imposed, in a heated room. */
const clamped: LoadCase = { mix: { permanent: 0, imposed: 1 }, duration: 'short', serviceClass: 1 };

/**
 * How much crown to plane on a caul so that, clamped at its two ends, it comes straight and presses evenly all along.
 * The caul is a beam on two clamps under an even load of 2 F / L; its crown is the sag that load gives. For straight
 * cauls of one section, longer than about ten times their depth. Lengths, a timber or grade, a force in; m and Pa inside.
 * Source: the beam formula, and the working stresses of every recipe.
 */
export const caulCamber = recipe({
  name: 'caulCamber',
  title: 'Camber of a caul',
  topic: 'lamination',
  about:
    'How much crown to plane on a caul so that, clamped at its ends, it presses evenly along its whole length.',
  sources: [beamTable],
  inputs: caulCamberFields,
  outputs: {
    camber: out.length({
      symbol: 'y',
      label: 'camber',
      help: 'Planed off to nothing at the middle and fully at the ends.',
    }),
    stress: out.stress({ symbol: 'sigma', label: 'bending stress', help: 'Bending stress at the middle.' }),
    ok: out.flag({ label: 'strong enough', help: 'Whether the caul carries the stress.' }),
    allowed: out.stress({ label: 'allowed stress', help: 'Stress that it may be bent to.', optional: true }),
    camberLow: out.length({
      label: 'camber, stiff timber',
      help: 'Camber if the timber is stiffer than average.',
      optional: true,
    }),
    camberHigh: out.length({
      label: 'camber, flexible timber',
      help: 'Camber if the timber is more flexible than average.',
      optional: true,
    }),
    press: out.lineLoad({ symbol: 'w', label: 'press along the caul' }),
    marks: out.table(
      {
        position: out.length({ label: 'from the end' }),
        planeOff: out.length({ label: 'planed off there' }),
      },
      { label: 'Planing one half', help: 'How much to plane off along one half; the other half is alike.' },
    ),
  },
  formulas: [press, second, crown, bend, ...stressFormulas],
  solve: (given, trace) => {
    const wood = given.timber;
    if (!trace.silent) {
      // Of a group of species each source is named once: a hundred rows of one table help nobody.
      const once = wood.timber?.isGroup
        ? [...new Map(wood.citations.map((c) => [c.id, c])).values()]
        : wood.citations;
      for (const c of once)
        trace.source(wood.timber?.isGroup ? { ...c, locator: 'rows of all its species' } : c);
      trace.note(
        `${wood.name}: modulus ${Number((wood.modulus.middle / 1e9).toPrecision(3))} GPa (${wood.basis}).`,
      );
      for (const text of wood.doubts) trace.warn(dataCaution(text));
    }
    const w = trace.evaluate(press, { F: given.clampForceEach, L: given.length });
    const I = trace.evaluate(second, { b: given.width, d: given.depth });
    const y = trace.evaluate(crown, { w, L: given.length, E: wood.modulus.middle, I });
    const stress = trace.evaluate(bend, { w, L: given.length, b: given.width, d: given.depth });
    const size = { width: given.width, depth: given.depth };
    const { bending: allowed } = woodStress(wood, { examined: given.examined, size, load: clamped }, trace);
    if (allowed !== undefined)
      trace.note(
        `Stress allowed for some hours under clamps: ${Number((allowed / 1e6).toPrecision(3))} MPa. The crown itself follows from the mean stiffness, since too soft a figure makes too much crown.`,
      );
    const ranged = wood.modulus.high > wood.modulus.low * 1.001;
    return {
      camber: y,
      stress,
      press: w,
      allowed,
      // Without a strength in the data the caul cannot be called safe.
      ok: stress <= (allowed ?? 0),
      ...(ranged
        ? {
            camberLow: (y * wood.modulus.middle) / wood.modulus.high,
            camberHigh: (y * wood.modulus.middle) / wood.modulus.low,
          }
        : {}),
      marks: [0, 1, 2, 3, 4].map((i) => ({
        position: (i / 8) * given.length,
        planeOff: y * (1 - sagShape(i / 8)),
      })),
    };
  },
  limits: [
    {
      when: (given) => given.length < 10 * given.depth,
      message:
        'the caul is shorter than ten times its depth: shear bends it as well, and the true crown is larger than this',
    },
  ],
  cautions: (_, answer) => [
    ...(answer.ok
      ? []
      : [
          danger(
            answer.allowed === undefined
              ? 'no bending strength is in the data for this timber: whether the caul carries the clamps is not known; take a timber or grade with one'
              : 'bent further than its timber safely carries: a caul that breaks under clamps throws splinters; make it deeper, or use less force',
          ),
        ]),
    ...(answer.camber > 0.02
      ? [
          note(
            `a crown of ${mm(answer.camber)} is too limber to be of use: a deeper caul needs less and presses more evenly`,
          ),
        ]
      : []),
    ...(answer.camber < 0.0003
      ? [
          note(
            `a crown of ${mm(answer.camber, 2)} is less than a plane sets well: a straight caul does the same`,
          ),
        ]
      : []),
    note(
      'plane the crown smooth, check it against a straightedge, and wax or tape the face so that it does not glue on',
    ),
  ],
  chart: (given, answer) => {
    const at = Array.from({ length: 49 }, (_, i) => i / 48);
    return lineChart({
      title: 'Height of the crown along the caul',
      subtitle: `Flat when both ends are clamped with ${Math.round(given.clampForceEach)} N`,
      x: { title: 'From one end', unit: 'mm', values: at.map((x) => x * given.length * 1000) },
      y: { title: 'Above the ends', unit: 'mm', domain: [0, answer.camber * 1000 * 1.25] },
      series: [{ name: 'crown', values: at.map((x) => answer.camber * 1000 * sagShape(x)) }],
      marks: [
        { x: given.length * 500, y: answer.camber * 1000, label: `${mm(answer.camber, 2)} at the middle` },
      ],
    });
  },
  sentence: (_given, out) =>
    out.ok
      ? 'Plane a crown of {camber} into the caul.'
      : 'A crown of {camber} would break the caul: use a longer press, a lower one or better timber.',
  mending: {
    fails: (_given, out) => !out.ok,
    remedies: [
      { input: 'depth', direction: 'up', step: 0.001, kind: 'length', say: 'take a caul {value} deep' },
      {
        input: 'clampForceEach',
        direction: 'down',
        step: 50,
        kind: 'force',
        say: 'tighten each clamp to {value}',
      },
    ],
    then: 'the crown is {camber}',
  },
  example: {
    length: '640 mm',
    width: '45 mm',
    depth: '60 mm',
    timber: 'C24',
    clampForceEach: '2 kN',
  },
});

/** Share of the middle's sag at the share x of a beam on two supports under an even load. */
function sagShape(x: number): number {
  return (16 / 5) * (x - 2 * x ** 3 + x ** 4);
}
