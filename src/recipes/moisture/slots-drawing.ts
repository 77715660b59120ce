import { drawing, type Shape } from '../../charts/drawing.js';
import type { ChartSpec } from '../../charts/chart-spec.js';

interface Slot {
  readonly position: number;
  readonly travel: number;
  readonly slotLength: number;
}

/** The top in plan with the line it is held along and its slots, drawn larger than they are and said so. Lengths in m. */
export function slotsDrawing(of: {
  readonly width: number;
  readonly fixed: number;
  readonly diameter: number;
  readonly slots: readonly Slot[];
}): ChartSpec {
  const { slots } = of;
  const w = of.width * 1000;
  const fixed = of.fixed * 1000;
  const longest = Math.max(...slots.map((s) => s.slotLength));
  const deep = w * 0.4;
  // A slot of 10 mm in a top of a metre would be a speck: drawn larger, and said so.
  const times = Math.max(
    1,
    Math.min(8, Math.round(w / Math.max(3, slots.length * 1.6) / Math.max(1, longest * 1000))),
  );
  const few = slots.length <= 9;
  const d = of.diameter * 1000;
  // Of many slots the shortest and the longest are labelled.
  const sorted = [...slots].sort((a, b) => a.slotLength - b.slotLength);
  const ends = [sorted[0], sorted[sorted.length - 1]];
  const shapes: Shape[] = [
    { kind: 'rectangle', x: 0, y: 0, width: w, height: deep, fill: 'wood', hatch: 'grainUp' },
    {
      kind: 'polyline',
      points: [
        [fixed, -deep * 0.06],
        [fixed, deep * 1.06],
      ],
      dashed: true,
    },
    {
      kind: 'text',
      x: fixed,
      y: deep * 1.06,
      text: 'held here',
      dy: 10,
      align: fixed < w * 0.08 ? 'left' : fixed > w * 0.92 ? 'right' : 'center',
    },
    ...slots.flatMap((s, i): Shape[] => {
      const long = s.slotLength * 1000 * times;
      const y = deep * (few ? 0.5 : i % 2 === 0 ? 0.62 : 0.38);
      return [
        {
          kind: 'rectangle',
          x: s.position * 1000 - long / 2,
          y: y - (d * times) / 2,
          width: long,
          height: d * times,
          fill: 'ground',
        },
        { kind: 'circle', x: s.position * 1000, y, radius: (d * times) / 2, fill: 'accent' },
        ...(few || s === ends[0] || s === ends[1]
          ? ([
              {
                kind: 'text',
                x: s.position * 1000,
                y: y - (d * times) / 2,
                text: `${(s.slotLength * 1000).toFixed(1)} mm`,
                dy: -14,
                bold: true,
              },
              {
                kind: 'text',
                x: s.position * 1000,
                y: y - (d * times) / 2,
                text: `travel ${(s.travel * 1000).toFixed(1)}`,
                dy: -29,
                size: 11,
              },
            ] as Shape[])
          : []),
      ];
    }),
    {
      kind: 'dimension',
      from: [w, 0],
      to: [0, 0],
      text: `${w.toFixed(0)} mm across the grain`,
      offset: 16,
    },
  ];
  return drawing({
    title: 'The top in plan, with its slots',
    subtitle:
      times > 1
        ? `Slots drawn ${times} times their size; length and travel in mm.`
        : 'Length and travel in mm.',
    shapes,
  });
}
