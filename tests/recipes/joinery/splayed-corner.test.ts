import { describe, expect, it } from 'vitest';
import { splayedCorner } from '../../../src/recipes/joinery/splayed-corner.js';
import { fieldsOf } from '../refused.js';
import { hasOutline, text } from '../drawn-shapes.js';

describe('splayedCorner', () => {
  it('of four upright sides turns a right angle; of six at 30° it turns 180° - 2 asin(1/4)', () => {
    expect(splayedCorner({ sides: 4, slope: '90 deg' }).between.in('deg')).toBeCloseTo(90, 9);
    // sin 30° sin 30° is a quarter, whose arc sine is 14.477 512°.
    expect(splayedCorner({ sides: 6, slope: '30 deg' }).between.in('deg')).toBeCloseTo(151.044976, 6);
  });

  it('leans by 30° from upright at a slope of 60°', () => {
    expect(splayedCorner({ sides: 6, slope: '60 deg' }).lean.in('deg')).toBeCloseTo(30, 9);
  });

  it('refuses two sides and a slope past upright, both at once', () => {
    expect(fieldsOf(() => splayedCorner({ sides: 2, slope: '91 deg' }))).toEqual(['sides', 'slope']);
  });

  it('draws a flat side of four with a mitre of 45° and no bevel', () => {
    const { chart } = splayedCorner({ sides: 4, slope: '0 deg' });
    expect(hasOutline(chart, [[0, 0], [320, 0], [220, 100], [100, 100]])).toBe(true); // prettier-ignore
    expect(text(chart)).toContain('mitre 45.00°');
    expect(text(chart)).toContain('bevel 0.00°');
  });

  it('draws an upright side of four with no mitre and a bevel of 45° across 30 mm', () => {
    const { chart } = splayedCorner({ sides: 4, slope: '90 deg' });
    expect(hasOutline(chart, [[0, 0], [320, 0], [320, 100], [0, 100]])).toBe(true); // prettier-ignore
    expect(hasOutline(chart, [[450, 30], [590, 30], [590, 60], [480, 60]])).toBe(true); // prettier-ignore
  });
});
