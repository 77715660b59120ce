// Slots, cup, cramped tops, density and weight, worked out by hand.
import { describe, expect, it } from 'vitest';
import { restraintStress, verdictOn } from '../../../src/recipes/moisture/restraint-stress.js';
import { cupDepth } from '../../../src/recipes/moisture/cup-depth.js';
import { fixingSlots } from '../../../src/recipes/moisture/fixing-slots.js';
import { moistureByWeight } from '../../../src/recipes/moisture/moisture-by-weight.js';
import { pieceWeight } from '../../../src/recipes/moisture/piece-weight.js';
import { woodDensity } from '../../../src/recipes/moisture/wood-density.js';
import { Quantity } from '../../../src/units/quantity.js';

const said = (r: { readonly cautions: readonly { readonly text: string }[] }): string =>
  r.cautions.map((c) => c.text).join('|');
const worked = (r: { readonly workings: readonly object[] }): string => JSON.stringify(r.workings);

describe('fixingSlots', () => {
  const slots = (more: object) =>
    fixingSlots({
      width: '640 mm',
      movement: '16 mm',
      fastenerDiameter: '5 mm',
      margin: '1 mm',
      ...more,
    });
  const rows = (more: object) =>
    slots(more).slots.map((s) =>
      [s.position, s.travel, s.slotLength].map((x) => Number(x.in('mm').toFixed(9))),
    );
  it('travel in proportion, slot of travel, screw and twice the margin, a round hole where it is held', () => {
    // 16 mm over 640 mm: a fortieth of the distance.
    expect(rows({ positions: ['0 mm', '320 mm', '600 mm'] })).toEqual([
      [0, 8, 15],
      [320, 0, 5],
      [600, 7, 14],
    ]);
    expect(rows({ positions: ['0 mm', '320 mm', '640 mm'], fixedAt: 'edge' })).toEqual([
      [0, 0, 5],
      [320, 8, 15],
      [640, 16, 23],
    ]);
    expect(rows({ positions: ['40 mm'], fixedAt: '160 mm' })).toEqual([[40, 3, 10]]);
    const r = slots({ positions: ['0 mm', '320 mm', '600 mm'] });
    expect(r.longest.in('mm')).toBeCloseTo(15, 9);
    expect(r.movement.in('mm')).toBeCloseTo(16, 9);
    expect(slots({ positions: ['0 mm'], movement: '-16 mm' }).movement.in('mm')).toBeCloseTo(16, 9);
  });
  it('shows the farthest fixing in its workings, to either side', () => {
    const farthest = (...positions: string[]) => worked(slots({ positions }));
    expect(farthest('20 mm', '320 mm', '600 mm')).toMatch(/16 mm × 300 mm \/ 640 mm = 7\.5 mm/);
    expect(farthest('60 mm', '320 mm', '640 mm')).toMatch(/16 mm × 320 mm \/ 640 mm = 8 mm/);
    expect(farthest('60 mm', '320 mm', '640 mm')).toMatch(/8 mm \+ 5 mm \+ 2 × 1 mm = 15 mm/);
  });
  it('places by spacing from the held line out to the edge distance, on it and not past it', () => {
    const at = (more: object) => rows({ spacing: '100 mm', ...more }).map(([x]) => x);
    expect(at({ edgeDistance: '20 mm' })).toEqual([20, 120, 220, 320, 420, 520, 620]);
    expect(at({ edgeDistance: '20.1 mm' })).toEqual([120, 220, 320, 420, 520]);
    expect(at({ edgeDistance: '0 mm', fixedAt: 'edge' })).toEqual([0, 100, 200, 300, 400, 500, 600]);
    expect(at({ edgeDistance: '40 mm', fixedAt: 'edge' })).toEqual([100, 200, 300, 400, 500, 600]);
    expect(at({ edgeDistance: '41 mm', fixedAt: '640 mm' })).toEqual([140, 240, 340, 440, 540]);
    expect(() => at({ edgeDistance: '330 mm' })).toThrow(
      /edgeDistance: got 330.0 mm, which leaves no place for a fixing across 640.0 mm/,
    );
  });
  it('takes two thousand fixings at most', () => {
    expect(rows({ width: '2000 mm', spacing: '1 mm', edgeDistance: '0 mm' })).toHaveLength(2001);
    expect(() => rows({ spacing: '0.31 mm' })).toThrow(
      /spacing: got 0.31 mm, takes a spacing that gives 2000 fixings or fewer/,
    );
  });
  it('keeps to the width', () => {
    expect(rows({ positions: ['640 mm'] })).toEqual([[640, 8, 15]]);
    expect(() => rows({ positions: ['0 mm', '640.1 mm'] })).toThrow(
      /positions\[2\]: got 640.1 mm, takes a distance from one edge within the width of 640.0 mm/,
    );
    expect(rows({ positions: ['0 mm'], fixedAt: '640 mm' })).toEqual([[0, 16, 23]]);
    expect(() => rows({ positions: ['0 mm'], fixedAt: '640.1 mm' })).toThrow(
      /fixedAt: got 640.1 mm, takes a distance within the width of 640.0 mm/,
    );
    expect(() => rows({ positions: ['0 mm'], spacing: '100 mm' })).toThrow(
      /spacing: given together with positions; takes one of the two/,
    );
  });
  it('calculates the movement of a timber by the larger of its two figures, or a fifth more', () => {
    // White oak: the coefficients give 640 * 0.00365 * 5 = 11.68 mm, the shrinkage of 10.5 % 640 * 5 / (3000 / 10.5 - 30 + 8).
    const oak = { movement: undefined, positions: ['0 mm'], timber: 'white oak', from: '8 %', to: '13 %' };
    expect(slots(oak).movement.in('mm')).toBeCloseTo(12.134345, 5);
    expect(worked(slots(oak))).toMatch(/slots take the larger/);
    expect(slots({ ...oak, from: '13 %', to: '8 %' }).movement.in('mm')).toBeCloseTo(
      3200 / (3000 / 10.5 - 17),
      6,
    );
    expect(slots({ ...oak, cut: 'quarter-sawn' }).movement.in('mm')).toBeCloseTo(3200 / (3000 / 5.6 - 22), 6);
    const most = slots({ ...oak, allowFor: 'most' });
    expect(most.movement.in('mm')).toBeCloseTo(3200 / (3000 / (10.5 * 1.19224) - 22), 3);
    expect(worked(most)).toMatch(/upper end of what the timber is expected to move/);
    expect(worked(slots(oak))).not.toMatch(/upper end/);
    expect(said(slots(oak))).toMatch(/allowFor "most" makes the slots for it/);
    expect(said(most)).not.toMatch(/allowFor/);
    expect(said(slots({ positions: ['0 mm'] }))).not.toMatch(/allowFor/);
    // Past fibre saturation there is no more of it.
    const wet = (to: string) => slots({ ...oak, to }).movement.value;
    expect(wet('60 %')).toBe(wet('30 %'));
    expect(slots({ ...oak, from: '60 %', to: '8 %' }).movement.value).toBe(
      slots({ ...oak, from: '30 %', to: '8 %' }).movement.value,
    );
  });
  it('says which of timber and moistures is missing', () => {
    const without = (more: object) => () => slots({ movement: undefined, positions: ['0 mm'], ...more });
    expect(without({ from: '8 %', to: '13 %' })).toThrow(
      /timber: missing; takes a timber by name such as "white oak", or give movement/,
    );
    expect(without({ timber: 'teak', to: '13 %' })).toThrow(
      /from: missing; takes a moisture such as "8 %" or air, or give movement/,
    );
    expect(without({})).toThrow(
      /movement: missing; takes a length such as "12 mm", or give timber, from and to/,
    );
  });
});

