import { fork, type ChildProcess } from 'node:child_process';
import { newKey } from './access-keys.js';
import type { HostedKernel, HostEvent, HostRequest, KernelHost } from './kernel-host.js';
import type { ServerState } from './server.js';

/** What the server's process is started with. */
export interface ServerStart {
  readonly kind: 'start';
  readonly notebooks: string;
  readonly port: number;
  readonly sessionKey: string;
  readonly state: ServerState | undefined;
  readonly kernels: readonly HostedKernel[];
}

export type ToServer =
  | ServerStart
  | HostEvent
  | { readonly kind: 'new-address' }
  | { readonly kind: 'make-pages'; readonly unasked: boolean };
export type FromServer =
  | HostRequest
  | { readonly kind: 'ready'; readonly port: number }
  | { readonly kind: 'failed'; readonly code: string | undefined; readonly message: string }
  | { readonly kind: 'state'; readonly state: ServerState }
  | { readonly kind: 'address'; readonly address: string };

interface SupervisorOptions {
  /** Script of the server's process, and what distinguishes it. */
  readonly script: string;
  readonly scriptArguments: readonly string[];
  readonly notebooks: string;
  readonly host: KernelHost;
  /** Which notebooks may be run into pages in the background; undefined makes none. */
  readonly pages: { readonly unasked: boolean } | undefined;
  readonly log: (line: string) => void;
}

/** More restarts than this in a minute mean that starting again does not help. */
const mostRestarts = 8;
const endMs = 2000;

/**
 * Keeps the server's process running. A server that ends by an error is started again with the same port and keys, and finds its
 * sessions and kernels as they were; the page joins again by itself.
 */
export class Supervisor {
  readonly #sessionKey = newKey();
  #state: ServerState | undefined;
  #child: ChildProcess | undefined;
  #closing = false;
  #restarts: number[] = [];
  #addressWanted: ((address: string) => void)[] = [];

  constructor(private readonly options: SupervisorOptions) {}

  /** The port. Rejects where the first server cannot start, with the system's code on the error. */
  start(port: number): Promise<number> {
    return new Promise((resolve, reject) => this.#fork(port, resolve, reject));
  }

  /** An address that opens the notebooks once. */
  newAddress(): Promise<string> {
    return new Promise((resolve) => {
      this.#addressWanted.push(resolve);
      this.#tell({ kind: 'new-address' });
    });
  }

  /** Ends server and kernels; by force what has not ended after two seconds. */
  async close(): Promise<void> {
    this.#closing = true;
    const child = this.#child;
    const ended = new Promise<void>((resolve) => {
      if (child === undefined) resolve();
      else child.once('exit', () => resolve());
    });
    if (child?.connected) child.disconnect();
    const late = new Promise<void>((resolve) => setTimeout(resolve, endMs));
    await Promise.race([Promise.all([ended, this.options.host.shutdownAll()]), late]);
    this.options.host.killAll();
    child?.kill('SIGKILL');
  }

  #fork(port: number, ready: (port: number) => void, failed: (error: Error) => void): void {
    const { script, scriptArguments, host, notebooks } = this.options;
    const child = fork(script, [...scriptArguments], { serialization: 'advanced' });
    this.#child = child;
    let listening: number | undefined;
    child.on('message', (message) => {
      const from = message as FromServer;
      if (from.kind === 'ready') {
        listening = from.port;
        ready(from.port);
        if (this.options.pages !== undefined) this.#tell({ kind: 'make-pages', ...this.options.pages });
      } else if (from.kind === 'failed') failed(Object.assign(new Error(from.message), { code: from.code }));
      else this.#heard(from);
    });
    child.on('error', () => child.kill('SIGKILL'));
    child.on('exit', (code, signal) => {
      host.detach();
      if (this.#closing || listening === undefined) return;
      this.#restart(listening, signal ?? `code ${code ?? 'unknown'}`);
    });
    this.#tell({
      kind: 'start',
      notebooks,
      port,
      sessionKey: this.#sessionKey,
      state: this.#state,
      kernels: host.list(),
    });
    host.attach((event) => this.#tell(event));
  }

  #restart(port: number, why: string): void {
    const now = Date.now();
    this.#restarts = [...this.#restarts.filter((time) => now - time < 60_000), now];
    if (this.#restarts.length > mostRestarts) {
      this.options.log(
        `The server ended (${why}) ${mostRestarts} times within a minute and is not started again.`,
      );
      void this.close().finally(() => process.exit(1));
      return;
    }
    this.options.log(`The server ended (${why}) and is started again; kernels go on.`);
    setTimeout(() => {
      if (this.#closing) return;
      this.#fork(
        port,
        () => undefined,
        (error) => this.options.log(`The server could not be started again: ${error.message}`),
      );
    }, 100);
  }

  #heard(message: Exclude<FromServer, { kind: 'ready' | 'failed' }>): void {
    if (message.kind === 'state') this.#state = message.state;
    else if (message.kind === 'address') this.#addressWanted.shift()?.(message.address);
    else void this.options.host.handle(message);
  }

  #tell(message: ToServer): void {
    if (this.#child?.connected) this.#child.send(message, () => undefined);
  }
}
