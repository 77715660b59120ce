// The widest lay-up of a small pile, proved: an integer programme over which stick gives which place of which row, with the
// lengths of the pieces and the stagger of their joints. For few sticks and rows only; sticks are not ripped.
import type { Highs } from 'highs';
import { ExactModel } from './exact-model.js';
import { staggered, type Row, type RowRules, type Stick } from './lay-up-problem.js';
import { rowOf } from './stick-pool.js';

/** Beyond these the programme grows too large to be solved in seconds. */
export const smallPile = { sticks: 18, rows: 4, joints: 4 } as const;

/** Columns of one place in one row: whether it is used, and what each stick gives. */
interface Place {
  readonly used: number;
  readonly from: readonly { readonly chosen: number; readonly length: number }[];
}
interface Written {
  readonly model: ExactModel;
  readonly rows: readonly { readonly used: number; readonly places: readonly Place[] }[];
}

const mm = (um: number): number => um / 1000;

type Terms = readonly [number, number][];
const lengthsOf = (place: Place): [number, number][] => place.from.map((f) => [f.length, 1]);

/** What the rows of the programme share. */
interface Sizes {
  readonly model: ExactModel;
  readonly sticks: readonly Stick[];
  readonly rules: RowRules;
  /** Width that each stick gives, and the greatest, mm. */
  readonly across: readonly number[];
  readonly widest: number;
  /** Length of a row, mm. */
  readonly length: number;
}

/** Columns for each row and each of its places, and what one row by itself must keep to. */
function writeRows(
  model: ExactModel,
  sticks: readonly Stick[],
  rules: RowRules,
  count: number,
): Written['rows'] {
  const across = sticks.map((s) => mm(Math.min(s.across, rules.mostAcross)));
  const widest = Math.max(...across);
  const sizes = { model, sticks, rules, across, widest, length: mm(rules.rowLength) };
  return Array.from({ length: count }, () => writeRow(sizes));
}

function writeRow(sizes: Sizes): Written['rows'][0] {
  const { model, rules, widest } = sizes;
  const atLeast = (terms: Terms): void => model.row(0, [...terms], Infinity);
  const equal = (terms: Terms): void => model.row(0, [...terms], 0);
  const used = model.choice(mm(rules.jointing));
  const width = model.column(0, widest, -1);
  atLeast([[width, 1], [used, -mm(rules.leastAcross)]]); // prettier-ignore
  model.row(-Infinity, [[width, 1], [used, -widest]], 0); // prettier-ignore
  const places = Array.from({ length: rules.maxJoints + 1 }, () => newPlace(sizes));
  places.forEach((place, k) => {
    writePlace(sizes, place, width);
    const next = places[k + 1];
    const least = mm(k === 0 ? rules.leastEnd : rules.leastInner);
    atLeast([...lengthsOf(place), [place.used, -least]]);
    // The last piece that is used is an end of the row.
    atLeast([
      ...lengthsOf(place),
      [place.used, -mm(rules.leastEnd)],
      ...(next ? [[next.used, mm(rules.leastEnd)] as [number, number]] : []),
    ]);
    if (next) model.row(-Infinity, [[next.used, 1], [place.used, -1]], 0); // prettier-ignore
  });
  equal([[(places[0] as Place).used, 1], [used, -1]]); // prettier-ignore
  equal([...places.flatMap(lengthsOf), [used, -sizes.length]]);
  return { used, places };
}

function newPlace({ model, sticks, length }: Sizes): Place {
  const from = sticks.map((s) => ({
    chosen: model.choice(),
    length: model.column(0, Math.min(mm(s.length), length)),
  }));
  return { used: model.choice(), from };
}

/** One stick gives a place that is used, at most its length, and the row is as wide as its stick at most. */
function writePlace({ model, sticks, across, widest, length }: Sizes, place: Place, width: number): void {
  model.row(0, [...place.from.map((f): [number, number] => [f.chosen, 1]), [place.used, -1]], 0);
  place.from.forEach((f, i) => {
    const most = Math.min(mm((sticks[i] as Stick).length), length);
    model.row(-Infinity, [[f.length, 1], [f.chosen, -most]], 0); // prettier-ignore
  });
  const wide = place.from.map((f, i): [number, number] => [f.chosen, -(across[i] as number)]);
  model.row(-Infinity, [[width, 1], ...wide, [place.used, widest]], widest);
}

