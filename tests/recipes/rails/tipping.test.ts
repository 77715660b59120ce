import { describe, expect, it } from 'vitest';
import { tipping } from '../../../src/recipes/rails/tipping.js';

const near = (got: number | undefined, wanted: number) => expect((got as number) / wanted).toBeCloseTo(1, 9);
const texts = (r: { cautions: readonly { text: string }[] }) => r.cautions.map((c) => c.text).join('\n');
const remarks = (r: { workings: readonly { kind: string; text: string }[] }) =>
  r.workings.flatMap((w) => (w.kind === 'remark' ? [w.text] : [])).join('\n');
const g = 9.80665;

describe('tipping by hand: 40 kg, feet 480 mm apart, edges 100 mm before and 50 mm behind them', () => {
  const at = (position: string, more: object = {}) =>
    tipping({
      parts: [{ mass: '40 kg', position, height: '600 mm' }],
      base: '480 mm',
      overhang: '100 mm',
      backOverhang: '50 mm',
      pushHeight: '900 mm',
      ...more,
    });
  const loads = { edgeLoad: '100 N', push: '20 N' };

  it('centre at 150: holds forward 40 g 0.15, is tipped by 100 × 0.1 + 20 × 0.9 = 28', () => {
    const r = at('150 mm', loads);
    near(r.margin.value, (40 * g * 0.15 - 28) / (40 * g + 100));
    near(r.factor, (40 * g * 0.15) / 28);
    near(r.forceToTip.value, (40 * g * 0.15 - 10) / 0.9);
    near(r.edgeLoadToTip!.value, (40 * g * 0.15) / 0.1);
    near(r.tilt!.value, Math.atan(0.15 / 0.6));
    expect([r.worseSide, r.safe, r.mass.value]).toEqual(['forward', true, 40]);
    expect(r.centre.in('mm')).toBeCloseTo(150, 9);
  });
  it('centre at 400: the back is the worse side, 80 mm from its feet; its edge the easier to tip by', () => {
    const r = at('400 mm', loads);
    near(r.margin.value, (40 * g * 0.08 - 23) / (40 * g + 100));
    near(r.factor, (40 * g * 0.08) / 23);
    near(r.forceToTip.value, (40 * g * 0.08 - 5) / 0.9);
    near(r.edgeLoadToTip!.value, (40 * g * 0.08) / 0.05);
    near(r.tilt!.value, Math.atan(0.08 / 0.6));
    expect([r.worseSide, r.safe]).toEqual(['backward', false]);
    expect(texts(r)).toMatch(/it can tip backward/);
  });
  it('the edge that tips it first is not always that of the nearer feet: 150 mm over 100 against 330 over 50', () => {
    near(
      at('150 mm', { overhang: '20 mm', backOverhang: '200 mm' }).edgeLoadToTip!.value,
      (40 * g * 0.33) / 0.2,
    );
    expect(at('150 mm', { overhang: '0 mm', backOverhang: '0 mm' }).edgeLoadToTip).toBeUndefined();
    near(at('150 mm', { overhang: '0 mm' }).edgeLoadToTip!.value, (40 * g * 0.33) / 0.05);
  });
  it('the easier side to push over is the one whose edge is loaded further out', () => {
    // Centre in the middle, 200 mm of edge behind and none before: (40 g 0.24 - 100 × 0.2)/0.9 backward.
    near(
      at('240 mm', { overhang: '0 mm', backOverhang: '200 mm', edgeLoad: '100 N' }).forceToTip.value,
      (40 * g * 0.24 - 20) / 0.9,
    );
    near(
      at('240 mm', { overhang: '200 mm', backOverhang: '0 mm', edgeLoad: '100 N' }).forceToTip.value,
      (40 * g * 0.24 - 20) / 0.9,
    );
  });
  it('a push of next to nothing gives no factor', () => {
    expect(at('150 mm', { push: '0.00000001 N' }).factor).toBeUndefined();
    expect(at('150 mm', { push: '0.001 N' }).factor).toBeGreaterThan(1000);
  });
  it('as safe as asked at just that factor, not safe a hair under it', () => {
    const push = `${(40 * g * 0.15) / 1.5 / 0.9} N`;
    expect(at('150 mm', { push }).safe).toBe(true);
    expect(at('150 mm', { push, factor: 1.5001 }).safe).toBe(false);
    expect(at('150 mm', { push, factor: 1.4999 }).safe).toBe(true);
  });
  it('untouched it stands, has no factor, and bears at its centre; alike on both sides it is said to tip forward', () => {
    const r = at('240 mm');
    expect([r.safe, r.factor, r.worseSide]).toEqual([true, undefined, 'forward']);
    expect(r.margin.in('mm')).toBeCloseTo(240, 9);
    expect(texts(r)).not.toMatch(/it can tip/);
  });
  it('no push is needed where the edge load alone tips it', () => {
    expect(at('150 mm', { edgeLoad: '600 N' }).forceToTip.value).toBe(0);
  });
  it('has no tilt without heights, or with none over the floor', () => {
    const of = (...heights: (string | undefined)[]) =>
      tipping({
        parts: heights.map((height) => ({
          mass: '20 kg',
          position: '240 mm',
          ...(height ? { height } : {}),
        })),
        base: '480 mm',
      }).tilt;
    expect(of('300 mm', undefined)).toBeUndefined();
    expect(of('0 mm', '0 mm')).toBeUndefined();
    near(of('300 mm', '900 mm')!.in('rad'), Math.atan(240 / 600));
  });
  it('weighs its parts: 30 kg at 100 and 10 kg at 300 bear at 150', () => {
    const r = tipping({
      parts: [
        { mass: '30 kg', position: '100 mm' },
        { mass: '10 kg', position: '300 mm' },
      ],
      base: '480 mm',
    });
    expect([r.mass.value, r.centre.in('mm')]).toEqual([40, expect.closeTo(150, 9)]);
    expect(remarks(r)).toMatch(/Mass of the whole 40\.0 kg, its centre of gravity 150 mm/);
  });
  it('must stand by itself: its centre between the feet, not over them', () => {
    for (const x of ['0 mm', '480 mm', '-1 mm', '500 mm'])
      expect(() => at(x)).toThrow(/parts: got a centre of gravity .*does not stand by itself/);
    for (const x of ['0.1 mm', '479.9 mm']) expect(() => at(x)).not.toThrow();
    expect(() => at('500 mm')).toThrow(/got a centre of gravity 500 mm behind .* the back feet at 480 mm/);
  });
});
