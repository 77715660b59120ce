// Pictures are to scale: their corners are laid out here by hand, in millimetres.
import { describe, expect, it } from 'vitest';
import { angledRail } from '../../../src/recipes/joinery/angled-rail.js';
import { biscuitSpacing } from '../../../src/recipes/joinery/biscuit-spacing.js';
import { halfLap } from '../../../src/recipes/joinery/half-lap.js';
import { jointFit } from '../../../src/recipes/joinery/joint-fit.js';
import { mitredEnd } from '../../../src/recipes/joinery/mitred-end.js';
import { splineSlot } from '../../../src/recipes/joinery/spline-slot.js';
import { squareness } from '../../../src/recipes/joinery/squareness.js';
import {
  areas,
  hasOutline,
  hasRectangle,
  lines,
  outlines,
  rectangles,
  scaleOf,
  text,
} from '../drawn-shapes.js';

describe('a rail that rises 3 in 4', () => {
  // Slope with cosine 0.8 and tangent 0.75, so a rail 40 mm deep meets the upright over 50 mm.
  const rail = (more: object) =>
    angledRail({ run: '1000 mm', rise: '750 mm', section: { width: '30 mm', depth: '40 mm' }, ...more })
      .chart;
  it('butted: from face to face between two uprights', () => {
    const spec = rail({});
    expect(
      hasOutline(spec, [
        [0, 0],
        [1000, 750],
        [1000, 800],
        [0, 50],
      ]),
    ).toBe(true);
    expect(outlines(spec)).toHaveLength(1);
    expect(rectangles(spec).map(([left, , right]) => [left, right])).toEqual([
      [-70, 0],
      [1000, 1070],
    ]);
    for (const words of ['"50.0 mm"', '1250.0 mm along each edge', '1000.0 mm between faces', '36.87°'])
      expect(text(spec)).toContain(words);
  });
  it('fitted to the page unless a template is asked for', () => {
    expect(text(rail({}))).not.toMatch(/full size/i);
    expect(scaleOf(rail({}))).toBeLessThan(1);
    // The words stand below the bar of a template.
    expect(text(rail({ picture: 'full size' }))).toMatch(
      /"align":"left","baseline":"middle","dx":0,"dy":14,/,
    );
  });
  it('let in by 12 mm: 9 mm lower at the bottom of the recess', () => {
    const spec = rail({ recessDepth: '12 mm' });
    expect(
      hasOutline(spec, [
        [-12, -9],
        [1012, 759],
        [1012, 809],
        [-12, 41],
      ]),
    ).toBe(true);
    expect(
      hasOutline(spec, [
        [0, 0],
        [-12, -9],
        [-12, 41],
        [0, 50],
      ]),
    ).toBe(true);
    // (1000 + 24) / 0.8
    expect(text(spec)).toContain('1280.0 mm along each edge');
  });
  it('is the same measured from middle to middle', () => {
    const spec = rail({ run: '1080 mm', rise: '810 mm', betweenFaces: 'no', uprightWidth: '80 mm' });
    expect(
      hasOutline(spec, [
        [0, 0],
        [1000, 750],
        [1000, 800],
        [0, 50],
      ]),
    ).toBe(true);
    expect(text(spec)).toContain('1000.0 mm between faces');
  });
  it('at full size: one upright with the recess, 96 px to the inch', () => {
    const spec = rail({ recessDepth: '12 mm', picture: 'full size' });
    expect(scaleOf(spec)).toBeCloseTo(96 / 25.4, 1);
    expect(
      hasOutline(spec, [
        [0, 0],
        [-12, -9],
        [-12, 41],
        [0, 50],
      ]),
    ).toBe(true);
    expect(rectangles(spec).map(([left, , right]) => [left, right])).toEqual([[-70, 0]]);
    for (const words of [
      '"50.0 mm"',
      '"12.0 mm"',
      'Full size: print at 100 %',
      '50 mm: check it with a rule',
    ])
      expect(text(spec)).toContain(words);
  });
  it('at full size and butted: the end of the rail against the upright', () => {
    const spec = rail({ picture: 'full size' });
    expect(
      hasOutline(spec, [
        [0, 0],
        [70, 52.5],
        [70, 102.5],
        [0, 50],
      ]),
    ).toBe(true);
  });
  it('carries a bar of 50 mm with a stroke each centimetre, 22 mm below the rest', () => {
    const spec = rail({ recessDepth: '12 mm', picture: 'full size' });
    const bottom = -9 - 60;
    const y = bottom - 22;
    expect(
      hasOutline(spec, [
        [-70, y],
        [-20, y],
      ]),
    ).toBe(true);
    for (const x of [0, 10, 20, 30, 40, 50])
      expect(
        hasOutline(spec, [
          [-70 + x, y - 2],
          [-70 + x, y + 2],
        ]),
      ).toBe(true);
  });
  it('is drawn at full size up to 1500 mm, and fitted from there', () => {
    const wide = (uprightWidth: string) => rail({ picture: 'full size', uprightWidth });
    expect(text(wide('750 mm'))).toContain('Full size');
    expect(scaleOf(wide('750 mm'))).toBeCloseTo(96 / 25.4, 1);
    expect(text(wide('751 mm'))).toContain(
      'Too large to print at full size (1502 mm, at most 1500), so fitted.',
    );
    expect(scaleOf(wide('751 mm'))).toBeLessThan(2);
  });
});

