import { describe, expect, it } from 'vitest';
import { Quantity } from '../../../src/units/quantity.js';
import { shellacCut } from '../../../src/recipes/finish/shellac-cut.js';
import { thinningRatio } from '../../../src/recipes/finish/thinning-ratio.js';
import { barsOf, barTitle, marksOf, pointsOf, titleOf, titlesOf } from '../chart-data.js';
import { fieldsOf, refusalOf } from '../refused.js';

const parts = { oil: 2, varnish: 1, spirit: 1 };
const text = (r: { cautions: readonly { text: string }[] }, text: string): boolean =>
  r.cautions.some((c) => c.text.includes(text));
const close = (v: number, digits = 9) => expect.closeTo(v, digits) as number;

describe('an amount as it is written', () => {
  const { batch } = thinningRatio.inputs;
  const have = thinningRatio.inputs.have.items![0]!;
  it('is poured or weighed, up to a thousand cubic metres or tonnes', () => {
    expect(batch.read('2 L')).toEqual({ kind: 'liquid', value: close(0.002, 12) });
    expect(batch.read('500 g')).toEqual({ kind: 'mass', value: close(0.5, 12) });
    expect(batch.read('1000 m3')).toEqual({ kind: 'liquid', value: 1000 });
    expect(batch.read('1000 t')).toEqual({ kind: 'mass', value: 1e6 });
    expect(batch.read(new Quantity('mass', 2))).toEqual({ kind: 'mass', value: 2 });
    for (const bad of ['1001 m3', '1001 t', '0 L', '0 g', '-1 L', '2 m', 5, null, true]) expect(fieldsOf(() => batch.read(bad))).toEqual(['']); // prettier-ignore
    expect(refusalOf(() => batch.read(new Quantity('length', 2))).message).toMatch(/^got "?2000 mm/);
    expect(have.read('0 L')).toEqual({ kind: 'liquid', value: 0 });
  });

  it('may be text, a quantity or what a quantity is made of, and nothing else', () => {
    for (const v of ['x', new Quantity('mass', 2), { value: 2, unit: 'L' }])
      expect(batch.accepts(v)).toBe(true);
    for (const v of [5, null, undefined, true, {}, { value: 2 }, { unit: 'L' }])
      expect(batch.accepts(v)).toBe(false);
    expect(batch.format({ kind: 'mass', value: 0.5 })).toMatch(/^500 g/);
  });
});

describe('a mix by hand', () => {
  it('of two litres is one of oil and half a litre of each other, poured to 1, 1.5 and 2 L', () => {
    const r = thinningRatio({ parts, batch: '2 L' });
    expect(r.pour.map((p) => [p.part, p.add.in('L'), p.fillTo.in('L'), p.share.value])).toEqual([
      ['oil', close(1), close(1), close(0.5)],
      ['varnish', close(0.5), close(1.5), close(0.25)],
      ['spirit', close(0.5), close(2), close(0.25)],
    ]);
    // One of spirit to three others is a third added, a quarter of the mix.
    expect([r.thinnerAdded?.value, r.thinnerShare?.value]).toEqual([close(1 / 3), close(0.25)]);
    expect([r.limiting, r.left, r.toBuy]).toEqual([undefined, undefined, undefined]);
    expect(r.workings.map((w) => w.text).join()).toMatch(/oil 2 \+ varnish 1 \+ spirit 1: 4 parts in all, by volume.*20 % of spirit to a tin/); // prettier-ignore
  });

  it('of one part alone has no thinner', () => {
    const r = thinningRatio({ parts: { oil: 3 }, batch: '1 L' });
    expect([r.thinnerAdded, r.thinnerShare, r.amounts['oil']?.in('L')]).toEqual([
      undefined,
      undefined,
      close(1),
    ]);
  });

  it('takes as thinner the part named, the one whose name says so, or the last', () => {
    const share = (p: Record<string, number>, thinner?: string) => thinningRatio({ parts: p, batch: '1 L', ...(thinner ? { thinner } : {}) }).thinnerShare?.value; // prettier-ignore
    expect(share({ turps: 1, oil: 3 })).toEqual(close(0.25));
    expect(share({ oil: 3, wax: 1 })).toEqual(close(0.25));
    expect(share({ turps: 1, oil: 3 }, 'oil')).toEqual(close(0.75));
  });

  it('of what is left runs out of the part with least for its ratio', () => {
    // 1 L / 2, 300 mL / 1, 700 mL / 1: the varnish gives 300 mL a part, four parts are 1.2 L.
    const r = thinningRatio({ parts, have: { oil: '1 L', varnish: '300 mL', spirit: '700 mL' } });
    expect([r.limiting, r.total.in('mL')]).toEqual(['varnish', close(1200)]);
    expect(Object.entries(r.left!).map(([n, a]) => [n, a.in('mL')])).toEqual([['oil', close(400)], ['varnish', close(0)], ['spirit', close(400)]]); // prettier-ignore
    expect(r.toBuy).toBeUndefined();
    expect(barsOf(r.chart).map((b) => [b.name, b.chosen])).toEqual([['oil', false], ['varnish (runs out first)', true], ['spirit', false]]); // prettier-ignore
    // By weight alike: a kilogram of oil at two parts is 500 g a part, and two kilograms in all.
    const heavy = thinningRatio({ parts, have: { oil: '1 kg' } });
    expect(heavy.total.in('kg')).toEqual(close(2));
    const lines = (x: typeof r): string => x.workings.map((w) => (w.kind === 'formula' ? `${w.text}: ${w.numbersPlain}` : '')).join('; '); // prettier-ignore
    expect(lines(heavy)).toMatch(/what one part could be: u = 1000 g \/ 2 = 500 g.*oil to weigh: /);
    expect(lines(r)).toMatch(/what one part could be: u = 1000 mL \/ 2 = 500 mL.*oil to pour: /);
    // Two that run out together: the first is named.
    expect(thinningRatio({ parts, have: { oil: '2 L', varnish: '1 L' } }).limiting).toBe('oil');
    // What is not named can be bought.
    const some = thinningRatio({ parts, have: { oil: '1 L' } });
    expect(Object.entries(some.toBuy!).map(([n, a]) => [n, a.in('mL')])).toEqual([['varnish', close(500)], ['spirit', close(500)]]); // prettier-ignore
  });

  it('of a wanted size from what is left tells what to buy, and which runs out', () => {
    const have = { oil: '1 L', varnish: '300 mL', spirit: '700 mL' };
    const two = thinningRatio({ parts, have, batch: '2 L' });
    expect([two.limiting, two.toBuy?.['varnish']?.in('mL'), Object.keys(two.toBuy!)]).toEqual(['varnish', close(200), ['varnish']]); // prettier-ignore
    expect(two.left?.['oil']?.in('mL')).toEqual(close(0));
    const one = thinningRatio({ parts, have, batch: '1 L' });
    expect([one.limiting, one.toBuy]).toEqual([undefined, undefined]);
    // Oil for a day, and neither of the others: they are to buy, but nothing there runs out.
    const others = thinningRatio({ parts, have: { oil: '9 L' }, batch: '2 L' });
    expect([others.limiting, Object.keys(others.toBuy!)]).toEqual([undefined, ['varnish', 'spirit']]);
    // To the drop: 1.2 L is just what there is.
    expect(thinningRatio({ parts, have, batch: '1.2 L' }).toBuy).toBeUndefined();
    expect(thinningRatio({ parts, have, batch: '1.21 L' }).toBuy?.['varnish']?.in('mL')).toEqual(close(2.5));
  });

  it('goes from volume to mass through the densities, and says which one it lacks', () => {
    const densities = { oil: '0.9 kg/L', varnish: '0.9 kg/L', spirit: '0.8 kg/L' };
    // By volume: (2 x 0.9 + 0.9 + 0.8) / 4 = 0.875 kg/L, so 1.75 kg are 2 L.
    const litres = thinningRatio({ parts, by: 'volume', batch: '1.75 kg', densities });
    expect(litres.total.in('L')).toEqual(close(2));
    expect(litres.workings.map((w) => w.text).join()).toMatch(
      /Density of the mix, from its parts: 875 kg\/m³/,
    );
    // By mass: 4 / (2 / 0.9 + 1 / 0.9 + 1 / 0.8) = 0.8727 kg/L.
    expect(thinningRatio({ parts, by: 'mass', batch: '1 L', densities }).total.in('kg')).toEqual(close(4 / (3 / 0.9 + 1 / 0.8))); // prettier-ignore
    // 0.9 kg of oil are a litre; 0.4 kg of spirit half a litre.
    const have = thinningRatio({ parts, by: 'volume', have: { oil: '0.9 kg', spirit: '0.4 kg' }, densities });
    expect([have.left?.['oil']?.in('L'), have.total.in('L')]).toEqual([close(0), close(2)]);
    // A litre of spirit weighs 0.8 kg: with parts by mass it is what sets the whole at 3.2 kg.
    const heavy = thinningRatio({ parts, by: 'mass', have: { spirit: '1 L' }, densities });
    expect([heavy.limiting, heavy.total.in('kg')]).toEqual(['spirit', close(3.2)]);
    expect(refusalOf(() => thinningRatio({ parts, by: 'mass', have: { spirit: '1 L' } })).message).toMatch(/densities\.spirit: missing; have\.spirit is .* while the parts are by mass: takes the density of "spirit" such as "0\.8 kg\/L", or set by to "volume"/); // prettier-ignore
    expect(refusalOf(() => thinningRatio({ parts, by: 'volume', batch: '1 kg' })).message).toMatch(/batch is .* while the parts are by volume.*set by to "mass"/); // prettier-ignore
  });

  it('is by mass where the first amount given is, unless another is asked for', () => {
    const kind = (more: object) => thinningRatio({ parts, ...more }).total.kind;
    expect(kind({ batch: '1 kg' })).toBe('mass');
    expect(kind({ have: { oil: '1 kg' } })).toBe('mass');
    expect(kind({ have: { oil: '1 L' } })).toBe('liquid');
    expect(kind({ batch: '1 kg', by: 'mass' })).toBe('mass');
    expect(
      thinningRatio({ parts, batch: '1 kg' })
        .workings.map((w) => w.text)
        .join(),
    ).toMatch(/by mass/);
  });

  it('warns of hardeners, which are no thinners', () => {
    for (const name of ['hardener', 'Part B', 'catalyst']) expect(text(thinningRatio({ parts: { resin: 2, [name]: 1 }, batch: '1 L' }), 'a hardener is not a thinner')).toBe(true); // prettier-ignore
    expect(text(thinningRatio({ parts, batch: '1 L' }), 'a hardener is not a thinner')).toBe(false);
    expect(text(thinningRatio({ parts, batch: '1 L' }), 'nothing can be mixed')).toBe(false);
  });

  it('is drawn in the unit of its size', () => {
    const drawn = (batch: string) => {
      const { chart } = thinningRatio({ parts, batch });
      return [barTitle(chart), barsOf(chart).map((b) => b.value)];
    };
    expect(drawn('2 L')).toEqual(['To pour (L)', [1, 0.5, 0.5].map((v) => close(v))]);
    expect(drawn('1 L')[0]).toBe('To pour (L)');
    expect(drawn('999 mL')).toEqual(['To pour (mL)', [499.5, 249.75, 249.75].map((v) => close(v, 6))]);
    expect(drawn('4 kg')).toEqual(['To weigh (kg)', [2, 1, 1].map((v) => close(v))]);
    expect(drawn('1 kg')[0]).toBe('To weigh (kg)');
    expect(drawn('999 g')).toEqual(['To weigh (g)', [499.5, 249.75, 249.75].map((v) => close(v, 6))]);
    expect(barsOf(thinningRatio({ parts, batch: '2 L' }).chart)[0]?.label).toMatch(/^1 L, 50 %$/);
    // Nothing to mix is nothing to draw.
    expect(thinningRatio({ parts, have: { oil: '0 L' } }).chart).toBeUndefined();
  });
});

describe('a cut of shellac by hand', () => {
  // A pound is 453.59237 g, a US gallon 3.785411784 L: one pound to the gallon is 119.826 g/L.
  const lb = 453.59237 / 3.785411784;

  it('is read in pounds, or in grams to the litre', () => {
    const { cut } = shellacCut.inputs;
    const grams = (v: number | string): number => cut.read(v);
    for (const v of [2, '2', '2 lb', '2 lb cut', ' 2 pound cut ', '2.0 lbs', '2 pounds']) expect(grams(v)).toBeCloseTo(2 * lb, 9); // prettier-ignore
    expect(grams('.5')).toBeCloseTo(0.5 * lb, 9);
    expect(grams('240 g/L')).toBeCloseTo(240, 9);
    expect(cut.read(new Quantity('concentration', 240) as never)).toBeCloseTo(240, 9);
    expect([grams(0.05), grams(10)]).toEqual([close(0.05 * lb), close(10 * lb)]);
    for (const v of [0.0499, 10.01, NaN, -1, '2 m', 'two', '5 g/L', '1300 g/L', null, {}, []]) expect(fieldsOf(() => grams(v as never))).toEqual(['']); // prettier-ignore
    expect([2, '2', null, {}, true].map((v) => cut.accepts(v))).toEqual([true, true, false, false, false]);
    expect(cut.format(2 * lb)).toMatch(/^239\.7 g\/L.*\(2 lb\/gal\)$/);
  });

  it('takes flakes for alcohol, or alcohol for flakes, and makes more than the alcohol', () => {
    // 2 lb/gal on half a litre: 119.826 g, which take up 0.1 gal a pound, 0.8345 L/kg: 100 mL.
    const r = shellacCut({ cut: 2, volume: '500 mL' });
    expect(r.mass.in('g')).toBeCloseTo(119.826427, 5);
    expect(r.made.in('mL')).toBeCloseTo(600, 6);
    expect(r.solids.value).toBeCloseTo(1 / 6, 9);
    expect([r.addAlcohol, r.partsAlcohol]).toEqual([undefined, undefined]);
    const turned = shellacCut({ cut: 2, flakes: '119.826427316897 g' });
    expect(turned.volume.in('mL')).toBeCloseTo(500, 6);
  });

  it('from 3 to 1 takes 2 parts to 1.3, by the flakes’ room', () => {
    // (3/1 - 1) / (1 + 0.1 x 3) = 1.53846.
    const r = shellacCut({ cut: 1, existing: '1 L', existingCut: 3 });
    expect(r.partsAlcohol).toBeCloseTo(2 / 1.3, 9);
    expect(r.addAlcohol?.in('L')).toBeCloseTo(2 / 1.3, 9);
    // A litre of it has 1/1.3 L of alcohol and 3 lb to each gallon of that.
    expect(r.mass.in('g')).toBeCloseTo((3 * lb) / 1.3, 6);
    expect(r.volume.in('L')).toBeCloseTo(1 / 1.3 + 2 / 1.3, 9);
    expect(r.made.in('L')).toBeCloseTo(1 + 2 / 1.3, 9);
    expect(r.solids.value).toBeCloseTo(0.3 / 1.3 / (1 + 2 / 1.3), 9);
    // The same cut needs nothing; a hair above it is refused.
    expect(shellacCut({ cut: 3, existing: '1 L', existingCut: 3 }).partsAlcohol).toBe(0);
    expect(refusalOf(() => shellacCut({ cut: 3.001, existing: '1 L', existingCut: 3 })).message).toMatch(/^shellacCut: cut: got .* stronger than the .* there is/); // prettier-ignore
  });

  it('takes one amount and one only, and a cut for ready-made shellac', () => {
    expect(fieldsOf(() => shellacCut({ cut: 2 }))).toEqual(['volume']);
    expect(refusalOf(() => shellacCut({ cut: 2 })).message).toMatch(/got none, takes one of/);
    expect(refusalOf(() => shellacCut({ cut: 2, flakes: '1 g', volume: '1 L' })).message).toMatch(/got flakes and volume, takes one of/); // prettier-ignore
    expect(fieldsOf(() => shellacCut({ cut: 2, flakes: '1 g', existing: '1 L' }))).toEqual(['existing']);
    expect(fieldsOf(() => shellacCut({ cut: 2, volume: '1 L', existingCut: 3 }))).toEqual(['existing']);
    expect(fieldsOf(() => shellacCut({ cut: 2, existing: '1 L' }))).toEqual(['existingCut']);
  });

  it('tells what a printed chart has for the pair, if it has it', () => {
    const chart = (from: number, to: number) => shellacCut({ cut: to, existing: '1 L', existingCut: from }).cautions.find((c) => c.text.startsWith('a printed chart')); // prettier-ignore
    expect(chart(3, 1)?.text).toMatch(/rounded to kitchen measures/);
    expect(chart(5, 3)?.level).toBe('data');
    expect(chart(3.1, 1)).toBeUndefined();
    expect(chart(3, 1.1)).toBeUndefined();
    expect(shellacCut({ cut: 2, volume: '1 L' }).cautions.some((c) => c.text.startsWith('a printed chart'))).toBe(false); // prettier-ignore
  });

  it('is drawn as flakes against cut, or as alcohol against the cut wanted', () => {
    const { chart } = shellacCut({ cut: 2, volume: '500 mL' });
    expect(titleOf(chart)).toBe('Flakes for 500 mL of alcohol');
    expect(titlesOf(chart)).toEqual(['Cut (lb/gal)', 'Flakes (g)']);
    const points = pointsOf(chart);
    // From a tenth of 3.6 lb to all of it, in 41 points.
    expect([points.length, points[0]![0], points[20]![0], points.at(-1)![0]]).toEqual([41, close(0.36), close(1.98), close(3.6)]); // prettier-ignore
    for (const [c, g] of points) expect(g).toBeCloseTo(c * lb * 0.5, 6);
    expect(marksOf(chart)).toEqual([{ x: close(2), y: close(119.826427, 5), label: '119.8 g' }]);
    const thinning = shellacCut({ cut: 1, existing: '1 L', existingCut: 3 }).chart;
    expect(titleOf(thinning)).toBe('Thinning a 3 lb cut');
    const down = pointsOf(thinning);
    expect([down.length, down[0]![0], down[20]![0], down.at(-1)![0]]).toEqual([41, close(0.45), close(1.725), close(3)]); // prettier-ignore
    for (const [c, p] of down) expect(p).toBeCloseTo((3 / c - 1) / 1.3, 9);
    expect(marksOf(thinning)).toEqual([{ x: close(1), y: close(2 / 1.3), label: '1.54 parts' }]);
  });
});
