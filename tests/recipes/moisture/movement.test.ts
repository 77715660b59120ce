// White oak by hand. Wood Handbook, Table 13-5: 0.00365 along the rings, 0.0018 across them, a per cent; Table 4-3:
// 10.5 and 5.6 % from green. So a metre goes 14.6 and 7.2 mm from 8 to 12 %.
import { describe, expect, it } from 'vitest';
import { expected, moveAcross, ruleFor } from '../../../src/recipes/moisture/movement-model.js';
import { movementAcross } from '../../../src/recipes/moisture/movement-across.js';
import { nullTrace } from '../../../src/engine/trace.js';
import { findSpecies } from '../../../src/materials/species.js';

const move = (more: object) =>
  movementAcross({ width: '1000 mm', timber: 'white oak', from: '8 %', to: '12 %', ...more });
const mm = (more: object): number => move(more).change.in('mm');
const said = (r: { readonly cautions: readonly { readonly text: string }[] }): string =>
  r.cautions.map((c) => c.text).join('|');
const worked = (r: { readonly workings: readonly object[] }): string => JSON.stringify(r.workings);

describe('sawing', () => {
  it.each([
    ['flat-sawn', 14.6],
    ['flat', 14.6],
    ['plain-sawn', 14.6],
    ['tangential', 14.6],
    ['back-sawn', 14.6],
    ['through and through', 14.6],
    ['0 deg', 14.6],
    ['quarter-sawn', 7.2],
    ['quarter', 7.2],
    ['radial', 7.2],
    ['90 deg', 7.2],
    // Half of each at 45°, three quarters and one at 30°.
    ['rift-sawn', 10.9],
    ['rift', 10.9],
    ['45 deg', 10.9],
    ['30 deg', 12.75],
    ['60 deg', 9.05],
    ['mixed', 10.9],
    ['unknown', 10.9],
  ])('%s moves by %d mm', (cut, change) => {
    expect(mm({ cut })).toBeCloseTo(change, 6);
  });
  it('is explained in words', () => {
    const words = (cut: string) => movementAcross.inputs.cut.format(movementAcross.inputs.cut.read(cut));
    expect(words('backsawn')).toBe('flat-sawn');
    expect(words('radial')).toBe('quarter-sawn');
    expect(words('mixed')).toBe('mixed or not known: from quarter-sawn to flat-sawn');
    expect(words('30.04 deg')).toBe('rings at 30° to the face');
    expect(words('rift')).toBe('rings at 45° to the face');
  });
  it('is refused where it is no way of sawing, and a quantity is shown as one', () => {
    expect(() => mm({ cut: 'sideways' })).toThrow(/cut: got "sideways", takes "flat-sawn", "quarter-sawn"/);
    expect(() => mm({ cut: '91 deg' })).toThrow(/cut: got "91 deg", takes "flat-sawn"/);
    expect(() => mm({ cut: move({}).fromMoisture })).toThrow(/cut: got "8 %", takes "flat-sawn"/);
    const { cut } = movementAcross.inputs;
    expect([cut.accepts('rift'), cut.accepts(move({}).change), cut.accepts({ angle: 30 })]).toEqual([
      true,
      true,
      true,
    ]);
    expect([cut.accepts(30), cut.accepts(null), cut.accepts(['rift'])]).toEqual([false, false, false]);
  });
});