describe('cupDepth', () => {
  // White oak from 12 to 8 %: 1.46 % along the rings and 0.72 % across them; 0.0074 * 200² / (8 * 185) = 0.2 mm.
  const cup = (more: object) =>
    cupDepth({
      width: '200 mm',
      timber: 'white oak',
      ringRadius: '185 mm',
      from: '12 %',
      to: '8 %',
      ...more,
    });
  it('by hand', () => {
    const r = cup({});
    expect(r.cup.in('mm')).toBeCloseTo(0.2, 9);
    expect(r.strainTangential.in('%')).toBeCloseTo(-1.46, 9);
    expect(r.strainRadial.in('%')).toBeCloseTo(-0.72, 9);
    expect(r.side).toMatch(/^the bark side goes hollow: the rings straighten/);
    expect(worked(r)).toMatch(/gives -0\.720 %, along them -1\.460 %/);
    expect(cup({ from: '8 %', to: '12 %' }).side).toMatch(/^the heart side goes hollow/);
    expect(cup({ to: '12 %' }).side).toBe('neither: it stays flat');
  });
  it('takes rings of at least half the width, and calls it overstated with a board wider than its rings', () => {
    expect(cup({ ringRadius: '100 mm' }).cup.in('mm')).toBeCloseTo(0.37, 9);
    expect(() => cup({ ringRadius: '99.9 mm' })).toThrow(
      /ringRadius: got 99.9 mm, takes at least half the width \(100.0 mm\)/,
    );
    expect(said(cup({ ringRadius: '200 mm' }))).not.toMatch(/overstates/);
    expect(said(cup({ ringRadius: '199.9 mm' }))).toMatch(/overstates the cup/);
  });
  it('needs two directions of one source', () => {
    expect(() => cup({ timber: 'padauk' })).toThrow(/one direction alone.*or "unknown hardwood"/);
    expect(() => cup({ timber: 'australian cypress' })).toThrow(/one direction alone.*or "unknown softwood"/);
    expect(() => cup({ timber: 'gray birch' })).toThrow(/one direction alone/);
    // A shrinkage in both directions is enough (courbaril), and so are both coefficients without one (blackbutt).
    for (const timber of ['courbaril', 'afzelia'])
      expect(cup({ timber }).cup.in('mm'), timber).toBeGreaterThan(0);
  });
});

