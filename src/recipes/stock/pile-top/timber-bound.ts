// The least timber that any top of a width can take. Let x_i be the length that the rows take from stick i, R their number,
// c_i its rough section, and q_i the rough face of its board by that of its sticks, which is above 1 for ends and faults. Then
//   sum of x_i = R L,   sum of x_i (s_i - jointing) >= L (width of the rows),   0 <= x_i <= l_i,
// and timber is at least the sum of c_i x_i q_i: a board that is cut loses its ends and faults whole, and a share of them
// falls on each length taken. Every a and every b >= 0 give the bound
//   a R L + b L width - sum over i of l_i max(0, a + b (s_i - jointing) - c_i q_i),
// by weak duality; the greatest over a and b is looked for, and any pair is a proof. R is at least the number of rows
// that the bound on widths leaves, and more rows are tried up to the most there can be.
import type { Stick } from './lay-up-problem.js';
import { copyKey } from './lay-up-plan.js';
import type { Lay, PileBoard } from './pile-sticks.js';
import { boundAt, ripsIn, rowsBound, usableSticks, type TopJob } from './top-job.js';
import { widthBounds } from './lay-up-bound.js';

interface Line {
  readonly length: number;
  readonly net: number;
  /** Rough volume for each unit of length: mm³ per micrometre. */
  readonly cost: number;
}

/** Rough volume per length of each stick, with its share of what its board loses besides once it is cut: ends, faults, kerfs of ripping. */
function linesOf(job: TopJob, sticks: readonly Stick[]): Line[] {
  const area = (s: Stick): number => s.length * (s.strip[1] - s.strip[0]);
  const clear = new Map<string, number>();
  for (const s of sticks) clear.set(copyKey(s), (clear.get(copyKey(s)) ?? 0) + area(s));
  return sticks.map((s) => {
    const b = job.boards[s.board] as PileBoard;
    const whole = (b.length * b.width) / (clear.get(copyKey(s)) as number);
    const section = ((s.strip[1] - s.strip[0]) / 1000) * (b.thickness / 1000);
    return { length: s.length, net: s.across - job.rules.jointing, cost: (section * whole) / 1000 };
  });
}

/** The dual value for a price of length and one of width. */
function dual(
  lines: readonly Line[],
  rowLength: number,
  rows: number,
  width: number,
  a: number,
  b: number,
): number {
  let value = rowLength * (rows * a + b * width);
  for (const l of lines) value -= l.length * Math.max(0, a + b * l.net - l.cost);
  return value;
}

/** The greatest of a concave function between two ends, to a fine step: any value it takes is a bound. */
function greatest(low: number, high: number, of: (x: number) => number): number {
  let [from, to] = [low, high];
  let best = -Infinity;
  for (let i = 0; i < 60; i++) {
    const [p, q] = [from + (to - from) / 3, to - (to - from) / 3];
    const [vp, vq] = [of(p), of(q)];
    best = Math.max(best, vp, vq);
    if (vp < vq) from = p;
    else to = q;
  }
  return best;
}

/** The least rough volume that a top of the asked width takes at this thickness, in mm³; undefined where none is possible or it is not known. */
export function timberBound(job: TopJob, thickness: number, lay: Lay): number | undefined {
  if (ripsIn(job, lay) || job.tonesApart || boundAt(job, thickness, lay) < job.wanted) return undefined;
  const sticks = usableSticks(job, job.boards, thickness, lay);
  const lines = linesOf(job, sticks);
  const slabs = Math.ceil(job.wanted / job.widestSlab);
  const width = job.wanted + slabs * job.slabJointing;
  const widths = widthBounds(sticks, job.rules);
  let least = 0;
  for (let sum = 0; least < widths.length && sum < width; least++)
    sum += (widths[least] as number) - job.rules.jointing;
  const most = rowsBound(job, lay, sticks).rows;
  const top = Math.max(...lines.map((l) => l.cost), 0) * 2;
  const widest = Math.max(...lines.map((l) => l.net), 1);
  const narrowest = Math.max(1, Math.min(...lines.map((l) => l.net)));
  let bound = Infinity;
  for (let rows = least; rows <= most; rows++) {
    // The price of length may be negative: it then pays to use wider sticks.
    const value = greatest(0, top / narrowest, (b) =>
      greatest(-b * widest, top, (a) => dual(lines, job.rules.rowLength, rows, width, a, b)),
    );
    if (value >= bound) break;
    bound = value;
  }
  return Number.isFinite(bound) ? Math.max(0, bound) : undefined;
}
