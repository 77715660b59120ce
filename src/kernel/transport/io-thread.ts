/**
 * The part of the I/O thread that all transports share: answers what needs no cell (kernel_info while nothing runs,
 * interrupt, shutdown, answers to prompts) and forwards the rest to the main thread in order. It stays responsive
 * whatever a cell does.
 */
import { writeSync } from 'node:fs';
import { setTimeout as sleep } from 'node:timers/promises';
import { kernelInfo } from '../dispatcher/kernel-info.js';
import type { JupyterMessage } from '../message.js';
import {
  SharedState,
  ExecutionPhase,
  type Request,
  type OutgoingMessage,
  type MainThreadMessage,
  type IoThreadMessage,
  type IoThreadData,
} from './ipc.js';
import { signalChildren, detachInspector, terminateExecution } from './interrupt.js';

/** How long the main thread has to react to an interrupt before its JavaScript is terminated. */
const gracefulInterruptMs = 80;

export interface Transport {
  send(message: OutgoingMessage): void | Promise<void>;
  /** Waits until everything sent has left, then closes. */
  close(): Promise<void>;
}

export class IoThread {
  private pending = 0;
  private ready = false;
  private asking = false;
  private draining = false;
  private readonly deferred: Request[] = [];
  private drainedId = 0;
  private interrupting: Promise<void> | undefined;

  constructor(
    private readonly data: IoThreadData,
    private readonly transport: Transport,
  ) {
    data.port.on('message', (message: IoThreadMessage) => this.fromMain(message));
    // Without its sockets a kernel cannot be reached, and a loop in it would never end. This thread's standard error goes
    // through the main thread, which may be the one that loops, so it is written directly.
    process.on('uncaughtException', (error) => {
      writeSync(2, `reckoner kernel: ${error.stack ?? String(error)}\n`);
      void this.shutdown();
    });
    void this.send('iopub', 'status', { execution_state: 'starting' }, '{}');
  }

  private fromMain(message: IoThreadMessage): void {
    if (message.kind === 'send') void this.transport.send(message);
    else if (message.kind === 'ready') this.ready = true;
    else if (message.kind === 'done') this.pending--;
    else if (message.kind === 'drained') this.drainedId = message.id;
    else this.asking = true;
  }

  private send(
    channel: OutgoingMessage['channel'],
    type: string,
    content: object,
    parent: string,
    client?: number,
  ): void | Promise<void> {
    return this.transport.send({
      kind: 'send',
      channel,
      type,
      parent,
      content: JSON.stringify(content),
      metadata: '{}',
      client,
    });
  }

  /** A request from a client. */
  receive(message: JupyterMessage, client: number): void {
    const type = String(message.header['msg_type']);
    if (message.channel === 'stdin') {
      if (type === 'input_reply') this.answerInput(message.content['value']);
      return;
    }
    const here =
      message.channel === 'control' ||
      (type === 'kernel_info_request' && (this.pending === 0 || !this.ready));
    if (here && this.handleControl(message, type, client)) return;
    this.forward({ kind: 'request', message, client });
  }

  private forward(request: Request): void {
    this.pending++;
    if (this.draining) this.deferred.push(request);
    else this.toMain(request);
  }

  private toMain(message: MainThreadMessage): void {
    this.data.port.postMessage(message);
  }

  private handleControl({ channel, header, content }: JupyterMessage, type: string, client: number): boolean {
    const parent = JSON.stringify(header);
    const withStatus = async (work: () => Promise<void> | void): Promise<void> => {
      await this.send('iopub', 'status', { execution_state: 'busy' }, parent);
      await work();
      await this.send('iopub', 'status', { execution_state: 'idle' }, parent);
    };
    if (type === 'kernel_info_request') {
      void withStatus(() => this.send(channel, 'kernel_info_reply', kernelInfo, parent, client));
    } else if (type === 'interrupt_request') {
      void withStatus(async () => {
        await this.interrupt();
        await this.send(channel, 'interrupt_reply', { status: 'ok' }, parent, client);
      });
    } else if (type === 'shutdown_request') {
      const reply = { status: 'ok', restart: Boolean(content['restart']) };
      void withStatus(async () => {
        await this.send(channel, 'shutdown_reply', reply, parent, client);
        await this.send('iopub', 'shutdown_reply', reply, parent);
      }).then(() => this.shutdown());
    } else {
      return false;
    }
    return true;
  }

  private answerInput(value: unknown): void {
    if (!this.asking) return;
    this.asking = false;
    this.data.answers.postMessage(typeof value === 'string' ? value : '');
    Atomics.store(this.data.flags, SharedState.input, 1);
    Atomics.notify(this.data.flags, SharedState.input);
  }

  /** Stops what the main thread does; resolves once it reads messages again. */
  interrupt(): Promise<void> {
    this.interrupting ??= this.interruptMainThread().finally(() => (this.interrupting = undefined));
    return this.interrupting;
  }

  private async interruptMainThread(): Promise<void> {
    const { flags } = this.data;
    const id = Atomics.add(flags, SharedState.wanted, 1) + 1;
    const heard = (): boolean => Atomics.load(flags, SharedState.seen) >= id;
    this.toMain({ kind: 'interrupt', id });
    let forced = false;
    for (let waited = 0; !heard(); waited += 5) {
      await sleep(5);
      if (
        waited < gracefulInterruptMs ||
        heard() ||
        Atomics.load(flags, SharedState.phase) === ExecutionPhase.compiling
      )
        continue;
      // Blocked by a loop, a child process or a prompt.
      this.asking = false;
      forced = true;
      signalChildren();
      terminateExecution();
      this.toMain({ kind: 'interrupt', id });
      waited = -3 * gracefulInterruptMs;
    }
    if (!forced) return;
    await this.drainPendingTermination(id);
    detachInspector();
  }

  /**
   * The termination may have been requested a moment too late and be pending for the next JavaScript that runs. So empty
   * messages are sent until one is answered, and requests are held back until then.
   */
  private async drainPendingTermination(id: number): Promise<void> {
    this.draining = true;
    for (let tries = 0; this.drainedId < id && tries < 200; tries++) {
      this.toMain({ kind: 'drain', id });
      for (let waited = 0; this.drainedId < id && waited < 20; waited += 2) await sleep(2);
    }
    this.draining = false;
    for (const request of this.deferred.splice(0)) this.toMain(request);
  }

  /** Ends the process, by force if it does not end by itself. */
  async shutdown(): Promise<void> {
    await Promise.race([this.transport.close(), sleep(500)]);
    this.toMain({ kind: 'shutdown' });
    await sleep(400);
    signalChildren();
    terminateExecution();
    await sleep(50);
    detachInspector();
    this.toMain({ kind: 'shutdown' });
    await sleep(600);
    signalChildren('SIGKILL');
    process.kill(process.pid, 'SIGKILL');
  }
}
