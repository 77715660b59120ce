import type { Remedy } from '../../engine/mending.js';
import { danger, note } from '../../engine/caution.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { mitreGapDrawing } from './mitre-gap-drawing.js';
import { mitreGapFields } from './mitre-gap-fields.js';

const mm = (label: string) => variable('length', label, { unit: 'mm' });
const deg = (label: string) => variable('angle', label, { unit: 'deg' });

const faceOf = formula({
  symbol: 'f',
  result: mm('length of the mitred face'),
  expression: 't / cos(A / 2)',
  variables: { t: mm('thickness of the board'), A: deg('angle that the joint turns') },
  basis: 'geometry',
});
/** Two equal faces that meet at one end open like a pair of compasses: the chord of the angle between them. */
const openGap = formula({
  symbol: 'g',
  result: mm('gap at the open side'),
  expression: '2 f sin(abs(e) / 2)',
  variables: { f: mm('length of the mitred face'), e: deg('error of both cuts together') },
  basis: 'geometry',
});
const fenceGap = formula({
  symbol: 'g_f',
  result: mm('gap at the far end of the joint from an error of the fence'),
  expression: '2 W tan(abs(e_f))',
  variables: { W: mm('length of the joint'), e_f: deg('error of the fence, both cuts alike') },
  basis: 'geometry',
});
const sectionStep = formula({
  symbol: 'u',
  result: mm('difference of the gap from slab to slab, most'),
  expression: '4 f sin(s / 2)',
  variables: { f: mm('length of the mitred face'), s: deg('how far one cut may differ from the next') },
  basis: 'geometry',
});
const tiltFix = formula({
  symbol: 'c',
  result: deg('correction of the tilt at each cut'),
  expression: 'asin(g_t / (2 L_t))',
  variables: { g_t: mm('gap measured at the trial'), L_t: mm('length over which it was measured') },
  basis: 'geometry',
});
const splineReach = formula({
  symbol: 'g_s',
  result: mm('gap that the spline lets be pulled shut'),
  expression: 'c_s f / b',
  variables: {
    c_s: mm('clearance of the spline in its slots'),
    f: mm('length of the mitred face'),
    b: mm('width of the spline across the joint'),
  },
  basis: 'estimate',
});

/** An error either way, brought nearer to none. */
const smallerAngle = (input: string, say: string): Remedy[] =>
  (['down', 'up'] as const).map((direction) => ({
    input,
    direction,
    step: Math.PI / 18_000,
    kind: 'angle',
    reach: 0,
    say,
  }));

/**
 * The open gap of a mitre from errors of bevel and fence and from a board that is not flat, for one slab or for several
 * that are mitred one by one and joined later; what a spline lets be pulled shut; and from the gap of a trial cut the
 * correction of the saw's tilt. Lengths and angles in, lengths and an angle out. Source: geometry.
 */
