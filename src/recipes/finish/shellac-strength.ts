// A cut of shellac: pounds of flakes to a US gallon of alcohol, as a plain number, or a mass per volume with its unit.
import { formatQuantity } from '../../units/format-quantity.js';
import { toQuantity } from '../../units/parse-quantity.js';
import { Quantity } from '../../units/quantity.js';
import { InputError, inspectValue } from '../../units/input-error.js';
import { tryParse } from '../../units/try-parse.js';
import { makeField, type Field, type Written } from '../../engine/field.js';

/** A pound to the US gallon, in kilograms to the cubic metre. */
export const poundPerGallon = 0.45359237 / 0.003785411784;

/** Pounds without their gallon, as a cut is spoken of: 2, 2 lb, a 2 lb cut. */
const poundsIn = /^\s*(\d*\.?\d+)\s*(?:lbs?|pounds?)?(?:\s*cut)?\s*$/;

interface CutOptions {
  readonly label: string;
  readonly optional?: true;
}

/** Pounds to the US gallon as a plain number, or a mass per volume with its unit. */
export function cutField<const O extends CutOptions>(
  options: O,
): Field<
  number | Written<'concentration'>,
  O extends { optional: true } ? number | undefined : number,
  O extends { optional: true } ? true : false
> {
  const [least, most] = [0.05 * poundPerGallon, 10 * poundPerGallon];
  const takes = 'a cut such as 2 (pounds to a US gallon of alcohol) or "240 g/L", from 0.05 to 10 lb/gal';
  return makeField<number | Written<'concentration'>, number, O>(
    {
      kind: 'concentration',
      expects: takes,
      accepts: (v) => typeof v === 'number' || typeof v === 'string' || v instanceof Quantity,
      format: (c) =>
        `${formatQuantity({ kind: 'concentration', value: c })} (${String(Number((c / poundPerGallon).toPrecision(4)))} lb/gal)`,
      read: (v) => {
        const pounds = typeof v === 'string' ? poundsIn.exec(v)?.[1] : typeof v === 'number' ? v : undefined;
        const c =
          pounds === undefined
            ? tryParse(() => toQuantity(v, 'concentration').value)
            : Number(pounds) * poundPerGallon;
        if (typeof c === 'number' && c >= least * (1 - 1e-9) && c <= most * (1 + 1e-9)) return c;
        throw new InputError(`got ${inspectValue(v)}, takes ${takes}`);
      },
    },
    options,
    { min: least, max: most, unit: 'g/L' },
  );
}
