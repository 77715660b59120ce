// What the charts of moisture draw, laid out by hand.
import { describe, expect, it } from 'vitest';
import { restraintStress } from '../../../src/recipes/moisture/restraint-stress.js';
import { cupDepth } from '../../../src/recipes/moisture/cup-depth.js';
import { fixingSlots } from '../../../src/recipes/moisture/fixing-slots.js';
import { movementAcross } from '../../../src/recipes/moisture/movement-across.js';
import { seasonalMovement } from '../../../src/recipes/moisture/seasonal-movement.js';
import { woodDensity } from '../../../src/recipes/moisture/wood-density.js';
import { areas, dataOf, lines, outlines, rectangles, text } from '../drawn-shapes.js';

const close = (x: number): number => expect.closeTo(x, 6) as number;

describe('width against moisture', () => {
  const chart = (more: object) =>
    movementAcross({ width: '1000 mm', timber: 'white oak', from: '8 %', to: '12 %', ...more }).chart;
  const curve = (spec: unknown) => [...lines(spec).values()][0] ?? [];
  const marks = (spec: unknown) =>
    dataOf(spec, 'point').filter((r) => typeof r['label'] === 'string' && typeof r['x'] === 'number');
  it('goes two points past both moistures by one rule, with the band of what is expected', () => {
    const spec = chart({});
    const points = curve(spec);
    expect(points).toHaveLength(41);
    // 3.65 mm a point: 7.3 mm narrower at 6 %, 21.9 mm wider at 14 %.
    expect(points[0]).toEqual([close(6), close(992.7)]);
    expect(points[40]).toEqual([close(14), close(1021.9)]);
    expect(points[20]).toEqual([close(10), close(1007.3)]);
    // The band at 14 %: 1.19224 times that.
    expect(areas(spec).at(-1)).toEqual([close(14), close(1000 + 21.9 * 1.19224)]);
    expect(dataOf(spec, 'area').at(-1)?.['y']).toEqual(close(1000 + 21.9 * 0.80776));
    expect(text(spec)).toContain('white oak, flat-sawn; band: what is expected');
  });
  it('marks both states, and one where nothing changes', () => {
    expect(marks(chart({}))).toEqual([
      { x: close(8), y: close(1000), label: '1000.0 mm now' },
      { x: close(12), y: close(1014.6), label: '1014.6 mm' },
    ]);
    expect(marks(chart({ to: '8 %' }))).toHaveLength(1);
  });
  it('ends two points past fibre saturation, and marks a wetter state at its edge', () => {
    const spec = chart({ from: '60 %', to: '10 %' });
    expect(curve(spec).at(-1)?.[0]).toBeCloseTo(32, 9);
    expect(curve(spec).at(-1)?.[1]).toBeCloseTo(1000, 6);
    expect(marks(spec)[0]).toEqual({ x: close(32), y: close(1000), label: '1000.0 mm now at 60 %' });
    expect(marks(chart({ from: '32 %', to: '10 %' }))[0]?.['label']).toBe('1000.0 mm now');
    expect(marks(chart({ from: '32.1 %', to: '10 %' }))[0]?.['label']).toBe('1000.0 mm now at 32 %');
  });
  it('starts at no moisture, never below', () => {
    expect(curve(chart({ from: '1 %' }))[0]?.[0]).toBe(0);
    expect(curve(chart({ from: '60 %', to: '40 %' }))[0]?.[0]).toBeCloseTo(28, 9);
  });
  it('says what it is made of', () => {
    expect(text(chart({ cut: 'mixed' }))).toContain('white oak, sawing not known; band');
    const strips = [
      { timber: 'white oak', width: '500 mm' },
      { timber: 'teak', width: '500 mm', count: 1 },
    ];
    const spec = chart({ width: undefined, timber: undefined, strips });
    expect(text(spec)).toContain('2 strips of mixed timber; band');
    // 500 * 0.0146 + 500 * 0.00186 * 4 mm wider at 12 %, which is six points into eight.
    expect(curve(spec)[30]).toEqual([close(12), close(1000 + 7.3 + 3.72)]);
  });
});

