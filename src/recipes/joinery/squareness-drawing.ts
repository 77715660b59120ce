import { drawing, type Place, type Shape } from '../../charts/drawing.js';
import type { ChartSpec } from '../../charts/chart-spec.js';

/** A frame with its diagonals beside the square it should be, its lean drawn so that it can be seen. Metres. */
export function squarenessDrawing(of: {
  readonly width: number;
  readonly height: number;
  readonly diagonalA: number;
  readonly diagonalB: number;
  /** How far the top must go along the bottom. */
  readonly move: number;
}): ChartSpec {
  const [w, h] = [of.width * 1000, of.height * 1000];
  const move = of.move * 1000;
  // To the right where diagonal A, to the top right, is the longer.
  const side = of.diagonalA >= of.diagonalB ? 1 : -1;
  const [weightA, weightB] = side > 0 ? [2.6, 1.2] : [1.2, 2.6];
  // A lean that can be seen: true where it is large enough, else enlarged to a twelfth of the height.
  const lean = move > 0 ? side * Math.max(move, h / 12) : 0;
  const top = Math.sqrt(Math.max(h * h - lean * lean, h * h * 0.25));
  const foot: readonly [Place, Place] = [
    [0, 0],
    [w, 0],
  ];
  const head: readonly [Place, Place] = [
    [lean, top],
    [w + lean, top],
  ];
  const pull: Shape[] = [
    {
      kind: 'polyline',
      points: [
        [lean + w / 2 + side * w * 0.12, top + h * 0.06],
        [lean + w / 2 - side * w * 0.12, top + h * 0.06],
      ],
      arrow: true,
      weight: 2.4,
    },
    {
      kind: 'text',
      x: lean + w / 2,
      y: top + h * 0.06,
      text: `${move.toFixed(2)} mm`,
      dy: 14,
      bold: true,
    },
  ];
  const shapes: Shape[] = [
    {
      kind: 'polygon',
      points: [
        [0, 0],
        [w, 0],
        [w, h],
        [0, h],
      ],
      fill: 'none',
      dashed: true,
    },
    { kind: 'polygon', points: [...foot, head[1], head[0]], fill: 'none', weight: 4 },
    { kind: 'polyline', points: [foot[0], head[1]], weight: weightA },
    { kind: 'polyline', points: [foot[1], head[0]], weight: weightB },
    {
      kind: 'text',
      x: w * 0.7 + lean * 0.7,
      y: top * 0.7,
      text: `A ${(of.diagonalA * 1000).toFixed(1)}`,
      dy: 16,
      bold: side > 0,
    },
    {
      kind: 'text',
      x: w * 0.3 + lean * 0.7,
      y: top * 0.7,
      text: `B ${(of.diagonalB * 1000).toFixed(1)}`,
      dy: 16,
      bold: side < 0,
    },
    { kind: 'dimension', from: [0, 0], to: [w, 0], text: `${w.toFixed(1)} mm`, offset: -20 },
    { kind: 'dimension', from: [w, 0], to: [w, h], text: `${h.toFixed(1)} mm`, offset: -46 },
    ...(move > 0 ? pull : []),
  ];
  return drawing({
    title: 'The frame and its diagonals, mm',
    subtitle:
      move > 0 && move < h / 12 ? 'The lean is drawn larger than it is; dashed, square.' : 'Dashed: square.',
    shapes,
    maxHeight: 420,
  });
}
