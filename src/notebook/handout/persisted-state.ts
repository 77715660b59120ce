/** What a pupil wrote, kept in the browser. Where a browser keeps nothing (a private window), the page works all the same. */
export class PersistedState {
  readonly #key: string;
  #values: Record<string, unknown>;

  constructor(key: string) {
    this.#key = key;
    this.#values = {};
    try {
      const value: unknown = JSON.parse(localStorage.getItem(key) ?? '{}');
      if (typeof value === 'object' && value !== null && !Array.isArray(value))
        this.#values = value as Record<string, unknown>;
    } catch {
      this.#values = {};
    }
  }

  get(id: string): unknown {
    return Object.hasOwn(this.#values, id) ? this.#values[id] : undefined;
  }

  set(id: string, value: unknown): void {
    if (value === undefined) delete this.#values[id];
    else this.#values[id] = value;
    try {
      localStorage.setItem(this.#key, JSON.stringify(this.#values));
    } catch {
      // Full or forbidden: what is on the page stays on the page.
    }
  }

  clear(): void {
    this.#values = {};
    try {
      localStorage.removeItem(this.#key);
    } catch {
      // As above.
    }
  }
}
