import { note } from '../../recipe/caution.js';
import { field, type Read } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out, type Raw } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { cite } from '../../recipe/source.js';
import { silentWork, type Work } from '../../recipe/work.js';
import { both, Quantity } from '../../quantities/quantity.js';
import { Refusal } from '../../quantities/refusal.js';
import { tableRows } from '../../timber/tables.js';
import { beamChart } from './beam-chart.js';
import type { Load } from './beam-loads.js';
import { solveBeam, type Solved } from './beam-solver.js';
import { greatestMoment, worstOf } from './beam-worst.js';
import { acrossOf, acrossFormulas } from './across-grain.js';
import { bears, g0, longFactor, ownWeightOf } from './loads-and-creep.js';
import { creepField, sagLimitField, sagLimitText } from './sag-limit.js';
import { sectionFacts, type SectionFacts } from './section-facts.js';
import { stuffFields } from './stuff-fields.js';
import { stuffFormulas } from './stuff-formulas.js';
import { stuffOf, type Stuff } from './stuff.js';

const lineOf = formula({
  symbol: 'q',
  gives: letter('lineLoad', 'load by length on the whole width', { in: 'N/mm' }),
  text: 'p B',
  where: {
    p: letter('areaLoad', 'load by area', { in: 'MPa' }),
    B: letter('length', 'width of the top', { in: 'mm' }),
  },
  basis: 'definition',
});

/** The area loads of data/furniture-loads.csv; a test keeps the two alike. */
export const shelfUses = ['books', 'general shelf', 'cabinet shelf', 'dwelling floor'] as const;
const psf = 47.88025898033584;

const inputs = {
  length: field.length({ says: 'length of the top in the direction it spans', above: '0 mm', max: '20 m' }),
  width: field.length({ symbol: 'B', says: 'width of the top, across the span', above: '0 mm', max: '10 m' }),
  thickness: field.length({ says: 'thickness of the top', above: '0 mm', max: '500 mm' }),
  supports: field.list(field.length({ says: 'from the left end', min: '0 mm', max: '20 m' }), {
    says: 'where rails bear it, from the left end',
    least: 2,
    most: 40,
  }),
  load: field.areaLoad({
    symbol: 'p',
    says: 'load by area, where it does most harm',
    min: '0 kPa',
    max: '1000 kPa',
    optional: true,
  }),
  use: field.choice(shelfUses, { says: 'a published load instead', optional: true }),
  edgeLoad: field.force({
    says: 'one load beside, put where it does most harm: an end that hangs over, or the middle of a bay',
    min: '0 N',
    max: '100 kN',
    default: '0 N',
  }),
  grain: field.choice(['along', 'across'], {
    says: 'whether the grain runs along the span or across it',
    default: 'along',
  }),
  limit: sagLimitField({
    says: 'how far it may sag between supports; an end that hangs over counts double its length',
    default: 'L/300',
  }),
  long: creepField({ says: 'how much more it sags in the long run', default: 'no creep' }),
  longShare: field.share({
    says: 'share of the load that stays on for months',
    min: '0 %',
    max: '100 %',
    default: '100 %',
  }),
  ownWeight: field.flag({ says: 'whether the top carries its own weight beside the load', default: true }),
  ...stuffFields,
} as const;
type Given = Read<typeof inputs>;

const outputs = {
  sag: out.length({ says: 'greatest sag in the long run' }),
  firstSag: out.length({ says: 'greatest sag when the load comes on' }),
  sagBetween: out.length({ says: 'greatest sag between supports, in the long run' }),
  sagAtEnd: out.length({ says: 'greatest sag of an end that hangs over, in the long run', optional: true }),
  allowed: out.length({ says: 'sag allowed where it comes nearest to its limit' }),
  stress: out.stress({ says: 'greatest bending stress' }),
  ok: out.flag({ says: 'whether sag and stress stay under their limits' }),
  verdict: out.text({ says: 'why' }),
  basis: out.text({ says: 'the timber’s figures' }),
} as const;

/**
 * How far a top or a shelf sags between its rails and where it hangs over them, with the load put where it does most
 * harm. Grain along the span or, as between two long rails, across it.
 */
