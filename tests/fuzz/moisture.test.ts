import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { restraintStress } from '../../src/recipes/moisture/restraint-stress.js';
import { cupDepth } from '../../src/recipes/moisture/cup-depth.js';
import { equilibriumMoisture } from '../../src/recipes/moisture/equilibrium-moisture.js';
import { fixingSlots } from '../../src/recipes/moisture/fixing-slots.js';
import { humidityFor } from '../../src/recipes/moisture/humidity-for.js';
import { meterCorrection } from '../../src/recipes/moisture/meter-correction.js';
import { moistureByWeight } from '../../src/recipes/moisture/moisture-by-weight.js';
import { movementAcross } from '../../src/recipes/moisture/movement-across.js';
import { pieceWeight } from '../../src/recipes/moisture/piece-weight.js';
import { seasonalMovement } from '../../src/recipes/moisture/seasonal-movement.js';
import { woodDensity } from '../../src/recipes/moisture/wood-density.js';
import { hostileRuns } from './seeded-random.js';
import { unquoted } from './unquoted.js';

/** The refusal that `run` raises, as one line. */
function refusal(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    expect(error, String(error)).toBeInstanceOf(InputError);
    expect((error as InputError).message).not.toMatch(/\n|NaN|undefined|\[object/);
    return (error as InputError).message;
  }
  throw new Error('was not refused');
}
const top = { width: '640 mm', timber: 'white oak', from: '8 %', to: '12 %' } as const;
const given = (more: object): never => ({ ...top, ...more }) as never;

describe('moisture out of reach', () => {
  it.each(['-1 %', '-0.001 %', '301 %', '8', '8 mm', '8 degC', 'dry', '', '--8 %', '1e400 %'])(
    'from %j is refused by name',
    (from) => {
      expect(refusal(() => movementAcross(given({ from })))).toMatch(/^movementAcross: from: got .*takes/);
    },
  );
  it('counts only to fibre saturation, and says so', () => {
    const wet = movementAcross({ ...top, from: '120 %', to: '30 %' });
    expect(wet.change.value).toBe(0);
    const r = movementAcross({ ...top, from: '60 %', to: '10 %' });
    expect(r.change.value).toBe(movementAcross({ ...top, from: '30 %', to: '10 %' }).change.value);
    expect(r.cautions.map((c) => c.text).join()).toMatch(
      /does not move above fibre saturation: moisture was counted up to 30 %/,
    );
    expect(
      movementAcross({ ...top, timber: 'western redcedar', from: '60 %', to: '10 %' })
        .cautions.map((c) => c.text)
        .join(),
    ).toMatch(/counted up to 22 %/);
  });
  it('says which rule it used, and when the change crosses the range', () => {
    expect(movementAcross(top).ruleUsed).toMatch(/coefficient/);
    const crossing = movementAcross({ ...top, from: '18 %', to: '9 %' });
    expect(crossing.ruleUsed).toBe(
      'movement coefficient from 6 to 14 % moisture, shrinkage from green outside',
    );
    expect(crossing.toText()).toMatch(/18 % to 9 % crosses the end of the 6 to 14 %/);
    const beyond = movementAcross({ ...top, timber: 'blackbutt', from: '18 %', to: '9 %' });
    expect(beyond.cautions.some((c) => c.level === 'range' && /beyond its range/.test(c.text))).toBe(true);
  });
});

describe('air out of the table', () => {
  it('is answered with a caution where the equation still holds', () => {
    for (const air of [
      { temperature: '-15 degC', humidity: '80 %' },
      { temperature: '20 degC', humidity: '99 %' },
      { temperature: '20 degC', humidity: '2 %' },
    ]) {
      expect(
        equilibriumMoisture(air).cautions.some((c) => c.level === 'range' && /Table 4-2/.test(c.text)),
        JSON.stringify(air),
      ).toBe(true);
      expect(movementAcross(given({ to: air })).cautions.some((c) => c.level === 'range')).toBe(true);
    }
    expect(
      equilibriumMoisture({ temperature: '20 degC', humidity: '50 %' }).cautions.some(
        (c) => c.level === 'range',
      ),
    ).toBe(false);
  });
  it.each([
    ['temperature', '500 degC'],
    ['temperature', '-300 degC'],
    ['temperature', '20'],
    ['humidity', '101 %'],
    ['humidity', '-1 %'],
    ['humidity', '50'],
  ])('%s %s is refused', (name, value) => {
    expect(
      refusal(() => equilibriumMoisture({ temperature: '20 degC', humidity: '50 %', [name]: value })),
    ).toMatch(new RegExp(`equilibriumMoisture: ${name}: got`));
    expect(
      refusal(() =>
        movementAcross(given({ to: { temperature: '20 degC', humidity: '50 %', [name]: value } })),
      ),
    ).toMatch(new RegExp(`to\\.${name}: got`));
  });
  it('several wrong fields come together', () => {
    const message = refusal(() =>
      movementAcross({ width: '-3 mm', timber: 'spoted gum', cut: 'sideways', from: '-1 %', to: 'wet' }),
    );
    for (const name of ['width', 'timber', 'cut', 'from', 'to']) expect(message).toContain(`${name}: `);
    expect(message).toContain('no species "spoted gum"; did you mean "spotted gum"?');
  });
  it('moisture that no air keeps', () => {
    expect(refusal(() => humidityFor({ temperature: '20 degC', moisture: '35 %' }))).toMatch(
      /moisture: got 35\.0 %, takes at most \d+\.\d %/,
    );
  });
});

