import { describe, expect, it } from 'vitest';
import { equilibriumMoisture } from '../../../src/recipes/moisture/equilibrium-moisture.js';
import { humidityFor } from '../../../src/recipes/moisture/humidity-for.js';
import { lagged } from '../../../src/recipes/moisture/emc-lag.js';
import { meterCorrection } from '../../../src/recipes/moisture/meter-correction.js';
import { movementAcross } from '../../../src/recipes/moisture/movement-across.js';
import { seasonalMovement } from '../../../src/recipes/moisture/seasonal-movement.js';
import { climates } from '../../../src/materials/climate.js';
import { dataOf, lines, text } from '../drawn-shapes.js';

const said = (r: { readonly cautions: readonly { readonly text: string }[] }): string =>
  r.cautions.map((c) => c.text).join('|');
const worked = (r: { readonly workings: readonly object[] }): string => JSON.stringify(r.workings);

/** Wood Handbook, Eq. 4-5, metric, from memory: written out once more with numbers alone. */
function handbook(T: number, h: number): number {
  const W = 349 + 1.29 * T + 0.0135 * T ** 2;
  const K = 0.805 + 0.000736 * T - 0.00000273 * T ** 2;
  const K1 = 6.27 - 0.00938 * T - 0.000303 * T ** 2;
  const K2 = 1.91 + 0.0407 * T - 0.000293 * T ** 2;
  const a = K * h;
  return (1800 / W) * (a / (1 - a) + (K1 * a + 2 * K1 * K2 * a * a) / (1 + K1 * a + K1 * K2 * a * a));
}

describe('moisture in air', () => {
  it.each([
    [20, 0.5],
    [0, 0.9],
    [50, 0.3],
    [-10, 0.65],
  ])('at %d °C and %d', (t, h) => {
    const r = equilibriumMoisture({ temperature: `${t} degC`, humidity: `${h * 100} %` });
    expect(r.moisture.in('%')).toBeCloseTo(handbook(t, h), 9);
    expect(humidityFor({ temperature: `${t} degC`, moisture: r.moisture }).humidity.value).toBeCloseTo(h, 12);
  });
  it('cautions outside Table 4-2, and not at its edges or in air with no water at all', () => {
    const out = (temperature: string, humidity: string): boolean =>
      /Table 4-2/.test(said(equilibriumMoisture({ temperature, humidity })));
    const inside = [
      ['-1.2 degC', '50 %'],
      ['99 degC', '50 %'],
      ['0 degC', '50 %'],
      ['20 degC', '4.99 %'],
      ['20 degC', '95.01 %'],
      ['20 degC', '0 %'],
    ] as const;
    const outside = [
      ['-1.21 degC', '50 %'],
      ['99.1 degC', '50 %'],
      ['20 degC', '4.98 %'],
      ['20 degC', '0.01 %'],
      ['20 degC', '95.02 %'],
    ] as const;
    for (const [t, h] of inside) expect(out(t, h), `${t} ${h}`).toBe(false);
    for (const [t, h] of outside) expect(out(t, h), `${t} ${h}`).toBe(true);
  });
  it('draws its own curve beside those of 0, 30, 50 and 70 °C, leaving out one that is near', () => {
    const names = (temperature: string) => [
      ...lines(equilibriumMoisture({ temperature, humidity: '50 %' }).chart).keys(),
    ];
    expect(names('20 degC')).toEqual(['20 °C (this air)', '0 °C', '30 °C', '50 °C', '70 °C']);
    expect(names('26 degC')).toEqual(['26 °C (this air)', '0 °C', '50 °C', '70 °C']);
    expect(names('34 degC')).toEqual(['34 °C (this air)', '0 °C', '50 °C', '70 °C']);
    expect(names('25.9 degC')).toContain('30 °C');
    const r = equilibriumMoisture({ temperature: '20 degC', humidity: '50 %' });
    const at = (lines(r.chart).get('20 °C (this air)') ?? []).find(([x]) => x === 50);
    expect(at?.[1]).toBeCloseTo(handbook(20, 0.5), 9);
    expect((lines(r.chart).get('30 °C') ?? []).find(([x]) => x === 90)?.[1]).toBeCloseTo(
      handbook(30, 0.9),
      9,
    );
    expect(dataOf(r.chart, 'point')).toContainEqual(
      expect.objectContaining({ x: 50, y: expect.closeTo(handbook(20, 0.5), 9) as number }),
    );
    expect(text(r.chart)).toContain('"9.3 % moisture"');
    expect(dataOf(r.chart, 'rule')[0]?.['y']).toBeCloseTo(handbook(20, 0.5), 9);
  });
});

