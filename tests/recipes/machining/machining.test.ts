// Limits at their edges, combinations that are refused, and the numbers that the charts draw, worked out by hand.
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../src/units/input-error.js';
import { cutterMarks } from '../../../src/recipes/machining/cutter-marks.js';
import { planingTime } from '../../../src/recipes/machining/planing-time.js';
import { chipVolume } from '../../../src/recipes/machining/chip-volume.js';

type Cautious = { readonly cautions: readonly { readonly level: string; readonly text: string }[] };
const message = (r: Cautious, level: string): string =>
  r.cautions
    .filter((c) => c.level === level)
    .map((c) => c.text)
    .join('|');
/** Every number in a chart's specification, deep down. */
const drawn = (spec: unknown): string => JSON.stringify(spec);
/** The rows of data of a chart, layer by layer. */
function values(spec: unknown): Record<string, unknown>[] {
  if (typeof spec !== 'object' || spec === null) return [];
  return Object.entries(spec).flatMap(([k, v]) =>
    k === 'values' && Array.isArray(v)
      ? (v as Record<string, unknown>[]).filter((x) => typeof x === 'object')
      : values(v),
  );
}
const numbersIn = (spec: unknown): number[] =>
  values(spec).flatMap((row) => Object.values(row).filter((x): x is number => typeof x === 'number'));
const holds = (numbers: readonly number[], n: number): boolean =>
  numbers.some((x) => Math.abs(x - n) <= 1e-6 * Math.max(1, Math.abs(n)));

describe('cutterMarks', () => {
  // One knife at 100 turns a second and 2 m/s leaves a mark every 20 mm: a quarter of an 80 mm circle.
  const at = (diameter: string) =>
    cutterMarks({ spindleSpeed: '6000 rpm', knives: 1, feed: '2 m/s', cutterDiameter: diameter });
  it('calls the ripple rough just past a quarter of the cutting circle, and not at it', () => {
    expect(message(at('80 mm'), 'range')).not.toMatch(/rough figure/);
    expect(message(at('79.9 mm'), 'range')).toMatch(/rough figure/);
    expect(message(at('200 mm'), 'range')).not.toMatch(/rough figure/);
  });
  it('speaks of knives that cut as one where there are several', () => {
    const by = (knives: number) => cutterMarks({ spindleSpeed: '6000 rpm', knives, feed: '10 m/min' });
    expect(message(by(1), 'note')).not.toMatch(/cut as one/);
    expect(message(by(2), 'note')).toMatch(/cut as one/);
  });
  it('draws spacing against feed: 4 knives, 6000 rpm, 12 m/min stand at 0.5 mm', () => {
    const r = cutterMarks({ spindleSpeed: '6000 rpm', knives: 4, feed: '12 m/min' });
    const text = drawn(r.chart);
    expect(text).toContain('4 knives at 6000 rpm');
    expect(text).toContain('0.5 mm');
    const n = numbersIn(r.chart);
    // 24 000 marks a minute: the axis goes to 2.4 mm or to 1.6 of the feed, whichever is more: 57.6 m/min.
    for (const x of [12, 0.5, 57.6, 2.4, 28.8, 1.2, 25.4 / 20, 25.4 / 13])
      expect(holds(n, x), String(x)).toBe(true);
    expect(Math.max(...n)).toBeCloseTo(57.6, 9);
    expect(drawn(cutterMarks({ spindleSpeed: '3000 rpm', knives: 1, feed: '12 m/min' }).chart)).toContain(
      '1 knife at 3000 rpm',
    );
    // 3000 marks a minute: 19.2 m/min is more than 7.2.
    const slow = numbersIn(cutterMarks({ spindleSpeed: '3000 rpm', knives: 1, feed: '12 m/min' }).chart);
    expect(Math.max(...slow)).toBeCloseTo(19.2, 9);
    expect(holds(slow, 4)).toBe(true);
  });
});

describe('printed grades of millwork (data/knife-marks.various.csv)', () => {
  // Medium grade from 13 to 19 marks an inch, highest from 20. One knife at N turns a minute, fed N/m inches a minute.
  it.each([
    ['12.9', 'low grade'],
    ['13', 'medium grade'],
    ['19.9', 'medium grade'],
    ['20', 'highest grade'],
    ['40', 'highest grade'],
  ])('%s marks an inch are %s', (marks, grade) => {
    const feed = (6000 * 0.0254) / Number(marks);
    const r = cutterMarks({ spindleSpeed: '6000 rpm', knives: 1, feed: `${String(feed)} m/min` });
    expect(message(r, 'note')).toContain(`${Number(marks).toFixed(1)} marks an inch: ${grade}`);
  });
});