export const topSag = recipe({
  name: 'topSag',
  title: 'Sag of a top between its rails',
  topic: 'rails',
  about:
    'How far a top or shelf sags between its rails and past the last of them, and the stress in it. The load stands where it does most harm. For other supports use beam.',
  sources: [cite('fpl-gtr-190', 'ch. 9, Eq. 9-2, Table 9-1, p. 9-2')],
  inputs,
  outputs,
  formulas: [lineOf, ownWeightOf, longFactor, ...acrossFormulas, ...stuffFormulas],
  solve: (given, work): Raw<typeof outputs> => {
    const { cases, stuff, facts, K } = reckon(given, work);
    const bays = baysOf(given);
    let [between, end, stress, first] = [0, 0, 0, 0];
    let nearest = { use: 0, allowed: allowedIn(given, (bays[0] as Bay).length, false), where: '' };
    for (const solved of cases.map((c) => c.solved)) {
      stress = Math.max(stress, greatestMoment(solved) * facts.stressByMoment);
      for (const bay of bays) {
        const sag = sagIn(solved, bay);
        first = Math.max(first, sag);
        if (bay.over) end = Math.max(end, sag * K);
        else between = Math.max(between, sag * K);
        const allowed = allowedIn(given, bay.length, bay.over);
        if ((sag * K) / allowed > nearest.use)
          nearest = {
            use: (sag * K) / allowed,
            allowed,
            where: bay.over ? 'at an end that hangs over' : 'between supports',
          };
      }
    }
    work.say(
      `Solved with the load over all, over each bay alone and over the ends alone${given.edgeLoad > 0 ? ', the single load at each end and in the middle of each bay' : ''}: ${cases.length} cases.`,
    );
    const limit = sagLimitText(given.limit);
    const tooFar = nearest.use > 1 + 1e-9;
    const tooMuch = stuff.bending !== undefined && stress > stuff.bending;
    const verdict = [
      tooFar
        ? `sags too far ${nearest.where}: ${mm(nearest.use * nearest.allowed)} where ${limit} allows ${mm(nearest.allowed)}`
        : `sag is ${Math.round(nearest.use * 100)} % of what ${limit} allows`,
      stuff.bending === undefined
        ? 'stress not checked'
        : `bending stress is ${Math.round((stress / stuff.bending) * 100)} % of the stress to stay under`,
    ].join('; ');
    return {
      sag: first * K,
      firstSag: first,
      sagBetween: between,
      sagAtEnd: bays.some((b) => b.over) ? end : undefined,
      allowed: nearest.allowed,
      stress,
      ok: !tooFar && !tooMuch,
      verdict,
      basis: stuff.basis,
    };
  },
  cautions: (given) => [
    ...bears,
    ...(given.grain === 'across'
      ? [
          note(
            'across the grain timber has a tenth or less of its stiffness, and splits: keep such overhangs short, or put a batten or a breadboard end under them, fixed so that the top can move',
          ),
        ]
      : []),
    note(
      'the top is taken as one board of full width that rests on its rails; a single load is spread over the whole width, so stand a heavy thing near the middle of the width',
    ),
  ],
  chart: (given) => {
    const { cases, K } = reckon(given, silentWork);
    const worst = cases
      .map((c) => ({ c, w: worstOf(c.solved) }))
      .reduce((a, b) => (Math.abs(b.w.sag.value) > Math.abs(a.w.sag.value) ? b : a));
    return beamChart(worst.c.solved, worst.w, K);
  },
  example: {
    length: '1950 mm',
    width: '640 mm',
    thickness: '40 mm',
    supports: ['200 mm', '1600 mm'],
    load: '1.5 kPa',
    edgeLoad: '800 N',
    grade: 'C16',
    long: 'heated room',
    longShare: '30 %',
  },
});

interface Bay {
  readonly from: number;
  readonly to: number;
  readonly length: number;
  /** Hangs over. */
  readonly over: boolean;
}

function baysOf(given: Given): Bay[] {
  const at = [...given.supports].sort((a, b) => a - b);
  const first = at[0] as number;
  const last = at[at.length - 1] as number;
  const bays = at
    .slice(1)
    .map((to, i): Bay => ({ from: at[i] as number, to, length: to - (at[i] as number), over: false }));
  if (first > 1e-9) bays.unshift({ from: 0, to: first, length: first, over: true });
  if (last < given.length - 1e-9)
    bays.push({ from: last, to: given.length, length: given.length - last, over: true });
  return bays;
}

const allowedIn = (given: Given, length: number, over: boolean): number =>
  given.limit.of === 'length' ? given.limit.most : ((over ? 2 : 1) * length) / given.limit.ratio;

