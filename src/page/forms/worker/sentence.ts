import type { ResultInternals } from '../../../engine/result.js';
import type { ValueLine } from '../../../engine/result-types.js';
import { sentences } from './sentences.js';

/** The answer in one sentence: the recipe's own where it has one, else its pattern filled in, else its first two figures. */
export function sentenceOf(inner: ResultInternals, lines: readonly ValueLine[]): string {
  const own = inner.raw['sentence'];
  if (typeof own === 'string') return own;
  const pattern = sentences[inner.name]?.(inner.raw);
  if (pattern !== undefined) return filled(pattern, lines);
  return lines
    .filter(({ metric }) => metric.length < 60)
    .slice(0, 2)
    .map(({ label, metric }) => `${capital(label.split(/[;:]/)[0] ?? label)}: ${metric}.`)
    .join(' ');
}

/** `{strips}` becomes the figure of that name. */
function filled(pattern: string, lines: readonly ValueLine[]): string {
  return pattern.replace(/\{(\w+)\}/g, (whole, name: string) => {
    const metric = lines.find((line) => line.name === name)?.metric;
    return metric === undefined ? whole : metric.replace(/^[−-]/, '');
  });
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
