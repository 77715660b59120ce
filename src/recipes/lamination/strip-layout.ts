import { InputError } from '../../units/input-error.js';
import { danger, note } from '../../engine/caution.js';
import { out } from '../../engine/output.js';
import { asyncRecipe } from '../../engine/recipe.js';
import { mulberry32 } from '../../engine/random.js';
import { metalFirst, mm, shortestThroughThicknesser, thicknesserLeast } from './salvage-caution.js';

import { cutsOf, jobOf } from './strip-job.js';
import { layoutDrawing } from './strip-drawing.js';
import type { Row, Stock } from './strip-row.js';
import { search, wasteBound } from './strip-search.js';
import { stripLayoutFields } from './strip-layout-fields.js';

const laidColumns = {
  piece: out.text({ label: 'piece' }),
  start: out.length({ label: 'start', help: 'Where it starts, from the left end.' }),
  length: out.length({ label: 'length laid' }),
  tone: out.text({ label: 'tone', optional: true }),
  cut: out.flag({ label: 'is it cut?' }),
} as const;
const rowsOut = out.list(out.table(laidColumns, { label: 'pieces of a row' }), {
  label: 'rows',
  help: 'Each row with its pieces from left to right.',
});

/**
 * Lays a slab from pieces of random length: every row filled end to end, the joints of neighbouring rows at least so far
 * apart, and like tones kept from lying side by side where it can be helped. For rows of strips of one width; sort by
 * width first. Lengths (and tones) in; rows, cuts and lengths out. A search: rows taken out and laid anew while that
 * saves timber, with a bound on the waste of any layout; `optimal` only when no layout can waste less and no like tones
 * touch. A metre of like tones side by side is weighed as 20 mm of waste. Stops on interrupt with the best it has.
 * Source: geometry; the rules of stagger and tone are common practice.
 * @throws InputError when the pieces do not reach, or when no layout was found in the time
 */
