// The job from what was given, and the answer from the best top found.
import type { Parsed } from '../../../engine/field.js';
import type { Trace } from '../../../engine/trace.js';
import { InputError } from '../../../units/input-error.js';
import { thicknessLeft, unjointedShare } from './joint-effect.js';
import { cutPieces, leastStagger } from './lay-up-plan.js';
import { worstLayerStagger } from './layers.js';
import { boardsOf, um } from './pile-survey.js';
import type { Lay } from './pile-sticks.js';
import { planFaults } from './plan-check.js';
import { glueTable, setupTable } from './setup-tables.js';
import { timberBound } from './timber-bound.js';
import type { topInputs } from './top-fields.js';
import { boardTable, leftTable, pieceTable, rowTable, slabTable, uselessTable } from './top-tables.js';
import { missingWords, sentenceOf, verdictOf } from './top-words.js';
import { usableSticks, type TopAt, type TopJob } from './top-job.js';
import type { TopSearch } from './top-search.js';
import type { WhatIf } from './what-ifs.js';

export type TopGiven = Parsed<typeof topInputs>;

/** Pads between clamp and slab, both sides together, metres. */
const clampPads = 0.04;

/** Rounds of a search by default: more for more boards, so that the time grows with the pile. */
const usualRounds = (boards: number): number => Math.min(60_000, 4000 + 250 * boards);

/** What is wrong with rules that exclude every lay-up. @throws InputError */
function checkRules(given: TopGiven, rowLength: number, leastEnd: number): void {
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
}

/** The job in whole micrometres. @throws InputError where the rules exclude every lay-up */
export function jobOf(given: TopGiven): TopJob {
  const [rowLength, leastPiece] = [um(given.topLength + given.spare), um(given.leastPiece)];
  const leastEnd = leastPiece + Math.ceil(um(given.spare) / 2);
  checkRules(given, rowLength, leastEnd);
  const lays: readonly Lay[] = given.lay === 'either' ? ['flat', 'on edge'] : [given.lay];
  const clamped = given.clampReach === undefined ? Infinity : given.clampReach - clampPads;
  if (clamped <= given.leastRow)
    throw new InputError({
      field: 'clampReach',
      message: `got ${Math.round((given.clampReach ?? 0) * 1000)} mm, takes more than a row and two pads of 20 mm`,
    });
  const widestSlab = um(Math.min(given.widestSlab, clamped));
  const jointing = um(given.jointing);
  const boards = boardsOf(given.boards, {
    leastPiece: given.leastPiece,
    backHidden: given.showFaces === 'one' && given.lay === 'flat',
  });
  return {
    boards,
    lays,
    shop: { kerf: um(given.kerf), plane: um(given.plane), leastInner: leastPiece },
    rules: {
      rowLength,
      leastInner: leastPiece,
      leastEnd,
      kerf: um(given.kerf),
      stagger: given.maxJoints === 0 ? 0 : um(given.stagger),
      maxJoints: given.maxJoints,
      jointing,
      leastAcross: Math.max(um(given.leastRow), 1) + jointing,
      mostAcross: widestSlab + jointing,
    },
    slabJointing: um(given.slabJointing),
    widestSlab,
    layers: given.layers,
    wanted: um(given.width) * given.layers,
    thickness: given.thickness === undefined ? undefined : Math.ceil(um(given.thickness) / given.layers),
    rip: given.rip === 'yes',
    tonesApart: given.tones === 'apart',
    rounds: given.rounds ?? usualRounds(boards.reduce((s, b) => s + b.count, 0)),
    leastOffcut: um(given.leastOffcut ?? given.leastPiece),
  };
}

const mm = (m: number): string => `${Math.round(m * 1000)} mm`;

/** What was found besides the best top itself. */
export interface TopFindings extends TopSearch {
  readonly curve: readonly TopAt[];
  readonly staggers: readonly { readonly stagger: number; readonly top: TopAt }[];
  readonly whatIfs: readonly WhatIf[];
}

/** Share of the clear wood of the pile at this thickness that is not in the top. */
function wasteOf(job: TopJob, top: TopAt): number {
  const there = usableSticks(job, job.boards, top.thickness, top.lay).reduce(
    (s, x) => s + x.length * x.across,
    0,
  );
  const laid = top.width * job.rules.rowLength;
  return there > 0 ? Math.min(1, Math.max(0, 1 - laid / there)) : 0;
}

