// The answer's tables, in metres: rows, boards and their cuts, slabs, what is left, and boards that give nothing.
import type { Row, Stick } from './lay-up-problem.js';
import { leftOvers, type CutPiece } from './lay-up-plan.js';
import { clearStretches, type PileBoard } from './pile-sticks.js';
import { longestStretch, ripsIn, type TopAt, type TopJob } from './top-job.js';

const metres = (um: number): number => um / 1e6;
const mm = (um: number): string => `${Number((um / 1000).toFixed(1))}`;

const boardName = (board: PileBoard, copy: number): string =>
  board.count > 1 ? `${board.name}.${copy + 1}` : board.name;

/** Each row with its pieces from left to right. */
export function rowTable(job: TopJob, top: TopAt, pieces: readonly (readonly CutPiece[])[]) {
  return top.rows.map((row, r) => ({
    row: r + 1,
    width: metres(row.across - job.rules.jointing),
    pieces: (pieces[r] as readonly CutPiece[]).map((p) => `${p.id} ${mm(p.length)}`).join(' | '),
    joints: row.joints.map(mm).join(', ') || 'none',
    slab: top.slabs.findIndex((slab) => slab.includes(r)) + 1,
    layer: top.layerEnds.findIndex((end) => r < end) + 1,
  }));
}

/** Pieces with their places in the top and on their boards. */
export function pieceTable(job: TopJob, top: TopAt, pieces: readonly (readonly CutPiece[])[]) {
  return top.rows.flatMap((row, r) => {
    const starts = [0, ...row.joints];
    return (pieces[r] as readonly CutPiece[]).map((p, k) => ({
      row: r + 1,
      piece: p.id,
      board: (job.boards[p.board] as PileBoard).name,
      copy: p.copy + 1,
      boardFrom: metres(p.from),
      stripFrom: metres(p.strip[0]),
      stripTo: metres(p.strip[1]),
      start: metres(starts[k] as number),
      length: metres(p.length),
      width: metres(row.across - job.rules.jointing),
    }));
  });
}

/** Pieces by the board they are cut from, copies apart. */
export function byBoard(pieces: readonly (readonly CutPiece[])[]): CutPiece[][] {
  const boards = new Map<string, CutPiece[]>();
  for (const p of pieces.flat()) {
    const key = `${p.board}:${p.copy}`;
    boards.set(key, [...(boards.get(key) ?? []), p]);
  }
  return [...boards.values()];
}

/** How a board is ripped: strips on edge, or of a ripped flat board where each lies. */
function ripWords(job: TopJob, top: TopAt, cut: readonly CutPiece[]): string {
  const strips = [...new Map(cut.map((p) => [`${p.strip[0]}`, p.strip])).values()].sort(
    (a, b) => a[0] - b[0],
  );
  if (top.lay === 'on edge')
    return `${strips.length} strip${strips.length === 1 ? '' : 's'} of ${mm(top.thickness + 2 * job.shop.plane)} mm`;
  if (!ripsIn(job, top.lay)) return 'not ripped';
  return `strips ${strips.map(([from, to]) => `${mm(from)} to ${mm(to)}`).join(', ')} mm`;
}

/** Each board that is cut: where to dock, how to rip, where to crosscut. Boards in the order of their widths, so that a fence is set once. */
export function boardTable(job: TopJob, top: TopAt, pieces: readonly (readonly CutPiece[])[]) {
  return byBoard(pieces)
    .sort(
      (a, b) => widthRank(top, b) - widthRank(top, a) || (a[0] as CutPiece).board - (b[0] as CutPiece).board,
    )
    .map((cut) => {
      const { board, copy } = cut[0] as CutPiece;
      const of = job.boards[board] as PileBoard;
      return {
        board: boardName(of, copy),
        dock: clearStretches(of)
          .map(([from, to]) => `${mm(from)} to ${mm(to)}`)
          .join('; '),
        rip: ripWords(job, top, cut),
        cuts: [...cut]
          .sort((a, b) => a.from - b.from || a.strip[0] - b.strip[0])
          .map((p) => `${p.id} ${mm(p.from)} to ${mm(p.from + p.length)} (row ${p.row + 1})`)
          .join('; '),
      };
    });
}

const widthRank = (top: TopAt, cut: readonly CutPiece[]): number =>
  Math.max(...cut.map((p) => (top.sticks[p.stick] as Stick).across));

/** Slabs with their rows and width once jointed. */
export function slabTable(job: TopJob, top: TopAt) {
  return top.slabs.map((slab, i) => ({
    slab: i + 1,
    rows:
      slab.length === 1
        ? `${(slab[0] as number) + 1}`
        : `${(slab[0] as number) + 1} to ${(slab.at(-1) as number) + 1}`,
    width: metres(
      slab.reduce((s, r) => s + (top.rows[r] as Row).across - job.rules.jointing, 0) - job.slabJointing,
    ),
  }));
}

/** What is left for other parts, alike lengths together. */
export function leftTable(job: TopJob, top: TopAt) {
  const groups = new Map<
    string,
    { board: string; length: number; width: number; thickness: number; count: number; whole: boolean }
  >();
  for (const l of leftOvers(top.rows, top.sticks, job.boards, job.shop.kerf, job.leastOffcut)) {
    const of = job.boards[l.board] as PileBoard;
    const key = `${l.board}:${l.length}:${l.width}:${String(l.whole)}`;
    const group = groups.get(key);
    if (group) group.count++;
    else
      groups.set(key, {
        board: of.name,
        length: metres(l.length),
        width: metres(l.width),
        thickness: metres(of.thickness),
        count: 1,
        whole: l.whole,
      });
  }
  return [...groups.values()].sort((a, b) => b.length - a.length);
}

/** Boards that give nothing, each with the reason. */
export function uselessTable(job: TopJob, top: TopAt) {
  const needed = top.thickness + 2 * job.shop.plane;
  return job.boards.flatMap((b) => {
    const longest = longestStretch(b);
    const across = top.lay === 'flat' ? b.width : b.thickness - b.allowance;
    const thick = top.lay === 'flat' ? b.thickness - b.allowance : b.width;
    const reason =
      thick < needed
        ? `${mm(Math.max(0, thick))} mm once flat, ${mm(needed)} mm needed`
        : longest < job.rules.leastInner
          ? `longest clear length ${mm(longest)} mm, ${mm(job.rules.leastInner)} mm needed`
          : across < job.rules.leastAcross
            ? `${mm(Math.max(0, across - job.rules.jointing))} mm across once jointed, ${mm(job.rules.leastAcross - job.rules.jointing)} mm needed`
            : undefined;
    return reason === undefined ? [] : [{ board: b.name, count: b.count, reason }];
  });
}
