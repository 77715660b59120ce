import { barChart } from '../../charts/bar-chart.js';
import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { tableField } from '../../engine/table-field.js';
import { InputError } from '../../units/input-error.js';
import {
  hardwoodFeet,
  quarters,
  softwoodFeet,
  surfaceMeasure,
  tallyLength,
  type HalfTurn,
} from './tally-rules.js';

const inch = 0.0254;
const foot = 0.3048;
/** A board foot is 144 cubic inches. */
const boardFoot = 144 * inch ** 3;
/** Rows that a chart still shows legibly. */
const shown = 20;

const bySize = formula({
  symbol: 'V',
  result: variable('volume', 'volume by the sizes as they are', { unit: 'm3' }),
  expression: 'n w l t',
  variables: {
    n: variable('count', 'boards alike'),
    w: variable('length', 'width', { unit: 'm' }),
    l: variable('length', 'length', { unit: 'm' }),
    t: variable('length', 'thickness', { unit: 'm' }),
  },
  basis: 'geometry',
});

/** What a tally makes of the boards against their exact sizes. */
const againstSizes = (difference: number): string => {
  const percent = Math.abs(Math.round(difference * 100));
  return percent === 0
    ? 'what their sizes hold'
    : `${percent} % ${difference < 0 ? 'less' : 'more'} than their sizes hold`;
};

/**
 * Board feet of a stack of boards as a yard tallies them: hardwood by surface measure, each board rounded and exact
 * halves alternately up and down; softwood by nominal size without rounding. Sizes in, board feet out.
 * @throws InputError where a hardwood board is shorter than a foot
 */
