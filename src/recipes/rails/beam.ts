import { danger, note, type Caution } from '../../recipe/caution.js';
import { formula, letter } from '../../recipe/formula.js';
import { out, type Raw } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { cite } from '../../recipe/source.js';
import { silentWork } from '../../recipe/work.js';
import { both, Quantity } from '../../quantities/quantity.js';
import { beamCase, beamInputs } from './beam-case.js';
import { beamChart } from './beam-chart.js';
import { forceOf } from './beam-loads.js';
import { worstOf } from './beam-worst.js';
import { bears, longFactor, ownWeightOf } from './loads-and-creep.js';
import { stuffFormulas } from './stuff-formulas.js';
import type { Stuff } from './stuff.js';

const bendingStress = formula({
  symbol: 'sigma',
  gives: letter('stress', 'greatest bending stress', { in: 'MPa' }),
  text: 'M / W',
  where: {
    M: letter('moment', 'greatest moment', { in: 'N mm' }),
    W: letter('sectionModulus', 'section modulus', { in: 'mm3' }),
  },
  basis: 'definition',
});
const shearStress = formula({
  symbol: 'tau',
  gives: letter('stress', 'greatest shear stress', { in: 'MPa' }),
  text: 'V / A_v',
  where: {
    V: letter('force', 'greatest shear force'),
    A_v: letter('area', 'shear force over greatest shear stress, 2/3 of a rectangle', { in: 'mm2' }),
  },
  basis: 'definition',
});
const longSag = formula({
  symbol: 'delta',
  gives: letter('length', 'greatest sag in the long run', { in: 'mm' }),
  text: 'K d',
  where: {
    K: letter('ratio', 'sag in the long run over the first sag'),
    d: letter('length', 'greatest first sag', { in: 'mm' }),
  },
  basis: 'definition',
});

const outputs = {
  maxDeflection: out.length({ says: 'greatest sag when the load comes on' }),
  longDeflection: out.length({ says: 'greatest sag in the long run' }),
  deflectionAt: out.length({ says: 'where it sags most, from the left end' }),
  maxMoment: out.moment({ says: 'greatest bending moment' }),
  momentAt: out.length({ says: 'where that is' }),
  maxShear: out.force({ says: 'greatest shear force' }),
  shearAt: out.length({ says: 'where that is' }),
  maxSlope: out.angle({ says: 'steepest slope' }),
  bendingStress: out.stress({ says: 'greatest bending stress' }),
  shearStress: out.stress({ says: 'greatest shear stress' }),
  bendingUse: out.share({ says: 'bending stress as a share of the stress to stay under', optional: true }),
  shearUse: out.share({ says: 'shear stress as a share of the stress to stay under', optional: true }),
  verdict: out.text({ says: 'whether the stresses stay under theirs' }),
  secondMoment: out.secondMoment({
    says: 'second moment of area; where moduli differ, as if all had that of the timber',
  }),
  sectionModulus: out.sectionModulus({ says: 'section modulus: moment over greatest bending stress' }),
  basis: out.text({ says: 'the timber’s figures' }),
  reactions: out.table(
    {
      position: out.length({ says: 'from the left end' }),
      force: out.force({ says: 'up on the beam' }),
      moment: out.moment({ says: 'clockwise on the beam', optional: true }),
    },
    { says: 'What the supports bear' },
  ),
  diagrams: out.table(
    {
      position: out.length({ says: 'from the left end' }),
      shear: out.force({ says: 'shear force; up on the left is positive' }),
      moment: out.moment({ says: 'moment; sagging is positive' }),
      deflection: out.length({ says: 'sag; down is positive' }),
    },
    {
      says: 'Shear, moment and first sag at the ends, supports, loads and worst places (just right of each)',
    },
  ),
} as const;

/**
 * Any straight beam of one section: any number of pinned, fixed or springing supports, overhangs, brackets, loads at
 * points, spread, over a part or as moments. Exact, with shear deflection. Not for frames, tapered or notched beams.
 */
