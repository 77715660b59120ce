// The survey of a pile with the places of its faults, and the boards it describes in whole micrometres.
import { field, type Parsed } from '../../../engine/field.js';
import { tableField } from '../../../engine/table-field.js';
import { InputError, type Issue } from '../../../units/input-error.js';
import { curveLeft } from '../flattening-loss.js';
import { faultPlaces, type FaultPlace } from './fault-places.js';
import type { PileBoard } from './pile-sticks.js';

const loss = (label: string) => field.length({ label, min: '0 mm', max: '30 m', default: '0 mm' });

/** The columns of a survey with the places of faults. */
export const pileColumns = {
  name: field.text({ label: 'mark on the board', optional: true }),
  group: field.text({ label: 'group', help: 'What it was, such as rafter or floorboard.', default: 'all' }),
  count: field.count({ label: 'boards like this one', min: 1, max: 10_000, default: 1 }),
  length: field.length({ label: 'length as found', above: '0 mm', max: '30 m' }),
  width: field.length({ label: 'width as found', above: '0 mm', max: '3 m' }),
  thickness: field.length({
    label: 'thickness',
    help: 'As found, at its thinnest.',
    above: '0 mm',
    max: '500 mm',
  }),
  tone: field.text({ label: 'tone', help: 'Light or dark.', default: 'one' }),
  endLoss: loss('end loss'),
  endLeft: loss('left end loss'),
  endRight: loss('right end loss'),
  faultsAt: field.text({
    label: 'places of faults',
    help: 'From the left end, such as "310-350; 900-2100 edge 15; 400-420 back mm".',
    optional: true,
  }),
  faultLength: loss('fault length'),
  faults: field.count({
    label: 'number of faults',
    help: 'Used where their places were not measured.',
    min: 0,
    max: 100,
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

export type PileRow = Parsed<typeof pileColumns>;

/** What cannot be right about a row, though each of its cells could be. @throws InputError */
function checkRow(r: PileRow): void {
  const mm = (m: number): string => `${Number((m * 1000).toFixed(1))} mm`;
  const issues: Issue[] = [];
  const at = (name: string, message: string): void => void issues.push({ field: name, message });
  const docked = r.endLoss + r.endLeft + r.endRight;
  if (docked + r.faultLength > r.length * (1 + 1e-12))
    at(
      'endLoss',
      `got ${mm(docked)} docked and ${mm(r.faultLength)} of faults in a board of ${mm(r.length)}; takes no more than the board`,
    );
  if (r.cup * 4 > r.width)
    at('cup', `got ${mm(r.cup)} over a width of ${mm(r.width)}; takes at most a quarter of the width`);
  if (r.bow * 4 > r.length)
    at('bow', `got ${mm(r.bow)} over a length of ${mm(r.length)}; takes at most a quarter of the length`);
  if (r.faultsAt !== undefined && r.faultLength > 0)
    at('faultLength', 'given together with faultsAt; give the places, or the length of all faults, not both');
  if (issues.length > 0) throw new InputError(issues);
  if (r.faultsAt !== undefined) faultPlaces(r.faultsAt, r.length);
}

export const pileField = tableField(pileColumns, {
  label: 'boards',
  help: 'Survey of the pile with a row for each board or kind of board.',
  row: checkRow,
  most: 2000,
});

export const um = (metres: number): number => Math.round(metres * 1e6);
// Losses are rounded up and what is there is rounded down, so that a plan never counts on wood that is not there.
const up = (metres: number): number => Math.ceil(metres * 1e6 - 1e-3);
const down = (metres: number): number => Math.floor(metres * 1e6 + 1e-3);

/** Faults of a row whose places were not measured: of equal length, at equal distances. */
function evenFaults(r: PileRow): FaultPlace[] {
  const n = r.faults ?? (r.faultLength > 0 ? 1 : 0);
  if (n === 0 || r.faultLength === 0) return [];
  const start = r.endLeft + r.endLoss / 2;
  const clear = (r.length - r.endLoss - r.endLeft - r.endRight - r.faultLength) / (n + 1);
  return Array.from({ length: n }, (_, k): FaultPlace => {
    const from = start + (k + 1) * clear + (k * r.faultLength) / n;
    return { from, to: from + r.faultLength / n, back: false };
  });
}

/** How a survey is read: the least piece, and whether the hidden face of the top may show faults. Metres. */
export interface SurveyReading {
  readonly leastPiece: number;
  readonly backHidden: boolean;
}

/** The boards of a survey. A row without a count is one board. */
export function boardsOf(rows: readonly PileRow[], { leastPiece, backHidden }: SurveyReading): PileBoard[] {
  return rows.map((r, i): PileBoard => {
    const places = (r.faultsAt === undefined ? evenFaults(r) : faultPlaces(r.faultsAt, r.length)).filter(
      (f) => !(f.back && backHidden),
    );
    const through = places.filter((f) => !f.edge || f.edge.depth >= r.width);
    // Cup and bow come out of the pieces that are cut, of which the longest is taken: a whole stretch.
    const piece = Math.max(leastPiece, r.length / (through.length + 1));
    const allowance =
      curveLeft.evaluate({ d: r.cup, a: r.width, A: r.width }) +
      curveLeft.evaluate({ d: r.bow, a: Math.min(piece, r.length), A: r.length });
    const span = ({ from, to }: FaultPlace): readonly [number, number] => [down(from), up(to)];
    return {
      name: r.name ?? `row ${i + 1}`,
      count: r.count,
      length: down(r.length),
      width: down(r.width),
      thickness: down(r.thickness),
      endLeft: up(r.endLeft + r.endLoss / 2),
      endRight: up(r.endRight + r.endLoss / 2),
      faults: through.map(span),
      edgeFaults: places.flatMap((f) =>
        f.edge && f.edge.depth < r.width
          ? [{ from: down(f.from), to: up(f.to), depth: up(f.edge.depth), far: f.edge.far }]
          : [],
      ),
      allowance: up(allowance),
      tone: r.tone,
    };
  });
}

/** Whether a survey says where its faults lie. */
export const placesKnown = (rows: readonly PileRow[]): boolean => rows.every((r) => r.faultLength === 0);