describe('a half lap of 50 mm across 40 mm', () => {
  const lap = (at: 'crossing' | 'end' | 'corner') =>
    halfLap({ widthA: '50 mm', widthB: '40 mm', thickness: '30 mm', at }).chart;
  const bottomOfB = (spec: unknown): number => Math.min(...(outlines(spec)[0] ?? []).map(([, y]) => y));
  it('crosses: both run past', () => {
    const spec = lap('crossing');
    expect(hasRectangle(spec, [-40, 0, 80, 50])).toBe(true);
    expect(bottomOfB(spec)).toBeCloseTo(-40, 9);
    expect(
      hasOutline(spec, [
        [0, 0],
        [40, 0],
        [40, 50],
        [0, 50],
      ]),
    ).toBe(true);
    expect(text(spec)).toContain('15.0 deep');
  });
  it('ends: B stops at the far edge of A', () => {
    expect(hasRectangle(lap('end'), [-40, 0, 80, 50])).toBe(true);
    expect(bottomOfB(lap('end'))).toBeCloseTo(0, 9);
  });
  it('turns a corner: A stops too', () => {
    expect(hasRectangle(lap('corner'), [0, 0, 80, 50])).toBe(true);
    expect(bottomOfB(lap('corner'))).toBeCloseTo(0, 9);
  });
});

describe('a spline at full size', () => {
  it('is as long on paper as in the wood', () => {
    const spec = splineSlot({ ...splineSlot.example, picture: 'full size' }).chart;
    expect(scaleOf(spec)).toBeCloseTo(96 / 25.4, 1);
    // 40 mm thick: its mitre face is 56.57 mm, half of 24 mm of spline and 0.5 mm of room go in.
    expect(
      hasOutline(spec, [
        [0, 13],
        [12.5, 13],
        [12.5, 19],
        [0, 19],
      ]),
    ).toBe(true);
    expect(text(spec)).toContain('56.6 mm mitre face');
    expect(text(spec)).toContain('12.5 mm');
  });
});