describe('restraintStress', () => {
  // White oak, from memory: 0.072 and 0.163 of 1.78 million psi; 800 psi across the grain. A psi is 6894.757 Pa.
  const psi = 6894.757293;
  const held = (more: object) =>
    restraintStress({ width: '640 mm', timber: 'white oak', from: '12 %', to: '8 %', ...more });
  it('flat-sawn and drying: 0.072 * 1.78e6 * 0.0146 psi against 800', () => {
    const r = held({});
    expect(r.stress.value / (0.072 * 1.78e6 * 0.0146 * psi)).toBeCloseTo(1, 6);
    expect(r.strength.value / (800 * psi)).toBeCloseTo(1, 6);
    expect(r.used.value).toBeCloseTo((0.072 * 1.78e6 * 0.0146) / 800, 6);
    expect([r.sense, r.verdict]).toEqual(['tension', 'likely to split']);
    expect(worked(r)).not.toMatch(/In swelling the wood is pressed/);
    expect(said(r)).not.toMatch(/the middle of the/);
  });
  it('quarter-sawn and swelling: 0.163 * 1.78e6 * 0.0072 psi against half a per cent of that modulus', () => {
    const r = held({ cut: 'quarter-sawn', from: '8 %', to: '12 %' });
    expect(r.stress.value / (0.163 * 1.78e6 * 0.0072 * psi)).toBeCloseTo(1, 6);
    expect(r.strength.value / (0.163 * 1.78e6 * 0.005 * psi)).toBeCloseTo(1, 6);
    expect(r.used.value).toBeCloseTo(1.44, 9);
    expect([r.sense, r.verdict]).toEqual(['compression', 'at risk: may begin to crush']);
    expect(worked(r)).toMatch(/In swelling the wood is pressed/);
  });
  it('rings at 45° share both stiffnesses', () => {
    expect(held({ cut: '45 deg' }).stress.value / (0.1175 * 1.78e6 * 0.0109 * psi)).toBeCloseTo(1, 6);
  });
  it('of sawing that is not known it takes the half of both', () => {
    const psiOf = (cut: string) => held({ cut }).stress.value;
    for (const cut of ['mixed', 'unknown']) expect(psiOf(cut)).toBeCloseTo(psiOf('45 deg'), 3);
  });
  it('at rest it suffers nothing', () => {
    const r = held({ to: '12 %' });
    expect([r.sense, r.verdict, r.used.value]).toEqual([
      'none',
      'nothing: the moisture does not change its width',
      0,
    ]);
    expect(worked(r)).not.toMatch(/In swelling/);
  });
  it('takes the middle of its kind where the timber has no figure of its own, and says so', () => {
    expect(said(held({ timber: 'padauk' }))).toMatch(
      /padauk has no modulus of elasticity in the data: the middle of the hardwoods was taken/,
    );
    expect(said(held({ timber: 'australian cypress' }))).toMatch(/the middle of the softwoods was taken/);
  });
  it.each([
    [0, 0, 0, /^nothing/],
    [1, 0.005, 9, /^holds: within the elastic range/],
    [1, 0.0051, 9, /^at risk: may begin to crush/],
    [1, 0.01, 9, /^at risk: may begin to crush/],
    [1, 0.0101, 9, /^crushes/],
    [-1, 9, 0.499, /^holds: under half/],
    [-1, 9, 0.5, /^at risk: a weak place/],
    [-1, 9, 0.999, /^at risk: a weak place/],
    [-1, 9, 1, /^likely to split/],
  ])('a change of %d, strained %d, at %d of its strength', (change, strain, used, message) => {
    expect(verdictOn(change, strain, used)).toMatch(message);
  });
});

