// Each limit of a joint just below, at and just above it, and answers worked out by hand.
import { describe, expect, it } from 'vitest';
import { Quantity } from '../../../src/units/quantity.js';
import { angledRail } from '../../../src/recipes/joinery/angled-rail.js';
import { biscuitSpacing } from '../../../src/recipes/joinery/biscuit-spacing.js';
import { halfLap } from '../../../src/recipes/joinery/half-lap.js';
import { jointFit } from '../../../src/recipes/joinery/joint-fit.js';
import { mitredEnd } from '../../../src/recipes/joinery/mitred-end.js';
import { splineSlot } from '../../../src/recipes/joinery/spline-slot.js';
import { squareness } from '../../../src/recipes/joinery/squareness.js';

type Cautious = { readonly cautions: readonly { readonly text: string }[] };
const said = (r: Cautious): string => r.cautions.map((c) => c.text).join('|');
const mm = (x: number): string => `${String(x)} mm`;

describe('angledRail', () => {
  const section = { width: '30 mm', depth: '40 mm' };
  it('needs uprights apart: 70 mm from middle to middle leave nothing between two of 70 mm', () => {
    const at = (run: number) =>
      angledRail({ run: mm(run), rise: '0 mm', section, betweenFaces: false, uprightWidth: '70 mm' });
    expect(() => at(70)).toThrow(/run: got 70.0 mm from middle to middle, takes more than .* 70.0 mm/);
    expect(at(70.1).edgeLength.in('mm')).toBeCloseTo(0.1, 9);
  });
  it('takes a recess up to the width of the upright', () => {
    const at = (r: number) => angledRail({ run: '1 m', rise: '0 m', section, recessDepth: mm(r) });
    expect(() => at(70)).toThrow(/recessDepth: got 70.0 mm, takes less than .* 70.0 mm/);
    expect(at(69.9).edgeLength.in('mm')).toBeCloseTo(1139.8, 9);
  });
  it('takes slopes to 80°: a rise of 5671.2818 mm in a metre', () => {
    const at = (rise: number) => angledRail({ run: '1 m', rise: mm(rise), section });
    expect(at(5671.2818196177).angle.in('deg')).toBeCloseTo(80, 9);
    expect(() => at(5671.3)).toThrow(/rise: gives a slope of 80.0°, takes one of 80° or less/);
  });
  it('takes a rail whose end cuts do not meet: rising 4 in 3 over 300 mm it is under 375 mm deep', () => {
    // Cut to cut 300 / 0.6 = 500 mm; a plumb cut runs 375 * 4 / 3 = 500 mm along it.
    const at = (depth: number) =>
      angledRail({ run: '300 mm', rise: '400 mm', section: { width: '30 mm', depth: mm(depth) } });
    expect(() => at(375)).toThrow(/section: .*end cuts meet: takes a depth under 375.0 mm/);
    expect(at(374.7).shortPoint.in('mm')).toBeCloseTo(0.4, 6);
    expect(at(374.7).longPoint.in('mm')).toBeCloseTo(999.6, 6);
  });
  it('warns of a recess past a third of the upright, and of both at full depth', () => {
    const at = (r: number) =>
      said(angledRail({ run: '1 m', rise: '0 m', section, recessDepth: mm(r), uprightWidth: '72 mm' }));
    expect(at(24)).not.toMatch(/deeper than a third/);
    expect(at(24.1)).toMatch(/deeper than a third/);
    expect(at(0)).not.toMatch(/does not go in once/);
    expect(at(0.1)).toMatch(/does not go in once/);
  });
  it('level, it has no long point; rising, each end has its own', () => {
    const points = (rise: number) =>
      angledRail({ run: '1 m', rise: mm(rise), section }).bevels.map((b) => b.longPointOn);
    expect(points(0)).toEqual(['neither', 'neither']);
    expect(points(100)).toEqual(['lower edge', 'upper edge']);
  });
  it('tells the outline of both recesses, and none where it is butted', () => {
    const r = angledRail({ run: '1 m', rise: '750 mm', section, recessDepth: '12 mm' });
    expect(
      r.recess?.map((p) => [p.upright, p.point, p.into.in('mm'), Number(p.up.in('mm').toFixed(6))]),
    ).toEqual([
      ['lower', 1, 0, 0],
      ['lower', 2, 12, -9],
      ['lower', 3, 12, 41],
      ['lower', 4, 0, 50],
      ['upper', 1, 0, 750],
      ['upper', 2, 12, 759],
      ['upper', 3, 12, 809],
      ['upper', 4, 0, 800],
    ]);
    expect(r.recessWidth?.in('mm')).toBeCloseTo(30, 9);
    expect(r.bevels.map((b) => Number(b.toEdge.in('deg').toFixed(4)))).toEqual([53.1301, 53.1301]);
    const butted = angledRail({ run: '1 m', rise: '750 mm', section });
    expect([butted.recess, butted.recessWidth]).toEqual([undefined, undefined]);
  });
});