describe('the clearance of a joint', () => {
  // 10.1 less 10 is 0.1 mm on average, with a standard deviation of sqrt(0.06² + 0.08²) / 2 = 0.05 mm.
  const fit = () =>
    jointFit({
      slot: { size: '10.1 mm', plusMinus: '0.06 mm' },
      part: { size: '10 mm', plusMinus: '0.08 mm' },
      tightest: '0 mm',
      loosest: '0.1 mm',
    });
  const curves = () => lines(fit().chart);
  it('comes out most often at its average, and planed at the middle of what fits', () => {
    const top = (name: string) =>
      (curves().get(name) ?? []).reduce<readonly [number, number]>((a, b) => (b[1] > a[1] ? b : a), [0, 0]);
    // The density of the normal distribution at its middle: 1 / (0.05 sqrt(2 pi)) = 7.978 846.
    expect(top('as planned')[1]).toBeCloseTo(7.97885, 2);
    expect(top('as planned')[0]).toBeCloseTo(0.1, 2);
    expect(top('planed to the size to aim for')[0]).toBeCloseTo(0.05, 2);
    const xs = (curves().get('as planned') ?? []).map(([x]) => x);
    expect([Math.min(...xs), Math.max(...xs)].map((x) => Number(x.toFixed(9)))).toEqual([-0.15, 0.3]);
  });
  it('is shaded where it goes in and holds', () => {
    const shaded = areas(fit().chart).filter(([, high]) => high > 0);
    expect(Math.min(...shaded.map(([x]) => x))).toBeCloseTo(0, 2);
    expect(Math.max(...shaded.map(([x]) => x))).toBeCloseTo(0.1, 2);
    expect(areas(fit().chart).some(([x, high]) => x < 0 && high === 0)).toBe(true);
  });
  it('reaches four standard deviations past either mean, and holds both limits', () => {
    const xs = (part: string, plusMinus: string, tightest: string, loosest: string) => {
      const spec = jointFit({
        slot: { size: '10 mm', plusMinus: '0 mm' },
        part: { size: part, plusMinus },
        tightest,
        loosest,
      }).chart;
      const all = (lines(spec).get('as planned') ?? []).map(([x]) => x);
      return [Math.min(...all), Math.max(...all)].map((x) => Number(x.toFixed(6)));
    };
    // A standard deviation of 0.05 mm; the middle of what fits at 0.05 or 0.15 mm.
    expect(xs('9.5 mm', '0.1 mm', '0 mm', '0.1 mm')).toEqual([-0.15, 0.7]);
    expect(xs('10.5 mm', '0.1 mm', '0 mm', '0.1 mm')).toEqual([-0.7, 0.25]);
    expect(xs('10.5 mm', '0.1 mm', '0.1 mm', '0.2 mm')).toEqual([-0.7, 0.35]);
    expect(xs('9.9 mm', '0.002 mm', '0 mm', '0.2 mm')).toEqual([0, 0.2]);
    expect(xs('9.85 mm', '0.002 mm', '0.1 mm', '0.2 mm')).toEqual([0.1, 0.2]);
  });
  it('is as high as its curve and a seventh more, shaded to both limits', () => {
    // No spread at all is drawn as a five-hundredth of the room between the limits: 0.0002 mm.
    const spec = jointFit({
      slot: { size: '10 mm', plusMinus: '0 mm' },
      part: { size: '9.85 mm', plusMinus: '0 mm' },
      tightest: '0.1 mm',
      loosest: '0.2 mm',
    }).chart;
    const peak = 1 / (0.0002 * Math.sqrt(2 * Math.PI));
    const y = Number(/"domain":\[0,([\d.]+)\]/.exec(text(spec))?.[1]);
    expect(y).toBeCloseTo(peak * 1.15, 6);
    const shaded = areas(spec);
    expect(shaded[0]).toEqual([expect.closeTo(0.1, 9), expect.closeTo(peak * 1.15, 6)]);
    expect(shaded.at(-1)).toEqual([expect.closeTo(0.2, 9), expect.closeTo(peak * 1.15, 6)]);
    expect(Math.max(...(lines(spec).get('as planned') ?? []).map(([, h]) => h))).toBeCloseTo(peak, 3);
  });
  it('says in words what fits, jams and is loose', () => {
    // From two standard deviations below the average to the average itself: 47.72 %; planed, one to each side: 68.27 %.
    expect(text(fit().chart)).toContain(
      '47.7 % fit, 2.3 % jam, 50.0 % are loose; planed to 10.05 mm, 68.3 % fit.',
    );
  });
});

