// A cut of shellac: pounds of flakes to a US gallon of alcohol, as a plain number, or a mass per volume with its unit.
import { formatQuantity } from '../../quantities/format.js';
import { toQuantity } from '../../quantities/parse.js';
import { Refusal, shown } from '../../quantities/refusal.js';
import { makeField, type Field } from '../../recipe/field.js';

/** A pound to the US gallon, in kilograms to the cubic metre. */
export const poundPerGallon = 0.45359237 / 0.003785411784;

interface CutOptions {
  readonly says: string;
  readonly optional?: true;
}

/** Pounds to the US gallon as a plain number, or a mass per volume with its unit. */
export function cutField<const O extends CutOptions>(
  options: O,
): Field<
  number | string,
  O extends { optional: true } ? number | undefined : number,
  O extends { optional: true } ? true : false
> {
  const [least, most] = [0.05 * poundPerGallon, 10 * poundPerGallon];
  const takes = 'a cut such as 2 (pounds to a US gallon of alcohol) or "240 g/L", from 0.05 to 10 lb/gal';
  return makeField<number | string, number, O>(
    {
      kind: 'concentration',
      takes,
      fits: (v) => typeof v === 'number' || typeof v === 'string',
      show: (c) =>
        `${formatQuantity({ kind: 'concentration', value: c })} (${String(Number((c / poundPerGallon).toPrecision(4)))} lb/gal)`,
      read: (v) => {
        const bare =
          typeof v === 'number'
            ? v
            : typeof v === 'string'
              ? Number(/^\s*(\d*\.?\d+)\s*(?:lb|lbs|pound|pounds)?(?:\s*cut)?\s*$/.exec(v)?.[1] ?? NaN)
              : NaN;
        let c = bare * poundPerGallon;
        if (Number.isNaN(bare)) {
          try {
            c = toQuantity(v, 'concentration').value;
          } catch (error) {
            if (error instanceof Refusal) throw new Refusal(`got ${shown(v)}, takes ${takes}`);
            throw error;
          }
        }
        if (!(c >= least * (1 - 1e-9) && c <= most * (1 + 1e-9)))
          throw new Refusal(`got ${shown(v)}, takes ${takes}`);
        return c;
      },
    },
    options,
    { min: least, max: most, unit: 'g/L' },
  ) as unknown as Field<
    number | string,
    O extends { optional: true } ? number | undefined : number,
    O extends { optional: true } ? true : false
  >;
}
