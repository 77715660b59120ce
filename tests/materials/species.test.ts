import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { allSpecies, findSpecies, speciesNames, speciesWith } from '../../src/materials/species.js';
import { findClimate } from '../../src/materials/climate.js';
import { findGrade } from '../../src/materials/grades.js';
import {
  structuralMaterial,
  timberOrGrade,
  type TimberOrGrade,
} from '../../src/materials/elastic-properties.js';
import { percentile } from '../../src/materials/property-range.js';

describe('a timber is found', () => {
  it.each([
    ['white oak', 'white-oak'],
    ['Oak, white', 'white-oak'],
    ['WHITE  OAK', 'white-oak'],
    ['white-oak', 'white-oak'],
    ['red oak', 'northern-red-oak'],
    ['hard maple', 'sugar-maple'],
    ['grey gum', 'grey-gum'],
    ['gray gum', 'grey-gum'],
    ['western red cedar', 'western-redcedar'],
    ['Western redcedar', 'western-redcedar'],
    ['Douglas fir', 'douglas-fir'],
    ['Fichte', 'european-spruce'],
    ['kwila', 'merbau'],
    ['Kwila / merbau', 'merbau'],
    ['Khaya', 'khaya'],
    ['Rüster', 'european-elm'],
    ['Ruster', 'european-elm'],
    ['yellow poplar', 'yellow-poplar'],
    ['unknown hardwood', 'unknown-hardwood'],
    ['unknown softwood', 'unknown-softwood'],
    ['eucalypts', 'eucalypts'],
    ['eucalypt', 'eucalypts'],
    ['pine', 'pines'],
  ])('%s', (text, id) => expect(findSpecies(text).id).toBe(id));

  it('by every name that a table prints', () => {
    for (const s of allSpecies())
      for (const name of [s.name, s.id, ...s.otherNames]) expect(findSpecies(name).id, name).toBe(s.id);
  });

  it.each([
    ['spoted gum', 'no species "spoted gum"; did you mean "spotted gum"?'],
    ['whte oak', 'no species "whte oak"; did you mean "white oak"?'],
  ])('%s is nearly right', (text, label) => {
    expect(() => findSpecies(text)).toThrow(label);
  });
  it.each(['', '   ', 'constructor', '__proto__', '\u0000', 'x'.repeat(100_000), '../../etc'])(
    'hostile name %#',
    (text) => {
      expect(() => findSpecies(text)).toThrow(/^no species/);
    },
  );

  it('says how a bare genus was read', () => {
    expect(findSpecies('ash').readAs).toMatch(/read as European ash/);
    expect(findSpecies('white ash').readAs).toBeUndefined();
  });
});

describe('figures of a species', () => {
  // Wood Handbook FPL-GTR-190, Tables 13-5 and 4-3; Queensland Government, Properties of timbers.
  it('carry their source', () => {
    const oak = findSpecies('white oak');
    expect(oak.movement()?.tangential?.middle).toBeCloseTo(0.365, 12);
    expect(oak.movement()?.radial?.middle).toBeCloseTo(0.18, 12);
    expect(oak.movement()?.rows[0]?.citation).toMatchObject({
      id: 'fpl-gtr-190',
      locator: 'Table 13-5, p. 13-16',
    });
    expect(oak.shrinkage()?.tangential?.middle).toBeCloseTo(0.105, 12);
    expect(findSpecies('western redcedar').shrinkage()?.fibreSaturation).toBe(0.22);
    expect(findSpecies('blackbutt').movement()?.radial?.middle).toBeCloseTo(0.26, 12);
    expect(findSpecies('jarrah').density()?.density.middle).toBe(835);
  });
  it('keep the source that differs, with the reason for the one preferred', () => {
    const merbau = findSpecies('merbau').movements();
    expect(merbau.map((m) => m.rows[0]?.citation.id)).toEqual(['qld-properties-of-timbers', 'nwfa-a200']);
    expect(merbau[1]?.tangential?.middle).toBeCloseTo(0.158, 12);
    expect(merbau[1]?.rows[0]?.preferReason).toMatch(/Queensland/);
  });
  it('tell what there is of a timber', () => {
    expect(findSpecies('karri').available()).toContain('shrinkage');
    expect(findSpecies('karri').has('movement')).toBe(false);
    expect(speciesWith('movement').length).toBeGreaterThan(150);
    expect(speciesNames()).toContain('unknown hardwood');
  });
  it('turn pounds into pascals', () => {
    // Table 5-3b: pond pine at 12 %, modulus of rupture 11 600 psi; Table 5-3a prints 80 000 kPa.
    expect(Math.round((findSpecies('pond pine').mechanical('12%')?.bending?.middle ?? 0) / 1e6)).toBe(80);
  });
  it('has its green strength beside that at 12 %', () => {
    // Tables 5-3a and 5-3b: shortleaf pine green 7400 psi, 1.39 million psi, printed as 51 000 kPa and 9600 MPa.
    const green = findSpecies('shortleaf pine').mechanical('green');
    expect(green?.condition).toBe('green');
    expect(Math.round((green?.bending?.middle ?? 0) / 1e6)).toBe(51);
    expect(Math.round((green?.modulus?.middle ?? 0) / 1e8)).toBe(96);
    expect(green?.shear).toBeUndefined();
  });
  it('of a timber known by its strength group is that of the group, and its seasoned hardness is not said of green wood', () => {
    // Its sheet (Timber Queensland 16b) prints S4, SD5 and a dry Janka hardness of 5.9 kN; AS 2878's minimum means of S4
    // are 62 and 10 700 MPa, those of SD5 78 and 12 500 (recalled).
    const [green, dry] = (['green', '12%'] as const).map((c) => findSpecies('myrtle beech').mechanical(c));
    expect([green?.bending?.middle, green?.modulus?.middle]).toEqual([62e6, 10.7e9]);
    expect([dry?.bending?.middle, dry?.modulus?.middle]).toEqual([78e6, 12.5e9]);
    expect([green?.hardness, dry?.hardness?.middle]).toEqual([undefined, 5900]);
  });
});

