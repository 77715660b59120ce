import { describe, expect, it } from 'vitest';
import { beam } from '../../src/recipes/rails/beam.js';
import { tableRows } from '../../src/materials/data-tables.js';

const fraction = (s: string): number => {
  const [a, b] = s.split('/').map(Number) as [number, number?];
  return a / (b ?? 1);
};

const length = 2.4; // m
const E = 9e9;
const G = 6e8;
const [b, h] = [0.045, 0.12];
const W = 1800; // N in all

const ends: Record<string, readonly { position: string; kind: 'pinned' | 'fixed' }[]> = {
  'both simply supported': [
    { position: '0 m', kind: 'pinned' },
    { position: '2.4 m', kind: 'pinned' },
  ],
  'both clamped': [
    { position: '0 m', kind: 'fixed' },
    { position: '2.4 m', kind: 'fixed' },
  ],
  'cantilever (one free, one clamped)': [{ position: '0 m', kind: 'fixed' }],
};
const loadings: Record<string, readonly object[]> = {
  uniform: [{ load: `${W / length} N/m` }],
  'concentrated at midspan': [{ position: '1.2 m', force: `${W} N` }],
  'concentrated at outer quarter points': [
    { position: '0.6 m', force: `${W / 2} N` },
    { position: '1.8 m', force: `${W / 2} N` },
  ],
  'concentrated at free end': [{ position: '2.4 m', force: `${W} N` }],
};

describe('Wood Handbook Table 9-1 (p. 9-2): bending and shear constants of eight beams, to 1e-9', () => {
  const rows = tableRows('beam-constants.fpl-gtr-190');
  it('holds all eight', () => expect(rows).toHaveLength(8));
  it.each(
    rows.map(
      (r) => [`${r.text('loading')}, ${r.text('beam_ends')}, at ${r.text('deflection_at')}`, r] as const,
    ),
  )('%s', (_, r) => {
    const at = { midspan: 1.2, 'free end': 2.4, 'load point': 0.6 }[r.text('deflection_at')] as number;
    const common = {
      length: '2.4 m',
      supports: ends[r.text('beam_ends')] as never,
      loads: loadings[r.text('loading')] as never,
      section: '45 x 120 mm',
      modulus: `${E} Pa`,
    } as const;
    const sagAt = (x: number, more: object): number => {
      const result = beam({
        ...common,
        ...more,
        loads: [...(common.loads as object[]), { position: `${x} m`, force: '0 N' }],
      } as never);
      return result.diagrams
        .find((d) => Math.abs(d.position.in('m') - x) < 1e-9)
        ?.deflection.in('m') as number;
    };
    const I = (b * h ** 3) / 12;
    const bending = (fraction(r.text('kb')) * W * length ** 3) / (E * I);
    const shear = (fraction(r.text('ks')) * W * length) / (G * (5 / 6) * b * h);
    expect(sagAt(at, {}) / bending).toBeCloseTo(1, 9);
    expect(sagAt(at, { shearModulus: `${G} Pa` }) / (bending + shear)).toBeCloseTo(1, 9);
  });
});

