// What cannot be true together: found and named by path, never averaged.
import { OpenQuestion } from '../open-question.js';
import type { Model } from '../piece-graph.js';

/** Two things in a description that cannot both be so. */
export interface Contradiction {
  readonly path: string;
  readonly message: string;
  /** Somebody may be hurt where it is built so. */
  readonly safety: boolean;
}

export type Finder = (m: Model) => readonly Contradiction[];

/** Finds nothing where the question itself is still open. */
export const whereKnown =
  (find: Finder): Finder =>
  (m) => {
    try {
      return find(m);
    } catch (error) {
      if (error instanceof OpenQuestion) return [];
      throw error;
    }
  };

/** Each contradiction once, though several parts alike show it. */
export function once(list: readonly Contradiction[]): Contradiction[] {
  return [...new Map(list.map((c) => [`${c.path}|${c.message}`, c])).values()];
}
