import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boardMeasure } from '../../src/recipes/stock/board-measure.js';
import { flatteningLoss } from '../../src/recipes/stock/flattening-loss.js';
import { pileYield } from '../../src/recipes/stock/pile-yield.js';

const mm = (low: number, high: number) => fc.integer({ min: low, max: high });

describe('board measure', () => {
  it('is the same in inches and in millimetres, and grows in proportion', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 24 }),
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 50 }),
        (t, w, l, n) => {
          const inch = boardMeasure({ thickness: `${t} in`, width: `${w} in`, length: `${l} ft`, count: n });
          const metric = boardMeasure({
            thickness: `${t * 25.4} mm`,
            width: `${w * 25.4} mm`,
            length: `${l * 304.8} mm`,
            count: n,
          });
          expect(metric.boardFeet.in('bf')).toBeCloseTo((n * t * w * l) / 12, 6);
          expect(inch.boardFeet.in('bf')).toBeCloseTo(metric.boardFeet.in('bf'), 6);
          expect(inch.superFeet.in('super ft')).toBeCloseTo(inch.boardFeet.in('bf'), 6);
          expect(inch.boardFeet.in('m3')).toBeCloseTo(inch.volume.in('m3'), 9);
        },
      ),
    );
  });

  it('brings every way of quoting to one price', () => {
    const size = { length: '3.2 m', width: '210 mm', thickness: '45 mm', count: 7 };
    const first = boardMeasure({ ...size, price: '€950/m3' });
    const ways = [
      `€${first.pricePerBoardFoot?.in('money/bf')}/bf`,
      `€${first.pricePerMetre?.in('money/m')}/m`,
      `€${first.pricePerPiece?.value} each`,
      `€${first.pricePerPiece?.value}`,
    ];
    for (const price of ways)
      expect(boardMeasure({ ...size, price }).price?.value).toBeCloseTo(950 * 7 * 3.2 * 0.21 * 0.045, 6);
    expect(first.price?.currency).toBe('€');
  });
});

describe('flattening', () => {
  it('never loses more after a further rip or crosscut, and nothing from a flat board', () => {
    fc.assert(
      fc.property(
        mm(10, 80),
        mm(60, 400),
        mm(300, 4000),
        fc.double({ min: 0, max: 10, noNaN: true }),
        mm(0, 20),
        mm(0, 20),
        mm(0, 8),
        mm(0, 6),
        (t, w, l, cup, bow, twist, rips, crosscuts) => {
          const board = { thickness: `${t} mm`, width: `${w} mm`, length: `${l} mm` };
          const bent = { ...board, cup: `${cup} mm`, bow: `${bow} mm`, twist: `${twist} mm` };
          const now = flatteningLoss({ ...bent, rips, crosscuts }).loss.value;
          expect(flatteningLoss({ ...bent, rips: rips + 1, crosscuts }).loss.value).toBeLessThanOrEqual(
            now + 1e-12,
          );
          expect(flatteningLoss({ ...bent, rips, crosscuts: crosscuts + 1 }).loss.value).toBeLessThanOrEqual(
            now + 1e-12,
          );
          expect(flatteningLoss({ ...board, rips, crosscuts }).loss.value).toBe(0);
        },
      ),
    );
  });

  it('splits the loss by cause without remainder', () => {
    const r = flatteningLoss({
      thickness: '50 mm',
      width: '220 mm',
      length: '2.4 m',
      cup: '5 mm',
      bow: '9 mm',
      twist: '7 mm',
      rips: 2,
      crosscuts: 1,
      kerf: '3 mm',
      cleanUp: '0.5 mm',
    });
    expect(r.byCause.reduce((s, c) => s + c.loss.value, 0)).toBeCloseTo(r.loss.value, 12);
    expect(r.dressedThickness.value).toBeCloseTo(0.05 - r.loss.value, 12);
  });
});

const row = fc.record({
  group: fc.constantFrom('rafter', 'floorboard', 'joist'),
  count: fc.integer({ min: 1, max: 9 }),
  length: mm(700, 4000).map((v) => `${v} mm`),
  width: mm(60, 250).map((v) => `${v} mm`),
  thickness: mm(16, 60).map((v) => `${v} mm`),
  endLoss: mm(0, 300).map((v) => `${v} mm`),
  faultLength: mm(0, 300).map((v) => `${v} mm`),
  cup: fc.integer({ min: 0, max: 30 }).map((v) => `${v / 10} mm`),
});

