import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stripLayout } from '../../src/recipes/lamination/strip-layout.js';
import { faultsOfLayout } from '../recipes/lamination/layout-checker.js';

const whole = (min: number, max: number) => fc.integer({ min, max });

describe('stripLayout', () => {
  it('lays one row of few pieces as well as trying every set of them does', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(whole(120, 700), { minLength: 4, maxLength: 9 }),
        whole(0, 6),
        async (lengths, kerf) => {
          const topLength = 900;
          fc.pre(lengths.reduce((a, b) => a + b, 0) >= topLength);
          // Every set of pieces that covers the row: what hangs over is lost, or sawn off whole where it is worth keeping.
          let least = Infinity;
          for (let set = 1; set < 1 << lengths.length; set++) {
            const sum = lengths.reduce((s, x, i) => s + ((set >> i) & 1) * x, 0);
            const over = sum - topLength;
            if (over < 0) continue;
            // Could the overhang be sawn off one piece, leaving a part long enough? From the longest, if from any.
            const longest = Math.max(...lengths.filter((_, i) => (set >> i) & 1));
            if (over > 0 && longest - over < 50) continue;
            least = Math.min(least, over - kerf >= 50 ? kerf : over);
          }
          fc.pre(Number.isFinite(least));
          const a = await stripLayout({
            topLength: `${topLength} mm`,
            rows: 1,
            minStagger: '50 mm',
            kerf: `${kerf} mm`,
            timeLimit: '120 ms',
            lengths: lengths.map((x) => `${x} mm`),
          });
          expect(a.waste.in('mm')).toBeCloseTo(least, 6);
          expect(a.leastWaste.in('mm')).toBeLessThanOrEqual(least + 1e-9);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('is legal for any pile it lays, and refuses in words where it finds none', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(whole(150, 1200), { minLength: 10, maxLength: 40 }),
        whole(1, 6),
        whole(0, 200),
        whole(0, 5),
        async (lengths, rows, stagger, kerf) => {
          const topLength = 1300;
          fc.pre(lengths.reduce((a, b) => a + b, 0) >= rows * topLength);
          const pile = lengths.map((length, i) => ({
            name: `p${i}x`,
            length,
            tone: i % 3 === 0 ? 'x' : 'y',
          }));
          try {
            const a = await stripLayout({
              topLength: `${topLength} mm`,
              rows,
              minStagger: `${stagger} mm`,
              kerf: `${kerf} mm`,
              timeLimit: '80 ms',
              lengths: pile.map((p) => ({ ...p, length: `${p.length} mm` })),
            });
            const plain = a.rows.map((row) =>
              row.map((p) => ({ ...p, start: p.start.in('mm'), length: p.length.in('mm') })),
            );
            expect(
              faultsOfLayout(plain, pile, {
                topLength,
                rows,
                minStagger: stagger,
                kerf,
                shortest: Math.min(stagger, 100),
              }),
            ).toEqual([]);
            expect(a.waste.value).toBeGreaterThanOrEqual(a.leastWaste.value - 1e-9);
            if (a.optimal)
              expect([a.waste.value - a.leastWaste.value <= 1e-9, a.sameTone.value]).toEqual([true, 0]);
          } catch (error) {
            expect(String(error)).toMatch(/no layout was found in 0\.08 s/);
          }
        },
      ),
      { numRuns: 40 },
    );
  });
});
