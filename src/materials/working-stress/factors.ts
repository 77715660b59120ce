import type { Citation } from '../../engine/source.js';
import { tableRows, type DataRow } from '../data-tables.js';
import type { Duration, ServiceClass } from './load-case.js';

/** A factor used in an answer, with the place it comes from. */
export interface NamedFactor {
  readonly name: string;
  readonly value: number;
  readonly citation: Citation;
  /** 'text' read in print, 'memory' recalled, 'choice' chosen for this library. */
  readonly read: DataRow['read'];
}

let rowsByKey: ReadonlyMap<string, DataRow> | undefined;

/** The row of data/working-stress-factors.csv with a key. @throws Error for a key that is not there */
function factorRow(key: string): DataRow {
  rowsByKey ??= new Map(tableRows('working-stress-factors').map((r) => [r.text('key'), r]));
  const row = rowsByKey.get(key);
  if (!row) throw new Error(`data/working-stress-factors.csv has no key ${JSON.stringify(key)}`);
  return row;
}

const named = (row: DataRow, column = 'factor', name = row.text('label')): NamedFactor => ({
  name,
  value: row.number(column) as number,
  citation: row.citation,
  read: row.read,
});

/** The value of a key such as `divisor.bending.softwood`. */
export function factor(key: string): number {
  let value = values.get(key);
  if (value === undefined) values.set(key, (value = factorRow(key).number('value') as number));
  return value;
}
const values = new Map<string, number>();

/** A key's value with its label and source. */
export const namedFactor = (key: string): NamedFactor => named(factorRow(key), 'value');

export type Route = 'ec5' | 'as' | 'nds';

/** Duration factor of a route: k_mod of EN 1995-1-1, k_1 of AS 1720.1, C_D of the NDS. */
export function durationFactor(route: Route, duration: Duration, serviceClass: ServiceClass): NamedFactor {
  durations ??= new Map(
    tableRows('duration-factors').map((r) => [
      `${r.text('route')}|${r.text('duration')}|${r.number('service_class')}`,
      named(r),
    ]),
  );
  return durations.get(`${route}|${duration}|${serviceClass}`) as NamedFactor;
}
let durations: ReadonlyMap<string, NamedFactor> | undefined;

/** Strength ratio of a visual grade of ASTM D245, such as `No. 2`; undefined for another name. */
export function strengthRatioOf(grade: string): NamedFactor | undefined {
  const row = tableRows('strength-ratios.astm-d245').find(
    (r) => r.text('grade').toLowerCase() === grade.toLowerCase(),
  );
  return row && named(row, 'ratio', `strength ratio of ${row.text('grade')}`);
}

/** Size factor of NDS dimension lumber 2 in thick, by depth in metres. */
export function ndsSizeFactor(depth: number): NamedFactor {
  // A small allowance, so that a size converted to millimetres keeps its row.
  const row = tableRows('size-factors.nds-supplement').find(
    (r) => depth <= (r.number('most_depth_in') as number) * 0.0254 + 1e-9,
  );
  return named(row as DataRow, 'factor', 'C_F, size factor');
}