describe('closed forms of statics, to 1e-9', () => {
  const base = { section: '45 x 120 mm', modulus: '9 GPa' } as const;
  const EI = (9e9 * 0.045 * 0.12 ** 3) / 12;
  const near = (got: number | undefined, wanted: number) =>
    expect((got as number) / wanted).toBeCloseTo(1, 9);

  it('a point load anywhere between two supports: greatest sag P b (L² - b²)^1.5 / (9 √3 L E I), at √((L² - b²)/3)', () => {
    const r = beam({ ...base, length: '3 m', supports: ['0 m', '3 m'], loads: ['1 kN at 2.1 m'] });
    const [P, L, c] = [1000, 3, 0.9];
    near(r.maxDeflection.value, (P * c * (L * L - c * c) ** 1.5) / (9 * Math.sqrt(3) * L * EI));
    expect(r.deflectionAt.value).toBeCloseTo(Math.sqrt((L * L - c * c) / 3), 6);
    near(r.maxMoment.value, (P * 2.1 * 0.9) / 3);
    near(r.reactions[0]?.force.value, (P * c) / L);
  });

  it('fixed at one end, resting at the other, uniform: reactions 5/8 and 3/8, fixing moment w L²/8, sag w L⁴/(185 E I)', () => {
    const r = beam({ ...base, length: '3 m', supports: ['fixed 0 m', '3 m'], loads: ['500 N/m'] });
    near(r.reactions[0]?.force.value, (5 / 8) * 1500);
    near(r.reactions[1]?.force.value, (3 / 8) * 1500);
    near(r.maxMoment.value, (500 * 9) / 8);
    // 185 is the handbooks' rounding of 184.6.
    expect((500 * 81) / (EI * r.maxDeflection.value)).toBeCloseTo(184.6, 1);
  });

  it('two equal spans, uniform: reactions 3/8, 5/4, 3/8, moment over the middle w L²/8', () => {
    const r = beam({ ...base, length: '4 m', supports: ['0 m', '2 m', '4 m'], loads: ['300 N/m'] });
    near(r.reactions[0]?.force.value, (3 / 8) * 600);
    near(r.reactions[1]?.force.value, (5 / 4) * 600);
    near(r.maxMoment.value, (300 * 4) / 8);
  });

  it('three equal spans, uniform: reactions 0.4, 1.1, 1.1, 0.4, moment over the supports w L²/10', () => {
    const r = beam({ ...base, length: '6 m', supports: ['0 m', '2 m', '4 m', '6 m'], loads: ['300 N/m'] });
    [0.4, 1.1, 1.1, 0.4].forEach((k, i) => near(r.reactions[i]?.force.value, k * 600));
    near(r.maxMoment.value, (300 * 4) / 10);
  });

  it('a part of the length loaded: reactions by the lever, moment R²/2w + R a', () => {
    const r = beam({
      ...base,
      length: '3 m',
      supports: ['0 m', '3 m'],
      loads: ['2 kN/m from 0.5 m to 1.7 m'],
    });
    const R = (2000 * 1.2 * (3 - 1.1)) / 3;
    near(r.reactions[0]?.force.value, R);
    near(r.maxMoment.value, R * 0.5 + (R * R) / (2 * 2000));
  });

  it('a triangular load rising from 0: greatest moment w L²/(9 √3) at L/√3', () => {
    const r = beam({
      ...base,
      length: '3 m',
      supports: ['0 m', '3 m'],
      loads: [{ from: '0 m', to: '3 m', load: '0 N/m', loadTo: '900 N/m' }],
    });
    near(r.maxMoment.value, (900 * 9) / (9 * Math.sqrt(3)));
    expect(r.momentAt.value).toBeCloseTo(3 / Math.sqrt(3), 6);
  });

  it('an overhang with a load at its tip: sag P a² (L + a) / (3 E I)', () => {
    const r = beam({ ...base, length: '2.6 m', supports: ['0 m', '2 m'], loads: ['800 N at 2.6 m'] });
    near(r.maxDeflection.value, (800 * 0.36 * 2.6) / (3 * EI));
    expect(r.reactions[0]?.force.value).toBeCloseTo((-800 * 0.6) / 2, 6);
    expect(r.cautions.some((c) => c.level === 'danger' && /hold the beam down/.test(c.text))).toBe(true);
  });

  it('a moment at the end of a beam: reactions M/L, far slope M L/(6 E I), near slope M L/(3 E I)', () => {
    const r = beam({ ...base, length: '3 m', supports: ['0 m', '3 m'], loads: ['600 N m at 0 m'] });
    near(r.reactions[0]?.force.value, -200);
    near(r.maxSlope.value, (600 * 3) / (3 * EI));
  });

  it('a spring under the middle: the load is shared by stiffness, k / (k + 48 E I / L³)', () => {
    const r = beam({
      ...base,
      length: '2 m',
      supports: ['0 m', { position: '1 m', stiffness: '100 N/mm' }, '2 m'],
      loads: ['1 kN at 1 m'],
    });
    const kb = (48 * EI) / 8;
    near(r.reactions[1]?.force.value, (1000 * 1e5) / (1e5 + kb));
    near(r.maxDeflection.value, 1000 / (1e5 + kb));
  });

  it('a joint that turns: end moment of a uniform beam (w L²/12) / (1 + 2 E I / (k L))', () => {
    const k = 20000;
    const r = beam({
      ...base,
      length: '2 m',
      supports: [
        { position: '0 m', turning: `${k} N m/rad` },
        { position: '2 m', turning: `${k} N m/rad` },
      ],
      loads: ['600 N/m'],
    });
    near(r.reactions[0]?.moment?.value, -((600 * 4) / 12) / (1 + (2 * EI) / (k * 2)));
  });
});