function reckon(
  given: Given,
  work: Work,
): { cases: { solved: Solved }[]; stuff: Stuff; facts: SectionFacts; K: number } {
  const mmOf = (m: number): string => both(new Quantity('length', m));
  const at = [...given.supports].sort((a, b) => a - b);
  at.forEach((x, i) => {
    if (x > given.length * (1 + 1e-12))
      throw new Refusal({
        field: 'supports',
        says: `got a support at ${mmOf(x)}, takes places on the top, at most its length of ${mmOf(given.length)}`,
      });
    if (i > 0 && x - (at[i - 1] as number) < given.length * 1e-4)
      throw new Refusal({ field: 'supports', says: `got two supports at ${mmOf(x)}, takes them apart` });
  });
  const along = stuffOf(given, work);
  const stuff = given.grain === 'along' ? along : acrossOf(given, along, work);
  const facts = sectionFacts(
    { shape: 'solid', width: given.width, depth: given.thickness },
    stuff.E,
    stuff.G,
  );
  const q = work.apply(lineOf, { p: areaLoadOf(given, work), B: given.width });
  const whole = (w: number): Load => ({ kind: 'spread', from: 0, to: given.length, q1: w, q2: w });
  const always: Load[] = [];
  if (given.ownWeight) {
    if (stuff.density !== undefined)
      always.push(whole(work.apply(ownWeightOf, { rho: stuff.density, A: facts.area, g: g0 })));
    else work.caution(note('the density is not known, so the top’s own weight was left out; give density'));
  }
  const bays = baysOf(given);
  const over = (list: readonly Bay[]): Load[] =>
    list.map((b) => ({ kind: 'spread', from: b.from, to: b.to, q1: q, q2: q }));
  const ends = bays.filter((b) => b.over);
  const patterns: Load[][] = [
    [whole(q)],
    ...bays.map((b) => over([b])),
    ...(ends.length > 1 ? [over(ends)] : []),
  ];
  const spots =
    given.edgeLoad > 0
      ? bays.map((b) => (b.over ? (b.from === 0 ? 0 : given.length) : (b.from + b.to) / 2))
      : [undefined];
  const supports = at.map((position) => ({ position, lift: Infinity, turn: 0 }));
  const cases = patterns.flatMap((p) =>
    spots.map((spot) => ({
      solved: solveBeam({
        length: given.length,
        EI: facts.EI,
        GA: facts.GA,
        supports,
        loads: [
          ...always,
          ...p,
          ...(spot === undefined ? [] : [{ kind: 'point' as const, at: spot, force: given.edgeLoad }]),
        ],
      }),
    })),
  );
  if (given.long.source) work.source(given.long.source);
  if (given.limit.source) work.source(given.limit.source);
  return { cases, stuff, facts, K: work.apply(longFactor, { k: given.long.factor, s: given.longShare }) };
}

function areaLoadOf(given: Given, work: Work): number {
  if (given.load !== undefined) return given.load;
  if (given.use === undefined)
    throw new Refusal({
      field: 'load',
      says: `missing; takes a load by area such as "1.5 kPa", or use, one of ${shelfUses.map((u) => `"${u}"`).join(', ')}`,
    });
  const row = tableRows('furniture-loads').find((r) => r.text('use') === given.use);
  if (!row) throw new Error(`data/furniture-loads.csv has no ${given.use}`);
  work.say(`Load for ${given.use}: ${row.text('value')} lb/ft², ${row.text('says')}.`, row.citation);
  return (row.number('value') as number) * psf;
}

/** Greatest sag down inside a bay: a comb finds the hump, then parabolas through ever nearer points find its height. */
function sagIn(solved: Solved, bay: Bay): number {
  const teeth = 16;
  let [at, most] = [bay.from, 0];
  for (let i = 0; i <= teeth; i++) {
    const x = bay.from + (bay.length * i) / teeth;
    const sag = solved.at(x).sag;
    if (sag > most) [at, most] = [x, sag];
  }
  for (let step = bay.length / teeth; step > bay.length * 1e-5; step /= 8) {
    const [a, c] = [solved.at(Math.max(at - step, bay.from)).sag, solved.at(Math.min(at + step, bay.to)).sag];
    const bend = 2 * most - a - c;
    if (bend <= 0) break;
    const x = Math.min(Math.max(at + ((c - a) / (2 * bend)) * step, bay.from), bay.to);
    const sag = solved.at(x).sag;
    if (sag > most) [at, most] = [x, sag];
  }
  return most;
}

const mm = (m: number): string => `${(m * 1000).toFixed(m < 0.01 ? 2 : 1)} mm`;
