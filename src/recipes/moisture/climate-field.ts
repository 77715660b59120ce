// Twelve months of air, as a place in data/ or as one's own list or CSV.
import { Refusal, shown } from '../../quantities/refusal.js';
import { field, isPlainObject, makeField, type Field } from '../../recipe/field.js';
import { tableField } from '../../recipe/table.js';
import { findClimate, monthNames, type Climate } from '../../timber/climate.js';
import { airLimits, equilibrium, inTable } from './sorption.js';
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
export type YearWritten = string | readonly StateWritten[] | readonly MonthRow[];

const takes =
  'a place such as "Seattle-Tacoma, WA", or twelve months of your own: a list of moistures ("9 %"), or a table or CSV with columns month?, and temperature and humidity, or moisture';

const state = stateField('air or moisture of the month');
const table = tableField(
  {
    month: field.text({ says: 'name of the month', optional: true }),
    temperature: field.temperature({
      says: 'mean temperature',
      min: airLimits.coldest,
      max: airLimits.hottest,
      optional: true,
    }),
    humidity: field.humidity({ says: 'mean relative humidity', min: '0 %', max: '100 %', optional: true }),
    moisture: field.moisture({
      says: 'moisture that wood comes to, in place of air',
      min: '0 %',
      max: '40 %',
      optional: true,
    }),
  },
  { says: 'months', least: 12, most: 12 },
);

/** A field that takes a year of air. */
export function climateField(says: string): Field<YearWritten, Year, false> {
  return makeField<YearWritten, Year, { says: string }>(
    {
      kind: 'climate',
      takes,
      fits: (v) => typeof v === 'string' || (typeof v === 'object' && v !== null),
      show: (y) => y.name,
      read: (v) => {
        if (typeof v === 'string' && !/[\r\n]/.test(v) && !/\.(csv|tsv|txt)$/i.test(v.trim())) {
          if (v.trim() === '') throw new Refusal(`got an empty text, takes ${takes}`);
          // "9 %, 9.5 %, ..." on a command line.
          if (/^[\s\d.,;%]+$/.test(v)) return ofStates(v.split(/[,;]/));
          const place = findClimate(v);
          return {
            name: `${place.place}, outdoors under cover`,
            moisture: place.moisture,
            outside: false,
            place,
          };
        }
        // Air without a month's name is a state; what names a month or a moisture is a row.
        if (Array.isArray(v) && !v.every((x) => isPlainObject(x) && ('month' in x || 'moisture' in x)))
          return ofStates(v);
        return ofRows(v);
      },
    },
    { says },
  );
}

function ofStates(list: readonly unknown[]): Year {
  if (list.length !== 12) throw new Refusal(`got ${list.length} months, takes 12, January first: ${takes}`);
  const states = field.list(state, { says: 'months' }).read(list);
  return {
    name: 'own twelve months',
    moisture: states.map((s) => (typeof s === 'number' ? s : equilibrium(s.temperature, s.humidity))),
    outside: states.some((s) => typeof s !== 'number' && !inTable(s.temperature, s.humidity)),
  };
}

function ofRows(v: unknown): Year {
  const rows = table.read(v);
  const lacking = rows.findIndex(
    (r) => r.moisture === undefined && (r.temperature === undefined || r.humidity === undefined),
  );
  if (lacking >= 0)
    throw new Refusal({
      field: `[${lacking + 1}]`,
      says: `got neither a moisture nor both temperature and humidity; takes ${takes}`,
    });
  const order = rows.map((r, i) => (r.month === undefined ? i : monthNumber(r.month, i)));
  if (new Set(order).size !== 12)
    throw new Refusal(
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
    throw new Refusal({
      field: `[${row + 1}].month`,
      says: `got ${shown(text)}, takes a month such as "January", "Jan" or 1`,
    });
  return n;
}
