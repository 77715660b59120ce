import { drawing, type Shape } from '../../../charts/drawing.js';
import type { ChartSpec } from '../../../charts/chart-spec.js';
import { rectangle, words } from '../../../charts/shapes.js';

interface Board {
  readonly board: number;
  readonly stock: string;
  readonly stockLength: number;
  readonly section?: string | undefined;
  readonly pieces: readonly { readonly name: string; readonly length: number; readonly from: number }[];
  readonly offcut: number;
  readonly keep: boolean;
}

/** Boards cut alike, by their numbers. */
interface Row {
  readonly board: Board;
  readonly numbers: number[];
}

/** Most rows drawn: boards cut alike share one. */
const most = 40;

const mm = (m: number): string => `${Number((m * 1000).toFixed(1))}`;

/** Every board with its cuts and offcuts, lengths to scale; boards cut alike are drawn once with their numbers. */
export function planDrawing(plan: readonly Board[], trim: number, kerf: number): ChartSpec {
  const rows = rowsOf(plan);
  const shown = rows.slice(0, most);
  const longest = Math.max(...shown.map((r) => r.board.stockLength)) * 1000;
  const more = rows.length - shown.length;
  return drawing({
    title: `${plan.length === 1 ? '1 board and its' : `${plan.length} boards and their`} cuts, lengths in mm`,
    subtitle: `Widths are not to scale. Kerf ${mm(kerf)} mm; hatched is waste, plain white an offcut worth keeping.${more > 0 ? ` ${more} more ways of cutting are in the table.` : ''}`,
    description: `Boards drawn as bars with their parts in order: ${plan.length}.`,
    shapes: shown.flatMap((row, i) => rowShapes(row, -i * longest * 0.062, longest, trim)),
    width: 760,
    maxHeight: Math.max(120, shown.length * 34 + 60),
  });
}

/** Boards that lie next to each other and are cut alike, together. */
function rowsOf(plan: readonly Board[]): Row[] {
  const rows: Row[] = [];
  const key = (b: Board): string =>
    `${b.section ?? ''}|${b.stock}|${b.stockLength}|${b.pieces.map((p) => `${p.name}:${p.length}`).join(',')}`;
  for (const b of plan) {
    const last = rows[rows.length - 1];
    if (last && key(last.board) === key(b)) last.numbers.push(b.board);
    else rows.push({ board: b, numbers: [b.board] });
  }
  return rows;
}

/** One bar: waste, parts in order, an offcut worth keeping, the numbers at its left and its size at its right. */
function rowShapes({ board, numbers }: Row, y: number, longest: number, trim: number): Shape[] {
  const high = longest * 0.042;
  const L = board.stockLength * 1000;
  const docked = trim * 1000;
  const end = L - board.offcut * 1000 - docked;
  const waste = { fill: 'waste', hatch: 'waste', weight: 0.8 } as const;
  const alike = numbers.length > 1 ? `–${numbers[numbers.length - 1]} (${numbers.length} alike)` : '';
  return [
    rectangle(0, y, board.keep ? end : L, high, waste),
    ...(board.keep && trim > 0 ? [rectangle(L - docked, y, docked, high, waste)] : []),
    words(0, y + high / 2, `${numbers[0]}${alike}`, { align: 'right', dx: -8 }),
    ...board.pieces.map((p, k) =>
      rectangle(p.from * 1000, y, p.length * 1000, high, {
        fill: k % 2 === 0 ? 'wood' : 'woodDark',
        label: labelOf(p, longest),
      }),
    ),
    ...(board.offcut > 1e-6 && board.keep
      ? [
          rectangle(end, y, board.offcut * 1000, high, {
            fill: 'ground',
            label: `keep ${mm(board.offcut)}`,
          }),
        ]
      : []),
    words(L, y + high / 2, `${mm(board.stockLength)}${board.section ? `, ${board.section}` : ''}`, {
      align: 'left',
      dx: 8,
      size: 11,
    }),
  ];
}

/** Name and length where both fit, else the length alone. */
function labelOf(p: { name: string; length: number }, longest: number): string {
  const room = ((p.length * 1000) / longest) * 580;
  const both = p.name.startsWith(mm(p.length)) ? mm(p.length) : `${p.name} ${mm(p.length)}`;
  return both.length * 6.6 + 8 <= room ? both : mm(p.length);
}
