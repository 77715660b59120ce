import type { Citation } from './source.js';
import { capitalised } from '../units/capitalised.js';

/**
 * What a person must know beside the number.
 * danger: work that can hurt; range: outside what the source covers; data: the figure itself is uncertain;
 * estimate: a derivation or a rule of the trade, not a published result; note: worth knowing.
 */
export interface Caution {
  readonly level: 'danger' | 'range' | 'data' | 'estimate' | 'note';
  readonly text: string;
  readonly source?: Citation;
}

const make =
  (level: Caution['level']) =>
  (text: string, source?: Citation): Caution => ({ level, text, ...(source ? { source } : {}) });

export const danger = make('danger');
export const outOfRange = make('range');
export const dataCaution = make('data');
export const estimate = make('estimate');
export const note = make('note');

/** Words that stand before a caution in print. */
export const cautionWord: Readonly<Record<Caution['level'], string>> = {
  danger: 'Danger',
  range: 'Outside the published range',
  data: 'Unverified',
  estimate: 'Our estimate',
  note: 'Note',
};

/** A text as it is shown: a sentence with a capital and a full stop. */
export const asSentence = (text: string): string => {
  const t = text.trim();
  return capitalised(t) + (/[.!?]$/.test(t) ? '' : '.');
};

/** Dangerous first; each text once. */
export function sortBySeverity(cautions: readonly Caution[]): Caution[] {
  const order: readonly Caution['level'][] = ['danger', 'range', 'estimate', 'data', 'note'];
  const once = new Map(cautions.map((c) => [`${c.level}|${c.text}`, c]));
  return [...once.values()].sort((a, b) => order.indexOf(a.level) - order.indexOf(b.level));
}
