import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { railSpan } from '../../src/recipes/rails/rail-span.js';

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const given = fc.record({
  b: mm(15, 200),
  h: mm(15, 300),
  q: mm(20, 5000),
  E: mm(3000, 20000),
  g: mm(8, 40),
  n: mm(100, 800),
  k: mm(1, 3),
});
type Case = { b: number; h: number; q: number; E: number; g: number; n: number; k: number };
const write = (c: Case) => ({
  section: `${c.b} x ${c.h} mm`,
  load: `${c.q} N/m`,
  modulus: `${c.E} MPa`,
  shearModulus: `${c.E / c.g} MPa`,
  limit: `L/${c.n.toFixed(3)}`,
  long: c.k,
  allowableBending: '10 MPa',
  allowableShear: '1 MPa',
});
/** Wood Handbook Eq. 9-2 with k_b = 5/384 and k_s = 1/8, written out on its own. */
const sagOf = (c: Case, L: number): number => {
  const [b, h] = [c.b / 1000, c.h / 1000];
  const W = c.q * L;
  return (
    c.k *
    (((5 / 384) * W * L ** 3) / ((c.E * 1e6 * (b * h ** 3)) / 12) +
      (W * L) / 8 / ((c.E / c.g) * 1e6 * (5 / 6) * b * h))
  );
};

describe('railSpan', () => {
  it('sags exactly its limit at the span for deflection', () => {
    fc.assert(
      fc.property(given, (c) => {
        const L = railSpan(write(c)).spanByDeflection.in('m');
        expect(sagOf(c, L) / (L / Number(c.n.toFixed(3)))).toBeCloseTo(1, 9);
      }),
    );
  });

  it('meets its stresses exactly at the spans for bending and shear', () => {
    fc.assert(
      fc.property(given, (c) => {
        const r = railSpan(write(c));
        const [b, h] = [c.b / 1000, c.h / 1000];
        const Lb = r.spanByBending?.in('m') as number;
        const Lv = r.spanByShear?.in('m') as number;
        expect((c.q * Lb * Lb) / 8 / ((b * h * h) / 6) / 10e6).toBeCloseTo(1, 9);
        expect((1.5 * (c.q * Lv)) / 2 / (b * h) / 1e6).toBeCloseTo(1, 9);
      }),
    );
  });

  it('takes the least of the three and names it', () => {
    fc.assert(
      fc.property(given, (c) => {
        const r = railSpan(write(c));
        const all = {
          deflection: r.spanByDeflection.value,
          bending: r.spanByBending?.value as number,
          shear: r.spanByShear?.value as number,
        };
        expect(r.span.value).toBe(Math.min(...Object.values(all)));
        expect(all[r.governedBy as keyof typeof all]).toBe(r.span.value);
      }),
    );
  });

  it('spans less under more load, more creep or a stricter limit, and more with more depth', () => {
    fc.assert(
      fc.property(given, fc.double({ min: 1.01, max: 2, noNaN: true }), (c, f) => {
        const at = (x: Case): number => railSpan(write(x)).span.value;
        const base = at(c);
        expect(at({ ...c, q: c.q * f })).toBeLessThan(base);
        expect(at({ ...c, h: c.h * f })).toBeGreaterThan(base);
        expect(at({ ...c, k: c.k * f > 5 ? c.k : c.k * f })).toBeLessThanOrEqual(base);
        expect(at({ ...c, n: c.n * f })).toBeLessThanOrEqual(base * (1 + 1e-12));
      }),
    );
  });

  it('gives the same span for the limit as a share and as the length that it comes to', () => {
    fc.assert(
      fc.property(given, (c) => {
        const share = railSpan(write(c)).spanByDeflection;
        const most = share.in('mm') / Number(c.n.toFixed(3));
        if (most >= 1000 || most < 1e-3) return;
        expect(
          railSpan({ ...write(c), limit: `${most} mm` }).spanByDeflection.in('m') / share.in('m'),
        ).toBeCloseTo(1, 9);
      }),
    );
  });

  it('evaluates numbers as it calculates text', () => {
    const text = railSpan({ section: '45 x 95 mm', load: '450 N/m', modulus: '11 GPa' });
    const fast = railSpan.evaluate({
      section: { shape: 'solid', width: 0.045, depth: 0.095 },
      load: 450,
      modulus: 11e9,
    });
    expect(fast.span).toBeCloseTo(text.span.value, 12);
  });
});
