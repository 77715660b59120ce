import { both, Quantity } from '../units/quantity.js';
import { number } from '../units/format-quantity.js';
import { tryParse } from '../units/try-parse.js';
import { kinds, type Kind } from '../units/kind.js';
import { anyQuantity, parseQuantity } from '../units/parse-quantity.js';
import { InputError, inspectValue } from '../units/input-error.js';
import { escapeHtml } from './result-display.js';

/** What an exercise for a class is made of. */
export interface ExerciseSpec {
  readonly question: string;
  /** Calculates the right answer when it is first asked for: a quantity, a plain number, or a word. */
  readonly answer: () => Quantity | number | string;
  /** How far off still counts as right, as a share of the answer; default 0.01. Rounding by hand should not fail a pupil. */
  readonly tolerance?: number;
  /** Said with the second wrong answer. */
  readonly hint?: string;
  /** Words that are taken for the answer, where it is a word. */
  readonly alsoRight?: readonly string[];
}

/** What was said of one answer. */
export interface Verdict {
  readonly right: boolean;
  readonly message: string;
  toString(): string;
}

export interface Exercise {
  readonly question: string;
  /** Takes any answer with its unit (`'13 mm'`, `'1/2 in'`, `'8 %'`) and says what is wrong with a wrong one. Never throws on an answer. */
  check(answer: unknown): Verdict;
  /** The right answer, for the teacher or who gives up. */
  reveal(): string;
}

/** What a page that can check answers needs to know of a shown exercise. */
export const exerciseType = 'application/vnd.joiners-reckoner.exercise+json';

/** An exercise as data: its answer calculated, a quantity as its kind and its number in the kind's base unit. */
export interface ExerciseData {
  readonly question: string;
  readonly answer:
    { readonly kind: Kind; readonly value: number; readonly currency?: string } | number | string;
  readonly tolerance?: number;
  readonly hint?: string;
  readonly alsoRight?: readonly string[];
}

/** The exercise that {@link ExerciseData} describes. */
export function exerciseFrom(data: ExerciseData): Exercise {
  const { answer } = data;
  return exercise({
    ...data,
    answer: () =>
      typeof answer === 'object' ? new Quantity(answer.kind, answer.value, answer.currency) : answer,
  });
}

/** A question with a check cell: any correct answer passes, in any unit; a wrong one says what is wrong with it. */
export function exercise(spec: ExerciseSpec): Exercise {
  let right: Quantity | number | string | undefined;
  let tries = 0;
  const answer = (): Quantity | number | string => (right ??= spec.answer());
  const show = (): string => {
    const a = answer();
    return a instanceof Quantity ? both(a) : typeof a === 'number' ? number(a, 4) : a;
  };
  const check = (given: unknown): Verdict => {
    if (given === undefined || given === null || given === '' || given === '?')
      return verdict('none', 'Write the answer between the quotation marks, with its unit.', data);
    const wrong = faultOf(given, answer(), spec.tolerance ?? 0.01, spec.alsoRight ?? []);
    if (wrong === undefined) return verdict('right', `Right: ${show()}.`, data);
    tries++;
    return verdict('wrong', `${wrong}${tries > 1 && spec.hint ? ` Hint: ${spec.hint}` : ''}`, data);
  };
  const data = (): ExerciseData => {
    const a = answer();
    const { question, tolerance, hint, alsoRight } = spec;
    const optional = {
      ...(tolerance === undefined ? {} : { tolerance }),
      ...(hint === undefined ? {} : { hint }),
      ...(alsoRight === undefined ? {} : { alsoRight }),
    };
    return {
      question,
      answer:
        a instanceof Quantity
          ? { kind: a.kind, value: a.value, ...(a.currency ? { currency: a.currency } : {}) }
          : a,
      ...optional,
    };
  };
  return {
    question: spec.question,
    check,
    reveal: show,
    [Symbol.for('Jupyter.display')]: () => ({
      'text/plain': spec.question,
      'text/markdown': `**Exercise.** ${spec.question}`,
      [exerciseType]: data(),
    }),
    [Symbol.for('nodejs.util.inspect.custom')]: () => spec.question,
  };
}

// A sign and a word, so that colour is not needed to tell.
const looks = {
  right: { sign: '✓', word: 'Right', edge: '#0b6e4f' },
  wrong: { sign: '✗', word: 'Not yet', edge: '#a33b00' },
  none: { sign: '?', word: 'No answer yet', edge: '#767676' },
} as const;

function verdict(kind: keyof typeof looks, message: string, about: () => ExerciseData): Verdict {
  const { sign, word, edge } = looks[kind];
  const text = `${sign} ${kind === 'none' ? `${word}. ` : ''}${message}`;
  return {
    right: kind === 'right',
    message: kind === 'none' ? `${word}. ${message}` : message,
    toString: () => text,
    [Symbol.for('Jupyter.display')]: () => ({
      'text/plain': text,
      'text/html': `<p class="reckoner-verdict" style="margin:.3em 0;padding:.35em .7em;border-left:4px solid ${edge}"><strong>${sign} ${word}.</strong> ${escapeHtml(message.replace(/^Right: /, ''))}</p>`,
      [exerciseType]: about(),
    }),
    [Symbol.for('nodejs.util.inspect.custom')]: () => text,
  };
}

