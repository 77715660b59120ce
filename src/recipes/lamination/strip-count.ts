import { InputError } from '../../units/input-error.js';
import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { metalFirst, mm, thicknesserLeast } from './salvage-caution.js';
import { stripEndDrawing } from './strip-end-drawing.js';

/** Trade rule for strips of a panel: 3 in, m. */
const widestStill = 0.0762;

const top = variable('length', 'width of the finished top', { unit: 'mm' });
const trim = variable('length', 'kept for trimming the glued top to width', { unit: 'mm' });
const finished = variable('length', 'width of a strip once jointed', { unit: 'mm' });

const jointed = formula({
  symbol: 's',
  result: finished,
  expression: 'r - j',
  variables: {
    r: variable('length', 'rough width of a strip', { unit: 'mm' }),
    j: variable('length', 'taken off a strip in jointing both edges', { unit: 'mm' }),
  },
  basis: 'geometry',
});

// A billionth is taken off before rounding up, or 640 / 40 could come out as 17 strips by the last binary digit.
const strips = formula({
  symbol: 'n',
  result: variable('count', 'strips across the top'),
  expression: 'ceil((W + t) / s - 10^(-9))',
  variables: { W: top, t: trim, s: finished },
  basis: 'geometry',
});

const glued = formula({
  symbol: 'G',
  result: variable('length', 'width as glued', { unit: 'mm' }),
  expression: 'n s',
  variables: { n: variable('count', 'strips'), s: finished },
  basis: 'geometry',
});

const spareWidth = formula({
  symbol: 'e',
  result: variable('length', 'spare width after the trim', { unit: 'mm' }),
  expression: 'G - t - W',
  variables: { G: variable('length', 'width as glued', { unit: 'mm' }), t: trim, W: top },
  basis: 'geometry',
});

/**
 * How many strips a glued-up top takes across its width, and in how many slabs to glue it so that each passes the
 * thicknesser. For edge-glued strips of one width; for mixed widths use the survey of the pile. Lengths in, lengths
 * and counts out; slabs differ by one strip at most, the wider first.
 * Source: geometry; the rule on wide strips is a trade's (common practice).
 * @throws InputError when jointing eats the strip, a strip is wider than the machine, or over 10 000 strips are needed
 */
export const stripCount = recipe({
  name: 'stripCount',
  title: 'Strips across a glued top',
  topic: 'lamination',
  about:
    'How many strips a top takes across its width, and in how many slabs to glue them so that each passes the thicknesser.',
  sources: [],
  inputs: {
    topWidth: field.length({
      symbol: 'W',
      label: 'top width',
      help: 'Width of the finished top.',
      above: '0 mm',
      max: '20 m',
    }),
    stripWidth: field.length({
      symbol: 'r',
      label: 'rough strip width',
      help: 'Rough width of a strip as it will lie across the top.',
      above: '0 mm',
      max: '2 m',
    }),
    jointing: field.length({
      symbol: 'j',
      label: 'jointing allowance',
      help: 'Taken off each strip in jointing, both edges together.',
      min: '0 mm',
      max: '100 mm',
      default: '3 mm',
    }),
    finalTrim: field.length({
      symbol: 't',
      label: 'trim',
      help: 'Kept for trimming the glued top to width, both edges together.',
      min: '0 mm',
      max: '500 mm',
      default: '10 mm',
    }),
    machineWidth: field.length({
      label: 'thicknesser width',
      help: 'Widest board that the thicknesser takes.',
      above: '0 mm',
      max: '5 m',
      optional: true,
    }),
  },
  outputs: {
    strips: out.count({ label: 'strips across the top' }),
    stripFinished: out.length({ label: 'jointed width', help: 'Width of a strip once jointed.' }),
    gluedWidth: out.length({ label: 'glued width', help: 'Width as glued, before the trim.' }),
    spare: out.length({ label: 'spare width', help: 'Width to spare after the trim.' }),
    slabs: out.table(
      {
        strips: out.count({ label: 'strips in the slab' }),
        width: out.length({ label: 'width of the slab' }),
      },
      { label: 'Slabs to glue first', help: 'Each narrow enough for the thicknesser.' },
    ),
  },
  formulas: [jointed, strips, glued, spareWidth],
  solve: (given, trace) => {
    if (given.jointing >= given.stripWidth) {
      throw new InputError({
        field: 'jointing',
        message: `got ${mm(given.jointing)}, takes less than the strip's rough width of ${mm(given.stripWidth)}`,
      });
    }
    const s = trace.evaluate(jointed, { r: given.stripWidth, j: given.jointing });
    const n = trace.evaluate(strips, { W: given.topWidth, t: given.finalTrim, s });
    const G = trace.evaluate(glued, { n, s });
    const spare = trace.evaluate(spareWidth, { G, t: given.finalTrim, W: given.topWidth });
    if (n > 10_000)
      throw new InputError({
        field: 'stripWidth',
        message: `needs ${n} strips, takes a strip wide enough for 10 000 or fewer`,
      });
    const most = given.machineWidth === undefined ? n : Math.floor(given.machineWidth / s + 1e-9);
    if (most < 1)
      throw new InputError({
        field: 'machineWidth',
        message: `got ${mm(given.machineWidth as number)}, takes at least the ${mm(s)} of a single jointed strip`,
      });
    const count = Math.ceil(n / most);
    if (count > 1)
      trace.note(
        `At most ${most} strips pass the thicknesser together, so ${count} slabs, as equal as whole strips allow.`,
      );
    // Equal slabs plane alike and leave the last joints where they are easy to reach.
    const slabs = Array.from(
      { length: count },
      (_, i) => Math.floor(n / count) + (i < n % count ? 1 : 0),
    ).map((k) => ({ strips: k, width: k * s }));
    return { strips: n, stripFinished: s, gluedWidth: G, spare, slabs };
  },
  cautions: (given, answer) => [
    metalFirst,
    ...(given.machineWidth === undefined
      ? [note('no machine width was given: the whole top is counted as one slab')]
      : [thicknesserLeast]),
    ...(answer.slabs.length > 1
      ? [note('slabs are jointed once more on the edges that meet: keep that in the final trim')]
      : []),
    ...(answer.stripFinished > widestStill
      ? [
          note(
            `strips of ${mm(answer.stripFinished, 0)} are wider than the trade’s 3 in (76 mm) for a panel that stays flat (common practice): rip them, or match the growth rings with care`,
          ),
        ]
      : []),
  ],
  chart: (given, answer) => stripEndDrawing(given.topWidth, answer),
  sentence: (_given, out) =>
    `Cut {strips} strips${out.slabs.length > 1 ? `, glued first as ${out.slabs.length} slabs that pass the thicknesser` : ''}: {spare} to spare.`,
  example: {
    topWidth: '640 mm',
    stripWidth: '48 mm',
    jointing: '3 mm',
    finalTrim: '10 mm',
    machineWidth: '330 mm',
  },
});
