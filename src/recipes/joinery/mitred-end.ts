import { danger, note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { Refusal } from '../../quantities/refusal.js';
import { nanometres } from '../../recipe/nanometre.js';
import { foldPicture } from './fold-picture.js';

const mm = (says: string) => letter('length', says, { in: 'mm' });
const bevelLetter = letter('angle', 'bevel of each cut', { in: 'deg' });

const bevel = formula({
  symbol: 'B',
  gives: bevelLetter,
  text: '90 - a / 2',
  where: { a: letter('angle', 'angle between top and end, inside', { in: 'deg' }) },
  basis: 'geometry',
});
const lost = formula({
  symbol: 'l',
  gives: mm('grain lost on the show face at a fold'),
  text: 'k / cos(pi B / 180) + r',
  where: { k: mm('width of the saw cut'), B: bevelLetter, r: mm('shaved off the mitre after the saw') },
  basis: 'geometry',
});
const lengthOf = formula({
  symbol: 'L',
  gives: mm('length to glue up'),
  text: 'T + n * (H + l) + 2 e',
  where: {
    T: mm('length of the finished top, outside'),
    n: letter('count', 'ends that fold down'),
    H: mm('height of an end, outside'),
    l: mm('grain lost on the show face at a fold'),
    e: mm('kept at each end of the strip to square it'),
  },
  basis: 'geometry',
});
const waste = formula({
  symbol: 'g',
  gives: mm('width of the waste wedge on the back'),
  text: '2 t tan(pi B / 180) + l',
  where: { t: mm('thickness'), B: bevelLetter, l: mm('grain lost on the show face at a fold') },
  basis: 'geometry',
});

/**
 * A top whose ends fold down in a mitre so that the grain runs on over the edge: what length to glue up, where to cut
 * and in which order. For one thickness of board, ends cut from the same strip.
 */
export const mitredEnd = recipe({
  name: 'mitredEnd',
  title: 'A top that folds down at its ends',
  topic: 'joinery',
  about:
    'The length of strip to glue up for a top with mitred ends that carry its grain down, where to cut it, and how much grain the saw takes at each fold.',
  sources: [],
  inputs: {
    topLength: field.length({
      symbol: 'T',
      says: 'length of the finished top, outside to outside',
      above: '0 mm',
      max: '20 m',
    }),
    endHeight: field.length({ symbol: 'H', says: 'height of an end, outside', above: '0 mm', max: '10 m' }),
    thickness: field.length({ symbol: 't', says: 'thickness of the strip', above: '0 mm', max: '300 mm' }),
    kerf: field.length({
      symbol: 'k',
      says: 'width of the saw cut',
      min: '0 mm',
      max: '20 mm',
      default: '3 mm',
    }),
    angle: field.angle({
      symbol: 'a',
      says: 'angle between top and end, inside',
      min: '60 deg',
      max: '170 deg',
      default: '90 deg',
    }),
    ends: field.count({ symbol: 'n', says: 'ends that fold down', min: 1, max: 2, default: 2 }),
    trim: field.length({
      symbol: 'e',
      says: 'kept at each end of the strip to square it',
      min: '0 mm',
      max: '500 mm',
      default: '10 mm',
    }),
    shave: field.length({
      symbol: 'r',
      says: 'shaved off the mitres of a fold after the saw, both together',
      min: '0 mm',
      max: '20 mm',
      default: '0 mm',
    }),
  },
  outputs: {
    stripLength: out.length({ says: 'length to glue up' }),
    grainBreak: out.length({ says: 'grain lost on the show face at a fold' }),
    bevel: out.angle({ says: 'bevel of each cut' }),
    wedge: out.length({ says: 'width of the waste wedge on the back of a fold' }),
    insideLength: out.length({ says: 'length of the top inside, between the ends' }),
    cutPositions: out.table(
      {
        order: out.count({ says: 'order' }),
        position: out.length({ says: 'on the show face, from the left end of the strip' }),
        tilt: out.angle({ says: 'blade off square' }),
        leans: out.text({ says: 'which way it runs toward the back' }),
        makes: out.text({ says: 'what it makes' }),
      },
      { says: 'Cuts, measured on the show face from the left end of the strip' },
    ),
  },
  formulas: [bevel, lost, lengthOf, waste],
  solve: (given, work) => {
    const B = work.apply(bevel, { a: given.angle });
    const l = work.apply(lost, { k: given.kerf, B, r: given.shave });
    const strip = work.apply(lengthOf, {
      T: given.topLength,
      n: given.ends,
      H: given.endHeight,
      l,
      e: given.trim,
    });
    const g = work.apply(waste, { t: given.thickness, B, l });
    const back = given.thickness * Math.tan(B);
    const inside = given.topLength - given.ends * back;
    if (nanometres(inside) <= 0)
      throw new Refusal({
        field: 'topLength',
        says: `got ${(given.topLength * 1000).toFixed(1)} mm, takes more than the mitres of ${(given.ends * back * 1000).toFixed(1)} mm`,
      });
    if (nanometres(given.endHeight) <= nanometres(back))
      throw new Refusal({
        field: 'endHeight',
        says: `got ${(given.endHeight * 1000).toFixed(1)} mm, takes more than the mitre of ${(back * 1000).toFixed(1)} mm`,
      });
    const e = given.trim;
    const fold = e + given.endHeight;
    const start = fold + l;
    const finish = start + given.topLength;
    const cuts: { position: number; tilt: number; leans: string; makes: string }[] = [
      { position: e, tilt: 0, leans: '', makes: 'a square end to measure from' },
      {
        position: fold,
        tilt: B,
        leans: 'toward the left end',
        makes: 'the mitre of the left end; its long point is on the show face',
      },
      {
        position: start,
        tilt: B,
        leans: 'toward the right end',
        makes: 'the mitre of the top beside it; the wedge between them is waste',
      },
    ];
    if (given.ends === 2) {
      cuts.push(
        { position: finish, tilt: B, leans: 'toward the left end', makes: 'the other mitre of the top' },
        { position: finish + l, tilt: B, leans: 'toward the right end', makes: 'the mitre of the right end' },
        { position: finish + l + given.endHeight, tilt: 0, leans: '', makes: 'the foot of the right end' },
      );
    } else cuts.push({ position: finish, tilt: 0, leans: '', makes: 'the square end of the top' });
    work.say(
      'Mark every piece with an arrow across the folds on the show face before the first cut, so that grain meets its own grain.',
    );
    return {
      stripLength: strip,
      grainBreak: l,
      bevel: B,
      wedge: g,
      insideLength: inside,
      cutPositions: cuts.map((c, i) => ({ order: i + 1, ...c })),
    };
  },
  cautions: [
    danger(
      'long strips on a tilted blade need support at both ends and a helper; keep clear of the wedge that falls off, it can jam against the blade',
    ),
    note('the foot cuts come last: fold and clamp the corner dry, then measure the height on it'),
    note(
      'tape the outside of the mitre before glueing; size the end grain with thinned glue first, and add a spline (see splineSlot)',
    ),
  ],
  chart: (given, answer) => foldPicture({ ...given, ...answer }),
  example: { topLength: '1950 mm', endHeight: '900 mm', thickness: '40 mm', kerf: '3 mm' },
});
