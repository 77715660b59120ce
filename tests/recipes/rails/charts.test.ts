import { describe, expect, it } from 'vitest';
import { textWidth } from '../../../src/charts/text-width.js';
import { beam } from '../../../src/recipes/rails/beam.js';
import { rackingFrame } from '../../../src/recipes/rails/racking-frame.js';
import { railSpan } from '../../../src/recipes/rails/rail-span.js';
import { tipping } from '../../../src/recipes/rails/tipping.js';
import { topSag } from '../../../src/recipes/rails/top-sag.js';

type Row = Readonly<Record<string, unknown>>;
/** Every row of data in a chart, wherever it stands. */
function rowsIn(part: unknown): Row[] {
  if (Array.isArray(part)) return part.flatMap(rowsIn);
  if (typeof part !== 'object' || part === null) return [];
  const { data, ...rest } = part as { data?: { values?: Row[] } };
  return [...(data?.values ?? []), ...Object.values(rest).flatMap(rowsIn)];
}
const labelsIn = (part: unknown): string[] => [
  ...new Set(rowsIn(part).flatMap((r) => [r.label, r.text].filter((t) => typeof t === 'string'))),
];

interface Panel {
  readonly layer: readonly {
    readonly data: { readonly values: readonly Row[] };
    readonly mark: Row;
    readonly encoding: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  }[];
}
const panelsOf = (r: { chart?: unknown }): Panel[] => (r.chart as { vconcat: Panel[] }).vconcat;
const domainOf = (p: Panel) => (p.layer[0]!.encoding.y!.scale as { domain: number[] }).domain;

const simple = {
  length: '2 m',
  supports: ['0 m', '2 m'],
  section: '45 x 95 mm',
  modulus: '9 GPa',
  long: 'no creep' as string | number,
};