export const stripLayout = asyncRecipe({
  name: 'stripLayout',
  title: 'Rows from random lengths',
  topic: 'lamination',
  about:
    'Lays a slab from random lengths: rows filled end to end, joints staggered, like tones kept apart, little wasted.',
  sources: [],
  inputs: stripLayoutFields,
  outputs: {
    rows: {
      ...rowsOut,
      format: (rows: readonly (readonly unknown[])[]) => ({
        metric: `${rows.length}, with ${rows.map((r) => r.length).join(', ')} pieces`,
        inch: '',
      }),
    },
    plan: out.table(
      {
        row: out.count({ label: 'row' }),
        pieces: out.text({ label: 'pieces', help: 'From left to right.' }),
        joints: out.text({ label: 'joints', help: 'Distances from the left end.' }),
      },
      { label: 'The rows in words' },
    ),
    cuts: out.table(
      {
        piece: out.text({ label: 'piece' }),
        from: out.length({ label: 'its length' }),
        parts: out.text({ label: 'cut to' }),
        left: out.length({ label: 'left over' }),
        fate: out.text({ label: 'what becomes of it' }),
      },
      { label: 'Pieces to cut' },
    ),
    cutCount: out.count({ label: 'saw cuts' }),
    waste: out.length({ label: 'waste', help: 'Length lost to sawdust and to offcuts too short to keep.' }),
    leastWaste: out.length({ label: 'least waste', help: 'No layout of these pieces can waste less.' }),
    worstStagger: out.length({
      label: 'worst stagger',
      help: 'Least distance of joints in neighbouring rows; the length of the slab where there are none.',
    }),
    sameTone: out.length({
      label: 'like tones touching',
      help: 'Length over which like tones lie side by side.',
    }),
    unused: out.length({ label: 'left over', help: 'Pieces not used and offcuts kept.' }),
    optimal: out.flag({ label: 'proved', help: 'None wastes less, and no like tones touch.' }),
  },
  search: async (given, trace) => {
    const job = jobOf(given);
    const bound = wasteBound(job);
    trace.note(
      `${job.stocks.length} pieces of ${mm(job.stocks.reduce((s, x) => s + x.length, 0) / 1e9)} in all for ${job.rows} rows of ${mm(given.topLength)}.`,
    );
    const best = await search(job, {
      seconds: given.timeLimit,
      random: mulberry32(given.seed),
      bound,
      signal: trace.signal,
      now: () => performance.now(),
      tell: (l, done) =>
        trace.progress({
          done,
          message: l
            ? `waste ${mm(l.waste / 1e9)}, like tones side by side ${mm(l.sameTone / 1e9, 0)}`
            : 'looking for a first layout',
          ...(l ? { best: l.waste / 1e9 } : {}),
          bound: bound / 1e9,
        }),
    });
    const stopped = trace.signal?.aborted === true;
    if (!best) throw noLayout(given, stopped);
    const optimal = best.waste <= bound && best.sameTone === 0;
    trace.note(
      `Found by building rows and taking one to four out to build anew. Waste ${mm(best.waste / 1e9)}; no layout can waste less than ${mm(bound / 1e9)}.${optimal ? ' Proven best.' : stopped ? ' Stopped early.' : ' Not proven best.'}`,
    );
    const rows = best.rows.map((row) => laidRow(job, row));
    const cuts = cutsOf(job, best.rows);
    const laid = best.rows.flat().reduce((s, p) => s + p.length, 0);
    return {
      rows,
      cuts,
      cutCount: cuts.reduce((n, c) => n + c.saw, 0),
      plan: rows.map((row, i) => ({ row: i + 1, ...rowText(row) })),
      waste: best.waste / 1e9,
      leastWaste: bound / 1e9,
      worstStagger: Math.min(best.worstStagger, job.length) / 1e9,
      sameTone: best.sameTone / 1e9,
      unused: (job.stocks.reduce((s, x) => s + x.length, 0) - laid - best.waste) / 1e9,
      optimal,
    };
  },
  cautions: (given, answer) => [
    metalFirst,
    ...(answer.rows.flat().some((p) => p.length < shortestThroughThicknesser)
      ? [
          danger(
            `dress pieces shorter than ${mm(shortestThroughThicknesser)} before they are cut to length, or by hand, and hold short pieces at the saw with a stop and a hold-down, never by fingers`,
          ),
        ]
      : []),
    thicknesserLeast,
    note(
      'butt joints in a row carry no bending: glue is weak on end grain, so the stagger does the work; keep joints out of the middle of a span and of the edges',
    ),
    ...(given.minStagger < 0.1
      ? [
          note(
            'joints nearer than about 100 mm (or twice a strip’s width) let cracks run from row to row (common practice)',
          ),
        ]
      : []),
  ],
  chart: (given, answer) => layoutDrawing(given, answer.rows),
  sentence:
    'The strips fill the rows with {cutCount} cuts and {waste} of waste; joints of neighbours stand {worstStagger} apart at least.',
  example: {
    topLength: '2 m',
    rows: 8,
    minStagger: '150 mm',
    timeLimit: '500 ms',
    lengths: [
      { name: 'A', length: '940 mm', tone: 'dark', count: 4 },
      { name: 'B', length: '815 mm', tone: 'light', count: 5 },
      { name: 'C', length: '640 mm', tone: 'dark', count: 6 },
      { name: 'D', length: '555 mm', tone: 'light', count: 6 },
      { name: 'E', length: '470 mm', tone: 'dark', count: 6 },
      { name: 'F', length: '390 mm', tone: 'light', count: 8 },
      { name: 'G', length: '310 mm', tone: 'dark', count: 4 },
    ],
  },
});

interface LaidPiece {
  readonly piece: string;
  readonly start: number;
  readonly length: number;
  readonly tone: string | undefined;
  readonly cut: boolean;
}

/** The pieces of a row with their places, m. */
function laidRow(job: ReturnType<typeof jobOf>, row: Row): LaidPiece[] {
  let x = 0;
  return row.map((p) => {
    const stock = job.stocks[p.stock] as Stock;
    const start = x;
    x += p.length;
    return {
      piece: stock.name,
      start: start / 1e9,
      length: p.length / 1e9,
      tone: job.toneNames[stock.tone],
      cut: p.length < stock.length,
    };
  });
}

const rowText = (row: readonly LaidPiece[]) => ({
  pieces: row
    .map((p) => `${p.piece} ${mm(p.length)}${p.tone ? ` ${p.tone}` : ''}${p.cut ? ' (cut)' : ''}`)
    .join(' | '),
  joints:
    row
      .slice(1)
      .map((p) => mm(p.start))
      .join(', ') || 'none',
});

const noLayout = (given: { readonly minStagger: number; readonly timeLimit: number }, stopped: boolean) =>
  new InputError(
    stopped
      ? 'stopped before a first layout was found; give it more time'
      : {
          field: 'minStagger',
          message: `got ${mm(given.minStagger)}, and no layout was found in ${given.timeLimit} s (which does not prove that there is none); takes a smaller stagger, more or shorter pieces, or a longer timeLimit`,
        },
  );
