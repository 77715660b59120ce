/**
 * Handles the requests of clients in the main thread: takes them in order, has the session do the work and sends replies
 * and outputs. It knows the protocol's messages and nothing of sockets.
 */
import { completeCell } from '../compiler/completion.js';
import { countPoints } from '../compiler/cursor.js';
import { inspectCell } from '../compiler/inspection.js';
import { isComplete } from '../compiler/is-complete.js';
import type { JupyterMessage, NbOutput } from '../message.js';
import type { CoreSession } from '../core-session.js';
import {
  SharedState,
  ExecutionPhase,
  type Request,
  type MainThreadMessage,
  type IoThreadMessage,
} from '../transport/ipc.js';
import type { DispatcherHost } from './dispatcher-host.js';
import { Comms } from './comms.js';
import { isInspectRequest } from './execute-content.js';
import { ExecuteHandler } from './execute-handler.js';
import { History } from './history.js';
import { json } from './protocol-json.js';
import { splitMimeBundle } from './split-mime-bundle.js';
import { StaleCells } from './stale-cells.js';

/** Cells that arrive within this time after a failed one were queued behind it and are dropped with it. */
const stopOnErrorWindowMs = 12;

/** A queued request; `abort` marks a cell dropped because one before it failed. */
type Queued = Request & { abort?: boolean };

interface SendOptions {
  metadata?: object | undefined;
  buffers?: Uint8Array[] | undefined;
  parent?: string;
  client?: number | undefined;
}

export class KernelDispatcher {
  readonly session: CoreSession;
  private readonly history = new History();
  private readonly comms: Comms;
  private readonly staleCells: StaleCells;
  private readonly executeHandler: ExecuteHandler;
  private readonly queue: Queued[] = [];
  private draining = false;
  private collectedRebuilds = 0;
  private parent = '{}';
  private client: number | undefined;
  private allowStdin = false;

  constructor(private readonly host: DispatcherHost) {
    const { flags } = host;
    this.comms = new Comms((type, content, more) => this.send('iopub', type, content, more));
    this.session = host.openSession({
      keepConsole: true,
      progress: true,
      hooks: {
        isInterrupted: () => Atomics.load(flags, SharedState.seen) < Atomics.load(flags, SharedState.wanted),
        duringCompile: (yes) => this.setPhase(yes ? 'compiling' : 'interruptible'),
      },
      globals: {
        prompt: (text, password) => this.requestInput(text, password),
        comms: this.comms.cellInterface,
      },
    });
    this.staleCells = new StaleCells(this.session.graph, this.comms);
    this.executeHandler = new ExecuteHandler({
      session: this.session,
      history: this.history,
      duringCompile: (work) => this.duringCompile(work),
      sendInput: (code, execution_count) => this.send('iopub', 'execute_input', { code, execution_count }),
      outputSender: () => this.outputSender(),
      removeDeleted: (ids) => this.staleCells.removeDeleted(ids),
      replyMetadata: (cellId) => this.staleCells.replyMetadata(cellId),
      abortQueued: () => this.abortQueuedExecutes(),
    });
  }

  start(): void {
    this.host.port.on('message', (message: MainThreadMessage) => this.receive(message));
    this.setPhase('interruptible');
    this.post({ kind: 'ready' });
  }

  private receive(message: MainThreadMessage): void {
    if (message.kind === 'request') {
      this.queue.push(message);
      void this.drainQueue();
    } else if (message.kind === 'interrupt') {
      // Acknowledge after interrupting; if this handler is terminated the request is sent again.
      this.session.interrupt();
      Atomics.store(this.host.flags, SharedState.seen, message.id);
    } else if (message.kind === 'drain') {
      this.post({ kind: 'drained', id: message.id });
    } else {
      this.host.exit();
    }
  }

  private setPhase(phase: keyof typeof ExecutionPhase): void {
    Atomics.store(this.host.flags, SharedState.phase, ExecutionPhase[phase]);
  }

  private post(message: IoThreadMessage): void {
    this.host.port.postMessage(message);
  }

  private send(
    channel: JupyterMessage['channel'],
    type: string,
    content: object,
    { metadata, buffers, parent, client }: SendOptions = {},
  ): void {
    this.post({
      kind: 'send',
      channel,
      type,
      parent: parent ?? this.parent,
      content: json(content),
      metadata: json(metadata ?? {}),
      ...(buffers?.length ? { buffers } : {}),
      client,
    });
  }

