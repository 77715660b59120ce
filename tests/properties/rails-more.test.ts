import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beam } from '../../src/recipes/rails/beam.js';
import { rackingFrame } from '../../src/recipes/rails/racking-frame.js';
import { railSpan } from '../../src/recipes/rails/rail-span.js';
import { creepChoices } from '../../src/recipes/rails/sag-limit.js';
import { tipping } from '../../src/recipes/rails/tipping.js';
import { shelfUses } from '../../src/recipes/rails/top-cases.js';
import { topSag } from '../../src/recipes/rails/top-sag.js';
import { tableRows } from '../../src/materials/data-tables.js';

const num = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('own weight', () => {
  it('is density × area × 9.80665 by length', () => {
    const r = beam({
      length: '2 m',
      supports: ['0 m', '2 m'],
      loads: ['0 N/m'],
      section: '50 x 100 mm',
      modulus: '9 GPa',
      density: '500 kg/m3',
      ownWeight: true,
    });
    expect(r.reactions[0]?.force.in('N')).toBeCloseTo((500 * 0.05 * 0.1 * 9.80665 * 2) / 2, 9);
    const [without, with_] = [false, true].map(
      (ownWeight) =>
        railSpan({
          section: '50 x 100 mm',
          load: '24.516625 N/m',
          modulus: '9 GPa',
          density: '500 kg/m3',
          ownWeight,
        }).span.value,
    );
    // The load is just the own weight, so with it the rail carries twice as much: the span falls by the cube root of two.
    expect((without as number) / (with_ as number)).toBeCloseTo(Math.cbrt(2), 9);
  });
});

describe('topSag', () => {
  it('of a shelf on its two ends is 5 q L⁴/(384 E I)', () => {
    fc.assert(
      fc.property(num(300, 2000), num(150, 900), num(15, 60), num(0.1, 5), (L, B, t, p) => {
        const r = topSag({
          length: `${L} mm`,
          width: `${B} mm`,
          thickness: `${t} mm`,
          supports: ['0 mm', `${L} mm`],
          load: `${p} kPa`,
          modulus: '10 GPa',
          ownWeight: false,
          long: 'no creep',
        });
        const I = ((B / 1000) * (t / 1000) ** 3) / 12;
        expect(r.sag.value / ((5 * p * 1000 * (B / 1000) * (L / 1000) ** 4) / (384 * 10e9 * I))).toBeCloseTo(
          1,
          6,
        );
      }),
    );
  });

  it('does not sag less with more load, a longer overhang or less thickness', () => {
    const at = (over: number, t: number, p: number) =>
      topSag({
        length: `${1400 + over} mm`,
        width: '600 mm',
        thickness: `${t} mm`,
        supports: ['0 mm', '1400 mm'],
        load: `${p} kPa`,
        modulus: '10 GPa',
      }).sagAtEnd?.value as number;
    expect(at(300, 40, 2)).toBeGreaterThan(at(300, 40, 1));
    expect(at(400, 40, 1)).toBeGreaterThan(at(300, 40, 1));
    expect(at(300, 30, 1)).toBeGreaterThan(at(300, 40, 1));
  });

  it('takes the load where it does most harm: an end with a load over the bay alone lifts, over the end alone sinks', () => {
    const r = topSag({
      length: '2 m',
      width: '0.6 m',
      thickness: '40 mm',
      supports: ['0 m', '1.5 m'],
      load: '2 kPa',
      modulus: '10 GPa',
      long: 'no creep',
    });
    const I = (0.6 * 0.04 ** 3) / 12;
    const [q, a, L] = [1200, 0.5, 1.5];
    // Overhang loaded alone: q a³ (4 L + 3 a) / (24 E I).
    expect(r.sagAtEnd?.value).toBeCloseTo((q * a ** 3 * (4 * L + 3 * a)) / (24 * 10e9 * I), 8);
  });

  it('is softer across the grain by the elastic ratio', () => {
    const base = {
      length: '600 mm',
      width: '600 mm',
      thickness: '30 mm',
      supports: ['0 mm', '600 mm'],
      load: '1 kPa',
      timber: 'white oak',
      ownWeight: false,
    } as const;
    const [along, across] = [topSag(base), topSag({ ...base, grain: 'across' })];
    expect(across.sag.value / along.sag.value).toBeGreaterThan(8);
    expect(across.sag.value / along.sag.value).toBeLessThan(1 / 0.04);
  });

  it('keeps its choices as the tables have them', () => {
    const uses = tableRows('furniture-loads')
      .filter((r) => r.text('kind') === 'area load')
      .map((r) => r.text('use'));
    expect([...shelfUses]).toEqual(uses);
    expect([...creepChoices]).toEqual(tableRows('creep-factors').map((r) => r.text('choice')));
  });
});

