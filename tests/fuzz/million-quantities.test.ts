// 5,000 texts in an ordinary run; RECKONER_HOSTILE=1000000 for the long one, whose figures tests/proof stores.
import { expect, it } from 'vitest';
import { kindNames } from '../../src/units/kind.js';
import { parseQuantity } from '../../src/units/parse-quantity.js';
import { both, type Quantity } from '../../src/units/quantity.js';
import { InputError } from '../../src/units/input-error.js';
import { hostileText } from './bad-text.js';
import { hostileRuns, SeededRandom } from './seeded-random.js';
import { storeFigures } from '../proof/store-figures.js';
import { unquoted } from './unquoted.js';

const runs = hostileRuns(5000);

it(
  `${runs} hostile texts: a finite quantity that shows itself, or an InputError of one line`,
  { timeout: 3_600_000 },
  () => {
    const random = new SeededRandom(7);
    const seen = { read: 0, refused: 0 };
    const faults: string[] = [];
    let slowest = { ms: 0, text: '' };
    for (let i = 0; i < runs; i++) {
      const kind = random.pick(kindNames);
      const text = hostileText(random, kind);
      const fault = (what: string): void => {
        if (faults.length < 20)
          faults.push(`text ${i}, ${kind}, ${JSON.stringify(text.slice(0, 100))}: ${what}`);
      };
      const start = performance.now();
      let q: Quantity | undefined;
      try {
        q = parseQuantity(text, kind);
        seen.read++;
      } catch (error) {
        seen.refused++;
        const message = (error as Error).message;
        if (!(error instanceof InputError)) fault(String(error));
        else if (/[\u0000-\u001f\u2028]|NaN|undefined/.test(unquoted(message)) || message.length > 400)
          fault(`refused with ${JSON.stringify(message)}`);
      }
      if (q) {
        try {
          const words = `${both(q)}|${JSON.stringify(q)}`;
          if (!Number.isFinite(q.value) || /NaN|Infinity|undefined|null/.test(words) || words.length > 200)
            fault(`reads as ${q.value}, shows as ${words}`);
        } catch (error) {
          fault(`reads as ${q.value} and cannot be shown: ${String(error)}`);
        }
      }
      const ms = performance.now() - start;
      if (ms > slowest.ms) slowest = { ms: quickest(text, kind, ms), text };
    }
    expect(faults).toEqual([]);
    expect(seen.read, 'many of them are right').toBeGreaterThan(runs * 0.1);
    expect(seen.refused, 'and many wrong').toBeGreaterThan(runs * 0.3);
    expect(slowest.ms, `slowest: ${JSON.stringify(slowest.text.slice(0, 200))}`).toBeLessThan(20);
    if (runs >= 1e5)
      storeFigures('fuzz-quantities', { tried: runs, ...seen, slowestMs: Number(slowest.ms.toFixed(3)) });
  },
);

/** The time of a text alone: a pause of the machine is not the text's. */
function quickest(text: string, kind: (typeof kindNames)[number], first: number): number {
  let least = first;
  for (let i = 0; i < 5 && least > 0.5; i++) {
    const start = performance.now();
    try {
      both(parseQuantity(text, kind));
    } catch {
      // Timed all the same.
    }
    least = Math.min(least, performance.now() - start);
  }
  return least;
}