describe('shear, moment and sag under the load', () => {
  const panels = () => panelsOf(beam({ ...simple, loads: ['4 kN at 1 m'] })) as [Panel, Panel, Panel, Panel];
  it('4 kN in the middle of 2 m: from 2 to -2 kN, 2 kN m, each drawn from end to end', () => {
    const [, shear, moment] = panels();
    const values = shear.layer[0]!.data.values;
    expect(values[0]).toMatchObject({ x: 0, y: expect.closeTo(2, 9) as number, zero: 0 });
    expect(values[values.length - 1]).toMatchObject({ x: 2000, y: expect.closeTo(-2, 9) as number });
    // Two stretches of 80 steps, both ends of each.
    expect(values).toHaveLength(162);
    expect(values.map((v) => v.order)).toEqual(values.map((_, i) => i));
    const steps = values.slice(1, 81).map((v, i) => (v.x as number) - (values[i]!.x as number));
    for (const step of steps) expect(step).toBeCloseTo(12.5, 9);
    expect(values.slice(0, 81).every((v) => Math.abs((v.y as number) - 2) < 1e-9)).toBe(true);
    expect(moment.layer[0]!.data.values[80]).toMatchObject({ x: 1000, y: expect.closeTo(2, 9) as number });
  });
  it('marks the worst with its place', () => {
    const [picture, shear, moment, sag] = panels();
    expect(labelsIn(shear)).toEqual(['2 kN at 0 mm']);
    expect(labelsIn(moment)).toEqual(['2 kN·m at 1000 mm']);
    // P L³/(48 E I): 4000 × 8/(48 × 9e9 × 45 × 95³/12).
    expect(labelsIn(sag)).toEqual(['23 mm at 1000 mm']);
    expect(labelsIn(picture)).toEqual(['4 kN', '2 kN']);
  });
  it('draws the sag in the long run, a station each 160th of the length however long, and marks the peak on the curve', () => {
    const [, shear, , sag] = panelsOf(
      beam({ ...simple, length: '4 m', supports: ['0 m', '4 m'], loads: ['100 N/m'], long: 2 }),
    ) as [Panel, Panel, Panel, Panel];
    // Once 5 w L⁴/(384 E I) and as much again.
    const long = ((2 * 5 * 100 * 4 ** 4) / (384 * 9e9 * ((0.045 * 0.095 ** 3) / 12))) * 1000;
    const values = sag.layer[0]!.data.values;
    expect(values).toHaveLength(161);
    expect(values[80]).toMatchObject({ x: 2000, y: expect.closeTo(long, 6) as number });
    const marks = (p: Panel) =>
      p.layer.flatMap((l) => l.data.values.filter((v) => typeof v.label === 'string'));
    for (const m of marks(sag)) {
      expect(m.x).toBeCloseTo(2000, 3);
      expect(m.y).toBeCloseTo(long, 6);
    }
    // Its words may stand aside, so that they are not cut off; the dot stands where it belongs.
    for (const m of marks(shear)) expect(m.y).toBeCloseTo(200, 6);
    expect(Math.min(...marks(shear).map((m) => m.x as number))).toBe(0);
    expect([marks(sag).length > 0, marks(shear).length > 0]).toEqual([true, true]);
  });
  it('leaves room past the curve where it goes, and a little where it does not', () => {
    const [, shear, moment] = panels();
    expect(domainOf(shear)[0]).toBeCloseTo(-2 - 4 * 0.36, 9);
    expect(domainOf(shear)[1]).toBeCloseTo(2 + 4 * 0.36, 9);
    expect(domainOf(moment)[0]).toBeCloseTo(-2 * 0.36 * 0.3, 9);
    expect(domainOf(moment)[1]).toBeCloseTo(2 * 1.36, 9);
    const up = panelsOf(beam({ ...simple, loads: ['-4 kN at 1 m'] }))[2]!;
    expect(domainOf(up)[0]).toBeCloseTo(-2 * 1.36, 9);
    expect(domainOf(up)[1]).toBeCloseTo(2 * 0.36 * 0.3, 9);
    expect(domainOf(panelsOf(beam({ ...simple, loads: ['0 N/m'] }))[1]!)).toEqual([
      expect.closeTo(-0.36 * 0.3, 9),
      expect.closeTo(0.36 * 0.3, 9),
    ]);
  });
  it('goes over to kN and kN m at two thousand', () => {
    const titles = (loads: string[]) =>
      panelsOf(beam({ ...simple, loads }))
        .slice(1, 3)
        .map((p) => p.layer[0]!.encoding.y!.title);
    expect(titles(['4 kN at 1 m'])).toEqual(['Shear (kN)', 'Moment (kN·m)']);
    expect(titles(['3.999 kN at 1 m'])).toEqual(['Shear (N)', 'Moment (N·m)']);
    expect(titles(['-4 kN at 1 m'])).toEqual(['Shear (kN)', 'Moment (kN·m)']);
  });
  it('writes the worst outside the curve: under a sagging moment, over a hogging one', () => {
    const place = (p: Panel) =>
      p.layer
        .map((l) => l.mark)
        .filter((m) => m.type === 'text')
        .map((m) => m.baseline);
    const [, shear, moment] = panels();
    expect(new Set(place(moment))).toEqual(new Set(['top']));
    expect(new Set(place(shear))).toEqual(new Set(['bottom']));
    expect(new Set(place(panelsOf(beam({ ...simple, loads: ['-4 kN at 1 m'] }))[2]!))).toEqual(
      new Set(['bottom']),
    );
  });
  it('sets those words seven px away, outward, and under the line where there is nothing', () => {
    const away = (p: Panel) =>
      new Set(
        p.layer.flatMap((l) =>
          l.mark.type === 'text' ? [`${String(l.mark.baseline)} ${String(l.mark.dy)}`] : [],
        ),
      );
    const [, shear, moment] = panels();
    expect([away(moment), away(shear)]).toEqual([new Set(['top 7']), new Set(['bottom -7'])]);
    const nothing = panelsOf(beam({ ...simple, loads: ['0 N/m'] }));
    expect([away(nothing[2]!), away(nothing[1]!)]).toEqual([new Set(['top 7']), new Set(['bottom -7'])]);
  });
  it('names the places along the beam once, under the lowest curve', () => {
    const axes = panels()
      .slice(1)
      .map((p) => (p.layer[0]!.encoding.x!.axis as { title: unknown }).title);
    expect(axes).toEqual([null, null, 'From the left end (mm)']);
  });
  it('writes three digits of small figures, all of large ones', () => {
    const at = panelsOf(
      beam({ ...simple, length: '20 m', supports: ['0 m', '20 m'], loads: ['1234.56 N at 12.345 m'] }),
    );
    // Shear 1234.56 × 12.345/20 right of the load; moment 1234.56 × 12.345 × 7.655/20 N m.
    expect(labelsIn(at[1])).toEqual(['−762 N at 12345 mm']);
    expect(labelsIn(at[2])).toEqual(['5.83 kN·m at 12345 mm']);
  });
  it('keeps its words inside the picture, at either end', () => {
    for (const supports of [['fixed 0 m'], ['fixed 2 m']]) {
      const at = supports[0] === 'fixed 0 m' ? '2 m' : '0 m';
      for (const p of panelsOf(beam({ ...simple, supports, loads: [`100 N at ${at}`] })).slice(1)) {
        const text = p.layer.find((l) => l.mark.type === 'text')!;
        const [row] = text.data.values as readonly { x: number; label: string }[];
        const half = ((textWidth(row!.label, 12, true) / 2) * 2120) / 560;
        expect(row!.x - half).toBeGreaterThanOrEqual(-60 - 1e-9);
        expect(row!.x + half).toBeLessThanOrEqual(2060 + 1e-9);
        // Not further in than it must be.
        if (row!.x < 900) expect(row!.x - half).toBeCloseTo(-60, 6);
        if (row!.x > 1100) expect(row!.x + half).toBeCloseTo(2060, 6);
      }
    }
  });
  it('draws the sag in the long run, and says so', () => {
    const r = beam({ ...simple, loads: ['4 kN at 1 m'], long: 2 });
    expect(labelsIn(panelsOf(r)[3])).toEqual(['46.1 mm at 1000 mm']);
    expect(JSON.stringify((r.chart as { title: unknown }).title)).toMatch(/sag in the long run/);
    expect(JSON.stringify(beam({ ...simple, loads: ['4 kN at 1 m'] }).chart!.title)).not.toMatch(/long run/);
  });
});

