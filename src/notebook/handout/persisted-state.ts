/** What a pupil wrote, kept in the browser. Where a browser keeps nothing (a private window), the page works all the same. */
export class PersistedState {
  readonly #key: string;
  #values: Readonly<Record<string, unknown>>;

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
    const { [id]: _former, ...others } = this.#values;
    this.#values = value === undefined ? others : { ...others, [id]: value };
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
