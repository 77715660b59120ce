import { describe, expect, it } from 'vitest';
import { layerCount } from '../../../src/recipes/lamination/layer-count.js';
import { stripCount } from '../../../src/recipes/lamination/strip-count.js';

describe('stripCount', () => {
  // Reckoned on paper: 48 - 3 = 45; 640 + 10 = 650; 14 strips make 630, 15 make 675; seven pass 330 mm (315), eight do not (360).
  const answer = stripCount({
    topWidth: '640 mm',
    stripWidth: '48 mm',
    jointing: '3 mm',
    finalTrim: '10 mm',
    machineWidth: '330 mm',
  });

  it('agrees with the count on paper', () => {
    expect(answer.strips).toBe(15);
    expect(answer.stripFinished.in('mm')).toBe(45);
    expect(answer.gluedWidth.in('mm')).toBe(675);
    expect(answer.spare.in('mm')).toBe(25);
    expect(answer.slabs.map((s) => [s.strips, s.width.in('mm')])).toEqual([
      [5, 225],
      [5, 225],
      [5, 225],
    ]);
  });

  it('glues one slab where no machine is named, and says so', () => {
    const whole = stripCount({ topWidth: '640 mm', stripWidth: '48 mm' });
    expect(whole.slabs).toHaveLength(1);
    expect(whole.cautions.map((c) => c.text).join()).toMatch(/one slab/);
  });

  it('warns of nails always, of the thicknesser’s least length with a machine, and of strips over 3 in', () => {
    expect(
      answer.cautions
        .filter((c) => c.level === 'danger')
        .map((c) => c.text)
        .join(),
    ).toMatch(/metal detector.*350 mm/s);
    const wide = (stripWidth: string) =>
      stripCount({ topWidth: '640 mm', stripWidth }).cautions.some((c) => /3 in/.test(c.text));
    expect(wide('79 mm')).toBe(false);
    expect(wide('80 mm')).toBe(true);
  });
});

describe('layerCount', () => {
  it('agrees with the count on paper', () => {
    // 22 - 2 = 20; 60 + 2 = 62; three layers make 60, four make 80; 80 - 2 = 78; 62 / 4 = 15.5.
    const a = layerCount({
      topThickness: '60 mm',
      stripThickness: '22 mm',
      planePerFace: '1 mm',
      flattenPerGlueUp: '2 mm',
    });
    expect([
      a.layers,
      a.finalThickness.in('mm'),
      a.spare.in('mm'),
      a.layerPlaned.in('mm'),
      a.layerBalanced.in('mm'),
    ]).toEqual([4, 78, 18, 20, 15.5]);
    expect(a.middle).toBe('the glue line between layers 2 and 3');
  });

  it('counts a flattening for every glue-up when layers are added one after another', () => {
    // Three glue-ups: 4 x 20 - 3 x 2 = 74.
    const a = layerCount({
      topThickness: '60 mm',
      stripThickness: '22 mm',
      planePerFace: '1 mm',
      flattenPerGlueUp: '2 mm',
      glueUps: 3,
    });
    expect([a.layers, a.finalThickness.in('mm')]).toEqual([4, 74]);
  });

  it('neither glues nor flattens one board that is thick enough', () => {
    const a = layerCount({
      topThickness: '20 mm',
      stripThickness: '22 mm',
      planePerFace: '1 mm',
      flattenPerGlueUp: '2 mm',
    });
    expect([a.layers, a.finalThickness.in('mm'), a.spare.in('mm')]).toEqual([1, 20, 0]);
    expect(a.cautions.some((c) => /balanced/.test(c.text))).toBe(false);
  });
});
