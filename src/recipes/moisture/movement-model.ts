// How much a piece moves across the grain: the two published equations, when each holds, and what to do where the data
// give only one. Shared by the recipes of this topic.
import { InputError } from '../../units/input-error.js';
import { note, outOfRange } from '../../engine/caution.js';
import { cite } from '../../engine/source.js';
import type { Trace } from '../../engine/trace.js';
import { citeTimber, tellOthers } from '../../materials/timber-field.js';
import type { PropertyRange } from '../../materials/property-range.js';
import type { Timber } from '../../materials/timber.js';
import {
  coefficientRange,
  coefficientRule,
  coefficientSource,
  greenRule,
  ringRule,
  ringShrinkage,
} from './movement-formulas.js';
import { curveChange, traceCurve, type CurveFigures } from './size-curve.js';
import { cutWords, type Cut } from './wood-state.js';

export * from './movement-formulas.js';
export { spreadCautions } from './movement-cautions.js';

// Boards of one species differ: about 15 % coefficient of variation, so four boards in five lie within 1.28 times that.
const scatter = 1.2816 * 0.15;
/** The figure at the lower and the upper end of what is expected: a group's percentiles, or a species' scatter. */
export function expected(figure: PropertyRange, timber: Timber): [number, number] {
  const wide = timber.isGroup ? 0 : scatter;
  return [figure.low * (1 - wide), figure.high * (1 + wide)];
}

export interface Piece {
  /** Row of the table of strips, counted from 1. */
  readonly row?: number;
  readonly width: number;
  readonly timber: Timber;
  readonly cut: Cut;
}
/** `both`: the coefficient from 6 to 14 %, the shrinkage from green below and above. */
export type Rule = 'coefficient' | 'green shrinkage' | 'both' | 'coefficient beyond its range';
/** What a change of moisture does to a width. */
export interface Moved {
  /** Change of width, positive = wider; `low` and `high` in order of number. */
  readonly change: number;
  readonly low: number;
  readonly high: number;
  /** Change for each per cent of moisture, of the middle value. */
  readonly perPercent: number;
  readonly rule: Rule;
}
/** A rule and the figure it runs on. */
export interface Ruled {
  readonly rule: Rule;
  readonly figure: PropertyRange;
  /** Of `both`: the shrinkage from green. */
  readonly outside?: PropertyRange;
}

/** A figure for a ring angle, from those along (T) and across (R) the rings; undefined where one is wanting. */
function atAngle(
  T: PropertyRange | undefined,
  R: PropertyRange | undefined,
  cut: Cut,
): PropertyRange | undefined {
  if (cut.unknown)
    return (
      T &&
      R && { low: Math.min(R.low, T.low), middle: (T.middle + R.middle) / 2, high: Math.max(T.high, R.high) }
    );
  if (cut.angle === 0) return T;
  if (cut.angle === Math.PI / 2) return R;
  if (!T || !R) return undefined;
  const [c, s] = [Math.cos(cut.angle) ** 2, Math.sin(cut.angle) ** 2];
  return { low: c * T.low + s * R.low, middle: c * T.middle + s * R.middle, high: c * T.high + s * R.high };
}

/** Whether both moistures lie within the range of the coefficients. */
function inRange(from: number, to: number): boolean {
  return (
    coefficientRange.low - 1e-9 <= Math.min(from, to) && Math.max(from, to) <= coefficientRange.high + 1e-9
  );
}

interface Rules {
  readonly inside: Ruled;
  readonly outside: Ruled;
  /** For a change that crosses the end of the range. */
  readonly across: Ruled;
}
const rulesKept = new WeakMap<Timber, WeakMap<Cut, Rules>>();

/** {@link rulesOf}, looked up once for a timber and a cut: a sweep asks at every point. */
function keptRules(timber: Timber, cut: Cut): Rules {
  let cuts = rulesKept.get(timber);
  if (!cuts) rulesKept.set(timber, (cuts = new WeakMap()));
  let rules = cuts.get(cut);
  if (!rules) cuts.set(cut, (rules = rulesOf(timber, cut)));
  return rules;
}

/** The rules of a timber within the range of the coefficients and outside it. @throws InputError when the data lack the direction */
export function rulesOf(timber: Timber, cut: Cut): Rules {
  const m = timber.movement();
  const s = timber.shrinkage();
  const C = atAngle(m?.tangential, m?.radial, cut);
  const S = atAngle(s?.tangential, s?.radial, cut);
  const coefficient = C && ({ rule: 'coefficient', figure: C } as const);
  const green = S && ({ rule: 'green shrinkage', figure: S } as const);
  const inside = coefficient ?? green;
  if (inside) {
    const outside = green ?? { ...inside, rule: 'coefficient beyond its range' as const };
    const across = coefficient && green ? ({ rule: 'both', figure: C, outside: S } as const) : outside;
    return { inside, outside, across };
  }
  const only = m?.tangential || s?.tangential ? 'flat-sawn' : 'quarter-sawn';
  throw new InputError({
    field: 'cut',
    message: `${timber.name} has a published figure for ${only} timber alone; got ${cutWords(cut)}, takes "${only}", or give "unknown ${timber.group === 'softwood' ? 'softwood' : 'hardwood'}" as the timber`,
  });
}

