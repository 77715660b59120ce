/**
 * The outputs of one cell, in the order in which the cell made them. Some have to be awaited (a chart is drawn first):
 * those that come after wait behind them, and the cell is not over before all have been sent.
 */
import type { NbOutput } from '../message.js';

/** An output that is not made yet; undefined if there turns out to be nothing to show. */
export type PendingOutput = Promise<NbOutput | undefined>;

interface Entry {
  output?: NbOutput | undefined;
  isReady: boolean;
}

export class CellOutput {
  private readonly queue: Entry[] = [];
  private readonly listeners: (() => void)[] = [];

  /** `send` takes the outputs in order. */
  constructor(private readonly send: (output: NbOutput) => void) {}

  push(output: NbOutput): void {
    if (this.queue.length === 0) this.send(output);
    else this.queue.push({ output, isReady: true });
  }

  /** Keeps the place of an output that is still being made. `pending` must not reject. */
  pushPending(pending: PendingOutput): void {
    const entry: Entry = { isReady: false };
    this.queue.push(entry);
    void pending.then((output) => {
      entry.output = output;
      entry.isReady = true;
      this.sendReady();
    });
  }

  /** Calls `listener` once all outputs have been sent: now if none is pending. */
  whenSent(listener: () => void): void {
    if (this.queue.length === 0) listener();
    else this.listeners.push(listener);
  }

  /** Sends what is ready and gives up what is still being made; nobody learns that all has been sent. */
  abandonPending(): void {
    this.listeners.length = 0;
    for (const entry of this.queue) entry.isReady = true;
    this.sendReady();
  }

  private sendReady(): void {
    while (this.queue[0]?.isReady) {
      const { output } = this.queue[0];
      this.queue.shift();
      if (output) this.send(output);
    }
    if (this.queue.length === 0) for (const listener of this.listeners.splice(0)) listener();
  }
}
