/**
 * What a process finds ready in its memory when it was started from a frozen start: the compiler with its checker made.
 * freeze.ts puts it there; in a process started the ordinary way there is none.
 */
import type { IncrementalProgram } from '../compiler/incremental-program.js';
import type { Compiler } from '../compiler/tslab.js';

export interface SnapshotState {
  compiler: Compiler;
  /** A room without a folder; its session moves it. */
  program: IncrementalProgram;
}

const key = Symbol.for('joiners-reckoner.frozen');

export function snapshotState(): SnapshotState | undefined {
  return (globalThis as { [key]?: SnapshotState })[key];
}

let taken = false;

/** The room made ahead: for the first session that asks. */
export function takePrewarmedProgram(): IncrementalProgram | undefined {
  const ready = taken ? undefined : snapshotState()?.program;
  taken = true;
  return ready;
}

export function setSnapshotState(value: SnapshotState): void {
  Object.defineProperty(globalThis, key, { value, configurable: true });
}
