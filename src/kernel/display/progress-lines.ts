/** Progress lines of a cell's long work, each updated in its place in the notebook. */
import { newDisplayId } from './display-id.js';
import { lineReporter, setProgressReporter, type ProgressHandle } from '../../engine/progress.js';
import type { NbOutput } from '../message.js';

export interface ProgressLines {
  /** Ends the lines of work that was interrupted, perhaps terminated before it could report its end. */
  stop(): void;
  close(): void;
}

export function showProgress(emit: (output: NbOutput) => void, signal: () => AbortSignal): ProgressLines {
  const open = new Set<ProgressHandle>();
  const begin = lineReporter(() => {
    const transient = { display_id: newDisplayId() };
    let output_type: 'display_data' | 'update_display_data' = 'display_data';
    return (text) => {
      emit({ output_type, data: { 'text/plain': text }, metadata: {}, transient });
      output_type = 'update_display_data';
    };
  });
  const close = setProgressReporter({
    get signal() {
      return signal();
    },
    start: (what) => {
      const line = begin(what);
      const following: ProgressHandle = {
        report: (progress) => open.has(following) && line.report(progress),
        end: (finished) => open.delete(following) && line.end(finished),
      };
      open.add(following);
      return following;
    },
  });
  return { stop: () => open.forEach((f) => f.end(false)), close };
}