export const boardTally = recipe({
  name: 'boardTally',
  title: 'Tally of a stack of boards',
  topic: 'stock',
  about:
    'Board feet of many boards as a yard counts them, by the hardwood rule of surface measure or the softwood rule of nominal sizes, beside what their sizes hold.',
  sources: [
    cite('ahec-measurement', 'surface measure and board feet'),
    cite('wengert-rounding', 'halves up and down alternately'),
  ],
  inputs: {
    boards: tableField(
      {
        width: field.length({ label: 'width', above: '0 mm', max: '2 m' }),
        length: field.length({ label: 'length', above: '0 mm', max: '20 m' }),
        thickness: field.length({ label: 'thickness: nominal for softwood', above: '0 mm', max: '500 mm' }),
        count: field.count({ label: 'boards alike', min: 1, max: 1000, default: 1 }),
      },
      { label: 'boards', help: 'In the order in which they are tallied.', most: 1000 },
    ),
    rule: field.choice(['hardwood', 'softwood'], {
      label: 'tally rule',
      help: 'Rule of measuring that the yard goes by.',
      default: 'hardwood',
    }),
  },
  outputs: {
    sentence: out.text({ label: 'in one sentence' }),
    boardFeet: out.boardFeet({ label: 'board feet', help: 'Board feet of the tally.' }),
    surfaceMeasure: out.count({
      label: 'surface measure',
      help: 'Surface measure of the whole tally.',
      optional: true,
    }),
    boards: out.count({ label: 'boards' }),
    bySize: out.boardFeet({
      label: 'exact board feet',
      help: 'Board feet by the sizes as they are, without rounding.',
    }),
    difference: out.share({ label: 'difference', help: 'Tally over or under the sizes as they are.' }),
    rows: out.table(
      {
        size: out.text({ label: 'size' }),
        count: out.count({ label: 'boards' }),
        surfaceMeasure: out.count({ label: 'surface measure', optional: true }),
        boardFeet: out.boardFeet({ label: 'board feet' }),
      },
      { label: 'Tally', help: 'One row for each board.' },
    ),
  },
  formulas: [bySize],
  solve: (given, trace) => {
    const hardwood = given.rule === 'hardwood';
    const turn: HalfTurn = { up: true };
    const rows = given.boards.map((b, i) => {
      const size = { width: b.width / inch, length: b.length / foot, thickness: b.thickness / inch };
      if (hardwood && tallyLength(size.length) < 1)
        throw new InputError({
          field: `boards[${i + 1}].length`,
          message: `got ${size.length.toFixed(2)} ft, takes at least 1 ft: hardwood is tallied by whole feet of length`,
        });
      const each = Array.from({ length: b.count }, () => surfaceMeasure(size, turn));
      const surface = each.reduce((s, x) => s + x, 0);
      const feet = hardwood ? hardwoodFeet(surface, size.thickness) : softwoodFeet(size) * b.count;
      return { text: sizeWords(size, hardwood), count: b.count, surface, feet };
    });
    const sum = (of: (row: (typeof rows)[number]) => number): number => rows.reduce((s, r) => s + of(r), 0);
    const feet = sum((r) => r.feet);
    const boards = sum((r) => r.count);
    const exact =
      given.boards.reduce(
        (s, b) => s + trace.evaluate(bySize, { n: b.count, w: b.width, l: b.length, t: b.thickness }),
        0,
      ) / boardFoot;
    trace.note(
      hardwood
        ? 'Each board: width in inches times whole feet of length over 12, to the nearest whole foot, an exact half up and down alternately; times its thickness in whole quarters, under 1 in as 1 in.'
        : 'Each board: nominal thickness times nominal width in inches times length in feet over 12, under 1 in thick as 1 in; nothing is rounded.',
    );
    // Under a billionth it is the last binary digits, and no difference.
    const off = feet / exact - 1;
    const difference = Math.abs(off) < 1e-9 ? 0 : off;
    return {
      sentence: `${boards} board${boards === 1 ? '' : 's'}, ${Number(feet.toFixed(2))} board feet by the ${given.rule} rule: ${againstSizes(difference)}.`,
      boardFeet: feet * boardFoot,
      ...(hardwood ? { surfaceMeasure: sum((r) => r.surface) } : {}),
      boards,
      bySize: exact * boardFoot,
      difference,
      rows: rows.map((r) => ({
        size: r.text,
        count: r.count,
        ...(hardwood ? { surfaceMeasure: r.surface } : {}),
        boardFeet: r.feet * boardFoot,
      })),
    };
  },
  cautions: (given) => [
    note(
      given.rule === 'hardwood'
        ? 'a yard measures rough boards before they are planed, width to the quarter inch: ask what the tally was taken on'
        : 'softwood is sold by the size it had before it was dried and planed: give that size, not the one you measure',
    ),
  ],
  chart: (given, answer) =>
    barChart({
      title: `${Number((answer.boardFeet / boardFoot).toFixed(1))} board feet by the ${given.rule} rule`,
      ...(answer.rows.length > shown
        ? { subtitle: `The first ${shown} of ${answer.rows.length} rows.` }
        : {}),
      of: '',
      value: { title: 'Board measure', unit: 'bf', zero: true },
      bars: answer.rows.slice(0, shown).map((r, i) => ({
        name: `${i + 1}: ${r.count > 1 ? `${r.count} of ` : ''}${r.size}`,
        value: r.boardFeet / boardFoot,
        label: `${Number((r.boardFeet / boardFoot).toFixed(2))}`,
      })),
    }),
  example: {
    boards: [
      { width: '6 1/4 in', length: '8 ft', thickness: '2 in' },
      { width: '10 in', length: '13 ft', thickness: '1 in', count: 2 },
      { width: '6 in', length: '9 ft', thickness: '5/4 in', count: 4 },
    ],
  },
});

/** A board as a yard names it: hardwood by its quarters. */
function sizeWords(
  size: { readonly width: number; readonly length: number; readonly thickness: number },
  hardwood: boolean,
): string {
  const n = (x: number): string => String(Number(x.toFixed(2)));
  const thick = hardwood ? `${Math.max(4, quarters(size.thickness) * 4)}/4` : `${n(size.thickness)} in`;
  return `${thick} x ${n(size.width)} in x ${n(size.length)} ft`;
}
