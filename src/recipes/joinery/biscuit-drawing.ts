import { drawing, type Place, type Shape } from '../../charts/drawing.js';
import type { ChartSpec } from '../../charts/chart-spec.js';

/** The biscuits along a joint from above, half of each in either part. Metres. */
export function biscuitDrawing(of: {
  readonly length: number;
  readonly count: number;
  readonly biscuitLength: number;
  readonly slotDepth: number;
  readonly positions: readonly number[];
  readonly spacing?: number | undefined;
}): ChartSpec {
  const L = of.length * 1000;
  const l = of.biscuitLength * 1000;
  const high = Math.max(L * 0.09, 30);
  const shapes: Shape[] = [
    { kind: 'rectangle', x: 0, y: 0, width: L, height: high, fill: 'wood', hatch: 'grain' },
    ...of.positions.map((x): Shape => ({
      kind: 'polygon',
      points: lensAt(x * 1000, high, l, (of.slotDepth - 0.001) * 2000),
      fill: 'woodDark',
    })),
    {
      kind: 'dimension',
      from: [0, high],
      to: [(of.positions[0] as number) * 1000, high],
      text: ((of.positions[0] as number) * 1000).toFixed(0),
      offset: 16,
    },
    ...(of.positions.length > 1
      ? [
          {
            kind: 'dimension',
            from: [(of.positions[0] as number) * 1000, high],
            to: [(of.positions[1] as number) * 1000, high],
            text: `${((of.spacing as number) * 1000).toFixed(1)} mm`,
            offset: 16,
          } as Shape,
        ]
      : []),
    { kind: 'dimension', from: [0, 0], to: [L, 0], text: `${L.toFixed(0)} mm`, offset: -16 },
  ];
  return drawing({
    title: `${of.count} biscuit${of.count === 1 ? '' : 's'} along the joint, from above`,
    shapes,
    maxHeight: 220,
  });
}

/** The outline of a biscuit, half of it in the edge at y. */
function lensAt(x: number, y: number, l: number, w: number): Place[] {
  const r = (l * l + w * w) / (4 * w);
  const half = Math.asin(l / (2 * r));
  const arc = (sign: number): Place[] =>
    Array.from({ length: 13 }, (_, i) => {
      const t = -half + (2 * half * i) / 12;
      return [x + r * Math.sin(t), y + sign * (r * Math.cos(t) - (r - w / 2))];
    });
  return [...arc(1), ...arc(-1).reverse()];
}
