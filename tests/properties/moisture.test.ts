import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { restraintStress } from '../../src/recipes/moisture/restraint-stress.js';
import { cupDepth } from '../../src/recipes/moisture/cup-depth.js';
import { equilibriumMoisture } from '../../src/recipes/moisture/equilibrium-moisture.js';
import { fixingSlots } from '../../src/recipes/moisture/fixing-slots.js';
import { humidityFor } from '../../src/recipes/moisture/humidity-for.js';
import { lagged, year } from '../../src/recipes/moisture/emc-lag.js';
import { meterCorrection } from '../../src/recipes/moisture/meter-correction.js';
import { moistureByWeight } from '../../src/recipes/moisture/moisture-by-weight.js';
import { movementAcross } from '../../src/recipes/moisture/movement-across.js';
import { pieceWeight } from '../../src/recipes/moisture/piece-weight.js';
import { seasonalMovement } from '../../src/recipes/moisture/seasonal-movement.js';
import { woodDensity } from '../../src/recipes/moisture/wood-density.js';

const pct = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const within = pct(6, 14);
const any = pct(0, 40);
const mm = pct(10, 3000);
const timber = fc.constantFrom(
  'white oak',
  'red oak',
  'teak',
  'Douglas-fir',
  'European spruce',
  'blackbutt',
  'unknown hardwood',
  'unknown softwood',
  'eucalypts',
  'pines',
  'purpleheart',
  'western redcedar',
);
const cut = fc.constantFrom('flat-sawn', 'quarter-sawn', 'rift-sawn');

describe('moisture of wood in air', () => {
  it('rises with humidity and turns round to 1e-9', () => {
    fc.assert(
      fc.property(pct(-1, 99), pct(0, 100), pct(0, 100), (t, a, b) => {
        const at = (h: number): number =>
          equilibriumMoisture.evaluate({ temperature: t, humidity: h / 100 }).moisture;
        if (a < b - 1e-9) expect(at(a)).toBeLessThan(at(b));
        const back = humidityFor.evaluate({ temperature: t, moisture: at(a) }).humidity;
        expect(Math.abs(back - a / 100)).toBeLessThan(1e-9);
      }),
    );
  });
  it('degrees Celsius and Fahrenheit agree', () => {
    fc.assert(
      fc.property(pct(0, 90), pct(1, 99), (t, h) => {
        const c = equilibriumMoisture({ temperature: `${t} degC`, humidity: `${h} %` }).moisture.value;
        const f = equilibriumMoisture({ temperature: `${t * 1.8 + 32} degF`, humidity: `${h} %` }).moisture
          .value;
        expect(f).toBeCloseTo(c, 10);
      }),
    );
  });
});