describe('humidity for a moisture', () => {
  it('takes what saturated air gives, and nothing wetter', () => {
    const most = handbook(20, 1) / 100;
    expect(humidityFor.evaluate({ temperature: 20, moisture: most - 1e-12 }).humidity).toBeCloseTo(1, 9);
    const exactly = equilibriumMoisture.evaluate({ temperature: 20, humidity: 1 }).moisture;
    expect(humidityFor.evaluate({ temperature: 20, moisture: exactly }).humidity).toBeCloseTo(1, 12);
    // The greatest is given a tenth of a per cent lower.
    expect(() => humidityFor({ temperature: '20 degC', moisture: '39 %' })).toThrow(
      new RegExp(`moisture: got 39.0 %, takes at most ${(Math.floor(most * 1000) / 10).toFixed(1)} %`),
    );
  });
  it('cautions where the air found lies outside Table 4-2', () => {
    const found = (moisture: string) => said(humidityFor({ temperature: '20 degC', moisture }));
    expect(found('9 %')).not.toMatch(/Table 4-2/);
    expect(found('26 %')).toMatch(/Table 4-2/);
  });
  it('keeps dry wood in dry air', () => {
    expect(humidityFor.evaluate({ temperature: 20, moisture: 0 }).humidity).toBe(0);
  });
  it('draws the curve with the humidity found', () => {
    const r = humidityFor({ temperature: '20 degC', moisture: '9.271 %' });
    const curve = [...lines(r.chart).values()][0] ?? [];
    expect(curve.find(([x]) => x === 50)?.[1]).toBeCloseTo(handbook(20, 0.5), 9);
    expect(curve.at(-1)?.[0]).toBe(98);
    expect(dataOf(r.chart, 'point')).toContainEqual(
      expect.objectContaining({ x: expect.closeTo(50, 0) as number, y: expect.closeTo(9.271, 9) as number }),
    );
    expect(text(r.chart)).toMatch(/Wood at rest in air of 20 °C/);
    expect(text(r.chart)).toMatch(/"50 % humidity"/);
    expect(dataOf(r.chart, 'rule')[0]?.['x']).toBeCloseTo(50, 2);
    expect(worked(r)).toMatch(/moisture at the humidity found/);
  });
});

