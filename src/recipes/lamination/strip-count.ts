import { drawing } from '../../charts/drawing.js';
import { Refusal } from '../../quantities/refusal.js';
import { danger, note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';

const top = letter('length', 'width of the finished top', { in: 'mm' });
const trim = letter('length', 'kept for trimming the glued top to width', { in: 'mm' });
const finished = letter('length', 'width of a strip once jointed', { in: 'mm' });

const jointed = formula({
  symbol: 's',
  gives: finished,
  text: 'r - j',
  where: { r: letter('length', 'rough width of a strip', { in: 'mm' }), j: letter('length', 'taken off a strip in jointing both edges', { in: 'mm' }) },
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
 * thicknesser. For edge-glued strips of one width; for mixed widths use the survey of the pile.
 */
export const stripCount = recipe({
  name: 'stripCount',
  title: 'Strips across a glued top',
  topic: 'lamination',
  about: 'How many strips a top takes across its width, and in how many slabs to glue them so that each passes the thicknesser.',
  sources: [],
  inputs: {
    topWidth: field.length({ symbol: 'W', says: 'width of the finished top', above: '0 mm', max: '20 m' }),
    stripWidth: field.length({ symbol: 'r', says: 'rough width of a strip, as it will stand across the top', above: '0 mm', max: '2 m' }),
    jointing: field.length({ symbol: 'j', says: 'taken off each strip in jointing, both edges together', min: '0 mm', max: '100 mm', default: '3 mm' }),
    finalTrim: field.length({ symbol: 't', says: 'kept for trimming the glued top to width, both edges together', min: '0 mm', max: '500 mm', default: '10 mm' }),
    machineWidth: field.length({ says: 'widest board that the thicknesser takes', above: '0 mm', max: '5 m', optional: true }),
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
      throw new Refusal({ field: 'jointing', says: `got ${(given.jointing * 1000).toFixed(1)} mm, takes less than the strip's rough width of ${(given.stripWidth * 1000).toFixed(1)} mm` });
    }
    const s = work.apply(jointed, { r: given.stripWidth, j: given.jointing });
    const n = work.apply(strips, { W: given.topWidth, t: given.finalTrim, s });
    const G = work.apply(glued, { n, s });
    const spare = work.apply(spareWidth, { G, t: given.finalTrim, W: given.topWidth });
    if (n > 10_000) throw new Refusal({ field: 'stripWidth', says: `needs ${n} strips, takes a strip wide enough for 10 000 or fewer` });
    const most = given.machineWidth === undefined ? n : Math.floor(given.machineWidth / s + 1e-9);
    if (most < 1) throw new Refusal({ field: 'machineWidth', says: `a single jointed strip is ${(s * 1000).toFixed(1)} mm wide; takes a machine at least that wide` });
    const count = Math.ceil(n / most);
    if (count > 1) work.say(`At most ${most} strips pass the thicknesser together, so ${count} slabs, as equal as whole strips allow.`);
    // Equal slabs plane alike and leave the last joints where they are easy to reach.
    const slabs = Array.from({ length: count }, (_, i) => Math.floor(n / count) + (i < n % count ? 1 : 0)).map((k) => ({ strips: k, width: k * s }));
    return { strips: n, stripFinished: s, gluedWidth: G, spare, slabs };
  },
  cautions: (given) => [
    danger('look over every salvaged strip with a metal detector and pull nails and staples before it meets a blade'),
    ...(given.machineWidth === undefined ? [note('no machine width was given: the whole top is counted as one slab')] : []),
  ],
  chart: (given, answer) => {
    let x = 0;
    const high = Math.max(40, given.topWidth * 1000 * 0.1);
    const shapes = answer.slabs.flatMap((slab, i) => {
      const from = x;
      const boards = Array.from({ length: slab.strips }, (_, k) => ({ kind: 'rectangle' as const, x: from + k * answer.stripFinished * 1000, y: 0, width: answer.stripFinished * 1000, height: high, fill: (i % 2 === 0 ? 'wood' : 'woodDark') as 'wood' | 'woodDark' }));
      x += slab.width * 1000;
      return [...boards, { kind: 'dimension' as const, from: [from, high] as const, to: [x, high] as const, text: `${slab.strips} strips, ${(slab.width * 1000).toFixed(1)} mm`, offset: 14 }];
    });
    return drawing({ title: 'The top in end view, slabs as glued', shapes });
  },
  example: { topWidth: '640 mm', stripWidth: '48 mm', jointing: '3 mm', finalTrim: '10 mm', machineWidth: '330 mm' },
});