/** Joints of neighbouring rows lie apart: one of two is further right. */
function writeStagger(model: ExactModel, rows: Written['rows'], rules: RowRules): void {
  const far = mm(rules.rowLength + rules.stagger);
  const joint = (places: readonly Place[], k: number, sign: number): [number, number][] =>
    places.slice(0, k + 1).flatMap((p) => p.from.map((f): [number, number] => [f.length, sign]));
  for (let r = 1; r < rows.length; r++) {
    const [a, b] = [(rows[r - 1] as Written['rows'][0]).places, (rows[r] as Written['rows'][0]).places];
    for (let k = 0; k < rules.maxJoints; k++)
      for (let m = 0; m < rules.maxJoints; m++) {
        const right = model.choice();
        const both: [number, number][] = [
          [(a[k + 1] as Place).used, -far],
          [(b[m + 1] as Place).used, -far],
        ];
        model.row(
          mm(rules.stagger) - 3 * far,
          [...joint(a, k, 1), ...joint(b, m, -1), [right, -far], ...both],
          Infinity,
        );
        model.row(
          mm(rules.stagger) - 2 * far,
          [...joint(a, k, -1), ...joint(b, m, 1), [right, far], ...both],
          Infinity,
        );
      }
  }
}

/** Of sticks alike, an earlier one gives no less than a later one: exchanging them changes nothing. */
function writeLikeSticks(model: ExactModel, rows: Written['rows'], sticks: readonly Stick[]): void {
  const given = (i: number, sign: number): [number, number][] =>
    rows.flatMap((row) =>
      row.places.map((p): [number, number] => [(p.from[i] as Place['from'][0]).length, sign]),
    );
  for (let i = 1; i < sticks.length; i++) {
    const [a, b] = [sticks[i - 1] as Stick, sticks[i] as Stick];
    if (a.length === b.length && a.across === b.across)
      model.row(0, [...given(i - 1, 1), ...given(i, -1)], Infinity);
  }
}

/** The whole programme: the width must exceed `below`. */
function write(sticks: readonly Stick[], rules: RowRules, count: number, below: number): Written {
  const model = new ExactModel();
  const rows = writeRows(model, sticks, rules, count);
  rows.forEach((row, r) => {
    const next = rows[r + 1];
    if (next)
      model.row(
        -Infinity,
        [
          [next.used, 1],
          [row.used, -1],
        ],
        0,
      );
  });
  sticks.forEach((s, i) => {
    const taken = rows.flatMap((row) =>
      row.places.flatMap((p): [number, number][] => {
        const f = p.from[i] as Place['from'][0];
        return [
          [f.length, 1],
          [f.chosen, mm(rules.kerf)],
        ];
      }),
    );
    model.row(-Infinity, taken, mm(s.length + rules.kerf));
  });
  writeLikeSticks(model, rows, sticks);
  if (rules.stagger > 0) writeStagger(model, rows, rules);
  model.atMost(-mm(below));
  return { model, rows };
}

/** The rows of a solution, their lengths in whole micrometres; undefined where rounding breaks a rule. */
function readRows(
  written: Written,
  values: Float64Array,
  sticks: readonly Stick[],
  rules: RowRules,
): Row[] | undefined {
  const rest = sticks.map((s) => s.length + rules.kerf);
  const rows: Row[] = [];
  for (const row of written.rows) {
    if ((values[row.used] as number) < 0.5) continue;
    const pieces = row.places.flatMap((p) =>
      p.from.flatMap((f, stick) =>
        (values[f.chosen] as number) < 0.5
          ? []
          : [{ stick, length: Math.round((values[f.length] as number) * 1000) }],
      ),
    );
    if (pieces.reduce((s, p) => s + p.length, 0) !== rules.rowLength) return undefined;
    for (const p of pieces) rest[p.stick] = (rest[p.stick] as number) - p.length - rules.kerf;
    const ends = [pieces[0], pieces.at(-1)];
    if (pieces.some((p) => p.length < rules.leastInner) || ends.some((p) => p && p.length < rules.leastEnd))
      return undefined;
    const across = Math.min(rules.mostAcross, ...pieces.map((p) => (sticks[p.stick] as Stick).across));
    rows.push(rowOf(pieces, across));
  }
  const apart = rows.every(
    (row, r) => r === 0 || staggered((rows[r - 1] as Row).joints, row.joints, rules.stagger),
  );
  return apart && rest.every((l) => l >= 0) ? rows : undefined;
}

export type ExactAnswer =
  { readonly state: 'better'; readonly rows: readonly Row[] } | { readonly state: 'none' | 'open' };

/**
 * The widest lay-up, if it is wider than `below` (the sum of its rows once jointed, micrometres). 'none' proves that
 * there is no wider one; 'open' says nothing.
 */
export function exactLayUp(
  highs: Highs,
  sticks: readonly Stick[],
  rules: RowRules,
  rows: number,
  below: number,
  seconds: number,
): ExactAnswer {
  const written = write(sticks, rules, rows, below);
  const got = written.model.solve(highs, seconds, 200_000);
  if (got.state !== 'best') return got;
  const found = readRows(written, got.values, sticks, rules);
  return found ? { state: 'better', rows: found } : { state: 'open' };
}
