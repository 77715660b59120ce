/** One run of one cell: how it ends, and how everything it waits for is stopped. */

/** Thrown into a cell, and into all that it waits for, when it is interrupted. */
export class Interrupted extends Error {
  override name = 'Interrupted';
  constructor() {
    super('the cell was interrupted');
  }
}

export type ExecutionResult = { value: unknown } | { error: unknown } | { interrupted: true };

const never = new Promise<never>(() => undefined);

/** The awaits now open, whichever cell began them: an interrupt ends them all. */
const openAwaits = new Set<(reason: Interrupted) => void>();

export class CellExecution {
  private interrupted = false;
  private thrown = false;
  private ended = false;
  private controller: AbortController | undefined;

  constructor(private readonly end: (result: ExecutionResult) => void) {}

  get isOver(): boolean {
    return this.ended;
  }

  /** Ends the run. The first end counts: code left over from an interrupted cell may still try. */
  finish(result: ExecutionResult): void {
    if (this.ended) return;
    this.ended = true;
    this.end(result);
  }

  interrupt(): void {
    this.interrupted = true;
    this.controller?.abort(new Interrupted());
    this.finish({ interrupted: true });
  }

  get signal(): AbortSignal {
    this.controller ??= new AbortController();
    return this.controller.signal;
  }

  /**
   * Wraps the operand of every `await` of a cell. After an interrupt the first one throws, so that clean-up runs; any
   * later one never settles, so that a loop that swallows the error ends too.
   */
  wait = (value: unknown): unknown => {
    if (this.interrupted) {
      if (this.thrown) return never;
      this.thrown = true;
      return Promise.reject(new Interrupted());
    }
    if (!isThenable(value)) return value;
    return new Promise((resolve, reject) => {
      const stop = (reason: Interrupted): void => {
        openAwaits.delete(stop);
        if (this.interrupted) this.thrown = true;
        reject(reason);
      };
      openAwaits.add(stop);
      value.then(
        (result) => {
          openAwaits.delete(stop);
          resolve(result);
        },
        (error: unknown) => {
          openAwaits.delete(stop);
          // eslint-disable-next-line @typescript-eslint/prefer-promise-reject-errors -- a cell may throw anything
          reject(error);
        },
      );
    });
  };

  /** The same for `for await`: every step of the iteration can be interrupted. */
  each = (source: AsyncIterable<unknown> | Iterable<unknown>): AsyncIterable<unknown> => ({
    [Symbol.asyncIterator]: () => this.iterator(source),
  });

  private iterator(source: AsyncIterable<unknown> | Iterable<unknown>): AsyncIterator<unknown> {
    const asynchronous = (source as Partial<AsyncIterable<unknown>>)[Symbol.asyncIterator] !== undefined;
    const iterator: AsyncIterator<unknown> | Iterator<unknown> = asynchronous
      ? (source as AsyncIterable<unknown>)[Symbol.asyncIterator]()
      : (source as Iterable<unknown>)[Symbol.iterator]();
    const step = async (
      result: IteratorResult<unknown> | Promise<IteratorResult<unknown>>,
    ): Promise<IteratorResult<unknown>> => {
      const { done, value } = (await this.wait(result)) as IteratorResult<unknown, unknown>;
      return { done: done ?? false, value: asynchronous ? value : await this.wait(value) };
    };
    return {
      next: () => step(iterator.next()),
      return: async (value: unknown) =>
        iterator.return ? step(iterator.return(value)) : { done: true, value },
    };
  }
}

/** Makes every open await throw. */
export function cancelAwaits(): void {
  const reason = new Interrupted();
  for (const stop of [...openAwaits]) stop(reason);
}

export function isThenable(value: unknown): value is PromiseLike<unknown> {
  return (
    (typeof value === 'object' || typeof value === 'function') &&
    value !== null &&
    typeof (value as { then?: unknown }).then === 'function'
  );
}