describe('woodDensity', () => {
  // White oak, Tables 5-3b and 4-3: 0.60 on the green volume, shrinking by 16.3 %.
  it('of a species: G / (1 - 0.163 (30 - M) / 30), with its water', () => {
    const G = 0.6 / (1 - 0.163 * 0.6);
    const r = woodDensity({ timber: 'white oak', moisture: '12 %' });
    expect(r.specificGravity).toBeCloseTo(G, 9);
    expect(r.density.value).toBeCloseTo(1120 * G, 6);
    expect(r.volumePerTonne.value).toBeCloseTo(1000 / (1120 * G), 9);
    expect([r.low, r.high]).toEqual([undefined, undefined]);
    expect(r.sources.map((s) => s.locator)).toContain('Table 4-3, p. 4-6');
  });
  it('green it is 0.60 at 30 % and past it, and says so', () => {
    for (const [m, factor] of [
      ['30 %', 1.3],
      ['80 %', 1.8],
    ] as const) {
      const r = woodDensity({ timber: 'white oak', moisture: m });
      expect(r.density.value).toBeCloseTo(600 * factor, 6);
      expect(worked(r)).toMatch(/the volume is the green volume/);
    }
    expect(worked(woodDensity({ timber: 'white oak', moisture: '29.9 %' }))).not.toMatch(
      /the green volume\./,
    );
  });
  it('of a group has a range', () => {
    const r = woodDensity({ timber: 'unknown hardwood' });
    expect(r.low?.value).toBeLessThan(r.density.value);
    expect(r.high?.value).toBeGreaterThan(r.density.value);
  });
  it('of a specific gravity, on the volume it was taken', () => {
    const rho = (more: object) => woodDensity({ specificGravity: 0.5, moisture: '12 %', ...more });
    expect(rho({}).density.value).toBeCloseTo(560, 9);
    expect(rho({}).specificGravity).toBe(0.5);
    // Green: it shrinks by 26.5 % of 0.5 to ovendry, 7.95 % of that to 12 %; or by what is given.
    expect(rho({ gravityBasis: 'green' }).density.value).toBeCloseTo(560 / (1 - 0.1325 * 0.6), 9);
    expect(rho({ gravityBasis: 'green', volumetricShrinkage: '10 %' }).density.value).toBeCloseTo(
      560 / 0.94,
      9,
    );
    // NDS: 62.4 * 0.5 / (1 + 0.009 * 0.5 * 12) * 1.12 lb/ft³, of 16.018 463 kg/m³.
    const nds = ((62.4 * 0.5) / 1.054) * 1.12 * 16.018463;
    expect(rho({ gravityBasis: 'ovendry' }).density.value).toBeCloseTo(nds, 3);
    expect(rho({ gravityBasis: 'ovendry' }).specificGravity).toBeCloseTo(nds / 1120, 6);
    expect([rho({}).low, rho({}).high]).toEqual([undefined, undefined]);
  });
  it('goes by a density that is printed before one that is derived', () => {
    const text = (timber: string) => worked(woodDensity({ timber }));
    // Spotted gum is printed at 12 %; white oak has its gravity.
    expect(text('spotted gum')).toMatch(/kg\/m³ at 12 % moisture is printed/);
    expect(text('white oak')).not.toMatch(/is printed/);
    expect(woodDensity({ timber: 'blackbutt', moisture: '12 %' }).density.value).toBeGreaterThan(700);
  });
  it('a printed density comes back at 12 %, with or without its shrinkage of volume', () => {
    for (const timber of ['blackbutt', 'teak', 'jarrah']) {
      const r = woodDensity({ timber, moisture: '12 %' });
      const printed = Number(/: (\d+) kg\/m³ at 12 % moisture is printed/.exec(worked(r))?.[1]);
      expect(Math.abs(r.density.value - printed), timber).toBeLessThan(0.6);
    }
  });
  it('doubts more than 200 % of water', () => {
    const wet = (moisture: string) => said(woodDensity({ timber: 'white oak', moisture }));
    expect(wet('200 %')).not.toMatch(/more water than most wood/);
    expect(wet('200.1 %')).toMatch(/over 200 % is more water than most wood can hold/);
  });
});

