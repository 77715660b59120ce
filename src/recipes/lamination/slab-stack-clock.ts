// The clock of a stack: each slab is spread and laid together in turn, and all wait for the clamps. Seconds.
import type { Parsed } from '../../engine/field.js';
import type { Trace } from '../../engine/trace.js';
import { openHere } from './glue-timing.js';
import type { slabStackFields } from './slab-stack-fields.js';

type Given = Parsed<typeof slabStackFields>;
interface Turn {
  readonly slab: number;
  readonly glueLines: number;
}
interface Times {
  readonly perLine: number;
  readonly clampsUp: number;
  readonly open: number;
  readonly closed: number | undefined;
}

/** When each slab is spread, laid together and pressed, and the least time left over. */
function runOf(turns: readonly Turn[], times: Times) {
  const end = turns.reduce((n, s) => n + s.glueLines, 0) * times.perLine + times.clampsUp;
  let clock = 0;
  const order = turns.map((s, i) => {
    const start = clock;
    clock += s.glueLines * times.perLine;
    return { step: i + 1, slab: s.slab, start, closed: clock, waits: end - clock };
  });
  // With a closed time a slab is laid together within the open time and pressed within the closed one.
  const spare = Math.min(
    ...order.map((row) =>
      times.closed === undefined
        ? times.open - (end - row.start)
        : Math.min(times.open - (row.closed - row.start), times.closed - row.waits),
    ),
  );
  return { order, spare };
}

const slack = 1e-9;

/**
 * The order from the bottom up, the slab with most glue lines first, since it waits longest laid together; the least time
 * left over, and the glue-ups it takes where that is below zero.
 */
export function clockOf(given: Given, trace: Trace) {
  const here = (O: number, label: string): number =>
    given.temperature === undefined ? O : trace.evaluate(openHere, { O, T: given.temperature }, label);
  const times: Times = {
    perLine: given.perLine,
    clampsUp: given.clampsUp,
    open: here(given.openTime, 'open time in this air'),
    closed: given.closedTime === undefined ? undefined : here(given.closedTime, 'closed time in this air'),
  };
  const turns = given.slabs
    .map((s, i) => ({ slab: i + 1, glueLines: s.glueLines }))
    .sort((a, b) => b.glueLines - a.glueLines);
  const { order, spare } = runOf(turns, times);
  let batches = 1;
  let batch: Turn[] = [];
  for (const turn of turns) {
    if (batch.length > 0 && runOf([...batch, turn], times).spare < -slack) {
      batches++;
      batch = [];
    }
    batch.push(turn);
  }
  return { open: times.open, order, spare, inTime: spare >= -slack, batches };
}
