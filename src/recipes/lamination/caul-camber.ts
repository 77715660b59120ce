import { lineChart } from '../../charts/lineChart.js';
import { danger, dataCaution, note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { cite } from '../../recipe/source.js';
import { stiffWoodField } from '../../timber/field.js';
import { mm } from './salvage.js';

const beamTable = cite('fpl-gtr-190', 'Eq. 9-2 and Table 9-1, p. 9-2');
const span = letter('length', 'length of the caul between its clamps', { in: 'mm' });
const line = letter('lineLoad', 'press along the caul', { in: 'N/mm' });
const b = letter('length', 'width of the caul, across its pressing face', { in: 'mm' });
const d = letter('length', 'depth of the caul, the way it bends', { in: 'mm' });

const press = formula({
  symbol: 'w',
  gives: line,
  text: '2 F / L',
  where: { F: letter('force', 'force of the clamp at each end', { in: 'N' }), L: span },
  basis: 'definition',
});

const second = formula({
  symbol: 'I',
  gives: letter('secondMoment', 'second moment of the caul', { in: 'mm4' }),
  text: 'b d^3 / 12',
  where: { b, d },
  basis: 'definition',
});

const crown = formula({
  symbol: 'y',
  gives: letter('length', 'crown at the middle', { in: 'mm' }),
  text: '5 w L^4 / (384 E I)',
  where: {
    w: line,
    L: span,
    E: letter('modulus', 'stiffness of the timber', { in: 'N/mm2' }),
    I: letter('secondMoment', 'second moment of the caul', { in: 'mm4' }),
  },
  source: beamTable,
});

const bend = formula({
  symbol: 'sigma',
  gives: letter('stress', 'bending stress at the middle', { in: 'N/mm2' }),
  text: '6 w L^2 / (8 b d^2)',
  where: { w: line, L: span, b, d },
  source: beamTable,
});

/** Share of the printed strength that a caul may be bent to; cauls are loaded for an hour, over and over, and knots are not in the mean. */
const safeShare = { clear: 1 / 3, characteristic: 0.6, allowable: 1 };

/**
 * How much crown to plane on a caul so that, clamped at its two ends, it comes straight and presses evenly all along.
 * The caul is a beam on two clamps under an even load of 2 F / L; its crown is the sag that load gives. For straight
 * cauls of one section, longer than about ten times their depth. Lengths, a timber or grade, a force in; m and Pa inside.
 * Source: the beam formula; how far the strength may be used is common practice.
 */
export const caulCamber = recipe({
  name: 'caulCamber',
  title: 'Crown of a caul',
  topic: 'lamination',
  about:
    'How much crown to plane on a caul so that, clamped at its ends, it presses evenly along its whole length.',
  sources: [beamTable],
  inputs: {
    length: field.length({
      symbol: 'L',
      says: 'length of the caul between its two clamps',
      above: '0 mm',
      max: '5 m',
    }),
    width: field.length({
      symbol: 'b',
      says: 'width of the caul, across its pressing face',
      min: '5 mm',
      max: '500 mm',
    }),
    depth: field.length({
      symbol: 'd',
      says: 'depth of the caul, the way it bends',
      min: '5 mm',
      max: '500 mm',
    }),
    timber: stiffWoodField({ says: 'timber or grade of the caul' }),
    clampForceEach: field.force({
      symbol: 'F',
      says: 'force of the clamp at each end',
      above: '0 N',
      max: '50 kN',
    }),
  },
  outputs: {
    camber: out.length({
      symbol: 'y',
      says: 'crown at the middle, planed off to nothing there and fully at the ends',
    }),
    stress: out.stress({ symbol: 'sigma', says: 'bending stress at the middle' }),
    ok: out.flag({ says: 'does the caul bear it?' }),
    allowed: out.stress({ says: 'stress it may be bent to', optional: true }),
    camberLow: out.length({ says: 'crown if the timber is stiff for its kind', optional: true }),
    camberHigh: out.length({ says: 'crown if the timber is limber for its kind', optional: true }),
    press: out.lineLoad({ symbol: 'w', says: 'press along the caul' }),
    marks: out.table(
      { position: out.length({ says: 'from the end' }), planeOff: out.length({ says: 'planed off there' }) },
      { says: 'How much to plane off along one half; the other half alike' },
    ),
  },
  formulas: [press, second, crown, bend],
  solve: (given, work) => {
    const wood = given.timber;
    if (!work.silent) {
      // Of a group of species each source is named once: a hundred rows of one table help nobody.
      const once = wood.timber?.isGroup
        ? [...new Map(wood.citations.map((c) => [c.id, c])).values()]
        : wood.citations;
      for (const c of once)
        work.source(wood.timber?.isGroup ? { ...c, locator: 'rows of all its species' } : c);
      work.say(
        `${wood.name}: modulus ${Number((wood.modulus.middle / 1e9).toPrecision(3))} GPa (${wood.basis}).`,
      );
      for (const text of wood.doubts) work.caution(dataCaution(text));
    }
    const w = work.apply(press, { F: given.clampForceEach, L: given.length });
    const I = work.apply(second, { b: given.width, d: given.depth });
    const y = work.apply(crown, { w, L: given.length, E: wood.modulus.middle, I });
    const stress = work.apply(bend, { w, L: given.length, b: given.width, d: given.depth });
    const share = wood.basis.startsWith('characteristic')
      ? safeShare.characteristic
      : wood.basis.startsWith('allowable')
        ? safeShare.allowable
        : safeShare.clear;
    const allowed = wood.bending && wood.bending.middle * share;
    if (wood.bending)
      work.say(
        `Stress allowed: ${Number(share.toPrecision(2))} of the ${Math.round(wood.bending.middle / 1e6)} MPa given for it (common practice).`,
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
      says: 'the caul is shorter than ten times its depth: shear bends it as well, and the true crown is larger than this',
    },
  ],
  cautions: (_, answer) => [
    ...(answer.ok
      ? []
      : [
          danger(
            answer.allowed === undefined
              ? 'no bending strength is in the data for this timber: whether the caul bears the clamps is not known; take a timber or grade with one'
              : 'bent further than its timber safely bears: a caul that breaks under clamps throws splinters; make it deeper, or use less force',
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
  example: {
    length: '640 mm',
    width: '45 mm',
    depth: '60 mm',
    timber: 'unknown softwood',
    clampForceEach: '2 kN',
  },
});

/** Share of the middle's sag at the share x of a beam on two supports under an even load. */
function sagShape(x: number): number {
  return (16 / 5) * (x - 2 * x ** 3 + x ** 4);
}
