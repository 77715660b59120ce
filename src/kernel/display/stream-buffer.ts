/**
 * What a cell prints. Text is buffered and sent in a few large pieces: 20,000 lines are some twenty messages, and what a
 * long loop prints still shows while it runs.
 */

export type StreamName = 'stdout' | 'stderr';
type Emit = (name: StreamName, text: string) => void;

const flushLength = 32_768;
const flushDelayMs = 80;

export class StreamBuffer {
  private name: StreamName = 'stdout';
  private parts: string[] = [];
  private length = 0;
  private last = 0;
  private timer: ReturnType<typeof setTimeout> | undefined;

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
