import { both, Quantity } from '../units/quantity.js';
import { number } from '../units/format-quantity.js';
import type { Kind } from '../units/kind.js';
import { inspectValue } from '../units/input-error.js';
import {
  bandOf,
  judgeExact,
  judgeNeighbours,
  neighboursOf,
  type Judgement,
  type KnownAnswer,
  type Tolerance,
} from './answer-check.js';
import { plainWord, readAnswer, type AnswerForm } from './answer-form.js';
import type { OpenAnswer } from './sealed-answers.js';
import { escapeHtml } from './result-display.js';

/** A usual mistake: the answer that it gives, and what to say to who gave it; the sentence tells what was done and asks one question. */
export interface Mistake {
  readonly answer: () => Quantity | number | string;
  readonly says: string;
}

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
  /** Answers that usual mistakes give, further from the right one and from each other than the tolerance. */
  readonly wrong?: readonly Mistake[];
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
  readonly answer: AnswerData;
  readonly tolerance?: number;
  readonly hint?: string;
  readonly alsoRight?: readonly string[];
  readonly wrong?: readonly { readonly answer: AnswerData; readonly says: string }[];
}

type AnswerData =
  { readonly kind: Kind; readonly value: number; readonly currency?: string } | number | string;

/** The exercise that {@link ExerciseData} describes. */
export function exerciseFrom(data: ExerciseData): Exercise {
  const { answer, wrong, ...others } = data;
  return exercise({
    ...others,
    answer: () => asQuantity(answer),
    ...(wrong === undefined
      ? {}
      : { wrong: wrong.map((m) => ({ says: m.says, answer: () => asQuantity(m.answer) })) }),
  });
}

/**
 * A question with a check cell: any correct answer passes, in any unit. Of a wrong one it says which mistake it shows where that is
 * known, and nothing that it cannot know.
 */
export function exercise(spec: ExerciseSpec): Exercise {
  let made: ExerciseData | undefined;
  let tries = 0;
  const data = (): ExerciseData => (made ??= dataOf(spec));
  const check = (given: unknown): Verdict => {
    if (given === undefined || given === null || given === '' || given === '?')
      return verdict('none', 'Write the answer between the quotation marks, with its unit.', data);
    const found = judged(given, data());
    // What cannot be read is no try.
    if (typeof found === 'string') return verdict('wrong', found, data);
    if (found.outcome === 'right') return verdict('right', found.says, data);
    tries++;
    return verdict('wrong', `${found.says}${tries > 1 && spec.hint ? ` Hint: ${spec.hint}` : ''}`, data);
  };
  return {
    question: spec.question,
    check,
    reveal: () => shown(data().answer),
    [Symbol.for('Jupyter.display')]: () => ({
      'text/plain': spec.question,
      'text/markdown': `**Exercise.** ${spec.question}`,
      [exerciseType]: data(),
    }),
    [Symbol.for('nodejs.util.inspect.custom')]: () => spec.question,
  };
}

function dataOf({ question, answer, tolerance, hint, alsoRight, wrong }: ExerciseSpec): ExerciseData {
  return {
    question,
    answer: answerData(answer()),
    ...(tolerance === undefined ? {} : { tolerance }),
    ...(hint === undefined ? {} : { hint }),
    ...(alsoRight === undefined ? {} : { alsoRight }),
    ...(wrong === undefined
      ? {}
      : { wrong: wrong.map((m) => ({ answer: answerData(m.answer()), says: m.says })) }),
  };
}

const answerData = (a: Quantity | number | string): AnswerData =>
  a instanceof Quantity
    ? { kind: a.kind, value: a.value, ...(a.currency ? { currency: a.currency } : {}) }
    : a;

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

/** Every known answer of an exercise as it is compared. */
export function knownAnswersOf(data: ExerciseData): OpenAnswer[] {
  const says = `Right: ${shown(data.answer)}.`;
  const right = [data.answer, ...(data.alsoRight ?? [])];
  return [
    ...right.map((answer) => ({ place: 0, value: comparable(answer), says })),
    ...(data.wrong ?? []).map((m, i) => ({ place: i + 1, value: comparable(m.answer), says: m.says })),
  ];
}

const comparable = (answer: AnswerData): number | string =>
  typeof answer === 'object' ? answer.value : typeof answer === 'number' ? answer : plainWord(answer);

const asQuantity = (answer: AnswerData): Quantity | number | string =>
  typeof answer === 'object' ? new Quantity(answer.kind, answer.value, answer.currency) : answer;

function shown(answer: AnswerData): string {
  const a = asQuantity(answer);
  return a instanceof Quantity ? both(a) : typeof a === 'number' ? number(a, 4) : a;
}

/** What the exercise asks for. */
export function formOf({ answer }: ExerciseData): AnswerForm {
  if (typeof answer === 'object') return { form: 'quantity', kind: answer.kind };
  return { form: typeof answer === 'number' ? 'number' : 'word' };
}

/** How far off still counts as right. */
export const toleranceOf = ({ tolerance }: ExerciseData): Tolerance => ({ relative: tolerance ?? 0.01 });

/** A judgement on what was written, or the sentence that says why it cannot be read. */
function judged(given: unknown, data: ExerciseData): Judgement | string {
  const read = readAnswer(given, formOf(data));
  if (typeof read === 'string') return read;
  const known = knownAnswersOf(data);
  const at = (value: number | string, fineness = 0): KnownAnswer[] =>
    known.filter((x) => isSame(x.value, value, toleranceOf(data), x.place === 0 ? fineness : 0));
  const exact = judgeExact(at(read.value, read.fineness));
  if (exact !== undefined) return exact;
  if (typeof read.value === 'string')
    return { outcome: 'unknown', place: 0, says: `Got ${inspectValue(given)}, which is not it.` };
  const hasNoZero = typeof data.answer === 'object' && data.answer.kind === 'temperature';
  const neighbours = neighboursOf(read.value, toleranceOf(data)).filter(
    ({ outcome }) => !hasNoZero || outcome === 'rounding',
  );
  return judgeNeighbours(neighbours.map((n) => [n, at(n.value)] as const));
}

function isSame(known: number | string, given: number | string, tolerance: Tolerance, fine: number): boolean {
  if (typeof known === 'string' || typeof given === 'string') return known === given;
  return Math.abs(known - given) <= Math.max(bandOf(tolerance, known), fine * (1 + 1e-9));
}
