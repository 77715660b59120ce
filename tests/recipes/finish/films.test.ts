import { describe, expect, it } from 'vitest';
import { filmBuild } from '../../../src/recipes/finish/film-build.js';
import { gritSequence } from '../../../src/recipes/finish/grit-sequence.js';
import { grits } from '../../../src/recipes/finish/grit.js';
import { thinnedVoc } from '../../../src/recipes/finish/thinned-voc.js';
import { thinToSolids } from '../../../src/recipes/finish/thin-to-solids.js';
import { barsOf, barTitle, linesOf, marksOf, pointsOf, titlesOf } from '../chart-data.js';
import { fieldsOf, refusalOf } from '../refused.js';

const text = (r: { cautions: readonly { text: string }[] }, text: string): boolean =>
  r.cautions.some((c) => c.text.includes(text));
const close = (v: number, digits = 9) => expect.closeTo(v, digits) as number;

describe('a film by hand', () => {
  it('of 12 m² a litre is 1000 / 12 µm wet, and 42 % of that dry', () => {
    const r = filmBuild({ volumeSolids: '42 %', spreadingRate: '12 m2/L', coats: 3 });
    expect(r.wetFilm.in('um')).toEqual(close(1000 / 12));
    expect(r.dryPerCoat.in('um')).toEqual(close(35));
    expect(r.dryFilm.in('um')).toEqual(close(105));
    expect(r.coverage.in('m2/L')).toEqual(close(12));
    // A square metre takes 3 / 12 L.
    expect(r.perArea.in('mL')).toEqual(close(250));
    expect(r.workings.some((w) => w.text.includes('its share of the film wanted'))).toBe(false);
  });

  it('wanted is shared among the coats, one or several', () => {
    const r = filmBuild({ volumeSolids: '42 %', targetFilm: '105 um', coats: 3 });
    expect([r.wetFilm.in('um'), r.coverage.in('m2/L')]).toEqual([close(1000 / 12), close(12)]);
    const says = (coats: number) => filmBuild({ volumeSolids: '42 %', targetFilm: '105 um', coats }).workings.map((w) => w.text).join(); // prettier-ignore
    expect(says(3)).toContain('One of 3 coats gives');
    expect(says(1)).toContain('One of 1 coat gives');
    expect(filmBuild({ volumeSolids: '50 %', wetFilm: '100 um' }).dryPerCoat.in('um')).toEqual(close(50));
  });

  it('comes from one thing and one only', () => {
    expect(fieldsOf(() => filmBuild({ volumeSolids: '42 %' }))).toEqual(['spreadingRate']);
    expect(refusalOf(() => filmBuild({ volumeSolids: '42 %' })).message).toMatch(/got none, takes one of/);
    expect(refusalOf(() => filmBuild({ volumeSolids: '42 %', spreadingRate: '8 m2/L', wetFilm: '1 mm' })).message).toMatch(/got spreadingRate and wetFilm, takes one of/); // prettier-ignore
    expect(fieldsOf(() => filmBuild({ volumeSolids: '42 %', spreadingRate: '8 m2/L', targetFilm: '1 mm' }))).toEqual(['targetFilm']); // prettier-ignore
  });

  it('is drawn wet and dry from a third of its coverage to two thirds more than twice it', () => {
    const { chart } = filmBuild({ volumeSolids: '42 %', spreadingRate: '12 m2/L', coats: 3 });
    expect(linesOf(chart)).toEqual(['wet', 'dry, 42 % solids']);
    const wet = pointsOf(chart, 'wet');
    expect([wet.length, wet[0]![0], wet[20]![0], wet.at(-1)![0]]).toEqual([
      41,
      close(4),
      close(16),
      close(28),
    ]);
    for (const [x, y] of wet) expect(y).toBeCloseTo(1000 / x, 9);
    for (const [x, y] of pointsOf(chart, 'dry, 42 % solids')) expect(y).toBeCloseTo(420 / x, 9);
    expect(marksOf(chart)).toEqual([{ x: close(12), y: close(1000 / 12), label: '83.3 µm wet' }, { x: close(12), y: close(35), label: '35 µm dry' }]); // prettier-ignore
    // Below 1 m² a litre the chart does not begin.
    expect(pointsOf(filmBuild({ volumeSolids: '42 %', spreadingRate: '2 m2/L' }).chart, 'wet')[0]![0]).toBe(
      1,
    );
  });
});