describe('a group', () => {
  // Worked out here from the table's text, apart from the code.
  const cells = readFileSync(new URL('../../data/movement.fpl-gtr-190.csv', import.meta.url), 'utf8')
    .split('\n')
    .slice(1)
    .filter(Boolean);
  it('is a range of published figures', () => {
    const soft = findSpecies('unknown softwood').movement();
    const printed = cells.map((l) => Number(/,(0\.\d+),(0\.\d+),fpl/.exec(l)?.[2]) * 100);
    expect(soft?.count).toBeGreaterThan(40);
    const { low, middle, high } = soft!.tangential!;
    expect(low).toBeGreaterThanOrEqual(Math.min(...printed));
    expect(low).toBeLessThan(middle);
    expect(middle).toBeLessThan(high);
    expect(high).toBeLessThanOrEqual(Math.max(...printed));
  });
  it('has its median in the middle', () => {
    const pines = findSpecies('pines');
    const values = pines.memberIds
      .map((id) => findSpecies(id).movement())
      // A group is made of figures that were read, where there are any.
      .filter((m) => m?.rows.every((r) => r.read !== 'memory'))
      .map((m) => m?.tangential?.middle)
      .filter((v): v is number => v !== undefined)
      .sort((a, b) => a - b);
    const n = values.length;
    const median =
      n % 2 === 1 ? values[(n - 1) / 2] : ((values[n / 2 - 1] as number) + (values[n / 2] as number)) / 2;
    expect(pines.movement()?.tangential?.middle).toBeCloseTo(median as number, 12);
    expect(pines.movement()?.count).toBeGreaterThanOrEqual(n);
  });
  it('takes percentiles between neighbours', () => {
    expect(percentile([1, 2, 3, 4, 5], 0.5)).toBe(3);
    expect(percentile([0, 10], 0.1)).toBeCloseTo(1, 12);
    expect(percentile([7], 0.9)).toBe(7);
  });
  it('holds Eucalyptus and Corymbia only', () => {
    for (const id of findSpecies('eucalypts').memberIds)
      expect(findSpecies(id).botanical).toMatch(/^(Eucalyptus|Corymbia)/);
    for (const id of findSpecies('pines').memberIds) expect(findSpecies(id).botanical).toMatch(/^Pinus/);
  });
});

describe('grades and places', () => {
  it('C24 as EN 338 has it', () => {
    expect(findGrade('c24')).toMatchObject({
      bending: 24e6,
      shear: 4e6,
      modulus: 11e9,
      modulusLow: 7.4e9,
      density: 420,
      basis: 'characteristic',
    });
    expect(() => findGrade('C25')).toThrow(/no grade "C25"; did you mean "C2\d"\?/);
  });
  it('a beam takes a grade or a species, with its basis', () => {
    const wood = (name: string) => structuralMaterial(timberOrGrade(name) as TimberOrGrade);
    expect(wood('C16')).toMatchObject({
      modulus: { low: 5.4e9, middle: 8e9, high: 8e9 },
      bending: { middle: 16e6 },
      shearModulus: 500e6,
      basis: 'characteristic',
    });
    const fir = wood('Douglas-fir');
    expect(fir.basis).toBe('mean of clear wood');
    expect(fir.modulus.middle / 6894.757293168e6).toBeCloseTo(1.95, 6);
    const unknown = wood('unknown softwood').modulus;
    expect(unknown.low).toBeLessThan(unknown.middle);
    expect(unknown.middle).toBeLessThan(unknown.high);
    expect(() => wood('European lime')).toThrow(/no modulus of elasticity.*unknown hardwood/);
  });
  it('a place with or without its state', () => {
    // Wood Handbook Table 13-1; June in Phoenix 4.6 % is also quoted from FPL-RN-268.
    expect(findClimate('Phoenix').months[5]).toBeCloseTo(0.046, 12);
    expect(findClimate('portland, or').place).toBe('Portland, OR');
    expect(() => findClimate('Portland')).toThrow(/"Portland, ME" or "Portland, OR"/);
    expect(() => findClimate('Seatle-Tacoma')).toThrow(/did you mean "Seattle-Tacoma/);
  });
});
