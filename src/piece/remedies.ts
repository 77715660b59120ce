// What would make a failing question pass: the smallest change of each value that bears on it, smallest first.
import { kinds, type Kind } from '../units/kind.js';
import { Quantity } from '../units/quantity.js';
import { answerOf, questionNamed, type Answer } from './answers.js';
import { fieldAt, valueAt, withValueAt } from './description-path.js';
import type { Description } from './description.js';
import type { PieceView } from './piece-view.js';
import { byVerdict, type Lever, type Question } from './question.js';

/** A change that mends a question. */
export interface Remedy {
  readonly question: string;
  readonly path: string;
  readonly words: string;
  /** The value now and the value that mends it, in words. */
  readonly from: string;
  readonly to: string;
  /** The value to give to `with`. */
  readonly value: unknown;
  /** How large the change is, as a share of the value; 1 for a choice. */
  readonly change: number;
  /** Questions that come out worse by it. */
  readonly costs: readonly string[];
}

/** Remedies of one question or of every failing one. */
export function remediesFor(piece: PieceView, name: string | undefined): readonly Remedy[] {
  const failing = piece.questions.filter(
    (a) => a.verdict === 'fails' && (name === undefined || a.name === name),
  );
  return failing.flatMap((a) => {
    const question = questionNamed(a.name);
    if (!question) return [];
    return (question.levers ?? [])
      .flatMap((lever) => placesOf(lever, piece.description).map((path) => ({ lever, path })))
      .flatMap(({ lever, path }) => remedyBy(piece, question, lever, path) ?? [])
      .sort((x, y) => x.change - y.change);
  });
}

/** The paths that a pattern stands for: `parts.*.section.depth` for every part. */
function placesOf(lever: Lever, description: Description): string[] {
  const star = lever.path.indexOf('.*.');
  if (star < 0) return valueAt(description, lever.path) === undefined ? [] : [lever.path];
  const section = valueAt(description, lever.path.slice(0, star));
  return Object.keys(section ?? {})
    .map((name) => `${lever.path.slice(0, star)}.${name}.${lever.path.slice(star + 3)}`)
    .filter((path) => valueAt(description, path) !== undefined);
}

type Tried = { readonly piece: PieceView; readonly answer: Answer | undefined };

function tried(piece: PieceView, question: Question, path: string, value: unknown): Tried {
  const description = withValueAt(piece.description, path, value) as Description;
  const variant = piece.withRead(description);
  return { piece: variant, answer: answerOf(variant.graph, question) };
}

const passes = (t: Tried): boolean => t.answer?.verdict === 'ok' || t.answer?.verdict === 'tight';

/** A number that can be turned up or down: itself, or one side of a section. */
interface Dial {
  readonly now: number;
  readonly step: number;
  readonly min: number;
  readonly max: number;
  /** The whole value with the number in it. */
  readonly value: (n: number) => unknown;
}

function dialOf(path: string, lever: Lever, now: unknown): Dial | undefined {
  const f = fieldAt(path);
  if (typeof now === 'number')
    return {
      now,
      step: f.kind === 'count' ? 1 : f.kind === 'length' ? 1e-3 : Math.abs(now) / 100,
      min: f.min ?? -Infinity,
      max: f.max ?? Infinity,
      value: (n) => n,
    };
  if (lever.side === undefined || typeof now !== 'object' || now === null) return undefined;
  const { width, depth } = now as { readonly width: number; readonly depth: number };
  const widthTurns = lever.side === 'larger' ? width > depth : width <= depth;
  return {
    now: widthTurns ? width : depth,
    step: 1e-3,
    min: 1e-3,
    max: 3,
    value: (n) => ({ ...now, ...(widthTurns ? { width: n } : { depth: n }) }),
  };
}

function remedyBy(piece: PieceView, question: Question, lever: Lever, path: string): Remedy | undefined {
  const now = valueAt(piece.description, path);
  if (typeof lever.way === 'object') {
    const { set } = lever.way;
    const found = now === set ? undefined : tried(piece, question, path, set);
    // A choice may leave a question open: it then says what has to be described with it.
    return found && found.answer?.verdict !== 'fails'
      ? remedy(piece, { question, lever, path, now, value: set, change: 1, found })
      : undefined;
  }
  const dial = dialOf(path, lever, now);
  return dial && least(piece, question, lever, path, dial);
}

/** The least change of a number that mends the question, by halving; to a millimetre or a hundredth of the value. */
function least(
  piece: PieceView,
  question: Question,
  lever: Lever,
  path: string,
  dial: Dial,
): Remedy | undefined {
  const sign = lever.way === 'more' ? 1 : -1;
  const reach = lever.by ?? (sign > 0 ? 2 * Math.abs(dial.now) : (2 / 3) * Math.abs(dial.now));
  const room = sign > 0 ? dial.max - dial.now : dial.now - dial.min;
  const steps = Math.floor(Math.min(reach, room) / dial.step + 1e-9);
  if (steps < 1) return undefined;
  const at = (n: number): number => Number((dial.now + sign * n * dial.step).toPrecision(12));
  let bad = 0;
  let good = steps;
  let best = tried(piece, question, path, dial.value(at(good)));
  if (!passes(best)) return undefined;
  while (good - bad > 1) {
    const half = Math.floor((good + bad) / 2);
    const t = tried(piece, question, path, dial.value(at(half)));
    if (passes(t)) {
      good = half;
      best = t;
    } else bad = half;
  }
  const change = Math.abs(at(good) - dial.now) / Math.max(Math.abs(dial.now), dial.step);
  const value = dial.value(at(good));
  return remedy(piece, { question, lever, path, now: dial.value(dial.now), value, change, found: best });
}

interface Mended {
  readonly question: Question;
  readonly lever: Lever;
  readonly path: string;
  readonly now: unknown;
  readonly value: unknown;
  readonly change: number;
  readonly found: Tried;
}

/** The value as a person could write it. */
function asGiven(kind: string, value: unknown): unknown {
  return typeof value === 'number' && Object.hasOwn(kinds, kind) && !kinds[kind as Kind].plain
    ? new Quantity(kind as Kind, value)
    : value;
}

function remedy(piece: PieceView, mended: Mended): Remedy {
  const { question, lever, path, now, value, change, found } = mended;
  const f = fieldAt(path);
  return {
    question: question.name,
    path,
    words: lever.words,
    from: f.format(now),
    to: f.format(value),
    value: asGiven(f.kind, value),
    change,
    costs: worsened(piece, found.piece, question),
  };
}

/** Other questions whose verdict gets worse. */
function worsened(before: PieceView, after: PieceView, but: Question): string[] {
  const was = new Map(before.questions.map((a) => [a.name, a.verdict]));
  return after.questions
    .filter((a) => a.name !== but.name && byVerdict(a.verdict, was.get(a.name) ?? a.verdict) < 0)
    .map((a) => a.title);
}