describe('a timber without the data', () => {
  it('says what there is, and offers the groups', () => {
    const message = refusal(() => movementAcross(given({ timber: 'grey gum' })));
    expect(message).toMatch(
      /timber: grey gum has no movement coefficients and no green-to-oven-dry shrinkage in the data; it has .*density/,
    );
    expect(message).toMatch(
      /give .*"unknown hardwood".*"eucalypts"|give .*"eucalypts".*"unknown hardwood"|"unknown hardwood"/,
    );
  });
  it('says which direction is published', () => {
    expect(refusal(() => movementAcross(given({ timber: 'padauk', cut: 'quarter-sawn' })))).toMatch(
      /cut: padauk has a published figure for flat-sawn timber alone/,
    );
    expect(movementAcross(given({ timber: 'padauk' })).change.value).toBeGreaterThan(0);
  });
  it('says which strip, and that a cup needs two directions', () => {
    const strips = [
      { timber: 'teak', width: '50 mm', count: 4 },
      { timber: 'padauk', width: '50 mm', cut: 'quarter-sawn' },
    ];
    expect(refusal(() => movementAcross({ strips, from: '8 %', to: '12 %' }))).toMatch(
      /strips\[2\]\.cut: padauk/,
    );
    expect(
      refusal(() =>
        cupDepth({ width: '200 mm', timber: 'padauk', ringRadius: '200 mm', from: '12 %', to: '8 %' }),
      ),
    ).toMatch(/timber: padauk has a published figure for one direction alone/);
  });
  it('answers a group by a range', () => {
    const r = movementAcross(given({ timber: 'unknown hardwood' }));
    expect(r.low.value).toBeLessThan(r.change.value);
    expect(r.high.value).toBeGreaterThan(r.change.value);
    expect(r.toText()).toMatch(/10th percentile, median and 90th percentile over \d+ published species/);
  });
});

describe('strips', () => {
  const strips = [
    { timber: 'white oak', width: '80 mm' },
    { timber: 'teak', width: '60 mm' },
  ];
  it.each([
    [
      { width: '640 mm', strips, from: '8 %', to: '12 %' },
      /width: got 640\.0 mm, but the strips add up to 140\.0 mm/,
    ],
    [{ timber: 'teak', strips, from: '8 %', to: '12 %' }, /timber: given together with strips/],
    [{ from: '8 %', to: '12 %' }, /width: missing.*timber: missing/],
    [{ strips: [], from: '8 %', to: '12 %' }, /strips: got 0 rows/],
    [{ strips: [{ timber: 'white oak' }], from: '8 %', to: '12 %' }, /strips\[1\]\.width: missing/],
    [
      {
        strips: [
          { timber: 'wite oak', width: '80' },
          { timber: 'teak', width: '60 mm', count: 0 },
        ],
        from: '8 %',
        to: '12 %',
      },
      /strips\[1\]\.timber.*did you mean "white oak".*strips\[1\]\.width.*strips\[2\]\.count/,
    ],
    [
      { strips: 'nowhere.csv', from: '8 %', to: '12 %' },
      /strips: got the file "nowhere\.csv", which does not exist/,
    ],
    [{ strips, coefficient: 0.003, from: '8 %', to: '12 %' }, /strips: given together with coefficient/],
  ])('%#', (input, message) => {
    expect(refusal(() => movementAcross(input as never))).toMatch(message);
  });
  it('comes from CSV with a unit in its header', () => {
    const r = movementAcross({
      strips: 'timber,width (mm),cut\nwhite oak,80,flat-sawn\nteak,60,\n',
      from: '8 %',
      to: '12 %',
    });
    expect(r.change.in('mm')).toBeCloseTo(80 * 0.00365 * 4 + 60 * 0.00186 * 4, 9);
  });
});

