import type { IncrementalProgram } from '../compiler/incremental-program.js';
import { createNodeProgram } from '../compiler/node-host.js';
import { takePrewarmedProgram } from './snapshot-state.js';

/** The program that a startup snapshot holds, if this process began from one; else a new one. */
export function prewarmedProgram(cwd: string): IncrementalProgram {
  const program = takePrewarmedProgram() ?? createNodeProgram(cwd);
  program.setCwd(cwd);
  return program;
}
