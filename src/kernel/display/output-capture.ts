/**
 * What a cell prints. Text is buffered and sent in a few large pieces: 20,000 lines are some twenty messages, and what a
 * long loop prints still shows while it runs.
 */
import { Console } from 'node:console';

export type StreamName = 'stdout' | 'stderr';
type Emit = (name: StreamName, text: string) => void;

const flushLength = 32_768;
const flushDelayMs = 80;

export class StreamBuffer {
  private name: StreamName = 'stdout';
  private parts: string[] = [];
  private length = 0;
  private last = 0;
  private timer: NodeJS.Timeout | undefined;

  constructor(private readonly emit: Emit) {}

  write(name: StreamName, text: string): void {
    if (text === '') return;
    if (name !== this.name) this.flush();
    this.name = name;
    this.parts.push(text);
    this.length += text.length;
    const now = performance.now();
    if (this.length >= flushLength || now - this.last > flushDelayMs) this.flush();
    else this.timer ??= setTimeout(() => this.flush(), flushDelayMs / 2);
  }

  /** Sends what is buffered: before any other output and when a cell ends. */
  flush(): void {
    if (this.timer) clearTimeout(this.timer);
    this.timer = undefined;
    this.last = performance.now();
    if (this.parts.length === 0) return;
    const text = this.parts.join('');
    this.parts = [];
    this.length = 0;
    this.emit(this.name, text);
  }
}

/** A console and the two process streams, all writing into a session's output instead of the terminal. */
export class OutputCapture {
  private readonly console: Console;
  private restore: (() => void) | undefined;

  constructor(private readonly write: Emit) {
    const sink = (name: StreamName) => ({
      write: (text: unknown) => {
        write(name, String(text));
        return true;
      },
      on: () => undefined,
      once: () => undefined,
      removeListener: () => undefined,
      listenerCount: () => 0,
    });
    this.console = new Console({
      stdout: sink('stdout') as unknown as NodeJS.WritableStream,
      stderr: sink('stderr') as unknown as NodeJS.WritableStream,
      colorMode: false,
    });
    this.addFastPath();
  }

  /** A single text or number outside a group is printed as it is; Node's formatter would take twice as long. */
  private addFastPath(): void {
    const { console } = this;
    let depth = 0;
    const group = console.group.bind(console);
    const groupEnd = console.groupEnd.bind(console);
    console.group = console.groupCollapsed = (...label: unknown[]) => {
      depth++;
      group(...label);
    };
    console.groupEnd = () => {
      depth = Math.max(0, depth - 1);
      groupEnd();
    };
    for (const [method, name] of [
      ['log', 'stdout'],
      ['info', 'stdout'],
      ['debug', 'stdout'],
      ['warn', 'stderr'],
      ['error', 'stderr'],
    ] as const) {
      const formatted = console[method].bind(console);
      console[method] = (...values: unknown[]) => {
        const [value] = values;
        const isPlain = typeof value === 'string' || (typeof value === 'number' && !Object.is(value, -0));
        if (isPlain && values.length === 1 && depth === 0) this.write(name, `${value}\n`);
        else formatted(...values);
      };
    }
  }

  /** Replaces the console and the two streams' `write` until {@link stop}. */
  start(): void {
    if (this.restore) return;
    const former = {
      console: globalThis.console,
      out: writeOf(process.stdout),
      err: writeOf(process.stderr),
    };
    const captured = (name: StreamName) =>
      ((chunk: unknown, encoding?: unknown, done?: unknown) => {
        this.write(
          name,
          typeof chunk === 'string' ? chunk : Buffer.from(chunk as Uint8Array).toString('utf8'),
        );
        const callback = typeof encoding === 'function' ? encoding : done;
        if (typeof callback === 'function') queueMicrotask(callback as () => void);
        return true;
      }) as typeof process.stdout.write;
    globalThis.console = this.console;
    process.stdout.write = captured('stdout');
    process.stderr.write = captured('stderr');
    this.restore = () => {
      globalThis.console = former.console;
      process.stdout.write = former.out;
      process.stderr.write = former.err;
    };
  }

  stop(): void {
    this.restore?.();
    this.restore = undefined;
  }
}

// eslint-disable-next-line @typescript-eslint/unbound-method -- put back on the same stream later
const writeOf = (stream: NodeJS.WriteStream): NodeJS.WriteStream['write'] => stream.write;