describe('movement', () => {
  const move = (t: string, c: string, w: number, from: number, to: number) =>
    movementAcross({ width: `${w} mm`, timber: t, cut: c, from: `${from} %`, to: `${to} %` });
  it('is exactly nothing where the moisture does not change', () => {
    fc.assert(
      fc.property(timber, cut, mm, any, (t, c, w, m) => {
        const r = move(t, c, w, m, m);
        expect([r.change.value, r.low.value, r.high.value, r.perSide.value]).toEqual([0, 0, 0, 0]);
        expect(Object.is(r.change.value, -0)).toBe(false);
      }),
      { numRuns: 60 },
    );
  });
  it('has the sign of the change of moisture, and low and high hold it', () => {
    fc.assert(
      fc.property(timber, cut, mm, any, any, (t, c, w, a, b) => {
        const r = move(t, c, w, a, b);
        const [x, y] = [Math.min(a, 22), Math.min(b, 22)];
        if (Math.abs(x - y) > 1e-6) expect(Math.sign(r.change.value)).toBe(Math.sign(y - x));
        expect(r.low.value).toBeLessThanOrEqual(r.change.value);
        expect(r.high.value).toBeGreaterThanOrEqual(r.change.value);
        expect(r.finalWidth.value).toBeGreaterThan(0);
      }),
      { numRuns: 200 },
    );
  });
  it('turned round has the opposite sign; within 6 to 14 % also the same size', () => {
    fc.assert(
      fc.property(
        timber.filter((t) => t !== 'purpleheart'),
        mm,
        within,
        within,
        (t, w, a, b) => {
          const there = move(t, 'flat-sawn', w, a, b).change.value;
          const back = move(t, 'flat-sawn', w, b, a).change.value;
          expect(back).toBeCloseTo(-there, 12);
        },
      ),
      { numRuns: 60 },
    );
  });
  it('by shrinkage from green, there and back is the width one began with', () => {
    fc.assert(
      fc.property(mm, pct(0, 29), pct(16, 30), (w, a, b) => {
        const go = (width: unknown, from: number, to: number, figure: object) =>
          movementAcross({ width, from: `${from} %`, to: `${to} %`, ...figure } as never).finalWidth;
        const shrinks = { shrinkage: '10.5 %' };
        expect(go(go(`${w} mm`, a, b, shrinks), b, a, shrinks).value).toBeCloseTo(w / 1000, 10);
        // A coefficient is taken of the first size, so 8 % of moisture there and back lose (8 * 0.00365)² at most.
        const oak = { timber: 'white oak' };
        const back = go(go(`${w} mm`, a, b, oak), b, a, oak).value / (w / 1000);
        expect(Math.abs(back - 1)).toBeLessThanOrEqual(0.0292 ** 2 + 1e-12);
      }),
      { numRuns: 60 },
    );
  });
  it('grows in proportion to width, and inches agree with millimetres', () => {
    fc.assert(
      fc.property(timber, mm, within, within, (t, w, a, b) => {
        const one = move(t, 'flat-sawn', w, a, b).change.value;
        expect(move(t, 'flat-sawn', 2 * w, a, b).change.value).toBeCloseTo(2 * one, 11);
        const inches = movementAcross({ width: `${w / 25.4} in`, timber: t, from: `${a} %`, to: `${b} %` })
          .change.value;
        expect(inches).toBeCloseTo(one, 11);
      }),
      { numRuns: 40 },
    );
  });
  it('of a ring angle lies between quarter and flat, with both ends met', () => {
    fc.assert(
      fc.property(pct(0, 90), within, within, (angle, a, b) => {
        const [flat, quarter] = [
          move('white oak', 'flat-sawn', 500, a, b).change.value,
          move('white oak', 'quarter-sawn', 500, a, b).change.value,
        ];
        const r = move('white oak', `${angle} deg`, 500, a, b).change.value;
        expect(r).toBeGreaterThanOrEqual(Math.min(flat, quarter) - 1e-12);
        expect(r).toBeLessThanOrEqual(Math.max(flat, quarter) + 1e-12);
        expect(move('white oak', '0 deg', 500, a, b).change.value).toBeCloseTo(flat, 13);
        expect(move('white oak', '90 deg', 500, a, b).change.value).toBeCloseTo(quarter, 13);
      }),
      { numRuns: 60 },
    );
  });
  it('of the free edge is in proportion to its distance from where the top is held', () => {
    fc.assert(
      fc.property(mm, pct(0, 100), (w, share) => {
        const at = (fixedAt: string) =>
          movementAcross({
            width: `${w} mm`,
            timber: 'teak',
            from: '8 %',
            to: '12 %',
            fixedAt: fixedAt,
          });
        const whole = at('edge').change.value;
        expect(at('edge').perSide.value).toBeCloseTo(whole, 13);
        expect(at('centre').perSide.value).toBeCloseTo(whole / 2, 13);
        expect(at(`${(w * share) / 100} mm`).perSide.value).toBeCloseTo(
          (whole * Math.max(share, 100 - share)) / 100,
          12,
        );
      }),
      { numRuns: 40 },
    );
  });
  it('of strips is the sum of the strips', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ timber, width: pct(20, 200), cut }), { minLength: 1, maxLength: 8 }),
        any,
        any,
        (strips, a, b) => {
          const top = movementAcross({
            strips: strips.map((s) => ({ ...s, width: `${s.width} mm` })),
            from: `${a} %`,
            to: `${b} %`,
          });
          const sum = strips.reduce((x, s) => x + move(s.timber, s.cut, s.width, a, b).change.value, 0);
          expect(top.change.value).toBeCloseTo(sum, 10);
          expect(top.finalWidth.value).toBeCloseTo(strips.reduce((x, s) => x + s.width / 1000, 0) + sum, 10);
        },
      ),
      { numRuns: 60 },
    );
  });
  it('from air is movement from the moisture of that air', () => {
    fc.assert(
      fc.property(pct(5, 35), pct(25, 75), pct(25, 75), (t, h1, h2) => {
        const [m1, m2] = [h1, h2].map(
          (h) => equilibriumMoisture({ temperature: `${t} degC`, humidity: `${h} %` }).moisture,
        );
        const air = movementAcross({
          width: '600 mm',
          timber: 'teak',
          from: { temperature: `${t} degC`, humidity: `${h1} %` },
          to: `${t} degC, ${h2} %`,
        });
        const known = movementAcross({ width: '600 mm', timber: 'teak', from: m1!, to: m2! });
        expect(air.change.value).toBeCloseTo(known.change.value, 12);
      }),
      { numRuns: 40 },
    );
  });
});

