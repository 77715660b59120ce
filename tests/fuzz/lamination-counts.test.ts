import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { layerCount } from '../../src/recipes/lamination/layer-count.js';
import { stripCount } from '../../src/recipes/lamination/strip-count.js';

/** The refusal's fields and words; fails where nothing is refused or something else is thrown. */
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

describe('stripCount refuses', () => {
  const good = {
    topWidth: '640 mm',
    stripWidth: '48 mm',
    jointing: '3 mm',
    finalTrim: '10 mm',
    machineWidth: '330 mm',
  };

  it('jointing that eats the strip', () => {
    for (const jointing of ['48 mm', '60 mm']) {
      const r = refused(() => stripCount({ ...good, jointing }));
      expect(r.fields).toEqual(['jointing']);
      expect(r.message).toMatch(/48 mm/);
    }
  });
  it('a machine narrower than one strip, saying both widths', () => {
    const r = refused(() => stripCount({ ...good, machineWidth: '44.9 mm' }));
    expect(r.fields).toEqual(['machineWidth']);
    expect(r.message).toMatch(/44\.9 mm/);
    expect(r.message).toMatch(/45 mm/);
  });
  it('a strip so thin that the count means nothing', () => {
    expect(
      refused(() => stripCount({ topWidth: '20 m', stripWidth: '0.1 mm', jointing: '0 mm' })).fields,
    ).toEqual(['stripWidth']);
  });
  it('every wrong field at once', () => {
    expect(
      refused(() =>
        stripCount({
          topWidth: '-1 mm',
          stripWidth: '0 mm',
          jointing: '-1 mm',
          finalTrim: 'ten',
          machineWidth: '5 kg',
        }),
      ).fields.sort(),
    ).toEqual(['finalTrim', 'jointing', 'machineWidth', 'stripWidth', 'topWidth']);
  });
  it('a number without a unit, and a misspelt field with the right name offered', () => {
    expect(refused(() => stripCount({ ...good, topWidth: 640 as never })).fields).toEqual(['topWidth']);
    expect(refused(() => stripCount({ ...good, topwidht: '1 m' } as never)).message).toMatch(/topWidth/);
  });
});

describe('stripCount takes the edges of its range', () => {
  it('one strip as wide as the top, and a machine as wide as the strip', () => {
    const one = stripCount({
      topWidth: '100 mm',
      stripWidth: '100 mm',
      jointing: '0 mm',
      finalTrim: '0 mm',
      machineWidth: '100 mm',
    });
    expect(one.strips).toBe(1);
    expect(one.spare.value).toBe(0);
  });
  it('a width that divides exactly takes no strip too many, in any unit', () => {
    for (const unit of ['mm', 'cm', 'm', 'in', 'ft']) {
      for (const n of [3, 7, 13, 29, 99]) {
        expect(
          stripCount({
            topWidth: `${(n * 7) / 100} ${unit}`,
            stripWidth: `0.07 ${unit}`,
            jointing: '0 mm',
            finalTrim: '0 mm',
          }).strips,
          `${n} ${unit}`,
        ).toBe(n);
      }
    }
  });
});

describe('layerCount refuses', () => {
  const good = {
    topThickness: '54 mm',
    stripThickness: '22 mm',
    planePerFace: '1 mm',
    flattenPerGlueUp: '2 mm',
  };

  it('planing that eats the board', () => {
    for (const planePerFace of ['11 mm', '12 mm'])
      expect(refused(() => layerCount({ ...good, planePerFace })).fields).toEqual(['planePerFace']);
  });
  it('more glue-ups than glue lines', () => {
    const r = refused(() => layerCount({ ...good, glueUps: 5 }));
    expect(r.fields).toEqual(['glueUps']);
    expect(r.message).toMatch(/at most/);
  });
  it('a board so thin that the count means nothing', () => {
    expect(
      refused(() => layerCount({ topThickness: '2 m', stripThickness: '1 mm', planePerFace: '0 mm' })).fields,
    ).toEqual(['stripThickness']);
  });
  it('half a glue-up', () => {
    expect(refused(() => layerCount({ ...good, glueUps: 1.5 })).fields).toEqual(['glueUps']);
  });
});
