// The job from what was given, and the answer from the best top found.
import type { Parsed } from '../../../engine/field.js';
import type { Trace } from '../../../engine/trace.js';
import { InputError } from '../../../units/input-error.js';
import { cutPieces, leastStagger } from './lay-up-plan.js';
import { boardsOf, um } from './pile-survey.js';
import type { Lay } from './pile-sticks.js';
import type { topInputs } from './top-fields.js';
import {
  boardTable,
  leftTable,
  pieceTable,
  rowTable,
  slabTable,
  timberUsed,
  uselessTable,
} from './top-tables.js';
import type { TopAt, TopJob } from './top-search.js';

export type TopGiven = Parsed<typeof topInputs>;

/** The job in whole micrometres. @throws InputError where the rules exclude every lay-up */
export function jobOf(given: TopGiven): TopJob {
  const [rowLength, leastPiece] = [um(given.topLength + given.spare), um(given.leastPiece)];
  const leastEnd = leastPiece + Math.ceil(um(given.spare) / 2);
  if (rowLength < leastEnd && given.maxJoints === 0)
    throw new InputError({
      field: 'leastPiece',
      message: 'got a least piece longer than the top; takes less than the top is long',
    });
  if (given.maxJoints > 0 && um(given.stagger) * 2 > rowLength)
    throw new InputError({
      field: 'stagger',
      message: `got ${Math.round(given.stagger * 1000)} mm, more than half the length of a row; takes less, or maxJoints 0 for rows without joints`,
    });
  const lays: readonly Lay[] = given.lay === 'either' ? ['flat', 'on edge'] : [given.lay];
  return {
    boards: boardsOf(given.boards, given.leastPiece),
    lays,
    shop: { kerf: um(given.kerf), plane: um(given.plane), leastInner: leastPiece },
    rules: {
      rowLength,
      leastInner: leastPiece,
      leastEnd,
      kerf: um(given.kerf),
      stagger: um(given.stagger),
      maxJoints: given.maxJoints,
    },
    jointing: um(given.jointing),
    slabJointing: um(given.slabJointing),
    leastRow: um(given.leastRow),
    widestSlab: um(given.widestSlab),
    wanted: um(given.width),
    thickness: given.thickness === undefined ? undefined : um(given.thickness),
  };
}

const mm = (m: number): string => `${Math.round(m * 1000)} mm`;

/** The answer in one sentence, with its margin and what is missing. */
function sentenceOf(given: TopGiven, job: TopJob, top: TopAt, verdict: string): string {
  const [width, bound, thick] = [top.width / 1e6, top.bound / 1e6, mm(top.thickness / 1e6)];
  if (verdict === 'enough')
    return `Enough: a top ${thick} thick and ${mm(width)} wide, ${mm(width - given.width)} to spare${top.lay === 'on edge' ? ', strips on edge' : ''}.`;
  const rows = top.found.rows.length;
  const each = rows > 0 ? width / rows : 0.05;
  const missing = Math.ceil(((given.width - width) / each) * (given.topLength + given.spare) * 10) / 10;
  const more = `About ${missing.toFixed(1)} m more of boards that give ${mm(each)} across would make it up.`;
  return verdict === 'not enough'
    ? `Not enough: at ${thick} no lay-up of this pile is wider than ${mm(bound)}; ${mm(given.width)} is asked. ${more}`
    : `Not proved either way: at ${thick} the widest found is ${mm(width)}, ${mm(given.width)} is asked, and none can exceed ${mm(bound)}. More time may settle it. ${more}`;
}

/** All answers of the recipe from the best top found. */
export function answerOf(given: TopGiven, job: TopJob, best: TopAt, tried: readonly TopAt[], trace: Trace) {
  const verdict = best.width >= job.wanted ? 'enough' : best.bound < job.wanted ? 'not enough' : 'not proved';
  const pieces = cutPieces(best.found.rows, best.sticks, job.boards, job.shop.kerf);
  const stagger = leastStagger(best.found.rows);
  const useless = uselessTable(job, best);
  trace.note(
    `r rows at least w wide need r row lengths of ${mm(given.topLength + given.spare)} from clear lengths at least w across, in at most r × ${given.maxJoints + 1} pieces; what the pile cannot give so, no lay-up can. At ${mm(best.thickness / 1e6)}: at most ${mm(best.bound / 1e6)} wide, found ${mm(best.width / 1e6)}.`,
  );
  return {
    verdict,
    sentence: sentenceOf(given, job, best, verdict),
    thickness: best.thickness / 1e6,
    foundWidth: best.width / 1e6,
    widthBound: Math.max(best.bound, best.width) / 1e6,
    lay: best.lay,
    rowCount: best.found.rows.length,
    boardsCut: new Set(pieces.flat().map((p) => `${p.board}:${p.copy}`)).size,
    timber: timberUsed(job, best, job.rules.leastInner),
    ...(stagger === undefined ? {} : { worstStagger: stagger / 1e6 }),
    rows: rowTable(job, best, pieces),
    cuts: boardTable(job, best, pieces),
    slabs: slabTable(job, best),
    pieces: pieceTable(job, best, pieces),
    leftOver: leftTable(job, best, job.rules.leastInner),
    curve: [...tried]
      .sort((a, b) => b.thickness - a.thickness || a.lay.localeCompare(b.lay))
      .map((t) => ({
        thickness: t.thickness / 1e6,
        lay: t.lay,
        width: t.width / 1e6,
        bound: Math.max(t.bound, t.width) / 1e6,
      })),
    ...(useless.length > 0 ? { useless } : {}),
  };
}