describe('the year', () => {
  const months = fc.array(pct(0.04, 0.25), { minLength: 12, maxLength: 12 });
  const mean = (l: readonly number[]): number => l.reduce((a, b) => a + b, 0) / l.length;
  it('without lag is the air, with endless lag its mean', () => {
    fc.assert(
      fc.property(months, (air) => {
        expect(lagged(air, 0)).toEqual(air);
        lagged(air, 1e-3).forEach((m, i) => expect(m).toBeCloseTo(air[i] as number, 9));
        lagged(air, year * 1e7).forEach((m) => expect(m).toBeCloseTo(mean(air), 6));
      }),
    );
  });
  it('keeps its mean and swings less the longer the lag', () => {
    fc.assert(
      fc.property(months, pct(1, 400), (air, days) => {
        const wood = lagged(air, days * 86400);
        const slower = lagged(air, 2 * days * 86400);
        const swing = (l: readonly number[]): number => Math.max(...l) - Math.min(...l);
        // Sampled monthly, the mean holds as a mean over the year only roughly when the lag is shorter than the month.
        if (days > 60) expect(mean(wood)).toBeCloseTo(mean(air), 3);
        // Read off once a month, the highest month may be the next one: a hair of slack for that.
        expect(swing(slower)).toBeLessThanOrEqual(swing(wood) + 0.01 * swing(air));
        expect(Math.max(...wood)).toBeLessThanOrEqual(Math.max(...air) + 1e-12);
        expect(Math.min(...wood)).toBeGreaterThanOrEqual(Math.min(...air) - 1e-12);
      }),
    );
  });
  it('solves its own equation: stepped finely it is the same', () => {
    fc.assert(
      fc.property(months, pct(5, 200), (air, days) => {
        // A fine Euler walk of dM/dt = (air - M)/tau over enough years to forget its start.
        const tau = days * 86400;
        const steps = 400;
        const dt = year / 12 / steps;
        let m = mean(air);
        const out = new Array<number>(12);
        for (let turn = 0; turn < 8; turn++) {
          for (let i = 0; i < 12; i++) {
            out[i] = m;
            for (let k = 0; k < steps; k++) {
              const u =
                (air[i] as number) +
                (((air[(i + 1) % 12] as number) - (air[i] as number)) * (k + 0.5)) / steps;
              m += ((u - m) * dt) / (tau + dt / 2);
            }
          }
        }
        lagged(air, tau).forEach((w, i) => expect(w).toBeCloseTo(out[i] as number, 4));
      }),
      { numRuns: 15 },
    );
  });
  it('of air that never changes leaves the top as it is', () => {
    fc.assert(
      fc.property(pct(3, 25), timber, (m, t) => {
        const r = seasonalMovement({
          width: '640 mm',
          thickness: '40 mm',
          timber: t,
          climate: Array.from({ length: 12 }, () => `${m} %`),
        });
        expect(r.swing.value).toBeLessThan(1e-12);
        expect(r.widest.value).toBeCloseTo(0.64, 10);
      }),
      { numRuns: 30 },
    );
  });
  it('in the recipe: no lag gives the air, an endless one no swing', () => {
    const common = { width: '640 mm', thickness: '40 mm', timber: 'white oak', climate: 'Denver' } as const;
    const none = seasonalMovement({ ...common, lag: '0 s' });
    for (const m of none.months) expect(m.moisture.value).toBe(m.airMoisture.value);
    const endless = seasonalMovement({ ...common, lag: '1e6 day' });
    expect(endless.swing.value).toBeLessThan(none.swing.value / 1e3);
    expect(seasonalMovement({ ...common, thickness: '20 mm' }).swing.value).toBeGreaterThan(
      seasonalMovement({ ...common, thickness: '60 mm' }).swing.value,
    );
  });
});

