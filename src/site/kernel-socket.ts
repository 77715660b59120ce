/** What the widgets' own library uses of a WebSocket, joined to a kernel in this page. */
import type { JupyterMessage } from '../kernel/message.js';
import type { WorkerKernel } from './worker-kernel.js';

type Handler<E> = ((event: E) => void) | null;

export class KernelSocket {
  static readonly CONNECTING = 0;
  static readonly OPEN = 1;
  static readonly CLOSING = 2;
  static readonly CLOSED = 3;
  /** Set once by the site: the kernel that an address names. */
  static find: (id: string) => WorkerKernel | undefined = () => undefined;

  readonly protocol: string = '';
  binaryType = 'arraybuffer';
  readyState: number = KernelSocket.CONNECTING;
  onopen: Handler<Event> = null;
  onmessage: Handler<MessageEvent> = null;
  onclose: Handler<CloseEvent> = null;
  onerror: Handler<Event> = null;
  #stop: () => void = () => undefined;
  #kernel: WorkerKernel | undefined;

  constructor(readonly url: string | URL) {
    const id = /\/kernels\/(\w+)\/channels/.exec(String(url))?.[1] ?? '';
    queueMicrotask(() => this.#open(KernelSocket.find(id)));
  }

  #open(kernel: WorkerKernel | undefined): void {
    if (this.readyState !== KernelSocket.CONNECTING) return;
    if (!kernel) {
      this.readyState = KernelSocket.CLOSED;
      this.onclose?.(new CloseEvent('close', { code: 1006 }));
      return;
    }
    this.#kernel = kernel;
    kernel.connections += 1;
    this.#stop = kernel.listen((message) =>
      this.onmessage?.(new MessageEvent('message', { data: JSON.stringify(message) })),
    );
    this.readyState = KernelSocket.OPEN;
    this.onopen?.(new Event('open'));
  }

  send(data: unknown): void {
    if (typeof data !== 'string') throw new Error('a site sends its kernel text alone');
    this.#kernel?.send(JSON.parse(data) as JupyterMessage);
  }

  close(): void {
    if (this.readyState === KernelSocket.CLOSED) return;
    this.readyState = KernelSocket.CLOSED;
    this.#stop();
    if (this.#kernel) this.#kernel.connections -= 1;
    this.onclose?.(new CloseEvent('close', { code: 1000, wasClean: true }));
  }
}
