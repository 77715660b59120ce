import { barChart } from '../../charts/bar-chart.js';
import { InputError } from '../../units/input-error.js';
import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { surfaceMeasure, tallyLength } from './tally-rules.js';
import { tableRows, type DataRow } from '../../materials/data-tables.js';

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
  result: variable('count', 'surface measure before rounding'),
  expression: 'w l / 12',
  empirical: true,
  variables: {
    w: variable('length', 'width', { unit: 'in' }),
    l: variable('length', 'length in whole feet', { unit: 'ft' }),
  },
  source: cite('ncwoodworker-grading', 'surface measure'),
});

const clear = formula({
  symbol: 'u',
  result: variable('count', 'cutting units the grade asks for'),
  expression: 'k S',
  variables: {
    k: variable('count', 'cutting units for each foot of surface measure'),
    S: variable('count', 'surface measure'),
  },
  source: cite('nhla-summary', 'units by grade'),
});

// A cutting unit is a strip 1 in wide and 1 ft long.
const clearArea = formula({
  symbol: 'A',
  result: variable('area', 'clear area', { unit: 'in2' }),
  expression: '12 u',
  empirical: true,
  variables: { u: variable('count', 'cutting units') },
  source: cite('nhla-2007', 'item 37'),
});

const cuts = formula({
  symbol: 'c',
  result: variable('count', 'cuttings allowed, before the fraction is dropped'),
  expression: '(S + a) / d',
  variables: {
    S: variable('count', 'surface measure'),
    a: variable('count', 'added'),
    d: variable('count', 'divisor'),
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
    grade: field.choice(grades, { label: 'grade of the board' }),
    surfaceMeasure: field.count({
      label: 'surface measure',
      help: 'Whole square feet of face.',
      min: 1,
      max: 200,
      optional: true,
    }),
    width: field.length({
      label: 'width',
      help: 'Needed where the surface measure is not given.',
      above: '0 mm',
      max: '2 m',
      optional: true,
    }),
    length: field.length({
      label: 'length',
      help: 'Needed where the surface measure is not given.',
      above: '0 mm',
      max: '20 m',
      optional: true,
    }),
  },
  outputs: {
    clearUnits: out.count({
      label: 'clear units needed',
      help: 'Cutting units of clear wood that the grade requires.',
    }),
    area: out.area({ label: 'their area' }),
    yield: out.share({ label: 'clear share', help: 'Clear wood as a share of the face.' }),
    surfaceMeasure: out.count({ label: 'surface measure' }),
    totalUnits: out.count({ label: 'units in face', help: 'Cutting units in the whole face.' }),
    cuttings: out.count({
      label: 'most cuttings',
      help: 'Most pieces that the clear wood may lie in.',
      optional: true,
    }),
    unitsWithExtraCut: out.count({
      label: 'units, extra cutting',
      help: 'Cutting units required if one more piece is taken.',
      optional: true,
    }),
    leastCutting: out.text({ label: 'least cutting', help: 'Least size of a clear piece.' }),
    leastBoard: out.text({ label: 'least board', help: 'Least board of the grade.' }),
    face: out.text({ label: 'face that decides' }),
  },
  formulas: [surface, clear, clearArea, cuts],
  solve: (given, trace) => {
    const row = rowOf(given.grade);
    trace.source(row.citation);
    const S = measure(given, trace);
    const k = row.number('units_per_sm') as number;
    const u = trace.evaluate(clear, { k, S });
    const area = trace.evaluate(clearArea, { u });
    const d = row.number('cuts_divisor');
    const pieces =
      d === undefined
        ? undefined
        : Math.min(
            row.number('cuts_most') as number,
            Math.floor(trace.evaluate(cuts, { S, a: row.number('cuts_add') as number, d }) + 1e-9),
          );
    if (pieces !== undefined)
      trace.note(
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
      message: 'the board is smaller than the least size of its grade',
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
        const u = clear.evaluate({ k: rowOf(g).number('units_per_sm') as number, S: answer.surfaceMeasure });
        return { name: g, value: u, label: `${u}`, chosen: g === given.grade };
      }),
    }),
  sentence: (_given, out) =>
    `At least {yield} of the board is clear, in {cuttings} ${out.cuttings === 1 ? 'piece' : 'pieces'} at most.`,
  example: { grade: 'No.1 Common', width: '7 in', length: '8 ft' },
});

/** Surface measure, given or from the size: rounded to the whole foot, as the tally has it. */
function measure(
  given: { surfaceMeasure?: number | undefined; width?: number | undefined; length?: number | undefined },
  trace: { evaluate: (f: typeof surface, a: { w: number; l: number }) => number; note: (t: string) => void },
): number {
  if (given.surfaceMeasure !== undefined) {
    if (given.width !== undefined || given.length !== undefined)
      throw new InputError({
        field: 'surfaceMeasure',
        message: 'got a surface measure and a size, takes one or the other',
      });
    return given.surfaceMeasure;
  }
  if (given.width === undefined || given.length === undefined)
    throw new InputError({
      field: 'surfaceMeasure',
      message: 'missing; takes a whole number of square feet such as 8, or both width and length',
    });
  const [w, l] = [given.width / 0.0254, given.length / 0.3048];
  const exact = trace.evaluate(surface, { w: given.width, l: tallyLength(l) * 0.3048 });
  const S = surfaceMeasure({ width: w, length: l }, { up: true });
  if (S < 1)
    throw new InputError({
      field: 'width',
      message: `gives a surface measure of ${exact.toFixed(2)} ft², takes a board of at least half a square foot`,
    });
  trace.note(
    `A part of a foot of length is dropped, and the measure rounded to the nearest whole foot: ${S}.`,
  );
  return S;
}
