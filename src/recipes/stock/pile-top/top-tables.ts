// The answer's tables, in metres: rows, boards and their cuts, slabs, what is left, and boards that give nothing.
import { acrossOf, jointsOf, type Row, type Stick } from './lay-up-problem.js';
import { leftOvers, type CutPiece } from './lay-up-plan.js';
import { clearStretches, type PileBoard } from './pile-sticks.js';
import type { TopAt, TopJob } from './top-search.js';

const metres = (um: number): number => um / 1e6;
const mm = (um: number): string => `${Number((um / 1000).toFixed(1))}`;

const boardName = (board: PileBoard, copy: number): string =>
  board.count > 1 ? `${board.name}.${copy + 1}` : board.name;

/** Each row with its pieces from left to right. */
export function rowTable(job: TopJob, top: TopAt, pieces: readonly (readonly CutPiece[])[]) {
  return top.found.rows.map((row, r) => ({
    row: r + 1,
    width: metres(acrossOf(row, top.sticks) - job.jointing),
    pieces: (pieces[r] as readonly CutPiece[]).map((p) => `${p.id} ${mm(p.length)}`).join(' | '),
    joints: jointsOf(row).map(mm).join(', ') || 'none',
    slab: top.slabs.findIndex((slab) => slab.includes(r)) + 1,
  }));
}

/** Pieces with their places in the top and on their boards. */
export function pieceTable(job: TopJob, top: TopAt, pieces: readonly (readonly CutPiece[])[]) {
  return top.found.rows.flatMap((row, r) => {
    const starts = [0, ...jointsOf(row)];
    return (pieces[r] as readonly CutPiece[]).map((p, k) => ({
      row: r + 1,
      piece: p.id,
      board: (job.boards[p.board] as PileBoard).name,
      copy: p.copy + 1,
      boardFrom: metres(p.from),
      stripFrom: metres((top.sticks[p.stick] as Stick).strip[0]),
      stripTo: metres((top.sticks[p.stick] as Stick).strip[1]),
      start: metres(starts[k] as number),
      length: metres(p.length),
      width: metres(acrossOf(row, top.sticks) - job.jointing),
    }));
  });
}

/** Each board that is cut: where to dock, how to rip, where to crosscut. Boards in the order of their widths, so that a fence is set once. */
export function boardTable(job: TopJob, top: TopAt, pieces: readonly (readonly CutPiece[])[]) {
  const byBoard = new Map<string, CutPiece[]>();
  for (const p of pieces.flat()) {
    const key = `${p.board}:${p.copy}`;
    byBoard.set(key, [...(byBoard.get(key) ?? []), p]);
  }
  return [...byBoard.values()]
    .sort(
      (a, b) => widthRank(top, b) - widthRank(top, a) || (a[0] as CutPiece).board - (b[0] as CutPiece).board,
    )
    .map((cut) => {
      const { board, copy } = cut[0] as CutPiece;
      const of = job.boards[board] as PileBoard;
      const strips = new Set(cut.map((p) => (top.sticks[p.stick] as Stick).strip[0]));
      return {
        board: boardName(of, copy),
        dock: clearStretches(of)
          .map(([from, to]) => `${mm(from)} to ${mm(to)}`)
          .join('; '),
        rip:
          top.lay === 'flat'
            ? 'not ripped'
            : `${strips.size} strip${strips.size === 1 ? '' : 's'} of ${mm(top.thickness + 2 * job.shop.plane)} mm`,
        cuts: [...cut]
          .sort((a, b) => a.from - b.from || a.id.localeCompare(b.id))
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
      slab.reduce((s, r) => s + acrossOf(top.found.rows[r] as Row, top.sticks) - job.jointing, 0) -
        job.slabJointing,
    ),
  }));
}

/** What is left for other parts, alike lengths together. */
export function leftTable(job: TopJob, top: TopAt, least: number) {
  const groups = new Map<
    string,
    { board: string; length: number; width: number; thickness: number; count: number; whole: boolean }
  >();
  for (const l of leftOvers(top.found.rows, top.sticks, job.boards, job.shop.kerf, least)) {
    const of = job.boards[l.board] as PileBoard;
    const key = `${l.board}:${l.length}:${String(l.whole)}`;
    const group = groups.get(key);
    if (group) group.count++;
    else
      groups.set(key, {
        board: of.name,
        length: metres(l.length),
        width: metres(of.width),
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
    const longest = Math.max(0, ...clearStretches(b).map(([from, to]) => to - from));
    const across = (top.lay === 'flat' ? b.width : b.thickness - b.allowance) - job.jointing;
    const thick = top.lay === 'flat' ? b.thickness - b.allowance : b.width;
    const reason =
      thick < needed
        ? `${mm(Math.max(0, thick))} mm once flat, ${mm(needed)} mm needed`
        : longest < job.rules.leastInner
          ? `longest clear length ${mm(longest)} mm, ${mm(job.rules.leastInner)} mm needed`
          : across < job.leastRow
            ? `${mm(Math.max(0, across))} mm across once jointed, ${mm(job.leastRow)} mm needed`
            : across > job.widestSlab
              ? `${mm(across)} mm wide, wider than a slab may be (${mm(job.widestSlab)} mm)`
              : undefined;
    return reason === undefined ? [] : [{ board: b.name, count: b.count, reason }];
  });
}

/** Rough volume of all boards that are cut, less the offcuts that stay, m³. */
export function timberUsed(job: TopJob, top: TopAt, least: number): number {
  const touched = new Set(
    top.found.rows
      .flat()
      .map((p) => `${(top.sticks[p.stick] as Stick).board}:${(top.sticks[p.stick] as Stick).copy}`),
  );
  const volume = (b: PileBoard, length: number): number =>
    metres(length) * metres(b.width) * metres(b.thickness);
  const rough = [...touched].reduce((s, key) => {
    const b = job.boards[Number(key.split(':')[0])] as PileBoard;
    return s + volume(b, b.length);
  }, 0);
  // A strip on edge is a share of its board's width.
  const kept = leftOvers(top.found.rows, top.sticks, job.boards, job.shop.kerf, least).filter(
    (l) => !l.whole,
  );
  const strips = top.lay === 'flat' ? 1 : top.thickness + 2 * job.shop.plane;
  return Math.max(
    0,
    rough -
      kept.reduce((s, l) => {
        const b = job.boards[l.board] as PileBoard;
        return s + (top.lay === 'flat' ? volume(b, l.length) : (volume(b, l.length) * strips) / b.width);
      }, 0),
  );
}
