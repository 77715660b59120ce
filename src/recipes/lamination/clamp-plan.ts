import { InputError } from '../../units/input-error.js';
import { danger, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { positionsOf } from './clamp-positions.js';
import { forceOf, pressureOf } from './clamp-pressure.js';
import { clampDrawing } from './clamp-drawing.js';
import { measuredClamps, timberKinds, weakerHand } from './gluing-data.js';
import { mm } from './salvage-caution.js';

const spreadRule = cite('fww-2010-clamp-position', 'spread of pressure');
const jointLength = variable('length', 'length of the joint', { unit: 'mm' });
const need = variable('force', 'force on the joint', { unit: 'N' });
const covered = variable('length', 'length of joint that one clamp presses', { unit: 'mm' });

const total = formula({
  symbol: 'F',
  result: need,
  expression: 'p L h',
  variables: {
    p: variable('pressure', 'clamping pressure', { unit: 'MPa' }),
    L: jointLength,
    h: variable('length', 'height of the joint', { unit: 'mm' }),
  },
  basis: 'definition',
});

// A billionth comes off before rounding up, so that an exact fit is not one clamp too many.
const byForce = formula({
  symbol: 'n_F',
  result: variable('count', 'clamps by force'),
  expression: 'ceil(F / q - 10^(-9))',
  variables: { F: need, q: variable('force', 'force of one clamp', { unit: 'N' }) },
  basis: 'definition',
});

const cover = formula({
  symbol: 'c',
  result: covered,
  expression: 'a + 2 (w + t)',
  variables: {
    a: variable('length', 'length of the pad along the joint', { unit: 'mm' }),
    w: variable('length', 'width of the outermost board', { unit: 'mm' }),
    t: variable('length', 'thickness of the pad', { unit: 'mm' }),
  },
  source: spreadRule,
  basis: 'common practice',
});

const bySpacing = formula({
  symbol: 'n_c',
  result: variable('count', 'clamps by spacing'),
  expression: 'ceil(L / c - 10^(-9))',
  variables: { L: jointLength, c: covered },
  basis: 'geometry',
});

const pitch = formula({
  symbol: 's',
  result: variable('length', 'distance from clamp to clamp', { unit: 'mm' }),
  expression: 'L / n',
  variables: { L: jointLength, n: variable('count', 'clamps') },
  basis: 'geometry',
});

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
  inputs: {
    length: field.length({ symbol: 'L', label: 'length of the joint', above: '0 mm', max: '50 m' }),
    jointHeight: field.length({
      symbol: 'h',
      label: 'joint height',
      help: 'Thickness of the slab at an edge joint.',
      above: '0 mm',
      max: '5 m',
    }),
    pressure: field.pressure({
      symbol: 'p',
      label: 'pressure',
      help: 'Clamping pressure on the glue line; or give the kind of timber.',
      above: '0 kPa',
      max: '10 MPa',
      optional: true,
    }),
    timberKind: field.choice(timberKinds, {
      label: 'kind of timber',
      help: 'Kind of timber and glue whose printed pressure is taken, at the upper end; or give the pressure.',
      optional: true,
    }),
    clampForce: field.either(
      [
        field.choice(measuredClamps, { label: 'a kind of clamp' }),
        field.force({ label: 'force', above: '0 N', max: '100 kN' }),
      ],
      { label: 'clamp', help: 'Force that one clamp gives, or a kind of clamp whose force was measured.' },
    ),
    outerWidth: field.length({
      symbol: 'w',
      label: 'edge board width',
      help: 'From the edge that is pressed to the first glue line.',
      above: '0 mm',
      max: '2 m',
    }),
    pad: field.length({
      symbol: 't',
      label: 'pad thickness',
      help: 'Thickness of the pad or batten between clamp and edge.',
      min: '0 mm',
      max: '500 mm',
      default: '0 mm',
    }),
    padLength: field.length({
      symbol: 'a',
      label: 'pad length',
      help: 'Length of the pad along the joint.',
      min: '0 mm',
      max: '2 m',
      default: '0 mm',
    }),
    reach: field.length({
      label: 'clamp reach',
      help: 'Opening of a bar clamp, or throat of a screw clamp.',
      above: '0 mm',
      max: '20 m',
      optional: true,
    }),
    needReach: field.length({
      label: 'reach needed',
      help: 'Width of the slab with both pads.',
      above: '0 mm',
      max: '20 m',
      optional: true,
    }),
  },
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
  formulas: [total, byForce, cover, bySpacing, pitch],
  solve: (given, trace) => {
    const p = pressureOf(given, trace);
    const q = forceOf(given.clampForce, trace);
    const F = trace.evaluate(total, { p, L: given.length, h: given.jointHeight });
    const nF = trace.evaluate(byForce, { F, q });
    const c = trace.evaluate(cover, { a: given.padLength, w: given.outerWidth, t: given.pad });
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
        'tighten till a fine even bead shows along the whole joint; a dry stretch wants another clamp, a flood wants less glue',
      ),
    ];
  },
  chart: (given, answer) => clampDrawing(given, answer),
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
