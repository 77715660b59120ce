/** A kernel in a worker of the page, with what a notebook server does for a kernel in a process: headers, restarts, the end of a loop. */
import type { KernelParts } from '../kernel/browser-host/dispatcher-worker.js';
import type { JupyterMessage } from '../kernel/message.js';
import { randomId } from '../kernel/dispatcher/random-id.js';
import type { IoThreadMessage, MainThreadMessage, OutgoingMessage } from '../kernel/transport/ipc.js';

/** A message as it goes over the socket of the protocol. */
export type SocketMessage = Omit<JupyterMessage, 'buffers'> & { readonly buffers: readonly [] };

/** How long a cell may take no notice of an interrupt before its worker is ended. */
const patienceMs = 1500;

export const loopEnded =
  'The loop was ended, and with it the worker that ran the cells: their values are gone. Run the cells above again.';

export class WorkerKernel {
  readonly id = randomId();
  readonly name = 'reckoner';
  state: 'starting' | 'idle' | 'busy' | 'restarting' = 'starting';
  lastActivity = new Date().toISOString();
  connections = 0;
  readonly #session = randomId();
  readonly #listeners = new Set<(message: SocketMessage) => void>();
  /** Requests that have no reply yet, by the id of their message. */
  readonly #open = new Map<string, Readonly<Record<string, unknown>>>();
  readonly #drained = new Map<number, () => void>();
  #worker: Worker;
  #count = 0;

  constructor(
    private readonly script: string,
    private readonly parts: () => Promise<KernelParts>,
  ) {
    this.#worker = this.#start();
  }

  /** The kernel as the Jupyter API describes it. */
  get model(): object {
    const { id, name, state, lastActivity, connections } = this;
    return { id, name, last_activity: lastActivity, execution_state: state, connections };
  }

  listen(listener: (message: SocketMessage) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** A request from a client. */
  send(message: JupyterMessage): void {
    const { header } = message;
    if (message.channel === 'shell' && /_request$/.test(String(header['msg_type'])))
      this.#open.set(String(header['msg_id']), header);
    this.#post({ kind: 'request', message, client: 0 });
  }

  /** Stops the cell at its next await; a loop without one ends with its worker. */
  async interrupt(): Promise<void> {
    const id = ++this.#count;
    const heard = new Promise<boolean>((resolve) => {
      this.#drained.set(id, () => resolve(true));
      setTimeout(() => resolve(false), patienceMs);
    });
    this.#post({ kind: 'interrupt', id });
    this.#post({ kind: 'drain', id });
    if (!(await heard)) this.#replace(loopEnded);
    this.#drained.delete(id);
  }

  restart(): void {
    this.#replace('The kernel was restarted.');
  }

  end(): void {
    this.#worker.terminate();
  }

  #start(): Worker {
    const worker = new Worker(this.script, { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<IoThreadMessage>) => this.#receive(data));
    worker.addEventListener('error', (event) => {
      event.preventDefault();
      this.#replace(`The worker that runs the cells has ended: ${event.message}. Run the cells above again.`);
    });
    this.parts().then(
      (parts) => worker.postMessage(parts),
      (error: unknown) =>
        this.#fail(`The cells cannot run: ${error instanceof Error ? error.message : String(error)}`),
    );
    return worker;
  }

  /** A new worker; whoever waits for a reply is told why none comes. */
  #replace(why: string): void {
    this.#worker.terminate();
    // Before the news of the restart: a client drops what it waits for when it hears of one.
    this.#fail(why);
    this.#status('restarting', {});
    this.#worker = this.#start();
  }

  /** Nothing can run: every request that waits is told why. */
  #fail(why: string): void {
    for (const header of this.#open.values()) this.#refuse(header, why);
    this.#open.clear();
  }

  #refuse(header: Readonly<Record<string, unknown>>, why: string): void {
    const type = String(header['msg_type']).replace(/_request$/, '_reply');
    const error = { ename: 'Stopped', evalue: why, traceback: [why] };
    if (type === 'execute_reply') this.#deliver('iopub', 'error', error, header);
    this.#deliver('shell', type, { status: 'error', execution_count: null, ...error }, header);
    this.#status('idle', header);
  }

  #post(message: MainThreadMessage): void {
    this.#worker.postMessage(message);
  }

  #receive(message: IoThreadMessage): void {
    if (message.kind === 'ready') this.#status('idle', {});
    else if (message.kind === 'drained') this.#drained.get(message.id)?.();
    else if (message.kind === 'send') this.#forward(message);
  }

  #forward({ channel, type, parent, content, metadata }: OutgoingMessage): void {
    const header = JSON.parse(parent) as Record<string, unknown>;
    const read = JSON.parse(content) as Record<string, unknown>;
    if (type === 'status') this.#remember(read['execution_state']);
    if (channel === 'shell') this.#open.delete(String(header['msg_id']));
    this.#deliver(channel, type, read, header, JSON.parse(metadata) as Record<string, unknown>);
  }

  #status(state: WorkerKernel['state'], parent: Readonly<Record<string, unknown>>): void {
    this.#remember(state);
    this.#deliver('iopub', 'status', { execution_state: state }, parent);
  }

  #remember(state: unknown): void {
    if (state === 'idle' || state === 'busy' || state === 'restarting') this.state = state;
    this.lastActivity = new Date().toISOString();
  }

  #deliver(
    channel: JupyterMessage['channel'],
    type: string,
    content: Record<string, unknown>,
    parent: Readonly<Record<string, unknown>>,
    metadata: Record<string, unknown> = {},
  ): void {
    const header = {
      msg_id: `${this.#session}_${++this.#count}`,
      session: this.#session,
      username: 'kernel',
      date: new Date().toISOString(),
      msg_type: type,
      version: '5.3',
    };
    for (const listener of this.#listeners)
      listener({ channel, header, parent_header: { ...parent }, metadata, content, buffers: [] });
  }
}
