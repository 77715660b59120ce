/** A kernel in a browser's worker: the dispatcher of the Node kernel over the worker's own channel to its page. */
import { KernelDispatcher } from '../dispatcher/dispatcher.js';
import type { IoThreadMessage, MainThreadMessage } from '../transport/ipc.js';
import { SharedState } from '../transport/ipc.js';
import type { ModuleTable } from './browser-execution.js';
import type { TextFiles } from './browser-program-host.js';
import { compilerFrom, createBrowserSession } from './browser-session.js';

/** The first message: what a kernel needs before it can run a cell. */
export interface KernelParts {
  readonly kind: 'start';
  /** The compiler's text. */
  readonly compiler: string;
  /** The types, by path. */
  readonly files: TextFiles;
  /** The content of the reply to kernel_info_request. */
  readonly kernelInfo: object;
  /** The user's own files beside the notebook, by path. */
  readonly userFiles: TextFiles;
}

interface WorkerScope {
  postMessage(message: IoThreadMessage): void;
  addEventListener(
    type: 'message',
    listener: (event: { data: KernelParts | MainThreadMessage }) => void,
  ): void;
  close(): void;
}

/** Begins to serve once the parts are there; what comes before waits. */
export function serveKernel(
  scope: WorkerScope,
  modules: ModuleTable,
  keepFiles: (files: TextFiles) => void,
): void {
  const waiting: MainThreadMessage[] = [];
  let receive = (message: MainThreadMessage): void => void waiting.push(message);
  scope.addEventListener('message', ({ data }) => {
    if (data.kind !== 'start') {
      receive(data);
      return;
    }
    const { compiler, files, kernelInfo, userFiles } = data;
    keepFiles(userFiles);
    const dispatcher = new KernelDispatcher({
      // Nobody shares it: an interrupt comes as a message, and what does not read messages is ended with its worker.
      flags: new Int32Array(SharedState.size),
      port: {
        on: (_type, listener) => (receive = listener),
        postMessage: (message) => scope.postMessage(message),
      },
      kernelInfo,
      toJupyter: false,
      openSession: (options) =>
        createBrowserSession({ compiler: compilerFrom(compiler), files, modules }, options),
      collectGarbage: () => undefined,
      waitForInput: () => {
        throw new Error(
          'prompt: a notebook without a server cannot wait for an answer; write it into the cell',
        );
      },
      exit: () => scope.close(),
    });
    dispatcher.start();
    for (const message of waiting.splice(0)) receive(message);
  });
}
