// Numbers that are the same in every run, so that a finding can be looked at again by its seed alone.

/** Numbers from 0 to 1 (mulberry32), and the few choices that hostile inputs are made of. */
export class SeededRandom {
  #state: number;
  constructor(seed: number) {
    this.#state = seed | 0;
  }
  next(): number {
    this.#state = (this.#state + 0x6d2b79f5) | 0;
    let t = Math.imul(this.#state ^ (this.#state >>> 15), 1 | this.#state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }
  below(n: number): number {
    return Math.floor(this.next() * n);
  }
  pick<T>(list: readonly T[]): T {
    return list[this.below(list.length)] as T;
  }
  chance(p: number): boolean {
    return this.next() < p;
  }
  /** Between `low` and `high`, as likely in each decade. */
  decade(low: number, high: number): number {
    return low * (high / low) ** this.next();
  }
}

/** How many runs: few in an ordinary run, as many as RECKONER_HOSTILE says in the long one. */
export const hostileRuns = (few: number): number => Number(process.env['RECKONER_HOSTILE'] ?? few);
