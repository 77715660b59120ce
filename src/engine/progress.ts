import { number } from '../units/format-quantity.js';
import type { Progress } from './trace.js';

/** One piece of long work, as whoever follows it sees it. */
export interface ProgressHandle {
  report(progress: Progress): void;
  /** It is over: finished, or stopped on the way. */
  end(finished: boolean): void;
}
/** Follows all long work for which the caller asked no reports of its own, and may stop it: a running cell, a terminal. */
export interface ProgressReporter {
  readonly signal: AbortSignal | undefined;
  start(what: string): ProgressHandle;
}

// On the global object, so that the notebook's copy of this package and that of the process round it mean the same one.
const place = Symbol.for('joiners-reckoner.watcher');
const holder = globalThis as { [place]?: ProgressReporter };

/** Sets who follows long work from now on; the function it returns puts back whoever did before. */
export function setProgressReporter(watcher: ProgressReporter): () => void {
  const before = holder[place];
  holder[place] = watcher;
  return () => {
    if (holder[place] === watcher) holder[place] = before;
  };
}

/** How one run of long work is watched and stopped. */
interface RunControl {
  readonly signal?: AbortSignal | undefined;
  readonly onProgress?: ((progress: Progress) => void) | undefined;
}
interface ProgressContext {
  readonly signal: AbortSignal | undefined;
  readonly onProgress: (progress: Progress) => void;
  readonly end: (finished: boolean) => void;
}

/** Begins long work: reports go to the caller where it asked for them, else to whoever follows all; so does the stopping. */
function startProgress(own: RunControl, what: string): ProgressContext {
  const watcher = holder[place];
  const signal = own.signal ?? watcher?.signal;
  if (own.onProgress || !watcher) return { signal, onProgress: own.onProgress ?? nothing, end: nothing };
  const following = watcher.start(what);
  return {
    signal,
    onProgress: (progress) => following.report(progress),
    end: (finished) => following.end(finished),
  };
}
const nothing = (): void => undefined;

/** Does long work as {@link startProgress} has it. */
export async function withProgress<T>(
  own: RunControl,
  what: string,
  run: (watch: ProgressContext) => Promise<T>,
): Promise<T> {
  const watch = startProgress(own, what);
  let finished = false;
  try {
    const result = await run(watch);
    finished = true;
    return result;
  } finally {
    watch.end(finished);
  }
}

/** The same for work that answers at once and is long all the same. */
export function withProgressSync<T>(own: RunControl, what: string, run: (watch: ProgressContext) => T): T {
  const watch = startProgress(own, what);
  let finished = false;
  try {
    const result = run(watch);
    finished = true;
    return result;
  } finally {
    watch.end(finished);
  }
}

/**
 * Follows work by one line of text, so that short work shows nothing: `open` is called once it has taken a second, and
 * gives what shows the line anew, at most four times a second, `over` at the last.
 */
export function lineReporter(open: () => (text: string, over: boolean) => void): ProgressReporter['start'] {
  return (what) => {
    const began = performance.now();
    let due = began + 1000;
    let show: ReturnType<typeof open> | undefined;
    return {
      report(progress) {
        const now = performance.now();
        if (now < due) return;
        due = now + 250;
        show ??= open();
        show(`${what}: ${wordsOf(progress)}`, false);
      },
      end(finished) {
        const seconds = ((performance.now() - began) / 1000).toFixed(1);
        show?.(`${what}: ${finished ? 'done in' : 'stopped after'} ${seconds} s`, true);
      },
    };
  };
}

function wordsOf({ done, message: message, best, bound }: Progress): string {
  const parts = [
    message,
    done === undefined ? '' : `${Math.round(done * 100)} %`,
    best === undefined ? '' : `best ${number(best, 4)}`,
    bound === undefined ? '' : `bound ${number(bound, 4)}`,
  ];
  return parts.filter((part) => part !== '').join(', ');
}