describe('a year', () => {
  const board = { width: '640 mm', thickness: '40 mm', timber: 'white oak' } as const;
  const flat = (n: number): string[] => Array.from({ length: n }, () => '10 %');
  it.each([
    ['Atlantis', /climate: no place "Atlantis"/],
    ['Portland', /"Portland, ME" or "Portland, OR"/],
    ['', /climate: got an empty text/],
    [flat(11), /climate: got 11 months, takes 12/],
    [flat(13), /got 13 months/],
    [[...flat(11), '-1 %'], /climate\[12\]: got/],
    ['year.csv', /does not exist here/],
    ['month,temperature,humidity\nJan,20,50\n', /climate: got 1 rows, takes 12/],
    [42, /climate: got 42/],
    [
      `month,moisture\n${Array.from({ length: 12 }, () => 'Jan,9 %').join('\n')}`,
      /climate: got 11 month\(s\) twice/,
    ],
    [
      `month,temperature (degC)\n${Array.from({ length: 12 }, (_, i) => `${i + 1},20`).join('\n')}`,
      /climate\[1\]: got neither a moisture nor both/,
    ],
  ])('%#: %j', (climate, message) => {
    expect(refusal(() => seasonalMovement({ ...board, climate } as never))).toMatch(message);
  });
  it("of one's own, as CSV of air, in any order of months", () => {
    const rows = Array.from(
      { length: 12 },
      (_, i) =>
        `${['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'][i]},${18 + i / 4},${40 + 3 * i}`,
    );
    const there = seasonalMovement({
      ...board,
      climate: `month,temperature (degC),humidity (%)\n${rows.join('\n')}`,
    });
    const back = seasonalMovement({
      ...board,
      climate: `month,temperature (degC),humidity (%)\n${[...rows].reverse().join('\n')}`,
    });
    expect(back.swing.value).toBe(there.swing.value);
    const air = equilibriumMoisture({ temperature: '18 degC', humidity: '40 %' }).moisture.value;
    expect(there.months[0]!.airMoisture.value).toBeCloseTo(air, 14);
    expect(there.months.map((m) => m.month).slice(0, 2)).toEqual(['January', 'February']);
  });
});

describe('the other recipes', () => {
  it.each([
    [
      () => moistureByWeight({ wetMass: '90 g', ovenDryMass: '100 g' }),
      /wetMass: got 90\.0 g, less than the oven-dry mass/,
    ],
    [
      () => meterCorrection({ reading: '2 %', woodTemperature: '80 degC' }),
      /reading: got 2\.0 %, which the correction takes below 0 %/,
    ],
    [() => woodDensity({ moisture: '12 %' }), /timber: missing/],
    [
      () => woodDensity({ timber: 'teak', specificGravity: 0.5 }),
      /specificGravity: given together with timber/,
    ],
    [() => pieceWeight({ timber: 'teak' }), /dimensions: missing/],
    [() => pieceWeight({ timber: 'teak', length: '2 m', width: '300 mm' }), /thickness: missing/],
    [() => pieceWeight({ timber: 'teak', dimensions: '2 m x 300 mm' }), /dimensions: got "2 m x 300 mm"/],
    [
      () => pieceWeight({ timber: 'teak', dimensions: '2 m x 300 mm x 40 mm', volume: '1 m3' }),
      /volume: given together/,
    ],
    [() => fixingSlots({ width: '640 mm', movement: '8 mm' }), /positions: missing/],
    [
      () => fixingSlots({ width: '640 mm', movement: '8 mm', positions: ['700 mm'] }),
      /positions\[1\]: got 700\.0 mm/,
    ],
    [() => fixingSlots({ width: '640 mm', positions: ['60 mm'] }), /movement: missing/],
    [
      () => fixingSlots({ width: '640 mm', positions: ['60 mm'], timber: 'teak' }),
      /from: missing.*to: missing/,
    ],
    [() => fixingSlots({ width: '640 mm', spacing: '0.001 mm', movement: '8 mm' }), /spacing: got 0\.00 mm/],
    [
      () => fixingSlots({ width: '40 mm', spacing: '50 mm', movement: '1 mm' }),
      /edgeDistance: got 30\.0 mm, which leaves no place/,
    ],
    [
      () => cupDepth({ width: '400 mm', timber: 'teak', ringRadius: '100 mm', from: '12 %', to: '8 %' }),
      /ringRadius: got 100\.0 mm, takes at least half the width/,
    ],
    [() => restraintStress({ width: '0 mm', timber: 'teak', from: '12 %', to: '8 %' }), /width: got "0 mm"/],
  ])('%#', (run, message) => {
    expect(refusal(run)).toMatch(message);
  });

  it('no text makes nonsense of an answer', () => {
    const nasty = fc.oneof(
      fc.string({ maxLength: 60 }),
      fc.stringMatching(/^[-+0-9.,% a-zA-Z/]{0,20}$/),
      fc.constantFrom('1e308 %', '-0 %', '0 %', '30 %', '21 degC, 50 %', '21 degC,', 'degC 50 %'),
    );
    fc.assert(
      fc.property(nasty, nasty, nasty, (from, cut, timber) => {
        try {
          const r = movementAcross({ width: '500 mm', timber, cut, from, to: '10 %' });
          expect(Number.isFinite(r.change.value)).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
          expect(unquoted((error as InputError).message)).not.toMatch(/\n|NaN/);
        }
      }),
      { numRuns: hostileRuns(300) },
    );
  });
});