describe('planingTime', () => {
  it('warns of a cut past 1/16 in a pass, and not at it', () => {
    const by = (depthPerPass: string) =>
      message(planingTime({ totalLength: '3 m', removal: '6 mm', depthPerPass, feed: '6 m/min' }), 'range');
    for (const depth of ['1/16 in', '1.5875 mm', '1.5 mm']) expect(by(depth), depth).toBe('');
    expect(by('1.5876 mm')).toMatch(/1\/16 in \(1.6 mm\) in a pass/);
  });
  it('warns of pieces under 12 in, and not at it', () => {
    const by = (totalLength: string, pieces: number) =>
      message(planingTime({ totalLength, pieces, passes: 1, feed: '6 m/min' }), 'range');
    for (const [length, pieces] of [
      ['12 in', 1],
      ['1 ft', 1],
      ['304.8 mm', 1],
      ['36 in', 3],
      ['84 in', 7],
    ] as const)
      expect(by(length, pieces), length).toBe('');
    expect(by('304.79 mm', 1)).toMatch(/shorter than the 12 in/);
  });
  it('adds cutting and handling, and counts every pass', () => {
    const r = planingTime({ totalLength: '12 m', pieces: 6, passes: 3, feed: '6 m/min', handling: '10 s' });
    expect(r.run.value).toBeCloseTo(36, 12);
    expect(r.cutting.value).toBeCloseTo(360, 9);
    expect(r.handlingTime.value).toBeCloseTo(180, 9);
    expect(r.time.value).toBeCloseTo(540, 9);
    expect(drawn(r.chart)).toContain('3 passes');
    expect(drawn(planingTime({ totalLength: '12 m', passes: 1, feed: '6 m/min' }).chart)).toMatch(
      /1 pass(?!es)/,
    );
  });
  it('draws minutes up to two hours and hours from there', () => {
    const minutes = planingTime({
      totalLength: '60 m',
      pieces: 1,
      passes: 1,
      feed: '1 m/min',
      handling: '0 s',
    });
    expect(holds(numbersIn(minutes.chart), 60), drawn(minutes.chart).slice(0, 800)).toBe(true);
    const hours = planingTime({
      totalLength: '120 m',
      pieces: 1,
      passes: 1,
      feed: '1 m/min',
      handling: '0 s',
    });
    expect(hours.time.value).toBe(7200);
    expect(holds(numbersIn(hours.chart), 2)).toBe(true);
  });
  it('adds no pass for what the last digit of a quotient leaves', () => {
    const by = (removal: string) =>
      planingTime({ totalLength: '1 m', removal, depthPerPass: '1 mm', feed: '6 m/min' }).passes;
    expect(by('3.0000000005 mm')).toBe(3);
    expect(by('3.000000002 mm')).toBe(4);
  });
  it('takes ten thousand passes and not one more', () => {
    const by = (removal: string) =>
      planingTime({ totalLength: '1 m', removal, depthPerPass: '0.01 mm', feed: '6 m/min' });
    expect(by('99.995 mm').passes).toBe(10_000);
    expect(() => by('100.005 mm')).toThrow(/depthPerPass: needs 10001 passes/);
  });
  it('speaks of a deep cut only where depth decides the passes', () => {
    const r = planingTime({ totalLength: '3 m', passes: 2, depthPerPass: '3 mm', feed: '6 m/min' });
    expect(message(r, 'range')).not.toMatch(/in a pass/);
  });
  it('measures a short piece by the average: 3 m in ten pieces are 300 mm each', () => {
    const by = (pieces: number) =>
      message(planingTime({ totalLength: '3 m', pieces, passes: 1, feed: '6 m/min' }), 'range');
    expect(by(9)).toBe('');
    expect(by(10)).toMatch(/pieces of 300 mm/);
  });
});

describe('chipVolume', () => {
  it('takes a volume, or area and depth, and says which is missing or too much', () => {
    const base = { density: '500 kg/m3', waste: 'planer shavings' } as const;
    const both = chipVolume({ ...base, area: '2 m2', depth: '1 mm' });
    expect(both.solid.value).toBeCloseTo(0.002, 12);
    expect(both.mass.value).toBeCloseTo(1, 12);
    expect(chipVolume({ ...base, volumeRemoved: '2 L' }).mass.value).toBeCloseTo(1, 12);
    for (const given of [{}, { area: '2 m2' }, { depth: '1 mm' }])
      expect(() => chipVolume({ ...base, ...given })).toThrow(/volumeRemoved: missing/);
    for (const given of [{ area: '2 m2' }, { depth: '1 mm' }, { area: '2 m2', depth: '1 mm' }])
      expect(() => chipVolume({ ...base, volumeRemoved: '2 L', ...given })).toThrow(InputError);
  });
  it('begins no bag for what the last digit of a quotient leaves', () => {
    // Of shavings 4 L for each litre: 25 L fill a bag of 100 L.
    const bags = (volumeRemoved: string) => chipVolume({ density: '500 kg/m3', volumeRemoved }).bags;
    expect(bags('25 L')).toBe(1);
    expect(bags('25.0000000125 L')).toBe(1);
    expect(bags('25.00000005 L')).toBe(2);
  });
  it('grows loose by the printed factors: shavings 4.00, sawdust 2.50 (Briggs 1994, Table 7-1)', () => {
    for (const [waste, litres] of [
      ['planer shavings', 8],
      ['sawdust', 5],
    ] as const) {
      const r = chipVolume({ density: '500 kg/m3', waste, volumeRemoved: '2 L' });
      expect(r.volume.value * 1000).toBeCloseTo(litres, 9);
      // A kilogram of solid wood, so 125 and 200 kg a cubic metre.
      expect(r.bulkDensity.value).toBeCloseTo(1000 / litres, 9);
    }
  });
  it('draws litres of solid wood beside litres of waste, and counts the bags in words', () => {
    const r = chipVolume({ density: '500 kg/m3', waste: 'planer shavings', volumeRemoved: '2 L' });
    const n = numbersIn(r.chart);
    expect(holds(n, 2)).toBe(true);
    expect(holds(n, r.volume.value * 1000)).toBe(true);
    expect(drawn(r.chart)).toMatch(/1 bag(?!s)/);
    const more = chipVolume({
      density: '500 kg/m3',
      waste: 'planer shavings',
      volumeRemoved: '2 L',
      bagSize: '1 L',
    });
    expect(drawn(more.chart)).toMatch(/\d+ bags/);
  });
});
