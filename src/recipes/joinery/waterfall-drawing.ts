import { drawing, type Place, type Shape } from '../../charts/drawing.js';
import type { ChartSpec } from '../../charts/chart-spec.js';

/** A fold on edge: the end, the top, and the wedge between them that is waste. Metres. */
export function waterfallDrawing(of: {
  readonly thickness: number;
  readonly grainBreak: number;
  readonly bevel: number;
  readonly wedge: number;
}): ChartSpec {
  const t = of.thickness * 1000;
  const l = of.grainBreak * 1000;
  const back = t * Math.tan(of.bevel);
  const tail = Math.max(2 * t, 60);
  // Show face up. The left piece and the top, the wedge between them.
  const left: Place[] = [
    [-tail, 0],
    [-back, 0],
    [0, t],
    [-tail, t],
  ];
  const right: Place[] = [
    [l + back, 0],
    [l + tail, 0],
    [l + tail, t],
    [l, t],
  ];
  const wedge: Place[] = [
    [-back, 0],
    [l + back, 0],
    [l, t],
    [0, t],
  ];
  const shapes: Shape[] = [
    { kind: 'polygon', points: left, fill: 'wood' },
    { kind: 'polygon', points: right, fill: 'woodDark' },
    { kind: 'polygon', points: wedge, fill: 'waste', dashed: true },
    { kind: 'text', x: -tail * 0.72, y: t / 2, text: 'end' },
    { kind: 'text', x: l + tail * 0.75, y: t / 2, text: 'top' },
    { kind: 'text', x: l / 2, y: t * 0.3, text: 'waste' },
    { kind: 'dimension', from: [0, t], to: [l, t], text: `${l.toFixed(2)} mm of grain lost`, offset: 18 },
    {
      kind: 'dimension',
      from: [-back, 0],
      to: [l + back, 0],
      text: `${(of.wedge * 1000).toFixed(1)} mm`,
      offset: -18,
    },
    { kind: 'dimension', from: [l + tail, 0], to: [l + tail, t], text: `${t.toFixed(1)} mm`, offset: -18 },
    { kind: 'text', x: -tail, y: t, text: 'show face', align: 'left', dy: 10 },
  ];
  return drawing({
    title: `A fold on edge: two cuts at ${((of.bevel * 180) / Math.PI).toFixed(1)}°`,
    shapes,
    maxHeight: 360,
  });
}
