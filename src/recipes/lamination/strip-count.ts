import { Refusal } from '../../quantities/refusal.js';
import { note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { cite } from '../../recipe/source.js';
import { metalFirst, mm, thicknesserLeast } from './salvage.js';
import { stripPicture } from './strip-end-picture.js';

const warpRule = cite('panel-gluing-trade-page', 'widths of strips');
/** Trade rule for strips of a panel: 3 in, m. */
const widestStill = 0.0762;

const top = letter('length', 'width of the finished top', { in: 'mm' });
const trim = letter('length', 'kept for trimming the glued top to width', { in: 'mm' });
const finished = letter('length', 'width of a strip once jointed', { in: 'mm' });

const jointed = formula({
  symbol: 's',
  gives: finished,
  text: 'r - j',
  where: {
    r: letter('length', 'rough width of a strip', { in: 'mm' }),
    j: letter('length', 'taken off a strip in jointing both edges', { in: 'mm' }),
  },
  basis: 'geometry',
});

// A billionth is taken off before rounding up, or 640 / 40 could come out as 17 strips by the last binary digit.
const strips = formula({
  symbol: 'n',
  gives: letter('count', 'strips across the top'),
  text: 'ceil((W + t) / s - 10^(-9))',
  where: { W: top, t: trim, s: finished },
  basis: 'geometry',
});

const glued = formula({
  symbol: 'G',
  gives: letter('length', 'width as glued', { in: 'mm' }),
  text: 'n s',
  where: { n: letter('count', 'strips'), s: finished },
  basis: 'geometry',
});

const spareWidth = formula({
  symbol: 'e',
  gives: letter('length', 'spare width after the trim', { in: 'mm' }),
  text: 'G - t - W',
  where: { G: letter('length', 'width as glued', { in: 'mm' }), t: trim, W: top },
  basis: 'geometry',
});

/**
 * How many strips a glued-up top takes across its width, and in how many slabs to glue it so that each passes the
 * thicknesser. For edge-glued strips of one width; for mixed widths use the survey of the pile. Lengths in, lengths
 * and counts out; slabs differ by one strip at most, the wider first.
 * Source: geometry; the rule on wide strips is a trade's (common practice).
 * @throws Refusal when jointing eats the strip, a strip is wider than the machine, or over 10 000 strips are needed
 */
export const stripCount = recipe({
  name: 'stripCount',
  title: 'Strips across a glued top',
  topic: 'lamination',
  about:
    'How many strips a top takes across its width, and in how many slabs to glue them so that each passes the thicknesser.',
  sources: [warpRule],
  inputs: {
    topWidth: field.length({ symbol: 'W', says: 'width of the finished top', above: '0 mm', max: '20 m' }),
    stripWidth: field.length({
      symbol: 'r',
      says: 'rough width of a strip, as it will stand across the top',
      above: '0 mm',
      max: '2 m',
    }),
    jointing: field.length({
      symbol: 'j',
      says: 'taken off each strip in jointing, both edges together',
      min: '0 mm',
      max: '100 mm',
      default: '3 mm',
    }),
    finalTrim: field.length({
      symbol: 't',
      says: 'kept for trimming the glued top to width, both edges together',
      min: '0 mm',
      max: '500 mm',
      default: '10 mm',
    }),
    machineWidth: field.length({
      says: 'widest board that the thicknesser takes',
      above: '0 mm',
      max: '5 m',
      optional: true,
    }),
  },
  outputs: {
    strips: out.count({ says: 'strips across the top' }),
    stripFinished: out.length({ says: 'width of a strip once jointed' }),
    gluedWidth: out.length({ says: 'width as glued, before the trim' }),
    spare: out.length({ says: 'width to spare after the trim' }),
    slabs: out.table(
      { strips: out.count({ says: 'strips in the slab' }), width: out.length({ says: 'width of the slab' }) },
      { says: 'Slabs to glue first, each narrow enough for the thicknesser' },
    ),
  },
  formulas: [jointed, strips, glued, spareWidth],
  solve: (given, work) => {
    if (given.jointing >= given.stripWidth) {
      throw new Refusal({
        field: 'jointing',
        says: `got ${mm(given.jointing)}, takes less than the strip's rough width of ${mm(given.stripWidth)}`,
      });
    }
    const s = work.apply(jointed, { r: given.stripWidth, j: given.jointing });
    const n = work.apply(strips, { W: given.topWidth, t: given.finalTrim, s });
    const G = work.apply(glued, { n, s });
    const spare = work.apply(spareWidth, { G, t: given.finalTrim, W: given.topWidth });
    if (n > 10_000)
      throw new Refusal({
        field: 'stripWidth',
        says: `needs ${n} strips, takes a strip wide enough for 10 000 or fewer`,
      });
    const most = given.machineWidth === undefined ? n : Math.floor(given.machineWidth / s + 1e-9);
    if (most < 1)
      throw new Refusal({
        field: 'machineWidth',
        says: `got ${mm(given.machineWidth as number)}, takes at least the ${mm(s)} of a single jointed strip`,
      });
    const count = Math.ceil(n / most);
    if (count > 1)
      work.say(
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
            warpRule,
          ),
        ]
      : []),
  ],
  chart: (given, answer) => stripPicture(given.topWidth, answer),
  example: {
    topWidth: '640 mm',
    stripWidth: '48 mm',
    jointing: '3 mm',
    finalTrim: '10 mm',
    machineWidth: '330 mm',
  },
});
