import { nearest, InputError, inspectValue } from '../units/input-error.js';
import { tableRows, type DataRow } from './data-tables.js';

const monthFormat = new Intl.DateTimeFormat('en-GB', { month: 'long', timeZone: 'UTC' });
/** January to December. */
export const monthNames: readonly string[] = Array.from({ length: 12 }, (_, i) =>
  monthFormat.format(Date.UTC(2001, i)),
);
const columns = monthNames.map((m) => `${m.slice(0, 3).toLowerCase()}_pct`);

/** A place with the moisture that wood outdoors under cover comes to in each month, as fractions, January first. */
export interface Climate {
  readonly place: string;
  readonly moisture: readonly number[];
  readonly row: DataRow;
}

let all: readonly Climate[] | undefined;

/** Every place in data/: outdoor equilibrium moisture by city and month. */
export function climates(): readonly Climate[] {
  return (all ??= tableRows('outdoor-moisture.fpl-gtr-190').map((row) => ({
    place: `${row.text('place')}, ${row.text('state')}`,
    moisture: columns.map((c) => (row.number(c) as number) / 100),
    row,
  })));
}

const plain = (s: string): string => s.toLowerCase().replace(/[^a-z]/g, '');

/** A place by name, with or without its state: `Seattle-Tacoma`, `Portland, OR`. @throws InputError */
export function findClimate(text: string): Climate {
  const named = climates().filter(
    (c) => plain(c.place) === plain(text) || plain(c.row.text('place')) === plain(text),
  );
  if (named.length === 1) return named[0] as Climate;
  if (named.length > 1)
    throw new InputError(
      `got ${inspectValue(text)}, which is in the table ${named.length} times; takes ${named.map((c) => inspectValue(c.place)).join(' or ')}`,
    );
  const begins = climates().filter((c) => plain(text).length >= 4 && plain(c.place).includes(plain(text)));
  if (begins.length === 1) return begins[0] as Climate;
  const near = nearest(text, [
    ...climates().map((c) => c.row.text('place')),
    ...climates().map((c) => c.place),
  ]);
  throw new InputError(
    `no place ${inspectValue(text)}${near ? `; did you mean ${inspectValue(near)}?` : `; takes one of ${climates().length} places such as "Seattle-Tacoma, WA", or for any other place how humid the room is: "winter 35 %, summer 65 %", or your own twelve months`}`,
  );
}
