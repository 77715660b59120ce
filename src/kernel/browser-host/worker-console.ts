/** What a cell prints in a browser's worker: its console writes into the session's output. */
import { format, inspect } from 'node-inspect-extracted';
import type { StreamName } from '../display/stream-buffer.js';
import type { ConsoleCapture } from '../session-host.js';

type Write = (name: StreamName, text: string) => void;
type Method = (...values: unknown[]) => void;

const streams: Record<string, StreamName> = {
  log: 'stdout',
  info: 'stdout',
  debug: 'stdout',
  warn: 'stderr',
  error: 'stderr',
  trace: 'stderr',
};

/** Replaces the methods of the worker's console between `start` and `stop`; those that print a table or a tree print text. */
export class WorkerConsole implements ConsoleCapture {
  private former: Record<string, unknown> | undefined;
  private indent = '';
  private readonly counts = new Map<string, number>();
  private readonly timers = new Map<string, number>();

  constructor(private readonly write: Write) {}

  start(): void {
    if (this.former) return;
    const target = console as unknown as Record<string, unknown>;
    const methods = this.methods();
    this.former = Object.fromEntries(Object.keys(methods).map((name) => [name, target[name]]));
    Object.assign(target, methods);
  }

  stop(): void {
    if (this.former) Object.assign(console, this.former);
    this.former = undefined;
  }

  private print(stream: StreamName, text: string): void {
    this.write(stream, `${this.indent}${text.replaceAll('\n', `\n${this.indent}`)}\n`);
  }

  private methods(): Record<string, Method> {
    const plain = Object.entries(streams).map(([name, stream]): [string, Method] => [
      name,
      (...values) => this.print(stream, format(...values)),
    ]);
    return {
      ...Object.fromEntries(plain),
      dir: (value) => this.print('stdout', inspect(value)),
      table: (value) => this.print('stdout', inspect(value)),
      group: (...label) => {
        if (label.length > 0) this.print('stdout', format(...label));
        this.indent += '  ';
      },
      groupEnd: () => {
        this.indent = this.indent.slice(2);
      },
      ...this.counters(),
      ...this.stopwatches(),
      assert: (condition, ...values) => {
        if (!condition) this.print('stderr', format('Assertion failed', ...values));
      },
    };
  }

  private counters(): Record<string, Method> {
    return {
      count: (label = 'default') => {
        const count = (this.counts.get(String(label)) ?? 0) + 1;
        this.counts.set(String(label), count);
        this.print('stdout', `${String(label)}: ${count}`);
      },
      countReset: (label = 'default') => void this.counts.delete(String(label)),
    };
  }

  private stopwatches(): Record<string, Method> {
    const report: Method = (label = 'default', ...values) => {
      const began = this.timers.get(String(label));
      if (began === undefined) this.print('stderr', `no timer '${String(label)}' was started`);
      else
        this.print(
          'stdout',
          format(`${String(label)}: ${(performance.now() - began).toFixed(3)} ms`, ...values),
        );
    };
    return {
      time: (label = 'default') => void this.timers.set(String(label), performance.now()),
      timeLog: report,
      timeEnd: (label = 'default') => {
        report(label);
        this.timers.delete(String(label));
      },
    };
  }
}
