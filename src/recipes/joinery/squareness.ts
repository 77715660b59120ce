import { note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { Refusal } from '../../quantities/refusal.js';
import { framePicture } from './frame-picture.js';

const mm = (says: string) => letter('length', says, { in: 'mm' });
const a = mm('width between the corners measured');
const b = mm('height between the corners measured');

const cosine = formula({
  symbol: 'c',
  gives: letter('ratio', 'cosine of the corner at the foot of diagonal A'),
  text: '(d_A^2 - d_B^2) / (4 a b)',
  where: {
    d_A: mm('diagonal A, bottom left to top right'),
    d_B: mm('diagonal B, bottom right to top left'),
    a,
    b,
  },
  basis: 'geometry',
});
const offCosine = formula({
  symbol: 'c',
  gives: letter('ratio', 'cosine of the corner at the foot of diagonal A'),
  text: 'o / b',
  where: { o: mm('how far the top corner stands off a true upright, to the right'), b },
  basis: 'geometry',
});
const outAngle = formula({
  symbol: 'phi',
  gives: letter('angle', 'out of square'),
  text: 'asin(abs(c))',
  where: { c: letter('ratio', 'cosine of the corner') },
  basis: 'geometry',
});
const shift = formula({
  symbol: 'm',
  gives: mm('how far the top must go along the bottom'),
  text: 'b abs(c)',
  where: { b, c: letter('ratio', 'cosine of the corner') },
  basis: 'geometry',
});
const trueDiagonal = formula({
  symbol: 'd',
  gives: mm('both diagonals when square'),
  text: 'sqrt(a^2 + b^2)',
  where: { a, b },
  basis: 'geometry',
});
// Both readings wrong by e, one too long and one too short.
const tapeAngle = formula({
  symbol: 'phi_e',
  gives: letter('angle', 'what the tape’s own error could be mistaken for'),
  text: 'e * (d_A + d_B) / (2 a b)',
  where: { e: mm('how far a reading may be out'), d_A: mm('diagonal A'), d_B: mm('diagonal B'), a, b },
  basis: 'geometry',
});

/**
 * How far a frame is out of square from its two diagonals, which corners to pull together and how far; and whether the
 * tape can tell. Exact for frames whose opposite sides are equal.
 */
export const squareness = recipe({
  name: 'squareness',
  title: 'Is it square',
  topic: 'joinery',
  about:
    'How far a frame or carcase is out of square from its diagonals or from one corner, which way to pull it and how far, and whether the tape’s own error hides it. Opposite sides must be equal.',
  sources: [],
  inputs: {
    width: field.length({
      symbol: 'a',
      says: 'width, corner to corner as the diagonals are measured',
      above: '0 mm',
      max: '50 m',
    }),
    height: field.length({
      symbol: 'b',
      says: 'height, corner to corner as the diagonals are measured',
      above: '0 mm',
      max: '50 m',
    }),
    diagonalA: field.length({
      says: 'diagonal from bottom left to top right',
      above: '0 mm',
      max: '100 m',
      optional: true,
    }),
    diagonalB: field.length({
      says: 'diagonal from bottom right to top left',
      above: '0 mm',
      max: '100 m',
      optional: true,
    }),
    cornerOffset: field.length({
      says: 'instead of diagonals: how far the top right corner stands off a true upright, to the right; to the left is less than nought',
      min: '-50 m',
      max: '50 m',
      optional: true,
    }),
    readingError: field.length({
      says: 'how far one reading of the tape may be out',
      min: '0 mm',
      max: '20 mm',
      default: '0.5 mm',
    }),
  },
  outputs: {
    outOfSquare: out.angle({ says: 'out of square' }),
    outPerMetre: out.slope({ says: 'out of square, by length' }),
    move: out.length({ says: 'how far the top must go along the bottom' }),
    pull: out.text({ says: 'what to pull' }),
    shorten: out.length({ says: 'by how much the longer diagonal must get shorter' }),
    trueDiagonal: out.length({ says: 'both diagonals when it is square' }),
    diagonalA: out.length({ says: 'diagonal A as it is' }),
    diagonalB: out.length({ says: 'diagonal B as it is' }),
    readingAngle: out.slope({ says: 'what the tape’s own error could be mistaken for, by length' }),
    sure: out.flag({ says: 'whether it is out of square by more than the tape’s own error' }),
    sidesDiffer: out.length({
      says: 'how badly sides and diagonals agree: as a length of diagonal',
      optional: true,
    }),
  },
  formulas: [cosine, offCosine, outAngle, shift, trueDiagonal, tapeAngle],
  solve: (given, work) => {
    const { width: w, height: h } = given;
    const byDiagonals = given.diagonalA !== undefined || given.diagonalB !== undefined;
    if (byDiagonals === (given.cornerOffset !== undefined))
      throw new Refusal({ field: 'diagonalA', says: 'takes either both diagonals, or cornerOffset' });
    const d = work.apply(trueDiagonal, { a: w, b: h });
    let c: number;
    let [A, B] = [0, 0];
    let sidesDiffer: number | undefined;
    if (given.cornerOffset !== undefined) {
      if (Math.abs(given.cornerOffset) >= h)
        throw new Refusal({
          field: 'cornerOffset',
          says: `got ${(given.cornerOffset * 1000).toFixed(1)} mm, takes less than the height of ${(h * 1000).toFixed(1)} mm`,
        });
      c = work.apply(offCosine, { o: given.cornerOffset, b: h });
      A = Math.sqrt(w * w + h * h + 2 * w * h * c);
      B = Math.sqrt(w * w + h * h - 2 * w * h * c);
    } else {
      if (given.diagonalA === undefined || given.diagonalB === undefined)
        throw new Refusal({
          field: given.diagonalA === undefined ? 'diagonalA' : 'diagonalB',
          says: 'missing; takes the other diagonal too, such as "1442 mm"',
        });
      [A, B] = [given.diagonalA, given.diagonalB];
      for (const [name, x] of [
        ['diagonalA', A],
        ['diagonalB', B],
      ] as const) {
        if (x >= w + h || x <= Math.abs(w - h))
          throw new Refusal({
            field: name,
            says: `got ${(x * 1000).toFixed(1)} mm, takes a diagonal that these sides can have: more than ${(Math.abs(w - h) * 1000).toFixed(1)} mm and less than ${((w + h) * 1000).toFixed(1)} mm`,
          });
      }
      c = work.apply(cosine, { d_A: A, d_B: B, a: w, b: h });
      // In any frame with equal opposite sides the squares of the diagonals add up to twice those of the sides.
      sidesDiffer = Math.abs(Math.sqrt((A * A + B * B) / 2) - d);
    }
    const phi = work.apply(outAngle, { c });
    const move = work.apply(shift, { b: h, c });
    const mistake = work.apply(tapeAngle, { e: given.readingError, d_A: A, d_B: B, a: w, b: h });
    const pull = [
      'pull the ends of diagonal B together (bottom right and top left): the top goes right',
      'nothing: it is square',
      'pull the ends of diagonal A together (bottom left and top right): the top goes left',
    ][Math.sign(c) + 1] as string;
    return {
      outOfSquare: phi,
      outPerMetre: Math.tan(phi),
      move,
      pull,
      shorten: Math.max(0, Math.max(A, B) - d),
      trueDiagonal: d,
      diagonalA: A,
      diagonalB: B,
      readingAngle: Math.tan(mistake),
      sure: phi > mistake,
      sidesDiffer,
    };
  },
  limits: [
    {
      // To a micrometre.
      when: (given, answer) => Math.round(((answer.sidesDiffer ?? 0) - 2 * given.readingError) * 1e6) > 0,
      says: (_, answer) =>
        `sides and diagonals disagree by ${(1000 * (answer.sidesDiffer as number)).toFixed(1)} mm, more than the tape’s error: opposite sides are not equal, or a figure was misread, and the angle is then only a mean`,
    },
  ],
  cautions: (_, answer) =>
    answer.sure || answer.outOfSquare === 0
      ? []
      : [
          note(
            'the difference is within what the tape may be out: measure from the same edge of the tape, or with a pinch rod, before pulling anything',
          ),
        ],
  chart: (given, answer) => framePicture({ ...given, ...answer }),
  example: { width: '1200 mm', height: '800 mm', diagonalA: '1444 mm', diagonalB: '1440.4 mm' },
});
