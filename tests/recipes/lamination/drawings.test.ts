import { describe, expect, it } from 'vitest';
import { caulCamber } from '../../../src/recipes/lamination/caul-camber.js';
import { clampPlan } from '../../../src/recipes/lamination/clamp-plan.js';
import { glueQuantity } from '../../../src/recipes/lamination/glue-quantity.js';
import { glueTiming } from '../../../src/recipes/lamination/glue-timing.js';
import { layerCount } from '../../../src/recipes/lamination/layer-count.js';
import { matchSlabs } from '../../../src/recipes/lamination/match-slabs.js';
import { stackUp } from '../../../src/recipes/lamination/stack-up.js';
import { stripCount } from '../../../src/recipes/lamination/strip-count.js';
import { stripLayout } from '../../../src/recipes/lamination/strip-layout.js';
import { layoutDrawing } from '../../../src/recipes/lamination/strip-drawing.js';

type Row = Readonly<Record<string, unknown>>;
interface Layer {
  readonly data: { readonly values: readonly Row[] };
  readonly mark: Row;
}
/** Every row of data in a chart, wherever it stands. */
function rowsIn(part: unknown): Row[] {
  if (Array.isArray(part)) return part.flatMap(rowsIn);
  if (typeof part !== 'object' || part === null) return [];
  const { data, ...rest } = part as { data?: { values?: Row[] } };
  return [...(data?.values ?? []), ...Object.values(rest).flatMap(rowsIn)];
}
const labelsIn = (part: unknown): string[] => [
  ...new Set(
    rowsIn(part).flatMap((r) =>
      [r.label, r.text, r.note].filter((t): t is string => typeof t === 'string' && t !== ''),
    ),
  ),
];
const titleOf = (chart: unknown): string => JSON.stringify((chart as { title?: unknown }).title);

describe('layerCount', () => {
  const given = { stripThickness: '20 mm', planePerFace: '0 mm', flattenPerGlueUp: '2 mm' };
  it('names up to twelve layers, and says what is planed off', () => {
    // 3 × 20 = 60 for a top of 57: 1.5 mm from each face.
    const three = layerCount({ ...given, topThickness: '57 mm' }).chart;
    expect(labelsIn(three).filter((t) => /^layer/.test(t))).toEqual(['layer 1', 'layer 2', 'layer 3']);
    expect(titleOf(three)).toMatch(/planed off, 1\.5 mm from each face/);
    expect(labelsIn(three)).toEqual(expect.arrayContaining(['3 × 20 mm = 60 mm', 'top 57 mm']));
    const many = (topThickness: string) =>
      labelsIn(layerCount({ ...given, topThickness, flattenPerGlueUp: '0 mm' }).chart).filter((t) =>
        /^layer/.test(t),
      ).length;
    expect([many('240 mm'), many('241 mm'), many('1.5 m')]).toEqual([12, 0, 0]);
    expect(titleOf(layerCount({ ...given, topThickness: '40 mm', flattenPerGlueUp: '0 mm' }).chart)).toMatch(
      /Nothing is planed off/,
    );
  });
  it('breaks the middle line where the name of the middle layer stands, and only there', () => {
    const dashed = (topThickness: string) =>
      (layerCount({ ...given, topThickness, flattenPerGlueUp: '0 mm' }).chart as { layer: Layer[] }).layer
        .filter((l) => Array.isArray(l.mark.strokeDash))
        .map((l) => l.data.values.map((r) => [Math.round(r.x as number), r.y]));
    // Three layers are 60 mm high and drawn 144 wide; the names stand at 36, that of the middle one at half the height.
    expect(dashed('60 mm')).toEqual([
      [
        [-4, 30],
        [23, 30],
      ],
      [
        [49, 30],
        [148, 30],
      ],
    ]);
    const whole = layerCount({ ...given, topThickness: '60 mm', flattenPerGlueUp: '0 mm' }).chart;
    expect(rowsIn(whole).find((r) => r.label === 'layer 2')).toMatchObject({ x: 36, y: 30 });
    // Of four the middle is a glue line, which no name crosses; of fifteen no name is written.
    expect(dashed('80 mm')).toEqual([
      [
        [-6, 40],
        [198, 40],
      ],
    ]);
    expect(dashed('300 mm')).toHaveLength(1);
  });
  it('names no layer that is planed away', () => {
    // Five layers of 10 with 26 mm flattened off by two glue-ups: 13 from each face, more than a whole layer.
    const a = layerCount({
      topThickness: '24 mm',
      stripThickness: '10 mm',
      planePerFace: '0 mm',
      flattenPerGlueUp: '13 mm',
      glueUps: 2,
    });
    expect(a.layers).toBe(5);
    expect(labelsIn(a.chart).filter((t) => /^layer/.test(t))).toEqual(['layer 2', 'layer 3', 'layer 4']);
  });
});

