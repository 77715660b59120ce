// How much a piece moves across the grain: the two published equations, when each holds, and what to do where the data
// give only one. Shared by the recipes of this topic.
import { InputError } from '../../units/input-error.js';
import { estimate, note, outOfRange, type Caution } from '../../engine/caution.js';
import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';
import type { Trace } from '../../engine/trace.js';
import { citeTimber, tellOthers } from '../../materials/timber-field.js';
import type { PropertyRange } from '../../materials/property-range.js';
import type { Timber } from '../../materials/timber.js';
import { cutWords, type Cut } from './wood-state.js';

export const coefficientSource = cite('fpl-gtr-190', 'Eq. 13-2, p. 13-15');
export const greenSource = cite('fpl-gtr-190', 'Eq. 13-3, p. 13-17', { read: 'memory' });
const scatterSource = cite('fpl-gtr-190', 'ch. 4, variability of shrinkage', { read: 'memory' });

const D = variable('length', 'size across the grain at the first moisture', { unit: 'mm' });
const first = variable('moisture', 'moisture at first', { unit: '%' });
const last = variable('moisture', 'moisture at last', { unit: '%' });
const change = variable('length', 'change of size across the grain', { unit: 'mm' });
const theta = variable('angle', 'angle of the rings to the face', { unit: 'deg' });

export const coefficientRule = formula({
  symbol: 'Delta_D',
  result: change,
  source: coefficientSource,
  expression: 'D * C * (M_F - M_I)',
  variables: {
    D,
    C: variable('ratio', 'change of size for each per cent of moisture'),
    M_F: last,
    M_I: first,
  },
});
export const greenRule = formula({
  symbol: 'Delta_D',
  result: change,
  source: greenSource,
  expression: 'D * (M_F - M_I) / (100 f / S - f + M_I)',
  variables: {
    D,
    M_F: last,
    M_I: first,
    f: variable('moisture', 'moisture at fibre saturation', { unit: '%' }),
    S: variable('share', 'shrinkage from green to ovendry', { unit: '%' }),
  },
});
export const ringRule = formula({
  symbol: 'C',
  result: variable('ratio', 'coefficient for rings at an angle to the face'),
  basis: 'estimate',
  expression: 'C_T * cos(pi * theta / 180)^2 + C_R * sin(pi * theta / 180)^2',
  variables: { C_T: variable('ratio', 'along the rings'), C_R: variable('ratio', 'across the rings'), theta },
});
export const ringShrinkage = formula({
  symbol: 'S',
  result: variable('share', 'shrinkage for rings at an angle to the face', { unit: '%' }),
  basis: 'estimate',
  expression: 'S_T * cos(pi * theta / 180)^2 + S_R * sin(pi * theta / 180)^2',
  variables: {
    S_T: variable('share', 'along the rings', { unit: '%' }),
    S_R: variable('share', 'across the rings', { unit: '%' }),
    theta,
  },
});
export const movementFormulas = [coefficientRule, greenRule, ringRule, ringShrinkage] as const;

/** Moisture range for which coefficients are published. */
export const coefficientRange = { low: 0.06, high: 0.14 } as const;
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
export type Rule = 'coefficient' | 'green shrinkage' | 'coefficient beyond its range';
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
function rulesOf(timber: Timber, cut: Cut): Rules {
  const m = timber.movement();
  const s = timber.shrinkage();
  const C = atAngle(m?.tangential, m?.radial, cut);
  const S = atAngle(s?.tangential, s?.radial, cut);
  const coefficient = C && ({ rule: 'coefficient', figure: C } as const);
  const green = S && ({ rule: 'green shrinkage', figure: S } as const);
  const inside = coefficient ?? green;
  if (inside) return { inside, outside: green ?? { ...inside, rule: 'coefficient beyond its range' } };
  const only = m?.tangential || s?.tangential ? 'flat-sawn' : 'quarter-sawn';
  throw new InputError({
    field: 'cut',
    message: `${timber.name} has a published figure for ${only} timber alone; got ${cutWords(cut)}, takes "${only}", or give "unknown ${timber.group === 'softwood' ? 'softwood' : 'hardwood'}" as the timber`,
  });
}

/** Which rule holds for a timber between two moistures, and the figures it runs on. @throws InputError when the data lack the direction */
export function ruleFor(timber: Timber, cut: Cut, from: number, to: number): Ruled {
  const rules = keptRules(timber, cut);
  return inRange(from, to) ? rules.inside : rules.outside;
}

/** Above fibre saturation wood holds its size: moisture counts up to there. */
export function saturationOf(timber: Timber): number {
  return timber.shrinkage()?.fibreSaturation ?? 0.3;
}

/** The change of width of one piece, calculated with one rule over the whole change; notes why that rule. */
export function moveAcross(trace: Trace, piece: Piece, from: number, to: number, forced?: Ruled): Moved {
  const f = saturationOf(piece.timber);
  const [a, b] = [Math.min(from, f), Math.min(to, f)];
  const ruled = forced ?? ruleFor(piece.timber, piece.cut, a, b);
  const { rule, figure } = ruled;
  if (!trace.silent) {
    explain(trace, piece, rule, from, to, f);
    if (!piece.cut.unknown && piece.cut.angle > 0 && piece.cut.angle < Math.PI / 2)
      ringLine(trace, piece, rule);
    if (rule === 'green shrinkage')
      trace.evaluate(greenRule, { D: piece.width, M_F: b, M_I: a, f, S: figure.middle });
    else trace.evaluate(coefficientRule, { D: piece.width, C: figure.middle / 100, M_F: b, M_I: a });
  }
  return movesBy(ruled, piece.timber, piece.width, a, b);
}

/** The change by one rule between two moistures up to fibre saturation `f`. */
function movesBy({ rule, figure }: Ruled, timber: Timber, D: number, M_I: number, M_F: number): Moved {
  const f = saturationOf(timber);
  const green = rule === 'green shrinkage';
  const change = (value: number): number =>
    green
      ? greenRule.evaluate({ D, M_F, M_I, f, S: value })
      : coefficientRule.evaluate({ D, C: value / 100, M_F, M_I });
  const [low, high] = expected(figure, timber);
  const [x, y, middle] = [change(low), change(high), change(figure.middle)];
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
  if (rule === 'coefficient')
    trace.note(`Both moistures lie within 6 to 14 %, so the coefficient of ${timber.name} is used.`);
  else if (rule === 'green shrinkage') {
    trace.note(
      inRange(from, to)
        ? `No coefficient is published for ${timber.name} in this direction, so its shrinkage from green is used.`
        : `${p(from)} to ${p(to)} leaves the 6 to 14 % for which coefficients hold${Math.min(from, to) < 0.14 && Math.max(from, to) > 0.06 ? ' (it crosses the range)' : ''}, so the shrinkage from green is used for the whole change.`,
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

/** What low and high mean, for the recipes that show them. */
export function spreadCautions(pieces: readonly { readonly timber: Timber; readonly cut: Cut }[]): Caution[] {
  return [
    ...(pieces.some((p) => !p.timber.isGroup)
      ? [
          estimate(
            'low and high are where four boards of the species in five are expected, from a coefficient of variation of about 15 %',
            scatterSource,
          ),
        ]
      : []),
    ...(pieces.some((p) => p.cut.unknown)
      ? [estimate('the sawing is not known: low and high run from quarter-sawn to flat-sawn')]
      : []),
  ];
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
