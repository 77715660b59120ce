// Whether a row of strips stays flat under its clamps: thin and wide it bows, and wet joints open on one face.
import { danger, note, type Caution } from '../../engine/caution.js';
import type { Trace } from '../../engine/trace.js';
import { mm } from './salvage-caution.js';
import { bowUnderClamps, bucklingForce, liftingForce } from './slab-buckling.js';

interface Given {
  readonly length: number;
  readonly jointHeight: number;
  readonly slabWidth?: number | undefined;
  readonly offset: number;
  readonly acrossModulus: number;
  readonly cauls: boolean;
}

/** Forces at which the slab opens on one face and bows, where its width is given, with the bow before that. */
export function flatness(given: Given, force: number, trace: Trace) {
  if (given.slabWidth === undefined) return {};
  const t = given.jointHeight;
  const F_cr = trace.evaluate(bucklingForce, {
    E_x: given.acrossModulus,
    L: given.length,
    t,
    W: given.slabWidth,
  });
  const F_o = trace.evaluate(liftingForce, { F_cr, e: given.offset, t });
  if (force < F_cr) trace.evaluate(bowUnderClamps, { e: given.offset, F: force, F_cr });
  return { bucklingForce: F_cr, liftForce: F_o };
}

const kN = (newtons: number): string => `${Number((newtons / 1000).toPrecision(2))} kN`;

/** Cautions of a slab that will not lie flat by itself. */
export function flatCautions(
  given: Given,
  answer: { readonly liftForce?: number | undefined; readonly totalForce: number },
): Caution[] {
  const { liftForce, totalForce } = answer;
  if (liftForce === undefined || given.slabWidth === undefined || liftForce >= totalForce) return [];
  const what = `${mm(given.slabWidth)} wide and ${mm(given.jointHeight)} thick, its joints open on one face from ${kN(liftForce)}, and the clamps give ${kN(totalForce)}`;
  return given.cauls
    ? [note(`${what}: the cauls hold it, so tighten them before the clamps, a little at a time`)]
    : [
        danger(
          `set cauls across both faces and clamps alternately below and above, or glue fewer strips at a time: ${what}, and it may jump up out of the clamps`,
        ),
      ];
}
