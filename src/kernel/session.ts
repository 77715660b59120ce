/** A session in Node: the kernel and the notebook runner share it. */
import type { CellSession } from './cell-session.js';
import { CoreSession } from './core-session.js';
import { loadNativeCompiler } from './native/native-checker.js';
import { nodeSessionHost } from './node-session-host.js';
import type { NodeSessionOptions } from './node-session-options.js';

export type { MimeBundle, NbOutput } from './message.js';
export type { CellOutcome, CellSession } from './cell-session.js';

export class KernelSession extends CoreSession {
  constructor(options: NodeSessionOptions) {
    super(nodeSessionHost(options), options);
  }
}

/** Opens a session whose cells resolve files and packages from `cwd`; `file` names the notebook in messages. */
export async function createSession(options: { cwd: string; file?: string }): Promise<CellSession> {
  return new KernelSession({ ...options, native: await loadNativeCompiler(process.env) });
}
