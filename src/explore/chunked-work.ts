import { nextTurn } from '../engine/next-turn.js';
import type { Progress } from '../engine/trace.js';

/** How long work over many points is watched and stopped. */
export interface ProgressOptions {
  readonly signal?: AbortSignal | undefined;
  readonly onProgress?: ((progress: Progress) => void) | undefined;
}

/** Stopped before it was done. */
export class AbortError extends Error {
  override readonly name = 'AbortError';
}

/** The most points in one part. */
export const maxChunk = 16_384;

/**
 * Does work over points 0 to `total` in parts of a few milliseconds each, however slow a point is; gives way between
 * them now and then so that an interrupt can come in, and reports progress. @throws Stopped when the signal has fired
 */
export async function inChunks(
  watch: ProgressOptions,
  total: number,
  message: string,
  part: (start: number, end: number) => void | Promise<void>,
): Promise<void> {
  let size = 1;
  let rested = performance.now();
  for (let start = 0; start < total;) {
    if (watch.signal?.aborted) throw new AbortError(`stopped after ${start} of ${total} points`);
    const end = Math.min(total, start + size);
    const began = performance.now();
    await part(start, end);
    start = end;
    const now = performance.now();
    size = now - began < 10 ? Math.min(maxChunk, size * 4) : Math.ceil(size / 2);
    if (now - rested < 50) continue;
    watch.onProgress?.({ done: end / total, message: message });
    await nextTurn();
    rested = performance.now();
  }
  if (watch.signal?.aborted) throw new AbortError(`stopped after ${total} of ${total} points`);
}