describe('solids by hand', () => {
  it('42 % thinned by half is 28 %, a third of the mix', () => {
    const r = thinToSolids({ volumeSolids: '42 %', target: '28 %' });
    expect([r.thinnerParts, r.solids.value, r.thinnerShare.value]).toEqual([
      close(0.5),
      close(0.28),
      close(1 / 3),
    ]);
    expect(r.perLitre.in('mL')).toEqual(close(500));
    expect(thinToSolids({ volumeSolids: '42 %', thinnerParts: 0.5 }).solids.value).toEqual(close(0.28));
    expect(thinToSolids({ volumeSolids: '42 %', target: '42 %' }).thinnerParts).toBe(0);
    expect(refusalOf(() => thinToSolids({ volumeSolids: '42 %', target: '42.1 %' })).message).toMatch(/target: got 42\.1 %, takes at most the 42\.0 %/); // prettier-ignore
    expect(refusalOf(() => thinToSolids({ volumeSolids: '42 %' })).message).toMatch(/got neither target nor thinnerParts/); // prettier-ignore
    expect(refusalOf(() => thinToSolids({ volumeSolids: '42 %', target: '28 %', thinnerParts: 1 })).message).toMatch(/got target and thinnerParts both/); // prettier-ignore
  });

  it('below a tenth takes more coats', () => {
    const thin = (target: string) =>
      text(thinToSolids({ volumeSolids: '42 %', target }), 'several more coats');
    expect([thin('10.1 %'), thin('9.9 %')]).toEqual([false, true]);
    // 20 % thinned one to one is a tenth to the last digit: not below it.
    expect(text(thinToSolids({ volumeSolids: '20 %', thinnerParts: 1 }), 'several more coats')).toBe(false);
  });

  it('are drawn to twice the thinner, or to one part', () => {
    const at = (thinnerParts: number) => pointsOf(thinToSolids({ volumeSolids: '42 %', thinnerParts }).chart);
    expect([at(2).length, at(2)[20]![0], at(2).at(-1)![0], at(0.1).at(-1)![0]]).toEqual([41, close(2), close(4), close(1)]); // prettier-ignore
    for (const [k, s] of at(2)) expect(s).toBeCloseTo(42 / (1 + k), 9);
    expect(marksOf(thinToSolids({ volumeSolids: '42 %', target: '28 %' }).chart)).toEqual([{ x: close(0.5), y: close(28), label: '1 : 0.5 leaves 28 %' }]); // prettier-ignore
  });
});