  private async drainQueue(): Promise<void> {
    if (this.draining) return;
    this.draining = true;
    for (let next = this.queue.shift(); next; next = this.queue.shift()) await this.dispatch(next);
    this.draining = false;
  }

  private async dispatch(request: Queued): Promise<void> {
    const parent = JSON.stringify(request.message.header);
    this.parent = parent;
    this.client = request.client;
    this.send('iopub', 'status', { execution_state: 'busy' });
    try {
      await this.handle(request);
    } catch (error) {
      this.session.reportUncaught(error);
    }
    this.send('iopub', 'status', { execution_state: 'idle' }, { parent });
    this.post({ kind: 'done' });
    const { programRebuilds } = this.session.program;
    if (programRebuilds > this.collectedRebuilds) {
      this.collectedRebuilds = programRebuilds;
      this.host.collectGarbage();
    }
  }

  private async handle({ message, client, abort }: Queued): Promise<void> {
    const { content, channel } = message;
    const type = String(message.header['msg_type']);
    if (type.startsWith('comm_') && type !== 'comm_info_request') {
      this.comms.receive(type, content, message.buffers ?? []);
      return;
    }
    if (type === 'execute_request') {
      this.allowStdin = content['allow_stdin'] === true;
      const handler = this.executeHandler;
      const reply = abort ? handler.abortedReply() : await handler.execute(content, message.metadata);
      this.send('shell', 'execute_reply', reply.content, { client, metadata: reply.metadata });
      this.staleCells.publish();
      this.queue.unshift(...reply.dropped.map((request) => ({ ...request, abort: true })));
      return;
    }
    const reply = this.replyTo(type, content);
    if (reply) this.send(channel, type.replace(/_request$/, '_reply'), reply, { client });
  }

  /** The reply to a request that runs no cell; undefined for a type the kernel does not know. */
  private replyTo(type: string, content: Record<string, unknown>): object | undefined {
    const code = typeof content['code'] === 'string' ? content['code'] : '';
    const cursor = typeof content['cursor_pos'] === 'number' ? content['cursor_pos'] : countPoints(code);
    switch (type) {
      case 'kernel_info_request':
        return this.host.kernelInfo;
      case 'complete_request': {
        const completions = this.duringCompile(() => completeCell(this.session, code, cursor));
        return { status: 'ok', ...completions, metadata: {} };
      }
      case 'inspect_request': {
        const inDepth = content['detail_level'] === 1;
        const data = this.duringCompile(() => inspectCell(this.session, code, cursor, inDepth));
        return { status: 'ok', found: data !== undefined, data: data ?? {}, metadata: {} };
      }
      case 'is_complete_request':
        return isInspectRequest(code) ? { status: 'complete' } : isComplete(this.session.program.ts, code);
      case 'history_request':
        return { status: 'ok', history: this.history.select(content) };
      case 'comm_info_request':
        return { status: 'ok', comms: this.comms.info(content['target_name']) };
      default:
        return undefined;
    }
  }

  /** Work inside the compiler, which an interrupt must not terminate half-way. */
  private duringCompile<T>(work: () => T): T {
    this.setPhase('compiling');
    try {
      return work();
    } finally {
      this.setPhase('interruptible');
    }
  }

  /** The cells queued behind a failed one: not those that a client sends after seeing the failure. */
  private async abortQueuedExecutes(): Promise<Request[]> {
    await new Promise((resolve) => setTimeout(resolve, stopOnErrorWindowMs));
    const isCell = ({ message }: Queued): boolean => message.header['msg_type'] === 'execute_request';
    const cells = this.queue.filter(isCell);
    this.queue.splice(0, this.queue.length, ...this.queue.filter((request) => !isCell(request)));
    return cells;
  }

  /** Sends outputs as those of the request that is handled now, also later. */
  private outputSender(): (output: NbOutput) => void {
    const { parent } = this;
    const { toJupyter } = this.host;
    return (output) => {
      for (const { output_type: type, ...content } of toJupyter ? splitMimeBundle(output) : [output])
        this.send('iopub', type, content, { parent });
    };
  }

  private requestInput(text: string, password: boolean): string {
    if (!this.allowStdin)
      throw new Error('prompt: the program that runs this notebook takes no input from a user');
    this.session.flush();
    return this.host.waitForInput(() => {
      this.post({ kind: 'asking' });
      this.send('stdin', 'input_request', { prompt: text, password }, { client: this.client });
    });
  }
}