describe('pieceWeight', () => {
  const weigh = (more: object) => pieceWeight({ timber: 'white oak', moisture: '12 %', ...more });
  const rho = (1120 * 0.6) / (1 - 0.163 * 0.6);
  it('takes its sizes in one, apart, or as a volume', () => {
    for (const given of [
      { dimensions: '2000 x 300 x 40 mm' },
      { dimensions: '2 m × 300 mm * 40 mm' },
      { dimensions: { length: '2 m', width: '300 mm', thickness: '40 mm' } },
      { length: '2 m', width: '300 mm', thickness: '40 mm' },
      { volume: '0.024 m3' },
    ]) {
      expect(weigh(given).mass.value, JSON.stringify(given)).toBeCloseTo(0.024 * rho, 9);
      const three = weigh({ ...given, count: 3 });
      expect(three.mass.value).toBeCloseTo(0.072 * rho, 9);
      expect(three.volume.value).toBeCloseTo(0.072, 12);
      expect(three.density.value).toBeCloseTo(rho, 9);
    }
    expect(weigh({ dimensions: `6 x 1 x 1"` }).volume.value).toBeCloseTo(6 * 0.0254 ** 3, 12);
    expect(weigh({ dimensions: `10' x 1' x 1 in` }).volume.value).toBeCloseTo(10 * 0.3048 ** 2 * 0.0254, 12);
  });
  it('takes them once', () => {
    const all = { length: '2 m', width: '300 mm', thickness: '40 mm' };
    expect(() => weigh({ ...all, volume: '1 m3' })).toThrow(/volume: given together with length; takes one/);
    expect(() => weigh({ dimensions: '2 x 3 x 4 m', width: '300 mm' })).toThrow(
      /width: given together with dimensions/,
    );
    expect(() => weigh({ dimensions: '2 x 3 x 4 m', volume: '1 m3' })).toThrow(
      /volume: given together with dimensions/,
    );
    expect(() => weigh({})).toThrow(/dimensions: missing; takes length x width x thickness/);
  });
  it.each(['length', 'width', 'thickness'])('names the %s where it is missing', (k) => {
    const two = { length: '2 m', width: '300 mm', thickness: '40 mm', [k]: undefined };
    expect(() => weigh(two)).toThrow(new RegExp(`^pieceWeight: ${k}: missing; takes a length[^;]*$`));
  });
  it('refuses what is not three sizes', () => {
    for (const dimensions of ['2 m x 3 m', '2 m x 3 m x 4 m x 5 m', '2 m x 3 m x ', 24, null, ['2 m']])
      expect(() => weigh({ dimensions }), JSON.stringify(dimensions)).toThrow(
        /dimensions: got .*takes length x width x thickness/,
      );
    expect(() => weigh({ dimensions: '2 x 3 x 4' })).toThrow(/dimensions: got .*no unit/);
    expect(() => weigh({ dimensions: '2 x 300 x 0 m' })).toThrow(/dimensions\.thickness/);
    const { dimensions } = pieceWeight.inputs;
    expect([dimensions.accepts('2 x 3 x 4 m'), dimensions.accepts({ length: 1 })]).toEqual([true, true]);
    expect([dimensions.accepts(2), dimensions.accepts([1, 2, 3])]).toEqual([false, false]);
  });
  it('takes a quantity for each size', () => {
    const size = (x: number) => new Quantity('length', x);
    expect(
      weigh({ dimensions: { length: size(2), width: size(0.3), thickness: size(0.04) } }).volume.value,
    ).toBeCloseTo(0.024, 12);
  });
  it('has a range for a group alone', () => {
    const r = pieceWeight({ timber: 'unknown hardwood', volume: '2 m3' });
    const d = woodDensity({ timber: 'unknown hardwood' });
    expect(r.low?.value).toBeCloseTo(2 * (d.low?.value as number), 6);
    expect(r.high?.value).toBeCloseTo(2 * (d.high?.value as number), 6);
    expect([weigh({ volume: '2 m3' }).low, weigh({ volume: '2 m3' }).high]).toEqual([undefined, undefined]);
  });
  it('wants two people over 25 kg, and not at it', () => {
    const given = pieceWeight.read(pieceWeight.example);
    const by = (mass: number) =>
      said({ cautions: pieceWeight.cautionsOf(given, { mass, volume: 0.05, density: 500 }) });
    expect(by(25)).not.toMatch(/two people/);
    expect(by(25.001)).toMatch(/lift it with two people.*over 25 kg/);
  });
});

