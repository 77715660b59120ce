import { describe, expect, it } from 'vitest';
import { Quantity } from '../../../src/units/quantity.js';
import { pileSampling } from '../../../src/recipes/stock/pile-sampling.js';
import { bandOf, marksOf, pointsOf, rulesOf, titlesOf } from '../chart-data.js';
import { fieldsOf, refusalOf } from '../refused.js';

// Two pieces of 9 and 11: mean 10, standard deviation sqrt(2). With one degree of freedom Student's t is tan(pi (p - 1/2)):
// 0 at 50 % and 1 at 75 %. At a confidence of 50 % the half width for m pieces is then sqrt(2) sqrt(m + m^2/2) = sqrt(2 m + m^2).
const sample = [9, 11];
const at = (needed: number) => pileSampling({ sample, needed, confidence: '50 %' });

describe('a sample of two, by hand', () => {
  it('needs what the mean gives, and more or less as luck has it', () => {
    // 12 pieces: 120 - sqrt(168) = 107.04; 11: 110 - sqrt(143) = 98.04. Nine with luck: 90 + sqrt(99) = 99.95, ten: 110.95.
    const r = at(100);
    expect([r.low, r.expected, r.piecesToPull, r.high]).toEqual([10, 10, 10, 12]);
    expect(at(99.9).low).toBe(9);
    expect([at(101).expected, at(101).piecesToPull]).toEqual([11, 11]);
    expect(r.yieldLow).toBeCloseTo(100 - Math.sqrt(120), 9);
    expect(r.yieldHigh).toBeCloseTo(100 + Math.sqrt(120), 9);
    expect(r.meanYield).toBe(10);
    expect(r.spread).toBeCloseTo(Math.sqrt(2), 12);
    // One piece: 10 - sqrt(3) = 8.27, and with luck 11.73.
    expect([at(8).high, at(8.5).high, at(11.7).low, at(11.8).low]).toEqual([1, 2, 1, 2]);
  });

  it('promises up to 2^20 pieces and no more: m pieces give 9 m - 1 and a trifle', () => {
    expect(at(9 * 2 ** 20 - 1).high).toBe(2 ** 20);
    expect(at(9 * (2 ** 20 - 1) - 1).high).toBe(2 ** 20 - 1);
    const r = refusalOf(() => at(9 * 2 ** 20 + 8));
    expect(r.message).toMatch(/sample: got 2 yields that scatter too widely to promise anything at 50 %/);
  });

  it('refuses a need beyond what so many pieces give, as a need and not as scatter', () => {
    const equal = (needed: string) => pileSampling({ sample: '2 m, 2 m', needed });
    expect(equal(`${2 ** 21} m`).piecesToPull).toBe(2 ** 20);
    // 2^20 pieces of 2 m; thousands are set apart by thin spaces.
    expect(refusalOf(() => equal(`${2 ** 21 + 1} m`)).message.replace(/\s/g, ' ')).toMatch(/^pileSampling: needed: got 2 097 153 m, takes at most 2 097 152 m, what 1048576 such pieces give/); // prettier-ignore
  });

  it('tells the mean’s degrees of freedom and Student’s t', () => {
    expect(at(100).workings.map((w) => w.text).join()).toMatch(/of 2 pieces; Student’s t for 1 degrees of freedom is 0\.000 to one side and 1\.000 to both/); // prettier-ignore
    // t(0.95; 2) = 2.920 and t(0.975; 2) = 4.303 in any table.
    const three = pileSampling({ sample: [9, 10, 11], needed: 100, confidence: '95 %' });
    expect(three.workings.map((w) => w.text).join()).toMatch(/t for 2 degrees of freedom is 2\.920 to one side and 4\.303 to both/); // prettier-ignore
    // One-sided: 12 pieces give at least 120 - 2.92 sqrt(12 + 48) = 97.4, 13: 130 - 2.92 sqrt(13 + 56.3) = 105.7.
    expect(three.piecesToPull).toBe(13);
  });

  it('never gives negative', () => {
    // 1 and 19: mean 10, deviation 9 sqrt(2); one piece gives 10 +- 9 sqrt(3).
    const r = pileSampling({ sample: [1, 19], needed: 9, confidence: '50 %' });
    expect(r.piecesToPull).toBe(1);
    expect(r.yieldLow).toBe(0);
    expect(r.yieldHigh).toBeCloseTo(10 + 9 * Math.sqrt(3), 9);
  });
});

describe('what to mind', () => {
  const message = (values: number[], text: string): boolean =>
    pileSampling({ sample: values, needed: 3 }).cautions.some((c) => c.text.includes(text));

  it('few pieces: four are few, five are not', () => {
    expect(message([1, 1, 1, 1], 'fewer than five')).toBe(true);
    expect(message([1, 1, 1, 1, 1], 'fewer than five')).toBe(false);
  });

  it('scatter beyond half the mean: 1, 2, 3 has just half', () => {
    expect(message([1, 2, 3], 'differ a great deal')).toBe(false);
    expect(message([1, 2, 3.1], 'differ a great deal')).toBe(true);
  });
});