describe('tipping', () => {
  const counter = (more: object) =>
    tipping({
      parts: [{ mass: '40 kg', position: '240 mm' }],
      base: '480 mm',
      overhang: '100 mm',
      pushHeight: '900 mm',
      ...more,
    });
  it('just tips under the force that it says tips it', () => {
    fc.assert(
      fc.property(num(5, 80), num(100, 380), num(0, 150), num(10, 60), (m, x, load, o) => {
        const given = {
          parts: [{ mass: `${m} kg`, position: `${x} mm` }],
          base: '480 mm',
          overhang: `${o} mm`,
          pushHeight: '900 mm',
        };
        const free = tipping({ ...given, edgeLoad: `${load} N` });
        if (free.forceToTip.value === 0) return;
        const at = tipping({ ...given, edgeLoad: `${load} N`, push: `${free.forceToTip.value} N` });
        expect(Math.abs(at.margin.value)).toBeLessThan(1e-9);
        const edge = tipping({ ...given, edgeLoad: `${free.edgeLoadToTip?.value} N` });
        expect(edge.worseSide === 'forward' ? Math.abs(edge.margin.value) : 0).toBeLessThan(1e-9);
      }),
    );
  });
  it('with nothing on it stands on the line of its centre of gravity', () => {
    const r = counter({});
    expect(r.verdict).toBe('not checked');
    expect(r.margin.in('mm')).toBeCloseTo(240, 9);
    expect(r.edgeLoadToTip?.in('N')).toBeCloseTo((40 * 9.80665 * 240) / 100, 6);
  });
  it('is refused, by name, when it does not stand by itself', () => {
    expect(() => tipping({ parts: [{ mass: '40 kg', position: '-10 mm' }], base: '480 mm' })).toThrow(
      /parts: .*does not stand by itself/,
    );
  });
  it('says danger when it can tip', () => {
    expect(
      counter({ edgeLoad: '900 N' }).cautions.some(
        (c) => c.level === 'danger' && /widen the feet.*Tips forward/.test(c.text),
      ),
    ).toBe(true);
  });
});

describe('rackingFrame', () => {
  const base = {
    height: '850 mm',
    width: '560 mm',
    section: '35 x 70 mm',
    modulus: '9 GPa',
    push: '100 N',
  } as const;
  it('with corners that hardly give is the stiff portal F h² L/(12 E I) + F h³/(6 E I)', () => {
    const I = (0.035 * 0.07 ** 3) / 12;
    const stiff = (100 * 0.85 ** 2 * 0.56) / (12 * 9e9 * I) + (100 * 0.85 ** 3) / (6 * 9e9 * I);
    expect(rackingFrame({ ...base, joint: 'stiff' }).sway.value).toBeCloseTo(stiff, 12);
    expect(rackingFrame({ ...base, jointStiffness: '1e8 N m/rad' }).sway.value / stiff).toBeCloseTo(1, 3);
  });
  it('adds F h²/(2 k) for the corners', () => {
    const [a, b] = [
      rackingFrame({ ...base, joint: 'stiff' }),
      rackingFrame({ ...base, jointStiffness: '5000 N m/rad' }),
    ];
    expect(b.sway.value - a.sway.value).toBeCloseTo((100 * 0.85 ** 2) / (2 * 5000), 12);
    expect(b.shareOfJoints?.value).toBeCloseTo(1 - a.sway.value / b.sway.value, 12);
  });
  it('agrees with the beam solver on its rail: half a portal is a leg on a turning spring of 6 E I/L', () => {
    const I = (0.035 * 0.07 ** 3) / 12;
    const k = (6 * 9e9 * I) / 0.56;
    const leg = beam({
      length: '850 mm',
      supports: [{ position: '0 mm', turning: `${k} N m/rad` }],
      loads: ['50 N at 850 mm'],
      section: '35 x 70 mm',
      modulus: '9 GPa',
    });
    expect(rackingFrame({ ...base, joint: 'stiff' }).sway.value / leg.maxDeflection.value).toBeCloseTo(1, 9);
  });
  it('orders the joints as the bench does: a brace, then glue, then screws', () => {
    const at = (joint: 'braced' | 'glued half lap' | 'screwed half lap') =>
      rackingFrame({ ...base, joint, density: '450 kg/m3' }).sway.value;
    expect(at('braced')).toBeLessThan(at('glued half lap'));
    expect(at('glued half lap')).toBeLessThan(at('screwed half lap'));
  });
  it('knows the functional push of ANSI/BIFMA X5.5: 369 N for 30 kg, 445 N at most', () => {
    expect(rackingFrame({ ...base, mass: '30 kg' }).testForce?.in('N')).toBeCloseTo(369, 9);
    expect(rackingFrame({ ...base, mass: '60 kg' }).testForce?.in('N')).toBe(445);
  });
});

