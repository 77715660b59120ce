// What helps where the glue skins before the clamps are on.
import { formatTime } from '../../units/format-time.js';
import type { Remedy } from '../../engine/mending.js';

const seconds = { step: 1, kind: 'time' } as const;
const quicker = (input: string, say: string): Remedy => ({ ...seconds, input, direction: 'down', say });
const slower: Remedy = {
  input: 'openTime',
  direction: 'up',
  step: 60,
  kind: 'time',
  say: 'take a glue with an open time of {value}',
};

/** Joints glued in batches. */
export const slowerGlue: readonly Remedy[] = [
  {
    input: 'joints',
    direction: 'down',
    step: 1,
    kind: 'count',
    // Fewer joints in as many batches: what counts is the joints of one.
    say: (out) => `glue ${fullest(out as unknown as Planned).joints} joints at a time`,
  },
  slower,
  quicker('perJoint', 'spread a joint in {value}'),
];

/** A stack of slabs pressed at once. */
export const quickerStack: readonly Remedy[] = [
  slower,
  quicker('perLine', 'spread a line in {value}'),
  quicker('clampsUp', 'set the clamps in {value}'),
];

export const longerClamps: Remedy = {
  input: 'reach',
  direction: 'up',
  step: 0.01,
  kind: 'length',
  reach: 10,
  say: 'take clamps that reach {value}',
};

interface Planned {
  readonly openHere: number;
  readonly plan: readonly { readonly joints: number; readonly spare: number }[];
}

const nearest = ({ plan }: Planned) => plan.reduce((a, b) => (b.spare < a.spare ? b : a));

/** The batch with the least open time left over. */
export function fullest(answer: Planned): { readonly joints: number; readonly left: string } {
  const { joints, spare } = nearest(answer);
  return { joints, left: formatTime(spare) };
}

export const tooTight = (answer: Planned): boolean => nearest(answer).spare < 0.1 * answer.openHere;
