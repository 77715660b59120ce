import { field } from '../../engine/field.js';
import type { Parsed } from '../../engine/field.js';
import { tableField } from '../../engine/table-field.js';
import { InputError, type Issue } from '../../units/input-error.js';
import { curveLeft } from './flattening-loss.js';

const columns = {
  name: field.text({ label: 'mark', help: 'Mark chalked on the board.', optional: true }),
  group: field.text({ label: 'group', help: 'What it was, such as rafter or floorboard.', default: 'all' }),
  count: field.count({ label: 'boards like this one', min: 1, max: 100_000, default: 1 }),
  length: field.length({ label: 'length as found', above: '0 mm', max: '30 m' }),
  width: field.length({ label: 'width as found', above: '0 mm', max: '3 m' }),
  thickness: field.length({
    label: 'thickness',
    help: 'As found, at its thinnest.',
    above: '0 mm',
    max: '500 mm',
  }),
  endLoss: field.length({
    label: 'end loss',
    help: 'Docked at the two ends together.',
    min: '0 mm',
    max: '30 m',
    default: '0 mm',
  }),
  faultLength: field.length({
    label: 'fault length',
    help: "All of a board's nail zones, knots and notches added.",
    min: '0 mm',
    max: '30 m',
    default: '0 mm',
  }),
  faults: field.count({
    label: 'faults',
    help: 'Places where a fault is cut out.',
    min: 0,
    max: 1000,
    optional: true,
  }),
  cup: field.length({
    label: 'cup',
    help: 'Gap under a straightedge across the width.',
    min: '0 mm',
    max: '300 mm',
    default: '0 mm',
  }),
  bow: field.length({
    label: 'bow',
    help: 'Gap under a line along the length.',
    min: '0 mm',
    max: '2 m',
    default: '0 mm',
  }),
} as const;

export type SurveyRow = Parsed<typeof columns>;

/** What cannot be right about a row, though each of its cells could be. @throws InputError */
function checkRow(r: SurveyRow): void {
  const mm = (m: number): string => `${Number((m * 1000).toFixed(1))} mm`;
  const issues: Issue[] = [];
  const at = (field: string, label: string): void => void issues.push({ field, message: label });
  if (r.length < 0.05 * (1 - 1e-12) || r.length > 20 * (1 + 1e-12))
    at(
      'length',
      `got ${mm(r.length)}, takes a board from 50 mm to 20 m long; check the unit in the header and the decimal mark`,
    );
  if (r.endLoss + r.faultLength > r.length * (1 + 1e-12))
    at(
      'endLoss',
      `got ${mm(r.endLoss)} docked and ${mm(r.faultLength)} of faults in a board of ${mm(r.length)}; takes no more than the board`,
    );
  if (r.cup * 4 > r.width)
    at('cup', `got ${mm(r.cup)} over a width of ${mm(r.width)}; takes at most a quarter of the width`);
  if (r.bow * 4 > r.length)
    at('bow', `got ${mm(r.bow)} over a length of ${mm(r.length)}; takes at most a quarter of the length`);
  if (r.thickness > r.width * (1 + 1e-12) && r.cup > 0)
    at(
      'thickness',
      `got ${mm(r.thickness)} on a width of ${mm(r.width)}; takes the lesser of the two as the thickness of a cupped board`,
    );
  if (r.faults === 0 && r.faultLength > 0)
    at(
      'faults',
      `got 0 places and ${mm(r.faultLength)} to cut out; takes at least 1 place, or no fault length`,
    );
  if (issues.length > 0) throw new InputError(issues);
}

/** The survey of a pile: a list of rows, a data frame or a CSV file; columns are named and may carry their unit. */
export const surveyField = tableField(columns, {
  label: 'boards',
  help: 'Survey of the pile with a row for each size and state of board.',
  row: checkRow,
});

/** What a kerf, the planing and a wanted section make of a board. Lengths in m. */
export interface Dressing {
  readonly plane: number;
  readonly jointing: number;
  readonly kerf: number;
  readonly resaw: boolean;
  readonly width?: number | undefined;
  readonly length?: number | undefined;
}

/** A row of the survey once docked, cut and ripped, before a thickness is settled. Lengths in m. */
export interface Dressed {
  readonly row: SurveyRow;
  /** Clear stretches between the faults, one more than there are places cut out. */
  readonly stretches: number;
  /** Pieces that one board gives in its length and across its width. */
  readonly along: number;
  readonly across: number;
  readonly pieceLength: number;
  readonly pieceWidth: number;
  /** Thickness before planing clean, once cup and bow are out of the pieces. */
  readonly flat: number;
  /** Thickness of a piece planed on both faces. */
  readonly thickness: number;
}

const slack = 1e-9;

/** Docks, cuts and rips one row. Clear stretches between faults are taken as equal, since a survey does not place them. */
export function dress(row: SurveyRow, how: Dressing): Dressed {
  const stretches = (row.faults ?? (row.faultLength > 0 ? 1 : 0)) + 1;
  const clear = Math.max(0, row.length - row.endLoss - row.faultLength) / stretches;
  const { length: l, width: w, kerf: k, jointing: j } = how;
  const perStretch = l === undefined ? Number(clear > slack) : Math.floor((clear + k) / (l + k) + slack);
  const across =
    w === undefined ? Number(row.width - j > slack) : Math.floor((row.width + k) / (w + j + k) + slack);
  const pieceLength = l ?? clear;
  const pieceWidth = w ?? row.width - j;
  // Cup and bow are planed out of the cut pieces, not of the whole board.
  const cup = curveLeft.evaluate({ d: row.cup, a: w === undefined ? row.width : w + j, A: row.width });
  const bow = curveLeft.evaluate({ d: row.bow, a: pieceLength, A: row.length });
  const flat = row.thickness - cup - bow;
  const thickness = flat - 2 * how.plane;
  return { row, stretches, along: perStretch * stretches, across, pieceLength, pieceWidth, flat, thickness };
}

/** Whether a row gives any piece, thicker than the millimetre below which nobody planes. */
export const gives = (d: Dressed): boolean => d.along * d.across > 0 && d.thickness > 1e-3;

/** How a row is spoken of: by its chalk mark, else by its place in the survey. */
export const nameOf = (d: Dressed, i: number): string => d.row.name ?? `row ${i + 1}`;

/** Layers of a common thickness that a dressed board gives: one, or with resawing as many as the saw leaves. */
export function layersAt(d: Dressed, thickness: number, how: Dressing): number {
  if (thickness <= 0 || d.thickness < thickness - slack) return 0;
  const most = Math.floor((d.flat + how.kerf) / (thickness + 2 * how.plane + how.kerf) + slack);
  return how.resaw ? Math.max(1, most) : 1;
}
