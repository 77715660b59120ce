import { drawing, type Shape } from '../../../charts/drawing.js';
import type { ChartSpec } from '../../../charts/chart-spec.js';

interface Board {
  readonly board: number;
  readonly stock: string;
  readonly stockLength: number;
  readonly section?: string | undefined;
  readonly pieces: readonly { readonly name: string; readonly length: number; readonly from: number }[];
  readonly offcut: number;
  readonly keep: boolean;
}

/** Most rows drawn: boards cut alike share one. */
const most = 40;

/** Every board with its cuts and offcuts, lengths to scale; boards cut alike are drawn once with their numbers. */
export function planDrawing(plan: readonly Board[], trim: number, kerf: number): ChartSpec {
  const rows: { board: Board; numbers: number[] }[] = [];
  const key = (b: Board): string =>
    `${b.section ?? ''}|${b.stock}|${b.stockLength}|${b.pieces.map((p) => `${p.name}:${p.length}`).join(',')}`;
  for (const b of plan) {
    const last = rows[rows.length - 1];
    if (last && key(last.board) === key(b)) last.numbers.push(b.board);
    else rows.push({ board: b, numbers: [b.board] });
  }
  const shown = rows.slice(0, most);
  const longest = Math.max(...shown.map((r) => r.board.stockLength)) * 1000;
  const high = longest * 0.042;
  const step = longest * 0.062;
  const mm = (m: number): string => `${Number((m * 1000).toFixed(1))}`;
  const numbered = (n: readonly number[]): string =>
    n.length === 1 ? `${n[0]}` : `${n[0]}–${n[n.length - 1]}`;
  const shapes: Shape[] = shown.flatMap(({ board, numbers }, i): Shape[] => {
    const y = -i * step;
    const L = board.stockLength * 1000;
    const end = L - board.offcut * 1000 - trim * 1000;
    return [
      {
        kind: 'rectangle',
        x: 0,
        y,
        width: board.keep ? end : L,
        height: high,
        fill: 'waste',
        hatch: 'waste',
        weight: 0.8,
      },
      ...(board.keep && trim > 0
        ? [
            {
              kind: 'rectangle' as const,
              x: L - trim * 1000,
              y,
              width: trim * 1000,
              height: high,
              fill: 'waste' as const,
              hatch: 'waste' as const,
              weight: 0.8,
            },
          ]
        : []),
      {
        kind: 'text',
        x: 0,
        y: y + high / 2,
        text: `${numbered(numbers)}${numbers.length > 1 ? ` (${numbers.length} alike)` : ''}`,
        align: 'right',
        dx: -8,
      },
      ...board.pieces.map((p, k): Shape => ({
        kind: 'rectangle',
        x: p.from * 1000,
        y,
        width: p.length * 1000,
        height: high,
        fill: k % 2 === 0 ? 'wood' : 'woodDark',
        label: labelOf(p, longest, mm),
      })),
      ...(board.offcut > 1e-6 && board.keep
        ? [
            {
              kind: 'rectangle' as const,
              x: end,
              y,
              width: board.offcut * 1000,
              height: high,
              fill: 'ground' as const,
              label: `keep ${mm(board.offcut)}`,
            },
          ]
        : []),
      {
        kind: 'text',
        x: L,
        y: y + high / 2,
        text: `${mm(board.stockLength)}${board.section ? `, ${board.section}` : ''}`,
        align: 'left',
        dx: 8,
        size: 11,
      },
    ];
  });
  const more = rows.length - shown.length;
  return drawing({
    title: `${plan.length === 1 ? '1 board and its' : `${plan.length} boards and their`} cuts, lengths in mm`,
    subtitle: `Widths are not to scale. Kerf ${mm(kerf)} mm; hatched is waste, plain white an offcut worth keeping.${more > 0 ? ` ${more} more ways of cutting are in the table.` : ''}`,
    description: `Boards drawn as bars with their parts in order: ${plan.length}.`,
    shapes,
    width: 760,
    maxHeight: Math.max(120, shown.length * 34 + 60),
  });
}

/** Name and length where both fit, else the length alone. */
function labelOf(p: { name: string; length: number }, longest: number, mm: (m: number) => string): string {
  const room = ((p.length * 1000) / longest) * 580;
  const both = p.name.startsWith(mm(p.length)) ? mm(p.length) : `${p.name} ${mm(p.length)}`;
  return both.length * 6.6 + 8 <= room ? both : mm(p.length);
}