function curveTables(job: TopJob, found: TopFindings) {
  const points = [...found.tried, ...found.curve];
  const best = new Map<string, TopAt>();
  for (const t of points) {
    const key = `${t.lay}:${t.thickness}`;
    const there = best.get(key);
    if (!there || t.width > there.width) best.set(key, t);
  }
  return {
    curve: [...best.values()]
      .sort((a, b) => b.thickness - a.thickness || a.lay.localeCompare(b.lay))
      .map((t) => ({
        thickness: (t.thickness * job.layers) / 1e6,
        lay: t.lay,
        width: t.width / job.layers / 1e6,
        bound: Math.max(t.bound, t.width) / job.layers / 1e6,
      })),
    ...(found.staggers.length > 0
      ? {
          staggerCurve: found.staggers.map(({ stagger, top }) => ({
            stagger: stagger / 1e6,
            width: top.width / job.layers / 1e6,
            waste: wasteOf(job, top),
          })),
        }
      : {}),
    ...(found.whatIfs.length > 0
      ? {
          whatIfs: found.whatIfs.map((w) => ({
            change: w.change,
            width: w.top.width / job.layers / 1e6,
            timber: w.top.timber / 1e9,
            frees: w.frees,
          })),
        }
      : {}),
  };
}

/** What is left out where it does not apply. */
function optionalParts(job: TopJob, found: TopFindings) {
  const { best } = found;
  const stagger = leastStagger(best.rows, best.layerEnds);
  const between = worstLayerStagger(best, job.rules.jointing);
  const useless = uselessTable(job, best);
  const enough = best.width >= job.wanted;
  const bound = enough ? timberBound(job, best.thickness, best.lay) : undefined;
  const missing = missingWords(job, best, found.whatIfs);
  return {
    ...(job.thickness === undefined && found.thickestPossible > 0
      ? { thicknessBound: (Math.max(found.thickestPossible, enough ? best.thickness : 0) * job.layers) / 1e6 }
      : {}),
    ...(bound === undefined ? {} : { timberBound: Math.min(bound, best.timber) / 1e9 }),
    ...(enough && best.width > job.wanted ? { surplus: (best.width - job.wanted) / job.layers / 1e6 } : {}),
    ...(missing === undefined ? {} : { missing }),
    ...(stagger === undefined ? {} : { worstStagger: stagger / 1e6 }),
    ...(between === undefined ? {} : { layerStagger: between / 1e6 }),
    ...(useless.length > 0 ? { useless } : {}),
  };
}

/** All answers of the recipe from the best top found. @throws Error where the plan breaks a rule, which is a fault of the search */
export function answerOf(given: TopGiven, job: TopJob, found: TopFindings, trace: Trace) {
  const { best } = found;
  const pieces = cutPieces(best.rows, best.sticks, job.boards, job.shop.kerf);
  const faults = planFaults(job, best, pieces);
  if (faults.length > 0)
    throw new Error(`the plan found breaks its own rules: ${faults.slice(0, 5).join('; ')}`);
  const share = unjointedShare(best.rows, job.rules.jointing);
  trace.note(
    `r rows at least w wide need r row lengths of ${mm(given.topLength + given.spare)} from clear lengths at least w across, in at most r × ${given.maxJoints + 1} pieces; what the pile cannot give so, no lay-up can. At ${mm((best.thickness * job.layers) / 1e6)}: at most ${mm(best.bound / job.layers / 1e6)} wide, found ${mm(best.width / job.layers / 1e6)}.`,
  );
  return {
    verdict: verdictOf(job, best),
    sentence: sentenceOf(given, job, best),
    thickness: (best.thickness * job.layers) / 1e6,
    foundWidth: best.width / job.layers / 1e6,
    widthBound: best.bound / job.layers / 1e6,
    proof: best.proof,
    complete: best.finished,
    lay: best.lay,
    rowCount: best.rows.length,
    boardsCut: new Set(pieces.flat().map((p) => `${p.board}:${p.copy}`)).size,
    timber: best.timber / 1e9,
    bendingShare: share,
    thicknessForBending: trace.evaluate(thicknessLeft, { t: (best.thickness * job.layers) / 1e6, s: share }),
    rows: rowTable(job, best, pieces),
    cuts: boardTable(job, best, pieces),
    slabs: slabTable(job, best),
    glueUps: glueTable(job, best),
    setups: setupTable(job, best, pieces),
    pieces: pieceTable(job, best, pieces),
    leftOver: leftTable(job, best),
    ...curveTables(job, found),
    ...optionalParts(job, found),
  };
}
