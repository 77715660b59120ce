import { describe, expect, it } from 'vitest';
import { barChart, histogram } from '../../src/charts/bar-chart.js';
import { drawing } from '../../src/charts/drawing.js';
import { lineChart } from '../../src/charts/line-chart.js';
import { renderSvg } from '../../src/charts/svg.js';
import { timeline } from '../../src/charts/timeline.js';
import type { ChartSpec } from '../../src/charts/chart-spec.js';
import { marksIn, sizeOf, wordsIn } from './svg-text.js';

const xs = [6, 8, 10, 12, 14];
const lines = lineChart({
  title: 'Width of a counter top as its moisture content changes through the seasons of the year',
  x: { title: 'Moisture content', unit: '%', values: xs },
  y: { title: 'Width', unit: 'mm' },
  series: [
    { name: 'flat-sawn', values: [630, 632, 634, 636, 638] },
    { name: 'quarter-sawn', values: [632, 633, 634, 635, 636] },
    {
      name: 'a timber with a very long name of its own (unknown hardwood, middle of its range)',
      values: [631, 632.5, 634, 635.5, 637],
    },
  ],
  bands: [{ name: 'range', low: [629, 631, 633, 635, 636], high: [633, 634, 635, 637, 640] }],
  marks: [
    { x: 6, y: 630, label: 'driest: 630.0 mm' },
    { x: 14, y: 638, label: 'dampest: 638.0 mm' },
  ],
  rules: [{ y: 637.5, label: 'what the frame allows' }],
});
const bars = barChart({
  of: '',
  value: { title: 'Timber lost', unit: 'mm' },
  bars: [
    { name: 'cup', value: 2.4, low: 1.8, high: 3, label: '2.4 mm' },
    { name: 'bow over the whole of a long board', value: 4.1, label: '4.1 mm (governs)', chosen: true },
  ],
});
const counts = histogram({
  value: { title: 'Gap', unit: 'mm' },
  values: [0, 0.1, 0.1, 0.2, 0.2, 0.2, 0.3, 0.3, 0.4],
  bins: 5,
  rules: [{ at: 0.2, label: 'middle' }],
});
const clock = timeline({
  unit: 'h',
  stretches: [
    { name: 'spread and close', start: 0, end: 0.4 },
    { name: 'in the clamps', start: 0.4, end: 4.4, waiting: true, note: '4 h' },
  ],
});
const plan = drawing({
  title: 'Plan',
  shapes: [
    { kind: 'rectangle', x: 0, y: 0, width: 2000, height: 600, label: 'top', hatch: 'grain' },
    { kind: 'rectangle', x: 0, y: 0, width: 600, height: 600, fill: 'none' },
    { kind: 'dimension', from: [0, 600], to: [2000, 600], text: '2000 mm', offset: 20 },
    { kind: 'dimension', from: [0, 0], to: [0, 600], text: '600 mm (23 5/8 in)', offset: 20 },
    { kind: 'text', x: 2000, y: 300, text: 'the end that is trimmed', align: 'left', dx: 6 },
  ],
});
const all: readonly (readonly [string, ChartSpec])[] = [
  ['lineChart', lines],
  ['barChart', bars],
  ['histogram', counts],
  ['timeline', clock],
  ['drawing', plan],
];

