import { InputError } from '../../units/input-error.js';
import { dataCaution, estimate } from '../../engine/caution.js';
import { cite } from '../../engine/source.js';
import type { Trace } from '../../engine/trace.js';
import { citeTimber } from '../timber-field.js';
import type { Timber } from '../timber.js';
import { qualityFactor } from './clear-wood.js';
import { factor, namedFactor } from './factors.js';
import { greenFigures, type GreenFigures, type Rank } from './green-figures.js';
import type { LoadCase, SectionSize } from './load-case.js';
import { ungradedStress, type UngradedStress } from './ungraded.js';

export type { Rank } from './green-figures.js';

/** What is known of a piece of a species, or of a group of species, without a structural grade. */
export interface UngradedPiece {
  /** Examined for knots, grain, holes and rot, and passed. */
  readonly examined: boolean;
  /** Strength ratio of the piece, 0 to 1, instead of that of an examined or unexamined piece. */
  readonly ratio?: number | undefined;
  /** Who graded it and how; needed for a ratio above that of an examined piece. */
  readonly reason?: string | undefined;
  readonly size: SectionSize;
  readonly load: LoadCase;
  /** Of a group of species: its low, middle or high figures; low by default. */
  readonly rank?: Rank;
}

/**
 * Working stresses of a species without a grade, by the one rule of every recipe: green clear wood, its lower 5 % limit,
 * the ratio of the piece, no gain from drying, never above the lowest structural grade held. A ratio above that of an
 * examined piece needs a reason, and is then not held down by the grades. @throws InputError without that reason
 */
export function ungradedWood(
  timber: Timber,
  piece: UngradedPiece,
  trace: Trace,
): { readonly stress: UngradedStress; readonly basis: string; readonly figures: GreenFigures } {
  const most = factor('ratio.examined');
  const ratio = piece.ratio ?? (piece.examined ? most : factor('ratio.ungraded'));
  const graded = ratio > most + 1e-9;
  if (graded && !piece.reason?.trim())
    throw new InputError({
      field: 'strengthRatio',
      message: `got ${percent(ratio)} without a reason, takes at most ${percent(most)} for wood without a structural grade; give the grade itself, or strengthReason such as "graded by eye by a trained grader, No. 2"`,
    });
  const figures = greenFigures(timber, timber.tradeIds ?? [], piece.rank ?? 'low');
  if (!timber.isGroup) citeTimber(trace, timber, { rows: figures.rows, count: 1 });
  const stress = ungradedStress(figures, ratio, piece.size, piece.load, {
    trace,
    ...(graded ? { cap: false, quality: qualityFactor(ratio) } : {}),
  });
  if (graded) trace.source(cite('astm-d245', 'quality factors by strength ratio', { read: 'memory' }));
  if (!trace.silent && figures.bending !== undefined)
    tell(timber, piece, ratio, graded, figures, stress, trace);
  return { stress, figures, basis: basisOf(timber, ratio, piece, graded, figures) };
}

const percent = (share: number): string => `${Math.round(share * 1000) / 10} %`;

function basisOf(
  timber: Timber,
  ratio: number,
  piece: UngradedPiece,
  graded: boolean,
  figures: GreenFigures,
): string {
  if (figures.bending === undefined && figures.modulus === undefined) return 'no published figures';
  const figure = timber.isGroup
    ? `${{ low: '10th percentile', middle: 'middle', high: '90th percentile' }[piece.rank ?? 'low']} of ${figures.count} species`
    : figures.count > 1
      ? `lowest of ${figures.count} species of the trade name`
      : 'clear wood';
  const how = graded
    ? `as "${(piece.reason as string).trim().slice(0, 80)}"`
    : piece.ratio !== undefined
      ? 'as given'
      : piece.examined
        ? 'examined'
        : 'not examined';
  return `no grade, ${figure}, green, strength ratio ${percent(ratio)} (${how})`;
}

/** Says how much of clear wood's strength was taken and why. */
function tell(
  timber: Timber,
  piece: UngradedPiece,
  ratio: number,
  graded: boolean,
  figures: GreenFigures,
  stress: UngradedStress,
  trace: Trace,
): void {
  if (graded)
    trace.warn(
      dataCaution(
        `strength ratio of ${percent(ratio)} on the word of the person who gave it: ${(piece.reason as string).trim().slice(0, 80)}`,
      ),
    );
  else if (piece.ratio === undefined) {
    const used = namedFactor(piece.examined ? 'ratio.examined' : 'ratio.ungraded');
    trace.warn(
      dataCaution(
        `${timber.name} without a structural grade: ${percent(ratio)} of clear wood was taken, ${used.name}${timber.isGroup ? `, of the 10th percentile of ${figures.count} species` : ''}. ${piece.examined ? '' : 'Look each piece over for knots, sloping grain, holes and rot, or test'} ${piece.examined ? 'Test' : ''} a piece: hang a known weight on it and give the modulus that its sag tells`.replace(
          /\s+/g,
          ' ',
        ),
        used.citation,
      ),
    );
  }
  const dry = Object.entries(figures.basis).filter(([, b]) => b === 'from the mean at 12 %');
  if (dry.length > 0)
    trace.warn(
      estimate(
        `no green figure is held for ${dry.map(([p]) => p).join(' and ')} of ${timber.name}: the mean at 12 % was taken down by the least ratio of green to dry published`,
      ),
    );
  if (figures.basis.shear === 'from the bending strength')
    trace.warn(
      estimate(
        `no shear strength is held for ${timber.name}: the least share of the bending strength that is published was taken`,
      ),
    );
  for (const { kind, grade } of stress.capped)
    trace.note(
      `The ${kind === 'modulus' ? 'modulus' : `working stress in ${kind}`} is held down to that of ${grade}, the lowest structural grade for this size and load.`,
      cite('library-choices', 'ungraded wood never counts for more than the lowest structural grade held'),
    );
}
