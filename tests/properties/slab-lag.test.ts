// The lag of a slab against one-dimensional diffusion: the closed form of a bare slab, and finite differences of a sealed one.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { diffusion, year } from '../../src/recipes/moisture/emc-lag.js';
import { slabModes, slabMoisture, slowingOf } from '../../src/recipes/moisture/slab-lag.js';

const day = 86400;
const omega = (2 * Math.PI) / (year / day);
/** Swing of the mean moisture of a slab over that of the air, from its modes: each is 1/(1 + i omega tau). */
function swing(thickness: number, sealing: Parameters<typeof slabModes>[1]): number {
  const modes = slabModes(thickness, sealing);
  // What the modes left out weigh follows the air at once.
  let [re, im] = [1 - modes.reduce((sum, mode) => sum + mode.weight, 0), 0];
  for (const { weight, tau } of modes) {
    const x = (omega * tau) / day;
    re += weight / (1 + x * x);
    im -= (weight * x) / (1 + x * x);
  }
  return Math.hypot(re, im);
}
/** |tanh z / z| with z = (1 + i) u: the mean of a bare slab under air that swings once a year. */
function closed(thickness: number): number {
  const u = ((thickness * 1000) / 2) * Math.sqrt(omega / (2 * diffusion));
  const [c, s] = [Math.cosh(2 * u), Math.cos(2 * u)];
  return Math.sqrt((c - s) / (c + s)) / (u * Math.SQRT2);
}

describe('the lag of a slab', () => {
  it('bare, swings as diffusion has it: |tanh z / z|', () => {
    for (const t of [0.01, 0.025, 0.04, 0.08, 0.16, 0.3]) expect(swing(t, 'bare')).toBeCloseTo(closed(t), 2);
    // A single lag of t²/(pi² D) would halve the swing of a thick slab.
    const x = (omega * 200 ** 2) / (Math.PI ** 2 * diffusion);
    expect(swing(0.2, 'bare')).toBeGreaterThan(1.7 / Math.hypot(1, x));
  });
  it('open on one face is half of a slab twice as thick', () => {
    expect(swing(0.03, 'one face')).toBeCloseTo(swing(0.06, 'bare'), 12);
    expect(slowingOf(0.03, 'one face')).toBeCloseTo(4, 12);
  });
  it('a finish slows 25 mm by its figure, and thicker slabs by less', () => {
    expect(slowingOf(0.025, 'varnished')).toBeCloseTo(6, 9);
    expect(slowingOf(0.025, 'oiled')).toBeCloseTo(2, 9);
    expect(slowingOf(0.1, 'varnished')).toBeLessThan(3);
    expect(slowingOf(0.1, 'varnished')).toBeGreaterThan(1);
  });
  it('sealed and 80 mm thick, swings as finite differences have it', () => {
    const [half, cells] = [40, 30];
    const dx = half / cells;
    const first = Math.PI / (2 * Math.sqrt(6));
    // Resistance of the varnish, from the half thickness of 12.5 mm at which its slowing is stated.
    const transfer = (first * Math.tan(first) * diffusion) / 12.5;
    const m = new Float64Array(cells);
    const dt = (0.2 * (dx * dx)) / diffusion;
    const steps = Math.round((6 * 365.25) / dt);
    let [least, most] = [Infinity, -Infinity];
    for (let k = 0; k < steps; k++) {
      const air = Math.sin(omega * k * dt);
      const flows = Array.from({ length: cells + 1 }, (_, i) =>
        i === 0
          ? 0
          : i === cells
            ? (air - (m[cells - 1] as number)) / (1 / transfer + dx / (2 * diffusion))
            : (diffusion * ((m[i] as number) - (m[i - 1] as number))) / dx,
      );
      for (let i = 0; i < cells; i++)
        m[i] = (m[i] as number) + (dt / dx) * ((flows[i + 1] as number) - (flows[i] as number));
      if (k > steps - 366 / dt) {
        const mean = m.reduce((a, b) => a + b, 0) / cells;
        [least, most] = [Math.min(least, mean), Math.max(most, mean)];
      }
    }
    expect(swing(0.08, 'varnished')).toBeCloseTo((most - least) / 2, 2);
  });
  it('never swings more thicker, or more finished; its year keeps the mean of the air', () => {
    const sealing = fc.constantFrom('bare' as const, 'oiled' as const, 'varnished' as const);
    const air = fc.array(fc.double({ min: 0.05, max: 0.2, noNaN: true }), { minLength: 12, maxLength: 12 });
    fc.assert(
      fc.property(fc.double({ min: 0.005, max: 0.2, noNaN: true }), sealing, air, (t, s, months) => {
        expect(swing(t * 1.1, s)).toBeLessThanOrEqual(swing(t, s) + 1e-9);
        expect(swing(t, 'varnished')).toBeLessThanOrEqual(swing(t, 'bare') + 1e-9);
        const wood = slabMoisture(months, slabModes(t, s));
        expect(Math.min(...wood)).toBeGreaterThanOrEqual(Math.min(...months) - 1e-9);
        expect(Math.max(...wood)).toBeLessThanOrEqual(Math.max(...months) + 1e-9);
      }),
      { numRuns: 50 },
    );
  });
});