describe('every builder', () => {
  it.each(all)('%s draws nothing outside its view, in a legible size', async (_, spec) => {
    const svg = await renderSvg(spec);
    const { width, height } = sizeOf(svg);
    const words = wordsIn(svg);
    expect(words.length).toBeGreaterThan(2);
    for (const word of words) {
      expect(word.left, word.text).toBeGreaterThanOrEqual(-1);
      expect(word.right, word.text).toBeLessThanOrEqual(width + 1);
      expect(word.top, word.text).toBeGreaterThanOrEqual(-1);
      expect(word.bottom, word.text).toBeLessThanOrEqual(height + 1);
      expect(word.fontSize, word.text).toBeGreaterThanOrEqual(12);
      expect(word.font).toContain('DejaVu Sans');
    }
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
  });

  it.each(all)('%s gives the same bytes each time, and its ids are its own', async (_, spec) => {
    expect(await renderSvg(spec)).toBe(await renderSvg(spec));
    for (const [, id] of (await renderSvg(spec)).matchAll(/\bid="([^"]*)"/g))
      expect(id).toMatch(/^c[0-9a-z]+-/);
  });

  it.each(all)('%s fits a phone when asked to', async (_, spec) => {
    const { width } = sizeOf(await renderSvg(spec, { width: 360 }));
    if (spec !== plan) expect(width).toBeLessThanOrEqual(376);
  });
});

describe('lineChart', () => {
  it('draws one line a series, one point a value, one band and the marks', async () => {
    const svg = await renderSvg(lines);
    expect(marksIn(svg, 'line')).toBe(3);
    expect(marksIn(svg, 'symbol')).toBe(3 * xs.length + 2);
    expect(marksIn(svg, 'area')).toBe(1);
    expect(marksIn(svg, 'rule')).toBe(1);
  });
  it('tells series apart by dash and shape as well as by colour', async () => {
    const svg = await renderSvg(lines);
    const strokes = [
      ...svg.matchAll(
        /aria-roledescription="line mark"[^>]*?stroke="([^"]*)"[^>]*?(?:stroke-dasharray="([^"]*)")?[^>]*?>/g,
      ),
    ];
    expect(new Set(strokes.map((s) => s[1])).size).toBe(3);
    expect(
      new Set([...svg.matchAll(/stroke-dasharray="([^"]*)"/g)].map((s) => s[1])).size,
    ).toBeGreaterThanOrEqual(3);
  });
  it('shows in its legend the points as they stand on the lines, with no stroke that makes blots of them', async () => {
    const svg = await renderSvg(lines);
    const legend = [...svg.matchAll(/<g class="mark-symbol role-legend-symbol"[^>]*><path ([^>]*)>/g)].map(
      (m) => m[1] as string,
    );
    expect(legend).toHaveLength(3);
    for (const symbol of legend) expect(symbol).toContain('stroke-width="0"');
    expect(new Set(legend.map((symbol) => / d="([^"]*)"/.exec(symbol)?.[1])).size).toBe(3);
  });
  it('names the unit on both axes', async () => {
    const texts = wordsIn(await renderSvg(lines)).map((w) => w.text);
    expect(texts).toContain('Moisture content (%)');
    expect(texts).toContain('Width (mm)');
  });
  it('refuses lists of unequal length and values that are not finite, naming the field', () => {
    const base = { x: { title: 'x', values: [1, 2] }, y: { title: 'y' } };
    expect(() => lineChart({ ...base, series: [{ name: 'a', values: [1] }] })).toThrow(
      'series[0].values: has 1 values where x.values has 2',
    );
    expect(() => lineChart({ ...base, series: [{ name: 'a', values: [1, NaN] }] })).toThrow(
      'series[0].values[1]: got NaN',
    );
    expect(() => lineChart({ ...base, series: [], rules: [{ label: 'none' }] })).toThrow(
      'rules[0]: takes either x or y',
    );
  });
  it('leaves a gap where a value is null', async () => {
    const svg = await renderSvg(
      lineChart({
        x: { title: 'x', values: [1, 2, 3, 4, 5] },
        y: { title: 'y' },
        points: false,
        series: [{ name: 'a', values: [1, 2, null, 2, 1] }],
        interpolate: 'linear',
      }),
    );
    const path = /aria-roledescription="line mark"[^>]*? d="([^"]*)"/.exec(svg)?.[1] ?? '';
    expect(path.match(/M/g)?.length).toBe(2);
  });
});

