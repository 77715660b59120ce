/**
 * The desk in the main thread: takes requests in order, has the session do the work and sends replies and outputs. It
 * knows the protocol's messages and nothing of sockets.
 */
import { receiveMessageOnPort } from 'node:worker_threads';
import { completeCell } from '../compiler/completion.ts';
import { inspectCell } from '../compiler/inspection.ts';
import { completeness } from '../compiler/completeness.ts';
import type { JupyterMessage, NbOutput } from '../message.ts';
import { KernelSession } from '../session.ts';
import { Flag, Phase, type Inbound, type ToMain, type ToWires, type WireData } from '../wires/envelope.ts';
import { Comms } from './comms.ts';
import { History } from './history.ts';
import { kernelInfo } from './kernelInfo.ts';
import { json } from './json.ts';
import { collectGarbage } from './memory.ts';
import { parted } from './parting.ts';

/** A cell that only asks what a name is, such as `Math.hypot?`. */
const question = /^\s*([\p{ID_Start}$_][\p{ID_Continue}$.]*)\s*\?\s*$/u;

/** Requests that follow a failed cell within this time were queued behind it and are dropped with it. */
const stragglers = 12;

/** A request in line; `abort` marks a cell dropped because one before it failed. */
type Queued = Inbound & { abort?: boolean };

export class Desk {
  readonly session: KernelSession;
  private readonly history = new History();
  private readonly comms: Comms;
  private readonly queue: Queued[] = [];
  private working = false;
  private collected = 0;
  private parent = '{}';
  private route: number | undefined;
  private allowStdin = false;

  constructor(
    private readonly data: WireData,
    cwd: string,
    private readonly exit: () => void,
  ) {
    const { flags } = data;
    this.comms = new Comms((type, content, metadata, buffers) => this.send('iopub', type, content, { metadata, buffers }));
    this.session = new KernelSession({
      cwd,
      keepConsole: true,
      progress: true,
      hooks: {
        isInterrupted: () => Atomics.load(flags, Flag.seen) < Atomics.load(flags, Flag.wanted),
        compiling: (yes) => Atomics.store(flags, Flag.phase, yes ? Phase.compiling : Phase.free),
      },
      globals: { prompt: (text, password) => this.ask(text, password), comms: this.comms.face },
    });
  }

  /** Begins to take requests. */
  open(): void {
    this.data.port.on('message', (message: ToMain) => this.receive(message));
    Atomics.store(this.data.flags, Flag.phase, Phase.free);
    this.tell({ kind: 'ready' });
  }

  private receive(message: ToMain): void {
    if (message.kind === 'request') {
      this.queue.push(message);
      void this.work();
    } else if (message.kind === 'interrupt') {
      // Told first, done after: should this very handler be torn down, the same order comes again.
      this.session.interrupt();
      Atomics.store(this.data.flags, Flag.seen, message.id);
    } else if (message.kind === 'sweep') {
      this.tell({ kind: 'swept', id: message.id });
    } else {
      this.exit();
    }
  }

  private tell(message: ToWires): void {
    this.data.port.postMessage(message);
  }

  private send(channel: JupyterMessage['channel'], type: string, content: object, more: { metadata?: object | undefined; buffers?: Uint8Array[] | undefined; parent?: string; route?: number | undefined } = {}): void {
    this.tell({
      kind: 'send', channel, type, parent: more.parent ?? this.parent, content: json(content), metadata: json(more.metadata ?? {}),
      ...(more.buffers?.length ? { buffers: more.buffers } : {}), route: more.route,
    });
  }

  private async work(): Promise<void> {
    if (this.working) return;
    this.working = true;
    for (let next = this.queue.shift(); next; next = this.queue.shift()) await this.serve(next);
    this.working = false;
  }

  private async serve({ message, route, abort }: Queued): Promise<void> {
    const parent = JSON.stringify(message.header);
    this.parent = parent;
    this.route = route;
    this.send('iopub', 'status', { execution_state: 'busy' });
    try {
      const type = String(message.header['msg_type']);
      if (abort) this.send('shell', 'execute_reply', { status: 'aborted', execution_count: this.session.count, user_expressions: {}, payload: [] }, { route });
      else if (type === 'execute_request') await this.execute(message, route);
      else if (type.startsWith('comm_') && type !== 'comm_info_request') this.comms.receive(type, message.content, message.buffers ?? []);
      else {
        const reply = this.answer(type, message.content);
        if (reply) this.send(message.channel, type.replace(/_request$/, '_reply'), reply, { route });
      }
    } catch (error) {
      this.session.reportStray(error);
    }
    this.send('iopub', 'status', { execution_state: 'idle' }, { parent });
    this.tell({ kind: 'done' });
    if (this.session.room.renewals > this.collected) {
      this.collected = this.session.room.renewals;
      collectGarbage();
    }
  }