describe('biscuitSpacing', () => {
  it('keeps half a biscuit from the end: 28 mm of one of 56 mm', () => {
    const at = (e: number) => biscuitSpacing({ length: '500 mm', endDistance: mm(e) });
    expect(at(28).positions[0]?.in('mm')).toBeCloseTo(28, 9);
    expect(() => at(27.9)).toThrow(/endDistance: got 27.9 mm, takes at least half a biscuit, 28.0 mm/);
  });
  it('needs twice the end distance', () => {
    expect(() => biscuitSpacing({ length: '119.9 mm', endDistance: '60 mm' })).toThrow(
      /length: got 119.9 mm, takes at least twice the end distance, 120.0 mm/,
    );
  });
  it('asks for no further biscuit by the last digits of a length', () => {
    // 600 mm take four gaps of 150 mm; a ten-millionth of a gap more takes no fifth, two millionths do.
    const gaps = (length: string) =>
      biscuitSpacing({ length, endDistance: '60 mm', spacing: '150 mm' }).count - 1;
    expect(gaps('720 mm')).toBe(4);
    expect(gaps('720.00012 mm')).toBe(4);
    expect(gaps('720.0003 mm')).toBe(5);
  });
  it('leaves 5 mm between biscuits: 61 mm from middle to middle', () => {
    const at = (length: number) => biscuitSpacing({ length: mm(length), endDistance: '60 mm' });
    expect(at(181).spacing?.in('mm')).toBeCloseTo(61, 9);
    expect(() => at(180.9)).toThrow(/spacing: got 200.0 mm, .*biscuits of 56 mm 60.9 mm apart/);
  });
  it('cuts half the width and a millimetre: 12.5, 10.5 and 8.5 mm for the three sizes', () => {
    const slots = (['20', '10', '0'] as const).map((size) => {
      const r = biscuitSpacing({ length: '500 mm', size });
      return [r.slotDepth.in('mm'), r.biscuitLength.in('mm')].map((x) => Number(x.toFixed(9)));
    });
    expect(slots).toEqual([
      [12.5, 56],
      [10.5, 53],
      [8.5, 47],
    ]);
    const text = (size: '20' | '10') => said(biscuitSpacing({ length: '500 mm', size }));
    expect(text('20')).toMatch(/56 or 60 mm: measure yours/);
    expect(text('10')).not.toMatch(/measure yours/);
  });
  it('counts each biscuit’s face', () => {
    const area = (length: string) => biscuitSpacing({ length }).glueArea.in('mm2');
    // 60 mm from the ends and at most 200 mm apart: 120 mm hold one, 320 two, 321 three.
    expect(area('320 mm') / area('120 mm')).toBeCloseTo(2, 9);
    expect(area('321 mm') / area('120 mm')).toBeCloseTo(3, 9);
  });
});

describe('halfLap', () => {
  const lap = { widthA: '50 mm', widthB: '40 mm', thickness: '30 mm' };
  it('turns a corner at a right angle alone', () => {
    expect(() => halfLap({ ...lap, at: 'corner', angle: '89.9 deg' })).toThrow(/angle: got 89.9°, takes 90°/);
    expect(halfLap({ ...lap, at: 'corner', angle: '90 deg' }).depth.in('mm')).toBeCloseTo(15, 9);
    expect(halfLap({ ...lap, at: 'end', angle: '60 deg' }).depth.in('mm')).toBeCloseTo(15, 9);
  });
  it('takes half the thickness off the shared face of both', () => {
    // 50 x 40 mm, twice 15 mm deep.
    expect(halfLap(lap).removed.in('cm3')).toBeCloseTo(60, 9);
    // At 30° the face is twice as long.
    expect(halfLap({ ...lap, angle: '30 deg' }).removed.in('cm3')).toBeCloseTo(120, 9);
  });
  it('holds by glue alone where a piece ends', () => {
    expect(said(halfLap(lap))).not.toMatch(/glue alone/);
    for (const at of ['end', 'corner'] as const) expect(said(halfLap({ ...lap, at }))).toMatch(/glue alone/);
  });
});

