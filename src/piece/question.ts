// A question of the job: what it looks at, and what an answer to it holds.
import { formatQuantity, number } from '../units/format-quantity.js';
import type { Kind } from '../units/kind.js';
import type { Model } from './piece-graph.js';
import type { Ask } from './recipe-ask.js';

/** How an answer comes out; `open` where something is missing. */
export type PieceVerdict = 'ok' | 'tight' | 'fails' | 'open';

/** What a question comes to. */
export interface Finding {
  readonly verdict: PieceVerdict;
  /** One sentence with the decision. */
  readonly answer: string;
  /** What there is over what is needed, less one: 0.25 is a quarter to spare, below 0 it fails. */
  readonly margin?: number;
  readonly asks?: readonly Ask[];
  /** The value that is missing, of an open question. */
  readonly missing?: string;
}

/** A question asked of every piece; undefined where it does not apply to one. */
export interface Question {
  readonly name: string;
  readonly title: string;
  readonly topic: QuestionTopic;
  /** Somebody may be hurt where the answer is no. */
  readonly safety?: true;
  /** Values of the description whose change may mend it, as path patterns; `*` stands for every part. */
  readonly levers?: readonly Lever[];
  readonly answer: (m: Model) => Finding | undefined;
}

export const questionTopics = [
  'timber',
  'gluing',
  'machining',
  'weight',
  'movement',
  'strength',
  'joints',
  'finish',
  'cost',
] as const;
export type QuestionTopic = (typeof questionTopics)[number];

/** A value that may be changed to mend a failing question. */
export interface Lever {
  readonly path: string;
  /** Which way helps; a `set` lever takes one other value. */
  readonly way: 'more' | 'less' | { readonly set: unknown };
  /** What the change means, in words: "a thicker top". */
  readonly words: string;
  /** Which side of a section is changed. */
  readonly side?: 'larger' | 'smaller';
  /** How far it may be changed, in the base unit; three times the value where it is not given. */
  readonly by?: number;
}

/** A margin below this share is called tight (our estimate; a tenth is a common reserve in a workshop). */
export const tightMargin = 0.1;

/** The verdict of a margin. A millionth of slack keeps a size that just fits from failing by its last digit. */
export const verdictOfMargin = (margin: number): PieceVerdict =>
  margin < -1e-6 ? 'fails' : margin < tightMargin - 1e-9 ? 'tight' : 'ok';

/** The margin of what there is over what is needed; nothing needed leaves any margin. */
export const marginOf = (have: number, needed: number): number =>
  needed <= 0 ? 10 : Math.min(10, have / needed - 1);

const order: readonly PieceVerdict[] = ['fails', 'open', 'tight', 'ok'];
/** Negative where the first is worse. */
export const byVerdict = (a: PieceVerdict, b: PieceVerdict): number => order.indexOf(a) - order.indexOf(b);
export const worstVerdict = (all: readonly PieceVerdict[]): PieceVerdict =>
  all.reduce((a, b) => (byVerdict(b, a) < 0 ? b : a), 'ok');

/** A quantity in words, metric. */
export const inWords = (kind: Kind, value: number): string => formatQuantity({ kind, value });
export const mm = (metres: number): string => `${number(Math.round(metres * 1000), 6)} mm`;
/** With half millimetres, for movement. */
export const halfMm = (metres: number): string => `${Math.round(metres * 2000) / 2} mm`;
export const kg = (mass: number): string =>
  mass >= 10 ? `${Math.round(mass)} kg` : `${Number(mass.toPrecision(2))} kg`;
export const perCent = (share: number): string => `${Math.round(share * 100)} %`;
export const counted = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;
export const newtons = (force: number): string =>
  force >= 10_000 ? `${Number((force / 1000).toPrecision(3))} kN` : `${Math.round(force)} N`;
export const hoursMinutes = (seconds: number): string => {
  const minutes = Math.round(seconds / 60);
  return minutes >= 60
    ? `${Math.floor(minutes / 60)} h ${minutes % 60} min`
    : seconds >= 120
      ? `${minutes} min`
      : `${Math.round(seconds)} s`;
};
