// Rules of standards that know no species: softwood lumber by its green size, and structural timber by a flat rate.
import { outOfRange } from '../../engine/caution.js';
import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';
import type { Trace } from '../../engine/trace.js';
import type { Timber } from '../../materials/timber.js';

const lumberSource = cite('fpl-rp-489', 'equations for width and thickness', {
  also: cite('astm-d1990', 'adjustment of size'),
});
const en336Source = cite('en-336', 'correction of sizes for moisture');

const D = variable('length', 'size at the first moisture', { unit: 'mm' });
const last = variable('moisture', 'final moisture content', { unit: '%' });
const first = variable('moisture', 'starting moisture content', { unit: '%' });

export const lumberRule = formula({
  symbol: 'Delta_D',
  result: variable('length', 'change of size across the grain', { unit: 'mm' }),
  source: lumberSource,
  expression: 'D * ((1 - (a - b M_F) / 100) / (1 - (a - b M_I) / 100) - 1)',
  empirical: true,
  variables: {
    D,
    a: variable('ratio', 'shrinkage from green to no moisture, %'),
    b: variable('ratio', 'shrinkage for each per cent of moisture, %'),
    M_F: last,
    M_I: first,
  },
});
export const flatRule = formula({
  symbol: 'Delta_D',
  result: variable('length', 'change of size across the grain', { unit: 'mm' }),
  source: en336Source,
  expression: 'D * k * (M_F - M_I)',
  variables: {
    D,
    k: variable('ratio', '% of the size for each per cent of moisture'),
    M_F: last,
    M_I: first,
  },
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
  trace: Trace,
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
      trace.warn(
        outOfRange(
          'the lines for softwood lumber are stated for 8 to 19 % moisture, with a green moisture of 28 %',
          lumberSource,
        ),
      );
    if (little) trace.source(cite('fpl-rp-489', 'equations for redwood and cedars', { read: 'memory' }));
    return trace.evaluate(lumberRule, {
      D: width,
      a,
      b,
      M_F: Math.min(to, green),
      M_I: Math.min(from, green),
    });
  }
  const hard = timber?.group === 'hardwood';
  trace.note(
    `EN 336: ${hard ? '0.30' : '0.25'} % of the size for each per cent of moisture${hard ? ' in hardwood (0.35 in some editions)' : ' in softwood and poplar'}, counted to 30 %.`,
    en336Source,
  );
  return trace.evaluate(flatRule, {
    D: width,
    k: hard ? 0.3 : 0.25,
    M_F: Math.min(to, 0.3),
    M_I: Math.min(from, 0.3),
  });
}