/** What is wrong with an answer, undefined when nothing is. */
function faultOf(
  given: unknown,
  right: Quantity | number | string,
  tolerance: number,
  alsoRight: readonly string[],
): string | undefined {
  if (typeof right === 'string') return wordFault(given, [right, ...alsoRight]);
  if (typeof right === 'number') return numberFault(given, right, tolerance);
  const kind = right.kind;
  const got = given instanceof Quantity ? (given as Quantity) : readAs(given, kind);
  if (typeof got === 'string') return got;
  if (got.kind !== kind)
    return `Got ${inspectValue(got.toString())}, which is ${kinds[got.kind].called}; ${kinds[kind].called} is asked for.`;
  return Math.abs(got.value - right.value) <= ruleFraction(given, right) * (1 + 1e-9)
    ? undefined
    : compare(got.value, right.value, tolerance, kind);
}

function wordFault(given: unknown, right: readonly string[]): string | undefined {
  const plain = (s: string): string =>
    s
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, ' ')
      .trim();
  return typeof given === 'string' && right.some((w) => plain(w) === plain(given))
    ? undefined
    : `Got ${inspectValue(given)}, which is not it.`;
}

function numberFault(given: unknown, right: number, tolerance: number): string | undefined {
  const text = typeof given === 'string' ? given.trim() : '';
  const n = typeof given === 'number' ? given : text !== '' ? Number(text) : NaN;
  return Number.isFinite(n)
    ? compare(n, right, tolerance, '')
    : `Got ${inspectValue(given)}; a plain number is asked for, without a unit.`;
}

/** An inch fraction is as fine as the rule it is read off: half of 1/32 in below an inch, half of 1/16 in above. */
function ruleFraction(given: unknown, right: Quantity): number {
  if (right.kind !== 'length' || typeof given !== 'string' || !given.includes('/')) return 0;
  return Math.abs(right.value) < 0.0254 ? 0.0254 / 64 : 0.0254 / 32;
}

function readAs(given: unknown, kind: Kind): Quantity | string {
  if (typeof given === 'number')
    return `Got ${given} with no unit; the unit belongs to the answer: write it as ${inspectValue(kinds[kind].example)}.`;
  if (typeof given !== 'string')
    return `Got ${inspectValue(given)}; write the answer as text with its unit, such as ${inspectValue(kinds[kind].example)}.`;
  const right = tryParse(() => parseQuantity(given, kind));
  if (!(right instanceof InputError)) return right;
  if (/^[-+]?[\d.\s/]+$/.test(given.trim()))
    return `Got ${inspectValue(given)} with no unit; the unit belongs to the answer: write it as ${inspectValue(kinds[kind].example)}.`;
  const other = tryParse(() => anyQuantity(given));
  return other instanceof InputError
    ? `Got ${inspectValue(given)}, which cannot be read; write a number and a unit such as ${inspectValue(kinds[kind].example)}.`
    : other;
}

/** The usual slips, by the ratio of what was got to what is right. */
const slips: readonly (readonly [ratio: number, message: string])[] = [
  [2, 'It is twice too much: is a half or one side asked for?'],
  [0.5, 'It is half: is the whole asked for, and not one side?'],
  [25.4, 'It is 25.4 times too much: were inches taken for millimetres?'],
  [1 / 25.4, 'It is 25.4 times too little: were millimetres taken for inches?'],
  [10, 'It is ten times too much: look at the decimal point.'],
  [0.1, 'It is ten times too little: look at the decimal point.'],
  [100, 'It is a hundred times too much: was per cent taken as a whole number?'],
  [0.01, 'It is a hundred times too little: was per cent divided once too often?'],
  [1000, 'It is a thousand times too much: look at the unit.'],
  [0.001, 'It is a thousand times too little: look at the unit.'],
];

function compare(got: number, right: number, tolerance: number, kind: string): string | undefined {
  const slack = Math.max(Math.abs(right) * tolerance, right === 0 ? 1e-9 : 0) * (1 + 1e-9);
  if (Math.abs(got - right) <= slack) return undefined;
  if (Math.abs(got + right) <= slack)
    return 'The size is right, the sign is not: positive means it grows, negative that it shrinks.';
  const ratio = right === 0 ? Infinity : got / right;
  const slip = slips.find(([r]) => Math.abs(ratio - r) <= r * Math.max(tolerance, 0.005));
  if (slip && kind !== 'temperature') return slip[1];
  if (Math.abs(got - right) <= Math.abs(right) * 0.1)
    return `Near, but ${got > right ? 'too much' : 'too little'} by more than rounding: keep a digit more on the way.`;
  return got > right ? 'It is too much.' : 'It is too little.';
}