describe('barChart and histogram', () => {
  it('draws one bar each', async () => {
    expect(marksIn(await renderSvg(bars), 'rect')).toBe(2);
    expect(marksIn(await renderSvg(counts), 'rect')).toBe(5);
  });
  it('shares of a histogram add up to 100 %', () => {
    const layer = (counts['layer'] as { data: { values: { share: number }[] } }[])[0];
    expect(layer?.data.values.reduce((sum, row) => sum + row.share, 0)).toBeCloseTo(100, 9);
  });
});

describe('drawing', () => {
  it('is true to scale: a square is square, and lengths keep their ratio', async () => {
    const svg = await renderSvg(plan);
    const boxes = [
      ...svg.matchAll(/aria-roledescription="rect mark"[^>]*? d="M[-\d.]+,[-\d.]+h([\d.]+)v([\d.]+)/g),
    ].map((m) => [Number(m[1]), Number(m[2])] as const);
    expect(boxes).toHaveLength(2);
    const [top, square] = boxes as [readonly [number, number], readonly [number, number]];
    expect(top[0] / top[1]).toBeCloseTo(2000 / 600, 2);
    expect(square[0]).toBeCloseTo(square[1], 0);
  });
  it('says so when heights are stretched', async () => {
    const words = wordsIn(
      await renderSvg(
        drawing({
          title: 'sag',
          stretch: 20,
          shapes: [
            {
              kind: 'polyline',
              points: [
                [0, 0],
                [1000, -5],
                [2000, 0],
              ],
            },
          ],
        }),
      ),
    );
    expect(words.map((w) => w.text).join(' ')).toContain('Heights drawn 20 times larger than their scale.');
  });
  it('dashes the rectangles that ask for it and no other, in their order', async () => {
    const box = { kind: 'rectangle', y: 0, width: 8, height: 10 } as const;
    const svg = await renderSvg(
      drawing({
        shapes: [
          { ...box, x: 0 },
          { ...box, x: 10, dashed: true },
          { ...box, x: 20, dashed: true, fill: 'none' },
          { ...box, x: 30, dashed: false },
        ],
      }),
    );
    const boxes = [...svg.matchAll(/aria-label="x: (\d+);[^>]*aria-roledescription="rect mark"([^>]*)>/g)];
    expect(boxes.map((b) => [b[1], /stroke-dasharray="([^"]*)"/.exec(b[2] as string)?.[1]])).toEqual([
      ['0', undefined],
      ['10', '5,4'],
      ['20', '5,4'],
      ['30', undefined],
    ]);
  });
  it('refuses a place that is not finite, and an empty picture', () => {
    expect(() => drawing({ shapes: [{ kind: 'circle', x: 0, y: NaN, radius: 5 }] })).toThrow(
      'shapes[0] (circle)',
    );
    expect(() => drawing({ shapes: [] })).toThrow('shapes: is empty');
  });
});

describe('renderSvg', () => {
  it('fetches nothing: an address is refused with the place it stands', async () => {
    await expect(
      renderSvg({ data: { url: 'https://example.org/a.csv' }, mark: 'bar', encoding: {} }),
    ).rejects.toThrow('chart.data.url');
  });
  it('gives a width to a chart that takes its container’s', async () => {
    const svg = await renderSvg({
      width: 'container',
      data: { values: [{ a: 1, b: 2 }] },
      mark: 'point',
      encoding: { x: { field: 'a', type: 'quantitative' }, y: { field: 'b', type: 'quantitative' } },
    });
    expect(sizeOf(svg).width).toBeGreaterThan(500);
  });
  it('says what is wrong with a chart that is none', async () => {
    await expect(renderSvg({ nonsense: true })).rejects.toThrow(/^chart: cannot be drawn/);
  });
  it('escapes hostile words', async () => {
    const svg = await renderSvg(
      barChart({
        of: '',
        value: { title: '<script>alert(1)</script>' },
        bars: [{ name: '"><img src=x onerror=alert(1)>', value: 1 }],
      }),
    );
    expect(svg).not.toMatch(/<script|<img/);
  });
});
