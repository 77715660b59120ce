/**
 * What a process that was started from a startup snapshot finds ready in its memory: the compiler and a program with its
 * checker made. build-snapshot.ts puts it there; in a process started without a snapshot there is none.
 */
import type { IncrementalProgram } from '../compiler/incremental-program.js';
import type { Compiler } from '../compiler/typescript-internals.js';

export interface SnapshotState {
  compiler: Compiler;
  /** A program without a folder; its session sets it. */
  program: IncrementalProgram;
}

const key = Symbol.for('joiners-reckoner.snapshot');

export function snapshotState(): SnapshotState | undefined {
  return (globalThis as { [key]?: SnapshotState })[key];
}

let taken = false;

/** The program made ahead: for the first session that asks. */
export function takePrewarmedProgram(): IncrementalProgram | undefined {
  const ready = taken ? undefined : snapshotState()?.program;
  taken = true;
  return ready;
}

export function setSnapshotState(value: SnapshotState): void {
  Object.defineProperty(globalThis, key, { value, configurable: true });
}