describe('VOC by hand', () => {
  it('350 g/L with a quarter of 790 g/L is (350 + 197.5) / 1.25', () => {
    const r = thinnedVoc({ voc: '350 g/L', thinnerParts: 0.25 });
    expect(r.voc.in('g/L')).toEqual(close(438, 6));
    expect(r.rise.in('g/L')).toEqual(close(88, 6));
    expect(r.before.in('g/L')).toEqual(close(350, 6));
    expect(r.vocAsIs.in('g/L')).toEqual(close(438, 6));
  });

  it('leaves exempt shares out: (350 x 0.7 + 0.25 x 790 x 0.8) / (0.7 + 0.2), and on the litre / 1.25', () => {
    const r = thinnedVoc({ voc: '350 g/L', thinnerParts: 0.25, exempt: '30 %', thinnerExempt: '20 %' });
    expect(r.voc.in('g/L')).toEqual(close((245 + 158) / 0.9, 6));
    expect(r.vocAsIs.in('g/L')).toEqual(close(403 / 1.25, 6));
    expect(thinnedVoc({ voc: '350 g/L', thinnerParts: 1, thinnerVoc: '100 g/L' }).voc.in('g/L')).toEqual(close(225, 6)); // prettier-ignore
  });

  it('comes from the mass shares of a data sheet: D (1 - s - w) / (1 - w D / D_w)', () => {
    // Water at 8.33 lb a US gallon.
    const water = (8.33 * 453.59237) / 3.785411784;
    const given = { solidsByMass: '40 %', waterByMass: '30 %', finishDensity: '1.1 kg/L', thinnerParts: 0 };
    expect(thinnedVoc(given).voc.in('g/L')).toEqual(close((1100 * 0.3) / (1 - (0.3 * 1100) / water), 6));
    const dry = { solidsByMass: '40 %', finishDensity: '1.1 kg/L', thinnerParts: 0 };
    expect(thinnedVoc(dry).voc.in('g/L')).toEqual(close(660, 6));
    // Solids and water may be the whole, but no more.
    expect(thinnedVoc({ ...given, waterByMass: '60 %' }).voc.value).toEqual(close(0, 6));
    expect(refusalOf(() => thinnedVoc({ ...given, waterByMass: '60.1 %' })).message).toMatch(/waterByMass: got 100\.1 % together with the solids/); // prettier-ignore
    expect(fieldsOf(() => thinnedVoc({ ...given, solidsByMass: '1 %', waterByMass: '95 %', finishDensity: '1.06 kg/L' }))).toEqual(['waterByMass']); // prettier-ignore
    // 0.95 x 1.05069 kg/L is just the weight of a litre of water: nothing is left to divide by.
    expect(fieldsOf(() => thinnedVoc({ ...given, solidsByMass: '1 %', waterByMass: '95 %', finishDensity: '1.05069 kg/L' }))).toEqual(['waterByMass']); // prettier-ignore
    expect(refusalOf(() => thinnedVoc({ thinnerParts: 1, solidsByMass: '40 %' })).message).toMatch(/voc: missing; takes/); // prettier-ignore
    expect(refusalOf(() => thinnedVoc({ thinnerParts: 1, finishDensity: '1.1 kg/L' })).message).toMatch(/voc: missing; takes/); // prettier-ignore
    // 0.95 x 1.04 kg/L is less than a litre of water weighs: taken.
    expect(thinnedVoc({ ...given, solidsByMass: '1 %', waterByMass: '95 %', finishDensity: '1.04 kg/L' }).voc.value).toBeGreaterThan(0); // prettier-ignore
    for (const lacking of [{ solidsByMass: '40 %' }, { finishDensity: '1.1 kg/L' }, {}]) expect(fieldsOf(() => thinnedVoc({ thinnerParts: 1, ...lacking }))).toEqual(['voc']); // prettier-ignore
  });

  it('tells that the thinner is taken to evaporate whole, where it is added and not said otherwise', () => {
    const says = (more: object) => text(thinnedVoc({ voc: '350 g/L', ...more } as never), 'evaporate whole');
    expect([says({ thinnerParts: 0.1 }), says({ thinnerParts: 0 }), says({ thinnerParts: 0.1, thinnerVoc: '700 g/L' })]).toEqual([true, false, false]); // prettier-ignore
  });

  it('is drawn against thinner, as it stands too where something is exempt', () => {
    const at = (more: object) => thinnedVoc({ voc: '350 g/L', thinnerParts: 0.5, ...more }).chart;
    expect(linesOf(at({}))).toEqual(['less water and exempt']);
    expect(linesOf(at({ exempt: '30 %' })).length).toBe(2);
    expect(linesOf(at({ thinnerExempt: '30 %' })).length).toBe(2);
    const chart = at({ exempt: '30 %', thinnerExempt: '20 %' });
    expect(titlesOf(chart)).toEqual(['Thinner to one of finish', 'VOC (g/L)']);
    const less = pointsOf(chart, 'less water and exempt');
    expect([less.length, less[20]![0], less.at(-1)![0]]).toEqual([41, close(0.45), close(0.9)]);
    for (const [k, v] of less) expect(v).toBeCloseTo((245 + k * 790 * 0.8) / (0.7 + k * 0.8), 6);
    for (const [k, v] of pointsOf(chart, 'as it stands'))
      expect(v).toBeCloseTo((245 + k * 790 * 0.8) / (1 + k), 6);
    expect(marksOf(chart)[0]).toEqual({ x: close(0.5), y: close((245 + 316) / 1.1, 6), label: '510 g/L' });
    expect(pointsOf(at({ thinnerParts: 0.1 })).at(-1)![0]).toBe(0.5);
    expect(pointsOf(at({ thinnerVoc: '0 g/L' })).at(-1)![1]).toBeCloseTo(350 / 1.9, 6);
  });
});

