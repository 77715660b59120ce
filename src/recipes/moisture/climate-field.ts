// Twelve months of air, as a place in data/ or as one's own list or CSV.
import { InputError, inspectValue } from '../../units/input-error.js';
import { field, isPlainObject, makeField, type Field } from '../../engine/field.js';
import { tableField } from '../../engine/table-field.js';
import { findClimate, monthNames, type Climate, type MonthOfAir } from '../../materials/climate.js';
import { airLimits, equilibrium, inTable } from './sorption.js';
import { seasonsIn, seasonsTake, yearOfSeasons, type SeasonsWritten } from './two-seasons.js';
import { stateField, type StateWritten } from './wood-state.js';

/** A year: the moisture that wood comes to in the air of each month, January first. */
export interface Year {
  readonly name: string;
  readonly moisture: readonly number[];
  /** Set where some month's air lies outside the sorption table. */
  readonly outside: boolean;
  readonly place?: Climate;
}

interface MonthRow {
  readonly month?: string;
  readonly temperature?: string;
  readonly humidity?: string;
  readonly moisture?: string;
}
export type YearWritten = string | SeasonsWritten | readonly StateWritten[] | readonly MonthRow[];

const takes = `a place such as "Seattle-Tacoma, WA", or ${seasonsTake}, or twelve months of your own: a list of moistures ("9 %"), or a table or CSV with columns month?, and temperature and humidity, or moisture`;

const state = stateField('air or moisture of the month');
const table = tableField(
  {
    month: field.text({ label: 'name of the month', optional: true }),
    temperature: field.temperature({
      label: 'mean temperature',
      min: airLimits.coldest,
      max: airLimits.hottest,
      optional: true,
    }),
    humidity: field.humidity({ label: 'mean relative humidity', min: '0 %', max: '100 %', optional: true }),
    moisture: field.moisture({
      label: 'moisture of wood',
      help: 'Moisture that wood comes to; give it in place of air.',
      min: '0 %',
      max: '40 %',
      optional: true,
    }),
  },
  { label: 'months', least: 12, most: 12 },
);

/** A field that takes a year of air. */
export function climateField(label: string): Field<YearWritten, Year, false> {
  return makeField<YearWritten, Year, { label: string }>(
    {
      kind: 'climate',
      expects: takes,
      accepts: (v) => typeof v === 'string' || (typeof v === 'object' && v !== null),
      format: (y) => y.name,
      read: (v) => {
        if (typeof v === 'string' && !/[\r\n]/.test(v) && !/\.(csv|tsv|txt)$/i.test(v.trim())) {
          if (v.trim() === '') throw new InputError(`got an empty text, takes ${takes}`);
          // "9 %, 9.5 %, ..." on a command line.
          if (/^[\s\d.,;%]+$/.test(v)) return ofStates(v.split(/[,;]/));
          const seasons = seasonsIn(v);
          if (seasons) return yearOfSeasons(seasons);
          const place = findClimate(v);
          return {
            name: `${place.place}, outdoors under cover`,
            ...yearOf(place.months),
            place,
          };
        }
        if (isPlainObject(v) && ('winter' in v || 'summer' in v)) return yearOfSeasons(v);
        // Air without a month's name is a state; what names a month or a moisture is a row.
        if (Array.isArray(v) && !v.every((x) => isPlainObject(x) && ('month' in x || 'moisture' in x)))
          return ofStates(v);
        return ofRows(v);
      },
    },
    { label: label },
  );
}

/** The moisture that wood comes to month by month, and whether some air lies outside the sorption table. */
const yearOf = (months: readonly (number | MonthOfAir)[]): Pick<Year, 'moisture' | 'outside'> => ({
  moisture: months.map((m) => (typeof m === 'number' ? m : equilibrium(m.temperature, m.humidity))),
  outside: months.some((m) => typeof m !== 'number' && !inTable(m.temperature, m.humidity)),
});

function ofStates(list: readonly unknown[]): Year {
  if (list.length !== 12)
    throw new InputError(`got ${list.length} months, takes 12, January first: ${takes}`);
  const states = field.list(state, { label: 'months' }).read(list);
  return { name: 'own twelve months', ...yearOf(states) };
}

function ofRows(v: unknown): Year {
  const rows = table.read(v);
  const lacking = rows.findIndex(
    (r) => r.moisture === undefined && (r.temperature === undefined || r.humidity === undefined),
  );
  if (lacking >= 0)
    throw new InputError({
      field: `[${lacking + 1}]`,
      message: `got neither a moisture nor both temperature and humidity; takes ${takes}`,
    });
  const order = rows.map((r, i) => (r.month === undefined ? i : monthNumber(r.month, i)));
  if (new Set(order).size !== 12)
    throw new InputError(
      `got ${order.length - new Set(order).size} month(s) twice, takes each of the twelve once`,
    );
  const moisture = new Array<number>(12);
  let outside = false;
  rows.forEach((r, i) => {
    moisture[order[i] as number] = r.moisture ?? equilibrium(r.temperature as number, r.humidity as number);
    if (r.moisture === undefined && !inTable(r.temperature as number, r.humidity as number)) outside = true;
  });
  return { name: 'own twelve months', moisture, outside };
}

function monthNumber(text: string, row: number): number {
  const n = /^\d{1,2}$/.test(text)
    ? Number(text) - 1
    : monthNames.findIndex(
        (m) => text.length >= 3 && m.toLowerCase().startsWith(text.toLowerCase().slice(0, 3)),
      );
  if (n < 0 || n > 11)
    throw new InputError({
      field: `[${row + 1}].month`,
      message: `got ${inspectValue(text)}, takes a month such as "January", "Jan" or 1`,
    });
  return n;
}
