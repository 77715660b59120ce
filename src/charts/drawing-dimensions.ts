import { dimensionPlace } from './dimension-layout.js';
import type { Channels, DrawingFrame, Of, Place } from './shape.js';
import { colours } from './theme.js';
import type { ChartSpec } from './chart-spec.js';

const c = colours.light;

/** Arrow heads whose tips lie where they point. */
export function arrowHeads(
  heads: readonly { readonly tip: Place; readonly from: Place }[],
  { x, y }: Channels,
  frame: DrawingFrame,
): ChartSpec {
  return {
    data: {
      values: heads.map(({ tip, from }) => ({
        x: tip[0],
        y: tip[1],
        // Vega turns clockwise with 0 up; our y runs upward and may be stretched.
        turn: 90 - (Math.atan2((tip[1] - from[1]) * frame.stretch, tip[0] - from[0]) * 180) / Math.PI,
      })),
    },
    // Drawn with its tip at the origin, so that the arrow ends exactly where the measure does.
    mark: { type: 'point', shape: 'M0,0L-0.45,1L0.45,1Z', filled: true, color: c.ink, size: 110, opacity: 1 },
    encoding: { x, y, angle: { field: 'turn', type: 'quantitative', scale: null } },
  };
}

/** Dimension lines with their arrows, their thin lines to what they measure, and their texts. */
export function dimensions(list: Of<'dimension'>[], { x, y }: Channels, frame: DrawingFrame): ChartSpec[] {
  const up = frame.scale * frame.stretch;
  const px = (at: Place): [number, number] => [at[0] * frame.scale, at[1] * up];
  const back = (at: readonly [number, number]): Place => [at[0] / frame.scale, at[1] / up];
  const lines: { x: number; y: number; x2: number; y2: number; faint: boolean }[] = [];
  const heads: { tip: Place; from: Place }[] = [];
  const layers: ChartSpec[] = [];
  const labels = list.map((d) => {
    const at = dimensionPlace(px(d.from), px(d.to), d.offset ?? 0);
    const [a, b] = [back(at.from), back(at.to)];
    lines.push({ x: a[0], y: a[1], x2: b[0], y2: b[1], faint: false });
    if ((d.offset ?? 0) !== 0)
      for (const [p, q] of [
        [d.from, a],
        [d.to, b],
      ] as const)
        lines.push({ x: p[0], y: p[1], x2: q[0], y2: q[1], faint: true });
    heads.push({ tip: a, from: b }, { tip: b, from: a });
    const [lx, ly] = back(at.label);
    return { x: lx, y: ly, label: d.text, turn: Math.round((-at.angle * 180) / Math.PI) };
  });
  layers.push({
    data: { values: lines },
    mark: { type: 'rule', color: c.ink, strokeWidth: 0.9 },
    encoding: {
      x,
      x2: { field: 'x2' },
      y,
      y2: { field: 'y2' },
      opacity: { condition: { test: 'datum.faint', value: 0.45 }, value: 1 },
    },
  });
  layers.push(arrowHeads(heads, { x, y }, frame));
  for (const turn of new Set(labels.map((l) => l.turn)))
    layers.push({
      data: { values: labels.filter((l) => l.turn === turn) },
      mark: { type: 'text', align: 'center', baseline: 'middle', angle: turn, color: c.ink },
      encoding: { x, y, text: { field: 'label' } },
    });
  return layers;
}