/** A rule at the lower (0) or the upper (1) end of what is expected of a timber. */
export function atEnd(rule: Ruled, timber: Timber, end: 0 | 1): Ruled {
  const only = (figure: PropertyRange): PropertyRange => {
    const value = expected(figure, timber)[end];
    return { low: value, middle: value, high: value };
  };
  return {
    rule: rule.rule,
    figure: only(rule.figure),
    ...(rule.outside ? { outside: only(rule.outside) } : {}),
  };
}

/** Which rule holds for a timber between two moistures, and the figures it runs on. @throws InputError when the data lack the direction */
export function ruleFor(timber: Timber, cut: Cut, from: number, to: number): Ruled {
  const rules = keptRules(timber, cut);
  if (inRange(from, to)) return rules.inside;
  const { low, high } = coefficientRange;
  return Math.max(from, to) <= low || Math.min(from, to) >= high ? rules.outside : rules.across;
}

/** Above fibre saturation wood holds its size: moisture counts up to there. */
export function saturationOf(timber: Timber): number {
  return timber.shrinkage()?.fibreSaturation ?? 0.3;
}

/** The change of width of one piece, calculated on one curve over the whole change; notes the rules. */
export function moveAcross(trace: Trace, piece: Piece, from: number, to: number, forced?: Ruled): Moved {
  const f = saturationOf(piece.timber);
  const [a, b] = [Math.min(from, f), Math.min(to, f)];
  const ruled = forced ?? ruleFor(piece.timber, piece.cut, a, b);
  const { rule, figure } = ruled;
  if (!trace.silent) {
    explain(trace, piece, rule, from, to, f);
    if (!piece.cut.unknown && piece.cut.angle > 0 && piece.cut.angle < Math.PI / 2)
      ringLine(trace, piece, rule);
    if (rule === 'both') traceCurve(trace, piece.timber.name, curveOf(ruled, f), piece.width, a, b);
    else if (rule === 'green shrinkage')
      trace.evaluate(greenRule, { D: piece.width, M_F: b, M_I: a, f, S: figure.middle });
    else trace.evaluate(coefficientRule, { D: piece.width, C: figure.middle / 100, M_F: b, M_I: a });
  }
  return movesBy(ruled, piece.timber, piece.width, a, b);
}

/** The middle figures of a rule that runs on both. */
const curveOf = (ruled: Ruled, saturation: number): CurveFigures => ({
  coefficient: ruled.figure.middle,
  shrinkage: (ruled.outside ?? ruled.figure).middle,
  saturation,
});

/** The change by one rule between two moistures up to fibre saturation `f`. */
function movesBy(ruled: Ruled, timber: Timber, D: number, M_I: number, M_F: number): Moved {
  const { rule, figure, outside } = ruled;
  const f = saturationOf(timber);
  const green = rule === 'green shrinkage';
  const change = (value: number, shrinkage: number): number =>
    rule === 'both'
      ? curveChange({ coefficient: value, shrinkage, saturation: f }, D, M_I, M_F)
      : green
        ? greenRule.evaluate({ D, M_F, M_I, f, S: value })
        : coefficientRule.evaluate({ D, C: value / 100, M_F, M_I });
  const [low, high] = expected(figure, timber);
  const [lowOut, highOut] = outside ? expected(outside, timber) : [low, high];
  const x = change(low, lowOut);
  const y = change(high, highOut);
  const middle = change(figure.middle, outside?.middle ?? figure.middle);
  const slope = green ? 1 / ((f * 100) / figure.middle - f * 100 + M_I * 100) : figure.middle / 100;
  // Adding 0 turns -0 into 0: no change of moisture gives exactly no movement.
  return {
    change: middle + 0,
    low: Math.min(x, y) + 0,
    high: Math.max(x, y) + 0,
    perPercent: M_I === M_F ? slope : middle / D / ((M_F - M_I) * 100),
    rule,
  };
}

function explain(trace: Trace, piece: Piece, rule: Rule, from: number, to: number, f: number): void {
  const { timber } = piece;
  citeTimber(trace, timber, rule === 'green shrinkage' ? timber.shrinkage() : timber.movement());
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

function ringLine(trace: Trace, piece: Piece, rule: Rule): void {
  const theta = piece.cut.angle;
  // The rule holds between flat and quarter only where both directions are published.
  const m = (rule === 'green shrinkage' ? piece.timber.shrinkage() : piece.timber.movement()) as {
    readonly tangential: PropertyRange;
    readonly radial: PropertyRange;
  };
  if (rule === 'green shrinkage')
    trace.evaluate(ringShrinkage, { S_T: m.tangential.middle, S_R: m.radial.middle, theta });
  else trace.evaluate(ringRule, { C_T: m.tangential.middle / 100, C_R: m.radial.middle / 100, theta });
}
