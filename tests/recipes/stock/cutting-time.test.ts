import { expect, it, vi } from 'vitest';
import { cuttingPlan } from '../../../src/recipes/stock/cutting-plan.js';

// What each section was given, in s: the sections themselves are planned as they are.
const given = vi.hoisted((): number[] => []);
vi.mock('../../../src/recipes/stock/cutting/layout.js', async (real) => {
  const own = await real<typeof import('../../../src/recipes/stock/cutting/layout.js')>();
  const layOut = (...all: Parameters<typeof own.layOut>) => {
    given.push(all[3]);
    return own.layOut(...all);
  };
  return { ...own, layOut };
});

it('a plan of sections shares the time that is left evenly among those still to do', async () => {
  given.length = 0;
  const widths = ['40 mm', '50 mm', '60 mm'];
  const r = await cuttingPlan({
    parts: widths.map((width) => ({ length: '600 mm', width })),
    stock: widths.map((width) => ({ length: '1 m', width })),
    timeLimit: '60 s',
  });
  expect(r.boardsUsed).toBe(3);
  // Each is proved at once: a third of a minute, half of it, all of it, less the little that went by.
  expect(given).toHaveLength(3);
  [20, 30, 60].forEach((s, i) => {
    expect(given[i]).toBeLessThanOrEqual(s);
    expect(given[i]).toBeGreaterThan(s * 0.8);
  });
});
