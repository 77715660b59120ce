import { longerClamps } from './glue-remedies.js';
import { moreClamps, notEnough } from './owned-clamps.js';
import { InputError } from '../../units/input-error.js';
import { danger, note } from '../../engine/caution.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { positionsOf } from './clamp-positions.js';
import { forceOf, pressureOf } from './clamp-pressure.js';
import { clampDrawing } from './clamp-drawing.js';
import { clampFields } from './clamp-fields.js';
import { bySpacing, byForce, clampFormulas, cover, pitch, total } from './clamp-formulas.js';
import { flatCautions, flatness } from './clamp-flatness.js';
import { weakerHand } from './gluing-data.js';
import { ownedAnswer, ownedCautions } from './owned-clamps.js';
import { mm } from './salvage-caution.js';

/**
 * How many clamps a glue-up takes and where they stand: by force (pressure times joint area) and by spacing (pressure
 * spreads at 45 degrees from each head to the first glue line), whichever is more; alternately below and above.
 * For straight edge or face joints. Lengths, a pressure or kind of timber, and a force in; counts, forces and places out.
 * Sources: pressures and clamp forces printed in the trade press; the 45-degree spread is common practice.
 * @throws InputError without exactly one of pressure and timberKind, or when over 1000 clamps are needed
 */
export const clampPlan = recipe({
  name: 'clampPlan',
  title: 'Clamps for a glue-up',
  topic: 'lamination',
  about:
    'How many clamps a glue-up takes, by force and by spacing, and where each stands, alternately below and above.',
  sources: [],
  inputs: clampFields,
  outputs: {
    clamps: out.count({ label: 'clamps' }),
    spacing: out.length({
      symbol: 's',
      label: 'spacing',
      help: 'From clamp to clamp, and half of it from either end.',
    }),
    totalForce: out.force({ symbol: 'F', label: 'force needed', help: 'Force that the joint needs.' }),
    governedBy: out.text({ label: 'what decides the count' }),
    byForce: out.count({ label: 'clamps by force' }),
    bySpacing: out.count({ label: 'clamps by spacing' }),
    forceEach: out.force({ label: 'force per clamp', help: 'Force to tighten each clamp to.' }),
    pressure: out.pressure({ label: 'clamping pressure taken' }),
    coverEach: out.length({
      symbol: 'c',
      label: 'length per clamp',
      help: 'Length of joint that one clamp presses.',
    }),
    reachOk: out.flag({ label: 'do the clamps reach?', optional: true }),
    liftForce: out.force({
      label: 'lifting force',
      help: 'Force at which the slab opens on one face.',
      optional: true,
    }),
    bucklingForce: out.force({
      label: 'buckling force',
      help: 'Force at which a straight slab bows up.',
      optional: true,
    }),
    ownedPressure: out.pressure({
      label: 'pressure reached',
      help: 'Pressure that the clamps owned give.',
      optional: true,
    }),
    ownedClamps: out.count({
      label: 'clamps that reach',
      help: 'How many of the clamps owned reach.',
      optional: true,
    }),
    ownedVerdict: out.text({
      label: 'clamps owned',
      help: 'Whether the clamps owned are enough.',
      optional: true,
    }),
    stages: out.table(
      {
        work: out.text({ label: 'glue-up' }),
        width: out.length({ label: 'slab width', help: 'Width of the slab that comes out.' }),
        reach: out.length({ label: 'reach needed' }),
        clamps: out.count({ label: 'clamps', help: 'Clamps on one slab; a pair counts as one.' }),
        pairs: out.count({ label: 'pairs', help: 'Clamps of these that are two joined head to head.' }),
        pressure: out.pressure({ label: 'pressure reached' }),
        glueUps: out.count({ label: 'glue-ups', help: 'How often the clamps are set.' }),
        enough: out.text({ label: 'enough' }),
      },
      {
        label: 'Glue-up in stages',
        help: 'Where too few of the clamps owned reach over the whole slab.',
        optional: true,
      },
    ),
    positions: out.table(
      {
        clamp: out.count({ label: 'clamp' }),
        position: out.length({ label: 'position', help: 'From the end of the joint.' }),
        side: out.text({ label: 'side', help: 'Below or above the slab.' }),
      },
      {
        label: 'Clamps in order',
        help: 'Where the clamps stand, in the order to tighten: from the middle outward.',
      },
    ),
  },
  formulas: clampFormulas,
  solve: (given, trace) => {
    const p = pressureOf(given, trace);
    const q = forceOf(given.clampForce, trace);
    const F = trace.evaluate(total, { p, L: given.length, h: given.jointHeight });
    const nF = trace.evaluate(byForce, { F, q });
    const widened = given.head + 2 * given.pad;
    // A batten all along the joint ends no cone.
    const a = given.padLength === 0 ? widened : Math.max(given.padLength, given.head);
    const c = trace.evaluate(cover, { a, k: given.head, w: given.outerWidth, t: given.pad });
    const nc = trace.evaluate(bySpacing, { L: given.length, c });
    const n = Math.max(nF, nc);
    if (n > 1000)
      throw new InputError({
        field: nF >= nc ? 'clampForce' : 'outerWidth',
        message: `needs ${n} clamps, takes what needs 1000 or fewer`,
      });
    const s = trace.evaluate(pitch, { L: given.length, n });
    return {
      clamps: n,
      spacing: s,
      totalForce: F,
      byForce: nF,
      bySpacing: nc,
      forceEach: F / n,
      pressure: p,
      coverEach: c,
      positions: positionsOf(n, s, given.length),
      governedBy: nF > nc ? 'force' : nF < nc ? 'spacing' : 'force and spacing alike',
      ...(given.reach !== undefined && given.needReach !== undefined
        ? { reachOk: given.reach >= given.needReach - 1e-9 }
        : {}),
      ...flatness(given, F, trace),
      ...ownedAnswer(given, { force: F, bySpacing: nc }, trace),
    };
  },
  cautions: (given, answer) => {
    const weak = weakerHand();
    return [
      ...flatCautions(given, answer),
      ...ownedCautions(answer),
      ...(answer.reachOk === false
        ? [
            note(
              `join two clamps head to head, or glue in narrower slabs: they reach ${mm(given.reach as number)} where ${mm(given.needReach as number)} is needed; do not hang on a clamp at its last notch`,
            ),
          ]
        : []),
      danger(
        'keep face and fingers out of the line of a clamp, check that heads sit square, and never lengthen the handle: a clamp that slips flies',
      ),
      note(
        `the weaker of two testers managed ${weak.factor} of the average force; with that force alone you need ${Math.ceil(answer.byForce / weak.factor - 1e-9)} clamps`,
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
        'tighten till a fine even bead shows along the whole joint; a dry stretch needs another clamp, a flood less glue',
      ),
    ];
  },
  chart: (given, answer) => clampDrawing(given, answer),
  sentence: (_given, out) =>
    `Set {clamps} clamps, one every {spacing}.${out.reachOk === false ? ' They do not reach.' : ''}${notEnough(out) ? ' Your own are not enough.' : ''}`,
  mending: {
    fails: (_given, out) => out.reachOk === false || notEnough(out),
    remedies: [longerClamps, moreClamps],
  },
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
    slabWidth: '675 mm',
  },
});
