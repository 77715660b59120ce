import { note, outOfRange } from '../../engine/caution.js';
import { cite } from '../../engine/source.js';
import type { Trace } from '../../engine/trace.js';
import { citeTimber, tellOthers } from '../../materials/timber-field.js';
import { inRange, type Piece, type Rule } from './moved-piece.js';
import { coefficientSource, ringRule, ringShrinkage } from './movement-formulas.js';

/** Names the sources of a piece's figures and says why its rule holds. */
export function explain(trace: Trace, piece: Piece, rule: Rule, from: number, to: number, f: number): void {
  const { timber } = piece;
  if (rule !== 'green shrinkage') citeTimber(trace, timber, timber.movement());
  if (rule === 'green shrinkage' || rule === 'both') citeTimber(trace, timber, timber.shrinkage());
  if (rule !== 'green shrinkage') tellOthers(trace, timber);
  const p = (x: number): string => `${Number((x * 100).toFixed(1))} %`;
  if (rule === 'both')
    trace.note(
      `${p(from)} to ${p(to)} crosses the end of the 6 to 14 % for which coefficients hold: the coefficient of ${timber.name} is used inside, its shrinkage from green outside, so that the width has no jump.`,
    );
  else if (rule === 'coefficient')
    trace.note(`Both moistures lie within 6 to 14 %, so the coefficient of ${timber.name} is used.`);
  else if (rule === 'green shrinkage') {
    trace.note(
      inRange(from, to)
        ? `No coefficient is published for ${timber.name} in this direction, so its shrinkage from green is used.`
        : `${p(from)} to ${p(to)} leaves the 6 to 14 % for which coefficients hold, so the shrinkage from green is used for the whole change.`,
    );
  } else
    trace.warn(
      outOfRange(
        `${timber.name}: the coefficient is published for about 6 to 14 % moisture and no shrinkage from green is at hand, so it was used beyond its range`,
        coefficientSource,
      ),
    );
  if (Math.max(from, to) > f)
    trace.warn(
      note(
        `wood does not move above fibre saturation: moisture was counted up to ${p(f)}`,
        cite('fpl-gtr-190', 'p. 13-17'),
      ),
    );
}

/** The workings of a ring angle between flat and quarter. */
export function ringLine(trace: Trace, piece: Piece, rule: Rule): void {
  const theta = piece.cut.angle;
  // An angle between flat and quarter is accepted only where both directions are published.
  const { tangential: C_T, radial: C_R } = piece.timber.movement() ?? {};
  if (rule !== 'green shrinkage' && C_T && C_R)
    trace.evaluate(ringRule, { C_T: C_T.middle / 100, C_R: C_R.middle / 100, theta });
  const { tangential: S_T, radial: S_R } = piece.timber.shrinkage() ?? {};
  if ((rule === 'green shrinkage' || rule === 'both') && S_T && S_R)
    trace.evaluate(ringShrinkage, { S_T: S_T.middle, S_R: S_R.middle, theta });
}