describe('slots, cup and cramped tops', () => {
  it('travel grows from the held line, and is half the movement at a free edge of a top held in its middle', () => {
    fc.assert(
      fc.property(mm, pct(0, 30), (w, m) => {
        const r = fixingSlots({
          width: `${w} mm`,
          positions: ['0 mm', `${w / 2} mm`, `${w} mm`],
          movement: `${m} mm`,
        });
        expect(r.slots[0]!.travel.value).toBeCloseTo(m / 2000, 12);
        expect(r.slots[1]!.travel.value).toBeCloseTo(0, 12);
        expect(r.slots[2]!.travel.value).toBeCloseTo(m / 2000, 12);
      }),
      { numRuns: 60 },
    );
  });
  it('spacing keeps the edge distance and stands evenly from the held line', () => {
    fc.assert(
      fc.property(pct(200, 2000), pct(40, 400), (w, s) => {
        const r = fixingSlots({ width: `${w} mm`, spacing: `${s} mm`, movement: '10 mm' });
        const at = r.slots.map((x) => x.position.in('mm'));
        expect(Math.min(...at)).toBeGreaterThanOrEqual(30 - 1e-6);
        expect(Math.max(...at)).toBeLessThanOrEqual(w - 30 + 1e-6);
        for (let i = 1; i < at.length; i++)
          expect((at[i] as number) - (at[i - 1] as number)).toBeCloseTo(s, 6);
      }),
      { numRuns: 60 },
    );
  });
  it('cup falls with the square of the width and has none where nothing changes', () => {
    fc.assert(
      fc.property(pct(40, 300), within, within, (w, a, b) => {
        const cup = (x: number): number =>
          cupDepth({
            width: `${x} mm`,
            timber: 'white oak',
            ringRadius: '400 mm',
            from: `${a} %`,
            to: `${b} %`,
          }).cup.value;
        expect(cup(w)).toBeCloseTo(4 * cup(w / 2), 12);
        expect(cup(w)).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 60 },
    );
    expect(
      cupDepth({ width: '200 mm', timber: 'teak', ringRadius: '200 mm', from: '10 %', to: '10 %' }).side,
    ).toMatch(/^neither/);
    expect(
      cupDepth({ width: '200 mm', timber: 'teak', ringRadius: '200 mm', from: '12 %', to: '8 %' }).side,
    ).toMatch(/^the bark side/);
    expect(
      cupDepth({ width: '200 mm', timber: 'teak', ringRadius: '200 mm', from: '8 %', to: '12 %' }).side,
    ).toMatch(/^the heart side/);
  });
  it('a cramped top strains by its free movement over its width', () => {
    fc.assert(
      fc.property(timber, mm, within, within, (t, w, a, b) => {
        const free = movementAcross({ width: `${w} mm`, timber: t, from: `${a} %`, to: `${b} %` }).change
          .value;
        const held = restraintStress({ width: `${w} mm`, timber: t, from: `${a} %`, to: `${b} %` });
        expect(held.strain.value).toBeCloseTo(Math.abs(free) / (w / 1000), 12);
        expect(held.sense).toBe(free > 0 ? 'compression' : free < 0 ? 'tension' : 'none');
      }),
      { numRuns: 60 },
    );
  });
});

describe('weights', () => {
  it('weighing and target agree', () => {
    fc.assert(
      fc.property(pct(1, 1e4), pct(0, 250), (dry, m) => {
        const wet = dry * (1 + m / 100);
        const r = moistureByWeight({ wetMass: `${wet} g`, ovenDryMass: `${dry} g`, target: `${m} %` });
        expect(r.moisture.in('%')).toBeCloseTo(m, 7);
        expect(r.targetMass!.in('g')).toBeCloseTo(wet, 6);
      }),
      { numRuns: 60 },
    );
  });
  it('density rises with moisture, and a piece weighs its volume times it', () => {
    fc.assert(
      fc.property(
        timber.filter((t) => t !== 'purpleheart'),
        pct(0, 100),
        pct(0, 100),
        (t, a, b) => {
          const rho = (m: number): number => woodDensity({ timber: t, moisture: `${m} %` }).density.value;
          if (a < b - 1e-6) expect(rho(a)).toBeLessThan(rho(b));
          const piece = pieceWeight({ dimensions: '2 x 0.5 x 0.04 m', timber: t, moisture: `${a} %` });
          expect(piece.mass.value).toBeCloseTo(0.04 * rho(a), 9);
          expect(pieceWeight({ volume: '0.04 m3', timber: t, moisture: `${a} %` }).mass.value).toBeCloseTo(
            piece.mass.value,
            10,
          );
        },
      ),
      { numRuns: 60 },
    );
  });
  it('a meter reads true at its own temperature, low in cold wood and high in warm', () => {
    fc.assert(
      fc.property(pct(6, 30), pct(-20, 60), (reading, t) => {
        const r = meterCorrection({
          reading: `${reading} %`,
          woodTemperature: `${t} degC`,
          calibrationTemperature: '20 degC',
        });
        expect(Math.sign(r.correction.value)).toBe(Math.sign(Number((20 - t).toFixed(12))));
      }),
      { numRuns: 60 },
    );
  });
});
