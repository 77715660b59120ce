import { beam } from '../../../src/recipes/rails/beam.js';
import { describe, expect, it } from 'vitest';
import { railSpan } from '../../../src/recipes/rails/rail-span.js';
import { secondMoment } from '../../../src/recipes/rails/span-formulas.js';
import { leastOf } from '../../../src/recipes/rails/span-limits.js';

const near = (got: number | undefined, wanted: number) => expect((got as number) / wanted).toBeCloseTo(1, 9);
const texts = (r: { cautions: readonly { text: string }[] }) => r.cautions.map((c) => c.text).join('\n');
const remarks = (r: { workings: readonly { kind: string; text: string }[] }) =>
  r.workings.flatMap((w) => (w.kind === 'remark' ? [w.text] : [])).join('\n');

describe('railSpan', () => {
  const base = { section: '45 x 95 mm', load: '450 N/m', modulus: '9 GPa', long: 'no creep' } as const;
  it('says which stresses it could not check, and how to give them', () => {
    const text = (more: object) => texts(railSpan({ ...base, ...more }));
    expect(text({})).toMatch(/no bending or shear stress .*give allowableBending and allowableShear/);
    expect(text({ allowableBending: '8 MPa' })).toMatch(/no shear stress .*give allowableShear$/m);
    expect(text({ allowableShear: '1 MPa' })).toMatch(/no bending stress .*give allowableBending$/m);
    expect(text({ allowableBending: '8 MPa', allowableShear: '1 MPa' })).not.toMatch(/is not checked for it/);
  });
  it('its sag and stresses at the span: 5 q L⁴/(384 E I), q L²/8 W, 1.5 q L/2 A, first and in the long run', () => {
    const r = railSpan({ ...base, long: 'heated room', longShare: '50 %' });
    const L = r.span.value;
    const I = (0.045 * 0.095 ** 3) / 12;
    near(r.firstSag.value, (5 * 450 * L ** 4) / (384 * 9e9 * I));
    near(r.sag.value, 1.3 * r.firstSag.value);
    near(r.sag.value, L / 300);
    near(r.bendingStress.value, (450 * L * L) / 8 / ((0.045 * 0.095 ** 2) / 6));
    near(r.shearStress.value, (1.5 * 450 * L) / 2 / (0.045 * 0.095));
    expect(r.sources.some((s) => s.id === 'en-1995-1-1')).toBe(true);
    expect(railSpan({ ...base, long: 1.6 }).sources.every((s) => s.id)).toBe(true);
  });
  it('with shear: the sag at the span is the limit, as a share or as a length', () => {
    const I = (0.045 * 0.095 ** 3) / 12;
    const sag = (L: number) =>
      (5 * 450 * L ** 4) / (384 * 9e9 * I) + (450 * L * L) / (8 * 5e8 * (5 / 6) * 0.045 * 0.095);
    const share = railSpan({ ...base, shearModulus: '500 MPa' });
    near(sag(share.span.value), share.span.value / 300);
    near(share.sag.value, sag(share.span.value));
    const length = railSpan({ ...base, shearModulus: '500 MPa', limit: '5 mm' });
    near(sag(length.span.value), 0.005);
    expect(remarks(length)).toMatch(
      `bending and shear together: ${(length.span.value * 1000).toFixed(1)} mm`,
    );
  });
  it('of two boards glued face to face is that of one of double depth, without a chart against depth', () => {
    const half = { width: '45 mm', depth: '47.5 mm' };
    const glued = railSpan({ ...base, section: { layers: [half, half] } });
    near(glued.span.value, railSpan(base).span.value);
    // 9 GPa × 45 × 95³/12 mm⁴.
    expect(remarks(glued)).toMatch(/Section worked out by strips: E I = 28\.94 kN·m²/);
    expect(glued.chart).toBeUndefined();
    expect(remarks(railSpan(base))).not.toMatch(/by strips/);
    expect(railSpan(base).chart).toBeDefined();
  });
  it('warns past four times as deep as wide', () => {
    const text = (section: string) => texts(railSpan({ ...base, section }));
    expect(text('45 x 180 mm')).not.toMatch(/deeper than four times/);
    expect(text('45 x 181 mm')).toMatch(/deeper than four times/);
    expect(texts(railSpan({ ...base, section: { diameter: '50 mm' } }))).not.toMatch(
      /deeper than four times/,
    );
  });
  it('warns of a span under four depths, 380 mm', () => {
    // Shear alone decides: L = 2 f A_v/q with A_v = 2/3 A, so q = 2 f A_v/L.
    const at = (L: number) =>
      texts(
        railSpan({ ...base, allowableShear: '1 MPa', load: `${(2e6 * (2 / 3) * 0.045 * 0.095) / L} N/m` }),
      );
    expect(at(0.3801)).not.toMatch(/less than four times the depth/);
    expect(at(0.3799)).toMatch(/less than four times the depth/);
  });
  it('shows the second moment of its section: 45 × 95³/12 = 3 215 156 mm⁴', () => {
    near(secondMoment.evaluate({ b: 0.045, h: 0.095 }), 3215156.25e-12);
  });
  it('of equal spans names the sag first', () => {
    expect(leastOf({ deflection: 2, bending: 2, shear: 2 })).toEqual([2, 'deflection']);
    expect(leastOf({ deflection: 2, bending: undefined, shear: 1.9 })).toEqual([1.9, 'shear']);
  });
  it('is decided by the least of the three', () => {
    const by = (more: object) => railSpan({ ...base, ...more }).governedBy;
    expect(by({})).toBe('deflection');
    expect(by({ allowableBending: '1 MPa' })).toBe('bending');
    expect(by({ allowableBending: '1 MPa', allowableShear: '0.01 MPa' })).toBe('shear');
  });
  it('gives a range only for a kind of timber whose modulus is not given', () => {
    const range = (more: object) =>
      railSpan({ section: '45 x 95 mm', load: '450 N/m', ...more }).range?.map((r) => r.figures);
    const three = ['10th percentile', 'middle', '90th percentile'];
    expect(range({})).toEqual(three);
    expect(range({ timber: 'pines' })).toEqual(three);
    expect(range({ timber: 'white oak' })).toBeUndefined();
    expect(range({ grade: 'C24' })).toBeUndefined();
    expect(range({ timber: 'unknown softwood', modulus: '9 GPa' })).toBeUndefined();
  });
});

