import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { angledRail } from '../../src/recipes/joinery/angled-rail.js';
import { biscuitSpacing } from '../../src/recipes/joinery/biscuit-spacing.js';
import { halfLap } from '../../src/recipes/joinery/half-lap.js';
import { jointFit } from '../../src/recipes/joinery/joint-fit.js';
import { mitreGap } from '../../src/recipes/joinery/mitre-gap.js';
import { mitredEnd } from '../../src/recipes/joinery/mitred-end.js';
import { postCasing } from '../../src/recipes/joinery/post-casing.js';
import { screwHold } from '../../src/recipes/joinery/screw-hold.js';
import { splayedCorner } from '../../src/recipes/joinery/splayed-corner.js';
import { splineSlot } from '../../src/recipes/joinery/spline-slot.js';
import { squareness } from '../../src/recipes/joinery/squareness.js';

type Any = (given: never) => { toText(): string };
const cases: readonly (readonly [string, Any, Record<string, unknown>, RegExp])[] = [
  ['two sides', splayedCorner, { sides: 2, slope: '45 deg' }, /sides: got 2/],
  ['half a side', splayedCorner, { sides: 4.5, slope: '45 deg' }, /sides: got 4.5/],
  ['a slope past upright', splayedCorner, { sides: 4, slope: '91 deg' }, /slope: got "91 deg"/],
  ['a slope with no unit', splayedCorner, { sides: 4, slope: 45 }, /slope: got 45 with no unit/],
  ['one diagonal', squareness, { width: '1 m', height: '1 m', diagonalA: '1414 mm' }, /diagonalB: missing/],
  [
    'neither diagonals nor offset',
    squareness,
    { width: '1 m', height: '1 m' },
    /diagonalA: takes either both diagonals, or cornerOffset/,
  ],
  [
    'both diagonals and an offset',
    squareness,
    { width: '1 m', height: '1 m', diagonalA: '1 m', diagonalB: '1 m', cornerOffset: '1 mm' },
    /takes either both diagonals, or cornerOffset/,
  ],
  [
    'a diagonal that is too long',
    squareness,
    { width: '1 m', height: '1 m', diagonalA: '3 m', diagonalB: '1.4 m' },
    /diagonalA: .*that these sides can have/,
  ],
  [
    'an offset over the height',
    squareness,
    { width: '1 m', height: '1 m', cornerOffset: '1.2 m' },
    /cornerOffset: .*less than the height/,
  ],
  [
    'clearances the wrong way round',
    jointFit,
    {
      slot: { size: '6 mm', plusMinus: '0.1 mm' },
      part: { size: '6 mm', plusMinus: '0.1 mm' },
      tightest: '0.2 mm',
      loosest: '0.1 mm',
    },
    /loosest: .*more than the tightest/,
  ],
  [
    'a slot without a tolerance',
    jointFit,
    { slot: { size: '6 mm' }, part: { size: '6 mm', plusMinus: '0.1 mm' } },
    /slot\.plusMinus: missing/,
  ],
  [
    'a tolerance below zero',
    jointFit,
    { slot: { size: '6 mm', plusMinus: '-0.1 mm' }, part: { size: '6 mm', plusMinus: '0.1 mm' } },
    /slot\.plusMinus/,
  ],
  [
    'a corner lap on the skew',
    halfLap,
    { widthA: '50 mm', widthB: '50 mm', thickness: '20 mm', angle: '60 deg', at: 'corner' },
    /angle: .*takes 90°/,
  ],
  [
    'a lap at no angle',
    halfLap,
    { widthA: '50 mm', widthB: '50 mm', thickness: '20 mm', angle: '0 deg' },
    /angle: got "0 deg"/,
  ],
  [
    'a lap of no such timber',
    halfLap,
    { widthA: '50 mm', widthB: '50 mm', thickness: '20 mm', timber: 'okra' },
    /timber: .*okra/,
  ],
  [
    'a lap under a load upward',
    halfLap,
    { widthA: '50 mm', widthB: '50 mm', thickness: '20 mm', force: '-5 N' },
    /force: got "-5 N"/,
  ],
  ['a mitre of no thickness', mitreGap, { thickness: '0 mm' }, /thickness: got "0 mm"/],
  [
    'a mitre that turns right round',
    mitreGap,
    { thickness: '20 mm', turn: '180 deg' },
    /turn: got "180 deg"/,
  ],
  [
    'a post of no width',
    postCasing,
    { width: '0 mm', depth: '90 mm', height: '1 m', thickness: '19 mm' },
    /width: got "0 mm"/,
  ],
  [
    'a casing let in through and through',
    postCasing,
    { width: '90 mm', depth: '90 mm', height: '1 m', thickness: '19 mm', corner: 'rebated', rebate: '19 mm' },
    /rebate: got 19 mm, takes less than the thickness/,
  ],
  [
    'a casing of no such corner',
    postCasing,
    { width: '90 mm', depth: '90 mm', height: '1 m', thickness: '19 mm', corner: 'dovetailed' },
    /corner: got "dovetailed"/,
  ],
  [
    'a top shorter than its mitres',
    mitredEnd,
    { topLength: '60 mm', endHeight: '900 mm', thickness: '40 mm' },
    /topLength: .*more than the mitres/,
  ],
  [
    'an end shorter than its mitre',
    mitredEnd,
    { topLength: '900 mm', endHeight: '30 mm', thickness: '40 mm' },
    /endHeight: .*more than the mitre/,
  ],
  [
    'a slot off the mitre face',
    splineSlot,
    { thickness: '20 mm', splineThickness: '6 mm', splineWidth: '12 mm', fromInside: '27 mm' },
    /fromInside: .*leaves the slot/,
  ],
  [
    'a slot that comes out',
    splineSlot,
    { thickness: '20 mm', splineThickness: '4 mm', splineWidth: '60 mm', fromInside: '14 mm' },
    /splineWidth: .*comes out through the outside face/,
  ],
  [
    'a rail too steep',
    angledRail,
    { run: '100 mm', rise: '900 mm', section: { width: '30 mm', depth: '50 mm' } },
    /rise: gives a slope/,
  ],
  [
    'a rail as deep as it is long',
    angledRail,
    { run: '100 mm', rise: '100 mm', section: { width: '30 mm', depth: '200 mm' } },
    /section: .*end cuts meet/,
  ],
  [
    'a recess through the upright',
    angledRail,
    { run: '1 m', rise: '0.3 m', section: { width: '30 mm', depth: '50 mm' }, recessDepth: '80 mm' },
    /recessDepth: .*less than the width of the upright/,
  ],
  [
    'uprights that touch',
    angledRail,
    { run: '60 mm', rise: '10 mm', section: { width: '30 mm', depth: '20 mm' }, betweenFaces: false },
    /run: .*more than the width of an upright/,
  ],
  [
    'biscuits that run into one another',
    biscuitSpacing,
    { length: '600 mm', spacing: '50 mm' },
    /spacing: .*leaves wood between/,
  ],
  [
    'a biscuit that shows at the end',
    biscuitSpacing,
    { length: '600 mm', endDistance: '10 mm' },
    /endDistance: .*at least half a biscuit/,
  ],
  ['a joint shorter than its ends', biscuitSpacing, { length: '80 mm' }, /length: .*twice the end distance/],
  ['a size there is not', biscuitSpacing, { length: '600 mm', size: '30' }, /size: got "30"/],
  ['neither timber nor gravity', screwHold, { diameter: '#8', penetration: '30 mm' }, /timber: missing/],
  [
    'a species there is not',
    screwHold,
    { timber: 'wite oak', diameter: '#8', penetration: '30 mm' },
    /timber: .*"white oak"/,
  ],
  [
    'a gauge there is not',
    screwHold,
    { specificGravity: 0.5, diameter: '#99', penetration: '30 mm' },
    /diameter: .*#0 to #24/,
  ],
  [
    'a screw as thick as a post',
    screwHold,
    { specificGravity: 0.5, diameter: '90 mm', penetration: '30 mm' },
    /diameter: .*1 to 25 mm/,
  ],
  ['no thread', screwHold, { specificGravity: 0.5, diameter: '#8', penetration: '0 mm' }, /penetration/],
];

describe('joints refuse', () => {
  it.each(cases)('%s', (_, recipe, given, message) => {
    let error: unknown;
    try {
      recipe(given as never);
    } catch (e) {
      error = e;
    }
    expect(error).toBeInstanceOf(InputError);
    expect((error as InputError).message).toMatch(message);
    expect((error as InputError).message).not.toMatch(/NaN|undefined|\[object/);
  });
});
