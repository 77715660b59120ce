import { estimate, type Caution } from '../../engine/caution.js';
import { cite } from '../../engine/source.js';
import type { Timber } from '../../materials/timber.js';
import type { Cut } from './wood-state.js';

const scatterSource = cite('fpl-gtr-190', 'ch. 4, variability of shrinkage', { read: 'memory' });

/** What low and high mean, for the recipes that show them. */
export function spreadCautions(pieces: readonly { readonly timber: Timber; readonly cut: Cut }[]): Caution[] {
  return [
    ...(pieces.some((p) => !p.timber.isGroup)
      ? [
          estimate(
            'low and high are where four boards of the species in five are expected, from a coefficient of variation of about 15 %',
            scatterSource,
          ),
        ]
      : []),
    ...(pieces.some((p) => p.cut.unknown)
      ? [estimate('the sawing is not known: low and high run from quarter-sawn to flat-sawn')]
      : []),
  ];
}
