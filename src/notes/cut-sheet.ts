// What every form of a cut list is made from, and the words they share.
import { inches } from '../units/format-quantity.js';

export interface CutBoard {
  readonly board: number;
  readonly stock: string;
  readonly stockLength: number;
  readonly section?: string | undefined;
  readonly pieces: readonly { readonly name: string; readonly length: number; readonly from: number }[];
  readonly offcut: number;
  readonly keep: boolean;
}

/** Boards cut alike, with their numbers. */
export interface CutRow extends CutBoard {
  readonly numbers: readonly number[];
}

/** One setting of the stop: every piece of that length, from whichever boards. */
export interface CutRun {
  readonly run: number;
  readonly section?: string | undefined;
  readonly length: number;
  readonly pieces: number;
  readonly names: readonly { readonly name: string; readonly count: number }[];
  readonly from: readonly { readonly board: number; readonly count: number }[];
}

/** What every form of the list is made from. Lengths in m. */
export interface CutSheet {
  readonly summary: string;
  readonly rows: readonly CutRow[];
  readonly runs: readonly CutRun[];
  readonly missing: readonly { readonly name: string; readonly length: number; readonly count: number }[];
  readonly cautions: readonly string[];
}

export const millimetres = (m: number): string => `${Number((m * 1000).toFixed(1))}`;
export const inchText = (m: number): string => inches(m / 0.0254);

/** 1, 2, 5 to 9: numbers in few words. */
export function numbersText(numbers: readonly number[]): string {
  const spans: [number, number][] = [];
  for (const n of [...numbers].sort((a, b) => a - b)) {
    const last = spans[spans.length - 1];
    if (last && n === last[1] + 1) last[1] = n;
    else spans.push([n, n]);
  }
  return spans.map(([a, b]) => (a === b ? `${a}` : b === a + 1 ? `${a}, ${b}` : `${a} to ${b}`)).join(', ');
}

/** Boards cut alike together. */
export function rowsOf(plan: readonly CutBoard[]): CutRow[] {
  const rows = new Map<string, { first: CutBoard; numbers: number[] }>();
  for (const b of plan) {
    const key = JSON.stringify([b.section, b.stock, b.stockLength, b.pieces.map((p) => [p.name, p.length])]);
    const had = rows.get(key);
    if (had) had.numbers.push(b.board);
    else rows.set(key, { first: b, numbers: [b.board] });
  }
  return [...rows.values()].map((r) => ({ ...r.first, numbers: r.numbers }));
}

/** Long stops first: what is left of each board then serves the next stop, and no stop is set twice. */
export function runsOf(plan: readonly CutBoard[]): CutRun[] {
  const runs = new Map<
    string,
    { section?: string | undefined; length: number; names: Map<string, number>; from: Map<number, number> }
  >();
  for (const b of plan) {
    for (const p of b.pieces) {
      const key = JSON.stringify([b.section, Math.round(p.length * 1e9)]);
      const run = runs.get(key) ?? {
        section: b.section,
        length: p.length,
        names: new Map<string, number>(),
        from: new Map<number, number>(),
      };
      run.names.set(p.name, (run.names.get(p.name) ?? 0) + 1);
      run.from.set(b.board, (run.from.get(b.board) ?? 0) + 1);
      runs.set(key, run);
    }
  }
  const order = [...new Set(plan.map((b) => b.section))];
  return [...runs.values()]
    .sort((a, b) => order.indexOf(a.section) - order.indexOf(b.section) || b.length - a.length)
    .map((r, i) => ({
      run: i + 1,
      ...(r.section === undefined ? {} : { section: r.section }),
      length: r.length,
      pieces: [...r.names.values()].reduce((a, b) => a + b, 0),
      names: [...r.names].map(([name, count]) => ({ name, count })),
      from: [...r.from].map(([board, count]) => ({ board, count })),
    }));
}

/** `2 each from boards 1 to 3; 1 from board 7`. */
export function fromText(from: CutRun['from']): string {
  const byCount = new Map<number, number[]>();
  for (const f of from) byCount.set(f.count, [...(byCount.get(f.count) ?? []), f.board]);
  return [...byCount]
    .sort((a, b) => b[0] - a[0])
    .map(
      ([count, boards]) =>
        `${count}${boards.length > 1 ? ' each' : ''} from board${boards.length > 1 ? 's' : ''} ${numbersText(boards)}`,
    )
    .join('; ');
}

/** The board to fetch; its length is not said twice where it is also its name. */
export function takeText(b: CutBoard): string {
  const mm = `${millimetres(b.stockLength)} mm`;
  return b.stock === mm ? mm : `${b.stock}, ${mm}`;
}

export function pieceText(p: { readonly name: string; readonly length: number }): string {
  const mm = millimetres(p.length);
  return p.name === `${mm} mm` ? mm : `${p.name} ${mm}`;
}
