import { InputError } from '../../units/input-error.js';
import type { Trace } from '../../engine/trace.js';
import { measuredForce, printedPressure, timberKinds, type MeasuredClamp } from './gluing-data.js';

/** The pressure given, or the upper end of what is printed for a kind of timber. @throws InputError without exactly one */
export function pressureOf(
  given: {
    readonly pressure: number | undefined;
    readonly timberKind: (typeof timberKinds)[number] | undefined;
  },
  trace: Trace,
): number {
  if ((given.pressure === undefined) === (given.timberKind === undefined)) {
    throw new InputError({
      field: 'pressure',
      message: `got ${given.pressure === undefined ? 'neither pressure nor timberKind' : 'both pressure and timberKind'}, takes one of them; timberKind is one of ${timberKinds.join(', ')}`,
    });
  }
  if (given.timberKind === undefined) return given.pressure as number;
  const printed = printedPressure(given.timberKind);
  if (trace.silent) return printed.high;
  const mpa = (pa: number): string => `${Number((pa / 1e6).toPrecision(3))} MPa`;
  trace.note(
    `Printed for ${given.timberKind}: ${printed.low === printed.high ? mpa(printed.high) : `${mpa(printed.low)} to ${mpa(printed.high)}; the upper end is taken, for too little pressure spoils more joints than too much`}.`,
    printed.citation,
  );
  return printed.high;
}

/** The force given, or the mean measured of a kind of clamp. */
export function forceOf(given: number | string, trace: Trace): number {
  if (typeof given === 'number') return given;
  const measured = measuredForce(given as MeasuredClamp);
  if (!trace.silent)
    trace.note(`Measured mean force, ${given}: ${Math.round(measured.force)} N.`, measured.citation);
  return measured.force;
}
