// Rules of standards that know no species: softwood lumber by its green size, and structural timber by a flat rate.
import { outOfRange } from '../../recipe/caution.js';
import { formula, letter } from '../../recipe/formula.js';
import { cite } from '../../recipe/source.js';
import type { Work } from '../../recipe/work.js';
import type { Timber } from '../../timber/timber.js';

const lumberSource = cite('fpl-rp-489', 'equations for width and thickness', {
  also: cite('astm-d1990', 'adjustment of size'),
});
const en336Source = cite('en-336', 'correction of sizes for moisture');

const D = letter('length', 'size at the first moisture', { in: 'mm' });
const last = letter('moisture', 'moisture at last', { in: '%' });
const first = letter('moisture', 'moisture at first', { in: '%' });

export const lumberRule = formula({
  symbol: 'Delta_D',
  gives: letter('length', 'change of size across the grain', { in: 'mm' }),
  source: lumberSource,
  text: 'D * ((1 - (a - b M_F) / 100) / (1 - (a - b M_I) / 100) - 1)',
  where: {
    D,
    a: letter('ratio', 'shrinkage from green to no moisture, %'),
    b: letter('ratio', 'shrinkage for each per cent of moisture, %'),
    M_F: last,
    M_I: first,
  },
});
export const flatRule = formula({
  symbol: 'Delta_D',
  gives: letter('length', 'change of size across the grain', { in: 'mm' }),
  source: en336Source,
  text: 'D * k / 100 * (M_F - M_I)',
  where: { D, k: letter('ratio', '% of the size for each per cent of moisture'), M_F: last, M_I: first },
});

// FPL-RP-489; the second pair is recalled: redwood, western redcedar, northern white-cedar.
const lumber = {
  width: { usual: [6.031, 0.215], little: [3.454, 0.157] },
  thickness: { usual: [5.062, 0.181], little: [2.816, 0.128] },
} as const;
const movesLittle = new Set(['redwood', 'young-growth-redwood', 'western-redcedar', 'northern-white-cedar']);

export const sizeRules = ['timber', 'softwood lumber', 'EN 336'] as const;
export type SizeRule = (typeof sizeRules)[number];

/** Change of width by one of the two rules. */
export function byRule(
  work: Work,
  rule: Exclude<SizeRule, 'timber'>,
  width: number,
  from: number,
  to: number,
  face: 'width' | 'thickness',
  timber: Timber | undefined,
): number {
  if (rule === 'softwood lumber') {
    const little = movesLittle.has(timber?.id ?? '');
    const [a, b] = lumber[face][little ? 'little' : 'usual'];
    // Above a/b the line would swell past the green size.
    const green = a / b / 100;
    if (Math.min(from, to) < 0.08 || Math.max(from, to) > 0.19)
      work.caution(
        outOfRange(
          'the lines for softwood lumber are stated for 8 to 19 % moisture, with a green moisture of 28 %',
          lumberSource,
        ),
      );
    if (little) work.source(cite('fpl-rp-489', 'equations for redwood and cedars', { read: 'memory' }));
    return work.apply(lumberRule, { D: width, a, b, M_F: Math.min(to, green), M_I: Math.min(from, green) });
  }
  const hard = timber?.group === 'hardwood';
  work.say(
    `EN 336: ${hard ? '0.30' : '0.25'} % of the size for each per cent of moisture${hard ? ' in hardwood (0.35 in some editions)' : ' in softwood and poplar'}, counted to 30 %.`,
    en336Source,
  );
  return work.apply(flatRule, {
    D: width,
    k: hard ? 0.3 : 0.25,
    M_F: Math.min(to, 0.3),
    M_I: Math.min(from, 0.3),
  });
}
