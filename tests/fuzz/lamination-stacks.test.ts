import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { matchSlabs } from '../../src/recipes/lamination/match-slabs.js';
import { stackUp } from '../../src/recipes/lamination/stack-up.js';

function refused(run: () => unknown): { fields: string[]; message: string } {
  try {
    run();
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    const r = error as InputError;
    expect(r.message).not.toMatch(/NaN|undefined|\n/);
    return { fields: r.issues.map((t) => t.field), message: r.message };
  }
  throw new Error('nothing was refused');
}

describe('stackUp refuses', () => {
  const ok = { nominal: '45 mm', plusMinus: '0.3 mm' };
  it('a part with neither or both spreads, by its row', () => {
    expect(refused(() => stackUp({ parts: [ok, { nominal: '12 mm' }] })).fields).toEqual([
      'parts[2].plusMinus',
    ]);
    expect(refused(() => stackUp({ parts: [{ ...ok, sd: '0.1 mm' }] })).message).toMatch(/both/);
  });
  it('every wrong row of a CSV by its line', () => {
    const r = refused(() =>
      stackUp({ parts: 'name,nominal (mm),plusMinus (mm)\na,45,0.3\nb,x,0.3\nc,12,-1\n' }),
    );
    expect(r.fields.length).toBe(2);
    expect(r.message).toMatch(/line 3/);
    expect(r.message).toMatch(/line 4/);
  });
  it('limits the wrong way round, no parts, a confidence of all', () => {
    expect(refused(() => stackUp({ parts: [ok], limits: { low: '46 mm', high: '44 mm' } })).fields).toEqual([
      'limits',
    ]);
    expect(refused(() => stackUp({ parts: [] })).fields).toEqual(['parts']);
    expect(refused(() => stackUp({ parts: [ok], confidence: '100 %' })).fields).toEqual(['confidence']);
    expect(refused(() => stackUp({ parts: [{ ...ok, count: 0 }] })).fields[0]).toMatch(/^parts\[1\]/);
  });
  it('but takes a stack that cannot be off', () => {
    const a = stackUp({ parts: [{ nominal: '45 mm', plusMinus: '0 mm' }], limits: '0.1 mm' });
    expect([a.chanceInside!.value, a.worstCase.value, a.low.in('mm'), a.high.in('mm')]).toEqual([
      1, 0, 45, 45,
    ]);
    expect(a.chart).toBeUndefined();
    expect(
      stackUp({ parts: [{ nominal: '45 mm', plusMinus: '0 mm' }], target: '50 mm', limits: '0.1 mm' })
        .chanceInside!.value,
    ).toBe(0);
  });
  it('but draws 200 parts in good time', () => {
    const start = performance.now();
    stackUp({ parts: Array.from({ length: 200 }, () => ({ ...ok, count: 1000 })), limits: '1 mm' });
    expect(performance.now() - start).toBeLessThan(4000);
  });
});

describe('matchSlabs refuses', () => {
  it('a least thickness that no slab reaches, naming the thickest', () => {
    const r = refused(() => matchSlabs({ slabs: '40 mm, 41 mm', minimum: '42 mm' }));
    expect(r.fields).toEqual(['minimum']);
    expect(r.message).toMatch(/41 mm/);
  });
  it('slabs without thickness, and says which', () => {
    expect(
      refused(() => matchSlabs({ slabs: [{ name: 'a', thickness: '40 mm' }, { name: 'b' } as never] }))
        .fields,
    ).toEqual(['slabs[2].thickness']);
    expect(refused(() => matchSlabs({ slabs: '40 mm, thick' })).fields).toEqual(['slabs[2]']);
    expect(refused(() => matchSlabs({ slabs: [] })).fields).toEqual(['slabs']);
    expect(refused(() => matchSlabs({ slabs: 'nowhere.csv' })).message).toMatch(/does not exist/);
  });
  it('but sets a thin slab apart instead of planing all to it', () => {
    const a = matchSlabs({ slabs: '40 mm, 41 mm, 30 mm', minimum: '38 mm' });
    expect(a.planeAllTo.in('mm')).toBe(40);
    expect(a.orShims[2]!.planeOff).toBeUndefined();
    expect(a.orShims[2]!.shim.in('mm')).toBe(11);
    expect(a.cautions.some((c) => /under the least thickness/.test(c.text))).toBe(true);
  });
});
