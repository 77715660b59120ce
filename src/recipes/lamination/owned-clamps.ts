// What the clamps that there are reach: a mixed set, of which only those long enough count.
import { note, type Caution } from '../../engine/caution.js';
import type { Trace } from '../../engine/trace.js';
import { InputError } from '../../units/input-error.js';
import { forceOf } from './clamp-pressure.js';
import { mm } from './salvage-caution.js';

/** A row of clamps that there are. */
export interface OwnedRow {
  readonly kind?: string | undefined;
  readonly force?: number | undefined;
  readonly count: number;
  readonly reach?: number | undefined;
}

interface Given {
  readonly length: number;
  readonly jointHeight: number;
  readonly needReach?: number | undefined;
  readonly owned?: readonly OwnedRow[] | undefined;
}

const slack = 1e-9;
const reaches = (row: OwnedRow, need: number | undefined): boolean =>
  need === undefined || row.reach === undefined || row.reach >= need - slack;

/**
 * The pressure that the clamps there are reach, and whether they will do by force and by spacing; where they are too
 * short, how wide the slabs may be that they glue first. Nothing without clamps. @throws InputError for a row with
 * neither or both of kind and force
 */
export function ownedAnswer(
  given: Given,
  need: { readonly force: number; readonly bySpacing: number },
  trace: Trace,
) {
  if (given.owned === undefined) return {};
  const rows = given.owned.map((row, i) => ({ ...row, each: forceOfRow(row, i, trace) }));
  const used = rows.filter((row) => reaches(row, given.needReach));
  const count = used.reduce((n, row) => n + row.count, 0);
  const force = used.reduce((sum, row) => sum + row.count * row.each, 0);
  const pressure = force / (given.length * given.jointHeight);
  trace.note(
    `Clamps that reach: ${count}, together ${Math.round(force)} N on ${(given.length * given.jointHeight * 1e4).toFixed(0)} cm² of joint.`,
  );
  const enough = force >= need.force * (1 - slack) && count >= need.bySpacing;
  return {
    ownedPressure: pressure,
    ownedClamps: count,
    ownedVerdict: enough
      ? 'They will do.'
      : `Not enough: ${lacks(force, count, need)}.${staged(given, rows, need)}`,
  };
}

function forceOfRow(row: OwnedRow, i: number, trace: Trace): number {
  if ((row.kind === undefined) === (row.force === undefined))
    throw new InputError({
      field: `owned[${i + 1}].force`,
      message: `got ${row.kind === undefined ? 'neither kind nor force' : 'both kind and force'}, takes one of them`,
    });
  return forceOf(row.force ?? (row.kind as string), trace);
}

const lacks = (
  force: number,
  count: number,
  need: { readonly force: number; readonly bySpacing: number },
): string =>
  [
    force < need.force ? `${Math.round((force / need.force) * 100)} % of the force` : '',
    count < need.bySpacing
      ? `${count} of the ${need.bySpacing} clamps that the spread of pressure takes`
      : '',
  ]
    .filter(Boolean)
    .join(', and ');

/** Where shorter clamps would do: the widest slabs to glue first, and what the last joint then takes. */
function staged(
  given: Given,
  rows: readonly (OwnedRow & { readonly each: number })[],
  need: { readonly force: number; readonly bySpacing: number },
): string {
  const whole = given.needReach;
  if (whole === undefined) return '';
  const lengths = rows.flatMap((row) => row.reach ?? []).sort((a, b) => b - a);
  const widest = lengths.find((length) => {
    const those = rows.filter((row) => reaches(row, length));
    return (
      those.reduce((n, row) => n + row.count, 0) >= need.bySpacing &&
      those.reduce((sum, row) => sum + row.count * row.each, 0) >= need.force
    );
  });
  if (widest === undefined || widest >= whole) return '';
  const parts = Math.ceil(whole / widest - slack);
  return ` In stages: glue ${parts} slabs of ${mm(Math.floor((whole / parts) * 1000) / 1000)} with their pads first; the joints between them still take clamps of ${mm(whole)}, two joined head to head.`;
}

/** A dry joint is weaker than a crowded bench. */
export const ownedCautions = (answer: { readonly ownedVerdict?: string | undefined }): Caution[] =>
  answer.ownedVerdict?.startsWith('Not enough')
    ? [
        note(
          'with too little pressure the glue line stays thick: borrow clamps, or press with wedges between fixed stops',
        ),
      ]
    : [];
