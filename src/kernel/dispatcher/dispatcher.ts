/**
 * The desk in the main thread: takes requests in order, has the session do the work and sends replies and outputs. It
 * knows the protocol's messages and nothing of sockets.
 */
import { receiveMessageOnPort } from 'node:worker_threads';
import { completeCell } from '../compiler/completion.js';
import { inspectCell } from '../compiler/inspection.js';
import { isComplete } from '../compiler/is-complete.js';
import type { JupyterMessage, NbOutput } from '../message.js';
import { KernelSession } from '../session.js';
import {
  SharedState,
  ExecutionPhase,
  type Request,
  type MainThreadMessage,
  type IoThreadMessage,
  type IoThreadData,
} from '../transport/ipc.js';
import { Comms } from './comms.js';
import { History } from './history.js';
import { kernelInfo } from './kernel-info.js';
import { json } from './protocol-json.js';
import { collectGarbage } from './garbage-collection.js';
import { splitMimeBundle } from './split-mime-bundle.js';

/** A cell that only asks what a name is, such as `Math.hypot?`. */
const inspectRequest = /^\s*([\p{ID_Start}$_][\p{ID_Continue}$.]*)\s*\?\s*$/u;

/** Requests that follow a failed cell within this time were queued behind it and are dropped with it. */
const stopOnErrorWindowMs = 12;

/** A request in line; `abort` marks a cell dropped because one before it failed. */
type Queued = Request & { abort?: boolean };

export class KernelDispatcher {
  readonly session: KernelSession;
  private readonly history = new History();
  private readonly comms: Comms;
  private readonly queue: Queued[] = [];
  private draining = false;
  private collected = 0;
  private parent = '{}';
  private client: number | undefined;
  private allowStdin = false;

  constructor(
    private readonly data: IoThreadData,
    cwd: string,
    private readonly exit: () => void,
  ) {
    const { flags } = data;
    this.comms = new Comms((type, content, metadata, buffers) =>
      this.send('iopub', type, content, { metadata, buffers }),
    );
    this.session = new KernelSession({
      cwd,
      keepConsole: true,
      progress: true,
      hooks: {
        isInterrupted: () => Atomics.load(flags, SharedState.seen) < Atomics.load(flags, SharedState.wanted),
        duringCompile: (yes) =>
          Atomics.store(
            flags,
            SharedState.phase,
            yes ? ExecutionPhase.compiling : ExecutionPhase.interruptible,
          ),
      },
      globals: { prompt: (text, password) => this.requestInput(text, password), comms: this.comms.face },
    });
  }

  /** Begins to take requests. */
  start(): void {
    this.data.port.on('message', (message: MainThreadMessage) => this.receive(message));
    Atomics.store(this.data.flags, SharedState.phase, ExecutionPhase.interruptible);
    this.post({ kind: 'ready' });
  }

  private receive(message: MainThreadMessage): void {
    if (message.kind === 'request') {
      this.queue.push(message);
      void this.drainQueue();
    } else if (message.kind === 'interrupt') {
      // Told first, done after: should this very handler be torn down, the same order comes again.
      this.session.interrupt();
      Atomics.store(this.data.flags, SharedState.seen, message.id);
    } else if (message.kind === 'sweep') {
      this.post({ kind: 'swept', id: message.id });
    } else {
      this.exit();
    }
  }

  private post(message: IoThreadMessage): void {
    this.data.port.postMessage(message);
  }

  private send(
    channel: JupyterMessage['channel'],
    type: string,
    content: object,
    more: {
      metadata?: object | undefined;
      buffers?: Uint8Array[] | undefined;
      parent?: string;
      client?: number | undefined;
    } = {},
  ): void {
    this.post({
      kind: 'send',
      channel,
      type,
      parent: more.parent ?? this.parent,
      content: json(content),
      metadata: json(more.metadata ?? {}),
      ...(more.buffers?.length ? { buffers: more.buffers } : {}),
      client: more.client,
    });
  }

  private async drainQueue(): Promise<void> {
    if (this.draining) return;
    this.draining = true;
    for (let next = this.queue.shift(); next; next = this.queue.shift()) await this.dispatch(next);
    this.draining = false;
  }

  private async dispatch({ message, client: route, abort }: Queued): Promise<void> {
    const parent = JSON.stringify(message.header);
    this.parent = parent;
    this.client = route;
    this.send('iopub', 'status', { execution_state: 'busy' });
    try {
      const type = String(message.header['msg_type']);
      if (abort)
        this.send(
          'shell',
          'execute_reply',
          {
            status: 'aborted',
            execution_count: this.session.executionCount,
            user_expressions: {},
            payload: [],
          },
          { client: route },
        );
      else if (type === 'execute_request') await this.execute(message, route);
      else if (type.startsWith('comm_') && type !== 'comm_info_request')
        this.comms.receive(type, message.content, message.buffers ?? []);
      else {
        const reply = this.handleRequest(type, message.content);
        if (reply) this.send(message.channel, type.replace(/_request$/, '_reply'), reply, { client: route });
      }
    } catch (error) {
      this.session.reportUncaught(error);
    }
    this.send('iopub', 'status', { execution_state: 'idle' }, { parent });
    this.post({ kind: 'done' });
    if (this.session.program.programRebuilds > this.collected) {
      this.collected = this.session.program.programRebuilds;
      collectGarbage();
    }
  }