describe('jointFit without any spread', () => {
  const fit = (part: number) => {
    const r = jointFit({
      slot: { size: '10 mm', plusMinus: '0 mm' },
      part: { size: mm(part), plusMinus: '0 mm' },
      loosest: '0.15 mm',
    });
    return [r.chanceJams.value, r.chanceFits.value, r.chanceLoose.value];
  };
  it('goes in at the tightest and holds at the loosest clearance, and at neither just past it', () => {
    expect(fit(10)).toEqual([0, 1, 0]);
    expect(fit(10.0001)).toEqual([1, 0, 0]);
    expect(fit(9.85)).toEqual([0, 1, 0]);
    expect(fit(9.8499)).toEqual([0, 0, 1]);
  });
  it('needs room between the clearances, and a part', () => {
    const at = (size: number, tightest: number, loosest: number) =>
      jointFit({
        slot: { size: mm(size), plusMinus: '0 mm' },
        part: { size: mm(size), plusMinus: '0 mm' },
        tightest: mm(tightest),
        loosest: mm(loosest),
      });
    expect(() => at(10, 0.1, 0.1)).toThrow(/loosest: got 0.100 mm, takes more than .* 0.100 mm/);
    expect(at(10, 0, 0.001).aim.in('mm')).toBeCloseTo(9.9995, 9);
    expect(() => at(0.1, 0, 0.2)).toThrow(/slot: the clearances wanted leave no part/);
    expect(at(0.11, 0, 0.2).aim.in('mm')).toBeCloseTo(0.01, 9);
  });
  it('says between which clearances the chances lie', () => {
    const r = jointFit({
      slot: { size: '10 mm', plusMinus: '0.1 mm' },
      part: { size: '9.9 mm', plusMinus: '0.1 mm' },
      tightest: '0.05 mm',
      loosest: '0.25 mm',
    });
    expect(r.toText()).toContain('normal distribution of the clearance, between 0.05 and 0.25 mm.');
  });
  it('of ten joints all must fit', () => {
    const one = {
      slot: { size: '10 mm', plusMinus: '0.1 mm' },
      part: { size: '9.9 mm', plusMinus: '0.1 mm' },
    };
    const r = jointFit({ ...one, joints: 10 });
    expect(r.chanceAll.value).toBeCloseTo(r.chanceFits.value ** 10, 12);
  });
});

describe('mitredEnd', () => {
  const at = (more: object) =>
    mitredEnd({ topLength: '500 mm', endHeight: '300 mm', thickness: '40 mm', kerf: '3 mm', ...more });
  it('needs a top longer than its two mitres of 40 mm, and an end higher than one', () => {
    expect(() => at({ topLength: '80 mm' })).toThrow(/topLength: got 80.0 mm, takes more than .* 80.0 mm/);
    expect(at({ topLength: '80.1 mm' }).insideLength.in('mm')).toBeCloseTo(0.1, 9);
    expect(at({ topLength: '40.1 mm', ends: 1 }).insideLength.in('mm')).toBeCloseTo(0.1, 9);
    expect(() => at({ endHeight: '40 mm' })).toThrow(/endHeight: got 40.0 mm, takes more than .* 40.0 mm/);
    expect(at({ endHeight: '40.1 mm' }).bevel.in('deg')).toBeCloseTo(45, 9);
  });
  it('loses a saw cut of 3 mm slantwise, 4.2426 mm, and what is shaved', () => {
    // 3 / cos 45° = 4.242 64 mm.
    expect(at({}).grainBreak.in('mm')).toBeCloseTo(4.24264, 5);
    expect(at({ shave: '1 mm' }).grainBreak.in('mm')).toBeCloseTo(5.24264, 5);
    // Wedge on the back: twice 40 mm, and the same loss.
    expect(at({}).wedge.in('mm')).toBeCloseTo(84.24264, 5);
  });
  it('at 120° inside its bevel is 30°, and 40 mm of thickness lean by 23.094 mm', () => {
    // Kerf of 3 mm: 3 / cos 30° = 3.464 1 mm.
    const r = at({ angle: '120 deg' });
    expect(r.insideLength.in('mm')).toBeCloseTo(500 - 2 * 23.094011, 5);
    expect(r.wedge.in('mm')).toBeCloseTo(2 * 23.094011 + 3.464102, 5);
  });
  it('tells its cuts in order, from the left end', () => {
    const positions = (more: object) =>
      at({ trim: '10 mm', ...more }).cutPositions.map((c) => [
        c.order,
        Number(c.position.in('mm').toFixed(3)),
      ]);
    expect(positions({})).toEqual([
      [1, 10],
      [2, 310],
      [3, 314.243],
      [4, 814.243],
      [5, 818.485],
      [6, 1118.485],
    ]);
    expect(positions({ ends: 1 })).toEqual([
      [1, 10],
      [2, 310],
      [3, 314.243],
      [4, 814.243],
    ]);
    expect(at({ trim: '10 mm' }).stripLength.in('mm')).toBeCloseTo(1128.485, 3);
    expect(at({ trim: '10 mm', ends: 1 }).stripLength.in('mm')).toBeCloseTo(824.243, 3);
  });
});