describe('the choice of figures', () => {
  const span = (more: object) => railSpan({ section: '45 x 95 mm', load: '450 N/m', ...more });
  it('a salvaged timber of unknown kind gets the low figures, a caution and the range', () => {
    const r = span({});
    expect(r.basis).toMatch(
      /unknown softwood, no grade, 10th percentile of \d+ species, green, strength ratio 19 % \(not examined\)/,
    );
    expect(
      r.cautions.some(
        (c) =>
          c.level === 'data' &&
          /unknown softwood without a structural grade: 19 % of clear wood/.test(c.text) &&
          c.source?.id === 'astm-d245',
      ),
    ).toBe(true);
    const [low, middle, high] = (r.range ?? []).map((x) => x.span.value) as [number, number, number];
    expect(r.span.value).toBe(low);
    expect(low).toBeLessThan(middle);
    expect(middle).toBeLessThan(high);
  });
  it('says which basis each figure has and never mixes them in silence', () => {
    expect(span({ grade: 'C24' }).basis).toMatch(
      /characteristic strengths as working stresses at the loads as they are, mean modulus; long duration, heated room/,
    );
    expect(span({ timber: 'white oak' }).basis).toMatch(
      /white oak, no grade, lowest of 7 species of the trade name, green, strength ratio 19 %/,
    );
    expect(span({ grade: 'Hem-Fir No.2 2x-4x' }).basis).toMatch(/allowable stresses as working stresses/);
    expect(span({ grade: 'C24', modulus: '9 GPa' }).basis).toMatch(/given directly: modulus/);
    expect(span({ modulus: '9 GPa' }).basis).toBe('as given');
  });
  it('a poor piece spans less than a clear one', () => {
    const at = (strengthRatio: string) =>
      span({ timber: 'white oak', strengthRatio, strengthReason: 'graded by eye by a trained grader' });
    expect(at('30 %').spanByBending!.value).toBeLessThan(at('90 %').spanByBending!.value);
    expect(at('30 %').spanByDeflection.value).toBeLessThan(at('90 %').spanByDeflection.value);
    expect(() => span({ timber: 'white oak', strengthRatio: '30 %' })).toThrow(
      /strengthRatio: got 30 % without a reason, takes at most 26 %/,
    );
  });
  it('every answer that carries people defers to codes and licensed practice', () => {
    const all = [
      span({}),
      beam({ length: '2 m', supports: ['0 m', '2 m'], loads: ['1 N/m'], section: '45 x 95 mm' }),
      topSag(topSag.example),
      tipping(tipping.example),
      rackingFrame(rackingFrame.example),
    ];
    for (const r of all)
      expect(
        r.cautions.some((c) => c.level === 'danger' && /local codes and licensed practice/.test(c.text)),
      ).toBe(true);
  });
});
