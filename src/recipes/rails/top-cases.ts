import { both, Quantity } from '../../units/quantity.js';
import { InputError } from '../../units/input-error.js';
import { note } from '../../engine/caution.js';
import { field, type Parsed } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import type { Trace } from '../../engine/trace.js';
import { tableRows, type DataRow } from '../../materials/data-tables.js';
import { acrossOf } from './cross-grain-properties.js';
import { longTermFactor } from '../../materials/working-stress/use-category.js';
import { scaleLoad, type Load } from './beam-loads.js';
import { settled, solveBeam, type Solved } from './beam-solver.js';
import { situationFields, situationOf } from './load-situation.js';
import { sagLimitField } from './sag-limit.js';
import { sectionFacts, type SectionFacts } from './section-properties.js';
import { materialFields } from './material-fields.js';
import { chosenOf, densityOf, materialOf, ownWeightPerLength, type Material } from './design-values.js';

export const lineOf = formula({
  symbol: 'q',
  result: variable('lineLoad', 'load by length on the whole width', { unit: 'N/mm' }),
  expression: 'p B',
  variables: {
    p: variable('areaLoad', 'load by area', { unit: 'MPa' }),
    B: variable('length', 'width of the top', { unit: 'mm' }),
  },
  basis: 'definition',
});

/** The area loads of data/furniture-loads.csv; a test keeps the two alike. */
export const shelfUses = ['books', 'general shelf', 'cabinet shelf', 'dwelling floor'] as const;
const psf = 47.88025898033584;

export const topInputs = {
  length: field.length({
    label: 'span length',
    help: 'Length of the top in the direction it spans.',
    above: '0 mm',
    max: '20 m',
  }),
  width: field.length({
    symbol: 'B',
    label: 'width',
    help: 'Width of the top across the span.',
    above: '0 mm',
    max: '10 m',
  }),
  thickness: field.length({ label: 'thickness of the top', above: '0 mm', max: '500 mm' }),
  supports: field.list(field.length({ label: 'from the left end', min: '0 mm', max: '20 m' }), {
    label: 'supports',
    help: 'Where rails carry it, from the left end.',
    least: 2,
    most: 40,
  }),
  load: field.areaLoad({
    symbol: 'p',
    label: 'load',
    help: 'By area, where it does most harm.',
    min: '0 kPa',
    max: '1000 kPa',
    optional: true,
  }),
  use: field.choice(shelfUses, { label: 'a published load instead', optional: true }),
  edgeLoad: field.force({
    label: 'point load',
    help: 'One load beside, put where it does most harm: an overhanging end, or the middle of a bay.',
    min: '0 N',
    max: '100 kN',
    default: '0 N',
  }),
  grain: field.choice(['along', 'across'], {
    label: 'grain',
    help: 'Whether the grain runs along the span or across it.',
    default: 'along',
  }),
  limit: sagLimitField({
    label: 'sag limit',
    help: 'How far it may sag between supports; an overhanging end counts double its length.',
    default: 'L/300',
  }),
  ownWeight: field.flag({
    label: 'own weight',
    help: 'Whether the top carries its own weight beside the load.',
    default: true,
  }),
  ...situationFields,
  ...materialFields,
} as const;
export type TopGiven = Parsed<typeof topInputs>;

export interface Bay {
  readonly from: number;
  readonly to: number;
  readonly length: number;
  /** Hangs over. */
  readonly over: boolean;
}

const supportsOf = (given: TopGiven): number[] =>
  given.supports.map((x) => settled(x, given.length)).sort((a, b) => a - b);

/** The stretches between supports and past the last of them, from the left. */
export function baysOf(given: TopGiven): Bay[] {
  const at = supportsOf(given);
  const stops = [...new Set([0, ...at, given.length])];
  return stops.slice(1).map((to, i): Bay => {
    const from = stops[i] as number;
    return { from, to, length: to - from, over: !at.includes(from) || !at.includes(to) };
  });
}

/** One pattern of loads, solved as it comes on and in the long run. */
export interface TopCase {
  readonly first: Solved;
  readonly lasting: Solved;
}

/** A use of a published area load as a category of use. */
const categoryOf = {
  books: 'shelf',
  'general shelf': 'shelf',
  'cabinet shelf': 'shelf',
  'dwelling floor': 'home',
} as const;