describe('a notched rail by hand: 45 x 95 mm, shear 1.034 MPa, bending 8 MPa, 450 N/m', () => {
  const at = (notch: object | undefined, more: object = {}) =>
    railSpan({
      section: '45 x 95 mm',
      load: '450 N/m',
      modulus: '9 GPa',
      allowableShear: '1.034 MPa',
      allowableBending: '8 MPa',
      limit: 'L/100',
      notch,
      ...more,
    } as never);
  it('at the support from below, a quarter cut: the least of the NDS and k_v', () => {
    // 2/3 1.034 45 71.25 0.75² = 1243 N; k_v 0.704 at 40 mm: 0.704 1.034 45 71.25 / 1.5 = 1556 N.
    const r = at({ at: '40 mm', depth: '23.75 mm' });
    expect(r.spanByNotch?.in('mm')).toBeCloseTo(2 * (1243.2 / 0.45 + 40), -1);
    expect(
      at({ depth: '23.75 mm' })
        .cautions.map((c) => c.text)
        .join(),
    ).not.toMatch(/outside the limits/);
    expect(
      at({ depth: '40 mm' })
        .cautions.map((c) => c.text)
        .join(),
    ).toMatch(/outside the limits of the standard, an end notch may be at most a quarter/);
  });
  it('lapped from above 600 mm from the support: the net section, M = 8 45 47.5²/6 = 135 375 N mm', () => {
    const r = at({ at: '600 mm', depth: '47.5 mm', side: 'top' });
    expect(r.spanByNotch?.in('mm')).toBeCloseTo((2 * 135375) / (0.45 * 600) + 600, 3);
    expect(r.governedBy).toBe('notch');
    expect(r.span.value).toBeLessThan(at(undefined).span.value);
  });
  it('refuses a cut from below within the span, one through the rail, and a section of pieces', () => {
    expect(() => at({ at: '600 mm', depth: '20 mm' })).toThrow(
      /notch\.side: got a cut from below within the span/,
    );
    expect(() => at({ depth: '95 mm' })).toThrow(/notch\.depth: got 95\.0 mm, takes less than the depth/);
    expect(() => at({ depth: '10 mm' }, { section: { diameter: '40 mm' } })).toThrow(/takes a solid section/);
  });
  it('a beam with the same notch uses what the span leaves', () => {
    const span = at({ at: '600 mm', depth: '47.5 mm', side: 'top' }).spanByNotch!.in('mm');
    const r = beam({
      length: `${span} mm`,
      supports: ['0 mm', { position: `${span} mm` }],
      loads: ['450 N/m'],
      section: '45 x 95 mm',
      modulus: '9 GPa',
      allowableShear: '1.034 MPa',
      allowableBending: '8 MPa',
      notch: { at: '600 mm', depth: '47.5 mm', side: 'top' },
    } as never);
    expect(r.notchUse?.value).toBeCloseTo(1, 6);
    expect(
      beam({ ...beam.example, notch: { at: '100 mm', depth: '40 mm', side: 'top' } } as never).verdict,
    ).toMatch(/at the notch|yes/);
  });
});
