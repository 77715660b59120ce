import { kinds, type Kind } from './kind.js';
import { unitOf } from './unit.js';
import { InputError, inspectValue } from './input-error.js';

export interface FormatOptions {
  /** 'metric' (default) or 'inch' for the second column. */
  readonly system?: 'metric' | 'inch';
  /** Denominator of the finest inch fraction: 2, 4, 8, 16, 32, 64 or 128. Default 16, 32 below an inch. */
  readonly fraction?: number;
  /** Show in this unit instead of the one chosen by size. */
  readonly unit?: string;
  /** Significant digits; default 4. */
  readonly digits?: number;
}

interface Shown {
  readonly kind: Kind;
  readonly value: number;
  readonly currency?: string;
}

/** The unit in which a value of a kind is shown: the largest of the kind's units that leaves the number at least 1. */
export function showIn(kind: Kind, value: number, system: 'metric' | 'inch' = 'metric'): string {
  const facts = kinds[kind];
  const units = system === 'inch' && facts.inch.length > 0 ? facts.inch : facts.metric;
  // Joiners write millimetres up to ten metres and more; metres only where millimetres stop being read.
  const size = Math.abs(value);
  if (kind === 'length') return system === 'inch' ? 'in' : size < 20 ? 'mm' : 'm';
  let chosen = units[0] as string;
  const least = kind === 'area' ? 0.1 : 1;
  for (const unit of units.slice(1))
    if (size >= unitOf(kind, unit).scale * least * (1 - 1e-12)) chosen = unit;
  return chosen;
}

/** Text with unit. Never exponent notation between 1e-6 and 1e12, never a tail of digits. */
export function formatQuantity(q: Shown, options: FormatOptions = {}): string {
  const system = options.system ?? 'metric';
  const unit = options.unit ?? showIn(q.kind, q.value, system);
  if (q.kind === 'length' && unit === 'in' && !options.digits)
    return inches(q.value / 0.0254, options.fraction);
  const u = unitOf(q.kind, unit);
  const n = (q.value - u.offset) / u.scale;
  if (u.name === 'money' || u.name.startsWith('money/')) {
    const sign = q.currency ?? '';
    const per = pretty(u.name.slice(5));
    const amount = money(Math.abs(n));
    return `${n < 0 ? '-' : ''}${sign}${sign.length > 1 ? ' ' : ''}${amount}${per}`;
  }
  const text = number(n, options.digits ?? digitsFor(q.kind, n, u.name));
  if (u.name === '') return text;
  return u.name === 'deg' ? `${text}°` : `${text} ${pretty(u.name)}`;
}

const toTenths: ReadonlySet<Kind> = new Set(['moisture', 'humidity', 'share', 'temperature']);

function digitsFor(kind: Kind, n: number, unit: string): number {
  // A saw is set to a tenth of a millimetre at best, and a moisture meter reads tenths; more digits would pretend.
  if (toTenths.has(kind) || (kind === 'length' && unit === 'mm'))
    return Math.min(5, Math.max(3, Math.floor(Math.log10(Math.abs(n))) + 2));
  return 4;
}

/** A number at `digits` significant digits, whole digits always kept, thousands set apart by a thin space above 9999. */
export function number(n: number, digits = 4): string {
  if (!Number.isFinite(n)) throw new InputError(`got ${inspectValue(n)}, takes a finite number`);
  if (n === 0) return '0';
  const size = Math.abs(n);
  if (size >= 1e12 || size < 1e-6) {
    const [m, e] = n.toExponential(Math.max(0, digits - 1)).split('e') as [string, string];
    return `${m.includes('.') ? m.replace(/\.?0+$/, '') : m}e${Number(e)}`;
  }
  const whole = Math.floor(Math.log10(size)) + 1;
  const places = Math.min(12, Math.max(0, digits - whole));
  let text = n.toFixed(places);
  if (text.includes('.')) text = text.replace(/\.?0+$/, '');
  if (text === '-0') text = '0';
  const [int, frac] = text.split('.') as [string, string?];
  const grouped = int.replace('-', '').length > 4 ? int.replace(/\B(?=(\d{3})+(?!\d))/g, '\u202f') : int;
  return frac ? `${grouped}.${frac}` : grouped;
}

function money(n: number): string {
  if (n >= 1e12) return number(n);
  const [int, frac] = n.toFixed(2).split('.') as [string, string];
  return `${int.length > 4 ? int.replace(/\B(?=(\d{3})+(?!\d))/g, '\u202f') : int}.${frac}`;
}

/** Inches to the nearest fraction, reduced: 35 7/16 in. Below half the finest fraction it falls back to thousandths. */
export function inches(n: number, fraction?: number): string {
  if (n < 0) return `-${inches(-n, fraction)}`;
  const d = fraction ?? (Math.floor(n) === 0 ? 32 : 16);
  if (![1, 2, 4, 8, 16, 32, 64, 128].includes(d))
    throw new InputError(`fraction: got ${inspectValue(d)}, takes 1, 2, 4, 8, 16, 32, 64 or 128`);
  if (n >= 1e9) return `${number(n, 4)} in`;
  // Past twenty feet nobody counts inches alone.
  if (n >= 240) {
    const feet = Math.floor(Math.round(n * d) / d / 12);
    const rest = inches(Math.round(n * d) / d - feet * 12, d);
    return `${number(feet, 9)} ft${rest === '0 in' ? '' : ` ${rest}`}`;
  }
  let parts = Math.round(n * d);
  if (parts === 0) return `${number(n, 2)} in`;
  const whole = Math.floor(parts / d);
  parts -= whole * d;
  let den = d;
  while (parts > 0 && parts % 2 === 0) {
    parts /= 2;
    den /= 2;
  }
  if (parts === 0) return `${whole} in`;
  return `${whole > 0 ? `${whole} ` : ''}${parts}/${den} in`;
}

const prettyUnits: Readonly<Record<string, string>> = {
  fraction: '',
  degC: '°C',
  degF: '°F',
  deg: '°',
  um: 'µm',
  floz: 'US fl oz',
  gal: 'US gal',
  qt: 'US qt',
  pt: 'US pt',
  'imp floz': 'imp fl oz',
};

/** A unit's name as people print it: m², °C, N·m. */
export function pretty(unit: string): string {
  return (prettyUnits[unit] ?? unit)
    .replace(
      /([a-zA-Z])([234])(?![0-9a-z])/g,
      (_, a: string, d: string) => a + '²³⁴'.charAt('234'.indexOf(d)),
    )
    .replace(/(N) (m)/, '$1·$2');
}
