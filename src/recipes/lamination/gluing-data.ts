// What the published tables of gluing say, as numbers in base units with their sources. Every kind and clamp named here
// has its row: a test reads them all.
import type { Kind } from '../../units/kind.js';
import { toQuantity } from '../../units/parse-quantity.js';
import type { Citation } from '../../engine/source.js';
import { tableRows, type DataRow } from '../../materials/data-tables.js';

/** A printed range in base units, and where it is printed. */
export interface PrintedRange {
  readonly low: number;
  readonly high: number;
  readonly citation: Citation;
}

const read = new Map<string, PrintedRange>();

/** A printed range, read from its row once: sweeps ask for it a thousand times. */
function rangeOf(topic: string, kind: Kind, item?: string): PrintedRange {
  const key = `${topic}|${item ?? ''}`;
  const had = read.get(key);
  if (had) return had;
  const [row] = tableRows('gluing.various').filter(
    (r) => r.text('topic') === topic && r.preferred && (item === undefined || r.text('item') === item),
  ) as [DataRow];
  const base = (column: string): number => toQuantity(`${row.text(column)} ${row.text('unit')}`, kind).value;
  const range = { low: base('low'), high: base('high'), citation: row.citation };
  read.set(key, range);
  return range;
}

/** Timbers and glues that a clamping pressure is printed for. */
export const timberKinds = [
  'softwood',
  'hardwood',
  'low-density',
  'high-density',
  'softwood polyurethane',
  'hardwood polyurethane',
] as const;
export type TimberKind = (typeof timberKinds)[number];

/** Clamping pressure printed for a kind of timber, Pa. */
export const printedPressure = (kind: TimberKind): PrintedRange => rangeOf('pressure', 'pressure', kind);

/** Spread printed for edge and face gluing, kg/m². */
export const printedSpread = (): PrintedRange => rangeOf('spread', 'applicationRate');

/** Moisture of timber printed for gluing with PVA, and for panels that stay indoors. */
export const printedMoisture = (item: 'PVA glue' | 'most of USA interior'): PrintedRange =>
  rangeOf('moisture', 'moisture', item);

/** Open waiting time printed for PVA glue at 20 °C, s. */
export const printedOpenTime = (): PrintedRange => rangeOf('time', 'time');

/** Clamps whose force was measured. */
export const measuredClamps = [
  'parallel-jaw clamp',
  'one-hand trigger bar clamp',
  'aluminium bar clamp',
  '3/4 in pipe clamp',
  'I-beam bar (sash) clamp',
] as const;
export type MeasuredClamp = (typeof measuredClamps)[number];

/** A mean force, N, and where it is printed. */
interface MeasuredForce {
  readonly force: number;
  readonly citation: Citation;
}

const forces = new Map<MeasuredClamp, MeasuredForce>();

/** Mean force measured of a kind of clamp. */
export function measuredForce(clamp: MeasuredClamp): MeasuredForce {
  const had = forces.get(clamp);
  if (had) return had;
  const [row] = tableRows('clamp-forces.fine-woodworking').filter((r) => r.text('clamp') === clamp) as [
    DataRow,
  ];
  const measured = {
    force: toQuantity(`${row.text('force_lbf')} lbf`, 'force').value,
    citation: row.citation,
  };
  forces.set(clamp, measured);
  return measured;
}

/** How the weaker of the two testers fared against the mean. */
export function weakerHand(): { readonly factor: number; readonly citation: Citation } {
  const [row] = tableRows('clamp-forces.fine-woodworking').filter((r) =>
    r.text('clamp').includes('weaker hand'),
  ) as [DataRow];
  return { factor: row.number('factor') as number, citation: row.citation };
}