describe('what is expected', () => {
  // Four boards in five lie within 1.2816 times 15 % of the middle: 0.80776 and 1.19224 of it.
  it('spreads about a species', () => {
    const r = move({});
    expect(r.low.in('mm')).toBeCloseTo(14.6 * 0.80776, 6);
    expect(r.high.in('mm')).toBeCloseTo(14.6 * 1.19224, 6);
    const dries = move({ from: '12 %', to: '8 %' });
    expect(dries.low.in('mm')).toBeCloseTo(-14.6 * 1.19224, 6);
    expect(dries.high.in('mm')).toBeCloseTo(-14.6 * 0.80776, 6);
    expect(said(r)).toMatch(/four boards of the species in five/);
    expect(said(r)).not.toMatch(/sawing is not known/);
  });
  it('runs from quarter-sawn to flat-sawn where the sawing is not known, and says so', () => {
    const r = move({ cut: 'mixed' });
    expect(r.low.in('mm')).toBeCloseTo(7.2 * 0.80776, 6);
    expect(r.high.in('mm')).toBeCloseTo(14.6 * 1.19224, 6);
    expect(said(r)).toMatch(/the sawing is not known: low and high run from quarter-sawn to flat-sawn/);
  });
  it('of a group is the range of its species, no scatter put upon it', () => {
    const group = findSpecies('unknown hardwood');
    const figure = { low: 1, middle: 2, high: 3 };
    expect(expected(figure, group)).toEqual([1, 3]);
    expect(expected(figure, findSpecies('white oak'))).toEqual([
      expect.closeTo(0.80776, 9),
      expect.closeTo(3 * 1.19224, 9),
    ]);
    expect(said(move({ timber: 'unknown hardwood' }))).not.toMatch(/four boards of the species/);
  });
  it('of rings at an angle mixes both ends of a group', () => {
    const group = findSpecies('unknown hardwood');
    const at = (cut: string) => ruleFor(group, movementAcross.inputs.cut.read(cut), 0.08, 0.12).figure;
    const [flat, quarter, rift] = [at('flat'), at('quarter'), at('rift')];
    for (const k of ['low', 'middle', 'high'] as const)
      expect(rift[k]).toBeCloseTo((flat[k] + quarter[k]) / 2, 12);
    const mixed = at('mixed');
    expect(mixed.low).toBe(Math.min(flat.low, quarter.low));
    expect(mixed.high).toBe(Math.max(flat.high, quarter.high));
  });
});

describe('by shrinkage from green', () => {
  // To 14 % by shrinkage, 1000 * -6 / (3000 / S - 10), then by coefficient from the size that is left:
  // flat 1000 - 21.7617 = 978.2383, less 978.2383 * 4 * 0.00365; quarter 988.5870 less 4 * 0.0018 of it;
  // rift (S 8.05, C 0.002725) 983.4561 less 4 * 0.002725 of it.
  it.each([
    ['flat-sawn', -36.0439],
    ['quarter-sawn', -18.5309],
    ['rift-sawn', -27.2636],
    ['mixed', -27.2636],
  ])('%s from 20 to 10 %: %d mm', (cut, change) => {
    const r = move({ from: '20 %', to: '10 %', cut });
    expect(r.change.in('mm')).toBeCloseTo(change, 3);
    expect(r.coefficient).toBeCloseTo(-change / 1000 / 10, 7);
  });
  it('has a slope where the moisture stays: 1 / (3000 / 10.5 - 30 + 20) a per cent', () => {
    expect(move({ from: '20 %', to: '20 %' }).coefficient).toBeCloseTo(1 / 275.714286, 9);
    expect(move({ from: '8 %', to: '8 %' }).coefficient).toBeCloseTo(0.00365, 12);
  });
  it('is used past 6 and 14 %, and not at them', () => {
    const rule = (from: string, to: string) => move({ from, to }).ruleUsed;
    expect(rule('6 %', '14 %')).toBe('movement coefficient, 6 to 14 % moisture');
    const both = 'movement coefficient from 6 to 14 % moisture, shrinkage from green outside';
    expect(rule('5.9 %', '14 %')).toBe(both);
    expect(rule('6 %', '14.1 %')).toBe(both);
    expect(rule('14.1 %', '6 %')).toBe(both);
    expect(rule('14 %', '20 %')).toBe('shrinkage from green');
    expect(rule('6 %', '2 %')).toBe('shrinkage from green');
  });
  it('says which moistures left the range, and whether they cross it', () => {
    const text = (from: string, to: string) => worked(move({ from, to }));
    expect(text('8 %', '12 %')).toMatch(
      /Both moistures lie within 6 to 14 %, so the coefficient of white oak/,
    );
    expect(text('20 %', '10 %')).toMatch(/20 % to 10 % crosses the end of the 6 to 14 %/);
    expect(text('20 %', '14 %')).toMatch(/20 % to 14 % leaves the 6 to 14 %/);
    expect(text('20 %', '14 %')).not.toMatch(/crosses/);
    expect(text('20 %', '13.9 %')).toMatch(/crosses/);
    expect(text('2 %', '6 %')).not.toMatch(/crosses/);
    expect(text('2 %', '6.1 %')).toMatch(/crosses/);
    expect(text('2 %', '20 %')).toMatch(/crosses/);
  });
  it('stands in for a coefficient that is not published in the direction', () => {
    // Courbaril, The Wood Database: 4.2 % across the rings, and 1000 * 4 / (3000 / 4.2 - 30 + 8) mm.
    const r = move({ timber: 'courbaril', cut: 'quarter-sawn' });
    expect(r.change.in('mm')).toBeCloseTo(4000 / (3000 / 4.2 - 22), 6);
    expect(worked(r)).toMatch(/No coefficient is published for courbaril in this direction/);
    expect(worked(r)).not.toMatch(/leaves the 6 to 14 %/);
  });
  it('counts up to fibre saturation, and says so only past it', () => {
    expect(said(move({ from: '30 %', to: '10 %' }))).not.toMatch(/fibre saturation/);
    expect(said(move({ from: '30.1 %', to: '10 %' }))).toMatch(/moisture was counted up to 30 %/);
    expect(said(move({ from: '10 %', to: '30.1 %' }))).toMatch(/moisture was counted up to 30 %/);
  });
});