describe('the picture of the loads', () => {
  const pictureOf = (more: object) => panelsOf(beam({ ...simple, loads: ['1 N/m'], ...more }))[0]!;
  it('names loads down and up, spread ones even or growing, and moments by the way they turn', () => {
    const p = pictureOf({
      loads: [
        '100 N at 0.5 m',
        '-60 N at 1.5 m',
        '200 N/m from 0 m to 1 m',
        { from: '1 m', to: '2 m', load: '10 N/m', loadTo: '30 N/m' },
        '5 N m at 0.2 m',
        '-7 N m at 1.8 m',
        '0 N at 1 m',
      ],
    });
    expect(labelsIn(p)).toEqual(
      expect.arrayContaining(['100 N', '60 N', '200 N/m', '10 N/m to 30 N/m', '5 N·m', '7 N·m']),
    );
    expect(labelsIn(p)).not.toContain('0 N');
    const rows = rowsIn(p);
    expect(rows.filter((r) => 'sign' in r).map((r) => r.sign)).toEqual(['↻', '↺']);
    // An arrow down ends on the beam, one up comes from it.
    const arrows = rows.filter((r) => 'y2' in r && !('top' in r) && r.x !== undefined);
    expect(arrows.map((r) => [r.x, (r.y as number) > (r.y2 as number)])).toEqual([
      [500, true],
      [1500, false],
    ]);
    expect(rows.filter((r) => 'turn' in r).map((r) => r.turn)).toEqual([180, 0]);
  });
  it('draws each kind of support by its own sign, with what it carries', () => {
    const p = pictureOf({ supports: ['fixed 0 m', { position: '1 m', stiffness: '50 N/mm' }, '2 m'] });
    expect(rowsIn(p).flatMap((r) => ('shape' in r ? [r.shape] : []))).toEqual([
      'square',
      'diamond',
      'triangle-up',
    ]);
    expect(labelsIn(p).some((t) => /N, .*N·m/.test(t))).toBe(true);
  });
  it('lifts every other of labels that would run together', () => {
    const heights = (loads: string[]) => {
      const rows = rowsIn(pictureOf({ loads }));
      return loads.map((l) => rows.find((r) => r.label === l.split(' at')[0])!.y);
    };
    const [a, b, c] = heights(['101 N at 1 m', '102 N at 1.01 m', '103 N at 1.02 m']);
    expect(a).toBe(c);
    expect(b).toBeGreaterThan(a as number);
    expect(new Set(heights(['101 N at 0.2 m', '102 N at 1 m', '103 N at 1.8 m'])).size).toBe(1);
  });
  it('sets the words of a spread load clear of arrows, in its middle where none is clear', () => {
    const wordAt = (loads: string[]) => rowsIn(pictureOf({ loads })).find((r) => r.label === '200 N/m')!.x;
    expect(wordAt(['200 N/m'])).toBe(1000);
    expect(wordAt(['200 N/m', '5 N at 1 m'])).toBe(500);
    expect(wordAt(['200 N/m', ...Array.from({ length: 21 }, (_, i) => `5 N at ${i / 10} m`)])).toBe(1000);
  });
});

