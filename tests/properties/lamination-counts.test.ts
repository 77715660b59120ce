import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layerCount } from '../../src/recipes/lamination/layer-count.js';
import { stripCount } from '../../src/recipes/lamination/strip-count.js';

// Sizes in whole tenths of a millimetre, so that the counts can be found again in whole numbers, without rounding.
const tenths = (min: number, max: number) => fc.integer({ min, max });
const mm = (t: number): string => `${t / 10} mm`;

describe('stripCount', () => {
  const sizes = fc.record({
    top: tenths(500, 30_000),
    strip: tenths(120, 2000),
    jointing: tenths(0, 100),
    trim: tenths(0, 500),
    machine: tenths(2000, 6300),
  });

  it('takes the least number of strips that covers the top and its trim', () => {
    fc.assert(
      fc.property(sizes, ({ top, strip, jointing, trim }) => {
        const { strips, gluedWidth, spare } = stripCount({
          topWidth: mm(top),
          stripWidth: mm(strip),
          jointing: mm(jointing),
          finalTrim: mm(trim),
        });
        // Laid one by one until the top is covered.
        let laid = 0;
        let width = 0;
        while (width < top + trim) {
          width += strip - jointing;
          laid++;
        }
        expect(strips).toBe(laid);
        expect(gluedWidth.in('mm')).toBeCloseTo(width / 10, 6);
        expect(spare.in('mm')).toBeCloseTo((width - top - trim) / 10, 6);
      }),
      { numRuns: 400 },
    );
  });

  it('splits the strips into the fewest slabs that pass the machine, equal to one strip', () => {
    fc.assert(
      fc.property(sizes, ({ top, strip, jointing, trim, machine }) => {
        const { strips, slabs } = stripCount({
          topWidth: mm(top),
          stripWidth: mm(strip),
          jointing: mm(jointing),
          finalTrim: mm(trim),
          machineWidth: mm(machine),
        });
        const counts = slabs.map((s) => s.strips);
        expect(counts.reduce((a, b) => a + b, 0)).toBe(strips);
        expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
        const most = Math.floor(machine / (strip - jointing));
        expect(Math.max(...counts)).toBeLessThanOrEqual(most);
        // One slab fewer would not pass.
        expect((counts.length - 1) * most).toBeLessThan(strips);
        for (const s of slabs) expect(s.width.in('mm')).toBeLessThanOrEqual(machine / 10 + 1e-6);
      }),
      { numRuns: 400 },
    );
  });

  it('answers alike in inches and millimetres, and in .evaluate', () => {
    fc.assert(
      fc.property(fc.integer({ min: 40, max: 1600 }), fc.integer({ min: 16, max: 160 }), (w, s) => {
        const inches = stripCount({
          topWidth: `${w / 16} in`,
          stripWidth: `${s / 16} in`,
          jointing: '1/8 in',
          finalTrim: '1/2 in',
        });
        const metric = stripCount({
          topWidth: `${(w * 25.4) / 16} mm`,
          stripWidth: `${(s * 25.4) / 16} mm`,
          jointing: '3.175 mm',
          finalTrim: '12.7 mm',
        });
        const fast = stripCount.evaluate({
          topWidth: (w * 0.0254) / 16,
          stripWidth: (s * 0.0254) / 16,
          jointing: 0.003175,
          finalTrim: 0.0127,
        });
        expect(metric.strips).toBe(inches.strips);
        expect(fast.strips).toBe(inches.strips);
      }),
      { numRuns: 200 },
    );
  });
});

describe('layerCount', () => {
  const sizes = fc.record({
    top: tenths(60, 3000),
    board: tenths(100, 800),
    plane: tenths(0, 40),
    flatten: tenths(0, 60),
  });

  it('takes the least number of layers that leaves the thickness after flattening', () => {
    fc.assert(
      fc.property(sizes, ({ top, board, plane, flatten }) => {
        const answer = layerCount({
          topThickness: mm(top),
          stripThickness: mm(board),
          planePerFace: mm(plane),
          flattenPerGlueUp: mm(flatten),
        });
        const layer = board - 2 * plane;
        let n = 1;
        while (n * layer - (n === 1 ? 0 : flatten) < top) n++;
        expect(answer.layers).toBe(n);
        expect(answer.finalThickness.in('mm')).toBeCloseTo((n * layer - (n === 1 ? 0 : flatten)) / 10, 6);
        expect(answer.spare.in('mm')).toBeGreaterThanOrEqual(-1e-6);
      }),
      { numRuns: 500 },
    );
  });

  it('gives layers that, planed alike, come out at the very thickness', () => {
    fc.assert(
      fc.property(sizes, ({ top, board, plane, flatten }) => {
        const first = layerCount({
          topThickness: mm(top),
          stripThickness: mm(board),
          planePerFace: mm(plane),
          flattenPerGlueUp: mm(flatten),
        });
        expect(first.layerBalanced.value).toBeLessThanOrEqual(first.layerPlaned.value + 1e-9);
        const again = layerCount({
          topThickness: mm(top),
          stripThickness: first.layerBalanced,
          planePerFace: '0 mm',
          flattenPerGlueUp: mm(flatten),
        });
        expect(again.layers).toBe(first.layers);
        expect(again.spare.in('mm')).toBeCloseTo(0, 6);
      }),
      { numRuns: 300 },
    );
  });

  it('never takes fewer layers when more is planed or flattened', () => {
    fc.assert(
      fc.property(sizes, fc.integer({ min: 0, max: 10 }), ({ top, board, plane, flatten }, more) => {
        const n = (p: number, f: number) =>
          layerCount({
            topThickness: mm(top),
            stripThickness: mm(board + 40),
            planePerFace: mm(p),
            flattenPerGlueUp: mm(f),
          }).layers;
        expect(n(plane + more, flatten)).toBeGreaterThanOrEqual(n(plane, flatten));
        expect(n(plane, flatten + more)).toBeGreaterThanOrEqual(n(plane, flatten));
      }),
      { numRuns: 200 },
    );
  });
});
