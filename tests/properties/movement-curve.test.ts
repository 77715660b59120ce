// The width of a board is one curve of its moisture: no jump, never turning back, for every species and both cuts.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { speciesWith } from '../../src/materials/species.js';
import { nullTrace } from '../../src/engine/trace.js';
import { fixingSlots } from '../../src/recipes/moisture/fixing-slots.js';
import { movementAcross } from '../../src/recipes/moisture/movement-across.js';
import { moveAcross } from '../../src/recipes/moisture/movement-model.js';

const both = speciesWith('movement').filter((t) => {
  const [m, s] = [t.movement(), t.shrinkage()];
  return m?.tangential && s?.tangential && m.radial && s.radial;
});
const cuts = [
  { angle: 0, unknown: false },
  { angle: Math.PI / 2, unknown: false },
] as const;
const moisture = fc.double({ min: 0, max: 0.3, noNaN: true });

describe('the curve of width against moisture', () => {
  it('red oak of 640 mm from 8 % grows more to 14.1 % than to 14 %', () => {
    const to = (m: string) =>
      movementAcross({ width: '640 mm', timber: 'red oak', from: '8 %', to: m }).change.in('mm');
    expect(to('14 %')).toBeCloseTo(14.17, 1);
    expect(to('14.1 %')).toBeGreaterThan(to('14 %'));
    expect(to('14.1 %') - to('14 %')).toBeLessThan(0.3);
  });
  it('has no jump and never turns back', () => {
    expect(both.length).toBeGreaterThan(80);
    fc.assert(
      fc.property(
        fc.constantFrom(...both),
        fc.constantFrom(...cuts),
        moisture,
        moisture,
        (timber, cut, a, b) => {
          const change = (from: number, to: number) =>
            moveAcross(nullTrace, { width: 1, timber, cut }, from, to).change;
          const step = 1e-4;
          const here = change(a, b);
          // A hundredth of a per cent moves a metre by less than a tenth of a millimetre, at every place.
          expect(Math.abs(change(a, b + step) - here)).toBeLessThan(1e-4);
          expect(change(a, b + step)).toBeGreaterThanOrEqual(here - 1e-12);
          expect(change(a + step, b)).toBeLessThanOrEqual(here + 1e-12);
          if (b > a) expect(here).toBeGreaterThanOrEqual(0);
          else expect(here).toBeLessThanOrEqual(0);
        },
      ),
      { numRuns: 300 },
    );
  });
  it('shows both figures where they disagree, and slots take the larger', () => {
    const r = movementAcross({ width: '640 mm', timber: 'red oak', from: '8 %', to: '18 %' });
    expect(r.cautions.map((c) => c.text).join('\n')).toMatch(
      /two published figures of northern red oak disagree: .*coefficient alone gives .* shrinkage from green alone/,
    );
    const slots = fixingSlots({
      width: '640 mm',
      positions: ['60 mm'],
      timber: 'red oak',
      from: '8 %',
      to: '18 %',
    });
    expect(slots.movement.value).toBeGreaterThanOrEqual(r.change.value - 1e-12);
  });
});
