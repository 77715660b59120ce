/** What Node gives a session: files, modules, the console. */
import { inspect } from 'node:util';
import { OutputCapture } from './display/output-capture.js';
import { setInspect } from './display/value-text.js';
import { nodeExecution } from './execution/node-execution.js';
import type { SessionHost } from './session-host.js';
import { openPrograms } from './session-programs.js';
import type { NodeSessionOptions } from './node-session-options.js';

export function nodeSessionHost({ cwd, file, native }: NodeSessionOptions): SessionHost {
  setInspect(inspect);
  return {
    openPrograms: () => openPrograms(cwd, native),
    openExecution: (emit) => nodeExecution(cwd, file, emit),
    captureConsole: (write) => new OutputCapture(write),
  };
}
