import { danger, dataCaution, estimate, note, type Caution } from '../../engine/caution.js';
import { asyncRecipe } from '../../engine/recipe.js';
import type { Trace } from '../../engine/trace.js';
import { reach, thicknessLeft } from './pile-top/joint-effect.js';
import { placesKnown } from './pile-top/pile-survey.js';
import { answerOf, jobOf, type TopFindings, type TopGiven } from './pile-top/top-answer.js';
import { topDrawing } from './pile-top/top-drawing.js';
import { topInputs } from './pile-top/top-fields.js';
import { share, type SearchControl, type TopJob } from './pile-top/top-job.js';
import { topOutputs } from './pile-top/top-outputs.js';
import { searchTop } from './pile-top/top-search.js';
import { staggerCurve, thicknessCurve, tryChanges } from './pile-top/what-ifs.js';

/** From so many rounds on, the time limit is what ends the search. */
const endlessRounds = 1_000_000;

/** The search for the top, then the curves and the changes, each from the lay-up found. */
async function findTop(given: TopGiven, job: TopJob, trace: Trace): Promise<TopFindings> {
  const began = performance.now();
  const control: SearchControl = {
    until: began + given.timeLimit * 1000,
    timed: job.rounds >= endlessRounds,
    aborted: () => trace.signal?.aborted === true,
    seed: given.seed,
    report: (message, width, bound) =>
      trace.progress({
        done: Math.min(1, (performance.now() - began) / (given.timeLimit * 1000)),
        message,
        best: width / 1e6,
        bound: bound / 1e6,
      }),
  };
  const parts = Number(given.curves) + Number(given.whatIfs);
  const found = await searchTop(job, parts > 0 ? share(control, 2) : control);
  const curve = given.curves ? await thicknessCurve(job, found.best, found.tried, share(control, 3)) : [];
  const staggers =
    given.curves && job.rules.maxJoints > 0 ? await staggerCurve(job, found.best, share(control, 2)) : [];
  const whatIfs = given.whatIfs ? await tryChanges(job, found.best, control) : [];
  if (trace.signal?.aborted) trace.note('Stopped early: this is the best found until then.');
  else if (!found.best.finished)
    trace.note(
      'The time ran out before all rounds were done: on a faster machine, or with a longer timeLimit, the plan may be better.',
    );
  return { ...found, curve, staggers, whatIfs };
}

/**
 * Whether a surveyed pile is enough for a top, how thick it can be, and which board goes where: docking, ripping,
 * crosscuts, rows with staggered joints, slabs for the thicknesser and the clamps, what is left over, and what small changes
 * would free. A lay-up proves "enough"; a bound on length and pieces proves "not enough"; between them it says so. A row
 * of the survey without a count is one board. Large neighbourhood search: the same seed gives the same plan, unless
 * the time limit cuts the rounds short, which `complete` tells. Lengths in m, volumes in m³.
 * Source: the bounds are derived in pile-top/lay-up-bound.ts and timber-bound.ts; stagger and least piece are common practice.
 * @throws InputError for a survey or rules that cannot be met
 */
export const topFromPile = asyncRecipe({
  name: 'topFromPile',
  title: 'A top from the pile',
  topic: 'stock',
  about:
    'Whether a surveyed pile is enough for a glued top, how thick it can be, and which board goes where, with a proof or the gap to one, and what small changes to pile or rules would free.',
  sources: [],
  inputs: topInputs,
  outputs: topOutputs,
  formulas: [reach, thicknessLeft],
  search: async (given, trace) => {
    const job = jobOf(given);
    return answerOf(given, job, await findTop(given, job, trace), trace);
  },
  cautions: (given, answer): Caution[] => [
    danger(
      'go over every salvaged board with a metal detector, from both faces, and pull nails, staples and screws before it meets a blade; then wear eye protection all the same',
    ),
    danger(
      'leave out timber with treatment marks, stains or old paint that may hold lead: neither its dust nor its shavings belong in a workshop, and it must not touch food',
    ),
    ...(given.maxJoints > 0 && given.stagger > given.leastPiece / 2
      ? [
          note(
            `a stagger of ${Math.round(given.stagger * 1000)} mm is over half the least piece of ${Math.round(given.leastPiece * 1000)} mm: two rows of such short pieces cannot lie side by side, so some of the shortest pieces may stay unused`,
          ),
        ]
      : []),
    ...(answer.pieces.some((p) => p.length < 0.3)
      ? [
          danger(
            'plane pieces before crosscutting, never singly: some are shorter than about 300 mm (common practice; the machine maker’s own limit rules)',
          ),
        ]
      : []),
    estimate(
      `butt joints carry no bending: at the weakest section ${Math.round(answer.bendingShare * 100)} % of the width counts, so calculate sag and bending with ${Math.round(answer.thicknessForBending * 1000)} mm instead of the full thickness (our estimate, a joint being felt over twice the width of its row on each side)`,
    ),
    ...(answer.bendingShare < 0.5
      ? [
          note(
            'joints lie close together somewhere along this top: put a rail or leg under that place, or glue the top from two layers whose joints are apart (layers: 2)',
          ),
        ]
      : []),
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
      slabs: answer.slabs.map((slab) => Number(slab.rows.split(' ').at(-1))),
      topLength: given.topLength,
      spare: given.spare,
      width: answer.foundWidth,
    }),
  mending: {
    fails: (_given, out) => out.verdict !== 'enough',
    saidBySentence: 'the length of boards that would make it up comes from the search itself',
  },
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
    rounds: 300,
  },
});
