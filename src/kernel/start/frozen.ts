/**
 * What a process finds ready in its memory when it was started from a frozen start: the compiler with its checker made.
 * freeze.ts puts it there; in a process started the ordinary way there is none.
 */
import type { CompilerRoom } from '../compiler/room.ts';
import type { Compiler } from '../tslab.ts';

export interface Frozen {
  compiler: Compiler;
  /** A room without a folder; its session moves it. */
  room: CompilerRoom;
}

const key = Symbol.for('joiners-reckoner.frozen');

export function frozen(): Frozen | undefined {
  return (globalThis as { [key]?: Frozen })[key];
}

let taken = false;

/** The room made ahead: for the first session that asks. */
export function takeRoom(): CompilerRoom | undefined {
  const ready = taken ? undefined : frozen()?.room;
  taken = true;
  return ready;
}

export function setFrozen(value: Frozen): void {
  Object.defineProperty(globalThis, key, { value, configurable: true });
}
