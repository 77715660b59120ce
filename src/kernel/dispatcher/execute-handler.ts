/** Runs the cell of an execute_request: its outputs in order, then the reply. */
import { inspectCell } from '../compiler/inspection.js';
import type { MimeBundle, NbOutput } from '../message.js';
import type { CoreSession } from '../core-session.js';
import type { Request } from '../transport/ipc.js';
import {
  cellIdOf,
  deletedCellsOf,
  inspectedName,
  readExecuteContent,
  type ExecuteContent,
} from './execute-content.js';
import type { History } from './history.js';

export interface ExecuteContext {
  session: CoreSession;
  history: History;
  duringCompile: <T>(work: () => T) => T;
  sendInput(code: string, executionCount: number): void;
  /** Sends outputs as those of the request that is handled now. */
  outputSender(): (output: NbOutput) => void;
  /** Forgets cells that were deleted; what there is to say of it, or an empty text. */
  removeDeleted(ids: readonly string[]): string;
  /** Metadata of the reply to a cell's request. */
  replyMetadata(cellId: string | undefined): object;
  /** Takes the cells queued behind this one off the queue. */
  abortQueued(): Promise<Request[]>;
}

export interface ExecuteReply {
  content: object;
  metadata?: object;
  /** Cells to answer as aborted. */
  dropped: Request[];
}

export class ExecuteHandler {
  constructor(private readonly context: ExecuteContext) {}

  /** The reply to a cell that is dropped because one before it failed. */
  abortedReply(): ExecuteReply {
    const execution_count = this.context.session.executionCount;
    return {
      content: { status: 'aborted', execution_count, user_expressions: {}, payload: [] },
      dropped: [],
    };
  }

  async execute(content: Record<string, unknown>, metadata: Record<string, unknown>): Promise<ExecuteReply> {
    const { session, history } = this.context;
    const cellId = cellIdOf(metadata);
    const request = readExecuteContent(content);
    const { code, silent, storeHistory } = request;
    const line = session.executionCount + (storeHistory ? 1 : 0);
    if (!silent) this.context.sendInput(code, line);
    if (storeHistory && code.trim() !== '') history.add(line, code);
    const notice = this.context.removeDeleted(deletedCellsOf(metadata));
    if (notice !== '' && !silent)
      this.context.outputSender()({ output_type: 'stream', name: 'stderr', text: `${notice}\n` });
    const name = inspectedName(code);
    if (name === undefined) {
      const reply = await this.run(request, line, cellId);
      return { ...reply, metadata: this.context.replyMetadata(cellId) };
    }
    if (storeHistory) session.executionCount = line;
    const payload = [{ source: 'page', data: this.inspect(name), start: 0 }];
    return {
      content: { status: 'ok', execution_count: line, user_expressions: {}, payload },
      dropped: [],
    };
  }

  private inspect(name: string): MimeBundle {
    const { session, duringCompile } = this.context;
    const data = duringCompile(() => inspectCell(session, name, name.length, true));
    return data ?? { 'text/plain': `nothing is known of ${name}` };
  }

  private async run(
    request: ExecuteContent,
    line: number,
    cellId: string | undefined,
  ): Promise<ExecuteReply> {
    const { session, history } = this.context;
    const send = this.context.outputSender();
    let failure: NbOutput | undefined;
    const onOutput = (output: NbOutput): void => {
      if (output.output_type === 'execute_result' && request.storeHistory)
        history.setOutput(line, plainText(output.data));
      // The error is held back until the queue has been looked at: see below.
      if (output.output_type === 'error') failure = output;
      else send(output);
    };
    const { silent, storeHistory } = request;
    const { error } = await session.run(request.code, onOutput, { silent, storeHistory, cellId });
    const base = { execution_count: line, payload: [] };
    if (!error) {
      const user_expressions = await this.evaluateAll(request.expressions);
      return { content: { status: 'ok', ...base, user_expressions }, dropped: [] };
    }
    // The queue first, the error after: a cell that a client sends after seeing the error must not be dropped.
    const dropped = request.stopOnError ? await this.context.abortQueued() : [];
    if (failure) send(failure);
    const { ename, evalue, traceback } = error;
    return {
      content: { status: 'error', ename, evalue, traceback, ...base, user_expressions: {} },
      dropped,
    };
  }

  private async evaluateAll(expressions: ExecuteContent['expressions']): Promise<Record<string, object>> {
    const results: Record<string, object> = {};
    for (const [name, expression] of expressions) {
      const result = await this.context.session.evaluate(expression);
      if ('data' in result) {
        results[name] = { status: 'ok', data: result.data, metadata: {} };
      } else {
        const { ename, evalue, traceback } = result.error;
        results[name] = { status: 'error', ename, evalue, traceback };
      }
    }
    return results;
  }
}

const plainText = ({ 'text/plain': text }: MimeBundle): string => (typeof text === 'string' ? text : '');
