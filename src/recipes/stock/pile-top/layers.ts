// A top of several layers glued face to face: the rows of a lay-up shared out among the layers, each as wide as the top, with
// the joints of one layer away from those of the next.
import { jointsOf, type Row } from './lay-up-problem.js';
import { slabsOf } from './lay-up-plan.js';
import type { TopJob } from './top-job.js';

type Layered = Pick<TopJob, 'layers' | 'rules' | 'widestSlab' | 'slabJointing'>;

/** Width of some rows glued up: once jointed, less the jointing of each slab. */
function gluedWidth(job: Layered, rows: readonly Row[]): number {
  const slabs = slabsOf(rows, job.rules.jointing, job.widestSlab).length;
  return rows.reduce((s, row) => s + row.across - job.rules.jointing, 0) - slabs * job.slabJointing;
}

/** Rows one after another into layers at least so wide; fewer than asked where they do not suffice. */
function filled(job: Layered, rows: readonly Row[], width: number): number[] {
  const ends: number[] = [];
  let from = 0;
  for (let r = 1; r <= rows.length && ends.length < job.layers; r++)
    if (gluedWidth(job, rows.slice(from, r)) >= width) {
      ends.push(r);
      from = r;
    }
  return ends;
}

/** Where each layer ends, as an index behind its last row: the least wide layer is as wide as it can be without another order. */
function layerEnds(job: Layered, rows: readonly Row[]): number[] {
  if (job.layers === 1) return [rows.length];
  let [low, high] = [0, Math.max(0, gluedWidth(job, rows)) / job.layers];
  for (let i = 0; i < 24; i++) {
    const middle = (low + high) / 2;
    if (filled(job, rows, middle).length === job.layers) low = middle;
    else high = middle;
  }
  const ends = filled(job, rows, low);
  while (ends.length < job.layers) ends.push(rows.length);
  ends[job.layers - 1] = rows.length;
  return ends;
}

/** Rows of each layer. */
const parted = <T>(rows: readonly T[], ends: readonly number[]): (readonly T[])[] =>
  ends.map((end, i) => rows.slice(ends[i - 1] ?? 0, end));

/** Width of the glued top times its layers: as many times its least wide layer. With one layer, its width. */
export function topWidth(job: Layered, rows: readonly Row[], ends = layerEnds(job, rows)): number {
  return job.layers * Math.max(0, Math.min(...parted(rows, ends).map((layer) => gluedWidth(job, layer))));
}

/** Rows as they are laid: where layers end, the slabs of all layers, none of which reaches into two, and the width. */
export interface LaidOut {
  readonly rows: readonly Row[];
  readonly layerEnds: readonly number[];
  readonly slabs: readonly (readonly number[])[];
  readonly width: number;
}

/** Rows shared out among the layers, whose joints are brought apart by turning or mirroring whole layers. */
export function laidOut(job: Layered, order: readonly Row[]): LaidOut {
  const ends = layerEnds(job, order);
  const rows = layersApart(parted(order, ends), job.rules.jointing);
  const slabs = parted(rows, ends).flatMap((layer, i) =>
    slabsOf(layer, job.rules.jointing, job.widestSlab).map((slab) => slab.map((r) => r + (ends[i - 1] ?? 0))),
  );
  return { rows, layerEnds: ends, slabs, width: topWidth(job, rows, ends) };
}

/** Least distance along the top between joints of neighbouring layers whose rows lie over each other. */
function layerStagger(a: readonly Row[], b: readonly Row[], jointing: number): number {
  let least = Infinity;
  const placed = (rows: readonly Row[]): { row: Row; from: number; to: number }[] => {
    let at = 0;
    return rows.map((row) => ({ row, from: at, to: (at += row.across - jointing) }));
  };
  const upper = placed(b);
  for (const { row, from, to } of placed(a))
    for (const other of upper)
      if (other.from < to && from < other.to)
        for (const x of row.joints)
          for (const y of other.row.joints) least = Math.min(least, Math.abs(x - y));
  return least;
}

function mirrored(row: Row): Row {
  const pieces = [...row.pieces].reverse();
  return { ...row, pieces, joints: jointsOf(pieces) };
}

/** Each layer turned or mirrored so that its joints lie as far as can be from those of the layer before. */
function layersApart(layers: readonly (readonly Row[])[], jointing: number): readonly Row[] {
  const out: (readonly Row[])[] = [];
  for (const layer of layers) {
    const before = out.at(-1);
    const back = [...layer].reverse();
    const ways = before ? [layer, back, layer.map(mirrored), back.map(mirrored)] : [layer];
    const apart = (way: readonly Row[]): number => (before ? layerStagger(before, way, jointing) : 0);
    out.push(ways.reduce((best, way) => (apart(way) > apart(best) ? way : best)));
  }
  return out.flat();
}

/** Least distance between joints of neighbouring layers; undefined where none lie over each other. */
export function worstLayerStagger(
  { rows, layerEnds: ends }: Pick<LaidOut, 'rows' | 'layerEnds'>,
  jointing: number,
): number | undefined {
  const layers = parted(rows, ends);
  let least = Infinity;
  for (let i = 1; i < layers.length; i++)
    least = Math.min(
      least,
      layerStagger(layers[i - 1] as readonly Row[], layers[i] as readonly Row[], jointing),
    );
  return Number.isFinite(least) ? least : undefined;
}
