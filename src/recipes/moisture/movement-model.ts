// How much a piece moves across the grain: the two published equations, when each holds, and what to do where the data
// give only one. Shared by the recipes of this topic.
import { InputError } from '../../units/input-error.js';
import type { Trace } from '../../engine/trace.js';
import type { PropertyRange } from '../../materials/property-range.js';
import type { Timber } from '../../materials/timber.js';
import { coefficientRange, coefficientRule, greenRule } from './movement-formulas.js';
import { curveChange, tellDisagreement, traceCurve, type CurveFigures } from './size-curve.js';
import { inRange, type Piece, type Rule } from './moved-piece.js';
import { explain, ringLine } from './movement-workings.js';
import { cutWords, type Cut } from './wood-state.js';

export * from './movement-formulas.js';
export type { Piece, Rule } from './moved-piece.js';
export { spreadCautions } from './movement-cautions.js';

// Boards of one species differ: about 15 % coefficient of variation, so four boards in five lie within 1.28 times that.
const scatter = 1.2816 * 0.15;
/** The figure at the lower and the upper end of what is expected: a group's percentiles, or a species' scatter. */
export function expected(figure: PropertyRange, timber: Timber): [number, number] {
  const wide = timber.isGroup ? 0 : scatter;
  return [figure.low * (1 - wide), figure.high * (1 + wide)];
}

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

/** Says which direction is published, and what to give instead. */
function lackingDirection(timber: Timber, cut: Cut, tangential: boolean): InputError {
  const only = tangential ? 'flat-sawn' : 'quarter-sawn';
  return new InputError({
    field: 'cut',
    message: `${timber.name} has a published figure for ${only} timber alone; got ${cutWords(cut)}, takes "${only}", or give "unknown ${timber.group === 'softwood' ? 'softwood' : 'hardwood'}" as the timber`,
  });
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
  throw lackingDirection(timber, cut, Boolean(m?.tangential ?? s?.tangential));
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
    if (!forced) compareFigures(trace, piece, a, b);
    if (!piece.cut.unknown && piece.cut.angle > 0 && piece.cut.angle < Math.PI / 2)
      ringLine(trace, piece, rule);
    if (rule === 'both') traceCurve(trace, curveOf(ruled, f), piece.width, a, b);
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

/** Says so where the two published figures of a timber differ over a change. */
function compareFigures(trace: Trace, piece: Piece, a: number, b: number): void {
  const { across } = keptRules(piece.timber, piece.cut);
  if (across.rule === 'both')
    tellDisagreement(
      trace,
      piece.timber.name,
      curveOf(across, saturationOf(piece.timber)),
      piece.width,
      a,
      b,
    );
}

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