describe('a state of the wood', () => {
  const from = movementAcross.inputs.from;
  const top = (state: unknown) =>
    movementAcross({ width: '1 m', timber: 'white oak', from: state as string, to: '10 %' });
  it('is a moisture, a quantity, or air in one text or two parts', () => {
    expect(top('12 %').fromMoisture.in('%')).toBeCloseTo(12, 9);
    expect(top(top('12 %').fromMoisture).fromMoisture.in('%')).toBeCloseTo(12, 9);
    expect(top({ value: 12, unit: '%' }).fromMoisture.in('%')).toBeCloseTo(12, 9);
    for (const air of [
      { temperature: '20 degC', humidity: '50 %' },
      '20 degC, 50 %',
      '20 degC 50 % rh',
      '68 degF; 50 % RH',
    ])
      expect(top(air).fromMoisture.in('%'), JSON.stringify(air)).toBeCloseTo(handbook(20, 0.5), 9);
  });
  it('names the half of the air that is missing', () => {
    expect(() => top({ temperature: '20 degC' })).toThrow(/from\.humidity: missing/);
    expect(() => top({ humidity: '50 %' })).toThrow(/from\.temperature: missing/);
    expect(() => top(12)).toThrow(/from: got 12, takes a moisture content from 0 to 300 %/);
    expect(() => top([12])).toThrow(/from: got a list of 1, takes a moisture content/);
  });
  it('says what could be meant for it, and shows it', () => {
    for (const v of ['8 %', top('8 %').fromMoisture, { temperature: 1 }]) expect(from.accepts(v)).toBe(true);
    for (const v of [8, null, ['8 %']]) expect(from.accepts(v)).toBe(false);
    expect(from.format(0.08)).toBe('8 %');
    expect(from.format({ temperature: 20, humidity: 0.5 })).toMatch(
      /^air of temperature 20 °C.*humidity 50 %$/,
    );
    const { madeAt } = seasonalMovement.inputs;
    expect(madeAt.format(undefined)).toBe('the mean of the year');
    expect(madeAt.format(0.08)).toBe('8 %');
  });
  it('is kept within 0 to 300 % where numbers come unread', () => {
    const at = (m: number) =>
      movementAcross.evaluate({
        ...movementAcross.read({ width: '1 m', timber: 'white oak', from: '8 %', to: '10 %' }),
        from: m,
      });
    expect(at(0).fromMoisture).toBe(0);
    expect(at(3).fromMoisture).toBe(3);
    for (const m of [-0.001, 3.001, NaN]) expect(() => at(m)).toThrow(/from: got .*takes a moisture content/);
  });
  it('shows how air was turned into moisture, with a caution outside the table alone', () => {
    expect(worked(top('20 degC, 50 %'))).toMatch(/W, a constant of the sorption equation/);
    expect(said(top('20 degC, 50 %'))).not.toMatch(/Table 4-2/);
    expect(said(top('20 degC, 97 %'))).toMatch(/Table 4-2/);
  });
});

