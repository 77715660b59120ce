// The size of a mixed batch, what is poured of each part, and what the tins then hold.
import { InputError } from '../../units/input-error.js';
import type { Trace } from '../../engine/trace.js';
import type { Amount, Measure } from './finish-amount.js';
import { added, batchIn, firstOf, ofMix, part, poured, shareOfMix, thinnerOf, weighed } from './mix.js';

/** Inputs of a mix: parts by name, amounts, densities in kg/m³. */
export interface MixGiven {
  readonly parts: Readonly<Record<string, number>>;
  readonly batch: Amount | undefined;
  readonly have: Readonly<Record<string, Amount>> | undefined;
  readonly by: 'volume' | 'mass' | undefined;
  readonly densities: Readonly<Record<string, number>> | undefined;
  readonly thinner: string | undefined;
}

/** Volume or mass: as asked, else as the amounts are given. */
export function measureOf({ by, batch, have }: MixGiven): Measure {
  if (by === undefined) return batch?.kind ?? firstOf(have)?.kind ?? 'liquid';
  return by === 'mass' ? 'mass' : 'liquid';
}

/** The part that runs out first, and how much one part could then be. */
export function leastPart(
  have: Readonly<Record<string, number>>,
  parts: MixGiven['parts'],
  measure: Measure,
  trace: Trace,
): { readonly name: string; readonly one: number } | undefined {
  return Object.entries(have)
    .map(([name, h]) => ({
      name,
      one: part(measure, h, parts[name] as number, trace, `${name}: what one part could be`),
    }))
    .reduce<{ name: string; one: number } | undefined>((a, b) => (a && a.one <= b.one ? a : b), undefined);
}

/** The whole mix: the batch, or as much as the part that runs out first allows. @throws InputError where neither is given */
export function wholeOf(
  given: MixGiven,
  measure: Measure,
  R: number,
  least: { readonly name: string; readonly one: number } | undefined,
  trace: Trace,
): number {
  if (given.batch)
    return given.batch.kind === measure
      ? given.batch.value
      : batchIn(measure, given.batch, given.parts, R, given.densities, trace);
  if (!least)
    throw new InputError({
      field: 'batch',
      message:
        'missing; takes how much mix is wanted, such as "2 L", or give have with what is left in the tins',
    });
  trace.note(`${least.name} gives the smallest part, so it runs out first and sets the whole.`);
  return least.one * R;
}

/** What to add of each part, and what the jug or the scale then shows. */
export function pourList(parts: MixGiven['parts'], measure: Measure, whole: number, R: number, trace: Trace) {
  let level = 0;
  return Object.entries(parts).map(([n, r]) => {
    const value =
      measure === 'mass'
        ? trace.evaluate(weighed, { M: whole, r, R }, `${n} to weigh`)
        : trace.evaluate(poured, { V: whole, r, R }, `${n} to pour`);
    level += value;
    return {
      part: n,
      add: { kind: measure, value },
      fillTo: { kind: measure, value: level },
      share: trace.evaluate(shareOfMix, { r, R }, `${n} as a share of the mix`),
    };
  });
}

/** What is left of each part in stock afterwards, and what is short of each part. */
export function stockAfter(
  have: Readonly<Record<string, number>>,
  pour: readonly { readonly part: string; readonly add: Amount }[],
  whole: number,
) {
  const needed = new Map(pour.map((p) => [p.part, p.add.value]));
  return {
    left: Object.entries(have).map(([n, h]) => [n, Math.max(0, h - (needed.get(n) as number))] as const),
    // Short by less than a billionth of the batch comes from rounding, not from the tin.
    short: pour
      .map((p) => [p.part, p.add.value - (have[p.part] ?? 0)] as const)
      .filter(([, missing]) => missing > whole * 1e-9),
  };
}

/** The thinner against the rest and as a share of the mix; nothing for a single part. */
export function thinning(given: MixGiven, R: number, trace: Trace) {
  const names = Object.keys(given.parts);
  if (names.length < 2) return {};
  const thin = thinnerOf(names, given.thinner);
  const t = trace.evaluate(added, { r: given.parts[thin] as number, R }, `${thin} added, against the rest`);
  const s = trace.evaluate(ofMix, { t }, `${thin} as a share of the mix`);
  trace.note(
    `The two are not the same figure: adding 20 % of ${thin} to a tin does not make a mix that is 20 % ${thin}, since the mix has grown too; 20 on 100 is 20 of 120, or 16.7 %. For 20 % of the mix, 25 % must be added.`,
  );
  return { thinnerAdded: t, thinnerShare: s };
}
