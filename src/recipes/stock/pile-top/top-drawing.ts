import { drawing, type Fill, type Shape } from '../../../charts/drawing.js';
import type { ChartSpec } from '../../../charts/chart-spec.js';

interface DrawnPiece {
  readonly row: number;
  readonly piece: string;
  readonly start: number;
  readonly length: number;
  readonly width: number;
}

const fills: readonly Fill[] = ['wood', 'woodDark'];

interface DrawnTop {
  readonly pieces: readonly DrawnPiece[];
  /** Numbers of the last rows of slabs. */
  readonly slabs: readonly number[];
  readonly topLength: number;
  readonly spare: number;
  readonly width: number;
}

const mm = 1000;

/** Rows from the top edge down, each with its number and its pieces, and the depth they reach. */
function rowShapes(of: DrawnTop, rows: readonly number[]): { shapes: Shape[]; depth: number } {
  const rowLength = (of.topLength + of.spare) * mm;
  const shapes: Shape[] = [];
  let y = 0;
  for (const [i, row] of rows.entries()) {
    const pieces = of.pieces.filter((p) => p.row === row);
    const high = (pieces[0]?.width ?? 0) * mm;
    y -= high;
    for (const [k, p] of pieces.entries())
      shapes.push({
        kind: 'rectangle',
        x: p.start * mm,
        y,
        width: p.length * mm,
        height: high,
        fill: fills[(i + k) % 2] ?? 'wood',
        label: p.piece,
      });
    shapes.push({ kind: 'text', x: 0, y: y + high / 2, text: String(row), align: 'right', dx: -6, size: 11 });
    if (of.slabs.includes(row) && i < rows.length - 1)
      shapes.push(line(-0.01 * rowLength, y, 1.01 * rowLength, y, { weight: 3 }));
  }
  return { shapes, depth: y };
}

const line = (
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  looks: { readonly weight: number; readonly dashed?: true },
): Shape => ({
  kind: 'polyline',
  points: [
    [x1, y1],
    [x2, y2],
  ],
  ...looks,
});

/** The top seen from above, to scale: rows with their numbered pieces, where it is squared and where slabs meet. Metres. */
export function topDrawing(of: DrawnTop): ChartSpec | undefined {
  const rows = [...new Set(of.pieces.map((p) => p.row))].sort((a, b) => a - b);
  if (rows.length === 0) return undefined;
  const rowLength = (of.topLength + of.spare) * mm;
  const { shapes, depth } = rowShapes(of, rows);
  const squared = [of.spare / 2, of.topLength + of.spare / 2].map((x) =>
    line(x * mm, 0, x * mm, depth, { dashed: true, weight: 1.5 }),
  );
  const words = rows.map((row) => {
    const pieces = of.pieces.filter((p) => p.row === row);
    return `Row ${row}: ${pieces.map((p) => `${p.piece} ${Math.round(p.length * mm)}`).join(', ')}.`;
  });
  return drawing({
    title: `A top ${Math.round(of.width * mm)} mm wide in ${rows.length} row${rows.length === 1 ? '' : 's'}`,
    subtitle:
      'Dashed: where the ends are squared. Thick lines: where slabs are glued to each other. Lengths in mm.',
    description: words.join(' ').slice(0, 2000),
    shapes: [
      ...shapes,
      ...squared,
      {
        kind: 'dimension',
        from: [0, depth],
        to: [rowLength, depth],
        text: `${Math.round(rowLength)}`,
        offset: -16,
      },
      {
        kind: 'dimension',
        from: [rowLength, depth],
        to: [rowLength, 0],
        text: `${Math.round(-depth)}`,
        offset: -16,
      },
    ],
    width: 760,
  });
}