describe('a year of one’s own', () => {
  const board = { width: '1000 mm', thickness: '40 mm', timber: 'white oak', lag: '0 s' } as const;
  const of = (climate: unknown) => seasonalMovement({ ...board, climate: climate as string });
  const air = (r: ReturnType<typeof of>): number[] =>
    r.months.map((m) => Number(m.airMoisture.in('%').toFixed(9)));
  const twelve = Array.from({ length: 12 }, (_, i) => i + 6);
  it('is a list of moistures, in one text or many', () => {
    expect(air(of(twelve.map((m) => `${m} %`)))).toEqual(twelve);
    expect(air(of(twelve.map((m) => ({ value: m, unit: '%' }))))).toEqual(twelve);
    expect(air(of(twelve.map((m) => `${m} %`).join(', ')))).toEqual(twelve);
    expect(air(of(twelve.map((m) => `${m} %`).join(';')))).toEqual(twelve);
    expect(() => of('6 %, 7 %')).toThrow(/climate: got 2 months, takes 12/);
  });
  it('is a list of airs, with a caution where some lies outside the table', () => {
    const states = (last: object) => [
      ...Array.from({ length: 11 }, () => ({ temperature: '20 degC', humidity: '50 %' })),
      last,
    ];
    const r = of(states({ temperature: '20 degC', humidity: '60 %' }));
    expect(r.months[0]?.airMoisture.in('%')).toBeCloseTo(handbook(20, 0.5), 9);
    expect(r.months[11]?.airMoisture.in('%')).toBeCloseTo(handbook(20, 0.6), 9);
    expect(said(r)).not.toMatch(/Table 4-2/);
    expect(said(of(states({ temperature: '20 degC', humidity: '97 %' })))).toMatch(/Table 4-2/);
    expect(said(of([...twelve.slice(1).map((m) => `${m} %`), '20 degC, 97 %']))).toMatch(/Table 4-2/);
    expect(said(of(twelve.map((m) => `${m} %`)))).not.toMatch(/Table 4-2/);
  });
  it('is a table of months, in their order where they are not named', () => {
    expect(air(of(twelve.map((m) => ({ moisture: `${m} %` }))))).toEqual(twelve);
    const named = twelve.map((m, i) => ({ month: String(12 - i), moisture: `${m} %` }));
    expect(air(of(named))).toEqual([...twelve].reverse());
    const mixed = twelve.map((m, i) => ({
      month: `month${i}`.replace(
        /month\d+/,
        ['jan', 'February', 'MAR', 'April', 'may', 'Jun', 'jul', 'August', 'Sept', 'oct', 'Nov', 'December'][
          i
        ] as string,
      ),
      ...(i === 3 ? { temperature: '20 degC', humidity: '97 %' } : { moisture: `${m} %` }),
    }));
    expect(of(mixed).months[3]?.airMoisture.in('%')).toBeCloseTo(handbook(20, 0.97), 9);
    expect(said(of(mixed))).toMatch(/Table 4-2/);
    const inside = mixed.map((m, i) =>
      i === 3 ? { month: 'Apr', temperature: '20 degC', humidity: '50 %' } : m,
    );
    expect(said(of(inside))).not.toMatch(/Table 4-2/);
    expect(said(of(named))).not.toMatch(/Table 4-2/);
  });
  it('names the month that is none, and the row that lacks a part', () => {
    const month = (name: string) =>
      of(twelve.map((m, i) => ({ month: i === 4 ? name : String(i + 1), moisture: `${m} %` })));
    for (const name of ['0', '13', 'Ma', 'Brumaire'])
      expect(() => month(name), name).toThrow(
        new RegExp(`climate\\[5\\]\\.month: got "${name}", takes a month such as "January"`),
      );
    expect(month('5').months).toHaveLength(12);
    expect(() => month('4')).toThrow(/got 1 month\(s\) twice/);
    for (const row of [
      { month: '2', temperature: '20 degC' },
      { month: '2', humidity: '50 %' },
      { month: '2' },
    ])
      expect(() =>
        of(twelve.map((m, i) => (i === 1 ? row : { month: String(i + 1), moisture: `${m} %` }))),
      ).toThrow(/climate\[2\]: got neither a moisture nor both/);
    expect(() => of(7)).toThrow(/climate: got 7, takes/);
    expect(() => of(null)).toThrow(/climate: got null, takes/);
  });
  it('says what could be meant for it', () => {
    const { climate } = seasonalMovement.inputs;
    for (const v of ['Denver', ['9 %'], { file: 'x' }]) expect(climate.accepts(v)).toBe(true);
    for (const v of [9, null, undefined]) expect(climate.accepts(v)).toBe(false);
  });
  it('without lag is as wide as the moisture of the month makes it', () => {
    // 14.6 mm for 4 points within 6 to 14 %: 3.65 mm a point from the mean, 9.5 %.
    const r = seasonalMovement({
      ...board,
      climate: [6, 7, 8, 9, 10, 11, 13, 12, 11, 10, 9, 8].map((m) => `${m} %`),
    });
    expect(r.months[0]?.width.in('mm')).toBeCloseTo(1000 - 3.5 * 3.65, 9);
    expect(r.widest.in('mm')).toBeCloseTo(1000 + 3.5 * 3.65, 9);
    expect(r.narrowest.in('mm')).toBeCloseTo(1000 - 3.5 * 3.65, 9);
    expect(r.swing.in('mm')).toBeCloseTo(7 * 3.65, 9);
    expect(r.swingLow.in('mm')).toBeCloseTo(7 * 3.65 * 0.80776, 9);
    expect(r.swingHigh.in('mm')).toBeCloseTo(7 * 3.65 * 1.19224, 9);
    expect([r.widestIn, r.narrowestIn]).toEqual(['July', 'January']);
    expect([r.driest.in('%'), r.wettest.in('%')]).toEqual([expect.closeTo(6, 9), expect.closeTo(13, 9)]);
    const made = seasonalMovement({
      ...board,
      madeAt: '8 %',
      climate: [6, 7, 8, 9, 10, 11, 13, 12, 11, 10, 9, 8].map((m) => `${m} %`),
    });
    expect(made.months[0]?.width.in('mm')).toBeCloseTo(1000 - 2 * 3.65, 9);
    expect(made.months[2]?.width.in('mm')).toBeCloseTo(1000, 9);
  });
  it('cites the place, or the equation of one’s own air', () => {
    const ids = (climate: unknown) =>
      of(climate)
        .sources.map((s) => `${s.id} ${s.locator}`)
        .join();
    expect(ids('Denver')).toMatch(/Table 13-1/);
    expect(ids(twelve.map((m) => `${m} %`))).not.toMatch(/Table 13-1/);
    expect(said(of('Denver'))).toMatch(/outdoors under cover/);
    expect(said(of(twelve.map((m) => `${m} %`)))).not.toMatch(/outdoors under cover/);
  });
});

