import { timeline, type Stretch } from '../../charts/timeline.js';

/** A time in a sentence or on a chart: seconds below a minute, minutes above. */
export const minutes = (seconds: number): string =>
  seconds < 60 ? `${Number(seconds.toFixed(1))} s` : `${Number((seconds / 60).toFixed(1))} min`;

/** The batches, each on a clock that starts with its own first glue. */
export function clockChart(
  given: {
    readonly clampsUp: number;
    readonly hold: number;
    readonly openTime: number;
    readonly closedTime: number | undefined;
  },
  answer: {
    readonly openHere: number;
    readonly plan: readonly {
      readonly batch: number;
      readonly joints: number;
      readonly start: number;
      readonly closed: number;
      readonly clampsOff: number;
      readonly spare: number;
    }[];
  },
) {
  // The hold is long beside the rest: with several batches it would squeeze the minutes that matter, so each batch has a clock of its own.
  const shown = answer.plan.slice(0, 5);
  const min = (s: number): number => s / 60;
  const closed =
    given.closedTime === undefined ? undefined : (given.closedTime * answer.openHere) / given.openTime;
  const stretches = shown.flatMap((b): Stretch[] => {
    const t = min(b.closed - b.start);
    return [
      { name: `Batch ${b.batch}: spread ${b.joints} joint${b.joints === 1 ? '' : 's'}`, start: 0, end: t },
      ...(given.clampsUp > 0
        ? [{ name: `Batch ${b.batch}: set clamps`, start: t, end: t + min(given.clampsUp) }]
        : []),
      {
        name: `Batch ${b.batch}: first glue is wet`,
        start: 0,
        end: min(answer.openHere),
        waiting: true,
        note: `${minutes(b.spare)} to spare`,
      },
      ...(closed === undefined
        ? []
        : [
            {
              name: `Batch ${b.batch}: closed joint may wait`,
              start: t,
              end: t + min(closed),
              waiting: true,
            },
          ]),
    ];
  });
  return timeline({
    title: 'Will the glue skin before the clamps are on?',
    subtitle: `Each batch from its own first glue${answer.plan.length > shown.length ? `; the first ${shown.length} of ${answer.plan.length} batches` : ''}. Clamps then stay on ${minutes(given.hold)}.`,
    unit: 'min',
    stretches,
  });
}
