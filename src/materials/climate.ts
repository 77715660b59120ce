import { nearest, InputError, inspectValue } from '../units/input-error.js';
import { tableRows, type DataRow } from './data-tables.js';

const monthFormat = new Intl.DateTimeFormat('en-GB', { month: 'long', timeZone: 'UTC' });
/** January to December. */
export const monthNames: readonly string[] = Array.from({ length: 12 }, (_, i) =>
  monthFormat.format(Date.UTC(2001, i)),
);
const columns = monthNames.map((m) => `${m.slice(0, 3).toLowerCase()}_pct`);

/** Air of a month: °C and relative humidity as a fraction. */
export interface MonthOfAir {
  readonly temperature: number;
  readonly humidity: number;
}

/**
 * A place with its twelve months outdoors under cover, January first: the moisture that wood comes to, as a fraction where a table
 * prints that, else the air.
 */
export interface Climate {
  readonly place: string;
  readonly months: readonly (number | MonthOfAir)[];
  readonly row: DataRow;
}

let all: readonly Climate[] | undefined;

const placeOf = (row: DataRow): string => `${row.text('place')}, ${row.text('state')}`;
/** The names that a row is found by: in its own language, and in English where that differs. */
const namesOf = (row: DataRow): string[] => [row.text('place'), row.text('also')].filter((n) => n !== '');

/** Twelve figures of a cell, undefined where it is empty. @throws Error */
function twelve(row: DataRow, column: string): readonly number[] | undefined {
  const text = row.text(column);
  if (text === '') return undefined;
  const list = text.split(' ').map(Number);
  if (list.length !== 12 || !list.every(Number.isFinite))
    throw new Error(`data/${row.table}.csv, line ${row.line}: ${column} takes twelve numbers`);
  return list;
}

const middle = (a: number, b: number | undefined): number => (b === undefined ? a : (a + b) / 2);

/**
 * The air of a row: the mean temperature, else the middle of the day's highest and lowest; and the mean humidity, else the middle
 * of the morning's and afternoon's.
 */
function airOf(row: DataRow): MonthOfAir[] {
  const [highest, humidity] = [twelve(row, 'mean_c') ?? twelve(row, 'max_c'), twelve(row, 'humidity_pct')];
  if (!highest || !humidity)
    throw new Error(
      `data/${row.table}.csv, line ${row.line}: mean_c or max_c, and humidity_pct, must be given`,
    );
  const [lowest, afternoon] = [twelve(row, 'min_c'), twelve(row, 'humidity_pm_pct')];
  return highest.map((t, i) => ({
    temperature: middle(t, lowest?.[i]),
    humidity: middle(humidity[i] as number, afternoon?.[i]) / 100,
  }));
}

/** Every place in data/: the USA by the moisture of wood, other countries by their air. */
export function climates(): readonly Climate[] {
  return (all ??= [
    ...tableRows('outdoor-moisture.fpl-gtr-190').map((row) => ({
      place: placeOf(row),
      months: columns.map((c) => (row.number(c) as number) / 100),
      row,
    })),
    ...tableRows('outdoor-air.various')
      .filter((row) => row.preferred)
      .map((row) => ({ place: placeOf(row), months: airOf(row), row })),
  ]);
}

/** Letters alone, without accents. */
const plain = (s: string): string =>
  s
    .normalize('NFD')
    .toLowerCase()
    .replace(/[^a-z]/g, '');

const elsewhere =
  'For any other place give how humid the room is, such as "winter 35 %, summer 65 %": leave a hygrometer in it for a week of each season';

/** A place by name, with or without its state, country or accents: `Portland, OR`, `Malaga`, `Seville`. @throws InputError */
export function findClimate(text: string): Climate {
  const named = climates().filter((c) =>
    namesOf(c.row).some((name) =>
      [name, `${name}, ${c.row.text('state')}`].some((n) => plain(n) === plain(text)),
    ),
  );
  if (named.length === 1) return named[0] as Climate;
  if (named.length > 1)
    throw new InputError(
      `got ${inspectValue(text)}, which is in the table ${named.length} times; takes ${named.map((c) => inspectValue(c.place)).join(' or ')}`,
    );
  const begins = climates().filter((c) => plain(text).length >= 4 && plain(c.place).includes(plain(text)));
  if (begins.length === 1) return begins[0] as Climate;
  const near = nearest(text, [
    ...climates().flatMap((c) => namesOf(c.row)),
    ...climates().map((c) => c.place),
  ]);
  const takes = near
    ? `did you mean ${inspectValue(near)}?`
    : `takes one of ${climates().length} places such as "Seattle-Tacoma, WA", or your own twelve months.`;
  throw new InputError(`no place ${inspectValue(text)}; ${takes} ${elsewhere}`);
}
