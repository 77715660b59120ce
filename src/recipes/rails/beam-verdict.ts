// Whether a beam is strong enough, in a word and as a sentence.
import type { Material } from './design-values.js';

/** The verdict as a sentence. */
export const beamWords = (verdict: string): string =>
  verdict.startsWith('yes')
    ? 'It is strong enough.'
    : verdict.startsWith('no:')
      ? `It is not strong enough${verdict.slice(2)}.`
      : 'Its strength was not checked.';

export function verdict(
  sigma: number,
  tau: number,
  uses: { readonly notch: number | undefined; readonly glue: number | undefined },
  material: Material,
): string {
  const over = [
    sigma > (material.bending ?? Infinity) ? 'bending' : '',
    tau > (material.shear ?? Infinity) ? 'shear' : '',
    (uses.notch ?? 0) > 1 ? 'at the notch' : '',
    (uses.glue ?? 0) > 1 ? 'at the glue line' : '',
  ].filter(Boolean);
  if (over.length > 0) return `no: too much ${over.join(' and ')}`;
  const unchecked = [
    material.bending === undefined ? 'bending' : '',
    material.shear === undefined ? 'shear' : '',
  ].filter(Boolean);
  return unchecked.length === 2
    ? 'not checked: no stresses to stay under were given'
    : unchecked.length === 1
      ? `yes, ${unchecked[0]} not checked`
      : 'yes';
}
