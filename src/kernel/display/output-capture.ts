/** What a cell prints in Node: through the console, and through the two streams of the process. */
import { Console } from 'node:console';
import type { ConsoleCapture } from '../session-host.js';
import type { StreamName } from './stream-buffer.js';

type Write = (name: StreamName, text: string) => void;

/** A console and the two process streams, all writing into a session's output instead of the terminal. */
export class OutputCapture implements ConsoleCapture {
  private readonly console: Console;
  private restore: (() => void) | undefined;

  constructor(private readonly write: Write) {
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
