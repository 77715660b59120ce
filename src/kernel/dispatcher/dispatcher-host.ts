import type { SessionOptions } from '../cell-session.js';
import type { CoreSession } from '../core-session.js';
import type { IoThreadMessage, MainThreadMessage } from '../transport/ipc.js';

/** What the dispatcher asks of the place it runs in: a process with an I/O thread, or a browser's worker. */
export interface DispatcherHost {
  readonly flags: Int32Array;
  readonly port: {
    on(type: 'message', listener: (message: MainThreadMessage) => void): void;
    postMessage(message: IoThreadMessage): void;
  };
  readonly kernelInfo: object;
  /** Whether outputs go to a client of Jupyter's, which takes a bundle apart. */
  readonly toJupyter: boolean;
  openSession(options: SessionOptions): CoreSession;
  collectGarbage(): void;
  /** Sends a question by `ask` and waits for its answer. */
  waitForInput(ask: () => void): string;
  exit(): void;
}
