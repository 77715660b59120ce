import { tryParse } from './try-parse.js';
import { kinds, kindNames, type Kind } from './kind.js';
import { Quantity, setQuantityReader } from './quantity.js';
import { InputError, inspectValue } from './input-error.js';
import { TextReader } from './text-reader.js';
import { unitOf } from './unit.js';
import { askWhichGallon, compound, missingUnit, noUnit, quarters, takesOf, toBase } from './written-forms.js';

const longest = 120;
const fractions: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};
const signs: Readonly<Record<string, string>> = {
  '\u00a0': ' ',
  '\u2009': ' ',
  '\u202f': ' ',
  '\t': ' ',
  '″': '"',
  '”': '"',
  '“': '"',
  '′': "'",
  '’': "'",
  '−': '-',
  '–': '-',
  µ: 'u',
  μ: 'u',
  '²': '2',
  '³': '3',
  '⁴': '4',
  '·': ' ',
  '×': 'x',
  '°': 'deg',
};

/**
 * Reads one quantity of a kind: `900 mm`, `0.9 m`, `35 7/16 in`, `5' 10 1/2"`, `3 ft 6`,
 * `3/4"`, `8/4` (quarters of an inch), `1 h 30 min`, `8 %`, `21 degC`, `70 degF`,
 * `$12.50`, `4.20/m`. Runs once over the text, so its time grows with the length and no faster.
 * @throws InputError saying what was got and what is taken.
 */
export function parseQuantity<K extends Kind>(text: string, kind: K): Quantity<K> {
  const takes = takesOf(kind);
  if (text.length > longest) throw new InputError(`got a text of ${text.length} characters, ${takes}`);
  const plain = normalise(text);
  if (plain === '') throw new InputError(`got an empty text, ${takes}`);
  if (isPriced(kind)) return parsePrice(text, plain, kind);
  const reader = new TextReader(plain);
  const first = firstNumber(reader, text, takes);
  if (kind === 'length' || kind === 'thickness') {
    const feet = feetAndInches(reader, first, text, takes);
    if (feet !== undefined) return finite(kind, feet, text);
  }
  if (kind === 'time' || kind === 'mass') {
    const sum = compound(reader, first, text, kind);
    if (sum !== undefined) return finite(kind, sum, text);
  }
  const lumber = quarters(plain, kind);
  if (lumber !== undefined) return finite(kind, lumber, text);
  return finite(kind, toBase(unitOf(kind, unitAfter(reader, text, kind)), first), text);
}

/** What stands after the number, which is a unit. @throws InputError where it is missing, may mean two or is no unit */
function unitAfter(reader: TextReader, text: string, kind: Kind): string {
  const takes = takesOf(kind);
  const unit = reader.rest();
  if (/^x ?[\d.]+$/i.test(unit)) throw noUnit(text, takes);
  if (unit === '' && !kinds[kind].plain) throw missingUnit(kind, text);
  askWhichGallon(text, kind, unit);
  if (/^\d/.test(unit) && !unit.startsWith('1/'))
    throw new InputError(`got ${inspectValue(text)}, ${takes}; write one number, with no space inside it`);
  return unit;
}

const isPriced = (kind: Kind): boolean => kind === 'money' || kind.startsWith('price');

function firstNumber(reader: TextReader, text: string, takes: string): number {
  const first = reader.number();
  if (first === undefined) throw new InputError(`got ${inspectValue(text)}, ${takes}`);
  if (reader.peek(',') || reader.peek('.'))
    throw new InputError(
      `got ${inspectValue(text)}, ${takes}; write a point for decimals and no thousands mark`,
    );
  reader.match(/ +/y);
  return first;
}

/** `$12.50`, `12.50 EUR`, `£4.20/m`, `-$3`. */
function parsePrice<K extends Kind>(text: string, plain: string, kind: K): Quantity<K> {
  const takes = takesOf(kind);
  const reader = new TextReader(plain);
  // -$12.50, as money below 0 is shown.
  const sign = reader.match(/-(?=[A-Z$£€¥])/y) ? -1 : 1;
  const currency = reader.match(/(?:[A-Z]{0,3}[$£€¥]|[A-Z]{3}\b) ?/y)?.trim() ?? '';
  const amount = firstNumber(reader, text, takes);
  const after = /^([A-Z]{3})?\s*(?:(?:\/|per )\s*(.+))?$/.exec(reader.rest());
  if (!after) throw new InputError(`got ${inspectValue(text)}, ${takes}`);
  const u = unitOf(kind, after[2] ? `money/${canonical(after[2])}` : 'money');
  return finite(kind, sign * amount * u.scale, text, currency || after[1] || undefined);
}

