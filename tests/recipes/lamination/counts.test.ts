import { describe, expect, it } from 'vitest';
import { layerCount } from '../../../src/recipes/lamination/layer-count.js';
import { stripCount } from '../../../src/recipes/lamination/strip-count.js';

describe('stripCount', () => {
  // Worked out on paper: 48 - 3 = 45; 640 + 10 = 650; 14 strips make 630, 15 make 675; seven pass 330 mm (315), eight do not (360).
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
    const counted = (r: typeof whole) => r.cautions.some((c) => /counted as one slab/.test(c.text));
    const machined = stripCount({ topWidth: '640 mm', stripWidth: '48 mm', machineWidth: '330 mm' });
    expect([counted(whole), counted(machined)]).toEqual([true, false]);
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
    expect(a.workings.some((w) => /^One planed board/.test(w.text))).toBe(false);
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
    expect(a.workings.some((w) => /^One planed board reaches the thickness/.test(w.text))).toBe(true);
  });

  it('warns of timber that goes to shavings past half a layer, and of an unbalanced slab where there are layers', () => {
    const text = (topThickness: string) =>
      layerCount({ topThickness, stripThickness: '20 mm', planePerFace: '0 mm', flattenPerGlueUp: '0 mm' })
        .cautions.map((c) => c.text)
        .join('\n');
    // Three layers of 20 mm: 10 mm to spare is half of one.
    expect(text('50 mm')).not.toMatch(/would go to shavings/);
    expect(text('49.9 mm')).toMatch(
      /10\.1 mm would go to shavings: plane each layer to 16\.6 mm, or see whether 2 thicker/,
    );
    expect(text('50 mm')).toMatch(/same above and below its middle/);
    expect(text('20 mm')).not.toMatch(/same above and below/);
  });

  it('names the middle: a layer of an odd number, a glue line of an even one, the board itself', () => {
    const middle = (topThickness: string) =>
      layerCount({ topThickness, stripThickness: '20 mm', planePerFace: '0 mm', flattenPerGlueUp: '0 mm' })
        .middle;
    expect(['20 mm', '40 mm', '60 mm', '100 mm'].map(middle)).toEqual([
      'the board itself',
      'the glue line between layers 1 and 2',
      'layer 2 of 3',
      'layer 3 of 5',
    ]);
  });

  it('takes as many glue-ups as there are glue lines, and a thousand layers', () => {
    const at = (glueUps: number) => () =>
      layerCount({
        topThickness: '60 mm',
        stripThickness: '20 mm',
        planePerFace: '0 mm',
        flattenPerGlueUp: '0 mm',
        glueUps,
      });
    expect(at(2)).not.toThrow();
    expect(at(3)).toThrow(/glueUps: got 3, takes at most 2 for 3 layers/);
    const thin = (topThickness: string) => () =>
      layerCount({ topThickness, stripThickness: '1 mm', planePerFace: '0 mm', flattenPerGlueUp: '0 mm' });
    expect(thin('1 m')().layers).toBe(1000);
    expect(thin('1.0001 m')).toThrow(/stripThickness: got 1 mm, which needs 1001 layers/);
    expect(() => layerCount({ topThickness: '20 mm', stripThickness: '2 mm', planePerFace: '1 mm' })).toThrow(
      /planePerFace: got 1 mm from each face, takes less than half of the board's 2 mm/,
    );
  });
});

describe('stripCount at its limits', () => {
  const good = { topWidth: '1 m', stripWidth: '10 mm', jointing: '0 mm', finalTrim: '0 mm' } as const;
  it('ten thousand strips and not one more', () => {
    const at = (topWidth: string) => () => stripCount({ ...good, stripWidth: '1 mm', topWidth });
    expect(at('10 m')().strips).toBe(10_000);
    expect(at('10.0001 m')).toThrow(
      /stripWidth: needs 10001 strips, takes a strip wide enough for 10 000 or fewer/,
    );
  });
  it('a slab as wide as the machine passes; slabs differ by one strip, the wider first', () => {
    const slabs = (machineWidth: string) => stripCount({ ...good, machineWidth }).slabs.map((s) => s.strips);
    expect(slabs('1 m')).toEqual([100]);
    expect(slabs('999 mm')).toEqual([50, 50]);
    expect(slabs('340 mm')).toEqual([34, 33, 33]);
    expect(slabs('330 mm')).toEqual([25, 25, 25, 25]);
  });
  it('says how the slabs are counted, and what the trim is for, only where there are several', () => {
    const one = stripCount({ ...good, machineWidth: '1 m' });
    const two = stripCount({ ...good, machineWidth: '500 mm' });
    const text = (r: typeof one) =>
      [...r.workings.map((w) => w.text), ...r.cautions.map((c) => c.text)].join('\n');
    expect(text(two)).toMatch(
      /At most 50 strips pass the thicknesser together, so 2 slabs[\s\S]*jointed once more/,
    );
    expect(text(one)).not.toMatch(/pass the thicknesser together|jointed once more/);
  });
});
