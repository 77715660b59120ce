import { describe, expect, it } from 'vitest';
import { matchSlabs } from '../../../src/recipes/lamination/match-slabs.js';
import { chance, draws, simulate } from '../../../src/recipes/lamination/stack-samples.js';
import { stackUp } from '../../../src/recipes/lamination/stack-up.js';

const texts = (r: { cautions: readonly { text: string }[] }) => r.cautions.map((c) => c.text).join('\n');
const remarks = (r: { workings: readonly { kind: string; text: string }[] }) =>
  r.workings.flatMap((w) => (w.kind === 'remark' ? [w.text] : [])).join('\n');
const near = (got: number | undefined, wanted: number) => expect((got as number) / wanted).toBeCloseTo(1, 9);

describe('stackUp by hand', () => {
  const strips = { name: 'strip', nominal: '45 mm', plusMinus: '0.3 mm', count: 4 };
  it('four strips of 45 ± 0.3 mm: 180, at worst 1.2, by squares 0.6, standard deviation 0.2', () => {
    const a = stackUp({ parts: [strips], sigmas: 3 });
    near(a.nominal.in('mm'), 180);
    near(a.worstCase.in('mm'), 1.2);
    near(a.rss.in('mm'), 0.6);
    near(a.sd.in('mm'), 0.2);
    // 95 % of a normal spread lie within 1.959964 standard deviations (any table of the normal distribution).
    expect(a.low.in('mm')).toBeCloseTo(180 - 0.2 * 1.959964, 6);
    expect(a.high.in('mm')).toBeCloseTo(180 + 0.2 * 1.959964, 6);
    expect([a.shim, a.chanceInside, a.chanceSimulated]).toEqual([undefined, undefined, undefined]);
    expect(remarks(a)).toMatch(/4 pieces: nominal 180 mm, worst case 1\.2 mm either way/);
    expect(remarks(a)).not.toMatch(/Chance inside/);
    expect(remarks(stackUp({ parts: [{ ...strips, count: 1 }] }))).toMatch(/^1 piece: /);
  });
  it('two standard deviations are meant by plus or minus where nothing else is agreed: 0.15 each', () => {
    near(stackUp({ parts: [strips] }).sd.in('mm'), 0.3);
  });
  it('a part by its standard deviation counts the agreed number of them at worst, and says so', () => {
    const a = stackUp({ parts: [{ nominal: '12 mm', sd: '0.2 mm', count: 1 }], sigmas: 2 });
    near(a.worstCase.in('mm'), 0.4);
    near(a.sd.in('mm'), 0.2);
    expect(texts(a)).toMatch(/the worst case counts 2 of them/);
    expect(texts(stackUp({ parts: [strips], sigmas: 3 }))).not.toMatch(/a normal spread has no end/);
  });
  it('limits of one standard deviation either way hold 68.27 %: one stack in three falls outside', () => {
    const a = stackUp({ parts: [strips], sigmas: 3, limits: '0.2 mm' });
    expect(a.chanceInside!.value).toBeCloseTo(0.682689, 6);
    expect(Math.abs(a.chanceSimulated!.value - 0.6827)).toBeLessThan(0.0132);
    expect(texts(a)).toMatch(/one stack in 3 falls outside/);
    expect(remarks(a)).toMatch(/Chance inside by the normal distribution/);
    // The limits lie one standard deviation below and above.
    const scores = a.workings.flatMap((w) =>
      w.kind === 'formula' && /limit/.test(w.text) ? [w.numbersPlain] : [],
    );
    expect(scores).toEqual([expect.stringMatching(/= \(-1\)$/), expect.stringMatching(/= 1$/)]);
    // From 179.9 to 180.4: between -0.5 and 2 standard deviations, 0.691462 + 0.977250 - 1.
    const uneven = stackUp({ parts: [strips], sigmas: 3, limits: { low: '179.9 mm', high: '180.4 mm' } });
    expect(uneven.chanceInside!.value).toBeCloseTo(0.668712, 5);
  });
  it('limits are about the target, and a shim brings the middle to it', () => {
    const a = stackUp({ parts: [strips], sigmas: 3, target: '180.2 mm', limits: '0.2 mm' });
    near(a.shim!.in('mm'), 0.2);
    // From 180 to 180.4: between 0 and 2 standard deviations.
    expect(a.chanceInside!.value).toBeCloseTo(0.47725, 5);
  });
  it('warns under nine stacks in ten, at 1.6449 standard deviations', () => {
    const text = (limits: string) =>
      /falls outside/.test(texts(stackUp({ parts: [strips], sigmas: 3, limits })));
    expect([text('0.3289 mm'), text('0.329 mm')]).toEqual([true, false]);
  });
  it('pieces that err evenly have t/√3, whatever was agreed, and shares are counted', () => {
    const a = stackUp({
      parts: [{ ...strips, count: 1 }],
      shape: 'even',
      sigmas: 2,
      confidence: '90 %',
      limits: '0.15 mm',
    });
    near(a.sd.in('mm'), 0.3 / Math.sqrt(3));
    // Nine tenths of an even spread of ±0.3 lie within ±0.27, half within ±0.15; a hundredth of the width for 20 000 draws.
    expect(Math.abs(a.low.in('mm') - 44.73)).toBeLessThan(0.006);
    expect(Math.abs(a.high.in('mm') - 45.27)).toBeLessThan(0.006);
    expect(Math.abs(a.chanceInside!.value - 0.5)).toBeLessThan(0.0142);
    expect(a.chanceInside!.value).toBe(a.chanceSimulated!.value);
    expect(remarks(a)).toMatch(
      /Pieces err evenly, so shares are counted in 20 000 simulated stacks \(seed 1\)/,
    );
    const open = stackUp({ parts: [{ ...strips, count: 1 }], shape: 'even' });
    expect([open.chanceInside, open.chanceSimulated]).toEqual([undefined, undefined]);
  });
  it('evaluates without simulating where the closed form is exact, and simulates where it is not', () => {
    const { parts } = stackUp.read({ parts: [strips] });
    const fast = stackUp.evaluate({ parts, sigmas: 3, limits: 0.0002 });
    expect(fast.chanceInside).toBeCloseTo(0.682689, 6);
    expect('chanceSimulated' in fast).toBe(false);
    expect(fast.low * 1000).toBeCloseTo(180 - 0.2 * 1.959964, 6);
    expect(fast.high * 1000).toBeCloseTo(180 + 0.2 * 1.959964, 6);
    expect(stackUp.evaluate({ parts }).chanceInside).toBeUndefined();
    // Four even pieces have the density 2/3 - y² + |y|³/2 in units of 0.6 mm; within y = 1/3 lies 2 (2/9 - 1/81 + 1/648).
    const even = stackUp.evaluate({ parts, limits: 0.0002, shape: 'even' });
    expect(Math.abs(even.chanceSimulated! - 0.42284)).toBeLessThan(0.014);
    expect(even.chanceInside).toBe(even.chanceSimulated);
  });
  it('pieces that never err lie inside or not, and no standard deviations are counted', () => {
    const exact = { nominal: '45 mm', plusMinus: '0 mm' };
    const a = stackUp({ parts: [exact], limits: '1 mm' });
    expect([a.chanceInside!.value, a.chanceSimulated!.value]).toEqual([1, 1]);
    expect(remarks(a)).not.toMatch(/Chance inside/);
    expect(a.workings.some((w) => /in standard deviations/.test(w.text))).toBe(false);
  });
  it('says which of plus-or-minus and standard deviation is missing, or that both are there', () => {
    const part = { name: 'strip', nominal: '45 mm' };
    expect(() => stackUp({ parts: [part] })).toThrow(/got neither plusMinus nor sd, takes one of them/);
    expect(() => stackUp({ parts: [{ ...part, plusMinus: '1 mm', sd: '1 mm' }] })).toThrow(
      /got both plusMinus and sd, takes one of them/,
    );
  });
  it('limits that meet are limits; turned round they are refused with both', () => {
    expect(
      stackUp({ parts: [strips], sigmas: 3, limits: { low: '180 mm', high: '180 mm' } }).chanceInside!.value,
    ).toBe(0);
    expect(() => stackUp({ parts: [strips], sigmas: 3, limits: { low: '181 mm', high: '180 mm' } })).toThrow(
      /limits: got a least of 181 mm above a most of 180 mm/,
    );
  });
});