describe('amounts of one kind', () => {
  const { sample: sampleField, needed } = pileSampling.inputs;

  it('are lengths, areas, volumes or plain numbers, as written', () => {
    expect(sampleField.read('1.6 m, 1400 mm')).toEqual({ kind: 'length', values: [1.6, 1.4] });
    expect(sampleField.read(['1 m2', '2 m2']).kind).toBe('area');
    expect(sampleField.read(['1 m3', '2 m3']).kind).toBe('volume');
    expect(sampleField.read([4, 5])).toEqual({ kind: 'ratio', values: [4, 5] });
    expect(sampleField.format({ kind: 'length', values: [1.6, 1.4] })).toMatch(/1\.?6.*m+, 1\.?4.*m+/);
    expect(needed.read(new Quantity('area', 6))).toEqual({ kind: 'area', value: 6 });
    expect(needed.format({ kind: 'ratio', value: 6 })).toBe('6');
  });

  it('may be a list or text; what is needed text, a number or a quantity', () => {
    expect([[1, 2], '1 m, 2 m', 5, {}, null].map((v) => sampleField.accepts(v))).toEqual([true, true, false, false, false]); // prettier-ignore
    expect(['6 m', 5, new Quantity('area', 6), [], null].map((v) => needed.accepts(v))).toEqual([true, true, true, false, false]); // prettier-ignore
  });

  it('of two kinds are refused with the field and both kinds named', () => {
    expect(refusalOf(() => pileSampling({ sample: '1 m2, 2 m2', needed: '3 m' })).message).toMatch(/needed: got a length, takes an area as in the sample/); // prettier-ignore
    expect(refusalOf(() => pileSampling({ sample: '1 m, 2 m', needed: '3 m3' })).message).toMatch(/got a volume, takes a length/); // prettier-ignore
    expect(refusalOf(() => pileSampling({ sample: [1, 2], needed: '3 m2' })).message).toMatch(/got an area, takes a plain number/); // prettier-ignore
    // The kind with the fewest complaints is the one meant.
    expect(fieldsOf(() => pileSampling({ sample: ['1 kg', '2 m2', '3 m2'], needed: '3 m2' }))).toEqual(['sample[1]']); // prettier-ignore
    expect(refusalOf(() => pileSampling({ sample: ['1 kg', '2 m2', '3 m2'], needed: '3 m2' })).message).toMatch(/area/); // prettier-ignore
    // All alike wrong, the first kind is asked for.
    expect(refusalOf(() => pileSampling({ sample: ['x', 'y'], needed: '3 m2' })).message).toMatch(/takes a length/); // prettier-ignore
    expect(fieldsOf(() => pileSampling({ sample: '1 m', needed: '3 m' }))).toEqual(['sample']);
    expect(fieldsOf(() => pileSampling({ sample: '0 m, 0 m', needed: '3 m' }))).toEqual(['sample']);
    expect(fieldsOf(() => pileSampling({ sample: '1 m, 1 m', needed: '0 m' }))).toEqual(['needed']);
  });

  it('come back in inches where they are lengths, and bare where they are plain numbers', () => {
    const inch = (r: { toText(): string }): boolean => /mean yield.*(?:in|ft)\b/.test(r.toText());
    expect(inch(pileSampling({ sample: '1 m, 1 m', needed: '3 m' }))).toBe(true);
    expect(inch(pileSampling({ sample: [1, 1], needed: 3 }))).toBe(false);
    expect(pileSampling({ sample: [1, 1], needed: 3 }).toText()).not.toMatch(/mean yield\s+1 \(1\)/);
    const { meanYield } = pileSampling({ sample: '2 m, 2 m', needed: '3 m' });
    expect((meanYield as Quantity).in('m')).toBeCloseTo(2, 12);
  });
});

describe('the chart of a sample', () => {
  it('has the expected yield, its band, the need and the pieces to pull', () => {
    const { chart } = at(100);
    // High is 12: two pieces more are drawn.
    expect(pointsOf(chart)).toEqual(Array.from({ length: 15 }, (_, m) => [m, 10 * m]));
    bandOf(chart).forEach(([m, low, high]) => {
      expect(low).toBeCloseTo(Math.max(0, 10 * m - Math.sqrt(2 * m + m * m)), 9);
      expect(high).toBeCloseTo(10 * m + Math.sqrt(2 * m + m * m), 9);
    });
    expect(rulesOf(chart)).toEqual([{ y: 100, label: 'needed' }]);
    expect(marksOf(chart)).toEqual([{ x: 10, y: 100, label: '10 pieces' }]);
    // One piece does: it is drawn with two more, not with the 15 % that round up to two.
    expect(at(8).high).toBe(1);
    expect(pointsOf(at(8).chart).map(([m]) => m)).toEqual([0, 1, 2, 3]);
    expect(JSON.stringify(chart?.title)).toContain('Band: 50 % prediction interval');
    expect(titlesOf(chart)).toEqual(['Further pieces taken apart', 'Usable yield']);
    expect(titlesOf(pileSampling({ sample: '1 m2, 1 m2', needed: '3 m2' }).chart)[1]).toBe('Usable yield (m²)'); // prettier-ignore
    // Below nothing the band does not go.
    expect(bandOf(pileSampling({ sample: [1, 19], needed: 9, confidence: '50 %' }).chart)[1]?.[1]).toBe(0);
  });

  it('takes wider steps when many pieces are needed', () => {
    // 9 x 1112 - 1 is the first beyond 10000; 15 % more is 1279 pieces, in steps of 22.
    const { chart, high } = at(10_000);
    expect(high).toBe(1112);
    const ms = pointsOf(chart).map(([m]) => m);
    expect(ms.length).toBe(59);
    expect([ms[0], ms[1], ms.at(-1)]).toEqual([0, 22, 1276]);
  });
});
