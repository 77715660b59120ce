// What the published tables of gluing say, as numbers in base units with their sources.
import type { Kind } from '../../quantities/kind.js';
import { toQuantity } from '../../quantities/parse.js';
import type { Citation } from '../../recipe/source.js';
import { tableRows, type DataRow } from '../../timber/tables.js';

/** A printed range in base units, and where it is printed. */
export interface PrintedRange {
  readonly low: number;
  readonly high: number;
  readonly citation: Citation;
}

const rowOf = (topic: string, item?: string): DataRow => {
  const row = tableRows('gluing.various').find(
    (r) => r.text('topic') === topic && r.preferred && (item === undefined || r.text('item') === item),
  );
  if (!row) throw new Error(`data/gluing.various.csv has no row for ${topic} ${item ?? ''}`);
  return row;
};

function rangeOf(row: DataRow, kind: Kind): PrintedRange {
  const base = (column: string): number => toQuantity(`${row.text(column)} ${row.text('unit')}`, kind).value;
  return { low: base('low'), high: base('high'), citation: row.citation };
}

/** Timbers and glues that a clamping pressure is printed for. */
export const timberKinds = [
  'softwood',
  'hardwood',
  'low-density',
  'mid-density',
  'high-density',
  'softwood polyurethane',
  'hardwood polyurethane',
] as const;
export type TimberKind = (typeof timberKinds)[number];

/** Clamping pressure printed for a kind of timber, Pa. */
export const printedPressure = (kind: TimberKind): PrintedRange =>
  rangeOf(rowOf('pressure', kind), 'pressure');

/** Spread printed for edge and face gluing, kg/m². */
export const printedSpread = (): PrintedRange => rangeOf(rowOf('spread'), 'spread');

/** Open waiting time printed for PVA glue at 20 °C, s. */
export const printedOpenTime = (): PrintedRange => rangeOf(rowOf('time'), 'time');

/** Clamps whose force was measured. */
export const measuredClamps = [
  'parallel-jaw clamp',
  'one-hand trigger bar clamp',
  'aluminium bar clamp',
  '3/4 in pipe clamp',
  'I-beam bar (sash) clamp',
] as const;
export type MeasuredClamp = (typeof measuredClamps)[number];

/** Mean force measured of a kind of clamp, N. */
export function measuredForce(clamp: MeasuredClamp): { readonly force: number; readonly citation: Citation } {
  const row = tableRows('clamp-forces.fine-woodworking').find((r) => r.text('clamp') === clamp);
  if (!row) throw new Error(`data/clamp-forces.fine-woodworking.csv has no row for ${clamp}`);
  return { force: toQuantity(`${row.text('force_lbf')} lbf`, 'force').value, citation: row.citation };
}

/** How the weaker of the two testers fared against the mean. */
export function weakerHand(): { readonly factor: number; readonly citation: Citation } {
  const row = tableRows('clamp-forces.fine-woodworking').find((r) => r.text('clamp').includes('weaker hand'));
  if (!row) throw new Error('data/clamp-forces.fine-woodworking.csv has no row for the weaker hand');
  return { factor: row.number('factor') as number, citation: row.citation };
}