describe('the other pictures', () => {
  it('a top is drawn in its worst case', () => {
    const r = topSag({
      length: '2 m',
      width: '0.5 m',
      thickness: '40 mm',
      supports: ['0 m', '1.5 m'],
      load: '0 kPa',
      edgeLoad: '600 N',
      modulus: '10 GPa',
      ownWeight: false,
      long: 'no creep',
    });
    // The load on the end, 0.25 × 600 × 2/(3 × 26667) = 3.75 mm.
    expect(labelsIn(panelsOf(r)[3])).toEqual(['3.75 mm at 2000 mm']);
    const heavy = topSag({
      length: '2 m',
      width: '0.5 m',
      thickness: '40 mm',
      supports: ['0 m', '2 m'],
      load: '0 kPa',
      edgeLoad: '600 N',
      modulus: '10 GPa',
      ownWeight: false,
      long: 2,
    });
    // 600 × 8/(48 × 26667) = 3.75 mm, and as much again.
    expect(labelsIn(panelsOf(heavy)[3])).toEqual(['7.5 mm at 1000 mm']);
  });
  it('span against depth, beside other timbers but never beside itself', () => {
    const names = (more: object) => [
      ...new Set(
        rowsIn(railSpan({ section: '45 x 95 mm', load: '450 N/m', ...more }).chart).flatMap((r) =>
          typeof r.series === 'string' ? [r.series] : [],
        ),
      ),
    ];
    expect(names({})).toEqual(['unknown softwood', 'white oak', 'C24', 'C16']);
    expect(names({ grade: 'C24' })).toEqual(['C24', 'white oak', 'C16', 'unknown softwood']);
    expect(names({ timber: 'spotted gum' })).toEqual(
      ['Spotted gum', 'white oak', 'C24', 'C16'].map((n, i) =>
        i === 0 ? (expect.stringMatching(/spotted gum/i) as string) : n,
      ),
    );
    expect(names({ modulus: '9 GPa' })).toEqual([
      'the timber of the modulus given',
      'white oak',
      'C24',
      'C16',
    ]);
    // A dot of its own beside 37 points on each of four lines.
    const dots = rowsIn(railSpan(railSpan.example).chart).filter((r) => r.x === 95 && !('series' in r));
    expect(dots.length).toBeGreaterThan(0);
    for (const dot of dots) expect(dot.y).toBeCloseTo(railSpan(railSpan.example).span.in('mm'), 6);
  });
  it('span against depth runs from 0.4 to twice the depth, in mm', () => {
    const chart = railSpan({
      section: '45 x 95 mm',
      load: '450 N/m',
      modulus: '9 GPa',
      long: 'no creep',
    }).chart;
    const line = rowsIn(chart).filter((r) => r.series === 'the timber of the modulus given');
    expect(line).toHaveLength(37);
    const of = (depth: number) =>
      railSpan({ section: `45 x ${depth} mm`, load: '450 N/m', modulus: '9 GPa', long: 'no creep' }).span.in(
        'mm',
      );
    for (const [i, depth] of [
      [0, 38],
      [9, 76],
      [36, 190],
    ] as const) {
      expect(line[i]!.x).toBeCloseTo(depth, 9);
      expect(line[i]!.y).toBeCloseTo(of(depth), 6);
    }
    expect(JSON.stringify((chart as { title: unknown }).title)).toMatch(/Rail 45 mm wide, 450 N\/m/);
  });
  it('a frame as its corners are made', () => {
    const titleOf = (more: object) =>
      JSON.stringify((rackingFrame({ ...rackingFrame.example, ...more }).chart as { title: unknown }).title);
    expect(titleOf({ joint: 'braced' })).toMatch(/braced corners/);
    expect(titleOf({ joint: 'screwed half lap' })).toMatch(/screwed half lap corners/);
    expect(titleOf({ jointStiffness: '5 kN m/rad' })).toMatch(/corners as given/);
    const lines = (joint: string) =>
      rowsIn(rackingFrame({ ...rackingFrame.example, joint } as never).chart).length;
    expect(lines('braced')).toBeGreaterThan(lines('stiff'));
  });
  it('a piece that tips forward is pushed from behind, one that tips backward from the front', () => {
    const of = (position: string, more: object = {}) =>
      tipping({
        parts: [{ mass: '40 kg', position }],
        base: '480 mm',
        overhang: '100 mm',
        backOverhang: '50 mm',
        edgeLoad: '100 N',
        push: '20 N',
        ...more,
      });
    const placeOf = (r: { chart?: unknown }, text: string) =>
      rowsIn(r.chart).find((row) => row.label === text)!.x as number;
    expect(placeOf(of('150 mm'), '20 N')).toBeGreaterThan(530);
    expect(placeOf(of('150 mm'), '100 N')).toBe(-100);
    expect(placeOf(of('400 mm'), '20 N')).toBeLessThan(-100);
    expect(placeOf(of('400 mm'), '100 N')).toBe(530);
    const bare = labelsIn(of('150 mm', { edgeLoad: '0 N', push: '0 N', overhang: '0 mm' }).chart);
    expect(bare.filter((t) => / N$/.test(t))).toEqual([]);
    expect(bare).not.toContain('0 mm');
    expect(labelsIn(of('150 mm').chart)).toEqual(expect.arrayContaining(['150 mm', '480 mm', '100 mm']));
    // The weight is written beside its arrow, away from the nearer legs.
    const weight = (r: { chart?: unknown }) => JSON.stringify(r.chart).match(/"align":"(left|right)"/g)!;
    expect(weight(of('150 mm', { push: '0 N' })).every((a) => a.includes('left'))).toBe(true);
    expect(weight(of('400 mm', { push: '0 N' })).every((a) => a.includes('right'))).toBe(true);
    expect(JSON.stringify(of('150 mm').chart!.title)).toMatch(/Stands; the line of the weight falls/);
    expect(JSON.stringify(of('400 mm').chart!.title)).toMatch(/Tips in at least one/);
  });
});
