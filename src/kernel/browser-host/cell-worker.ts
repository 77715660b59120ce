/** What a worker does with the messages of its page. A program's worker calls this with the modules that its cells may import. */
import { completeCell } from '../compiler/completion.js';
import { inspectCell } from '../compiler/inspection.js';
import type { CoreSession } from '../core-session.js';
import type { ModuleTable } from './browser-execution.js';
import { compilerFrom, createBrowserSession } from './browser-session.js';
import type { FromWorker, ToWorker } from './worker-protocol.js';

/** The worker's own end of its channel, as much of it as is used. */
export interface WorkerScope {
  postMessage(message: FromWorker): void;
  addEventListener(type: 'message', listener: (event: { data: ToWorker }) => void): void;
}

export function serveCells(scope: WorkerScope, modules: ModuleTable): void {
  let session: CoreSession | undefined;
  const send = (message: FromWorker): void => scope.postMessage(message);
  const handle = (message: ToWorker): void => {
    if (message.kind === 'start') {
      session ??= createBrowserSession({ ...message, compiler: compilerFrom(message.compiler), modules });
      send({ kind: 'ready' });
      return;
    }
    if (!session) throw new Error(`the worker got '${message.kind}' before 'start'`);
    if (message.kind === 'interrupt') session.interrupt();
    else if (message.kind === 'run') void run(session, message, send);
    else if (message.kind === 'complete') {
      const { id, code, cursor } = message;
      send({ kind: 'completions', id, completions: completeCell(session, code, cursor) });
    } else {
      const { id, code, cursor } = message;
      send({ kind: 'inspected', id, data: inspectCell(session, code, cursor, false) });
    }
  };
  scope.addEventListener('message', ({ data }) => handle(data));
}

async function run(
  session: CoreSession,
  { id, code, cellId }: Extract<ToWorker, { kind: 'run' }>,
  send: (message: FromWorker) => void,
): Promise<void> {
  const outcome = await session.run(code, (output) => send({ kind: 'output', id, output }), { cellId });
  send({ kind: 'ran', id, outcome, cells: session.graph.report() });
}
