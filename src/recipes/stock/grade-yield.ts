import { barChart } from '../../charts/barChart.js';
import { Refusal } from '../../quantities/refusal.js';
import { note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { cite } from '../../recipe/source.js';
import { tableRows, type DataRow } from '../../timber/tables.js';

const grades = [
  'FAS',
  'F1F',
  'Selects',
  'No.1 Common',
  'No.2A Common',
  'No.2B Common',
  'No.3A Common',
  'No.3B Common',
] as const;
const rows = (): readonly DataRow[] => tableRows('hardwood-grades.nhla-summary');
const rowOf = (grade: string): DataRow => rows().find((r) => r.text('grade') === grade) as DataRow;

const surface = formula({
  symbol: 'S',
  gives: letter('count', 'surface measure before rounding'),
  text: 'w l / 12',
  where: {
    w: letter('length', 'width', { in: 'in', bare: true }),
    l: letter('length', 'length', { in: 'ft', bare: true }),
  },
  source: cite('ncwoodworker-grading', 'surface measure'),
});

const clear = formula({
  symbol: 'u',
  gives: letter('count', 'cutting units the grade asks for'),
  text: 'k S',
  where: {
    k: letter('count', 'cutting units for each foot of surface measure'),
    S: letter('count', 'surface measure'),
  },
  source: cite('nhla-summary', 'units by grade'),
});

// A cutting unit is a strip 1 in wide and 1 ft long.
const clearArea = formula({
  symbol: 'A',
  gives: letter('area', 'clear area', { in: 'in2', bare: true }),
  text: '12 u',
  where: { u: letter('count', 'cutting units') },
  source: cite('nhla-2007', 'item 37'),
});

const cuts = formula({
  symbol: 'c',
  gives: letter('count', 'cuttings allowed, before the fraction is dropped'),
  text: '(S + a) / d',
  where: {
    S: letter('count', 'surface measure'),
    a: letter('count', 'added'),
    d: letter('count', 'divisor'),
  },
  source: cite('nhla-summary', 'number of cuts'),
});

/**
 * How much clear wood a hardwood grade promises in a board, in cutting units and as an area, and in how many pieces it
 * may lie. For rough hardwood graded by the rules for cutting units; not for softwood, nor for wood graded by strength.
 */
export const gradeYield = recipe({
  name: 'gradeYield',
  title: 'Clear wood in a graded hardwood board',
  topic: 'stock',
  about:
    'How much clear wood a hardwood grade promises in a board, as cutting units and as an area, and in how many pieces at most. Not for softwood or strength grades.',
  sources: [cite('nhla-summary', 'summary chart'), cite('nhla-2007', 'item 37')],
  inputs: {
    grade: field.choice(grades, { says: 'grade of the board' }),
    surfaceMeasure: field.count({
      says: 'surface measure, whole square feet of face',
      min: 1,
      max: 200,
      optional: true,
    }),
    width: field.length({
      says: 'width, if the surface measure is not known',
      above: '0 mm',
      max: '2 m',
      optional: true,
    }),
    length: field.length({
      says: 'length, if the surface measure is not known',
      above: '0 mm',
      max: '20 m',
      optional: true,
    }),
  },
  outputs: {
    clearUnits: out.count({ says: 'cutting units of clear wood that the grade asks for' }),
    area: out.area({ says: 'their area' }),
    yield: out.share({ says: 'clear share of the face' }),
    surfaceMeasure: out.count({ says: 'surface measure' }),
    totalUnits: out.count({ says: 'cutting units in the whole face' }),
    cuttings: out.count({ says: 'pieces at most in which the clear wood may lie', optional: true }),
    unitsWithExtraCut: out.count({
      says: 'cutting units asked for if one more piece is taken',
      optional: true,
    }),
    leastCutting: out.text({ says: 'least size of a piece' }),
    leastBoard: out.text({ says: 'least board of the grade' }),
    face: out.text({ says: 'face that decides' }),
  },
  formulas: [surface, clear, clearArea, cuts],
  solve: (given, work) => {
    const row = rowOf(given.grade);
    work.source(row.citation);
    const S = measure(given, work);
    const k = row.number('units_per_sm') as number;
    const u = work.apply(clear, { k, S });
    const area = work.apply(clearArea, { u });
    const d = row.number('cuts_divisor');
    const pieces =
      d === undefined
        ? undefined
        : Math.min(
            row.number('cuts_most') as number,
            Math.floor(work.apply(cuts, { S, a: row.number('cuts_add') as number, d }) + 1e-9),
          );
    if (pieces !== undefined)
      work.say(
        `A fraction of a cutting is dropped, and no more than ${row.number('cuts_most')} are allowed.`,
      );
    // Where the chart prints no range there is no further cutting: nothing compares with what is no number.
    const [from = NaN, to = NaN, extra = NaN] = ['extra_from_sm', 'extra_to_sm', 'extra_units_per_sm'].map(
      (c) => row.number(c),
    );
    const more = S >= from && S <= to ? extra * S : undefined;
    const size = (w: string, l: string): string => `${row.number(w)} in x ${row.number(l)} ft`;
    return {
      clearUnits: u,
      area,
      yield: k / 12,
      surfaceMeasure: S,
      totalUnits: 12 * S,
      ...(pieces === undefined ? {} : { cuttings: Math.max(1, pieces) }),
      ...(more === undefined ? {} : { unitsWithExtraCut: more }),
      leastCutting:
        size('cutting_a_width_in', 'cutting_a_length_ft') +
        (row.number('cutting_b_width_in') === undefined
          ? ''
          : ` or ${size('cutting_b_width_in', 'cutting_b_length_ft')}`),
      leastBoard: size('board_width_in', 'board_length_ft'),
      face: row.text('face'),
    };
  },
  limits: [
    {
      when: (given) => {
        const row = rowOf(given.grade);
        const least = {
          width: row.number('board_width_in') as number,
          length: row.number('board_length_ft') as number,
        };
        return (
          (given.width ?? Infinity) < least.width * 0.0254 - 1e-9 ||
          (given.length ?? Infinity) < least.length * 0.3048 - 1e-9
        );
      },
      says: 'the board is smaller than the least size of its grade',
      source: cite('nhla-summary', 'least board'),
    },
  ],
  cautions: [
    note(
      'a grade is a promise about the worst board allowed: many hold more clear wood; the pieces you need may not fall where the clear wood lies',
    ),
  ],
  chart: (given, answer) =>
    barChart({
      title: `Clear wood in a board of ${answer.surfaceMeasure} ft² surface measure, by grade`,
      of: '',
      value: { title: 'Cutting units', zero: true },
      bars: grades.map((g) => {
        const u = clear.of({ k: rowOf(g).number('units_per_sm') as number, S: answer.surfaceMeasure });
        return { name: g, value: u, label: `${u}`, chosen: g === given.grade };
      }),
    }),
  example: { grade: 'No.1 Common', width: '7 in', length: '8 ft' },
});

/** Surface measure, given or from the size: rounded to the whole foot, as the tally has it. */
function measure(
  given: { surfaceMeasure?: number | undefined; width?: number | undefined; length?: number | undefined },
  work: { apply: (f: typeof surface, a: { w: number; l: number }) => number; say: (t: string) => void },
): number {
  if (given.surfaceMeasure !== undefined) {
    if (given.width !== undefined || given.length !== undefined)
      throw new Refusal({
        field: 'surfaceMeasure',
        says: 'got a surface measure and a size, takes one or the other',
      });
    return given.surfaceMeasure;
  }
  if (given.width === undefined || given.length === undefined)
    throw new Refusal({
      field: 'surfaceMeasure',
      says: 'missing; takes a whole number of square feet such as 8, or both width and length',
    });
  const exact = work.apply(surface, { w: given.width, l: given.length });
  const S = Math.round(exact + 1e-9);
  if (S < 1)
    throw new Refusal({
      field: 'width',
      says: `gives a surface measure of ${exact.toFixed(2)} ft², takes a board of at least half a square foot`,
    });
  work.say(`Rounded to the nearest whole foot: ${S}.`);
  return S;
}
