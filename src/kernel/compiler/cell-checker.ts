/** A checker of types outside this process, in place of the compiler's own: see kernel/native. */
import type TS from 'typescript';
import type { Meaning } from './name-meaning.js';
import type { CellFile } from './typescript-internals.js';

export interface CellChecker {
  /** Errors of a cell that has no syntax error, bound and not yet published. */
  diagnose(file: CellFile): readonly TS.Diagnostic[];
  /** What an imported name of the cell checked last stands for. `position` is that of the name in the cell. */
  importMeaning(file: CellFile, position: number): Meaning;
  /** Lets later cells see names of a cell. */
  publish(file: CellFile, names: ReadonlyMap<string, Meaning>): void;
  close(): void;
}
