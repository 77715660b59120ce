/**
 * The front desk, in the wires' thread: answers what needs no cell (kernel_info while nothing runs, interrupt, shutdown,
 * answers to prompts) and hands the rest to the main thread in order. It stays awake whatever a cell does.
 */
import { writeSync } from 'node:fs';
import { setTimeout as sleep } from 'node:timers/promises';
import { kernelInfo } from '../desk/kernelInfo.ts';
import type { JupyterMessage } from '../message.ts';
import { Flag, Phase, type Inbound, type Outbound, type ToMain, type ToWires, type WireData } from './envelope.ts';
import { interruptChildren, letGo, tearDown } from './stopper.ts';

/** A thread that answers within this time is asked politely; after it, it is stopped by force. */
const patience = 80;

export interface Wire {
  send(message: Outbound): void | Promise<void>;
  /** Waits until everything sent has left, then closes. */
  close(): Promise<void>;
}

export class Front {
  private pending = 0;
  private ready = false;
  private asking = false;
  private sweeping = false;
  private readonly held: Inbound[] = [];
  private swept = 0;
  private interrupting: Promise<void> | undefined;

  constructor(
    private readonly data: WireData,
    private readonly wire: Wire,
  ) {
    data.port.on('message', (message: ToWires) => this.fromMain(message));
    // With its wires broken a kernel is out of everyone's reach; a loop in it would turn for ever. This thread's standard
    // error passes through the main one, which may be the one that loops.
    process.on('uncaughtException', (error) => {
      writeSync(2, `reckoner kernel: ${error.stack ?? String(error)}\n`);
      void this.shutdown();
    });
    void this.send('iopub', 'status', { execution_state: 'starting' }, '{}');
  }

  private fromMain(message: ToWires): void {
    if (message.kind === 'send') void this.wire.send(message);
    else if (message.kind === 'ready') this.ready = true;
    else if (message.kind === 'done') this.pending--;
    else if (message.kind === 'swept') this.swept = message.id;
    else this.asking = true;
  }

  private send(channel: Outbound['channel'], type: string, content: object, parent: string, route?: number): void | Promise<void> {
    return this.wire.send({ kind: 'send', channel, type, parent, content: JSON.stringify(content), metadata: '{}', route });
  }

  /** A request from a client. */
  receive(message: JupyterMessage, route: number): void {
    const type = String(message.header['msg_type']);
    if (message.channel === 'stdin') {
      if (type === 'input_reply') this.answer(String(message.content['value'] ?? ''));
      return;
    }
    const here = message.channel === 'control' || (type === 'kernel_info_request' && (this.pending === 0 || !this.ready));
    if (here && this.handles(message, type, route)) return;
    this.forward({ kind: 'request', message, route });
  }

  private forward(request: Inbound): void {
    this.pending++;
    if (this.sweeping) this.held.push(request);
    else this.toMain(request);
  }

  private toMain(message: ToMain): void {
    this.data.port.postMessage(message);
  }

  private handles({ channel, header, content }: JupyterMessage, type: string, route: number): boolean {
    const parent = JSON.stringify(header);
    const withStatus = async (work: () => Promise<void> | void): Promise<void> => {
      await this.send('iopub', 'status', { execution_state: 'busy' }, parent);
      await work();
      await this.send('iopub', 'status', { execution_state: 'idle' }, parent);
    };
    if (type === 'kernel_info_request') {
      void withStatus(() => this.send(channel, 'kernel_info_reply', kernelInfo, parent, route));
    } else if (type === 'interrupt_request') {
      void withStatus(async () => {
        await this.interrupt();
        await this.send(channel, 'interrupt_reply', { status: 'ok' }, parent, route);
      });
    } else if (type === 'shutdown_request') {
      const reply = { status: 'ok', restart: Boolean(content['restart']) };
      void withStatus(async () => {
        await this.send(channel, 'shutdown_reply', reply, parent, route);
        await this.send('iopub', 'shutdown_reply', reply, parent);
      }).then(() => this.shutdown());
    } else {
      return false;
    }
    return true;
  }

  private answer(value: string): void {
    if (!this.asking) return;
    this.asking = false;
    this.data.answers.postMessage(value);
    Atomics.store(this.data.flags, Flag.input, 1);
    Atomics.notify(this.data.flags, Flag.input);
  }

  /** Stops what the main thread does; resolves once it is back and listening. */
  interrupt(): Promise<void> {
    this.interrupting ??= this.stop().finally(() => (this.interrupting = undefined));
    return this.interrupting;
  }

  private async stop(): Promise<void> {
    const { flags } = this.data;
    const id = Atomics.add(flags, Flag.wanted, 1) + 1;
    const heard = (): boolean => Atomics.load(flags, Flag.seen) >= id;
    this.toMain({ kind: 'interrupt', id });
    let forced = false;
    for (let waited = 0; !heard(); waited += 5) {
      await sleep(5);
      if (waited < patience || heard() || Atomics.load(flags, Flag.phase) === Phase.compiling) continue;
      // Held up by a loop, or asleep in a child process or a prompt.
      this.asking = false;
      forced = true;
      interruptChildren();
      tearDown();
      this.toMain({ kind: 'interrupt', id });
      waited = -3 * patience;
    }
    if (!forced) return;
    await this.sweep(id);
    letGo();
  }

  /**
   * The order to stop may have come a moment too late and lie in wait for the next piece of work. So idle messages are
   * sent until one comes through, and requests are held back until then.
   */
  private async sweep(id: number): Promise<void> {
    this.sweeping = true;
    for (let tries = 0; this.swept < id && tries < 200; tries++) {
      this.toMain({ kind: 'sweep', id });
      for (let waited = 0; this.swept < id && waited < 20; waited += 2) await sleep(2);
    }
    this.sweeping = false;
    for (const request of this.held.splice(0)) this.toMain(request);
  }

  /** Ends the process: kindly, then by force. */
  async shutdown(): Promise<void> {
    await Promise.race([this.wire.close(), sleep(500)]);
    this.toMain({ kind: 'shutdown' });
    await sleep(400);
    interruptChildren();
    tearDown();
    await sleep(50);
    letGo();
    this.toMain({ kind: 'shutdown' });
    await sleep(600);
    process.kill(process.pid, 'SIGKILL');
  }
}