  /** The reply to a request that runs no cell; undefined for a type the kernel does not know. */
  private handleRequest(type: string, content: Record<string, unknown>): object | undefined {
    const { session } = this;
    const code = typeof content['code'] === 'string' ? content['code'] : '';
    const cursor = typeof content['cursor_pos'] === 'number' ? content['cursor_pos'] : [...code].length;
    switch (type) {
      case 'kernel_info_request':
        return kernelInfo;
      case 'complete_request':
        return this.duringCompile(() => ({
          status: 'ok',
          ...completeCell(session, code, cursor),
          metadata: {},
        }));
      case 'inspect_request':
        return this.duringCompile(() => {
          const data = inspectCell(session, code, cursor, content['detail_level'] === 1);
          return { status: 'ok', found: data !== undefined, data: data ?? {}, metadata: {} };
        });
      case 'is_complete_request':
        return inspectRequest.test(code) ? { status: 'complete' } : isComplete(code);
      case 'history_request':
        return { status: 'ok', history: this.history.ask(content) };
      case 'comm_info_request':
        return { status: 'ok', comms: this.comms.info(content['target_name']) };
      default:
        return undefined;
    }
  }

  /** Work inside the compiler, which an interrupt must not tear down half-way. */
  private duringCompile<T>(drainQueue: () => T): T {
    Atomics.store(this.data.flags, SharedState.phase, ExecutionPhase.compiling);
    try {
      return drainQueue();
    } finally {
      Atomics.store(this.data.flags, SharedState.phase, ExecutionPhase.interruptible);
    }
  }

  private async execute({ content }: JupyterMessage, client: number): Promise<void> {
    const code = typeof content['code'] === 'string' ? content['code'] : '';
    const silent = content['silent'] === true;
    const stores = !silent && content['store_history'] !== false;
    const { session } = this;
    this.allowStdin = content['allow_stdin'] === true;
    const line = session.executionCount + (stores ? 1 : 0);
    if (!silent) this.send('iopub', 'execute_input', { code, execution_count: line });
    if (stores && code.trim() !== '') this.history.add(line, code);

    const asked = inspectRequest.exec(code)?.[1];
    if (asked !== undefined) {
      const data = this.duringCompile(() => inspectCell(session, asked, asked.length, true)) ?? {
        'text/plain': `nothing is known of ${asked}`,
      };
      if (stores) session.executionCount = line;
      this.send(
        'shell',
        'execute_reply',
        {
          status: 'ok',
          execution_count: line,
          user_expressions: {},
          payload: [{ source: 'page', data, start: 0 }],
        },
        { client: client },
      );
      return;
    }
    let failure: NbOutput | undefined;
    const show = (output: NbOutput): void => {
      // Kept back until the queue has been looked at: see below.
      if (output.output_type === 'error') failure = output;
      else this.show(output, stores ? line : undefined);
    };
    const outcome = await session.run(code, show, { silent, storeHistory: stores });
    const user_expressions: Record<string, unknown> = {};
    if (outcome.status === 'ok') {
      const expressions =
        typeof content['user_expressions'] === 'object' && content['user_expressions'] !== null
          ? content['user_expressions']
          : {};
      for (const [name, expression] of Object.entries(expressions)) {
        const result = await session.evaluate(String(expression));
        user_expressions[name] =
          'data' in result
            ? { status: 'ok', data: result.data, metadata: {} }
            : {
                status: 'error',
                ename: result.error.ename,
                evalue: result.error.evalue,
                traceback: result.error.traceback,
              };
      }
      this.send(
        'shell',
        'execute_reply',
        { status: 'ok', execution_count: line, user_expressions, payload: [] },
        { client: client },
      );
      return;
    }
    const { ename, evalue, traceback } = outcome.error!;
    // The queue first, the error after: whoever has seen the error and sends a cell must not have it dropped as queued before.
    const dropped = content['stop_on_error'] === false ? [] : await this.abortQueuedExecutes();
    if (failure) this.show(failure, undefined);
    this.send(
      'shell',
      'execute_reply',
      { status: 'error', ename, evalue, traceback, execution_count: line, user_expressions, payload: [] },
      { client: client },
    );
    this.queue.unshift(...dropped.map((request) => ({ ...request, abort: true })));
  }

  /** The cells queued behind a failed one: not those that a client sends once it has seen the failure. */
  private async abortQueuedExecutes(): Promise<Queued[]> {
    await new Promise((resolve) => setTimeout(resolve, stopOnErrorWindowMs));
    const isCell = ({ message }: Queued): boolean => message.header['msg_type'] === 'execute_request';
    const cells = this.queue.filter(isCell);
    this.queue.splice(0, this.queue.length, ...this.queue.filter((request) => !isCell(request)));
    return cells;
  }

  private show(output: NbOutput, line: number | undefined): void {
    if (output.output_type === 'execute_result' && line !== undefined)
      this.history.setOutput(line, String(output.data['text/plain'] ?? ''));
    const toJupyter = 'connectionFile' in this.data.transport;
    for (const { output_type: type, ...content } of toJupyter ? splitMimeBundle(output) : [output])
      this.send('iopub', type, content);
  }

  /** Puts a question to the person and sleeps until the answer is there. The wires' thread stays awake meanwhile. */
  private requestInput(text: string, password: boolean): string {
    if (!this.allowStdin)
      throw new Error('prompt: the program that runs this notebook takes no input from a person');
    const { flags, answers } = this.data;
    while (receiveMessageOnPort(answers)) {
      // An answer to a question that was interrupted.
    }
    Atomics.store(flags, SharedState.input, 0);
    this.session.flush();
    this.post({ kind: 'asking' });
    this.send('stdin', 'input_request', { prompt: text, password }, { client: this.client });
    for (;;) {
      Atomics.wait(flags, SharedState.input, 0);
      const received = receiveMessageOnPort(answers);
      if (received) return received.message;
      Atomics.store(flags, SharedState.input, 0);
    }
  }
}
