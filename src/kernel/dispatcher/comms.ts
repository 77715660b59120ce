/** Comms: two-way channels between a cell and a widget in a client, opened by either side. */
import { randomId } from './random-id.js';

type Send = (
  type: 'comm_open' | 'comm_msg' | 'comm_close',
  content: object,
  more?: { metadata?: object; buffers?: Uint8Array[] },
) => void;

export class Comm {
  onMessage: (data: unknown, buffers: Uint8Array[]) => void = () => undefined;
  onClose: (data: unknown) => void = () => undefined;
  constructor(
    readonly id: string,
    readonly target: string,
    private readonly post: Send,
    private readonly forget: () => void,
  ) {}
  send(data: unknown, metadata: object = {}, buffers: Uint8Array[] = []): void {
    this.post('comm_msg', { comm_id: this.id, data: data ?? {} }, { metadata, buffers });
  }
  close(data: unknown = {}): void {
    this.forget();
    this.post('comm_close', { comm_id: this.id, data });
  }
}

export class Comms {
  private readonly channels = new Map<string, Comm>();
  private readonly targets = new Map<string, (comm: Comm, data: unknown) => void>();

  constructor(private readonly post: Send) {}

  /** What cells see as `comms`. */
  readonly cellInterface = {
    open: (target: string, data: unknown = {}, metadata: object = {}): Comm => {
      const comm = this.create(randomId(), target);
      this.post('comm_open', { comm_id: comm.id, target_name: target, data }, { metadata });
      return comm;
    },
    register: (target: string, opened: (comm: Comm, data: unknown) => void): void => {
      if (typeof opened !== 'function')
        throw new TypeError(
          `comms.register('${target}', opened): opened is a function called with each new comm`,
        );
      this.targets.set(target, opened);
    },
    unregister: (target: string): void => void this.targets.delete(target),
  };

  private create(id: string, target: string): Comm {
    const comm = new Comm(id, target, this.post, () => this.channels.delete(id));
    this.channels.set(id, comm);
    return comm;
  }

  /** A comm message from a client. An unknown target is answered by closing the comm, as the protocol requires. */
  receive(type: string, content: Record<string, unknown>, buffers: Uint8Array[]): void {
    const id = textOf(content['comm_id']);
    if (type === 'comm_open') {
      const target = textOf(content['target_name']);
      const opened = this.targets.get(target);
      if (!opened) {
        this.post('comm_close', { comm_id: id, data: {} });
        return;
      }
      const comm = this.create(id, target);
      try {
        opened(comm, content['data']);
      } catch (error) {
        comm.close();
        throw error;
      }
      return;
    }
    const comm = this.channels.get(id);
    if (!comm) return;
    if (type === 'comm_msg') {
      comm.onMessage(content['data'], buffers);
    } else {
      this.channels.delete(id);
      comm.onClose(content['data']);
    }
  }

  info(target: unknown): Record<string, { target_name: string }> {
    const found = [...this.channels.values()].filter(
      (comm) => target === undefined || target === null || comm.target === target,
    );
    return Object.fromEntries(found.map((comm) => [comm.id, { target_name: comm.target }]));
  }
}

const textOf = (value: unknown): string => (typeof value === 'string' ? value : '');
