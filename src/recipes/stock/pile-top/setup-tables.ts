// The order of work: stops and fences each set once, and what is glued to what. Metres.
import type { CutPiece } from './lay-up-plan.js';
import type { PileBoard } from './pile-sticks.js';
import type { Row } from './lay-up-problem.js';
import { ripsIn, type TopAt, type TopJob } from './top-job.js';

const metres = (um: number): number => um / 1e6;

interface Setup {
  machine: string;
  setting: number;
  what: string;
}

/** Things with one setting together, greatest setting first. */
function grouped<T>(items: readonly T[], setting: (item: T) => number, name: (item: T) => string): Setup[] {
  const groups = new Map<number, Set<string>>();
  for (const item of items) {
    const at = Math.round(setting(item));
    groups.set(at, (groups.get(at) ?? new Set()).add(name(item)));
  }
  return [...groups]
    .sort((a, b) => b[0] - a[0])
    .map(([at, names]) => ({ machine: '', setting: metres(at), what: [...names].join(', ') }));
}

/**
 * Fences and stops in an order that sets each once: first the rip fence, widest strips first; then the stop of the crosscut,
 * longest pieces first; then the fence that brings each row to its width.
 */
export function setupTable(job: TopJob, top: TopAt, pieces: readonly (readonly CutPiece[])[]) {
  const all = pieces.flat();
  const boardOf = (p: CutPiece): string => {
    const b = job.boards[p.board] as PileBoard;
    return b.count > 1 ? `${b.name}.${p.copy + 1}` : b.name;
  };
  const ripped = top.lay === 'on edge' || ripsIn(job, top.lay);
  const steps = [
    ...(ripped
      ? grouped(all, (p) => p.strip[1] - p.strip[0], boardOf).map((s) => ({ ...s, machine: 'rip to' }))
      : []),
    ...grouped(
      all,
      (p) => p.length,
      (p) => p.id,
    ).map((s) => ({ ...s, machine: 'crosscut to' })),
    ...grouped(
      top.rows.map((row, r) => ({ row, r })),
      ({ row }) => row.across - job.rules.jointing,
      ({ r }) => `row ${r + 1}`,
    ).map((s) => ({ ...s, machine: 'joint rows to' })),
  ];
  return steps.map((s, i) => ({ step: i + 1, ...s }));
}

/** Pads between clamp and wood, both sides together. */
const pads = 40_000;

/** Clamps along a joint, each spreading at 45 degrees through the outer row (common practice). */
const clampsFor = (length: number, outer: number): number => Math.max(2, Math.ceil(length / (2 * outer)) + 1);

/** Each slab, then the slabs to one another: what clamps must open to, and how many the spread of 45 degrees takes. */
export function glueTable(job: TopJob, top: TopAt) {
  const net = (r: number): number => (top.rows[r] as Row).across - job.rules.jointing;
  const { rowLength } = job.rules;
  const stages = top.slabs
    .filter((slab) => slab.length > 1)
    .map((slab) => ({
      what: `rows ${(slab[0] as number) + 1} to ${(slab.at(-1) as number) + 1}`,
      opening: metres(slab.reduce((s, r) => s + net(r), 0) + pads),
      clamps: clampsFor(rowLength, Math.min(net(slab[0] as number), net(slab.at(-1) as number))),
    }));
  const starts = [0, ...top.layerEnds];
  top.layerEnds.forEach((end, i) => {
    const own = top.slabs.flatMap((slab, k) =>
      (slab[0] as number) >= (starts[i] as number) && (slab[0] as number) < end ? [{ slab, k }] : [],
    );
    if (own.length < 2) return;
    const widths = own.map(({ slab }) => slab.reduce((s, r) => s + net(r), 0) - job.slabJointing);
    stages.push({
      what: `slabs ${(own[0]?.k ?? 0) + 1} to ${(own.at(-1)?.k ?? 0) + 1}`,
      opening: metres(widths.reduce((a, b) => a + b, 0) + pads),
      clamps: clampsFor(rowLength, Math.min(widths[0] as number, widths.at(-1) as number)),
    });
  });
  return stages.map((s, i) => ({ stage: i + 1, ...s }));
}
