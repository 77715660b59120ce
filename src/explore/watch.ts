import type { Progress } from '../recipe/work.js';

/** How long work over many points is watched and stopped. */
export interface Watch {
  readonly signal?: AbortSignal;
  readonly onProgress?: (progress: Progress) => void;
}

/** Stopped before it was done. */
export class Stopped extends Error {
  override readonly name = 'Stopped';
}

/**
 * Gives way now and then so that an interrupt can come in, and reports progress. The function it returns is called
 * with the points done; it throws {@link Stopped} when the signal has fired.
 */
export function pause(watch: Watch, total: number, says: string): (done: number) => Promise<boolean> {
  let last = performance.now();
  return async (done) => {
    if (watch.signal?.aborted) throw new Stopped(`stopped after ${done} of ${total} points`);
    if (performance.now() - last < 50) return false;
    watch.onProgress?.({ done: done / total, says });
    await new Promise((resolve) => setImmediate(resolve));
    last = performance.now();
    if (watch.signal?.aborted) throw new Stopped(`stopped after ${done} of ${total} points`);
    return false;
  };
}
