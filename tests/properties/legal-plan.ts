// Checks a cutting plan with nothing of the solver's: every part cut, no board longer than it is, none used too often.
import { expect } from 'vitest';

export interface Job {
  readonly parts: readonly { readonly length: number; readonly count: number }[];
  readonly stock: readonly { readonly length: number; readonly count?: number | undefined }[];
  readonly kerf: number;
  readonly trim: number;
}
interface PlanRow {
  readonly stockLength: { in(unit: string): number };
  readonly pieces: readonly {
    readonly length: { in(unit: string): number };
    readonly from: { in(unit: string): number };
  }[];
  readonly offcut: { in(unit: string): number };
}

/** Lengths in mm. Returns the boards used of each stock length. */
export function legal(job: Job, plan: readonly PlanRow[], missing = 0): Map<number, number> {
  const left = new Map<number, number>();
  for (const p of job.parts) left.set(p.length, (left.get(p.length) ?? 0) + p.count);
  const used = new Map<number, number>();
  for (const row of plan) {
    const L = Number(row.stockLength.in('mm').toFixed(6));
    expect(job.stock.map((s) => s.length)).toContain(L);
    used.set(L, (used.get(L) ?? 0) + 1);
    let at = job.trim;
    for (const p of row.pieces) {
      const l = Number(p.length.in('mm').toFixed(6));
      // Each piece begins past the kerf of the one before and the trim of the end.
      expect(p.from.in('mm')).toBeGreaterThanOrEqual(at - 1e-6);
      at = p.from.in('mm') + l + job.kerf;
      left.set(l, (left.get(l) ?? -1e9) - 1);
    }
    // The last piece ends before the far trim; its own kerf may run out of the board.
    const end = at - job.kerf;
    expect(end).toBeLessThanOrEqual(L - job.trim + 1e-6);
    expect(row.offcut.in('mm')).toBeCloseTo(Math.max(0, L - job.trim - at), 5);
  }
  for (const s of job.stock)
    if (s.count !== undefined)
      expect(used.get(s.length) ?? 0).toBeLessThanOrEqual(
        job.stock.filter((x) => x.length === s.length).reduce((n, x) => n + (x.count ?? 0), 0),
      );
  const short = [...left.values()].reduce((a, b) => a + b, 0);
  expect(short).toBe(missing);
  for (const n of left.values()) expect(n).toBeGreaterThanOrEqual(0);
  return used;
}

/** Numbers from 0 to 1 that are the same in every run (mulberry32). */
export function seeded(seed: number): () => number {
  return () => {
    seed = (seed + 0x6d2b79f5) | 0;
    let t = Math.imul(seed ^ (seed >>> 15), 1 | seed);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