describe('grits by hand', () => {
  // FEPA averages in µm: P80 201, P100 162, P120 125, P150 100, P180 82, P220 68, P240 58.5.
  it('from P80 to P220 in steps of 1.8 at most go by P120 and P150', () => {
    const r = gritSequence({ from: 'P80', to: 'P220' });
    expect(r.grades).toBe('P80, P120, P150, P220');
    expect(r.steps.map((s) => s.grain.in('um'))).toEqual([201, 125, 100, 68].map((v) => close(v, 6)));
    expect(r.steps.map((s) => s.finer)).toEqual([undefined, close(201 / 125), close(1.25), close(100 / 68)]);
    expect([r.count, r.largestStep]).toEqual([4, close(201 / 125)]);
    expect(r.workings.map((w) => w.text).join()).toMatch(/4 grits out of the 6 from P80 to P220/);
    // log(201 / 68) / log(1.8) = 1.84: no sequence does with less than two steps. P120 to P150 is a step of 1.25 just so.
    const least = (x: typeof r): string => x.workings.map((w) => (w.kind === 'formula' && w.text.includes('no sequence can go below') ? w.numbersPlain : '')).join(''); // prettier-ignore
    expect(least(r)).toMatch(/= 2$/);
    expect(least(gritSequence({ from: 'P120', to: 'P150', stepRatio: 1.25 }))).toMatch(/= 1$/);
  });

  it('one grit is a sequence, and its largest step is one', () => {
    const r = gritSequence({ from: 'P120', to: 'P120' });
    expect([r.grades, r.count, r.largestStep]).toEqual(['P120', 1, 1]);
    expect(r.workings.some((w) => w.text.includes('no sequence can go below'))).toBe(false);
    expect(refusalOf(() => gritSequence({ from: 'P120', to: 'P100' })).message).toMatch(/to: got P100, coarser than P120; takes P120 or a finer grit/); // prettier-ignore
  });

  it('uses the grits there are, between the two, and always the two', () => {
    const r = gritSequence({ from: 80, to: 220, stepRatio: 2.5, grits: [40, 80, 150, 400] });
    expect(r.grades).toBe('P80, P150, P220');
    expect(gritSequence({ from: 80, to: 220, stepRatio: 3, grits: [40] }).grades).toBe('P80, P220');
    // In whatever order they lie in the drawer.
    expect(gritSequence({ from: 80, to: 220, stepRatio: 1.9, grits: [400, 180, 120, 40] }).grades).toBe('P80, P120, P220'); // prettier-ignore
    expect(gritSequence({ from: 80, to: 220, stepRatio: 1.7, grits: [180, 100, 120, 150] }).grades).toBe('P80, P120, P150, P220'); // prettier-ignore
    expect(refusalOf(() => gritSequence({ from: 80, to: 220, stepRatio: 1.9, grits: [100, 180] })).message).toMatch(/stepRatio: got 1\.9, but from P100 to P180 the grain gets 1\.98 times finer/); // prettier-ignore
    // A step of just the ratio is allowed: P120 to P150 is 125 to 100, 1.25.
    expect(gritSequence({ from: 120, to: 150, stepRatio: 1.25 }).grades).toBe('P120, P150');
    expect(fieldsOf(() => gritSequence({ from: 120, to: 150, stepRatio: 1.249 }))).toEqual(['stepRatio']);
  });

  it('of the fewest takes the most even: 201-125-68 by P120 rather than by P100 or P150', () => {
    // Steps of 2.5: P80 to P220 is 2.96 times, two steps. By P120 1.61 and 1.84; P100 1.24 and 2.38; P150 2.01 and 1.47.
    expect(gritSequence({ from: 80, to: 220, stepRatio: 2.5 }).grades).toBe('P80, P120, P220');
  });

  it('are written with or without their P, and the nearest are named', () => {
    const { from } = gritSequence.inputs;
    for (const v of ['P80', 'p80', '80', ' P 80 ', 80]) expect(from.read(v).name).toBe('P80');
    expect(refusalOf(() => from.read(85)).message).toMatch(/got 85.*the nearest are P80 and P100/);
    expect(refusalOf(() => from.read(225)).message).toMatch(/the nearest are P220 and P240/);
    for (const v of [[80], [], new Date(80)]) expect(fieldsOf(() => from.read(v))).toEqual(['']);
    for (const v of ['coarse', null, {}, '8'])
      expect(refusalOf(() => from.read(v)).message).not.toMatch(/nearest/);
    expect([80, 'P80', null, {}, true].map((v) => from.accepts(v))).toEqual([
      true,
      true,
      false,
      false,
      false,
    ]);
    expect(from.format(from.read(80))).toBe('P80');
    const sizes = grits().map((g) => g.size);
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
  });

  it('past P220 gain little under a film', () => {
    const says = (to: number) => text(gritSequence({ from: 80, to }), 'little to gain past P220');
    expect([says(220), says(240)]).toEqual([false, true]);
  });

  it('recalled sizes are noted, as far as they are used', () => {
    const memory = grits().filter((g) => g.row.read === 'memory').map((g) => g.name); // prettier-ignore
    const says = (from: string, to: string) =>
      text(gritSequence({ from, to, stepRatio: 4 }), 'not yet compared');
    for (const g of memory) expect(says(g, g)).toBe(true);
    const printed = grits().find((g) => g.row.read === 'text')!.name;
    expect(says(printed, printed)).toBe(false);
    // From a printed size to a recalled one next to it.
    const all = grits();
    const i = all.findIndex((g, n) => n > 0 && g.row.read === 'memory' && all[n - 1]?.row.read === 'text');
    if (i > 0) expect(says(all[i - 1]!.name, all[i]!.name)).toBe(true);
    expect(memory.length === 0 || i > 0).toBe(true);
  });

  it('are drawn by their grain, with the step at each', () => {
    const { chart } = gritSequence({ from: 'P80', to: 'P220' });
    expect(barTitle(chart)).toBe('Average grain (µm)');
    expect(barsOf(chart).map((b) => [b.name, b.label])).toEqual([['P80', '201 µm'], ['P120', '125 µm, 1.61 times finer'], ['P150', '100 µm, 1.25 times finer'], ['P220', '68 µm, 1.47 times finer']]); // prettier-ignore
    expect(barsOf(chart)[0]?.value).toEqual(close(201, 6));
  });
});
