import { extent } from './axis.js';
import type { LineChart, Mark } from './line-chart-data.js';
import { textWidth } from './text-width.js';

/** A point or a bend of a line, in px from the plot's lower left corner. */
export type Spot = readonly [x: number, y: number];

/** Where the words of a mark stand: to its right or left, above or below it. */
export interface MarkPlace {
  readonly right: boolean;
  readonly above: boolean;
}

/** Gap between point and words, and the height of a line of words, px. */
const aside = 8;
const off = 7;
const tall = 12;

/**
 * The place beside `at` where no line runs through the words: above before below, toward the middle before outward.
 * Where lines run everywhere the words stand above, toward the middle, and are legible by their rim.
 */
export function markPlace(
  at: Spot,
  words: string,
  lines: readonly (readonly Spot[])[],
  size: Spot,
): MarkPlace {
  const wide = textWidth(words, 12, true);
  const inward = at[0] <= size[0] / 2;
  const places = [inward, !inward].flatMap((right) => [true, false].map((above) => ({ right, above })));
  const free = places.find(({ right, above }) => {
    const left = right ? at[0] + aside : at[0] - aside - wide;
    const bottom = above ? at[1] + off : at[1] - off - tall;
    if (left < 0 || left + wide > size[0] || bottom < 0) return false;
    return !lines.some((line) => runsThrough(line, left, bottom, left + wide, bottom + tall));
  });
  return free ?? { right: inward, above: true };
}

/** Whether a line of straight pieces, x rising, meets a box. */
function runsThrough(
  line: readonly Spot[],
  left: number,
  bottom: number,
  right: number,
  top: number,
): boolean {
  return line.slice(1).some(([bx, by], i) => {
    const [ax, ay] = line[i] as Spot;
    if (bx < left || ax > right) return false;
    const height = (x: number): number => (bx === ax ? by : ay + ((by - ay) * (x - ax)) / (bx - ax));
    const ends = bx === ax ? [ay, by] : [height(Math.max(ax, left)), height(Math.min(bx, right))];
    return Math.max(...ends) >= bottom && Math.min(...ends) <= top;
  });
}

/** Finds the place of a mark's words by where the lines of the chart will run, in px of a plot of this size. */
export function placesIn(
  chart: LineChart,
  from: number,
  to: number,
  wide: number,
  high: number,
): (mark: Mark) => MarkPlace {
  const ys = [
    ...chart.series.flatMap((s) => s.values.filter((v) => v !== null)),
    ...(chart.bands ?? []).flatMap((b) => [...b.low, ...b.high]),
    ...(chart.rules ?? []).flatMap((r) => r.y ?? []),
    ...(chart.y.zero ? [0] : []),
  ];
  const [low, top] = chart.y.domain ?? extent(ys);
  const spot = (x: number, y: number): Spot => [
    (wide * (x - from)) / (to - from),
    (high * (y - low)) / (top - low),
  ];
  const lines = [
    ...chart.series.map((s) =>
      chart.x.values.flatMap((x, i) =>
        [s.values[i]].flatMap((v) => (v === null || v === undefined ? [] : [spot(x, v)])),
      ),
    ),
    ...(chart.rules ?? []).map((r) =>
      r.x === undefined
        ? [spot(from, r.y as number), spot(to, r.y as number)]
        : [spot(r.x, low), spot(r.x, top)],
    ),
  ];
  return (mark) => markPlace(spot(mark.x, mark.y), mark.label ?? '', lines, [wide, high]);
}
