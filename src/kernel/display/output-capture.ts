/**
 * What a cell prints. Text is gathered and handed on in a few large pieces: 20,000 lines are some twenty messages, and
 * what a long loop prints still shows while it runs.
 */
import { Console } from 'node:console';

export type StreamName = 'stdout' | 'stderr';
type Emit = (name: StreamName, text: string) => void;

const enough = 32_768;
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
    if (this.length >= enough || now - this.last > flushDelayMs) return this.flush();
    this.timer ??= setTimeout(() => this.flush(), flushDelayMs / 2);
  }

  /** Hands on what is there: before any other output and when a cell ends. */
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
      write: (text: unknown) => (write(name, String(text)), true),
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
    this.shorten();
  }

  /** A lone text or number outside a group is printed as it is; by way of Node's formatter it takes twice as long. */
  private shorten(): void {
    const face = this.console;
    let depth = 0;
    const { group, groupEnd } = face;
    face.group = face.groupCollapsed = (...label) => (depth++, group.apply(face, label));
    face.groupEnd = () => ((depth = Math.max(0, depth - 1)), groupEnd.call(face));
    for (const [method, name] of [
      ['log', 'stdout'],
      ['info', 'stdout'],
      ['debug', 'stdout'],
      ['warn', 'stderr'],
      ['error', 'stderr'],
    ] as const) {
      const whole = face[method].bind(face);
      face[method] = (...given: unknown[]) => {
        const [value] = given;
        const plain =
          given.length === 1 &&
          depth === 0 &&
          (typeof value === 'string' || (typeof value === 'number' && !Object.is(value, -0)));
        if (plain) this.write(name, `${value}\n`);
        else whole(...given);
      };
    }
  }

  /** Takes the console and the streams over; nesting is allowed and the outermost `stop` gives them back. */
  start(): void {
    if (this.restore) return;
    const kept = { console: globalThis.console, out: process.stdout.write, err: process.stderr.write };
    const taken = (name: StreamName) =>
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
    process.stdout.write = taken('stdout');
    process.stderr.write = taken('stderr');
    this.restore = () => {
      globalThis.console = kept.console;
      process.stdout.write = kept.out;
      process.stderr.write = kept.err;
    };
  }

  stop(): void {
    this.restore?.();
    this.restore = undefined;
  }
}
