// What a line of a bill measures, and what one of it costs. A quantity may be pieces, metres, square metres, litres or
// board feet, kilograms or hours; a price is for one of the unit written, or says itself what it is for.
import { formatQuantity, pretty } from '../../units/format-quantity.js';
import type { Kind } from '../../units/kind.js';
import { parseQuantity, toQuantity } from '../../units/parse-quantity.js';
import { Quantity } from '../../units/quantity.js';
import { InputError, inspectValue } from '../../units/input-error.js';
import { unitOf } from '../../units/unit.js';
import { tryParse } from '../../units/try-parse.js';
import { field, makeField, type Field } from '../../engine/field.js';

export type By = 'count' | 'length' | 'area' | 'liquid' | 'mass' | 'time';

/** How much of something: `value` in the base unit, `per` the size of one written unit. */
export interface Measured {
  readonly by: By;
  readonly value: number;
  readonly per: number;
  /** A plain number, whose unit may still be named beside it. */
  readonly bare: boolean;
  readonly written: string;
}

export interface LinePrice {
  readonly by: By;
  /** Money for one base unit, or for one of whatever unit the quantity is written in when `bare`. */
  readonly amount: number;
  readonly bare: boolean;
  readonly currency?: string;
  /** As people read it: `4.20/m`. */
  readonly text: string;
}

const measures: readonly By[] = ['length', 'area', 'liquid', 'mass', 'time'];
const pieces =
  /^(?:pieces?|pcs?|each|off|no\.?|box(?:es)?|packs?|packets?|tins?|bags?|pairs?|sets?|sheets?|bottles?|tubes?|rolls?|discs?|boards?|screws?|jobs?|trips?)$/i;
/** The number a text begins with: 12, 4.5, 1e3, 3/4, 5 1/2, 5½. */
const lead =
  /^\+?(?:\d+[ -]\d+\/\d+|\d+\/\d+|\d*[½⅓⅔¼¾⅛⅜⅝⅞]|(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?)(?![\d.])/i;
const feetFirst = /^(?:['’′](?!['’′])|ft\b|feet\b|foot\b)/;
const takesQuantity =
  'how much, a number of pieces such as 12, or with a unit such as "4.2 m", "1.3 m2", "750 mL", "2 kg" or "6 h"';

/** Reads how much of something there is. @throws InputError */
export function measured(value: unknown): Measured {
  const refuse = (): never => {
    throw new InputError(
      `got ${inspectValue(value instanceof Quantity ? value.toString() : value)}, takes ${takesQuantity}, from 0 to a billion`,
    );
  };
  const whole = (by: By, n: number, per: number, bare: boolean, written: string): Measured =>
    n >= 0 && n / per <= 1e9 ? { by, value: n, per, bare, written } : refuse();
  if (typeof value === 'number') return whole('count', value, 1, true, String(value));
  if (value instanceof Quantity) {
    const by =
      value.kind === 'volume' || value.kind === 'boardFeet' || value.kind === 'superFeet'
        ? 'liquid'
        : measures.find((m) => m === value.kind);
    const unit = value.toJSON().unit;
    return by
      ? whole(by, value.value, unitOf(value.kind as Kind, unit).scale, false, value.toString())
      : refuse();
  }
  if (typeof value !== 'string') return refuse();
  const text = value.trim();
  const number = lead.exec(text)?.[0] ?? '';
  const unit = text.slice(number.length).trim();
  if (number !== '' && (unit === '' || pieces.test(unit)))
    return whole('count', parseQuantity(number, 'ratio').value, 1, unit === '', text);
  for (const by of measures) {
    const read = tryParse(() => {
      // A price for one of what is written as 5' 6" is for a foot.
      const per = unitOf(by, feetFirst.test(unit) ? 'ft' : unit).scale;
      return whole(by, parseQuantity(text, by).value, per, false, text);
    });
    if (!(read instanceof InputError)) return read;
  }
  return refuse();
}

/** A plain number and the unit named in its own column. @throws InputError */
export function withUnit(m: Measured, unit: string | undefined): Measured {
  if (unit === undefined) return m;
  if (!m.bare)
    throw new InputError(
      `got a unit twice, in ${inspectValue(m.written)} and as ${inspectValue(unit)}; takes one`,
    );
  return measured(`${m.written} ${unit}`);
}