describe('a year', () => {
  const year = (climate: readonly string[]) =>
    seasonalMovement({ width: '1000 mm', thickness: '40 mm', timber: 'white oak', lag: '0 s', climate })
      .chart;
  it('draws air and wood above and the width below, widest and narrowest named', () => {
    const spec = year([6, 7, 8, 9, 10, 11, 13, 12, 11, 10, 9, 8].map((m) => `${m} %`));
    const drawn = lines(spec);
    expect(drawn.get('what the air asks for')?.[6]).toEqual([7, close(13)]);
    expect(drawn.get('moisture of the wood')?.[0]).toEqual([1, close(6)]);
    expect(drawn.get('width')?.[0]).toEqual([1, close(1000 - 3.5 * 3.65)]);
    expect(drawn.get('width')?.map(([x]) => x)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(text(spec)).toContain('widest 1012.8 mm');
    expect(text(spec)).toContain('narrowest 987.2 mm');
    expect(text(spec)).toContain('The year in 1000 mm of white oak, flat-sawn');
  });
  it('names neither where the width stays', () => {
    const spec = year(Array.from({ length: 12 }, () => '9 %'));
    expect(text(spec)).not.toContain('widest');
  });
  it('writes months along each line of values, and along nothing else', () => {
    const spec = year([6, 7, 8, 9, 10, 11, 13, 12, 11, 10, 9, 8].map((m) => `${m} %`)) as unknown as {
      vconcat: { layer: { encoding?: { x?: { field?: string; axis?: { labelExpr?: string } } } }[] }[];
    };
    const panels = spec.vconcat.flatMap((p) => p.layer);
    for (const l of panels)
      expect(l.encoding?.x?.axis?.labelExpr !== undefined).toBe(l.encoding?.x?.field === 'x');
    expect(panels.some((l) => l.encoding?.x?.axis?.labelExpr?.startsWith('["Jan","Feb"'))).toBe(true);
    expect(panels.some((l) => l.encoding?.x?.field === undefined)).toBe(true);
  });
});

describe('density at several moistures', () => {
  const bars = (given: object) =>
    dataOf(woodDensity(given as never).chart, 'none').map((b) => [
      b['name'],
      b['value'],
      b['chosen'],
      b['low'],
    ]);
  it('stand in order, the one asked for among them and marked', () => {
    const rows = bars({ timber: 'white oak', moisture: '15 %' });
    expect(rows.map(([name]) => name)).toEqual(
      ['0', '8', '12', '15', '20', '30', '60'].map((m) => `${m} % moisture`),
    );
    expect(rows.map(([, , chosen]) => chosen)).toEqual([false, false, false, true, false, false, false]);
    // Green at 30 and 60 %: 600 kg/m³ of wood and its water.
    expect(rows[5]?.[1]).toEqual(close(780));
    expect(rows[6]?.[1]).toEqual(close(960));
    expect(rows[3]?.[1]).toEqual(close((1150 * 0.6) / (1 - 0.163 * 0.5)));
    expect(rows.map(([, , , low]) => low)).toEqual(rows.map(() => undefined));
    expect(text(woodDensity({ timber: 'white oak', moisture: '60 %' }).chart)).toContain('"960 kg/m³"');
  });
  it('leave out what is nearer than half a point', () => {
    const names = (moisture: string) => bars({ timber: 'white oak', moisture }).map(([name]) => name);
    expect(names('12 %')).toHaveLength(6);
    expect(names('12.5 %')).not.toContain('12 % moisture');
    expect(names('12.6 %')).toContain('12 % moisture');
    expect(names('12.6 %')).toContain('12.6 % moisture');
    expect(names('11.4 %')).toContain('12 % moisture');
  });
  it('show the range of a group', () => {
    const rows = bars({ timber: 'unknown hardwood' });
    for (const [, value, , low] of rows) expect(low as number).toBeLessThan(value as number);
    expect(text(woodDensity({ timber: 'unknown hardwood' }).chart)).toContain(
      'Density at several moistures: unknown hardwood',
    );
  });
  it('are drawn of a gravity that is known green or ovendry, and not of one at one moisture', () => {
    expect(woodDensity({ specificGravity: 0.5 }).chart).toBeUndefined();
    for (const gravityBasis of ['green', 'ovendry'] as const) {
      const spec = woodDensity({ specificGravity: 0.5, gravityBasis }).chart;
      expect(text(spec)).toContain('"Density at several moistures"');
      expect(dataOf(spec, 'none')).toHaveLength(6);
    }
    expect(woodDensity({ timber: 'white oak' }).chart).toBeDefined();
  });
});

describe('a board that cups', () => {
  const board = (more: object) =>
    cupDepth({
      width: '200 mm',
      timber: 'white oak',
      ringRadius: '185 mm',
      from: '12 %',
      to: '8 %',
      ...more,
    }).chart;
  const outline = (spec: unknown) => outlines(spec)[0] ?? [];
  it('lifts its edges as it dries, drawn fifty times as deep at most: 0.2 mm as 10', () => {
    const spec = board({});
    expect(outline(spec)[0]).toEqual([close(-100), close(10)]);
    expect(outline(spec)[20]).toEqual([close(0), close(0)]);
    expect(outline(spec)[40]).toEqual([close(100), close(10)]);
    // 28 mm thick: a seventh of its width.
    expect(outline(spec)[41]).toEqual([close(100), close(38)]);
    expect(text(spec)).toContain('Cup of 0.2 mm, drawn 50 times as deep: the bark side goes hollow.');
  });
  it('drops them as it takes up moisture', () => {
    const spec = board({ from: '8 %', to: '12 %' });
    expect(outline(spec)[0]).toEqual([close(-100), close(-10)]);
    expect(text(spec)).toContain('the heart side goes hollow.');
  });
  it('as deep as it is where that can be seen', () => {
    // 400 mm over rings of 200 mm, from 30 to 0 %: green shrinkage to 14 % and below 6 %, coefficients between leave 0.8954 and
    // 0.9450 of the size. The difference of 4.95 % of 400² / 1600 is 4.95 mm.
    const spec = board({ width: '400 mm', ringRadius: '200 mm', from: '30 %', to: '0 %' });
    expect(text(spec)).toMatch(/Cup of 5\.0 mm, drawn [67] times as deep/);
    const deep = board({ width: '60 mm', ringRadius: '30 mm', from: '30 %', to: '0 %' });
    // 0.743 mm in 60 mm; an eighth of a tenth of the width is 4.8 mm.
    expect(text(deep)).toMatch(/Cup of 0\.7 mm, drawn [67] times as deep/);
  });
  it('flat where nothing moves', () => {
    const spec = board({ to: '12 %' });
    expect(
      outline(spec)
        .slice(0, 41)
        .every(([, y]) => Math.abs(y) < 1e-9),
    ).toBe(true);
    expect(text(spec)).toContain('Cup of 0.0 mm: neither.');
  });
  it('holds rings about the pith below it, inside the board', () => {
    // Rings a quarter, a half and three quarters up a board of 28 mm over 185 mm: 7, 14 and 21 mm in its middle.
    const rings = outlines(board({ to: '12 %' })).slice(1);
    expect(rings).toHaveLength(3);
    expect(rings.map((r) => Math.max(...r.map(([, y]) => y)))).toEqual([close(7), close(14), close(21)]);
    for (const r of rings) for (const [, y] of r) expect(y).toBeGreaterThan(0);
    // A ring of 192 mm leaves the board where it has fallen by 7 mm: sqrt(192² - 185²) = 51.4 mm out.
    const low = rings[0]?.map(([x]) => x) ?? [];
    expect(Math.max(...low)).toBeCloseTo(50, 9);
    // Round a pith near the board no ring stays in it.
    expect(outlines(board({ width: '400 mm', ringRadius: '200 mm', to: '12 %' })).length).toBeGreaterThan(1);
  });
});

describe('slots in plan', () => {
  const plan = (more: object) =>
    fixingSlots({
      width: '640 mm',
      movement: '16 mm',
      fastenerDiameter: '5 mm',
      margin: '1 mm',
      ...more,
    }).chart;
  it('are drawn larger and say so: 15 mm ten times is too large, so eight', () => {
    const spec = plan({ positions: ['0 mm', '320 mm', '600 mm'] });
    expect(text(spec)).toContain('Slots drawn 8 times their size; length and travel in mm.');
    expect(rectangles(spec)).toContainEqual([close(-60), close(128 - 20), close(60), close(128 + 20)]);
    for (const words of ['"15.0 mm"', '"5.0 mm"', '"14.0 mm"', '"travel 8.0"', '"640 mm across the grain"'])
      expect(text(spec)).toContain(words);
  });
  it('of a narrow top are as large as they are', () => {
    const spec = plan({ width: '40 mm', movement: '4 mm', positions: ['10 mm', '20 mm', '30 mm'] });
    expect(text(spec)).toContain('"Length and travel in mm."');
    expect(rectangles(spec)).toContainEqual([close(6), close(5.5), close(14), close(10.5)]);
  });
  it('say on which side of the line there is room for words', () => {
    const side = (fixedAt: string) => text(plan({ positions: ['320 mm'], fixedAt }));
    const aligned = (fixedAt: string): string | undefined =>
      /"align":"(\w+)"[^{}]*\}(?:(?!"align").)*held here|held here(?:(?!held here).)*?"align":"(\w+)"/
        .exec(side(fixedAt))
        ?.slice(1)
        .find((x) => Boolean(x));
    expect(aligned('edge')).toBe('left');
    expect(aligned('640 mm')).toBe('right');
    expect(aligned('320 mm')).toBe('center');
  });
  it('of many stand alternately in two rows, the shortest and the longest labelled', () => {
    const spec = plan({ spacing: '50 mm', edgeDistance: '20 mm' });
    const labels = text(spec).match(/"travel [\d.]+"/g) ?? [];
    expect(new Set(labels)).toEqual(new Set(['"travel 0.0"', '"travel 7.5"']));
    const middles = rectangles(spec)
      .slice(1)
      .map(([, y, , y2]) => Number(((y + y2) / 2).toFixed(6)));
    expect(middles.slice(0, 4)).toEqual([158.72, 97.28, 158.72, 97.28]);
    const few = rectangles(plan({ positions: ['100 mm', '200 mm'] })).slice(1);
    expect(few.map(([, y, , y2]) => (y + y2) / 2)).toEqual([close(128), close(128)]);
  });
});

describe('a top held hard', () => {
  it('draws its stress beside its strength, in its sense', () => {
    const dry = restraintStress({ width: '640 mm', timber: 'white oak', from: '12 %', to: '8 %' });
    const bars = dataOf(dry.chart, 'none').map((b) => [b['name'], b['value'], b['chosen']]);
    expect(bars).toEqual([
      ['if held hard', close(0.072 * 1.78e6 * 0.0146 * 0.006894757293), true],
      ['splits', close(800 * 0.006894757293), false],
    ]);
    expect(text(dry.chart)).toContain('Tension across the grain');
    expect(text(dry.chart)).toContain('"12.90 MPa"');
    expect(text(dry.chart)).toContain('"5.52 MPa"');
    const wet = restraintStress({ width: '640 mm', timber: 'white oak', from: '8 %', to: '12 %' });
    expect(text(wet.chart)).toContain('Compression across the grain');
    expect(dataOf(wet.chart, 'none')[1]?.['name']).toBe('begins to crush');
  });
});