describe('splineSlot', () => {
  // At 60° between the pieces the bevel is 60°, and a mitre face of pieces of 20 mm is 40 mm long.
  const at = (more: object) =>
    splineSlot({
      thickness: '20 mm',
      splineThickness: '6 mm',
      splineWidth: '3 mm',
      fromInside: '10 mm',
      angle: '60 deg',
      glueRoom: '0 mm',
      ...more,
    });
  it('stays on the mitre face: from half its thickness to as much from the far end', () => {
    expect(at({ fromInside: '3 mm' }).wallInside.in('mm')).toBeCloseTo(0, 9);
    expect(() => at({ fromInside: '2.9 mm' })).toThrow(
      /fromInside: got 2.9 mm, .*slot of 6.0 mm .*: 3.0 to 37.0 mm/,
    );
    // Just on the face it is refused for coming out, past it for its place.
    expect(() => at({ fromInside: '37 mm' })).toThrow(/splineWidth: .*comes out/);
    expect(() => at({ fromInside: '37.1 mm' })).toThrow(/fromInside: got 37.1 mm/);
  });
  it('does not come out: 27 mm of face beyond it allow 27 / tan 60° = 15.588 mm', () => {
    const deep = 27 / Math.tan(Math.PI / 3);
    expect(at({ splineWidth: mm(2 * deep - 0.01) }).wallOutside.in('mm')).toBeGreaterThan(0);
    expect(() => at({ splineWidth: mm(2 * deep) })).toThrow(/splineWidth: the slot of 15.6 mm comes out/);
  });
  it('leaves 27 / 2 - 3 sin 60° outside a slot of 3 mm, and half of 7 mm inside', () => {
    const r = at({ splineWidth: '6 mm' });
    expect(r.depth.in('mm')).toBeCloseTo(3, 9);
    expect(r.wallOutside.in('mm')).toBeCloseTo(13.5 - 2.598076, 6);
    expect(r.wallInside.in('mm')).toBeCloseTo(3.5, 9);
    expect(r.faceLength.in('mm')).toBeCloseTo(40, 9);
  });
  it('is well where both walls are as thick as wanted', () => {
    const wall = (leastWall: string) => at({ leastWall });
    expect(wall('3.5 mm').ok).toBe(true);
    expect(said(wall('3.5 mm'))).not.toMatch(/a wall is under/);
    expect(wall('3.6 mm').ok).toBe(false);
    expect(said(wall('3.6 mm'))).toMatch(
      /a wall is under the 3.6 mm wanted: move the slot, or make it 11.4 mm deep at most/,
    );
    // No slot leaves 14 mm outside: 13.5 is all there is.
    expect(wall('14 mm').deepest.value).toBe(0);
    // (13.5 - 5) / sin 60°
    expect(wall('5 mm').deepest.in('mm')).toBeCloseTo(9.814955, 6);
  });
});

