import { roundedTo } from './clean-number.js';

/** A time as people say it: hours, minutes and seconds, days above two of them; no figure finer than it can be kept. */
export function formatTime(seconds: number): string {
  const size = Math.abs(seconds);
  const sign = seconds < 0 ? '−' : '';
  if (size >= 48 * 3600) return `${sign}${roundedTo(size / 86_400, size >= 864_000 ? 1 : 0.5)} days`;
  if (size < 10) return `${sign}${roundedTo(size, 0.1)} s`;
  const s = size >= 600 ? roundedTo(size / 60, 1) * 60 : roundedTo(size, 1);
  const parts = [
    [Math.floor(s / 3600), 'h'],
    [Math.floor((s % 3600) / 60), 'min'],
    [s % 60, 's'],
  ] as const;
  return sign + parts.flatMap(([n, unit]) => (n > 0 ? [`${n} ${unit}`] : [])).join(' ');
}
