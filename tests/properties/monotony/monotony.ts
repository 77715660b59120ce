// A law of monotony: where one input rises and every other stays, an output never falls, or never rises. Written once for
// every recipe; the rows of the laws stand in the files beside this one, by topic.
import fc from 'fast-check';
import { expect } from 'vitest';
import type { AnyRecipe } from '../../../src/engine/any-recipe.js';
import { InputError } from '../../../src/units/input-error.js';

/** From the least to the greatest that is tried; `whole` numbers count things, or places in a list from less to more. */
export type Range = readonly [least: number, most: number] | readonly [least: number, most: number, 'whole'];
type Answer = Readonly<Record<string, unknown>>;
/** An output by its name, or a figure taken from the answer; undefined where the answer has none. */
export type Figure = string | ((answer: Answer) => number | undefined);

/** What happens where `raise` rises: `rises` and `falls` mean never the other way. */
export interface Law<N extends string> {
  readonly raise: N;
  readonly rises?: readonly Figure[];
  readonly falls?: readonly Figure[];
}

export interface Laws {
  readonly recipe: AnyRecipe;
  readonly numbers: Readonly<Record<string, Range>>;
  readonly write: (n: Readonly<Record<string, number>>) => Readonly<Record<string, unknown>>;
  readonly laws: readonly Law<string>[];
  readonly runs: number;
}

/** Laws of one recipe: the numbers that its inputs are written from, and what each of them does. */
export function lawsOf<N extends string>(
  recipe: unknown,
  of: {
    readonly numbers: Readonly<Record<N, Range>>;
    readonly write: (n: Readonly<Record<N, number>>) => Readonly<Record<string, unknown>>;
    readonly laws: readonly Law<NoInfer<N>>[];
    readonly runs?: number;
  },
): Laws {
  return { runs: 16, ...of, recipe: recipe as AnyRecipe };
}

const within = ([least, most, whole]: Range, share: number): number =>
  whole ? Math.round(least + (most - least) * share) : least + (most - least) * share;

/** The same number farther up its range; near it as often as far from it. */
const farther = (range: Range, from: number, share: number): number =>
  range[2]
    ? Math.min(range[1], from + 1 + Math.floor((range[1] - from) * share ** 3))
    : from + (range[1] - from) * share ** 3;

function figure(f: Figure, answer: Answer): number | undefined {
  const value = typeof f === 'string' ? answer[f] : f(answer);
  return typeof value === 'boolean' ? Number(value) : (value as number | undefined);
}
const nameOf = (f: Figure): string => (typeof f === 'string' ? f : f.toString());

/**
 * Holds one law against random inputs. It fails where a figure goes the wrong way, where most inputs are refused, and
 * where a figure never moves, so that a law can neither be empty nor be about an output that does not depend on it.
 */
export async function holds(l: Laws, law: Law<string>): Promise<void> {
  const names = Object.keys(l.numbers);
  // Even over the range; random doubles would crowd at nothing.
  const share = fc.integer({ min: 0, max: 10_000 }).map((n) => n / 10_000);
  const moved = new Set<Figure>();
  let compared = 0;
  let refused = 0;
  const answer = async (n: Readonly<Record<string, number>>): Promise<Answer | undefined> => {
    try {
      return await l.recipe.evaluate(l.recipe.read(l.write(n)));
    } catch (error) {
      if (error instanceof InputError) return undefined;
      throw error;
    }
  };
  await fc.assert(
    fc.asyncProperty(
      fc.tuple(...names.map(() => share)),
      share.map((s) => 0.05 + 0.95 * s),
      async (shares, up) => {
        const less = Object.fromEntries(
          names.map((name, i) => [name, within(l.numbers[name] as Range, shares[i] as number)]),
        );
        const range = l.numbers[law.raise] as Range;
        const more = { ...less, [law.raise]: farther(range, less[law.raise] as number, up) };
        if (more[law.raise] === less[law.raise]) return;
        const [before, after] = [await answer(less), await answer(more)];
        if (!before || !after) {
          refused++;
          return;
        }
        compared++;
        for (const [figures, sign] of [
          [law.rises ?? [], 1],
          [law.falls ?? [], -1],
        ] as const)
          for (const f of figures) {
            const [a, b] = [figure(f, before), figure(f, after)];
            if (a === undefined || b === undefined) continue;
            const slack = 1e-9 * Math.max(Math.abs(a), Math.abs(b)) + 1e-15;
            const change = sign * (b - a);
            if (change > slack) moved.add(f);
            expect(
              change,
              `${nameOf(f)}: ${a}, then ${b}; ${JSON.stringify({ less, more })}`,
            ).toBeGreaterThanOrEqual(-slack);
          }
      },
    ),
    { numRuns: l.runs, seed: 19 },
  );
  expect(compared, 'most inputs are refused').toBeGreaterThan(refused);
  const still = [...(law.rises ?? []), ...(law.falls ?? [])].filter((f) => !moved.has(f));
  expect(still.map(nameOf), 'figures that never move').toEqual([]);
}
