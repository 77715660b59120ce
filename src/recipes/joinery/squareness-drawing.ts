import { drawing, type Place, type Shape } from '../../charts/drawing.js';
import type { ChartSpec } from '../../charts/chart-spec.js';
import { arrow, dimension, line, polygon, words } from '../../charts/shapes.js';

interface Frame {
  readonly width: number;
  readonly height: number;
  readonly diagonalA: number;
  readonly diagonalB: number;
  /** How far the top must go along the bottom. */
  readonly move: number;
}

/** A frame with its diagonals beside the square it should be, its lean drawn so that it can be seen. Metres. */
export function squarenessDrawing(of: Frame): ChartSpec {
  const [w, h, move] = [of.width * 1000, of.height * 1000, of.move * 1000];
  // To the right where diagonal A, to the top right, is the longer.
  const side = of.diagonalA >= of.diagonalB ? 1 : -1;
  const square: readonly Place[] = [[0, 0], [w, 0], [w, h], [0, h]]; // prettier-ignore
  return drawing({
    title: 'The frame and its diagonals, mm',
    subtitle:
      move > 0 && move < h / 12 ? 'The lean is drawn larger than it is; dashed, square.' : 'Dashed: square.',
    shapes: [
      polygon(square, { fill: 'none', dashed: true }),
      ...leaningFrame(of, w, h, move, side),
      dimension([0, 0], [w, 0], `${w.toFixed(1)} mm`, -20),
      dimension([w, 0], [w, h], `${h.toFixed(1)} mm`, -46),
    ],
    maxHeight: 420,
  });
}

/** The frame as it stands, its diagonals, the longer one heavy, and the way its top must go. */
function leaningFrame(of: Frame, w: number, h: number, move: number, side: 1 | -1): Shape[] {
  // A lean that can be seen: true where it is large enough, else enlarged to a twelfth of the height.
  const lean = move > 0 ? side * Math.max(move, h / 12) : 0;
  const top = Math.sqrt(Math.max(h * h - lean * lean, h * h * 0.25));
  const [weightA, weightB] = side > 0 ? [2.6, 1.2] : [1.2, 2.6];
  const [left, right]: [Place, Place] = [[lean, top], [w + lean, top]]; // prettier-ignore
  const middle = lean + w / 2;
  const above = top + h * 0.06;
  return [
    polygon([[0, 0], [w, 0], right, left], { fill: 'none', weight: 4 }),
    line([0, 0], right, { weight: weightA }),
    line([w, 0], left, { weight: weightB }),
    words(w * 0.7 + lean * 0.7, top * 0.7, `A ${(of.diagonalA * 1000).toFixed(1)}`, {
      dy: 16,
      bold: side > 0,
    }),
    words(w * 0.3 + lean * 0.7, top * 0.7, `B ${(of.diagonalB * 1000).toFixed(1)}`, {
      dy: 16,
      bold: side < 0,
    }),
    ...(move > 0
      ? [
          arrow([middle + side * w * 0.12, above], [middle - side * w * 0.12, above]),
          words(middle, above, `${move.toFixed(2)} mm`, { dy: 14, bold: true }),
        ]
      : []),
  ];
}