describe('biscuits', () => {
  it('one stands in the middle of a short joint, with no spacing to tell', () => {
    const r = biscuitSpacing({ length: '120 mm', endDistance: '60 mm' });
    expect(text(r.chart)).toContain('"1 biscuit along the joint');
    expect(r.positions.map((p) => p.in('mm'))).toEqual([60]);
    expect(r.spacing).toBeUndefined();
    const two = biscuitSpacing({ length: '320 mm', endDistance: '60 mm' });
    expect(text(two.chart)).toContain('"2 biscuits along the joint');
    expect(text(two.chart)).toContain('200.0 mm');
    expect(text(r.chart)).not.toContain('.0 mm"');
  });
  it('are drawn as long and as wide as they are: 56 by 23 mm', () => {
    const [lens] = outlines(biscuitSpacing({ length: '120 mm', endDistance: '60 mm' }).chart) as [
      (readonly [number, number])[],
    ];
    const xs = lens.map(([x]) => x);
    const ys = lens.map(([, y]) => y);
    expect([Math.min(...xs), Math.max(...xs)].map((x) => Number(x.toFixed(6)))).toEqual([32, 88]);
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(23, 6);
  });
});

describe('a fold', () => {
  it('of 40 mm with a saw cut of 3 mm: 4.24 mm on the show face, 84.24 mm on the back', () => {
    const spec = mitredEnd(mitredEnd.example).chart;
    const l = 3 * Math.SQRT2;
    expect(
      hasOutline(spec, [
        [-40, 0],
        [l + 40, 0],
        [l, 40],
        [0, 40],
      ]),
    ).toBe(true);
    expect(
      hasOutline(spec, [
        [-80, 0],
        [-40, 0],
        [0, 40],
        [-80, 40],
      ]),
    ).toBe(true);
    for (const words of ['4.24 mm of grain lost', '"84.2 mm"', '"40.0 mm"', 'two cuts at 45.0°'])
      expect(text(spec)).toContain(words);
  });
});

describe('a half lap on the skew', () => {
  it('leans with the other piece: 50 mm across at 45°', () => {
    const spec = halfLap({ widthA: '50 mm', widthB: '40 mm', thickness: '30 mm', angle: '45 deg' }).chart;
    const on = 40 * Math.SQRT2;
    expect(
      hasOutline(spec, [
        [0, 0],
        [on, 0],
        [on + 50, 50],
        [50, 50],
      ]),
    ).toBe(true);
    expect(text(spec)).toContain('"56.6 mm"');
  });
});

describe('a frame out of square', () => {
  const frame = (A: string, B: string) =>
    squareness({ width: '600 mm', height: '400 mm', diagonalA: A, diagonalB: B }).chart;
  // Leaning right by 240 mm a frame of 400 mm stands 320 mm high: its diagonals are those of 840 and 360 by 320 mm.
  const [long, short] = [Math.hypot(840, 320), Math.hypot(360, 320)].map((x) => `${String(x)} mm`) as [
    string,
    string,
  ];
  it('leans to the right where A is the longer diagonal, by what it is', () => {
    const spec = frame(long, short);
    expect(
      hasOutline(spec, [
        [0, 0],
        [600, 0],
        [840, 320],
        [240, 320],
      ]),
    ).toBe(true);
    expect(text(spec)).toContain('240.00 mm');
    expect(text(spec)).not.toContain('drawn larger');
    // The way to pull: from right to left.
    expect(
      hasOutline(spec, [
        [240 + 300 + 72, 344],
        [240 + 300 - 72, 344],
      ]),
    ).toBe(true);
  });
  it('leans to the left where B is', () => {
    const spec = frame(short, long);
    expect(
      hasOutline(spec, [
        [0, 0],
        [600, 0],
        [360, 320],
        [-240, 320],
      ]),
    ).toBe(true);
    expect(
      hasOutline(spec, [
        [-240 + 300 - 72, 344],
        [-240 + 300 + 72, 344],
      ]),
    ).toBe(true);
  });
  it('draws a small lean larger, and says so', () => {
    const spec = frame('722 mm', '720 mm');
    const top = Math.sqrt(400 ** 2 - (400 / 12) ** 2);
    expect(
      hasOutline(spec, [
        [0, 0],
        [600, 0],
        [600 + 400 / 12, top],
        [400 / 12, top],
      ]),
    ).toBe(true);
    expect(text(spec)).toContain('The lean is drawn larger than it is');
  });
  it('square: no arrow, no lean', () => {
    const spec = frame('721 mm', '721 mm');
    expect(outlines(spec)).toHaveLength(4);
    expect(text(spec)).not.toContain('drawn larger');
  });
});
