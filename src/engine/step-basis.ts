import { shortCitation } from './source.js';
import type { Working } from './trace.js';

const basisWord = {
  published: '',
  definition: 'definition',
  geometry: 'geometry',
  estimate: 'estimate',
  'common practice': 'common practice',
} as const;

/** What a line of the workings rests on, short: the sources stand in full at the end. */
export function workingBasis(w: Working): string {
  if (w.kind === 'remark') return w.source ? shortCitation(w.source) : '';
  return [basisWord[w.basis], w.source ? shortCitation(w.source) : ''].filter(Boolean).join('; ');
}
