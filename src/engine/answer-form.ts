import { anyQuantity, parseQuantity } from '../units/parse-quantity.js';
import { InputError, inspectValue } from '../units/input-error.js';
import { kinds, type Kind } from '../units/kind.js';
import { Quantity } from '../units/quantity.js';
import { tryParse } from '../units/try-parse.js';

/** What an answer has to be: a quantity of a kind, a plain number or count, or a word. */
export type AnswerForm =
  | { readonly form: 'quantity'; readonly kind: Kind }
  | { readonly form: 'number' }
  | { readonly form: 'word' };

/** An answer as it is compared: a number in the kind's base unit or a word in small letters, and how finely it was read off a rule. */
export interface ReadAnswer {
  readonly value: number | string;
  /** Half a division of the rule, in base units; 0 where the answer is no fraction of an inch. */
  readonly fineness: number;
}

/** An answer, or the sentence that says why it cannot be read. It never throws. */
export function readAnswer(given: unknown, form: AnswerForm): ReadAnswer | string {
  if (form.form === 'word')
    return typeof given === 'string'
      ? { value: plainWord(given), fineness: 0 }
      : `Got ${inspectValue(given)}; a word is asked for.`;
  if (form.form === 'number') return readNumber(given);
  const got = given instanceof Quantity ? (given as Quantity) : readQuantity(given, form.kind);
  if (typeof got === 'string') return got;
  if (got.kind !== form.kind)
    return `Got ${inspectValue(got.toString())}, which is ${kinds[got.kind].called}; ${kinds[form.kind].called} is asked for.`;
  return { value: got.value, fineness: ruleFraction(given, got) };
}

/** A word without capitals, points and spaces too many. */
export const plainWord = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();

/** `15` and `15 strips` are the same count; `15 mm` is none. */
function readNumber(given: unknown): ReadAnswer | string {
  const fault = `Got ${inspectValue(given)}; a plain number is asked for, without a unit.`;
  if (typeof given === 'number') return Number.isFinite(given) ? { value: given, fineness: 0 } : fault;
  if (typeof given !== 'string') return fault;
  const match = /^\s*([-+]?(?:\d+\.?\d*|\.\d+))(?:\s+([a-z][a-z ]*))?\s*$/i.exec(
    given.replace(/[\u2009\u202f\u00a0]/g, ' ').replace(/(\d) (?=\d{3}\b)/g, '$1'),
  );
  if (match === null) return fault;
  if (match[2] !== undefined && !(tryParse(() => anyQuantity(given)) instanceof InputError)) return fault;
  return { value: Number(match[1]), fineness: 0 };
}

/** An inch fraction is as fine as the rule it is read off: half of 1/32 in below an inch, half of 1/16 in above. */
function ruleFraction(given: unknown, got: Quantity): number {
  if (got.kind !== 'length' || typeof given !== 'string' || !given.includes('/')) return 0;
  return Math.abs(got.value) < 0.0254 * (1 - 1 / 64) ? 0.0254 / 64 : 0.0254 / 32;
}

function readQuantity(given: unknown, kind: Kind): Quantity | string {
  const example = inspectValue(kinds[kind].example);
  if (typeof given === 'number')
    return `Got ${given} with no unit; the unit belongs to the answer: write it as ${example}.`;
  if (typeof given !== 'string')
    return `Got ${inspectValue(given)}; write the answer as text with its unit, such as ${example}.`;
  const right = tryParse(() => parseQuantity(given, kind));
  if (!(right instanceof InputError)) return right;
  if (/^[-+]?[\d.\s/]+$/.test(given.trim()))
    return `Got ${inspectValue(given)} with no unit; the unit belongs to the answer: write it as ${example}.`;
  const other = tryParse(() => anyQuantity(given));
  return other instanceof InputError
    ? `Got ${inspectValue(given)}, which cannot be read; write a number and a unit such as ${example}.`
    : other;
}
