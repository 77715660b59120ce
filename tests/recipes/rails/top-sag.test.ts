import { describe, expect, it } from 'vitest';
import { topSag } from '../../../src/recipes/rails/top-sag.js';

const near = (got: number | undefined, wanted: number) => expect((got as number) / wanted).toBeCloseTo(1, 9);
const texts = (r: { cautions: readonly { text: string }[] }) => r.cautions.map((c) => c.text).join('\n');
const remarks = (r: { workings: readonly { kind: string; text: string }[] }) =>
  r.workings.flatMap((w) => (w.kind === 'remark' ? [w.text] : [])).join('\n');
const g = 9.80665;

describe('topSag by hand: 2 m by 0.5 m by 40 mm at 10 GPa, no weight of its own', () => {
  const EI = (10e9 * 0.5 * 0.04 ** 3) / 12;
  const W = (0.5 * 0.04 ** 2) / 6;
  const base = {
    length: '2 m',
    width: '0.5 m',
    thickness: '40 mm',
    modulus: '10 GPa',
    ownWeight: false,
    long: 'no creep',
  } as const;
  const onEnds = { ...base, supports: ['0 m', '2 m'] };

  it('one load on a top between two rails stands in the middle: P L³/(48 E I), P L/4', () => {
    const r = topSag({ ...onEnds, load: '0 kPa', edgeLoad: '600 N' });
    near(r.sag.value, (600 * 8) / (48 * EI));
    near(r.stress.value, 300 / W);
    expect(r.sagAtEnd).toBeUndefined();
    expect(remarks(r)).toMatch(/the single load at each end and in the middle of each bay: 2 cases/);
  });
  it('one load on a top that hangs over stands at that end: P a² (l + a)/(3 E I), and P l³/(48 E I) in the bay', () => {
    for (const supports of [
      ['0 m', '1.5 m'],
      ['0.5 m', '2 m'],
    ]) {
      const r = topSag({ ...base, supports, load: '0 kPa', edgeLoad: '600 N' });
      near(r.sagAtEnd!.value, (600 * 0.25 * 2) / (3 * EI));
      near(r.sagBetween.value, (600 * 1.5 ** 3) / (48 * EI));
      near(r.stress.value, 300 / W);
      // The whole top, its bay and its end, each with the load in two places.
      expect(remarks(r)).toMatch(/: 6 cases/);
    }
  });
  it('a top over both its rails is loaded whole, bay by bay and on both ends: five cases', () => {
    const r = topSag({ ...base, supports: ['0.25 m', '1.75 m'], load: '1 kPa' });
    expect(remarks(r)).toMatch(/over the ends alone: 5 cases/);
    // An end sinks most with both ends loaded and the bay free: its own q a⁴/8 and the turn q a² l/4 of the support.
    near(r.sagAtEnd!.value, (500 * (0.25 ** 4 / 8 + (0.25 ** 3 * 1.5) / 4)) / EI);
    near(r.sagBetween.value, (5 * 500 * 1.5 ** 4) / (384 * EI));
  });
  it('nothing on it sags by nothing', () => {
    const r = topSag({ ...onEnds, load: '0 kPa' });
    expect([r.sag.value, r.stress.value, r.ok]).toEqual([0, 0, true]);
    expect(r.verdict).toMatch(/^sag is 0 % of what L\/300 allows; stress not checked$/);
  });
  it('creeps in the long run by the share that stays, and names who says so', () => {
    const r = topSag({
      ...onEnds,
      load: '1 kPa',
      long: 'heated room',
      longShare: '50 %',
      limit: 'adjustable shelf',
    });
    near(r.firstSag.value, (5 * 500 * 16) / (384 * EI));
    near(r.sag.value, 1.3 * r.firstSag.value);
    expect(r.sources.map((s) => s.id)).toEqual(expect.arrayContaining(['en-1995-1-1', 'aws-2009']));
    const plain = topSag({ ...onEnds, load: '1 kPa', long: 1.6 });
    expect(plain.sources.map((s) => s.id)).not.toContain('aws-2009');
  });
  it('creeps alike between rails and past them, and is judged by the long run', () => {
    const given = { ...base, supports: ['0 m', '1.5 m'], load: '0 kPa', edgeLoad: '600 N', long: 2 };
    const r = topSag(given);
    near(r.sagAtEnd!.value, (2 * 600 * 0.25 * 2) / (3 * EI));
    near(r.sagBetween.value, (2 * 600 * 1.5 ** 3) / (48 * EI));
    // 7.5 mm at the end, of 2 × 500/300; without creep 3.75 mm.
    expect(r.verdict).toMatch(/^sags too far at an end that hangs over: 7\.5 mm where L\/300 allows 3\.3 mm/);
    expect(r.sources.every((s) => s.id)).toBe(true);
    // A limit of just 10 mm is written with one decimal, one under it with two.
    expect(topSag({ ...given, limit: '3 mm' }).verdict).toMatch(/allows 3\.0 mm/);
    expect(topSag({ ...given, edgeLoad: '1 kN', limit: '10 mm' }).verdict).toMatch(
      /12\.5 mm where .* allows 10\.0 mm/,
    );
  });
  it('weighs nothing where its own weight is left out', () => {
    expect(topSag({ ...onEnds, load: '0 kPa', density: '500 kg/m3' }).sag.value).toBe(0);
  });
  it('is judged where it comes nearest to its limit, not where it was looked at last', () => {
    // Three bays of 0.5, 1 and 0.5 m: the middle one comes nearest, 500 × 1/(48 E I) of 1000/300 with the load there.
    const r = topSag({ ...base, supports: ['0 m', '0.5 m', '1.5 m', '2 m'], load: '1 kPa' });
    expect(r.allowed.in('mm')).toBeCloseTo(1000 / 300, 9);
  });
  it('carries a published load: books, 50 lb/ft² of 47.880259 Pa', () => {
    const r = topSag({ ...onEnds, use: 'books' });
    expect(r.sag.value / ((5 * 50 * 47.880259 * 0.5 * 16) / (384 * EI))).toBeCloseTo(1, 7);
    expect(remarks(r)).toMatch(/Load for books: 50 lb\/ft²/);
    expect(topSag({ ...onEnds, load: '1 kPa', use: 'books' }).firstSag.value).toBeCloseTo(
      (5 * 500 * 16) / (384 * EI),
      12,
    );
  });
  it('is judged by L/300 between rails, twice its length past them, or by a length', () => {
    const over = { ...base, supports: ['0 m', '1.5 m'], load: '0 kPa', edgeLoad: '1200 N' };
    // 1200 N: bay 1200 × 3.375/(48 × 26667) = 3.16 mm of 5; end 1200 × 0.25 × 2/(3 × 26667) = 7.5 mm of 2 × 500/300 = 3.33.
    const r = topSag(over);
    expect(r.allowed.in('mm')).toBeCloseTo(10 / 3, 9);
    expect(r.verdict).toMatch(/^sags too far at an end that hangs over: 7\.5 mm where L\/300 allows 3\.3 mm/);
    expect(r.ok).toBe(false);
    const bay = topSag({ ...onEnds, load: '0 kPa', edgeLoad: '1200 N' });
    expect(bay.allowed.in('mm')).toBeCloseTo(2000 / 300, 9);
    // 1200 × 8/(48 × 26667) = 7.5 mm of 6.67.
    expect(bay.verdict).toMatch(/^sags too far between supports: 7\.5 mm where L\/300 allows 6\.7 mm/);
    const length = topSag({ ...over, limit: '8 mm' });
    expect([length.allowed.in('mm'), length.ok]).toEqual([8, true]);
    expect(length.verdict).toMatch(/^sag is 94 % of what 8 mm/);
    expect(topSag({ ...onEnds, load: '0 kPa', edgeLoad: '2400 N', limit: '14.9 mm' }).verdict).toMatch(
      /too far .*: 15\.0 mm where 14\.9 mm .*allows 14\.9 mm/,
    );
  });
  it('is judged by its stress: 1200 N on 2 m, 600 N m, 4.5 MPa', () => {
    const at = (allowableBending: string) =>
      topSag({ ...onEnds, load: '0 kPa', edgeLoad: '1200 N', limit: '10 mm', allowableBending });
    expect(at('4.6 MPa').ok).toBe(true);
    expect(at('9 MPa').verdict).toMatch(/bending stress is 50 % of what is allowed/);
    expect(at('4.4 MPa').ok).toBe(false);
    expect(at('4.4 MPa').verdict).toMatch(/^sag is 75 % .*; bending stress is 102 %/);
  });
  it('carries its own weight where its density is known, and says so where not', () => {
    const r = topSag({ ...onEnds, load: '0 kPa', ownWeight: true, density: '500 kg/m3' });
    near(r.sag.value, (5 * 500 * 0.02 * g * 16) / (384 * EI));
    expect(texts(r)).not.toMatch(/own weight was left out/);
    expect(texts(topSag({ ...onEnds, load: '0 kPa', ownWeight: true }))).toMatch(/own weight was left out/);
  });
  it('across the grain it warns', () => {
    expect(texts(topSag({ ...onEnds, load: '1 kPa', grain: 'across' }))).toMatch(
      /a tenth or less of its stiffness/,
    );
    expect(texts(topSag({ ...onEnds, load: '1 kPa' }))).not.toMatch(/a tenth or less/);
  });
  it('refuses no load, and two rails in one place', () => {
    expect(() => topSag(onEnds)).toThrow(/load: missing; takes a load by area .*"books"/);
    const two = (x: string) => () => topSag({ ...base, supports: ['1 m', x, '2 m'], load: '1 kPa' });
    expect(two('1000.19 mm')).toThrow(/supports: got two supports at 1000\.2 mm/);
    expect(two('1000.21 mm')).not.toThrow();
  });
  it('finds rails in any order', () => {
    near(
      topSag({ ...base, supports: ['2 m', '0 m'], load: '1 kPa' }).sag.value,
      topSag({ ...onEnds, load: '1 kPa' }).sag.value,
    );
  });
});
