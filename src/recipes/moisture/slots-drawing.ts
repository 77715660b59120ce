import { drawing, type Shape } from '../../charts/drawing.js';
import type { ChartSpec } from '../../charts/chart-spec.js';
import { dimension, line, rectangle, words } from '../../charts/shapes.js';

interface Slot {
  readonly position: number;
  readonly travel: number;
  readonly slotLength: number;
}

/** The top in plan with the line it is held along and its slots; where they are drawn larger the subtitle says so. Lengths in m. */
export function slotsDrawing(of: {
  readonly width: number;
  readonly fixed: number;
  readonly diameter: number;
  readonly slots: readonly Slot[];
}): ChartSpec {
  const { slots } = of;
  const w = of.width * 1000;
  const deep = w * 0.4;
  const times = enlargement(w, slots);
  const few = slots.length <= 9;
  // Of many slots the shortest and the longest are labelled.
  const sorted = [...slots].sort((a, b) => a.slotLength - b.slotLength);
  const labelled = few ? slots : [sorted[0], sorted[sorted.length - 1]];
  return drawing({
    title: 'The top in plan, with its slots',
    subtitle:
      times > 1
        ? `Slots drawn ${times} times their size; length and travel in mm.`
        : 'Length and travel in mm.',
    shapes: [
      rectangle(0, 0, w, deep, { fill: 'wood', hatch: 'grainUp' }),
      ...heldLine(of.fixed * 1000, w, deep),
      ...slots.flatMap((s, i) => {
        const y = deep * (few ? 0.5 : i % 2 === 0 ? 0.62 : 0.38);
        return slotShapes(s, y, times, of.diameter * 1000 * times, labelled.includes(s));
      }),
      dimension([w, 0], [0, 0], `${w.toFixed(0)} mm across the grain`, 16),
    ],
  });
}

/** A slot of 10 mm in a top of a metre would be a speck, so slots are drawn up to 8 times their size. */
function enlargement(width: number, slots: readonly Slot[]): number {
  const longest = Math.max(...slots.map((s) => s.slotLength)) * 1000;
  const room = width / Math.max(3, slots.length * 1.6);
  return Math.max(1, Math.min(8, Math.round(room / Math.max(1, longest))));
}

const heldLine = (fixed: number, w: number, deep: number): Shape[] => [
  line([fixed, -deep * 0.06], [fixed, deep * 1.06], { dashed: true }),
  words(fixed, deep * 1.06, 'held here', {
    dy: 10,
    align: fixed < w * 0.08 ? 'left' : fixed > w * 0.92 ? 'right' : 'center',
  }),
];

function slotShapes(s: Slot, y: number, times: number, high: number, labelled: boolean): Shape[] {
  const x = s.position * 1000;
  const long = s.slotLength * 1000 * times;
  const below = y - high / 2;
  return [
    rectangle(x - long / 2, below, long, high, { fill: 'ground' }),
    { kind: 'circle', x, y, radius: high / 2, fill: 'accent' },
    ...(labelled
      ? [
          words(x, below, `${(s.slotLength * 1000).toFixed(1)} mm`, { dy: -14, bold: true }),
          words(x, below, `travel ${(s.travel * 1000).toFixed(1)}`, { dy: -29, size: 11 }),
        ]
      : []),
  ];
}