describe('moistureByWeight', () => {
  it('136 g wet and 100 g dry are 36 %, and 110 g at 10 %', () => {
    const r = moistureByWeight({ wetMass: '136 g', ovenDryMass: '100 g', target: '10 %' });
    expect(r.moisture.in('%')).toBeCloseTo(36, 9);
    expect(r.water.in('g')).toBeCloseTo(36, 9);
    expect(r.targetMass?.in('g')).toBeCloseTo(110, 9);
    expect(moistureByWeight({ wetMass: '136 g', ovenDryMass: '100 g' }).targetMass).toBeUndefined();
  });
  it('takes dry wood for dry, and refuses wood that gains in the oven', () => {
    expect(moistureByWeight({ wetMass: '100 g', ovenDryMass: '100 g' }).moisture.value).toBe(0);
    expect(() => moistureByWeight({ wetMass: '99.9 g', ovenDryMass: '100 g' })).toThrow(
      /wetMass: got 99.9 g, less than the oven-dry mass of 100.0 g/,
    );
  });
  it('doubts more than 300 %', () => {
    const wet = (wetMass: string) => said(moistureByWeight({ wetMass, ovenDryMass: '100 g' }));
    expect(wet('400 g')).not.toMatch(/over 300 %/);
    expect(wet('400.1 g')).toMatch(/over 300 % is more water/);
  });
});
