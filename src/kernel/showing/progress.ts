/** Lines that tell how far long work of a cell is, each renewed in its place in the notebook. */
import { randomUUID } from 'node:crypto';
import { byLine, watchLongWork, type Following } from '../../recipe/watcher.ts';
import type { NbOutput } from '../message.ts';

export interface ProgressLines {
  /** Whatever still runs was stopped, perhaps torn down before it could say so. */
  stop(): void;
  close(): void;
}

export function showProgress(emit: (output: NbOutput) => void, signal: () => AbortSignal): ProgressLines {
  const open = new Set<Following>();
  const begin = byLine(() => {
    const transient = { display_id: randomUUID() };
    let output_type: 'display_data' | 'update_display_data' = 'display_data';
    return (text) => {
      emit({ output_type, data: { 'text/plain': text }, metadata: {}, transient });
      output_type = 'update_display_data';
    };
  });
  const close = watchLongWork({
    get signal() {
      return signal();
    },
    begin: (what) => {
      const line = begin(what);
      const following: Following = {
        tell: (progress) => open.has(following) && line.tell(progress),
        end: (finished) => open.delete(following) && line.end(finished),
      };
      open.add(following);
      return following;
    },
  });
  return { stop: () => open.forEach((f) => f.end(false)), close };
}
