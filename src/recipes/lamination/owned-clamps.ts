// What the clamps that there are reach: a mixed set, of which only those long enough count.
import { note, type Caution } from '../../engine/caution.js';
import type { Adjustment } from '../../engine/mending.js';
import type { Trace } from '../../engine/trace.js';
import { InputError } from '../../units/input-error.js';
import type { clampFields } from './clamp-fields.js';
import { forceOf } from './clamp-pressure.js';
import { reaching, stagesInWords, stagesOf, type ClampRow, type Stage } from './staged-glue-up.js';

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
  readonly outerWidth: number;
  readonly pad: number;
  readonly slabWidth?: number | undefined;
  readonly needReach?: number | undefined;
  readonly owned?: readonly OwnedRow[] | undefined;
}

const slack = 1e-9;

/**
 * The pressure that the clamps there are reach, and whether they will do by force and by spacing; where they are too
 * short, the stages of narrower slabs that they glue first. Nothing without clamps. @throws InputError for a row with
 * neither or both of kind and force
 */
export function ownedAnswer(
  given: Given,
  need: { readonly force: number; readonly bySpacing: number },
  trace: Trace,
) {
  if (given.owned === undefined) return {};
  const rows = given.owned.map((row, i) => ({ ...row, each: forceOfRow(row, i, trace) }));
  const { clamps, force } = reaching(rows, given.needReach ?? 0);
  const jointArea = given.length * given.jointHeight;
  trace.note(
    `Clamps that reach: ${clamps}, together ${Math.round(force)} N on ${(jointArea * 1e4).toFixed(0)} cm² of joint.`,
  );
  const enough = force >= need.force * (1 - slack) && clamps >= need.bySpacing;
  const stages = enough ? undefined : stagesFor(given, rows, { ...need, jointArea }, trace);
  return {
    ownedPressure: force / jointArea,
    ownedClamps: clamps,
    ownedVerdict: enough
      ? 'They will do.'
      : `Not enough: ${lacks(force, clamps, need)}.${stages ? stagesInWords(stages) : ''}`,
    ...(stages
      ? {
          stages: stages.map(({ enough: does, ...stage }) => ({ ...stage, enough: does ? 'yes' : 'no' })),
        }
      : {}),
  };
}

/** Narrower slabs first, where the reach is what is missing. */
function stagesFor(
  given: Given,
  rows: readonly ClampRow[],
  need: { readonly force: number; readonly bySpacing: number; readonly jointArea: number },
  trace: Trace,
): readonly Stage[] | undefined {
  const whole = given.needReach;
  if (whole === undefined) return undefined;
  return stagesOf(
    rows,
    {
      whole,
      pads: given.slabWidth === undefined ? 2 * given.pad : Math.max(0, whole - given.slabWidth),
      narrowest: 2 * given.outerWidth,
      force: need.force,
      count: need.bySpacing,
      jointArea: need.jointArea,
    },
    trace,
  );
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

export const notEnough = (answer: { readonly ownedVerdict?: string | undefined }): boolean =>
  answer.ownedVerdict?.startsWith('Not enough') === true;

/** More clamps of the kind that reaches farthest. */
export const moreClamps: Adjustment<typeof clampFields> = {
  step: 1,
  most: 60,
  kind: 'count',
  say: 'borrow {value} more clamps of your longest kind',
  adjust: (given, by) => {
    const rows = given.owned ?? [];
    const farthest = Math.max(...rows.map((r) => r.reach ?? Infinity));
    const row = rows.findIndex((r) => (r.reach ?? Infinity) === farthest);
    return { ...given, owned: rows.map((r, i) => (i === row ? { ...r, count: r.count + by } : r)) };
  },
};

/** A dry joint is weaker than a crowded bench. */
export const ownedCautions = (answer: { readonly ownedVerdict?: string | undefined }): Caution[] =>
  notEnough(answer)
    ? [
        note(
          'with too little pressure the glue line stays thick: borrow clamps, or press with wedges between fixed stops',
        ),
      ]
    : [];
