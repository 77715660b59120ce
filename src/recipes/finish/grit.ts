// Grits of coated abrasives by their FEPA names and grain sizes, from data/grit-sizes.fepa.csv.
import { InputError, inspectValue } from '../../units/input-error.js';
import { makeField, type Field } from '../../engine/field.js';
import { tableRows, type DataRow } from '../../materials/data-tables.js';

export interface Grit {
  /** P80. */
  readonly name: string;
  /** Average grain size, m. */
  readonly size: number;
  readonly row: DataRow;
}

let series: readonly Grit[] | undefined;

/** Every grit of the table, which goes from coarse to fine. */
export function grits(): readonly Grit[] {
  series ??= tableRows('grit-sizes.fepa').map((row) => ({
    name: row.text('grade'),
    size: (row.number('size_um') as number) * 1e-6,
    row,
  }));
  return series;
}

interface Options {
  readonly label: string;
}

/** A field that takes a grit: "P80", "80" or 80. */
export function gritField<const O extends Options>(options: O): Field<string | number, Grit, false> {
  const takes = 'a FEPA grit such as "P80", from P12 to P2500';
  const read = (value: unknown): Grit => {
    const digits =
      typeof value === 'number'
        ? String(value)
        : typeof value === 'string'
          ? (/^\s*[pP]?\s*(\d{2,4})\s*$/.exec(value)?.[1] ?? '')
          : '';
    const found = grits().find((g) => g.name === `P${digits}`);
    if (found) return found;
    const n = Number(digits);
    const near =
      digits === ''
        ? []
        : [...grits()]
            .sort((a, b) => Math.abs(Number(a.name.slice(1)) - n) - Math.abs(Number(b.name.slice(1)) - n))
            .slice(0, 2)
            .map((g) => g.name);
    throw new InputError(
      `got ${inspectValue(value)}, takes ${takes}${near.length > 0 ? `; the nearest are ${near.join(' and ')}` : ''}`,
    );
  };
  return makeField<string | number, Grit, O>(
    {
      kind: 'grit',
      expects: takes,
      read,
      accepts: (v) => typeof v === 'string' || typeof v === 'number',
      format: (g) => g.name,
    },
    options,
  );
}
