import { meets } from './bounds.js';
import type { Packing } from './problem.js';

/** Called with each better plan and each better bound. */
export type Changed = (best: number, bound: number, label: string) => void;

/** The best plan and the best bound so far, and how each was found, in words. There is a plan from the start. */
export class Incumbent {
  readonly steps: string[] = [];
  #best: Packing;
  #bound = 0;

  constructor(
    first: { readonly packing: Packing; readonly how: string },
    readonly changed: Changed,
  ) {
    this.#best = first.packing;
    this.#record(`plan by ${first.how}`);
  }

  get best(): Packing {
    return this.#best;
  }
  get bound(): number {
    return this.#bound;
  }
  /** Whether the plan is as cheap as the bound allows. */
  get done(): boolean {
    return meets(this.#best.cost, this.#bound);
  }

  raise(bound: number, how: string): void {
    if (bound <= this.#bound + 1e-9) return;
    this.#bound = bound;
    this.#record(`bound from ${how}`);
  }

  take(packing: Packing, how: string): void {
    if (packing.cost >= this.#best.cost - 1e-9) return;
    this.#best = packing;
    this.#record(`plan by ${how}`);
  }

  /** Records what was done. */
  note(label: string): void {
    this.steps.push(label);
  }

  /** Reports what is being tried. */
  report(label: string): void {
    this.changed(this.#best.cost, this.#bound, label);
  }

  #record(label: string): void {
    this.note(label);
    this.report(label);
  }
}