  /** The reply to a request that runs no cell; undefined for a type the kernel does not know. */
  private answer(type: string, content: Record<string, unknown>): object | undefined {
    const { session } = this;
    const code = typeof content['code'] === 'string' ? content['code'] : '';
    const cursor = typeof content['cursor_pos'] === 'number' ? content['cursor_pos'] : [...code].length;
    switch (type) {
      case 'kernel_info_request':
        return kernelInfo;
      case 'complete_request':
        return this.compiling(() => ({ status: 'ok', ...completeCell(session, code, cursor), metadata: {} }));
      case 'inspect_request':
        return this.compiling(() => {
          const data = inspectCell(session, code, cursor, content['detail_level'] === 1);
          return { status: 'ok', found: data !== undefined, data: data ?? {}, metadata: {} };
        });
      case 'is_complete_request':
        return question.test(code) ? { status: 'complete' } : completeness(code);
      case 'history_request':
        return { status: 'ok', history: this.history.ask(content) };
      case 'comm_info_request':
        return { status: 'ok', comms: this.comms.info(content['target_name']) };
      default:
        return undefined;
    }
  }

  /** Work inside the compiler, which an interrupt must not tear down half-way. */
  private compiling<T>(work: () => T): T {
    Atomics.store(this.data.flags, Flag.phase, Phase.compiling);
    try {
      return work();
    } finally {
      Atomics.store(this.data.flags, Flag.phase, Phase.free);
    }
  }

  private async execute({ content }: JupyterMessage, route: number): Promise<void> {
    const code = typeof content['code'] === 'string' ? content['code'] : '';
    const silent = content['silent'] === true;
    const stores = !silent && content['store_history'] !== false;
    const { session } = this;
    this.allowStdin = content['allow_stdin'] === true;
    const line = session.count + (stores ? 1 : 0);
    if (!silent) this.send('iopub', 'execute_input', { code, execution_count: line });
    if (stores && code.trim() !== '') this.history.add(line, code);

    const asked = question.exec(code)?.[1];
    if (asked !== undefined) {
      const data = this.compiling(() => inspectCell(session, asked, asked.length, true)) ?? { 'text/plain': `nothing is known of ${asked}` };
      if (stores) session.count = line;
      this.send('shell', 'execute_reply', { status: 'ok', execution_count: line, user_expressions: {}, payload: [{ source: 'page', data, start: 0 }] }, { route });
      return;
    }
    let failure: NbOutput | undefined;
    const show = (output: NbOutput): void => {
      // Kept back until the queue has been looked at: see below.
      if (output.output_type === 'error') failure = output;
      else this.show(output, stores ? line : undefined);
    };
    const outcome = await session.run(code, show, { silent, countsUp: stores });
    const user_expressions: Record<string, unknown> = {};
    if (outcome.status === 'ok') {
      const expressions = typeof content['user_expressions'] === 'object' && content['user_expressions'] !== null ? content['user_expressions'] : {};
      for (const [name, expression] of Object.entries(expressions)) {
        const result = await session.evaluate(String(expression));
        user_expressions[name] =
          'data' in result
            ? { status: 'ok', data: result.data, metadata: {} }
            : { status: 'error', ename: result.error.ename, evalue: result.error.evalue, traceback: result.error.traceback };
      }
      this.send('shell', 'execute_reply', { status: 'ok', execution_count: line, user_expressions, payload: [] }, { route });
      return;
    }
    const { ename, evalue, traceback } = outcome.error!;
    // The queue first, the error after: whoever has seen the error and sends a cell must not have it dropped as queued before.
    const dropped = content['stop_on_error'] === false ? [] : await this.takeQueued();
    if (failure) this.show(failure, undefined);
    this.send('shell', 'execute_reply', { status: 'error', ename, evalue, traceback, execution_count: line, user_expressions, payload: [] }, { route });
    this.queue.unshift(...dropped.map((request) => ({ ...request, abort: true })));
  }

  /** The cells queued behind a failed one: not those that a client sends once it has seen the failure. */
  private async takeQueued(): Promise<Queued[]> {
    await new Promise((resolve) => setTimeout(resolve, stragglers));
    const isCell = ({ message }: Queued): boolean => message.header['msg_type'] === 'execute_request';
    const cells = this.queue.filter(isCell);
    this.queue.splice(0, this.queue.length, ...this.queue.filter((request) => !isCell(request)));
    return cells;
  }

  private show(output: NbOutput, line: number | undefined): void {
    if (output.output_type === 'execute_result' && line !== undefined) this.history.setOutput(line, String(output.data['text/plain'] ?? ''));
    const toJupyter = 'connectionFile' in this.data.transport;
    for (const { output_type: type, ...content } of toJupyter ? parted(output) : [output]) this.send('iopub', type, content);
  }

  /** Puts a question to the person and sleeps until the answer is there. The wires' thread stays awake meanwhile. */
  private ask(text: string, password: boolean): string {
    if (!this.allowStdin) throw new Error('prompt: the program that runs this notebook takes no input from a person');
    const { flags, answers } = this.data;
    while (receiveMessageOnPort(answers)) {
      // An answer to a question that was interrupted.
    }
    Atomics.store(flags, Flag.input, 0);
    this.session.flush();
    this.tell({ kind: 'asking' });
    this.send('stdin', 'input_request', { prompt: text, password }, { route: this.route });
    for (;;) {
      Atomics.wait(flags, Flag.input, 0);
      const received = receiveMessageOnPort(answers) as { message: string } | undefined;
      if (received) return received.message;
      Atomics.store(flags, Flag.input, 0);
    }
  }
}