describe('printed worked examples, to their last digit', () => {
  const three = {
    length: '3 m',
    supports: ['0 m', '3 m'],
    section: '100 x 200 mm',
    modulus: '8 GPa',
    loads: ['10 kN at 0.5 m', '5 kN at 1.5 m', '10 kN at 2.5 m', '117.7 N/m'],
  } as const;
  it('three point loads placed alike from both ends: half of all at each support, by statics', () => {
    const r = beam(three);
    expect(r.reactions[0]?.force.in('N')).toBeCloseTo((25_000 + 117.7 * 3) / 2, 6);
    // By superposition of the handbook's cases: 2 x P a (3 L² - 4 a²) / 24 for the outer pair, P L³ / 48, 5 w L⁴ / 384, over E I.
    const flexural = (8e9 * 0.1 * 0.2 ** 3) / 12;
    const sag = (1e4 * 0.5 * (3 * 9 - 4 * 0.25)) / 24 + (5e3 * 27) / 48 + (5 * 117.7 * 81) / 384;
    expect(r.maxDeflection.in('mm')).toBeCloseTo((1e3 * sag) / flexural, 6);
  });
  it('10 by 20 cm over 3 m under 5000 N, by P L³ / 48 E I and P L / 4 W: 3.835 mm and 5.625 MPa', () => {
    const r = beam({
      length: '3 m',
      supports: ['0 m', '3 m'],
      loads: ['5000 N at 1.5 m'],
      section: '100 x 200 mm',
      modulus: '11 GPa',
    });
    expect(r.maxDeflection.in('mm')).toBeCloseTo(3.835, 3);
    expect(r.bendingStress.in('MPa')).toBeCloseTo(5.625, 9);
  });
  it('Gere 5.6-7: joists 16 in apart, 126 in, 120 lb/ft² give 26460 lb in', () => {
    const r = beam({
      length: '126 in',
      supports: ['0 in', '126 in'],
      loads: [`${(120 * 16) / 144} lbf/in`],
      section: '2 x 10 in',
      modulus: '1500 ksi',
    });
    expect(r.maxMoment.in('lbf in')).toBeCloseTo(26460, 6);
  });
  it('Singer and Pytel 511: at the printed 11.547 ft the stress is 3000 psi', () => {
    const r = beam({
      length: '11.547 ft',
      supports: ['0 ft', '11.547 ft'],
      loads: ['80 lbf/ft'],
      section: '2 x 4 in',
      modulus: '1500 ksi',
    });
    expect(r.bendingStress.in('psi')).toBeCloseTo(3000, 0);
  });
  it('a beam of 200 by 400 mm over 4 m: 5333 N/m gives 2 MPa (printed 5350, from a rounded I)', () => {
    const r = beam({
      length: '4 m',
      supports: ['0 m', '4 m'],
      loads: ['5350 N/m'],
      section: '200 x 400 mm',
      modulus: '10 GPa',
    });
    expect(Math.abs(r.bendingStress.in('MPa') - 2)).toBeLessThan(0.008);
  });
  it('MDF guide: 20 kg spread on 800 mm of 300 by 18 mm: 3.588 mm', () => {
    const r = beam({
      length: '800 mm',
      supports: ['0 mm', '800 mm'],
      loads: [`${(20 * 9.81) / 0.8} N/m`],
      section: '300 x 18 mm',
      modulus: '2500 MPa',
    });
    expect(r.maxDeflection.in('mm')).toBeCloseTo(3.588, 3);
  });
});