describe('places outside the USA', () => {
  const of = (climate: string) =>
    seasonalMovement({ width: '1000 mm', thickness: '40 mm', timber: 'white oak', climate });
  it('works the moisture out from the air as printed, with its source', () => {
    // The Met Office prints for Paris in July 15.5 to 24.6 °C and 66 %.
    const july = of('Paris').months[6]!;
    const same = equilibriumMoisture({ temperature: '20.05 degC', humidity: '66 %' });
    expect(july.airMoisture.in('%')).toBeCloseTo(same.moisture.in('%'), 9);
    expect(of('Paris').sources.map((s) => s.id)).toEqual(
      expect.arrayContaining(['met-office-holiday-weather', 'fpl-gtr-190']),
    );
  });
  it('takes the middle of a morning and an afternoon, and says so', () => {
    // London in December: 87 and 81 %, 4 to 7 °C.
    const december = of('London').months[11]!;
    const same = equilibriumMoisture({ temperature: '5.5 degC', humidity: '84 %' });
    expect(december.airMoisture.in('%')).toBeCloseTo(same.moisture.in('%'), 9);
    expect(said(of('London'))).toMatch(/morning and an afternoon/);
    expect(said(of('Paris'))).not.toMatch(/morning and an afternoon/);
  });
  it('uses the wider swing where two readings differ, and names the other', () => {
    expect(said(of('Rome'))).toMatch(/Met Office prints 71 to 76 %/);
    expect(climates().filter((c) => c.place === 'Rome, Italy')).toHaveLength(1);
  });
});

describe('the lag', () => {
  const board = { width: '1000 mm', thickness: '40 mm', timber: 'white oak', climate: 'Denver' } as const;
  it('is slowing * 40² / (pi² * 8.64) days, or what is given', () => {
    const days = (more: object) => seasonalMovement({ ...board, ...more }).timeConstant.in('day');
    const bare = 1600 / (9.8696044 * 8.64);
    expect(days({})).toBeCloseTo(bare, 5);
    expect(days({ sealing: 'one face' })).toBeCloseTo(4 * bare, 5);
    // A finish slows 25 mm by its figure; thicker wood is slow by itself.
    const thin = (bare * 25 ** 2) / 1600;
    expect(days({ sealing: 'oiled', thickness: '25 mm' })).toBeCloseTo(2 * thin, 5);
    expect(days({ sealing: 'varnished', thickness: '25 mm' })).toBeCloseTo(6 * thin, 5);
    expect(days({ sealing: 'varnished' })).toBeLessThan(6 * bare);
    expect(days({ sealing: 'varnished' })).toBeGreaterThan(days({ sealing: 'oiled' }));
    expect(days({ thickness: '20 mm' })).toBeCloseTo(bare / 4, 5);
    expect(days({ lag: '12 day' })).toBeCloseTo(12, 9);
    const text = (more: object) => worked(seasonalMovement({ ...board, ...more }));
    expect(text({ lag: '12 day' })).toMatch(/The lag is given: a time constant of 12 days/);
    expect(text({ lag: '12 day' })).not.toMatch(/\(40 mm\)/);
    expect(text({})).not.toMatch(/The lag is given/);
  });
  it('weighs a month’s straight run of air by (x - 1 + e^-x) / x', () => {
    // Months alternately 0 and 1, one month long against the lag: x = 1. By symmetry the wood at a 0 is m and at a 1 is
    // 1 - m; over a rising month 1 - m = m e^-1 + (1/e), as x - 1 + e^-1 = 1/e; so m = (1 - 1/e) / (1 + 1/e).
    const month = (365.25 / 12) * 24 * 60 * 60;
    const wood = lagged([0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1], month);
    const m = (1 - Math.exp(-1)) / (1 + Math.exp(-1));
    wood.forEach((w, i) => expect(w).toBeCloseTo(i % 2 === 0 ? m : 1 - m, 12));
  });
});

