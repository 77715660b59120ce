// Every plan is checked before it is given out: pieces lie in clear wood, apart by the kerf, thick enough; rows are whole,
// staggered and no wider than their pieces. It looks at the pieces as they will be cut, not at how they were found.
import type { CutPiece } from './lay-up-plan.js';
import { clearStretches, type PileBoard } from './pile-sticks.js';
import type { Row } from './lay-up-problem.js';
import type { TopAt, TopJob } from './top-job.js';

function boardFaults(job: TopJob, top: TopAt, p: CutPiece): string | undefined {
  const b = job.boards[p.board] as PileBoard;
  const needed = top.thickness + 2 * job.shop.plane;
  const to = p.from + p.length;
  if (p.copy >= b.count) return 'a copy that is not there';
  if (!clearStretches(b).some(([from, end]) => from <= p.from && to <= end)) return 'not in clear wood';
  if (p.strip[0] < 0 || p.strip[1] > b.width) return 'outside the board';
  const edge = b.edgeFaults.find(
    (f) => f.from < to && f.to > p.from && (f.far ? p.strip[1] > b.width - f.depth : p.strip[0] < f.depth),
  );
  if (edge) return 'holds a fault of an edge';
  const high = top.lay === 'flat' ? b.thickness - b.allowance : p.strip[1] - p.strip[0];
  return high < needed ? 'too thin' : undefined;
}

/** Two pieces of one board overlap along it, their kerf counted, and across it. */
function overlap(a: CutPiece, b: CutPiece, kerf: number): boolean {
  const along = a.from < b.from + b.length + kerf && b.from < a.from + a.length + kerf;
  const across = a.strip[0] < b.strip[1] + kerf && b.strip[0] < a.strip[1] + kerf;
  return along && across;
}

function rowFault(job: TopJob, top: TopAt, r: number, pieces: readonly CutPiece[]): string | undefined {
  const { rules } = job;
  const row = top.rows[r] as Row;
  // Rows of two layers are no neighbours.
  const before = top.layerEnds.includes(r) ? undefined : top.rows[r - 1];
  const length = pieces.reduce((s, p) => s + p.length, 0);
  if (Math.abs(length - rules.rowLength) > 1) return `${length / 1000} mm long`;
  if (pieces.length > rules.maxJoints + 1) return 'too many joints';
  if (pieces.some((p) => p.length < rules.leastInner)) return 'a piece is too short';
  if (pieces.length > 1 && [pieces[0], pieces.at(-1)].some((p) => (p as CutPiece).length < rules.leastEnd))
    return 'an end piece is too short';
  for (const p of pieces) {
    const b = job.boards[p.board] as PileBoard;
    const wide = top.lay === 'flat' ? p.strip[1] - p.strip[0] : b.thickness - b.allowance;
    if (wide < row.across) return `wider than ${p.id}`;
  }
  if (job.tonesApart && new Set(pieces.map((p) => (job.boards[p.board] as PileBoard).tone)).size > 1)
    return 'of two tones';
  if (before?.joints.some((x) => row.joints.some((y) => Math.abs(x - y) < rules.stagger)))
    return 'joints too near those before';
  return undefined;
}

/** What is wrong with a plan, in words; empty where nothing is. */
export function planFaults(job: TopJob, top: TopAt, pieces: readonly (readonly CutPiece[])[]): string[] {
  const faults: string[] = [];
  const add = (name: string, fault: string | undefined): void => {
    if (fault !== undefined) faults.push(`${name}: ${fault}`);
  };
  const boards = new Map<string, CutPiece[]>();
  for (const p of pieces.flat()) {
    add(p.id, boardFaults(job, top, p));
    const own = boards.get(`${p.board}:${p.copy}`) ?? [];
    for (const q of own) if (overlap(p, q, job.shop.kerf)) faults.push(`${p.id} overlaps ${q.id}`);
    boards.set(`${p.board}:${p.copy}`, [...own, p]);
  }
  pieces.forEach((row, r) => add(`row ${r + 1}`, rowFault(job, top, r, row)));
  const net = (r: number): number => (top.rows[r] as Row).across - job.rules.jointing;
  top.slabs.forEach((slab, i) => {
    const width = slab.reduce((s, r) => s + net(r), 0);
    if (width > job.widestSlab) faults.push(`slab ${i + 1}: ${width / 1000} mm wide`);
  });
  const ends = [0, ...top.layerEnds];
  const widths = top.layerEnds.map((end, i) => {
    const inLayer = (r: number): boolean => r >= (ends[i] as number) && r < end;
    const rows = top.rows.reduce((s, _, r) => s + (inLayer(r) ? net(r) : 0), 0);
    return rows - top.slabs.filter((slab) => inLayer(slab[0] as number)).length * job.slabJointing;
  });
  if (Math.abs(job.layers * Math.max(0, Math.min(...widths)) - top.width) > 1)
    faults.push('the width is not that of its rows');
  return faults;
}
