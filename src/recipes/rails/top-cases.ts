import { both, Quantity } from '../../units/quantity.js';
import { InputError } from '../../units/input-error.js';
import { note } from '../../engine/caution.js';
import { field, type Parsed } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import type { Trace } from '../../engine/trace.js';
import { tableRows, type DataRow } from '../../materials/data-tables.js';
import { acrossOf } from './cross-grain-properties.js';
import type { Load } from './beam-loads.js';
import { settled, solveBeam, type Solved } from './beam-solver.js';
import { g0, longFactor, ownWeightOf } from './loads-and-creep.js';
import { creepField, sagLimitField } from './sag-limit.js';
import { sectionFacts, type SectionFacts } from './section-properties.js';
import { materialFields } from './material-fields.js';
import { materialOf, type Material } from './design-values.js';

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
  length: field.length({ label: 'length of the top in the direction it spans', above: '0 mm', max: '20 m' }),
  width: field.length({
    symbol: 'B',
    label: 'width of the top, across the span',
    above: '0 mm',
    max: '10 m',
  }),
  thickness: field.length({ label: 'thickness of the top', above: '0 mm', max: '500 mm' }),
  supports: field.list(field.length({ label: 'from the left end', min: '0 mm', max: '20 m' }), {
    label: 'where rails bear it, from the left end',
    least: 2,
    most: 40,
  }),
  load: field.areaLoad({
    symbol: 'p',
    label: 'load by area, where it does most harm',
    min: '0 kPa',
    max: '1000 kPa',
    optional: true,
  }),
  use: field.choice(shelfUses, { label: 'a published load instead', optional: true }),
  edgeLoad: field.force({
    label: 'one load beside, put where it does most harm: an end that hangs over, or the middle of a bay',
    min: '0 N',
    max: '100 kN',
    default: '0 N',
  }),
  grain: field.choice(['along', 'across'], {
    label: 'whether the grain runs along the span or across it',
    default: 'along',
  }),
  limit: sagLimitField({
    label: 'how far it may sag between supports; an end that hangs over counts double its length',
    default: 'L/300',
  }),
  long: creepField({ label: 'how much more it sags in the long run', default: 'no creep' }),
  longShare: field.share({
    label: 'share of the load that stays on for months',
    min: '0 %',
    max: '100 %',
    default: '100 %',
  }),
  ownWeight: field.flag({ label: 'whether the top carries its own weight beside the load', default: true }),
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

/** Solves the top under each pattern of loads. @throws InputError */
export function topCases(
  given: TopGiven,
  trace: Trace,
): { cases: Solved[]; material: Material; facts: SectionFacts; K: number } {
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
  const along = materialOf(given, trace);
  const material = given.grain === 'along' ? along : acrossOf(given, along, trace);
  const facts = sectionFacts(
    { shape: 'solid', width: given.width, depth: given.thickness },
    material.E,
    material.G,
  );
  const q = trace.evaluate(lineOf, { p: areaLoadOf(given, trace), B: given.width });
  const whole = (w: number): Load => ({ kind: 'spread', from: 0, to: given.length, q1: w, q2: w });
  const always: Load[] = [];
  if (given.ownWeight) {
    if (material.density !== undefined)
      always.push(whole(trace.evaluate(ownWeightOf, { rho: material.density, A: facts.area, g: g0 })));
    else trace.warn(note('the density is not known, so the top’s own weight was left out; give density'));
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
  const spotOf = (b: Bay): number => (!b.over ? (b.from + b.to) / 2 : b.from === 0 ? 0 : given.length);
  const spots: Load[][] =
    given.edgeLoad > 0 ? bays.map((b) => [{ kind: 'point', at: spotOf(b), force: given.edgeLoad }]) : [[]];
  const supports = at.map((position) => ({ position, lift: Infinity, turn: 0 }));
  const cases = patterns.flatMap((p) =>
    spots.map((spot) =>
      solveBeam({
        length: given.length,
        EI: facts.EI,
        GA: facts.GA,
        supports,
        loads: [...always, ...p, ...spot],
      }),
    ),
  );
  if (given.long.source) trace.source(given.long.source);
  if (given.limit.source) trace.source(given.limit.source);
  return {
    cases,
    material,
    facts,
    K: trace.evaluate(longFactor, { k: given.long.factor, s: given.longShare }),
  };
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