describe('the simulated stacks', () => {
  const of = (count: number, shape: 'normal' | 'even', sd = 1) =>
    simulate([{ nominal: 0, most: 1, sd, count, setting: 0, settingSd: 0 }], shape, 3);
  const spreadOf = (xs: Float64Array) => Math.sqrt(xs.reduce((s, x) => s + x * x, 0) / draws);
  it('spread by the root of their count, evenly or not, few or many', () => {
    // The standard deviation of 20 000 draws is within 1.5 % of the true one.
    for (const shape of ['normal', 'even'] as const)
      for (const count of [1, 4, 12, 13, 100])
        expect(Math.abs(spreadOf(of(count, shape)) / Math.sqrt(count) - 1)).toBeLessThan(0.015);
  });
  it('never reach past their limits when they err evenly, one by one up to twelve pieces', () => {
    const most = (count: number) => of(count, 'even').reduce((m, x) => Math.max(m, Math.abs(x)), 0);
    expect(most(1)).toBeLessThanOrEqual(Math.sqrt(3));
    expect(most(1)).toBeGreaterThan(0.999 * Math.sqrt(3));
    expect(most(2)).toBeLessThanOrEqual(2 * Math.sqrt(3));
  });
  it('are drawn as one normal sum from thirteen pieces up', () => {
    expect(of(13, 'even')[0]).toBe(of(13, 'normal')[0]);
  });
  it('reach past those limits when they err normally', () => {
    for (const count of [1, 2])
      expect(of(count, 'normal').reduce((m, x) => Math.max(m, Math.abs(x)), 0)).toBeGreaterThan(
        2 * Math.sqrt(3 * count),
      );
  });
  it('lie about their nominal sizes, each as often as it is there', () => {
    const mean =
      simulate(
        [
          { nominal: 10, most: 1, sd: 0.1, count: 3, setting: 0, settingSd: 0 },
          { nominal: -2, most: 1, sd: 0.1, count: 1, setting: 0, settingSd: 0 },
        ],
        'normal',
        1,
      ).reduce((s, x) => s + x, 0) / draws;
    expect(Math.abs(mean - 28)).toBeLessThan(0.01);
  });
  it('of no spread are inside exactly where their size is', () => {
    const limits = { low: 1, high: 2 };
    expect([0.999, 1, 1.5, 2, 2.001].map((N) => chance(limits, N, 0))).toEqual([0, 1, 1, 1, 0]);
  });
});