describe('squareness', () => {
  const frame = (more: object) => squareness({ width: '3 m', height: '4 m', ...more });
  it('says which way to pull', () => {
    expect(frame({ diagonalA: '5001 mm', diagonalB: '4999 mm' }).pull).toBe(
      'pull the ends of diagonal A together (bottom left and top right): the top goes left',
    );
    expect(frame({ diagonalA: '4999 mm', diagonalB: '5001 mm' }).pull).toBe(
      'pull the ends of diagonal B together (bottom right and top left): the top goes right',
    );
    expect(frame({ diagonalA: '5 m', diagonalB: '5 m' }).pull).toBe('nothing: it is square');
    expect(frame({ cornerOffset: '0 mm' }).pull).toBe('nothing: it is square');
  });
  it('calculates 5 mm off an upright of 4 m: 1.25 mm in a metre', () => {
    const r = frame({ cornerOffset: '5 mm' });
    expect(r.move.in('mm')).toBeCloseTo(5, 9);
    expect(Math.sin(r.outOfSquare.value)).toBeCloseTo(0.00125, 12);
    expect(r.outPerMetre.value).toBeCloseTo(0.00125, 8);
    // sqrt(9 + 16 + 2 * 3 * 4 * 0.00125) = sqrt(25.03) = 5.002 999 1 m
    expect(r.diagonalA.in('m')).toBeCloseTo(5.0029991, 7);
    expect(r.diagonalB.in('m')).toBeCloseTo(4.9969991, 7);
    expect(r.shorten.in('mm')).toBeCloseTo(2.9991, 4);
    expect(r.sidesDiffer).toBeUndefined();
    expect(said(r)).not.toMatch(/disagree/);
  });
  it('shortens nothing where both diagonals are too short already', () => {
    expect(frame({ diagonalA: '4999 mm', diagonalB: '4999 mm' }).shorten.value).toBe(0);
    expect(frame({ diagonalA: '5001 mm', diagonalB: '5001 mm' }).shorten.in('mm')).toBeCloseTo(1, 9);
  });
  it('calls sides and diagonals at odds past twice the error of a reading, and not at it', () => {
    const by = (x: string) => said(frame({ diagonalA: x, diagonalB: x, readingError: '0.5 mm' }));
    expect(by('5001 mm')).not.toMatch(/disagree/);
    expect(by('5001.1 mm')).toMatch(/disagree by 1.1 mm/);
    expect(by('4998.9 mm')).toMatch(/disagree by 1.1 mm/);
  });
  it('takes diagonals that the sides can have', () => {
    for (const [A, B] of [
      ['7 m', '5 m'],
      ['5 m', '1 m'],
      ['1 m', '5 m'],
    ])
      expect(() => frame({ diagonalA: A, diagonalB: B })).toThrow(
        /got [157]000.0 mm, takes a diagonal that these sides can have: more than 1000.0 mm and less than 7000.0 mm/,
      );
    expect(frame({ diagonalA: '6.99 m', diagonalB: '1.01 m' }).outOfSquare.in('deg')).toBeGreaterThan(80);
  });
  it('takes an offset within the height, to either side', () => {
    for (const cornerOffset of ['4 m', '-4 m'])
      expect(() => frame({ cornerOffset })).toThrow(
        /cornerOffset: got -?4000.0 mm, takes less than the height of 4000.0 mm/,
      );
    expect(frame({ cornerOffset: '-3.9 m' }).pull).toMatch(/diagonal B/);
  });
  it('names the diagonal that is missing', () => {
    expect(() => frame({ diagonalB: '5 m' })).toThrow(/diagonalA: missing/);
    expect(() => frame({ diagonalA: '5 m' })).toThrow(/diagonalB: missing/);
  });
  it('is sure past what the tape may be out, and says nothing of the tape where it is square', () => {
    // 0.5 mm of error on both could be mistaken for 0.5 * (5 + 5) / (2 * 3 * 4) = 0.2083 mm in a metre.
    const r = frame({ cornerOffset: '1 mm' });
    expect(r.readingAngle.value).toBeCloseTo(0.00020833, 8);
    expect(r.sure).toBe(true);
    expect(said(r)).not.toMatch(/within what the tape/);
    const unsure = frame({ cornerOffset: '0.5 mm' });
    expect(unsure.sure).toBe(false);
    expect(said(unsure)).toMatch(/within what the tape may be out/);
    const exact = frame({ cornerOffset: '0 mm', readingError: '0 mm' });
    expect(exact.sure).toBe(false);
    expect(said(exact)).not.toMatch(/within what the tape/);
  });
  it('takes a length from another result', () => {
    expect(frame({ cornerOffset: new Quantity('length', 0.005) }).move.in('mm')).toBeCloseTo(5, 9);
  });
});