describe('one direction alone', () => {
  it('names the sawing that is published, and a group to take instead', () => {
    const message = (timber: string, cut: string) => () => move({ timber, cut });
    expect(message('padauk', 'rift-sawn')).toThrow(/figure for flat-sawn timber alone; .*"unknown hardwood"/);
    expect(message('australian cypress', 'quarter-sawn')).toThrow(
      /figure for flat-sawn timber alone; got quarter-sawn, takes "flat-sawn", or give "unknown softwood"/,
    );
    // Gray birch has a shrinkage across the rings alone.
    expect(message('gray birch', 'flat-sawn')).toThrow(
      /figure for quarter-sawn timber alone; got flat-sawn, takes "quarter-sawn", or give "unknown hardwood"/,
    );
    // 1000 (10 - 20) / (3000 / 5.2 - 30 + 20)
    const birch = move({ timber: 'gray birch', cut: 'quarter-sawn', from: '20 %', to: '10 %' });
    expect(birch.change.in('mm')).toBeCloseTo(-10000 / (3000 / 5.2 - 10), 6);
    expect(() => move({ timber: 'padauk', cut: 'mixed' })).toThrow(/got mixed or not known/);
  });
});

describe('workings', () => {
  it('tell the mixture of rings at an angle, by the rule that holds, and none where they lie flat or stand', () => {
    const text = (cut: string, from = '8 %') => worked(move({ cut, from }));
    // 0.75 * 0.00365 + 0.25 * 0.0018 and 0.75 * 10.5 + 0.25 * 5.6.
    expect(text('30 deg')).toMatch(/coefficient for rings at an angle.*= 0\.0031875/);
    expect(text('30 deg', '20 %')).toMatch(/coefficient for rings at an angle.*= 0\.0031875/);
    expect(text('30 deg', '20 %')).toMatch(/shrinkage for rings at an angle.*= 9\.275 %/);
    for (const cut of ['flat-sawn', 'quarter-sawn', 'mixed']) {
      expect(text(cut)).not.toMatch(/rings at an angle/);
      expect(text(cut, '20 %')).not.toMatch(/rings at an angle/);
    }
  });
  it('show the formula that was used, with the middle figure', () => {
    expect(worked(move({}))).toMatch(/1000 mm × 0\.00365 × \(12 % − 8 %\) = 14\.6 mm/);
    expect(worked(move({ from: '20 %', to: '10 %' }))).toMatch(/\(30 % \/ 10\.5 % − 30 % \+ 20 %/);
  });
  it('name the table that the figures stand in', () => {
    const places = (more: object) => move(more).sources.map((s) => s.locator);
    expect(places({})).toContain('Table 13-5, p. 13-16');
    expect(places({})).not.toContain('Table 4-3, p. 4-6');
    expect(places({ from: '20 %' })).toContain('Table 4-3, p. 4-6');
    expect(places({ from: '20 %' })).toContain('Table 13-5, p. 13-16');
    expect(places({ from: '20 %', to: '16 %' })).not.toContain('Table 13-5, p. 13-16');
  });
  it('tell of another source only where the coefficient is used', () => {
    const teak = (from: string, to = '12 %') => worked(move({ timber: 'teak', from, to }));
    expect(teak('8 %')).toMatch(/Another source differs/);
    expect(teak('20 %')).toMatch(/Another source differs/);
    expect(teak('20 %', '16 %')).not.toMatch(/Another source differs/);
  });
  it('are not made where nobody looks', () => {
    const piece = { width: 1, timber: findSpecies('white oak'), cut: { angle: 0.5, unknown: false } };
    const silent = { ...nullTrace, say: () => expect.unreachable(), caution: () => expect.unreachable() };
    expect(moveAcross(silent, piece, 0.2, 0.4).change).toBeGreaterThan(0);
  });
});

describe('strips', () => {
  const strips = [
    { timber: 'white oak', width: '600 mm' },
    { timber: 'white oak', width: '100 mm', cut: 'quarter-sawn', count: 4 },
  ];
  const top = (more: object = {}) => movementAcross({ strips, from: '8 %', to: '12 %', ...more });
  it('add up: 600 * 0.0146 + 400 * 0.0072 = 11.64 mm', () => {
    const r = top();
    expect(r.change.in('mm')).toBeCloseTo(11.64, 9);
    expect(r.coefficient).toBeCloseTo(0.01164 / 4, 9);
    expect(r.stripChanges).toHaveLength(5);
    expect(r.stripChanges?.[4]?.change.in('mm')).toBeCloseTo(0.72, 9);
    expect(worked(r)).toMatch(/The 5 strips add up to 1000\.0 mm and move by 11\.64 mm together/);
    expect(worked(move({}))).not.toMatch(/strips add up/);
    expect(move({}).stripChanges).toBeUndefined();
  });
  it('are held to a width that is given, to half a millimetre', () => {
    expect(top({ width: '1000.5 mm' }).change.in('mm')).toBeCloseTo(11.64, 9);
    expect(top({ width: '999.5 mm' }).change.in('mm')).toBeCloseTo(11.64, 9);
    expect(() => top({ width: '1000.51 mm' })).toThrow(
      /width: got 1000.5 mm, but the strips add up to 1000.0/,
    );
    expect(() => top({ width: '999.49 mm' })).toThrow(/width: got 999.5 mm/);
  });
  it('are ten thousand at most', () => {
    const many = (count: number) =>
      movementAcross.evaluate({
        ...movementAcross.read({ strips, from: '8 %', to: '12 %' }),
        strips: movementAcross.read({
          strips: [
            { timber: 'white oak', width: '1 mm', count },
            { timber: 'white oak', width: '1 mm', count: 5000 },
          ],
          from: '8 %',
          to: '12 %',
        }).strips,
      });
    expect(many(5000).change).toBeCloseTo(10 * 0.0146, 9);
    expect(() => many(5001)).toThrow(/strips: got 10001 strips, takes at most 10 000/);
  });
  it('say green shrinkage where they do not go by one rule', () => {
    const r = movementAcross({
      strips: [
        { timber: 'white oak', width: '100 mm' },
        { timber: 'courbaril', width: '100 mm', cut: 'quarter-sawn' },
      ],
      from: '8 %',
      to: '12 %',
    });
    expect(r.ruleUsed).toBe('shrinkage from green');
    expect(top().ruleUsed).toBe('movement coefficient, 6 to 14 % moisture');
  });
  it('tell in cautions what is not known of any of them', () => {
    expect(said(top())).toMatch(/four boards of the species in five/);
    expect(said(top({ strips: [{ ...strips[0], cut: 'mixed' }] }))).toMatch(/sawing is not known/);
    expect(said(top())).not.toMatch(/sawing is not known/);
  });
});

describe('figures of one’s own', () => {
  it('coefficient: 1000 * 0.002 * 4 = 8 mm, with no range', () => {
    const r = move({ coefficient: 0.002 });
    expect([r.change, r.low, r.high].map((x) => x.in('mm'))).toEqual([
      expect.closeTo(8, 9),
      expect.closeTo(8, 9),
      expect.closeTo(8, 9),
    ]);
    expect(r.coefficient).toBeCloseTo(0.002, 12);
    expect(r.ruleUsed).toBe('coefficient as given');
    expect(said(r)).not.toMatch(/four boards/);
    expect(r.chart).toBeUndefined();
  });
  it('shrinkage: 1000 * 10 / (3000 / 9 - 30 + 10) mm from 10 to 20 %, or by another fibre saturation', () => {
    const r = move({ shrinkage: '9 %', from: '10 %', to: '20 %' });
    expect(r.change.in('mm')).toBeCloseTo(10000 / (333.333333 - 20), 6);
    expect(r.ruleUsed).toBe('shrinkage from green as given');
    expect(said(r)).not.toMatch(/four boards/);
    expect(r.chart).toBeUndefined();
    // At 25 % of fibre saturation: 1000 * 10 / (2500 / 9 - 25 + 10).
    const less = move({ shrinkage: '9 %', fibreSaturation: '25 %', from: '10 %', to: '20 %' });
    expect(less.change.in('mm')).toBeCloseTo(10000 / (277.777778 - 15), 6);
    // Wetter than that nothing moves.
    expect(mm({ shrinkage: '9 %', fibreSaturation: '25 %', from: '25 %', to: '60 %' })).toBe(0);
  });
  it('gives exactly no movement and no coefficient where the moisture stays', () => {
    for (const own of [
      { coefficient: 0.002 },
      { shrinkage: '9 %' },
      { rule: 'EN 336' },
      { rule: 'softwood lumber' },
    ]) {
      const r = move({ ...own, to: '8 %' });
      expect(Object.is(r.change.value, 0), JSON.stringify(own)).toBe(true);
      expect(r.coefficient).toBeUndefined();
    }
  });
  it('EN 336: 0.25 % a per cent in softwood, 0.30 % in hardwood, counted to 30 %', () => {
    const by = (timber: string | undefined, to = '12 %') => move({ rule: 'EN 336', timber, to });
    expect(by(undefined).change.in('mm')).toBeCloseTo(10, 9);
    expect(by('Douglas-fir').change.in('mm')).toBeCloseTo(10, 9);
    expect(by('white oak').change.in('mm')).toBeCloseTo(12, 9);
    expect(by('white oak').ruleUsed).toBe('flat rate of EN 336');
    expect(worked(by('white oak'))).toMatch(/EN 336: 0\.30 % .*in hardwood \(0\.35 in some editions\)/);
    expect(worked(by('Douglas-fir'))).toMatch(/EN 336: 0\.25 % .*in softwood and poplar/);
    expect(by(undefined, '30 %').change.in('mm')).toBeCloseTo(55, 9);
    expect(by(undefined, '50 %').change.in('mm')).toBeCloseTo(55, 9);
    expect(move({ rule: 'EN 336', timber: undefined, from: '50 %', to: '10 %' }).change.in('mm')).toBeCloseTo(
      -50,
      9,
    );
    expect(said(by('white oak'))).not.toMatch(/four boards/);
    expect(by('white oak').chart).toBeUndefined();
  });
  it('softwood lumber by its green size: (1 - (6.031 - 0.215 M) / 100), redwood and cedars by lines of their own', () => {
    const by = (more: object) => move({ rule: 'softwood lumber', timber: undefined, ...more });
    const at = (a: number, b: number, M: number): number => 1 - (a - b * M) / 100;
    const between = (a: number, b: number, from: number, to: number): number =>
      1000 * (at(a, b, to) / at(a, b, from) - 1);
    expect(by({}).change.in('mm')).toBeCloseTo(between(6.031, 0.215, 8, 12), 9);
    expect(by({ face: 'thickness' }).change.in('mm')).toBeCloseTo(between(5.062, 0.181, 8, 12), 9);
    expect(by({ timber: 'redwood' }).change.in('mm')).toBeCloseTo(between(3.454, 0.157, 8, 12), 9);
    expect(by({ timber: 'western redcedar', face: 'thickness' }).change.in('mm')).toBeCloseTo(
      between(2.816, 0.128, 8, 12),
      9,
    );
    expect(by({ timber: 'Douglas-fir' }).change.in('mm')).toBeCloseTo(between(6.031, 0.215, 8, 12), 9);
    expect(by({}).ruleUsed).toBe('softwood lumber by its green size');
    // Green from 6.031 / 0.215 = 28.05 %: wetter it holds its size.
    expect(by({ from: '12 %', to: '60 %' }).change.in('mm')).toBeCloseTo(
      1000 * (1 / at(6.031, 0.215, 12) - 1),
      9,
    );
    expect(by({ from: '60 %', to: '12 %' }).change.in('mm')).toBeCloseTo(
      1000 * (at(6.031, 0.215, 12) - 1),
      9,
    );
    expect(by({ timber: 'redwood' }).sources.map((s) => s.locator)).toContain(
      'equations for redwood and cedars',
    );
    expect(by({}).sources.map((s) => s.locator)).not.toContain('equations for redwood and cedars');
  });
  it('softwood lumber is stated for 8 to 19 %, and cautions past them', () => {
    const by = (from: string, to: string) =>
      said(move({ rule: 'softwood lumber', timber: undefined, from, to }));
    for (const [from, to] of [
      ['8 %', '19 %'],
      ['19 %', '8 %'],
    ] as const)
      expect(by(from, to)).not.toMatch(/stated for 8 to 19 %/);
    for (const [from, to] of [
      ['7.9 %', '19 %'],
      ['19 %', '7.9 %'],
      ['8 %', '19.1 %'],
      ['19.1 %', '8 %'],
    ] as const)
      expect(by(from, to), `${from} ${to}`).toMatch(/stated for 8 to 19 %/);
  });
  it('are taken one at a time, and need a width', () => {
    expect(() => move({ coefficient: 0.002, shrinkage: '9 %' })).toThrow(
      /shrinkage: given together with coefficient; takes one of the two/,
    );
    expect(() => move({ shrinkage: '9 %', rule: 'EN 336' })).toThrow(/rule: given together with shrinkage/);
    expect(() => move({ coefficient: 0.002, width: undefined })).toThrow(/width: missing/);
    expect(() => move({ rule: 'EN 336', width: undefined })).toThrow(/width: missing/);
  });
});

describe('where it is held', () => {
  it('in the middle by default, at an edge, or within the width', () => {
    const side = (fixedAt?: string) => move({ fixedAt }).perSide.in('mm');
    expect(side()).toBeCloseTo(7.3, 9);
    expect(side('centre')).toBeCloseTo(7.3, 9);
    expect(side('edge')).toBeCloseTo(14.6, 9);
    expect(side('0 mm')).toBeCloseTo(14.6, 9);
    expect(side('250 mm')).toBeCloseTo(10.95, 9);
    expect(side('1000 mm')).toBeCloseTo(14.6, 9);
    expect(() => side('1000.1 mm')).toThrow(/fixedAt: got 1000.1 mm, takes a distance within .* 1000.0 mm/);
    expect(move({ coefficient: 0.002, fixedAt: '250 mm' }).perSide.in('mm')).toBeCloseTo(6, 9);
    expect(() => move({ coefficient: 0.002, fixedAt: '1001 mm' })).toThrow(/fixedAt: got 1001.0 mm/);
  });
});
