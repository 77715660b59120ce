/** What completion and inspection need of a session: its program and the values its names have now. */
import type { IncrementalProgram } from './incremental-program.js';

export interface SessionView {
  readonly program: IncrementalProgram;
  /** The program that knows the types of the session's names. */
  language(): IncrementalProgram;
  /** The value of a top-level name: a cell's own, else the package's. */
  lookup(name: string): unknown;
}
