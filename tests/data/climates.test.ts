// The air of places by month: every row sane, named once, and found by what people call the place.
import { describe, expect, it } from 'vitest';
import { climates, findClimate } from '../../src/materials/climate.js';
import { csvRows, type CsvRow } from './csv-table.js';

const rows = csvRows('outdoor-air.various');
const offered = rows.filter((r) => r['preferred'] === 'yes');
const twelve = (r: CsvRow, column: string): number[] =>
  (r[column] ?? '') === '' ? [] : (r[column] as string).split(' ').map(Number);
const named = (r: CsvRow): string => `${r['place']}, ${r['state']} (${r['source']})`;
const columns = ['mean_c', 'max_c', 'min_c', 'humidity_pct', 'humidity_pm_pct'];

describe('places outside the USA', () => {
  it('are forty and more, in many countries', () => {
    expect(offered.length).toBeGreaterThanOrEqual(60);
    expect(new Set(offered.map((r) => r['state'])).size).toBeGreaterThanOrEqual(12);
    expect(rows.filter((r) => r['read'] === 'memory')).toEqual([]);
  });
  it('hold twelve figures a column, of air that exists', () => {
    const odd = rows.filter(
      (r) =>
        columns.some((c) => ![0, 12].includes(twelve(r, c).length)) ||
        twelve(r, 'humidity_pct').length !== 12 ||
        twelve(r, 'mean_c').length + twelve(r, 'max_c').length !== 12 ||
        columns.slice(0, 3).some((c) => twelve(r, c).some((t) => !(t > -30 && t < 45))) ||
        columns.slice(3).some((c) => twelve(r, c).some((h) => !(h >= 15 && h <= 100))) ||
        twelve(r, 'min_c').some((t, i) => t > (twelve(r, 'max_c')[i] as number)),
    );
    expect(odd.map(named)).toEqual([]);
  });
  it('have their warm months in the summer of their half of the earth', () => {
    const south = new Set(['Australia']);
    const wrong = rows.filter((r) => {
      const t = twelve(r, 'mean_c').length > 0 ? twelve(r, 'mean_c') : twelve(r, 'max_c');
      const [january, july] = [t[0] as number, t[6] as number];
      return south.has(r['state'] ?? '') ? january < july : july < january;
    });
    expect(wrong.map(named)).toEqual([]);
  });
  it('are damper in winter than in summer inland in Spain, where no sea and no monsoon turns it round', () => {
    const coast = /A Coruña|Bilbao|San Sebastián|Oviedo|Castellón|Valencia|Murcia|Palma|Barcelona|Santander|Ceuta|Las Palmas/;
    const spain = offered.filter((r) => r['state'] === 'Spain' && !coast.test(r['place'] ?? ''));
    expect(spain.length).toBeGreaterThan(35);
    const turned = spain.filter((r) => {
      const h = twelve(r, 'humidity_pct');
      return (h[0] as number) <= (h[6] as number);
    });
    expect(turned.map(named)).toEqual([]);
  });
  it('stand once each; a second reading says why it gives way', () => {
    const places = offered.map((r) => `${r['place']}, ${r['state']}`);
    expect(new Set(places).size).toBe(places.length);
    expect(rows.filter((r) => r['preferred'] !== 'yes' && (r['prefer_reason'] ?? '') === '').map(named)).toEqual([]);
    expect(climates().map((c) => c.place)).toEqual(expect.arrayContaining(places));
  });
  it.each([
    ['Madrid', 'Madrid, Spain'],
    ['malaga', 'Málaga, Spain'],
    ['Seville', 'Sevilla, Spain'],
    ['Corunna, Spain', 'A Coruña, Spain'],
    ['Montreal', 'Montréal, Canada'],
    ['new delhi', 'New Delhi, India'],
    ['Melbourne', 'Melbourne, Australia'],
  ])('%s is found', (text, place) => {
    expect(findClimate(text).place).toBe(place);
  });
  it('a place that is not held asks for the humidity of the room and says how to measure it', () => {
    expect(() => findClimate('Ulaanbaatar')).toThrow(/winter 35 %, summer 65 %.*hygrometer/);
    expect(() => findClimate('Madird')).toThrow(/did you mean "Madrid".*hygrometer/);
  });
  it('have the moisture of wood that their air gives: Vancouver damp, Calgary dry', () => {
    const mean = (place: string): number => {
      const air = findClimate(place).months.map((m) => (typeof m === 'number' ? m : m.humidity));
      return air.reduce((a, b) => a + b, 0) / 12;
    };
    // Daily means of the weather files: 77.9 % and 60.6 % over the year.
    expect(mean('Vancouver')).toBeCloseTo(0.779, 3);
    expect(mean('Calgary')).toBeCloseTo(0.606, 3);
  });
});
