// Places that no table holds: the humidity of the room in winter and in summer makes the year.
import { describe, expect, it } from 'vitest';
import { equilibriumMoisture } from '../../../src/recipes/moisture/equilibrium-moisture.js';
import { seasonalMovement } from '../../../src/recipes/moisture/seasonal-movement.js';

const board = { width: '500 mm', thickness: '1 mm', timber: 'white oak' } as const;
const of = (climate: unknown) => seasonalMovement({ ...board, climate: climate as string });
const atRest = (humidity: string, temperature = '20 degC') =>
  equilibriumMoisture({ temperature, humidity }).moisture.in('%');

describe('a year from winter and summer', () => {
  it('is driest and wettest at the two humidities given, in January and in July', () => {
    const r = of({ winter: '35 %', summer: '65 %' });
    expect(r.driest.in('%')).toBeCloseTo(atRest('35 %'), 1);
    expect(r.wettest.in('%')).toBeCloseTo(atRest('65 %'), 1);
    expect([r.narrowestIn, r.widestIn]).toEqual(['January', 'July']);
  });
  it('is read from a line, and turned round in the south', () => {
    expect(of('winter 35 %, summer 65 %').swing.in('mm')).toBe(
      of({ winter: '35 %', summer: '65 %' }).swing.in('mm'),
    );
    expect(of({ winter: '35 %', summer: '65 %', coldest: 'July' }).narrowestIn).toBe('July');
  });
  it('takes the room’s own temperature', () => {
    const warm = of({ winter: '35 %', summer: '65 %', temperature: '30 degC' });
    expect(warm.wettest.in('%')).toBeCloseTo(atRest('65 %', '30 degC'), 1);
  });
  it('stays still in air that does not change', () => {
    expect(of({ winter: '50 %', summer: '50 %' }).swing.in('mm')).toBeCloseTo(0, 9);
  });
  it.each([
    [{ winter: '35 %' }, /climate\.summer/],
    [{ winter: '35 %', summer: 'damp' }, /climate\.summer: got "damp"/],
    [{ winter: '35 %', summer: '130 %' }, /climate\.summer/],
    [{ winter: '35 %', summer: '60 %', coldest: 'June' }, /climate\.coldest/],
    ['Reykjavik by the sea', /how humid the room is, such as "winter 35 %, summer 65 %"/],
  ])('%j is refused by its field', (climate, says) => {
    expect(() => of(climate)).toThrow(says);
  });
});