const priceKinds: readonly { readonly by: By; readonly kind: Kind }[] = [
  { by: 'length', kind: 'pricePerLength' },
  { by: 'area', kind: 'pricePerArea' },
  { by: 'liquid', kind: 'pricePerVolume' },
  { by: 'mass', kind: 'pricePerMass' },
  { by: 'time', kind: 'pricePerTime' },
];
const each =
  /\s*(?:(?:\/|\bper\s+|\ba\s+|\s)\s*)(?:pieces?|pcs?|each|box|pack|tin|bag|pair|set|sheet|bottle|tube|roll)$/i;

type QuantityWritten = string | number | Quantity;
type Maybe<O, T> = O extends { optional: true } ? T | undefined : T;
type IsOptional<O> = O extends { optional: true } ? true : false;
interface Options {
  readonly label: string;
  readonly optional?: true;
}

export function quantityField<const O extends Options>(
  options: O,
): Field<QuantityWritten, Maybe<O, Measured>, IsOptional<O>> {
  return makeField<QuantityWritten, Measured, O>(
    {
      kind: 'measured',
      expects: takesQuantity,
      read: measured,
      format: (m) => m.written,
      accepts: (v) => typeof v === 'string' || typeof v === 'number' || v instanceof Quantity,
    },
    options,
  );
}

/** A second currency is refused as such; any other refusal leaves the next way of reading open. */
function readPrice(reader: Field<unknown, number>, written: unknown): number | InputError {
  const amount = tryParse(() => reader.read(written));
  if (amount instanceof InputError && amount.message.includes('one currency')) throw amount;
  return amount;
}

const currencyOf = (written: unknown, kind: Kind): { readonly currency?: string } => {
  const { currency } = toQuantity(written, kind);
  return currency ? { currency } : {};
};

export function linePriceField<const O extends Options>(
  options: O,
): Field<QuantityWritten, Maybe<O, LinePrice>, IsOptional<O>> {
  const takes =
    "a price of 0 or more: for one of the unit the quantity is in, such as 12.50, or with what it is for, such as '4.20/m', '38/m2', '18/L', '9/kg' or '40/h'";
  const money = field.money({ label: options.label, min: 0, max: 1e9 });
  const readers = priceKinds.map((p) => ({
    ...p,
    field: field.quantity(p.kind, { label: options.label, min: 0 }),
  }));
  const read = (value: unknown): LinePrice => {
    const written = typeof value === 'string' ? value.trim().replace(each, '') : value;
    const perPiece = typeof value === 'string' && written !== value.trim();
    for (const r of perPiece ? [] : readers) {
      const amount = readPrice(r.field, written);
      if (!(amount instanceof InputError))
        return {
          by: r.by,
          amount,
          bare: false,
          text: pretty(String(written)),
          ...currencyOf(written, r.kind),
        };
    }
    const amount = readPrice(money, written);
    if (amount instanceof InputError) throw new InputError(`got ${inspectValue(value)}, takes ${takes}`);
    const currency = currencyOf(written, 'money');
    return {
      by: 'count',
      amount,
      bare: !perPiece,
      text: formatQuantity({ kind: 'money', value: amount, ...currency }) + (perPiece ? ' each' : ''),
      ...currency,
    };
  };
  return makeField<QuantityWritten, LinePrice, O>(
    {
      kind: 'price',
      expects: takes,
      read,
      format: (p) => p.text,
      accepts: (v) => typeof v === 'string' || typeof v === 'number' || v instanceof Quantity,
    },
    options,
  );
}

const called: Readonly<Record<By, string>> = {
  count: 'pieces',
  length: 'a length',
  area: 'an area',
  liquid: 'a volume',
  mass: 'a mass',
  time: 'a time',
};

/** Units bought and money for one, so that one times the other is the cost. @throws InputError where price and quantity measure different things */
export function bought(m: Measured, p: LinePrice): { units: number; price: number } {
  if (p.bare) return { units: m.value / m.per, price: p.amount };
  if (p.by !== m.by)
    throw new InputError(
      `got a price for ${called[p.by]} with a quantity that is ${called[m.by]} (${inspectValue(m.written)}); takes both of one measure`,
    );
  return { units: m.value / m.per, price: p.amount * m.per };
}
