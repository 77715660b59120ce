// What mends a rail, a top or a frame that fails.
import type { OtherWay, Remedy } from '../../engine/mending.js';
import type { Fields } from '../../engine/field.js';

const millimetre = 0.001;

const longer = (input: string, say: string): Remedy => ({
  input,
  direction: 'up',
  step: millimetre,
  kind: 'length',
  say,
});

/** A solid or round section made larger: the depth counts most. */
export const largerSection: readonly Remedy[] = [
  longer('section.depth', 'make it {value} deep'),
  longer('section.diameter', 'make it {value} thick'),
  longer('section.width', 'make it {value} wide'),
];

export const thickerTop = longer('thickness', 'make it {value} thick');

/** The outer rails moved towards the ends. */
export const railsOutward: readonly Remedy[] = [
  { ...longer('supports.last', 'move the last rail to {value} from the left end'), reach: 1.5 },
  {
    ...longer('supports.0', 'move the first rail to {value} from the left end'),
    direction: 'down',
    reach: 0,
  },
];

/** One more support under the middle of the longest bay. */
export function moreSupport<F extends Fields, S>(
  placeOf: (support: S) => number,
  supportAt: (position: number) => S,
  say: string,
): OtherWay<F> {
  return {
    say,
    change: (given) => {
      const supports = (given as unknown as { supports: readonly S[] }).supports;
      const at = supports.map(placeOf).sort((a, b) => a - b);
      const gaps = at.slice(1).map((to, i) => ({ from: at[i] as number, to }));
      const [first, ...rest] = gaps;
      if (!first) return undefined;
      const widest = rest.reduce((a, b) => (b.to - b.from > a.to - a.from + 1e-9 ? b : a), first);
      const added = [...supports, supportAt((widest.from + widest.to) / 2)];
      const sorted = added.sort((a, b) => placeOf(a) - placeOf(b));
      return { ...given, supports: sorted };
    },
  };
}

/** A frame that gives along its top: more frames, wider legs or thicker pieces. */
export const rackingRemedies: readonly Remedy[] = [
  {
    input: 'frames',
    direction: 'up',
    step: 1,
    kind: 'count',
    say: 'share the push among {value} frames',
  },
  longer('section.depth', 'make the legs {value} wide in the plane of the frame'),
  longer('section.width', 'make the pieces {value} thick'),
];
