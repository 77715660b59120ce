/** One run of one cell: how it ends, and how everything it waits for is told to stop. */

/** Thrown into a cell, and into all that it waits for, when a person interrupts it. */
export class Interrupted extends Error {
  override name = 'Interrupted';
  constructor() {
    super('the cell was interrupted');
  }
}

export type ExecutionResult = { value: unknown } | { error: unknown } | { interrupted: true };

const never = new Promise<never>(() => undefined);

/** The waits now open, whichever cell began them: an interrupt ends them all. */
const waiting = new Set<(reason: Interrupted) => void>();

export class CellExecution {
  private dead = false;
  private struck = false;
  private ended = false;
  private stopper: AbortController | undefined;

  constructor(private readonly end: (how: ExecutionResult) => void) {}

  get isOver(): boolean {
    return this.ended;
  }

  /** Ends the run. The first end counts: code left over from an interrupted cell may still try. */
  finish(how: ExecutionResult): void {
    if (this.ended) return;
    this.ended = true;
    this.end(how);
  }

  interrupt(): void {
    this.dead = true;
    this.stopper?.abort(new Interrupted());
    this.finish({ interrupted: true });
  }

  get signal(): AbortSignal {
    this.stopper ??= new AbortController();
    return this.stopper.signal;
  }

  /**
   * Stands before every `await` of a cell. After an interrupt the first wait throws, so that clean-up runs; any later
   * one never comes back, so that a loop that swallows the error ends too.
   */
  wait = (value: unknown): unknown => {
    if (this.dead) {
      if (this.struck) return never;
      this.struck = true;
      return Promise.reject(new Interrupted());
    }
    if (!isThenable(value)) return value;
    return new Promise((resolve, reject) => {
      const stop = (reason: Interrupted): void => {
        waiting.delete(stop);
        if (this.dead) this.struck = true;
        reject(reason);
      };
      waiting.add(stop);
      value.then(
        (result) => (waiting.delete(stop), resolve(result)),
        (error: unknown) => (waiting.delete(stop), reject(error)),
      );
    });
  };

  /** The same for `for await`: every step of the iteration can be interrupted. */
  each = (source: AsyncIterable<unknown> | Iterable<unknown>): AsyncIterable<unknown> => {
    const { wait } = this;
    return {
      [Symbol.asyncIterator](): AsyncIterator<unknown> {
        const asynchronous = (source as Partial<AsyncIterable<unknown>>)[Symbol.asyncIterator];
        const iterator = asynchronous
          ? asynchronous.call(source)
          : (source as Iterable<unknown>)[Symbol.iterator]();
        const step = async (
          result: IteratorResult<unknown> | Promise<IteratorResult<unknown>>,
        ): Promise<IteratorResult<unknown>> => {
          const { done, value } = (await wait(result)) as IteratorResult<unknown>;
          return {
            done: done ?? false,
            value: asynchronous ? value : await wait(value),
          } as IteratorResult<unknown>;
        };
        return {
          next: () => step(iterator.next()),
          return: async (value) => (iterator.return ? step(iterator.return(value)) : { done: true, value }),
        };
      },
    };
  };
}

/** Makes every open wait throw. */
export function cancelAwaits(): void {
  const reason = new Interrupted();
  for (const stop of [...waiting]) stop(reason);
}

export function isThenable(value: unknown): value is PromiseLike<unknown> {
  return (
    (typeof value === 'object' || typeof value === 'function') &&
    value !== null &&
    typeof (value as { then?: unknown }).then === 'function'
  );
}
