import type { Support } from './beam-loads.js';
import { largerSection, moreSupport } from './rail-remedies.js';
import { danger, note, type Caution } from '../../engine/caution.js';
import { formula, variable } from '../../engine/formula.js';
import { out, type RawOutput } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { nullTrace } from '../../engine/trace.js';
import { both, Quantity } from '../../units/quantity.js';
import { beamCase, beamInputs } from './beam-case.js';
import { beamWords, verdict } from './beam-verdict.js';
import { beamChart } from './beam-chart.js';
import { glueLineCautions, glueLineFormulas, glueLineUse } from './glue-lines.js';
import { forceOf } from './beam-loads.js';
import { worstOf } from './beam-worst.js';
import { longTermFactor } from '../../materials/working-stress/use-category.js';
import { loadBearingCautions, ownWeightOf } from './loads-and-creep.js';
import { materialFormulas } from './material-formulas.js';
import { notchUseOf, shortestBay } from './notched-beam.js';
import { notchCautions, notchFormulas } from './notched-rail.js';

const bendingStress = formula({
  symbol: 'sigma',
  result: variable('stress', 'greatest bending stress', { unit: 'MPa' }),
  expression: 'M / W',
  variables: {
    M: variable('moment', 'greatest moment', { unit: 'N mm' }),
    W: variable('sectionModulus', 'section modulus', { unit: 'mm3' }),
  },
  basis: 'definition',
});
const shearStress = formula({
  symbol: 'tau',
  result: variable('stress', 'greatest shear stress', { unit: 'MPa' }),
  expression: 'V / A_v',
  variables: {
    V: variable('force', 'greatest shear force'),
    A_v: variable('area', 'shear force over greatest shear stress, 2/3 of a rectangle', { unit: 'mm2' }),
  },
  basis: 'definition',
});
const outputs = {
  maxDeflection: out.length({ label: 'first sag', help: 'Greatest sag when the load comes on.' }),
  longDeflection: out.length({ label: 'long-term sag', help: 'Greatest sag in the long run.' }),
  deflectionAt: out.length({ label: 'place of greatest sag', help: 'From the left end.' }),
  maxMoment: out.moment({ label: 'greatest bending moment' }),
  momentAt: out.length({ label: 'where that is' }),
  maxShear: out.force({ label: 'greatest shear force' }),
  shearAt: out.length({ label: 'where that is' }),
  maxSlope: out.angle({ label: 'steepest slope' }),
  bendingStress: out.stress({ label: 'greatest bending stress' }),
  shearStress: out.stress({ label: 'greatest shear stress' }),
  bendingUse: out.share({
    label: 'share of bending',
    help: 'Bending stress as a share of the stress to stay under.',
    optional: true,
  }),
  shearUse: out.share({
    label: 'share of shear',
    help: 'Shear stress as a share of the stress to stay under.',
    optional: true,
  }),
  notchUse: out.share({
    label: 'share at the notch',
    help: 'Force or moment at the notch as a share of what it carries.',
    optional: true,
  }),
  glueStress: out.stress({
    label: 'glue-line stress',
    help: 'Greatest shear stress at a glue line of glued layers or a box.',
    optional: true,
  }),
  glueUse: out.share({
    label: 'share of glue line',
    help: 'Glue-line stress as a share of half of the wood’s shear stress to stay under.',
    optional: true,
  }),
  verdict: out.text({ label: 'strong enough', help: 'Whether the stresses stay under their limits.' }),
  secondMoment: out.secondMoment({
    label: 'second moment',
    help: 'Second moment of area; where moduli differ, as if all had that of the timber.',
  }),
  sectionModulus: out.sectionModulus({
    label: 'section modulus',
    help: 'Moment over greatest bending stress.',
  }),
  basis: out.text({ label: 'the timber’s figures' }),
  reactions: out.table(
    {
      position: out.length({ label: 'from the left end' }),
      force: out.force({ label: 'up on the beam' }),
      moment: out.moment({ label: 'clockwise on the beam', optional: true }),
    },
    { label: 'What the supports carry' },
  ),
  diagrams: out.table(
    {
      position: out.length({ label: 'from the left end' }),
      shear: out.force({ label: 'shear force', help: 'Positive where it is up on the left.' }),
      moment: out.moment({ label: 'moment', help: 'Positive where it bends downward.' }),
      deflection: out.length({ label: 'sag', help: 'Positive downward.' }),
    },
    {
      label: 'Along the beam',
      help: 'Shear, moment and first sag at the ends, supports, loads and worst places, just right of each.',
    },
  ),
} as const;

/**
 * Any straight beam of one section: any number of pinned, fixed or springing supports, overhangs, brackets, loads at
 * points, spread, over a part or as moments. Exact, with shear deflection. One notch is checked at its section.
 * Not for frames or tapered beams.
 */
