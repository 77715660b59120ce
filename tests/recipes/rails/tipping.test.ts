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
    expect([r.worseSide, r.verdict, r.mass.value]).toEqual(['forward', 'stands', 40]);
    expect(r.centre.in('mm')).toBeCloseTo(150, 9);
  });
  it('centre at 400: the back is the worse side, 80 mm from its feet; its edge the easier to tip by', () => {
    const r = at('400 mm', loads);
    near(r.margin.value, (40 * g * 0.08 - 23) / (40 * g + 100));
    near(r.factor, (40 * g * 0.08) / 23);
    near(r.forceToTip.value, (40 * g * 0.08 - 5) / 0.9);
    near(r.edgeLoadToTip!.value, (40 * g * 0.08) / 0.05);
    near(r.tilt!.value, Math.atan(0.08 / 0.6));
    expect([r.worseSide, r.verdict]).toEqual(['backward', 'tips']);
    expect(texts(r)).toMatch(/fix it to the wall or the floor\. Tips backward: the forces given/);
  });
  it('the edge that tips it first is not always that of the nearer feet: 150 mm over 100 against 330 over 50', () => {
    near(
      at('150 mm', { overhang: '20 mm', backOverhang: '200 mm' }).edgeLoadToTip!.value,
      (40 * g * 0.33) / 0.2,
    );
    expect(at('150 mm', { overhang: '0 mm', backOverhang: '0 mm' }).edgeLoadToTip).toBeUndefined();
    near(at('150 mm', { overhang: '0 mm' }).edgeLoadToTip!.value, (40 * g * 0.33) / 0.05);
    // Under a nanometre of overhang no load tips it; it is not an endless one.
    expect(at('150 mm', { overhang: '0.0000005 mm', backOverhang: '0 mm' }).edgeLoadToTip).toBeUndefined();
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
  it('stands at just the factor wanted, tips a hair under it', () => {
    const push = `${(40 * g * 0.15) / 1.5 / 0.9} N`;
    expect(at('150 mm', { push }).verdict).toBe('stands');
    expect(at('150 mm', { push, factor: 1.5001 }).verdict).toBe('tips');
    expect(at('150 mm', { push, factor: 1.4999 }).verdict).toBe('stands');
  });
  it('untouched it is not checked, has no factor, and rests at its centre', () => {
    const r = at('240 mm');
    expect([r.verdict, r.factor, r.worseSide]).toEqual(['not checked', undefined, 'forward']);
    expect(texts(r)).toMatch(/nothing was checked/);
    expect(r.margin.in('mm')).toBeCloseTo(240, 9);
    expect(texts(r)).not.toMatch(/widen the feet/);
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

describe('by kinds of furniture: 640 mm deep, 60 kg, its centre in the middle', () => {
  // Worked by hand for a level floor; each force 50 mm inside the edge.
  const counter = (feet: number, more: object = {}) =>
    tipping({
      parts: [{ mass: '60 kg', position: `${feet / 2} mm`, height: '600 mm' }],
      base: `${feet} mm`,
      overhang: `${(640 - feet) / 2} mm`,
      backOverhang: `${(640 - feet) / 2} mm`,
      pushHeight: '900 mm',
      piece: 'table',
      floorTilt: '0 deg',
      ...more,
    });
  const row = (r: ReturnType<typeof counter>, text: RegExp) => r.checks!.find((c) => text.test(c.situation))!;

  it('feet 440 apart: 2589 N to tip, lean held 1.99 times, push alone 144 N', () => {
    const r = counter(440);
    expect(row(r, /sits/).tipsAt?.in('N')).toBeCloseTo(2588.96, 1);
    expect(row(r, /leans/).factor).toBeCloseTo(1.9915, 3);
    expect(row(r, /pushes/).tipsAt?.in('N')).toBeCloseTo(143.8, 1);
    expect(r.verdict).toBe('stands');
    expect(r.answer).toMatch(
      /^Stands in all 6 situations, the ends not checked; nearest to tipping forward: somebody pushes the top/,
    );
  });
  it('feet 240 apart: somebody who sits on the edge tips it, 471 N are enough', () => {
    const r = counter(240);
    expect(row(r, /sits/).tipsAt?.in('N')).toBeCloseTo(470.7, 1);
    expect(r.verdict).toBe('tips');
    expect(r.answer).toMatch(
      /^Tips forward: somebody sits on the edge; 470 N 50 mm inside the edge tips it\.$/,
    );
    expect(row(r, /pushes/).result).toBe('tips');
  });
  it('feet 540 apart: a force 50 mm in never tips it', () => {
    const r = counter(540);
    expect(row(r, /sits/).factor).toBeUndefined();
    expect(row(r, /sits/).tipsAt).toBeUndefined();
  });
  it('the force that tips it counts the other one beside it: lean with 50 N outward at 900 mm', () => {
    // 60 g x 0.22 less 50 x 0.9 over 50 mm; without the push it would be 2589 N.
    const lean = row(counter(440), /leans/);
    expect(lean.tipsAt?.in('N')).toBeCloseTo((60 * g * 0.22 - 45) / 0.05, 6);
    const only = (feet: number, more: object) => counter(feet, { piece: undefined, ...more }).answer;
    // Feet at the edge: the load holds it down, and the push alone tips it: (60 g x 0.32) / 0.9 N.
    expect(only(640, { edgeLoad: '300 N', push: '300 N' })).toMatch(/209 N outward with 300 N there tips it/);
  });
  it('a cabinet over a metre is no low one', () => {
    expect(() => counter(440, { piece: 'low cabinet', topHeight: '1001 mm' })).toThrow(
      /takes "tall cabinet" over 1000 mm/,
    );
    expect(counter(440, { piece: 'low cabinet', topHeight: '1 m' }).answer).toMatch(
      /^Stands in the one situation,/,
    );
  });
  it('a floor out of level takes from every factor', () => {
    expect(row(counter(440, { floorTilt: '2 deg' }), /leans/).factor).toBeLessThan(
      row(counter(440), /leans/).factor as number,
    );
  });
  it('a bench of 14 kg with legs 300 mm from its ends: a sitter at an end tips it at 247 N', () => {
    const r = tipping({
      parts: [{ mass: '14 kg', position: '150 mm', height: '400 mm' }],
      base: '300 mm',
      pushHeight: '450 mm',
      piece: 'bench',
      endBase: '900 mm',
      endOverhang: '300 mm',
      floorTilt: '0 deg',
    });
    const end = r.checks!.find((c) => /at an end/.test(c.situation))!;
    expect(end.side).toBe('over an end');
    expect(end.tipsAt?.in('N')).toBeCloseTo((14 * g * 0.45) / 0.25, 6);
    expect(end.tipsAt?.in('N')).toBeCloseTo(247, 0);
    expect(r.verdict).toBe('tips');
  });
  it('a case of shelves 300 deep, 1.8 m high, 25 kg: fails, and belongs on the wall', () => {
    const r = tipping({
      parts: [{ mass: '25 kg', position: '150 mm', height: '900 mm' }],
      base: '300 mm',
      topHeight: '1.8 m',
      piece: 'tall cabinet',
      floorTilt: '0 deg',
    });
    // 350 N stand 50 mm inside the feet and hold it down, and 50 N outward at 1.8 m tip it.
    expect(r.checks![0]!.factor).toBeCloseTo((25 * g * 0.15 + 350 * 0.05) / (50 * 1.8), 6);
    expect(r.verdict).toBe('tips');
    expect(texts(r)).toMatch(/fix it to the wall whatever comes out/);
    expect(r.checks!.map((c) => c.side)).toEqual(['forward']);
  });
  it('open drawers with a child of 27 kg', () => {
    const drawers = (openReach: string) =>
      tipping({
        parts: [{ mass: '40 kg', position: '200 mm', height: '500 mm' }],
        base: '400 mm',
        topHeight: '1 m',
        piece: 'drawers',
        openReach,
      });
    expect(drawers('300 mm').verdict).toBe('tips');
    expect(texts(drawers('0 mm'))).toMatch(/give openReach/);
  });
});
