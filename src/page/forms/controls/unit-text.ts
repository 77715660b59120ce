/** A number and its unit as they are written in one text. */
export interface NumberAndUnit {
  readonly number: string;
  readonly unit: string;
}

const pattern = /^\s*([-+−]?\d[\d.,\s/]*|[-+−]?\.\d+)\s*([^\d\s.,/+−-].*)?$/;

/** `640 mm` as its two parts; undefined for `5' 10"` and for words. */
export function splitUnit(text: string): NumberAndUnit | undefined {
  const found = pattern.exec(text);
  return found?.[1] === undefined ? undefined : { number: found[1].trim(), unit: (found[2] ?? '').trim() };
}

/** The text to be written for what was typed: a bare number takes the unit chosen beside it, a decimal comma becomes a point. */
export function withUnit(typed: string, unit: string): string {
  const text = typed.trim();
  const parts = splitUnit(text);
  if (parts === undefined) return text;
  const number = parts.number.replace('−', '-').replace(/^([-+]?\d+),(\d+)$/, '$1.$2');
  return `${number} ${parts.unit === '' ? unit : parts.unit}`.trim();
}

const shown: Readonly<Record<string, string>> = {
  degC: '°C',
  degF: '°F',
  um: 'µm',
  deg: '°',
  floz: 'fl oz (US)',
  gal: 'gal (US)',
};

/** A unit as people write it: `m²` for `m2`. */
export function unitLabel(unit: string): string {
  return (
    shown[unit] ??
    unit
      .replace(/\^?2\b/g, '²')
      .replace(/\^?3\b/g, '³')
      .replace(/\^?4\b/g, '⁴')
  );
}

/** True where both texts name the same unit. */
export const isSameUnit = (a: string, b: string): boolean =>
  a === b || unitLabel(a).toLowerCase() === unitLabel(b).toLowerCase();