describe('stripCount', () => {
  const given = { stripWidth: '50 mm', jointing: '0 mm', finalTrim: '10 mm' };
  it('writes every slab up to six, and hatches what is trimmed', () => {
    const six = stripCount({ ...given, topWidth: '590 mm', machineWidth: '100 mm' });
    expect(six.slabs).toHaveLength(6);
    expect(labelsIn(six.chart)).toEqual(expect.arrayContaining(['2 × 50 mm = 100 mm', 'top 590 mm']));
    expect(titleOf(six.chart)).toMatch(/6 slabs; hatched: trimmed off, 5 mm from each edge/);
    const seven = stripCount({ ...given, topWidth: '690 mm', machineWidth: '100 mm' });
    expect(labelsIn(seven.chart)).not.toContain('2 × 50 mm = 100 mm');
  });
  it('says nothing of a trim there is not, and draws hundreds of strips as one slab', () => {
    const whole = stripCount({ ...given, topWidth: '500 mm', finalTrim: '0 mm' });
    expect(titleOf(whole.chart)).toMatch(/One slab"/);
    expect(
      rowsIn(stripCount({ ...given, topWidth: '7.5 m', finalTrim: '0 mm' }).chart).length,
    ).toBeGreaterThan(150);
    expect(rowsIn(stripCount({ ...given, topWidth: '7.55 m', finalTrim: '0 mm' }).chart).length).toBeLessThan(
      50,
    );
  });
});

describe('clampPlan', () => {
  const given = {
    length: '2 m',
    jointHeight: '40 mm',
    pressure: '100 kPa',
    clampForce: '10 kN',
    outerWidth: '100 mm',
  };
  const names = (more: object) =>
    labelsIn(clampPlan({ ...given, ...more }).chart).filter((t) => /^\d+[ab]$/.test(t));
  it('numbers the clamps below and above, every one up to 24', () => {
    expect(names({ outerWidth: '250 mm' })).toEqual(['1b', '2a', '3b', '4a']);
    expect(names({ length: '4.8 m' })).toHaveLength(24);
    expect(names({ length: '5 m' })).toHaveLength(13);
  });
  it('shows the distance between clamps where there are two', () => {
    const text = (more: object) => labelsIn(clampPlan({ ...given, ...more }).chart);
    expect(titleOf(clampPlan({ ...given, length: '100 mm' }).chart)).toMatch(/"1 clamp, seen/);
    expect(titleOf(clampPlan({ ...given, length: '400 mm' }).chart)).toMatch(/"2 clamps, seen/);
    expect(
      text({ length: '100 mm' })
        .filter((t) => / mm$/.test(t))
        .sort(),
    ).toEqual(['100 mm', '50 mm']);
    expect(text({ length: '400 mm' })).toEqual(expect.arrayContaining(['400 mm', '100 mm', '200 mm']));
  });
  it('draws the slab as wide as the clamps have to reach, less both pads; unknown, three boards wide', () => {
    const wide = (more: object) =>
      Math.max(
        ...rowsIn(clampPlan({ ...given, ...more }).chart)
          .map((r) => Number(r.y2 ?? 0))
          .filter((y) => y < 2000),
      );
    expect(wide({ needReach: '640 mm', pad: '20 mm' })).toBeGreaterThan(
      wide({ needReach: '440 mm', pad: '20 mm' }),
    );
  });
  it('leaves pads and spread out over forty clamps, and draws pads only where there are some', () => {
    const count = (more: object) => rowsIn(clampPlan({ ...given, ...more }).chart).length;
    const plain = { length: '400 mm' };
    expect(count({ ...plain, pad: '5 mm', padLength: '20 mm' })).toBeGreaterThan(count(plain));
    // Forty clamps with their spread are more to draw than forty-one without.
    expect(count({ length: '8 m' })).toBeGreaterThan(count({ length: '8.2 m' }));
  });
});

describe('glueTiming', () => {
  const given = { joints: 10, perJoint: '1 min', openTime: '5 min' };
  it('sets spreading, clamps and the closed time of each batch on one clock, five batches of them', () => {
    const chart = glueTiming({ ...given, clampsUp: '1 min', closedTime: '4 min' }).chart;
    const names = [...new Set(rowsIn(chart).map((r) => r.name))];
    expect(names).toEqual(
      expect.arrayContaining([
        'Batch 1: spread 5 joints',
        'Batch 1: set clamps',
        'Batch 1: first glue is wet',
        'Batch 2: closed joint may wait',
      ]),
    );
    const closed = rowsIn(chart).find((r) => r.name === 'Batch 1: closed joint may wait')!;
    expect([closed.start, closed.end]).toEqual([5, 9]);
    // Each batch has a clock of its own: the second too starts at nothing.
    const second = rowsIn(chart).find((r) => r.name === 'Batch 2: spread 5 joints')!;
    expect([second.start, second.end]).toEqual([0, 5]);
    const set = rowsIn(chart).find((r) => r.name === 'Batch 1: set clamps')!;
    expect([set.start, set.end]).toEqual([5, 6]);
  });
  it('shortens the closed time in warm air as it does the open time', () => {
    const warm = glueTiming({ ...given, joints: 1, closedTime: '4 min', temperature: '30 degC' }).chart;
    const closed = rowsIn(warm).find((r) => r.name === 'Batch 1: closed joint may wait')!;
    expect([closed.start, closed.end]).toEqual([1, expect.closeTo(3, 9)]);
    const wet = rowsIn(warm).find((r) => r.name === 'Batch 1: first glue is wet')!;
    expect(wet.end).toBeCloseTo(2.5, 9);
  });
  it('says joint of one, and leaves out clamps that take no time and a closed time not given', () => {
    const one = glueTiming({ ...given, joints: 1 }).chart;
    const names = [...new Set(rowsIn(one).map((r) => r.name))].filter(Boolean);
    expect(names).toEqual(['Batch 1: spread 1 joint', 'Batch 1: first glue is wet']);
    expect(titleOf(one)).not.toMatch(/batches/);
  });
  it('shows the first five of many batches, and says so', () => {
    const at = (joints: number) => glueTiming({ ...given, joints, openTime: '1 min' }).chart;
    expect(titleOf(at(6))).toMatch(/the first 5 of 6 batches/);
    expect(titleOf(at(5))).not.toMatch(/the first/);
    expect(rowsIn(at(6)).some((r) => /^Batch 6/.test(String(r.name)))).toBe(false);
  });
});

describe('glueQuantity, caulCamber, matchSlabs and stackUp', () => {
  it('glue rises with the spread, 100 g at 100 g/m² on a square metre; no mark where the spread lies off the chart', () => {
    const of = (spread: string) =>
      rowsIn(glueQuantity({ jointLength: '1 m', jointHeight: '100 mm', joints: 10, spread }).chart);
    const at = of('200 g/m2').filter((r) => r.series === 'glue' || 'glue' in r || r.y !== undefined);
    expect(
      labelsIn(
        glueQuantity({ jointLength: '1 m', jointHeight: '100 mm', joints: 10, spread: '200 g/m2' }).chart,
      ),
    ).toContain('200 g');
    for (const r of at)
      if (typeof r.x === 'number' && typeof r.y === 'number' && r.series === 'glue')
        expect(r.y).toBeCloseTo(r.x, 6);
    const marked = (spread: string) => of(spread).some((r) => /^\d+ g$/.test(String(r.label)));
    expect([marked('80 g/m2'), marked('79.9 g/m2')]).toEqual([true, false]);
  });
  it('a caul rises to its crown in the middle', () => {
    const a = caulCamber(caulCamber.example);
    const rows = rowsIn(a.chart).filter((r) => r.series === 'crown');
    const heights = rows.map((r) => r.y as number);
    expect(Math.max(...heights)).toBeCloseTo(a.camber.in('mm'), 9);
    expect(heights[0]).toBeCloseTo(0, 9);
    expect(rows.find((r) => Math.abs((r.x as number) - 160) < 1e-6)!.y).toBeCloseTo(
      0.7125 * a.camber.in('mm'),
      9,
    );
  });
  it('slabs are labelled by what to do with them; the one that decides is marked', () => {
    const rows = rowsIn(matchSlabs({ slabs: '41 mm, 40 mm, 30 mm', minimum: '38 mm' }).chart).filter(
      (r) => typeof r.chosen === 'boolean',
    );
    const of = (name: string) => rows.find((r) => r.name === name)!;
    expect(of('slab 1').label).toBe('41 mm: plane 1 mm, or shim 0 mm');
    expect(of('slab 3').label).toBe('30 mm: too thin to plane, or shim 11 mm');
    expect(['slab 1', 'slab 2', 'slab 3'].map((n) => of(n).chosen)).toEqual([false, true, false]);
  });
  it('stacks show their limits, or the interval where none are set', () => {
    const parts = [{ nominal: '45 mm', plusMinus: '0.3 mm', count: 4 }];
    const limited = stackUp({ parts, limits: '0.2 mm' }).chart;
    expect(titleOf(limited)).toMatch(/(49|5[01])(\.\d)? % fall inside the limits/);
    expect(labelsIn(limited)).toEqual(expect.arrayContaining(['lower limit', 'upper limit']));
    const open = stackUp({ parts }).chart;
    expect(titleOf(open)).toMatch(/95 % lie from 179\.41 mm to 180\.59 mm/);
    expect(labelsIn(open)).toEqual(expect.arrayContaining(['interval, low', 'interval, high']));
    // A page that redraws from numbers alone has counted no stacks.
    const read = stackUp.read({ parts, limits: '0.2 mm' });
    expect(titleOf(stackUp.chartOf(read, stackUp.evaluate(read)))).toMatch(/95 % lie from/);
  });
});

describe('stripLayout', () => {
  const given = { topLength: 2, rowWidth: 0.05, minStagger: 0.1 };
  const piece = (name: string, start: number, length: number, tone?: string) => ({
    piece: name,
    start,
    length,
    tone,
  });
  const looks = (rows: readonly (readonly ReturnType<typeof piece>[])[]) => layoutDrawing(given, rows);
  it('marks the nearest joints of neighbouring rows, or says there are none', () => {
    const near = looks([
      [piece('a', 0, 1.2), piece('b', 1.2, 0.8)],
      [piece('c', 0, 0.9), piece('d', 0.9, 1.1)],
      [piece('e', 0, 1.05), piece('f', 1.05, 0.95)],
    ]);
    expect(titleOf(near)).toMatch(/the nearest joints, 150 mm apart \(100 mm asked\)/);
    // The first pair stays where a later one is no nearer.
    const later = looks([
      [piece('a', 0, 1.2), piece('b', 1.2, 0.8)],
      [piece('c', 0, 1.1), piece('d', 1.1, 0.9)],
      [piece('e', 0, 0.9), piece('f', 0.9, 1.1)],
    ]);
    expect(titleOf(later)).toMatch(/the nearest joints, 100 mm apart/);
    expect(titleOf(looks([[piece('a', 0, 2)], [piece('b', 0, 2)]]))).toMatch(
      /No joints in neighbouring rows/,
    );
  });
  it('names pieces and rows up to forty rows', () => {
    const of = (n: number) =>
      labelsIn(looks(Array.from({ length: n }, (_, i) => [piece(`p${i + 1}`, 0, 2)])));
    expect(of(40)).toContain('40');
    expect(of(41)).not.toContain('41');
  });
  it('gives each tone a look of its own and a key; with over six tones some share', () => {
    const of = (tones: readonly (string | undefined)[]) =>
      labelsIn(looks(tones.map((t, i) => [piece(`p${i}`, 0, 2, t)])));
    expect(of(['pale oak', 'deep brown', 'red'])).toEqual(
      expect.arrayContaining(['pale oak', 'deep brown', 'red']),
    );
    expect(of(['light', 'light'])).not.toContain('light');
    const eight = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'];
    expect(of(eight).filter((t) => eight.includes(t))).toEqual(eight.slice(0, 6));
    expect(of(['dark', 'darker', undefined])).toEqual(expect.arrayContaining(['dark', 'darker']));
  });
  it('warns of short pieces and of a stagger under 100 mm', async () => {
    const text = async (more: object) =>
      (
        await stripLayout({
          topLength: '1 m',
          rows: 1,
          minStagger: '100 mm',
          timeLimit: '60 ms',
          lengths: '600 mm, 400 mm',
          ...more,
        })
      ).cautions
        .map((c) => c.text)
        .join('\n');
    const long = await text({});
    expect(long).not.toMatch(/shorter than 350 mm: dress|let cracks run/);
    expect(await text({ lengths: '651 mm, 349 mm' })).toMatch(/dress pieces shorter than 350 mm/);
    expect(await text({ lengths: '650 mm, 350 mm' })).not.toMatch(/dress pieces shorter/);
    expect(await text({ minStagger: '99 mm' })).toMatch(/let cracks run/);
  });
});