export const beam = recipe({
  name: 'beam',
  title: 'A beam under load',
  topic: 'rails',
  about:
    'Reactions, shear, moment, sag and stresses of a straight beam with any supports and loads: rails, tops, shelves, brackets. A notch is checked where it is cut. Not for frames or tapered beams.',
  sources: [cite('fpl-gtr-190', 'ch. 9, Eq. 9-2, Table 9-1, p. 9-2')],
  inputs: beamInputs,
  outputs,
  formulas: [
    ownWeightOf,
    longTermFactor,
    bendingStress,
    shearStress,
    ...glueLineFormulas,
    ...notchFormulas,
    ...materialFormulas,
  ],
  solve: (given, trace): RawOutput<typeof outputs> => {
    const { solved, lasting, material, facts } = beamCase(given, trace);
    const worst = worstOf(solved);
    const down = solved.beam.loads.reduce((s, l) => s + forceOf(l), 0);
    trace.note(
      `Solved as ${solved.reactions.length} support${solved.reactions.length === 1 ? '' : 's'} and the members between them, stiffness method with ${Number.isFinite(facts.GA) ? 'shear deflection' : 'bending alone'}; loads of ${new Quantity('force', down).toString()} in all, and the supports push up ${new Quantity(
        'force',
        solved.reactions.reduce((a, r) => a + r.force, 0),
      ).toString()}.`,
    );
    const maxDeflection = Math.abs(worst.sag.value);
    const sigma = trace.evaluate(bendingStress, { M: Math.abs(worst.M.value), W: 1 / facts.stressByMoment });
    const tau = trace.evaluate(shearStress, { V: Math.abs(worst.V.value), A_v: 1 / facts.stressByShear });
    const notchUse = given.notch && notchUseOf(given.notch, given.section, solved, material, trace);
    const glue = glueLineUse(given.section, Math.abs(worst.V.value), material, trace);
    const size = { V: Math.abs(worst.V.value), M: Math.abs(worst.M.value) };
    const places = [...new Set([...solved.breaks, worst.sag.at, worst.M.at])].sort((a, b) => a - b);
    return {
      maxDeflection,
      longDeflection: Math.abs(worstOf(lasting).sag.value),
      deflectionAt: worst.sag.at,
      maxMoment: Math.abs(worst.M.value),
      momentAt: worst.M.at,
      maxShear: Math.abs(worst.V.value),
      shearAt: worst.V.at,
      maxSlope: Math.abs(worst.slope.value),
      bendingStress: sigma,
      shearStress: tau,
      bendingUse: material.bending === undefined ? undefined : sigma / material.bending,
      shearUse: material.shear === undefined ? undefined : tau / material.shear,
      notchUse,
      ...glue,
      verdict: verdict(sigma, tau, { notch: notchUse, glue: glue.glueUse }, material),
      secondMoment: facts.EI / material.E,
      sectionModulus: 1 / facts.stressByMoment,
      basis: material.basis,
      reactions: solved.reactions.map((r) => ({
        position: r.position,
        force: clean(r.force, size.V),
        moment: r.moment === 0 ? undefined : clean(r.moment, size.M),
      })),
      diagrams: places.slice(0, 400).map((x) => {
        const s = solved.at(x, x === given.length ? 'left' : 'right');
        return {
          position: x,
          shear: clean(s.V, size.V),
          moment: clean(s.M, size.M),
          deflection: clean(s.sag, maxDeflection),
        };
      }),
    };
  },
  limits: [
    {
      when: (given, answer) => answer.maxDeflection > given.length / 20,
      message: 'it sags more than a twentieth of its length: the formulas are for small sags',
    },
  ],
  cautions: (given, answer) => [
    ...loadBearingCautions,
    ...lifting(answer),
    ...(given.notch ? notchCautions(given.notch, given.section, shortestBay(given)) : []),
    ...glueLineCautions(given.section),
    ...(given.section.shape === 'beside'
      ? [note('pieces side by side are taken as fastened so that they sag alike')]
      : []),
  ],
  chart: (given) => {
    const { solved, lasting } = beamCase(given, nullTrace);
    const worst = worstOf(solved);
    const first = Math.abs(worst.sag.value);
    return beamChart(solved, worst, first === 0 ? 1 : Math.abs(worstOf(lasting).sag.value) / first);
  },
  sentence: (_given, out) => `${beamWords(out.verdict)} It sags {maxDeflection} at most.`,
  mending: {
    fails: (_given, out) => out.verdict.startsWith('no'),
    remedies: [
      ...largerSection,
      moreSupport<typeof beamInputs, Support>(
        (s) => s.position,
        (position) => ({ position, lift: Infinity, turn: 0 }),
        'support it once more in the middle of the longest bay',
      ),
    ],
    then: 'it sags {maxDeflection}',
  },
  example: {
    length: '1950 mm',
    supports: [{ position: '150 mm' }, { position: '1600 mm' }],
    loads: [{ load: '450 N/m' }, { position: '1950 mm', force: '400 N' }],
    section: '45 x 95 mm',
    grade: 'C16',
    category: 'hall',
    ownWeight: true,
  },
});

/** Takes away the dust of the last binary digits. */
const clean = (n: number, size: number): number => (Math.abs(n) < 1e-11 * size ? 0 : n);

function lifting(answer: { reactions: readonly { position: number; force: number }[] }): Caution[] {
  const up = answer.reactions.filter((r) => r.force < 0);
  return up.map((r) =>
    danger(
      `hold the beam down at ${both(new Quantity('length', r.position))} with ${both(new Quantity('force', -r.force))}: where it only rests there it lifts, and the rest of this page does not hold`,
    ),
  );
}
