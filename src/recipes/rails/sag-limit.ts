import { both, Quantity } from '../../units/quantity.js';
import { toQuantity } from '../../units/parse-quantity.js';
import { InputError, inspectValue } from '../../units/input-error.js';
import { makeField } from '../../engine/field.js';
import type { Citation } from '../../engine/source.js';
import { tableRows } from '../../materials/data-tables.js';

/** How far a rail may sag: a share of its span (`L/300`), or a length in metres. */
export type SagLimit =
  | { readonly of: 'span'; readonly ratio: number; readonly name?: string; readonly source?: Citation }
  | { readonly of: 'length'; readonly most: number; readonly source?: undefined };

/** Uses of data/deflection-limits.csv that may be named instead of a figure; a test keeps the two alike. */
export const limitUses = [
  'floor members',
  'roof with plaster ceiling',
  'roof with other ceiling',
  'roof without ceiling',
  'joists under brittle finishes',
  'joists without brittle finishes',
  'beams',
  'adjustable shelf',
  'cabinet shelf',
  'shelf, 1/32 in per foot',
  'shelf, 0.02 in per foot',
] as const;

const limitTakes = `a share of the span such as "L/300", a length such as "3 mm", or a published limit: ${limitUses.map((u) => `"${u}"`).join(', ')}`;

/** A field for a limit of sag. */
export function sagLimitField<
  const O extends { readonly label: string; readonly optional?: true; readonly default?: string },
>(options: O) {
  return makeField<string | Quantity<'length'>, SagLimit, O>(
    {
      kind: 'sagLimit',
      expects: limitTakes,
      read: readSagLimit,
      format: sagLimitText,
      accepts: (v) => typeof v === 'string' || v instanceof Quantity,
    },
    options,
  );
}

/** A limit as written, or as read before. @throws InputError */
function readSagLimit(value: unknown): SagLimit {
  if (isSagLimit(value)) return value;
  const found = typeof value === 'string' ? (shareOfSpan(value) ?? publishedLimit(value)) : undefined;
  if (found) return found;
  const most = lengthOf(value);
  if (most === undefined) throw new InputError(`got ${inspectValue(value)}, takes ${limitTakes}`);
  if (most <= 0 || most > 1)
    throw new InputError(`got ${inspectValue(value)}, takes ${limitTakes}, more than 0 mm and at most 1 m`);
  return { of: 'length', most };
}

function isSagLimit(value: unknown): value is SagLimit {
  const limit = value as Partial<Record<'of' | 'ratio' | 'most', unknown>> | null | undefined;
  const size = limit?.of === 'span' ? limit.ratio : limit?.of === 'length' ? limit.most : undefined;
  return typeof size === 'number' && size > 0;
}

/** "L/300", "span/300" or "1/300". */
function shareOfSpan(text: string): SagLimit | undefined {
  const share = /^\s*(?:l|span|1)\s*\/\s*(\d{1,5}(?:\.\d{1,6})?)\s*$/i.exec(text);
  if (!share) return undefined;
  const ratio = Number(share[1]);
  if (ratio < 20 || ratio > 10_000) throw new InputError(`got ${inspectValue(text)}, takes L/20 to L/10000`);
  return { of: 'span', ratio };
}

function publishedLimit(use: string): SagLimit | undefined {
  if (!/[a-z]{4}/i.test(use)) return undefined;
  // The first row of a use is the stricter one.
  const row = tableRows('deflection-limits').find((r) => plain(r.text('use')) === plain(use));
  if (!row) return undefined;
  return { of: 'span', ratio: row.number('ratio') as number, name: row.text('use'), source: row.citation };
}

/** Metres, where a length is meant. */
function lengthOf(value: unknown): number | undefined {
  try {
    return toQuantity(value, 'length').value;
  } catch {
    return undefined;
  }
}

/** A limit in words. */
export function sagLimitText(limit: SagLimit): string {
  return limit.of === 'span'
    ? `L/${Number(limit.ratio.toPrecision(6))}${limit.name ? ` (${limit.name})` : ''}`
    : both(new Quantity('length', limit.most));
}

/** Sag in the long run over the first sag, and who says so. */
export interface Creep {
  readonly factor: number;
  readonly name: string;
  readonly source?: Citation;
}

/** The choices of data/creep-factors.csv; a test keeps the two alike. */
export const creepChoices = [
  'no creep',
  'seasoned',
  'unseasoned',
  'heated room',
  'under cover',
  'outdoors',
  'seasoned AS',
  'unseasoned AS',
  'shelf',
  'MDF shelf',
] as const;

const creepTakes = `a creep factor of 1 to 5, or one of ${creepChoices.map((c) => `"${c}"`).join(', ')}`;
const plain = (s: string): string => s.toLowerCase().replace(/[\s,_-]+/g, '');

const inRange = (n: unknown): boolean => typeof n === 'number' && n >= 1 && n <= 5;

/** A field for the creep factor: a number, or a choice from the published ones. */
export function creepField<
  const O extends { readonly label: string; readonly optional?: true; readonly default?: string },
>(options: O) {
  const read = (value: unknown): Creep => {
    const again = value as { factor?: unknown; name?: unknown } | null | undefined;
    if (typeof again?.name === 'string' && inRange(again.factor)) return value as Creep;
    const n =
      typeof value === 'number'
        ? value
        : typeof value === 'string' && /^\s*\d{1,3}(\.\d{1,9})?\s*$/.test(value)
          ? Number(value)
          : undefined;
    if (n !== undefined) {
      if (!inRange(n)) throw new InputError(`got ${inspectValue(value)}, takes ${creepTakes}`);
      return { factor: n, name: String(n) };
    }
    const row =
      typeof value === 'string'
        ? tableRows('creep-factors').find((r) => plain(r.text('choice')) === plain(value))
        : undefined;
    if (!row) throw new InputError(`got ${inspectValue(value)}, takes ${creepTakes}`);
    return { factor: row.number('factor') as number, name: row.text('choice'), source: row.citation };
  };
  return makeField<number | string, Creep, O>(
    {
      kind: 'creep',
      expects: creepTakes,
      read,
      format: (c) => (c.name === String(c.factor) ? c.name : `${c.name} (${c.factor})`),
      accepts: (v) => typeof v === 'number' || typeof v === 'string',
    },
    options,
    { choices: creepChoices },
  );
}