describe('matchSlabs by hand', () => {
  const slab = (thickness: string, more: object = {}) => ({ thickness, ...more });
  it('41, 43 and 40 mm cleaned by 1: all to 39, 7 mm off in all; or 2 and 3 mm of shims', () => {
    const a = matchSlabs({ slabs: '41 mm, 43 mm, 40 mm', cleanUp: '1 mm' });
    expect(a.planeAllTo.in('mm')).toBeCloseTo(39, 9);
    expect(a.loss.in('mm')).toBeCloseTo(2 + 4 + 1, 9);
    expect(a.lossShare.value).toBeCloseTo(7 / 124, 9);
    expect(a.lossVolume).toBeUndefined();
    expect(a.shimTo.in('mm')).toBeCloseTo(42, 9);
    expect(a.shimTotal.in('mm')).toBeCloseTo(5, 9);
    expect(a.shimLoss.in('mm')).toBeCloseTo(3, 9);
    expect(a.orShims.map((r) => r.slab)).toEqual(['slab 1', 'slab 2', 'slab 3']);
    expect(remarks(a)).not.toMatch(/left out/);
    expect(texts(a)).toMatch(/without widths and lengths the share counts every slab alike/);
  });
  it('by volume only where all that are planed have both sizes', () => {
    const sized = { width: '200 mm', length: '1 m' };
    // 2 mm off 200 by 1000 and nothing off the other: 4e-4 m³ of 0.2 × (0.042 + 0.04).
    const a = matchSlabs({ slabs: [slab('42 mm', sized), slab('40 mm', sized)] });
    near(a.lossVolume!.value, 4e-4);
    near(a.lossShare.value, 2 / 82);
    expect(texts(a)).not.toMatch(/counts every slab alike/);
    for (const part of [{ width: '200 mm' }, { length: '1 m' }]) {
      const b = matchSlabs({ slabs: [slab('42 mm', sized), slab('40 mm', part)] });
      expect(b.lossVolume).toBeUndefined();
      expect(texts(b)).toMatch(/counts every slab alike/);
    }
  });
  it('a slab of just the least thickness is planed with the others; one thinner is left out, by name', () => {
    const a = matchSlabs({
      slabs: [slab('40 mm', { name: 'left' }), slab('37.9 mm', { name: 'right' })],
      minimum: '38 mm',
    });
    expect(a.planeAllTo.in('mm')).toBeCloseTo(40, 9);
    expect(a.orShims.map((r) => r.verdict)).toEqual(['thick enough', 'too thin: shim or leave out']);
    expect(remarks(a)).toMatch(/left out of the planing: right/);
    expect(texts(a)).toMatch(/no stronger than it is thick/);
    const just = matchSlabs({ slabs: '40 mm, 39 mm', minimum: '38 mm', cleanUp: '1 mm' });
    expect(just.planeAllTo.in('mm')).toBeCloseTo(38, 9);
    // 38.5 mm would do, but 1 mm of cleaning up leaves 37.5.
    const under = matchSlabs({ slabs: '40 mm, 38.5 mm', minimum: '38 mm', cleanUp: '1 mm' });
    expect(under.orShims.map((r) => r.verdict)).toEqual(['thick enough', 'too thin: shim or leave out']);
    expect(texts(just)).not.toMatch(/no stronger/);
    // Cleaning up that leaves nothing leaves no slab.
    expect(() => matchSlabs({ slabs: '20 mm', cleanUp: '20 mm' })).toThrow(
      /minimum: got 0 mm after 20 mm of cleaning up, takes at most what the thickest slab of 20 mm/,
    );
    expect(() => matchSlabs({ slabs: '20 mm', minimum: '21 mm' })).toThrow(
      /minimum: got 21 mm, takes at most/,
    );
  });
  it('takes thicknesses as text or list, or a table; nothing else is meant for slabs', () => {
    const { slabs } = matchSlabs.inputs;
    expect(['40 mm', ['40 mm'], [{ thickness: '40 mm' }]].map((v) => slabs.accepts(v))).toEqual([
      true,
      true,
      true,
    ]);
    expect([40, true].map((v) => slabs.accepts(v))).toEqual([false, false]);
    expect(
      matchSlabs({ slabs: 'name,thickness (mm)\nleft,40\nright,41\n' }).orShims.map((r) => r.slab),
    ).toEqual(['left', 'right']);
  });
  it('shows slabs by name or number, and counts volume by width and length', () => {
    const { slabs } = matchSlabs.inputs;
    expect(slabs.format(slabs.read([slab('41 mm'), slab('40 mm', { name: 'left' })]))).toBe(
      '1: 41 mm, left: 40 mm',
    );
    expect(() => matchSlabs({ slabs: [null] as never })).toThrow(/slabs/);
    // 2 mm off 200 by 2000: 8e-4 m³.
    const sized = { width: '200 mm', length: '2 m' };
    near(matchSlabs({ slabs: [slab('42 mm', sized), slab('40 mm', sized)] }).lossVolume!.value, 8e-4);
  });
  it('a shim over 3 mm must let the slab slide', () => {
    const text = (slabs: string) => /must not stop the top from moving/.test(texts(matchSlabs({ slabs })));
    expect([text('40 mm, 37.01 mm'), text('40 mm, 36.99 mm')]).toEqual([false, true]);
  });
});
