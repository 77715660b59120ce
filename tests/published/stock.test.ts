import { describe, expect, it } from 'vitest';
import { boardMeasure } from '../../src/recipes/stock/board-measure.js';
import { flatteningLoss } from '../../src/recipes/stock/flattening-loss.js';

/** Half a unit of the last printed digit. */
function tolerance(printed: string): number {
  const decimals = printed.split('.')[1]?.length ?? 0;
  return 0.5 * 10 ** -decimals + 1e-9;
}

interface Row {
  readonly source: string;
  readonly locator: string;
  readonly inputs: { readonly thickness: string; readonly width: string; readonly length: string; readonly count?: number };
  /** As printed, turned into decimals where the page has feet and inches of board measure (12 ft 10 in is 12 10/12). */
  readonly printed: string;
  readonly page: string;
  readonly unit: string;
  readonly read: 'text' | 'memory';
  readonly exception?: string;
}
const noyes = { source: 'Noyes, Handwork in Wood (1910)', locator: 'ch. IV', unit: 'bf', read: 'text' } as const;
const navy = { source: 'US Navy Builder manual 14044', locator: 'p. 62', unit: 'bf', read: 'text' } as const;
const king = { source: 'King, Elements of Woodwork', locator: 'board measure table', unit: 'bf', read: 'text' } as const;

const boards: readonly Row[] = [
  { ...noyes, inputs: { thickness: '1 in', width: '11 in', length: '14 ft' }, page: '12 ft 10 in', printed: '12.8333' },
  { ...noyes, inputs: { thickness: '1 in', width: '9 in', length: '5 ft' }, page: '3 ft 9 in', printed: '3.7500' },
  { ...noyes, inputs: { thickness: '1 in', width: '13 in', length: '23 ft' }, page: '24 ft 11 in', printed: '24.9167' },
  { ...navy, inputs: { thickness: '1 in', width: '10 in', length: '10 ft' }, page: '8 4/12', printed: '8.3333' },
  { ...navy, inputs: { thickness: '1 in', width: '7 in', length: '33 ft' }, page: '19 3/12', printed: '19.2500' },
  { ...king, inputs: { thickness: '2 in', width: '4 in', length: '1 ft' }, page: '2/3', printed: '0.6667' },
  { ...king, inputs: { thickness: '2 in', width: '6 in', length: '1 ft' }, page: '1', printed: '1.0000' },
  { ...king, inputs: { thickness: '2 in', width: '8 in', length: '1 ft' }, page: '1 1/3', printed: '1.3333' },
  { ...king, inputs: { thickness: '2 in', width: '12 in', length: '1 ft' }, page: '2', printed: '2.0000' },
  { source: 'GSL, glossary of shipping terms', locator: 'board feet', unit: 'bf', read: 'text', inputs: { thickness: '1 in', width: '12 in', length: '10 ft' }, page: '10', printed: '10' },
  { source: 'a general page on board feet', locator: '2 x 6 of 8 ft', unit: 'bf', read: 'text', inputs: { thickness: '2 in', width: '6 in', length: '8 ft' }, page: '8', printed: '8' },
  { source: 'Grading basics, North Carolina Woodworker', locator: 'measured 2 x 7 in x 8 ft once rounded down', unit: 'bf', read: 'text', inputs: { thickness: '2 in', width: '7 in', length: '8 ft' }, page: '9.3', printed: '9.3' },
];

describe('board measure against printed examples', () => {
  it.each(boards)('$source: $inputs.thickness x $inputs.width x $inputs.length is $page', ({ inputs, printed }) => {
    expect(Math.abs(boardMeasure(inputs).boardFeet.in('bf') - Number(printed))).toBeLessThanOrEqual(tolerance(printed));
  });

  it('US Navy Builder manual: a 3 in plank of 7 in by 33 ft is three times the 1 in board', () => {
    // The page rounds to 19.26 in one place; its own table reads 19 3/12.
    expect(boardMeasure({ thickness: '3 in', width: '7 in', length: '33 ft' }).boardFeet.in('bf')).toBeCloseTo(3 * 19.25, 9);
  });
});

