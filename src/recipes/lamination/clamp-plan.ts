import { Refusal } from '../../quantities/refusal.js';
import { danger, note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { cite } from '../../recipe/source.js';
import { forceOf, pressureOf } from './clamp-figures.js';
import { clampPicture } from './clamp-picture.js';
import { measuredClamps, timberKinds, weakerHand } from './gluing.js';
import { mm } from './salvage.js';

const spreadRule = cite('fww-2010-clamp-position', 'spread of pressure');
const jointLength = letter('length', 'length of the joint', { in: 'mm' });
const need = letter('force', 'force on the joint', { in: 'N' });
const covered = letter('length', 'length of joint that one clamp presses', { in: 'mm' });

const total = formula({
  symbol: 'F',
  gives: need,
  text: 'p L h',
  where: {
    p: letter('pressure', 'clamping pressure', { in: 'MPa' }),
    L: jointLength,
    h: letter('length', 'height of the joint', { in: 'mm' }),
  },
  basis: 'definition',
});

// In these counts a billionth comes off before rounding up, so that an exact fit is not one clamp too many.
const byForce = formula({
  symbol: 'n_F',
  gives: letter('count', 'clamps by force'),
  text: 'ceil(F / q - 10^(-9))',
  where: { F: need, q: letter('force', 'force of one clamp', { in: 'N' }) },
  basis: 'definition',
});

const cover = formula({
  symbol: 'c',
  gives: covered,
  text: 'a + 2 (w + t)',
  where: {
    a: letter('length', 'length of the pad along the joint', { in: 'mm' }),
    w: letter('length', 'width of the outermost board', { in: 'mm' }),
    t: letter('length', 'thickness of the pad', { in: 'mm' }),
  },
  source: spreadRule,
  basis: 'common practice',
});

const bySpacing = formula({
  symbol: 'n_c',
  gives: letter('count', 'clamps by spacing'),
  text: 'ceil(L / c - 10^(-9))',
  where: { L: jointLength, c: covered },
  basis: 'geometry',
});

const pitch = formula({
  symbol: 's',
  gives: letter('length', 'distance from clamp to clamp', { in: 'mm' }),
  text: 'L / n',
  where: { L: jointLength, n: letter('count', 'clamps') },
  basis: 'geometry',
});

/**
 * How many clamps a glue-up takes and where they stand: by force (pressure times joint area) and by spacing (pressure
 * spreads at 45 degrees from each head to the first glue line), whichever asks for more; below and above by turns.
 * For straight edge or face joints. Lengths, a pressure or kind of timber, and a force in; counts, forces and places out.
 * Sources: pressures and clamp forces printed in the trade press; the 45-degree spread is common practice.
 * @throws Refusal without exactly one of pressure and timberKind, or when over 1000 clamps are needed
 */
export const clampPlan = recipe({
  name: 'clampPlan',
  title: 'Clamps for a glue-up',
  topic: 'lamination',
  about:
    'How many clamps a glue-up takes, by force and by spacing, and where each stands, below and above by turns.',
  sources: [],
  inputs: {
    length: field.length({ symbol: 'L', says: 'length of the joint', above: '0 mm', max: '50 m' }),
    jointHeight: field.length({
      symbol: 'h',
      says: 'height of the joint: thickness of the slab at an edge joint',
      above: '0 mm',
      max: '5 m',
    }),
    pressure: field.pressure({
      symbol: 'p',
      says: 'clamping pressure on the glue line; or give timberKind',
      above: '0 kPa',
      max: '10 MPa',
      optional: true,
    }),
    timberKind: field.choice(timberKinds, {
      says: 'kind of timber (and glue) whose printed pressure is taken, at the upper end; or give pressure',
      optional: true,
    }),
    clampForce: field.either(
      [
        field.choice(measuredClamps, { says: 'a kind of clamp' }),
        field.force({ says: 'force', above: '0 N', max: '100 kN' }),
      ],
      { says: 'force that one clamp gives, or a kind of clamp whose force was measured' },
    ),
    outerWidth: field.length({
      symbol: 'w',
      says: 'width of the outermost board, from the edge that is pressed to the first glue line',
      above: '0 mm',
      max: '2 m',
    }),
    pad: field.length({
      symbol: 't',
      says: 'thickness of the pad or batten between clamp and edge',
      min: '0 mm',
      max: '500 mm',
      default: '0 mm',
    }),
    padLength: field.length({
      symbol: 'a',
      says: 'length of the pad along the joint',
      min: '0 mm',
      max: '2 m',
      default: '0 mm',
    }),
    reach: field.length({
      says: 'how far the clamps reach: the opening of a bar, the throat of a screw clamp',
      above: '0 mm',
      max: '20 m',
      optional: true,
    }),
    needReach: field.length({
      says: 'how far they have to reach: the width of the slab with both pads',
      above: '0 mm',
      max: '20 m',
      optional: true,
    }),
  },
  outputs: {
    clamps: out.count({ says: 'clamps' }),
    spacing: out.length({ symbol: 's', says: 'distance from clamp to clamp; half of it from either end' }),
    totalForce: out.force({ symbol: 'F', says: 'force that the joint needs' }),
    governedBy: out.text({ says: 'what decides the count' }),
    byForce: out.count({ says: 'clamps by force' }),
    bySpacing: out.count({ says: 'clamps by spacing' }),
    forceEach: out.force({ says: 'force to tighten each clamp to' }),
    pressure: out.pressure({ says: 'clamping pressure taken' }),
    coverEach: out.length({ symbol: 'c', says: 'length of joint that one clamp presses' }),
    reachOk: out.flag({ says: 'do the clamps reach?', optional: true }),
    positions: out.table(
      {
        clamp: out.count({ says: 'clamp' }),
        position: out.length({ says: 'from the end of the joint' }),
        side: out.text({ says: 'below or above the slab' }),
      },
      { says: 'Where the clamps stand, in the order to tighten: from the middle outward' },
    ),
  },
  formulas: [total, byForce, cover, bySpacing, pitch],
  solve: (given, work) => {
    const p = pressureOf(given, work);
    const q = forceOf(given.clampForce, work);
    const F = work.apply(total, { p, L: given.length, h: given.jointHeight });
    const nF = work.apply(byForce, { F, q });
    const c = work.apply(cover, { a: given.padLength, w: given.outerWidth, t: given.pad });
    const nc = work.apply(bySpacing, { L: given.length, c });
    const n = Math.max(nF, nc);
    if (n > 1000)
      throw new Refusal({
        field: nF >= nc ? 'clampForce' : 'outerWidth',
        says: `needs ${n} clamps, takes what needs 1000 or fewer`,
      });
    const s = work.apply(pitch, { L: given.length, n });
    const places = Array.from({ length: n }, (_, i) => ({
      clamp: i + 1,
      position: (i + 0.5) * s,
      side: i % 2 === 0 ? 'below' : 'above',
    }));
    // From the middle outward, so that squeezed glue and a bowed strip can go somewhere; of two as far, the left first.
    const fromMiddle = (p: { position: number }): number => Math.abs(p.position - given.length / 2);
    const positions = [...places].sort((x, y) => fromMiddle(x) - fromMiddle(y));
    return {
      clamps: n,
      spacing: s,
      totalForce: F,
      byForce: nF,
      bySpacing: nc,
      forceEach: F / n,
      pressure: p,
      coverEach: c,
      positions,
      governedBy: nF > nc ? 'force' : nF < nc ? 'spacing' : 'force and spacing alike',
      ...(given.reach !== undefined && given.needReach !== undefined
        ? { reachOk: given.reach >= given.needReach - 1e-9 }
        : {}),
    };
  },
  cautions: (given, answer) => {
    const weak = weakerHand();
    return [
      ...(answer.reachOk === false
        ? [
            danger(
              `the clamps reach ${mm(given.reach as number)} and ${mm(given.needReach as number)} is asked: join two head to head, or glue in narrower slabs; do not hang on a clamp at its last notch`,
            ),
          ]
        : []),
      danger(
        'a clamp that slips flies: keep face and fingers out of its line, check that heads sit square, and never lengthen the handle',
      ),
      note(
        `hands differ: of two testers the weaker pulled ${weak.factor} times the mean; by the weaker hand the force alone asks for ${Math.ceil(answer.byForce / weak.factor - 1e-9)} clamps`,
        weak.citation,
      ),
      ...(answer.clamps > 1 && answer.spacing < 0.075
        ? [
            note(
              `every ${mm(answer.spacing)} is closer than most clamps stand side by side: take stronger clamps, or glue with fewer joints of this height at a time`,
            ),
          ]
        : []),
      ...(answer.clamps === 1
        ? [note('with one clamp nothing stands against bowing: set a second on the other side')]
        : []),
      ...(given.timberKind?.startsWith('hardwood') && !given.timberKind.includes('poly')
        ? [
            note(
              'a quarter-sawn hardwood edge takes about half the pressure of a flat-sawn one',
              cite('rabiej-fww-194', 'radial and tangential glue lines'),
            ),
          ]
        : []),
      note(
        'tighten till a fine even bead shows along the whole joint; a dry stretch wants another clamp, a flood wants less glue',
      ),
    ];
  },
  chart: (given, answer) => clampPicture(given, answer),
  example: {
    length: '2 m',
    jointHeight: '40 mm',
    timberKind: 'softwood',
    clampForce: 'I-beam bar (sash) clamp',
    outerWidth: '45 mm',
    pad: '20 mm',
    padLength: '60 mm',
    reach: '900 mm',
    needReach: '715 mm',
  },
});
