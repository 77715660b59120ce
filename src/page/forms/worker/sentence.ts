import { spokenAnswer } from '../../../engine/spoken.js';
import type { ResultInternals } from '../../../engine/result.js';
import type { ValueLine } from '../../../engine/result-types.js';
import { capitalised } from '../../../units/capitalised.js';

/** The answer in one sentence: the recipe's own where it has one, else its first two figures. */
export function sentenceOf(inner: ResultInternals, lines: readonly ValueLine[]): string {
  return (
    spokenAnswer(inner) ||
    lines
      .filter(({ metric }) => metric.length < 60)
      .slice(0, 2)
      .map(({ label, metric }) => `${capitalised(label.split(/[;:]/)[0] ?? label)}: ${metric}.`)
      .join(' ')
  );
}