export const mitreGap = recipe({
  name: 'mitreGap',
  title: 'Gap of a mitre',
  topic: 'joinery',
  about:
    'How far a mitre gapes, and on which side, from an error of the saw’s tilt, of the fence, or of a board that is not flat; how much a spline pulls in; and from a trial cut how to correct the tilt.',
  sources: [],
  inputs: mitreGapFields,
  outputs: {
    sentence: out.text({ label: 'in one sentence' }),
    gap: out.length({ label: 'gap from the tilt' }),
    opensAt: out.text({ label: 'where it opens' }),
    fenceGap: out.length({ label: 'fence gap', help: 'Gap at the far end from the error of the fence.' }),
    worst: out.length({ label: 'worst gap', help: 'Gap with all errors together at their worst.' }),
    step: out.length({
      label: 'largest step',
      help: 'Largest difference of the gap from slab to slab.',
      optional: true,
    }),
    splineTakes: out.length({
      label: 'spline allowance',
      help: 'Gap that the spline lets be pulled shut.',
      optional: true,
    }),
    correction: out.angle({
      label: 'correction',
      help: 'Turn the tilt of each cut by this; positive is steeper.',
      optional: true,
    }),
  },
  formulas: [faceOf, openGap, fenceGap, sectionStep, tiltFix, splineReach],
  solve: (given, trace) => {
    const f = trace.evaluate(faceOf, { t: given.thickness, A: given.turn });
    const gap = trace.evaluate(openGap, { f, e: 2 * given.bevelError });
    const along = trace.evaluate(fenceGap, { W: given.length, e_f: given.fenceError });
    const step = given.slabs > 1 ? trace.evaluate(sectionStep, { f, s: given.cutVariation }) : undefined;
    const worst = gap + along + given.outOfFlat + (step ?? 0);
    const splineTakes =
      given.splineWidth === undefined
        ? undefined
        : trace.evaluate(splineReach, { c_s: given.splineClearance, f, b: given.splineWidth });
    const correction =
      given.trialGap === undefined
        ? undefined
        : trace.evaluate(tiltFix, { g_t: given.trialGap, L_t: given.trialLength });
    const opensAt = openSide(given.bevelError);
    return {
      sentence: sentenceOf(worst, opensAt, given.acceptable, splineTakes),
      gap,
      opensAt,
      fenceGap: along,
      worst,
      step,
      splineTakes,
      correction,
    };
  },
  cautions: (given, answer) => [
    danger(
      'support the work, keep hands out of the line of the blade, and let it stop: a tilted blade traps thin offcuts',
    ),
    ...(given.slabs > 1
      ? [
          note(
            'a setting that is off shifts all slabs alike and can be planed away together; what differs from cut to cut cannot: cut all slabs at one setting without touching it, faces against one straight fence',
          ),
          note(
            'to keep the show face in line over sections, register every section by its show face, never by its back',
          ),
        ]
      : []),
    ...(answer.worst > (answer.splineTakes ?? 0) + given.acceptable
      ? [note('more than glue and spline take up: correct the cut, or plane the faces to fit, before gluing')]
      : []),
  ],
  chart: (given, answer) => mitreGapDrawing({ ...given, ...answer }),
  mending: {
    fails: (given, out) => out.worst > (out.splineTakes ?? 0) + given.acceptable + 1e-12,
    remedies: [
      ...smallerAngle('bevelError', 'bring the tilt within {value}'),
      ...smallerAngle('fenceError', 'bring the fence within {value}'),
      ...smallerAngle('cutVariation', 'cut all slabs within {value} of each other'),
      {
        input: 'outOfFlat',
        direction: 'down',
        step: 0.00005,
        kind: 'length',
        reach: 0,
        say: 'flatten the boards to {value}',
      },
    ],
    then: 'the gap is {worst}',
  },
  example: {
    thickness: '40 mm',
    length: '640 mm',
    bevelError: '0.2 deg',
    slabs: 2,
    splineWidth: '24 mm',
    trialGap: '1.5 mm',
  },
});

/** A cut steeper than half of the turn leaves too little: the joint closes at the inside first. */
const openSide = (error: number): string =>
  error === 0
    ? 'nowhere'
    : error > 0
      ? 'the inside: the outside edges meet first'
      : 'the outside: the inside edges meet first';

function sentenceOf(worst: number, opensAt: string, acceptable: number, spline: number | undefined): string {
  const mm1 = (m: number): string => `${(m * 1000).toFixed(2)} mm`;
  const where = opensAt === 'nowhere' ? '' : ` at ${opensAt.split(':', 1).join()}`;
  const left = worst - acceptable;
  if (left <= 1e-12)
    return `A gap of ${mm1(worst)}${where} at worst: glue bridges it, with ${mm1(-left)} to spare.`;
  if (spline !== undefined && spline >= left)
    return `A gap of ${mm1(worst)}${where} at worst: the spline lets clamps pull it shut.`;
  return `A gap of ${mm1(worst)}${where} at worst: ${mm1(left - (spline ?? 0))} too much.`;
}
