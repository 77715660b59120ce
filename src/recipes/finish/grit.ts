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

const gritTakes = 'a FEPA grit such as "P80", from P12 to P2500';

/** The number of a grit, as digits; empty where the value has none. */
function digitsOf(value: unknown): string {
  if (typeof value === 'number') return String(value);
  if (typeof value !== 'string') return '';
  return /^\s*[pP]?\s*(\d{2,4})\s*$/.exec(value)?.[1] ?? '';
}

function readGrit(value: unknown): Grit {
  const digits = digitsOf(value);
  const found = grits().find((g) => g.name === `P${digits}`);
  if (found) return found;
  const distance = (g: Grit): number => Math.abs(Number(g.name.slice(1)) - Number(digits));
  const near = digits === '' ? [] : [...grits()].sort((a, b) => distance(a) - distance(b)).slice(0, 2);
  throw new InputError(
    `got ${inspectValue(value)}, takes ${gritTakes}${near.length > 0 ? `; the nearest are ${near.map((g) => g.name).join(' and ')}` : ''}`,
  );
}

/** A field that takes a grit: "P80", "80" or 80. */
export function gritField(options: { readonly label: string }): Field<string | number, Grit, false> {
  return makeField<string | number, Grit, { readonly label: string }>(
    {
      kind: 'grit',
      expects: gritTakes,
      read: readGrit,
      accepts: (v) => typeof v === 'string' || typeof v === 'number',
      format: (g) => g.name,
    },
    options,
  );
}
