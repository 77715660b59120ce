import { describe, expect, it } from 'vitest';
import { clearPieces } from '../../../src/recipes/stock/clear-pieces.js';

interface Exhaustive {
  fewestBoards(
    boards: readonly object[],
    parts: readonly { length: number; count: number }[],
    kerf: number,
  ): { missing: number; length: number };
}
interface Instances {
  instance(count: number, seed: number): { boards: object[] };
  numbersOf(seed: number): () => number;
}
interface Conversion {
  inputOf(instance: unknown, seconds: number): { boards: never };
}
const load = async <T>(name: string): Promise<T> =>
  (await import(new URL(`../../bench/${name}.mjs`, import.meta.url).href)) as T;
const { fewestBoards } = await load<Exhaustive>('clear-exhaustive');
const { instance, numbersOf } = await load<Instances>('pile-instances');
const { inputOf } = await load<Conversion>('pile-exchange');

describe('clear pieces from faulty boards', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])('cut as little as exhaustive search, case %i', async (seed) => {
    const random = numbersOf(seed);
    const pile = instance(4, 200 + seed);
    const parts = [0, 1].map(() => ({
      length: Math.round(250 + 700 * random()),
      count: 1 + Math.floor(3 * random()),
    }));
    const r = await clearPieces({
      boards: inputOf(pile, 1).boards,
      parts: parts.map((p, i) => ({ name: `part ${i}`, length: `${p.length} mm`, count: p.count })),
      kerf: '3 mm',
    });
    const best = fewestBoards(pile.boards, parts, 3);
    expect(r.missingLength.in('mm')).toBeCloseTo(best.missing, 3);
    expect(r.boardLength.in('mm')).toBeCloseTo(best.length, 3);
    expect(r.optimal).toBe(true);
  });

  it('cuts no part across a fault, and two from one clear length a kerf apart', async () => {
    // By hand: 1000 less the fault 480-520 leaves 480 each side; 238.5 twice and a kerf of 3 fill one side exactly.
    const r = await clearPieces({
      boards: [{ name: 'A', length: '1 m', width: '90 mm', thickness: '40 mm', faultsAt: '480-520 mm' }],
      parts: [{ name: 'p', length: '238.5 mm', count: 5 }],
      kerf: '3 mm',
    });
    expect(r.plan.map((c) => c.from.in('mm'))).toEqual([0, 241.5, 520, 761.5]);
    expect(r.missing?.map((m) => m.count)).toEqual([1]);
    expect(r.optimal).toBe(true);
  });

  it('names a bad place of a fault', async () => {
    await expect(
      clearPieces({
        boards: [{ length: '1 m', width: '90 mm', thickness: '40 mm', faultsAt: '300-200 mm' }],
        parts: [{ length: '200 mm' }],
      }),
    ).rejects.toThrow(/faultsAt: got "300-200/);
  });
});