describe('a meter', () => {
  const read = (reading: string, woodTemperature: string, calibrationTemperature = '20 degC') =>
    meterCorrection({ reading, woodTemperature, calibrationTemperature });
  it('gains half a point for each 5.6 °C that the wood is colder', () => {
    expect(read('12 %', '14.4 degC').moisture.in('%')).toBeCloseTo(12.5, 9);
    expect(read('12 %', '14.4 degC').correction.in('%')).toBeCloseTo(0.5, 9);
    expect(read('12 %', '31.2 degC').moisture.in('%')).toBeCloseTo(11, 9);
  });
  it('is trusted from 4 to 30 %, as the handbook gives it', () => {
    const out = (reading: string) => said(read(reading, '20 degC'));
    for (const x of ['4 %', '30 %']) expect(out(x)).not.toMatch(/can be trusted/);
    for (const x of ['3.9 %', '30.1 %'])
      expect(out(x)).toMatch(/a meter can be trusted from about 4 to 30 % moisture/);
  });
  it('is corrected straight for 28 °C, to either side', () => {
    const far = (t: string) => said(read('12 %', t));
    for (const t of ['48 degC', '-8 degC']) expect(far(t)).not.toMatch(/moderate differences/);
    for (const t of ['48.1 degC', '-8.1 degC']) expect(far(t)).toMatch(/moderate differences/);
  });
  it('is not corrected below nothing', () => {
    expect(read('0.5 %', '5.6 degC', '0 degC').moisture.value).toBe(0);
    expect(() => read('0.5 %', '5.7 degC', '0 degC')).toThrow(
      /reading: got 0.5 %, which the correction takes below 0 %/,
    );
  });
  it('draws 25 °C to either side, with a mark where the wood lies within', () => {
    const r = read('12 %', '14.4 degC');
    const curve = [...lines(r.chart).values()][0] ?? [];
    expect(curve.map(([x]) => x)).toEqual([-5, 0, 5, 10, 15, 20, 25, 30, 35, 40, 45]);
    // 25 / 5.6 halves of a point more, and less.
    expect(curve[0]?.[1]).toBeCloseTo(12 + 12.5 / 5.6, 9);
    expect(curve[10]?.[1]).toBeCloseTo(12 - 12.5 / 5.6, 9);
    const marks = (t: string) =>
      dataOf(read('12 %', t).chart, 'point').filter(
        (m) => 'x' in m && !('series' in m) && m['x'] !== undefined,
      );
    expect(marks('14.4 degC')[0]).toMatchObject({ x: 14.4, y: expect.closeTo(12.5, 9) as number });
    for (const t of ['-5 degC', '45 degC']) expect(marks(t), t).toHaveLength(1);
    for (const t of ['-5.1 degC', '45.1 degC']) expect(marks(t), t).toHaveLength(0);
    expect(text(r.chart)).toContain('12.5 %');
    expect(dataOf(r.chart, 'rule')[0]?.['y']).toBeCloseTo(12.5, 9);
    expect(text(r.chart)).toContain('A reading of 12 %');
    // No reading is drawn below nothing.
    const low = [...lines(read('1 %', '20 degC').chart).values()][0] ?? [];
    expect(low.at(-1)?.[1]).toBe(0);
  });
});