/** Supports on the top and apart from one another, from the left. @throws InputError */
function checkedSupports(given: TopGiven): number[] {
  const mmOf = (m: number): string => both(new Quantity('length', m));
  const at = supportsOf(given);
  for (const x of at)
    if (x > given.length)
      throw new InputError({
        field: 'supports',
        message: `got a support at ${mmOf(x)}, takes places on the top, at most its length of ${mmOf(given.length)}`,
      });
  at.slice(1).forEach((x, i) => {
    if (x - (at[i] as number) < given.length * 1e-4)
      throw new InputError({
        field: 'supports',
        message: `got two supports at ${mmOf(x)}, takes them apart`,
      });
  });
  return at;
}

/** Solves the top under each pattern of loads. @throws InputError */
export function topCases(
  given: TopGiven,
  trace: Trace,
): { cases: TopCase[]; material: Material; facts: SectionFacts } {
  const at = checkedSupports(given);
  const section = { shape: 'solid', width: given.width, depth: given.thickness } as const;
  const category = given.category ?? (given.use === undefined ? undefined : categoryOf[given.use]);
  const situation = situationOf({ ...given, category }, chosenOf(given), trace);
  const own = ownWeightOfTop(given, trace);
  const q = trace.evaluate(lineOf, { p: areaLoadOf(given, trace), B: given.width });
  const imposed = q * given.length + given.edgeLoad;
  const mix = imposed + own > 0 ? { permanent: own * given.length, imposed } : { permanent: 0, imposed: 1 };
  const along = materialOf(given, trace, { section, mix, situation });
  const material = given.grain === 'along' ? along : acrossOf(given, along, trace);
  const facts = sectionFacts(section, material.E, material.G);
  const supports = at.map((position) => ({ position, lift: Infinity, turn: 0 }));
  const k = situation.creep;
  const stays = trace.evaluate(
    longTermFactor,
    { G: 0, Q: 1, k, s: situation.stays },
    `sag of the loads in the long run over the first${own > 0 ? `; own weight stays whole, ${k} times` : ''}`,
  );
  const solve = (loads: readonly Load[], onOwn: number, onImposed: number): Solved =>
    solveBeam({
      length: given.length,
      EI: facts.EI,
      GA: facts.GA,
      supports,
      loads: [
        ...(own > 0 ? [evenLoad(given, own * onOwn)] : []),
        ...loads.map((l) => scaleLoad(l, onImposed)),
      ],
    });
  const cases = patternsOf(given, q).map((loads) => ({
    first: solve(loads, 1, 1),
    lasting: solve(loads, k, stays),
  }));
  if (given.limit.source) trace.source(given.limit.source);
  return { cases, material, facts };
}

const evenLoad = (given: TopGiven, w: number): Load => ({
  kind: 'spread',
  from: 0,
  to: given.length,
  q1: w,
  q2: w,
});

/** Own weight of the top by length, N/m; left out, with a word, where no density is known. */
function ownWeightOfTop(given: TopGiven, trace: Trace): number {
  if (!given.ownWeight) return 0;
  if (densityOf(given) === undefined) {
    trace.warn(note('the density is not known, so the top’s own weight was left out; give density'));
    return 0;
  }
  return ownWeightPerLength(given, given.width * given.thickness, trace);
}

/** The load over all, over each bay alone and over the ends alone, each with the single load at every place. */
function patternsOf(given: TopGiven, q: number): Load[][] {
  const bays = baysOf(given);
  const over = (list: readonly Bay[]): Load[] =>
    list.map((b) => ({ kind: 'spread', from: b.from, to: b.to, q1: q, q2: q }));
  const ends = bays.filter((b) => b.over);
  const patterns: Load[][] = [
    [evenLoad(given, q)],
    ...bays.map((b) => over([b])),
    ...(ends.length > 1 ? [over(ends)] : []),
  ];
  const spotOf = (b: Bay): number => (!b.over ? (b.from + b.to) / 2 : b.from === 0 ? 0 : given.length);
  const spots: Load[][] =
    given.edgeLoad > 0 ? bays.map((b) => [{ kind: 'point', at: spotOf(b), force: given.edgeLoad }]) : [[]];
  return patterns.flatMap((p) => spots.map((spot) => [...p, ...spot]));
}

function areaLoadOf(given: TopGiven, trace: Trace): number {
  if (given.load !== undefined) return given.load;
  if (given.use === undefined)
    throw new InputError({
      field: 'load',
      message: `missing; takes a load by area such as "1.5 kPa", or use, one of ${shelfUses.map((u) => `"${u}"`).join(', ')}`,
    });
  // Every use of the choice has its row; a test keeps the two alike.
  const [row] = tableRows('furniture-loads').filter((r) => r.text('use') === given.use) as [DataRow];
  trace.note(`Load for ${given.use}: ${row.text('value')} lb/ft², ${row.text('says')}.`, row.citation);
  return (row.number('value') as number) * psf;
}