export const beam = recipe({
  name: 'beam',
  title: 'A beam under load',
  topic: 'rails',
  about:
    'Reactions, shear, moment, sag and stresses of a straight beam with any supports and loads: rails, tops, shelves, brackets. Not for frames, or beams that taper or are notched.',
  sources: [cite('fpl-gtr-190', 'ch. 9, Eq. 9-2, Table 9-1, p. 9-2')],
  inputs: beamInputs,
  outputs,
  formulas: [ownWeightOf, longFactor, longSag, bendingStress, shearStress, ...stuffFormulas],
  solve: (given, work): Raw<typeof outputs> => {
    const { solved, stuff, facts } = beamCase(given, work);
    const worst = worstOf(solved);
    const down = solved.beam.loads.reduce((s, l) => s + forceOf(l), 0);
    work.say(
      `Solved as ${solved.reactions.length} support${solved.reactions.length === 1 ? '' : 's'} and the members between them, stiffness method with ${Number.isFinite(facts.GA) ? 'shear deflection' : 'bending alone'}; loads of ${new Quantity('force', down).toString()} in all, and the supports push up ${new Quantity(
        'force',
        solved.reactions.reduce((a, r) => a + r.force, 0),
      ).toString()}.`,
    );
    if (given.long.source) work.source(given.long.source);
    const K = work.apply(longFactor, { k: given.long.factor, s: given.longShare });
    const maxDeflection = Math.abs(worst.sag.value);
    const sigma = work.apply(bendingStress, { M: Math.abs(worst.M.value), W: 1 / facts.stressByMoment });
    const tau = work.apply(shearStress, { V: Math.abs(worst.V.value), A_v: 1 / facts.stressByShear });
    const size = { V: Math.abs(worst.V.value), M: Math.abs(worst.M.value) };
    const places = [...new Set([...solved.breaks, worst.sag.at, worst.M.at])].sort((a, b) => a - b);
    return {
      maxDeflection,
      longDeflection: work.apply(longSag, { K, d: maxDeflection }),
      deflectionAt: worst.sag.at,
      maxMoment: Math.abs(worst.M.value),
      momentAt: worst.M.at,
      maxShear: Math.abs(worst.V.value),
      shearAt: worst.V.at,
      maxSlope: Math.abs(worst.slope.value),
      bendingStress: sigma,
      shearStress: tau,
      bendingUse: stuff.bending === undefined ? undefined : sigma / stuff.bending,
      shearUse: stuff.shear === undefined ? undefined : tau / stuff.shear,
      verdict: verdict(sigma, tau, stuff),
      secondMoment: facts.EI / stuff.E,
      sectionModulus: 1 / facts.stressByMoment,
      basis: stuff.basis,
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
      says: 'it sags more than a twentieth of its length: the formulas are for small sags',
    },
  ],
  cautions: (given, answer) => [
    ...bears,
    ...lifting(answer),
    ...(given.section.shape === 'layers' && !given.section.loose
      ? [note('glued layers are taken as one: the glue must bear the shear between them')]
      : []),
    ...(given.section.shape === 'beside'
      ? [note('pieces side by side are taken as fastened so that they sag alike')]
      : []),
  ],
  chart: (given) => {
    const { solved } = beamCase(given, silentWork);
    const creep = longFactor.of({ k: given.long.factor, s: given.longShare });
    return beamChart(solved, worstOf(solved), creep);
  },
  example: {
    length: '1950 mm',
    supports: [{ position: '150 mm' }, { position: '1600 mm' }],
    loads: [{ load: '450 N/m' }, { position: '1950 mm', force: '400 N' }],
    section: '45 x 95 mm',
    grade: 'C16',
    long: 'heated room',
    longShare: '50 %',
  },
});

/** Takes away the dust of the last binary digits. */
const clean = (n: number, size: number): number => (Math.abs(n) < 1e-11 * size ? 0 : n);

function verdict(sigma: number, tau: number, stuff: Stuff): string {
  const over = [
    sigma > (stuff.bending ?? Infinity) ? 'bending' : '',
    tau > (stuff.shear ?? Infinity) ? 'shear' : '',
  ].filter(Boolean);
  if (over.length > 0) return `no: too much ${over.join(' and ')}`;
  const unchecked = [
    stuff.bending === undefined ? 'bending' : '',
    stuff.shear === undefined ? 'shear' : '',
  ].filter(Boolean);
  return unchecked.length === 2
    ? 'not checked: no stresses to stay under were given'
    : unchecked.length === 1
      ? `yes, ${unchecked[0]} not checked`
      : 'yes';
}

function lifting(answer: { reactions: readonly { position: number; force: number }[] }): Caution[] {
  const up = answer.reactions.filter((r) => r.force < 0);
  return up.map((r) =>
    danger(
      `the support at ${both(new Quantity('length', r.position))} must hold the beam down with ${both(new Quantity('force', -r.force))}; where it only rests, the beam lifts there and the rest of this page does not hold`,
    ),
  );
}
