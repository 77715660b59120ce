import { describe, expect, it } from 'vitest';
import type { Piece } from '../../src/piece/piece.js';
import { pieceOf, porchBenchInput, searchedTeaCounter, teaCounterInput } from './samples.js';

const found = (p: Piece, path: string): string =>
  p.contradictions
    .filter((c) => c.path === path || c.path.startsWith(`${path}.`))
    .map((c) => c.message)
    .join('; ');

const counter = (changes: Readonly<Record<string, unknown>> = {}): Piece =>
  pieceOf(teaCounterInput()).with(changes);
const bench = (changes: Readonly<Record<string, unknown>> = {}): Piece =>
  pieceOf(porchBenchInput()).with(changes);

describe('contradictions', () => {
  it('are none in the demo pieces', () => {
    expect(counter().contradictions).toEqual([]);
    expect(bench().contradictions).toEqual([]);
  });

  it('a slot with no part beneath', () => {
    const spoilt = counter({ 'fixings.slotted screws.at': ['320 mm', '620 mm'] });
    expect(found(spoilt, 'fixings.slotted screws')).toMatch(
      /slot at 130 mm along and 620 mm across has no part of cross rail beneath/,
    );
    expect(spoilt.dangers.map((d) => d.name)).toContain('unsafeDescription');
    // A rail that hangs lower than the top carries no slot either.
    expect(found(counter({ 'fixings.slotted screws.to': 'long rail' }), 'fixings.slotted screws')).toMatch(
      /no part of long rail beneath/,
    );
  });

  it('a rail whose joint is wider than it', () => {
    expect(found(counter({ 'joints.long rail lap.width': '80 mm' }), 'joints.long rail lap')).toMatch(
      /80 mm wide is wider than its part, 70 mm/,
    );
    expect(found(counter({ 'joints.foot tenon.width': '75 mm' }), 'joints.foot tenon')).toMatch(/wider/);
  });

  it('a cut that goes through the part', () => {
    const spoilt = counter({ 'joints.long rail lap.depth': '45 mm' });
    expect(found(spoilt, 'joints.long rail lap')).toMatch(/goes through a part 45 mm thick/);
    expect(spoilt.dangers.length).toBeGreaterThan(0);
  });

  it('a rail worked on edge whose joint is cut as if it lay flat', () => {
    expect(
      found(counter({ 'joints.long rail lap.cutFrom': 'top and bottom' }), 'joints.long rail lap'),
    ).toMatch(/cut from front and back, not from top and bottom/);
  });

  it('a part longer than any stock', () => {
    expect(found(counter({ 'pile.battens': [{ length: '1.5 m', count: 20 }] }), 'parts.long rail')).toMatch(
      /long rail is 1735 mm long; the longest batten gives 1470 mm/,
    );
  });

  it('a clamp plan for a slab that never exists', () => {
    const spoilt = bench({
      'top.slabs': { left: { strips: 3 }, right: { strips: 2 } },
      'top.gluing': [{ glues: 'left' }, { glues: 'middle', clamps: 4 }, { glues: 'left, right' }],
    });
    expect(found(spoilt, 'top.gluing[2]')).toMatch(/there is no slab "middle"/);
    expect(found(bench({ 'top.slabs': { left: { strips: 3 }, right: { strips: 3 } } }), 'top.slabs')).toMatch(
      /hold 6 strips together; the top has 5/,
    );
  });

  it('a stage with fewer clamps than it takes', () => {
    const spoilt = bench({
      'top.slabs': { left: { strips: 3 }, right: { strips: 2 } },
      'top.gluing': [{ glues: 'left', clamps: 1 }, { glues: 'right' }, { glues: 'left, right' }],
    });
    expect(found(spoilt, 'top.gluing')).toMatch(/left is given 1 clamps; it takes \d+/);
  });

  it('a mass that the parts do not add up to', () => {
    expect(found(counter({ 'costs.statedMass': '90 kg' }), 'costs.statedMass')).toMatch(
      /given as 90 kg; the parts add up to/,
    );
    expect(found(counter({ 'costs.statedMass': '43 kg' }), 'costs.statedMass')).toBe('');
  });

  it('a price that the lines do not add up to', () => {
    expect(found(counter({ 'costs.statedCost': '£150' }), 'costs.statedCost')).toMatch(
      /given as 150.00; the lines add up to/,
    );
  });

  it('battens that the bill charges twice', async () => {
    const spoilt = (await searchedTeaCounter()).with({
      'costs.lines': [{ item: 'battens, salvaged', kind: 'timber', quantity: '24 m', price: '£0.40/m' }],
    });
    expect(found(spoilt, 'costs.lines[1]')).toMatch(/charges it twice/);
    // Without that line the battens stand in the bill once, with the length the plan takes and its price.
    const counter = await searchedTeaCounter();
    const battens = counter.bill().result as unknown as {
      readonly lines: readonly { item: string; cost: { value: number } }[];
    };
    const own = battens.lines.filter((l) => /batten/.test(l.item));
    expect(own).toHaveLength(1);
    expect(own[0]?.cost.value).toBeCloseTo((counter.plans.frame?.stockLength ?? 0) * 0.4, 2);
  });

  it('parts that touch nothing, stand on nothing, or name nothing', () => {
    expect(
      found(counter({ 'joints.long rail lap.between': ['long rail', 'foot'] }), 'joints.long rail lap'),
    ).toMatch(/meet nowhere/);
    expect(
      found(counter({ 'joints.long rail lap.between': ['long rail', 'stretcher'] }), 'joints.long rail lap'),
    ).toMatch(/no part "stretcher"/);
    expect(found(counter({ 'fixings.front screws.to': 'apron' }), 'fixings.front screws')).toMatch(
      /no part "apron"/,
    );
    expect(
      found(
        counter({
          'parts.cross rail.along': ['130 mm', '600 mm', '1820 mm'],
          'parts.long rail.level': '600 mm',
        }),
        'parts.cross rail',
      ),
    ).toMatch(/stands on no leg/);
    expect(
      found(counter({ 'parts.long rail.orientation': 'wide face to the end' }), 'parts.long rail'),
    ).toMatch(/cannot stand/);
    expect(found(counter({ 'parts.long rail.to': '2400 mm' }), 'parts.long rail')).toMatch(
      /past the ends of the top/,
    );
  });

  it('parts in one place without a joint', () => {
    expect(found(counter({ 'parts.long rail.level': '820 mm' }), 'parts')).toMatch(
      /long rail and cross rail cross|cross rail and long rail cross/,
    );
  });

  it('a screw that comes out of the top, or never reaches it', () => {
    expect(found(counter({ 'fixings.front screws.length': '80 mm' }), 'fixings.front screws')).toMatch(
      /comes out/,
    );
    expect(found(counter({ 'fixings.front screws.through': '70 mm' }), 'fixings.front screws')).toMatch(
      /does not come through/,
    );
  });
});
