import { danger, dataCaution, estimate, note, type Caution } from '../../engine/caution.js';
import { mulberry32 } from '../../engine/random.js';
import { asyncRecipe } from '../../engine/recipe.js';
import { placesKnown } from './pile-top/pile-survey.js';
import { answerOf, jobOf } from './pile-top/top-answer.js';
import { topDrawing } from './pile-top/top-drawing.js';
import { topInputs, topOutputs } from './pile-top/top-fields.js';
import { searchTop } from './pile-top/top-search.js';

/**
 * Whether a surveyed pile is enough for a top, how thick it can be, and which board goes where: docking, ripping,
 * crosscuts, rows with staggered joints, slabs for the thicknesser and the clamps, and what is left over. A lay-up proves
 * "enough"; a bound on length and pieces proves "not enough"; between them it says so. A row of the survey without a count
 * is one board. A large neighbourhood search; the same seed gives the same plan where the time suffices. Lengths in m.
 * Source: the bound is derived in pile-top/lay-up-bound.ts; the rules of stagger and least piece are common practice.
 * @throws InputError for a survey or rules that cannot be met
 */
export const topFromPile = asyncRecipe({
  name: 'topFromPile',
  title: 'A top from the pile',
  topic: 'stock',
  about:
    'Whether a surveyed pile is enough for a glued top, how thick it can be, and which board goes where, with a proof or the gap to one. Boards are ripped only where strips lie on edge.',
  sources: [],
  inputs: topInputs,
  outputs: topOutputs,
  search: async (given, trace) => {
    const job = jobOf(given);
    const began = performance.now();
    const { best, tried } = await searchTop(job, {
      until: began + given.timeLimit * 1000,
      aborted: () => trace.signal?.aborted === true,
      random: mulberry32(given.seed),
      report: (message, width, bound) =>
        trace.progress({
          done: Math.min(1, (performance.now() - began) / (given.timeLimit * 1000)),
          message,
          best: width / 1e6,
          bound: bound / 1e6,
        }),
    });
    if (trace.signal?.aborted) trace.note('Stopped early: this is the best found until then.');
    return answerOf(given, job, best, tried, trace);
  },
  cautions: (given, answer): Caution[] => [
    danger(
      'go over every salvaged board with a metal detector, from both faces, and pull nails, staples and screws before it meets a blade; then wear eye protection all the same',
    ),
    danger(
      'leave out timber with treatment marks, stains or old paint that may hold lead: neither its dust nor its shavings belong in a workshop, and it must not touch food',
    ),
    ...(answer.pieces.some((p) => p.length < 0.3)
      ? [
          danger(
            'some pieces are shorter than about 300 mm (common practice; the machine maker’s own limit rules): plane them before crosscutting, never singly',
          ),
        ]
      : []),
    note(
      'butt joints in a row carry no bending: keep them out of the middle of a span and off the edge rows, and check the sag of the top without the rows that are jointed there',
    ),
    ...(placesKnown(given.boards)
      ? []
      : [
          estimate(
            'faults without places are taken as of equal length at equal distances; measure their places before you cut',
          ),
        ]),
    ...(answer.useless
      ? [
          dataCaution(
            `these boards give nothing: ${answer.useless
              .slice(0, 12)
              .map((b) => b.board)
              .join(', ')}`,
          ),
        ]
      : []),
  ],
  chart: (given, answer) =>
    topDrawing({
      pieces: answer.pieces,
      slabs: answer.slabs.map((s) => Number(s.rows.split(' ').at(-1))),
      topLength: given.topLength,
      spare: given.spare,
      width: answer.foundWidth,
    }),
  example: {
    boards: [
      {
        name: 'R1',
        length: '2.48 m',
        width: '98 mm',
        thickness: '48 mm',
        endLeft: '60 mm',
        endRight: '70 mm',
        faultsAt: '1120-1210 mm',
        count: 3,
      },
      {
        name: 'R3',
        length: '2.31 m',
        width: '97 mm',
        thickness: '47 mm',
        endLeft: '50 mm',
        endRight: '60 mm',
        count: 3,
      },
      {
        name: 'R7',
        length: '1.87 m',
        width: '98 mm',
        thickness: '47 mm',
        endLeft: '60 mm',
        endRight: '60 mm',
        bow: '2 mm',
        count: 4,
      },
      {
        name: 'R9',
        length: '1.64 m',
        width: '97 mm',
        thickness: '47 mm',
        endLeft: '40 mm',
        endRight: '45 mm',
        count: 3,
      },
    ],
    topLength: '1.95 m',
    width: '640 mm',
    thickness: '40 mm',
    timeLimit: '300 ms',
  },
});