/** Conversions as printed: Tradelink timber trade page, the unit table of ConvertUnits, EUR pallet note. */
describe('units of timber measure as printed', () => {
  it.each([
    ['board foot in m3', { thickness: '1 in', width: '12 in', length: '12 in' }, 'volume', 'm3', '0.002359737'],
    ['board foot in cubic inches', { thickness: '1 in', width: '12 in', length: '12 in' }, 'volume', 'in3', '144'],
    ['cubic foot in board feet', { thickness: '12 in', width: '12 in', length: '12 in' }, 'boardFeet', 'bf', '12'],
    ['1000 board feet in m3', { thickness: '1 in', width: '12 in', length: '1000 ft' }, 'volume', 'm3', '2.3597'],
    ['cubic metre in board feet', { thickness: '1 m', width: '1 m', length: '1 m' }, 'boardFeet', 'bf', '423.776'],
    ['cubic metre in cubic feet', { thickness: '1 m', width: '1 m', length: '1 m' }, 'volume', 'ft3', '35.3147'],
    ['ton of 50 cubic feet in board feet', { thickness: '1 ft', width: '1 ft', length: '50 ft' }, 'boardFeet', 'bf', '600'],
    ['ton of 50 cubic feet in m3', { thickness: '1 ft', width: '1 ft', length: '50 ft' }, 'volume', 'm3', '1.416'],
    ['super foot in m3 (from memory)', { thickness: '1 in', width: '12 in', length: '1 ft' }, 'superFeet', 'm3', '0.002359737'],
    ['1 m2 of 1 in board in m3 (from memory)', { thickness: '25.4 mm', width: '1 m', length: '1 m' }, 'volume', 'm3', '0.0254'],
    ['EUR pallet, area of its deck in m2', { thickness: '22 mm', width: '800 mm', length: '1200 mm' }, 'surface', 'm2', '0.96'],
  ] as const)('%s', (_what, inputs, output, unit, printed) => {
    const quantity = boardMeasure(inputs)[output] as { in(unit: string): number };
    expect(Math.abs(quantity.in(unit) - Number(printed))).toBeLessThanOrEqual(tolerance(printed));
  });

  it('deck boards of a EUR pallet, 3 x 145 and 2 x 100 by 22 by 1200 mm: 0.016764 m3', () => {
    const wide = boardMeasure({ thickness: '22 mm', width: '145 mm', length: '1200 mm', count: 3 }).volume.in('m3');
    const narrow = boardMeasure({ thickness: '22 mm', width: '100 mm', length: '1200 mm', count: 2 }).volume.in('m3');
    expect(wide + narrow).toBeCloseTo(0.016764, 9);
  });
});

/** The sagitta of a circle, in any book of geometry: s = R - sqrt(R^2 - (w/2)^2). Independent of the recipe's parabola. */
describe('flattening against the exact circle', () => {
  it.each([
    [150, 3, 1],
    [142, 2.5, 2],
    [300, 4, 5],
  ])('a cup of %s mm wide and %s mm deep, %s rips', (width, cup, rips) => {
    const R = ((width / 2) ** 2 + cup ** 2) / (2 * cup);
    const strip = width / (rips + 1);
    const exact = R - Math.sqrt(R ** 2 - (strip / 2) ** 2);
    const got = flatteningLoss({ thickness: '40 mm', width: `${width} mm`, length: '1 m', cup: `${cup} mm`, rips }).loss.in('mm');
    expect(Math.abs(got - exact)).toBeLessThan(0.005);
  });

  it('a saddle is planed flat by half its lift: greatest less least of x y over a rectangle, less its best plane', () => {
    // z = h x y on the unit square; subtract x/2 + y/2 - 1/4 and search for the range by brute force.
    let low = Infinity;
    let high = -Infinity;
    for (let i = 0; i <= 100; i++) {
      for (let j = 0; j <= 100; j++) {
        const z = (i / 100) * (j / 100) - i / 200 - j / 200 + 0.25;
        low = Math.min(low, z);
        high = Math.max(high, z);
      }
    }
    const got = flatteningLoss({ thickness: '40 mm', width: '200 mm', length: '1 m', twist: '6 mm' }).loss.in('mm');
    expect(got).toBeCloseTo(6 * (high - low), 9);
  });
});