describe('the pile', () => {
  it('never gives more than it holds; groups add up; the peak is the greatest of all thicknesses', () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 12 }), fc.boolean(), (boards, resaw) => {
        const r = pileYield({ boards, kerf: '3 mm', plane: '1 mm', resaw });
        expect(r.yield.value).toBeGreaterThan(0);
        expect(r.yield.value).toBeLessThanOrEqual(1);
        expect(r.peakYield.value).toBeGreaterThanOrEqual(r.yield.value - 1e-6);
        for (const key of ['area', 'volume', 'usableLength'] as const) {
          expect(r.byGroup.reduce((s, g) => s + g[key].value, 0)).toBeCloseTo(r[key].value, 9);
        }
        for (let t = 2; t <= 60; t += 3.7) {
          try {
            expect(
              pileYield({ boards, kerf: '3 mm', plane: '1 mm', resaw, target: `${t} mm` }).yield.value,
            ).toBeLessThanOrEqual(r.peakYield.value + 2e-5);
          } catch (error) {
            expect(String(error)).toContain('target');
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('reads the same from a list, a data frame and CSV text, in millimetres or inches', () => {
    const list = [
      {
        group: 'rafter',
        count: 2,
        length: '2310 mm',
        width: '97 mm',
        thickness: '47 mm',
        endLoss: '110 mm',
        faultLength: '140 mm',
        cup: '1 mm',
      },
      {
        group: 'floorboard',
        count: 3,
        length: '1620 mm',
        width: '142 mm',
        thickness: '22 mm',
        endLoss: '65 mm',
        faultLength: '120 mm',
        cup: '1.5 mm',
      },
    ];
    const csv =
      'group,count,length (mm),width_mm,thickness [mm],endLoss (mm),faultLength (mm),cup\nrafter,2,2310,97,47,110,140,1 mm\nfloorboard,3,1620,142,22,65,120,1.5 mm\n';
    const frame = {
      columns: [
        'group',
        'count',
        'length (mm)',
        'width (mm)',
        'thickness (mm)',
        'endLoss (mm)',
        'faultLength (mm)',
        'cup (mm)',
      ],
      values: [
        ['rafter', 2, 2310, 97, 47, 110, 140, 1],
        ['floorboard', 3, 1620, 142, 22, 65, 120, 1.5],
      ],
    };
    const inches = csv
      .replaceAll('mm', 'in')
      .replace(
        'rafter,2,2310,97,47,110,140,1 in',
        `rafter,2,${[2310, 97, 47, 110, 140].map((v) => v / 25.4).join(',')},${1 / 25.4} in`,
      )
      .replace(
        'floorboard,3,1620,142,22,65,120,1.5 in',
        `floorboard,3,${[1620, 142, 22, 65, 120].map((v) => v / 25.4).join(',')},${1.5 / 25.4} in`,
      );
    const volumes = [list, csv, frame, inches].map(
      (boards) => pileYield({ boards, kerf: '3 mm', plane: '1 mm' }).volume.value,
    );
    for (const v of volumes) expect(v).toBeCloseTo(volumes[0] as number, 12);
    // By hand: the thinner boards leave 22 - 1.5 - 2 = 18.5 mm; clear lengths 2060 and 1435 mm; widths less 3 mm of jointing.
    expect(volumes[0]).toBeCloseTo((2 * 2.06 * 0.094 + 3 * 1.435 * 0.139) * 0.0185, 12);
  });

  it('rips and crosscuts to a wanted piece as a hand count does', () => {
    // 97 mm gives two strips of 42 + 3 mm with one kerf of 3 mm (93 mm). Each clear stretch of 1030 mm holds two 500 mm pieces.
    const boards = [
      {
        count: 2,
        length: '2310 mm',
        width: '97 mm',
        thickness: '47 mm',
        endLoss: '110 mm',
        faultLength: '140 mm',
        faults: 1,
      },
    ];
    const r = pileYield({
      boards,
      kerf: '3 mm',
      plane: '1 mm',
      target: { width: '42 mm', length: '500 mm', thickness: '40 mm' },
    });
    expect(r.pieces).toBe(2 * 2 * 2 * 2);
    expect(r.volume.value).toBeCloseTo(16 * 0.5 * 0.042 * 0.04, 12);
    // One millimetre of kerf more than fits: two pieces need 500 + 500 + kerf <= 1030.
    expect(
      pileYield({ boards, kerf: '19 mm', plane: '1 mm', target: { length: '506 mm', thickness: '40 mm' } })
        .pieces,
    ).toBe(2 * 2);
  });

  it('resaws a thick board into as many layers as saw and planer leave', () => {
    const boards = [{ length: '2 m', width: '100 mm', thickness: '50 mm' }];
    // (50 + 3) / (14 + 2 + 3) = 2.79: two layers; at 13.9 + 2 + 3 still two; at 13.6 + 2 + 3 = 18.6 two; three need 12.666.
    expect(pileYield({ boards, kerf: '3 mm', plane: '1 mm', target: '14 mm', resaw: true }).pieces).toBe(2);
    expect(pileYield({ boards, kerf: '3 mm', plane: '1 mm', target: '12.6 mm', resaw: true }).pieces).toBe(3);
  });
});
