import { nextTurn } from '../../../engine/next-turn.js';
/** How long a search may go on at a stretch before the rest of the program has a turn, in ms. */
const stretch = 25;

/** Says when a search must stop, and lets the rest of the program have its turn, so that an interrupt is heard. */
export class TimeLimit {
  #last = performance.now();

  /** `until` is on the clock of performance.now(). */
  constructor(
    readonly until: number,
    readonly stopped: () => boolean,
  ) {}

  readonly late = (): boolean => this.stopped() || performance.now() >= this.until;

  /** Cheap enough to be called at every turn of a loop. */
  async yieldToEventLoop(): Promise<void> {
    if (performance.now() - this.#last < stretch) return;
    await nextTurn();
    this.#last = performance.now();
  }
}
