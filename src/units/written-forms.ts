// Ways of writing a quantity beyond a number and a unit, and what is asked back where the text does not say enough.
import { tidy } from './clean-number.js';
import { InputError, inspectValue } from './input-error.js';
import { kinds, type Kind } from './kind.js';
import { TextReader } from './text-reader.js';
import { unitOf, type Unit } from './unit.js';

/** What a kind takes, with a right example, for an error message. */
export const takesOf = (kind: Kind): string =>
  `takes ${kinds[kind].called} such as ${inspectValue(kinds[kind].example)}`;

/** 700 mm is 700 / 1000 m, not 700 * 0.001 m, which is off by the last binary digit. */
export function toBase(u: Unit, n: number): number {
  const many = tidy(1 / u.scale);
  return (Number.isInteger(many) ? n / many : n * u.scale) + u.offset;
}

/**
 * `1 h 30 min`, `2 lb 4 oz`: a whole number of the larger unit, then the smaller ones; undefined where one unit is all.
 * @throws InputError where the units do not go down
 */
export function compound(reader: TextReader, first: number, text: string, kind: Kind): number | undefined {
  const parts = /^([a-z]+) ?(\d.*)$/i.exec(reader.rest());
  if (!parts) return undefined;
  const [, unit, rest] = parts as unknown as [string, string, string];
  const larger = unitOf(kind, unit);
  const next = new TextReader(rest);
  const amount = next.number();
  next.match(/ +/y);
  if (amount === undefined || !Number.isInteger(first))
    throw new InputError(`got ${inspectValue(text)}, ${takesOf(kind)}`);
  // 1h30: minutes after hours need no unit.
  const bare = next.rest() === '' && larger.name === 'h' ? amount * 60 : undefined;
  const smaller = bare ?? compound(next, amount, text, kind) ?? toBase(unitOf(kind, next.rest()), amount);
  if (!(smaller < larger.scale))
    throw new InputError(
      `got ${inspectValue(text)}, ${takesOf(kind)}; in two units the second part is less than one of the first`,
    );
  return Math.sign(first) < 0 || Object.is(first, -0)
    ? toBase(larger, first) - smaller
    : toBase(larger, first) + smaller;
}

/** Rough lumber by quarters of an inch, `4/4` to `16/4`, in metres; undefined for any other text. */
export function quarters(plain: string, kind: Kind): number | undefined {
  if (kind !== 'length') return undefined;
  const n = Number(/^(\d{1,2}) ?\/ ?4$/.exec(plain)?.[1]);
  return n >= 4 && n <= 16 ? (n / 4) * 0.0254 : undefined;
}

/** The text with the unit of the kind's example, as it should have been written. */
export const withExampleUnit = (kind: Kind, text: string | number): string =>
  `${text}${/^[\d.e]+(.*)$/.exec(kinds[kind].example)?.[1] ?? ''}`;

/** The error of an amount whose unit is missing, with the corrected form. */
export const missingUnit = (kind: Kind, got: string | number): InputError =>
  new InputError(
    `got ${inspectValue(got)} with no unit, ${takesOf(kind)}; write ${inspectValue(withExampleUnit(kind, typeof got === 'string' ? got.trim() : got))}`,
  );

/**
 * The two sides of a section such as `45 x 95 mm`, `45 mm by 95 mm` or `1 1/2 x 3 1/2 in`, each with its unit.
 * @throws InputError saying what is missing, with the corrected form; `takes` tells what else the section may be
 */
export function twoSides(text: string, takes: string): { readonly first: string; readonly second: string } {
  const parts = text.length > 80 ? [] : text.replace(/×/g, 'x').split(/\s*(?:x|by)\s*/i);
  const [a, b, ...more] = parts.map((part) => part.trim());
  if (!a || !b || more.length > 0) throw new InputError(`got ${inspectValue(text)}, takes ${takes}`);
  const unit = /[^\d\s./½⅓⅔¼¾⅛⅜⅝⅞-]+$/.exec(b)?.[0] ?? '';
  const isBare = (side: string): boolean => /^[\d\s./½⅓⅔¼¾⅛⅜⅝⅞-]+$/.test(side);
  if (isBare(a) && isBare(b))
    throw new InputError(`${inspectValue(text.trim())} has no unit; write ${inspectValue(`${a} x ${b} mm`)}`);
  return { first: isBare(a) ? `${a} ${unit}` : a, second: b };
}

/** `40x70` may be two lengths, but of what unit? */
export const noUnit = (text: string, takes: string): InputError =>
  new InputError(
    `got ${inspectValue(text)} with no unit, ${takes}; two sides are written ${inspectValue(`${text.replace(/ ?x ?/i, ' x ')} mm`)} where a section is taken`,
  );

const gallons = /^(gal|gallons?|pt|pints?|qt|quarts?|floz|fl oz|fluid ounces?)$/i;

/** A US gallon has 3.79 litres and an imperial one 4.55: the text has to say which. @throws InputError where it does not */
export function askWhichGallon(text: string, kind: Kind, unit: string): void {
  if ((kind !== 'liquid' && kind !== 'volume') || !gallons.test(unit)) return;
  const [us, imperial] = ['US', 'imp'].map((which) =>
    inspectValue(text.trim().replace(unit, `${which} ${unit}`)),
  );
  throw new InputError(`got ${inspectValue(text)}, which may be US or imperial; write ${us} or ${imperial}`);
}
