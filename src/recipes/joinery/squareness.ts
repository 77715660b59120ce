import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { InputError } from '../../units/input-error.js';
import { squarenessDrawing } from './squareness-drawing.js';

const mm = (label: string) => variable('length', label, { unit: 'mm' });
const a = mm('width between the corners measured');
const b = mm('height between the corners measured');

const cosine = formula({
  symbol: 'c',
  result: variable('ratio', 'cosine of the corner at the foot of diagonal A'),
  expression: '(d_A^2 - d_B^2) / (4 a b)',
  variables: {
    d_A: mm('diagonal A, bottom left to top right'),
    d_B: mm('diagonal B, bottom right to top left'),
    a,
    b,
  },
  basis: 'geometry',
});
const offCosine = formula({
  symbol: 'c',
  result: variable('ratio', 'cosine of the corner at the foot of diagonal A'),
  expression: 'o / b',
  variables: { o: mm('how far the top corner stands off a true upright, to the right'), b },
  basis: 'geometry',
});
const outAngle = formula({
  symbol: 'phi',
  result: variable('angle', 'out of square'),
  expression: 'asin(abs(c))',
  variables: { c: variable('ratio', 'cosine of the corner') },
  basis: 'geometry',
});
const shift = formula({
  symbol: 'm',
  result: mm('how far the top must go along the bottom'),
  expression: 'b abs(c)',
  variables: { b, c: variable('ratio', 'cosine of the corner') },
  basis: 'geometry',
});
const trueDiagonal = formula({
  symbol: 'd',
  result: mm('both diagonals when square'),
  expression: 'sqrt(a^2 + b^2)',
  variables: { a, b },
  basis: 'geometry',
});
// Both readings wrong by e, one too long and one too short.
const tapeAngle = formula({
  symbol: 'phi_e',
  result: variable('angle', 'what the tape’s own error could be mistaken for'),
  expression: 'e * (d_A + d_B) / (2 a b)',
  variables: { e: mm('how far a reading may be out'), d_A: mm('diagonal A'), d_B: mm('diagonal B'), a, b },
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
      label: 'width',
      help: 'Corner to corner, as the diagonals are measured.',
      above: '0 mm',
      max: '50 m',
    }),
    height: field.length({
      symbol: 'b',
      label: 'height',
      help: 'Corner to corner, as the diagonals are measured.',
      above: '0 mm',
      max: '50 m',
    }),
    diagonalA: field.length({
      label: 'diagonal A',
      help: 'From bottom left to top right.',
      above: '0 mm',
      max: '100 m',
      optional: true,
    }),
    diagonalB: field.length({
      label: 'diagonal B',
      help: 'From bottom right to top left.',
      above: '0 mm',
      max: '100 m',
      optional: true,
    }),
    cornerOffset: field.length({
      label: 'lean',
      help: 'In place of diagonals: how far the top right corner stands to the right of a true upright.',
      min: '-50 m',
      max: '50 m',
      optional: true,
    }),
    readingError: field.length({
      label: 'tape error',
      help: 'How far one reading of the tape may be out.',
      min: '0 mm',
      max: '20 mm',
      default: '0.5 mm',
    }),
  },
  outputs: {
    outOfSquare: out.angle({ label: 'out of square' }),
    outPerMetre: out.slope({ label: 'out of square', help: 'Out of square, as a length.' }),
    move: out.length({ label: 'push along', help: 'How far the top must go along the bottom.' }),
    pull: out.text({ label: 'what to pull' }),
    shorten: out.length({ label: 'pull across', help: 'By how much the longer diagonal must get shorter.' }),
    trueDiagonal: out.length({ label: 'true diagonal', help: 'Both diagonals when it is square.' }),
    diagonalA: out.length({ label: 'diagonal A', help: 'From bottom left to top right, as it is.' }),
    diagonalB: out.length({ label: 'diagonal B', help: 'From bottom right to top left, as it is.' }),
    readingAngle: out.slope({
      label: 'error of measuring',
      help: 'What the tape’s own error could be mistaken for, as a length.',
    }),
    sure: out.flag({
      label: 'measurable',
      help: 'Whether it is out of square by more than the tape’s own error.',
    }),
    sidesDiffer: out.length({
      label: 'misfit of readings',
      help: 'How badly sides and diagonals agree, as a length of diagonal.',
      optional: true,
    }),
  },
  formulas: [cosine, offCosine, outAngle, shift, trueDiagonal, tapeAngle],
  solve: (given, trace) => {
    const { width: w, height: h } = given;
    const byDiagonals = given.diagonalA !== undefined || given.diagonalB !== undefined;
    if (byDiagonals === (given.cornerOffset !== undefined))
      throw new InputError({ field: 'diagonalA', message: 'takes either both diagonals, or cornerOffset' });
    const d = trace.evaluate(trueDiagonal, { a: w, b: h });
    let c: number;
    let [A, B] = [0, 0];
    let sidesDiffer: number | undefined;
    if (given.cornerOffset !== undefined) {
      if (Math.abs(given.cornerOffset) >= h)
        throw new InputError({
          field: 'cornerOffset',
          message: `got ${(given.cornerOffset * 1000).toFixed(1)} mm, takes less than the height of ${(h * 1000).toFixed(1)} mm`,
        });
      c = trace.evaluate(offCosine, { o: given.cornerOffset, b: h });
      A = Math.sqrt(w * w + h * h + 2 * w * h * c);
      B = Math.sqrt(w * w + h * h - 2 * w * h * c);
    } else {
      if (given.diagonalA === undefined || given.diagonalB === undefined)
        throw new InputError({
          field: given.diagonalA === undefined ? 'diagonalA' : 'diagonalB',
          message: 'missing; takes the other diagonal too, such as "1442 mm"',
        });
      [A, B] = [given.diagonalA, given.diagonalB];
      for (const [name, x] of [
        ['diagonalA', A],
        ['diagonalB', B],
      ] as const) {
        if (x >= w + h || x <= Math.abs(w - h))
          throw new InputError({
            field: name,
            message: `got ${(x * 1000).toFixed(1)} mm, takes a diagonal that these sides can have: more than ${(Math.abs(w - h) * 1000).toFixed(1)} mm and less than ${((w + h) * 1000).toFixed(1)} mm`,
          });
      }
      c = trace.evaluate(cosine, { d_A: A, d_B: B, a: w, b: h });
      // In any frame with equal opposite sides the squares of the diagonals add up to twice those of the sides.
      sidesDiffer = Math.abs(Math.sqrt((A * A + B * B) / 2) - d);
    }
    const phi = trace.evaluate(outAngle, { c });
    const move = trace.evaluate(shift, { b: h, c });
    const mistake = trace.evaluate(tapeAngle, { e: given.readingError, d_A: A, d_B: B, a: w, b: h });
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
      message: (_, answer) =>
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
  chart: (given, answer) => squarenessDrawing({ ...given, ...answer }),
  sentence: (_given, out) =>
    out.move === 0
      ? 'It is square.'
      : 'It is {outPerMetre} out of square. Shorten the longer diagonal by {shorten}: {pull}.',
  example: { width: '1200 mm', height: '800 mm', diagonalA: '1444 mm', diagonalB: '1440.4 mm' },
});
