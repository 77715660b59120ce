import { describe, expect, it } from 'vitest';
import { drawing } from '../../src/charts/drawing.js';
import { letteredSketch } from '../../src/engine/lettered-sketch.js';
import type { ChartSpec } from '../../src/charts/chart-spec.js';

const board = (...texts: readonly string[]): ChartSpec =>
  drawing({
    title: 'Board of 200 mm',
    shapes: texts.map((text, i) => ({ kind: 'dimension', from: [0, i * 50], to: [200, i * 50], text })),
  });
const value = (name: string, metric: string) => ({ name, label: `the ${name}`, metric, inch: '' });
const labels = (spec: ChartSpec): string[] =>
  [...JSON.stringify(spec).matchAll(/"label":"([^"]*)"/g)].map(([, text]) => text as string);

describe('a lettered sketch', () => {
  it('has letters in the place of the measures that the example gives, and a list of them', () => {
    const sketch = letteredSketch(board('200 mm', 'mitre 16.10°', '200.0 mm', '7 knots'), [
      value('width', '200 mm'),
      value('mitre', '16.104°'),
      value('timber', '7'),
    ]);
    expect(new Set(labels(sketch!.spec))).toEqual(new Set(['A', 'mitre B', '7 knots']));
    expect(sketch!.letters).toEqual([
      { letter: 'A', name: 'width', label: 'the width' },
      { letter: 'B', name: 'mitre', label: 'the mitre' },
    ]);
    expect(JSON.stringify(sketch!.spec)).not.toContain('Board of 200 mm');
  });

  it('leaves a measure that could be either of two values', () => {
    const spec = board('45 mm', '90 mm');
    const sketch = letteredSketch(spec, [
      value('width', '45 mm'),
      value('thickness', '45 mm'),
      value('length', '90 mm'),
    ]);
    expect(new Set(labels(sketch!.spec))).toEqual(new Set(['45 mm', 'A']));
    expect(letteredSketch(spec, [value('mass', '45 kg')])).toBeUndefined();
  });

  it('takes no letter that the drawing uses itself', () => {
    const sketch = letteredSketch(board('A 1444.0', 'B', '200 mm'), [value('width', '200 mm')]);
    expect(sketch!.letters.map(({ letter }) => letter)).toEqual(['C']);
  });

  it('is made of drawings alone, not of charts with axes', () => {
    const chart: ChartSpec = { data: { values: [{ label: '200 mm' }] }, mark: 'point', encoding: {} };
    expect(letteredSketch(chart, [value('width', '200 mm')])).toBeUndefined();
    expect(letteredSketch(undefined, [])).toBeUndefined();
  });
});