/** The metres of `5' 10 1/2"`, whose first number is `feet`; undefined where no sign of feet follows it. */
function feetAndInches(reader: TextReader, feet: number, text: string, takes: string): number | undefined {
  if (reader.match(/(?:'(?!')|ft\b|feet\b|foot\b)/y) === undefined) return undefined;
  reader.match(/[ -]*/y);
  if (reader.rest() === '') return feet * 0.3048;
  const inches = reader.number();
  const unit = reader.match(/ *(?:"|''|in(?:ch(?:es)?)?)$/y);
  // 3 ft 6: what follows feet without a unit is inches, fewer than a foot.
  const bare = unit === undefined && reader.rest() === '' && (inches ?? 12) < 12;
  if (inches === undefined || (unit === undefined && !bare))
    throw new InputError(`got ${inspectValue(text)}, ${takes}; feet and inches are written 5' 10 1/2"`);
  return feet * 0.3048 + (reader.text.startsWith('-') ? -inches : inches) * 0.0254;
}

/** Reads text, a quantity, or for plain kinds a number, into a quantity of `kind`. @throws InputError */
export function toQuantity<K extends Kind>(value: unknown, kind: K): Quantity<K> {
  const facts = kinds[kind];
  if (value instanceof Quantity) {
    if (value.kind === kind) return value as Quantity<K>;
    if (sameMeasure((value as Quantity).kind, kind)) return new Quantity(kind, value.value, value.currency);
    throw new InputError(
      `got ${inspectValue(value.toString())} (${kinds[(value as Quantity).kind].called}), takes ${facts.called} such as ${inspectValue(facts.example)}`,
    );
  }
  if (typeof value === 'string') return parseQuantity(value, kind);
  if (typeof value === 'number' && facts.plain) {
    if (!Number.isFinite(value))
      throw new InputError(`got ${value}, takes ${facts.called} such as ${facts.example}`);
    return new Quantity(kind, value);
  }
  if (typeof value === 'number') {
    throw missingUnit(kind, value);
  }
  if (isJsonQuantity(value)) return parseQuantity(`${value.value} ${value.unit}`, kind);
  throw new InputError(
    `got ${inspectValue(value)}, takes ${facts.called} such as ${inspectValue(facts.example)}`,
  );
}

/** `{ value, unit }`, as results print themselves in JSON, reads back. */
function isJsonQuantity(value: unknown): value is { value: number; unit: string } {
  const parts = value as { value?: unknown; unit?: unknown } | null | undefined;
  return typeof parts?.value === 'number' && typeof parts.unit === 'string';
}

/** Kinds that measure the same thing for different purposes (a film is a length, a stress a pressure) pass into each other. */
function sameMeasure(a: Kind, b: Kind): boolean {
  const groups: readonly (readonly Kind[])[] = [
    ['length', 'thickness'],
    ['volume', 'liquid', 'boardFeet', 'superFeet'],
    ['pressure', 'stress', 'modulus', 'areaLoad'],
    ['density', 'concentration'],
    ['ratio', 'count'],
  ];
  return groups.some((g) => g.includes(a) && g.includes(b));
}

/** Reads a quantity of whatever kind its unit first fits: for free text in a notebook. @throws InputError */
export function anyQuantity(text: string): Quantity {
  for (const kind of kindNames) {
    if (kinds[kind].plain) continue;
    const read = tryParse(() => parseQuantity(text, kind));
    if (!(read instanceof InputError)) return read;
  }
  return parseQuantity(text, 'ratio');
}

function finite<K extends Kind>(kind: K, value: number, text: string, currency?: string): Quantity<K> {
  if (!(Math.abs(value) <= 1e200))
    throw new InputError(
      `got ${inspectValue(text)}, takes ${kinds[kind].called} that is a finite number, at most 1e200`,
    );
  if (kind === 'temperature' && value < -273.15 - 1e-9)
    throw new InputError(`got ${inspectValue(text)}, takes a temperature above absolute zero, -273.15 °C`);
  return new Quantity(kind, value, currency);
}

/** Thin and unbreakable spaces that set thousands apart, as {@link formatQuantity} writes them. */
const thousands = /(?<=\d)[\u00a0\u2009\u202f](?=\d{3}(?!\d| ?\/))/g;

function normalise(text: string): string {
  let out = '';
  for (const c of text.replace(thousands, '')) {
    const f = fractions[c];
    out += f ? (/\d$/.test(out) ? ` ${f}` : f) : (signs[c] ?? c);
  }
  return out.trim();
}

/** `m^2` and `m2` are one; spaces inside are single. */
function canonical(unit: string): string {
  return unit
    .trim()
    .replace(/\^/g, '')
    .replace(/ +/g, ' ')
    .replace(/^board f(?:oo|ee)t$|^bd ft$/, 'bf');
}

setQuantityReader(parseQuantity);
