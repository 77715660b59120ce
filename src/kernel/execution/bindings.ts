/** The values of a session's names. Every cell that uses a name holds the same box, so all see its newest value. */

/** The value of one name in `v`. A box whose name is declared but not yet reached refuses to be read, as `let` does. */
export class Binding {
  readonly #name: string;
  declare v: unknown;
  constructor(name: string) {
    this.#name = name;
  }
  static {
    Object.defineProperty(Binding.prototype, 'v', {
      get(this: Binding) {
        throw new ReferenceError(`Cannot access '${this.#name}' before initialization`);
      },
      set(this: Binding, value: unknown) {
        Object.defineProperty(this, 'v', { value, writable: true, enumerable: true, configurable: true });
      },
    });
  }
  get holds(): boolean {
    return Object.hasOwn(this, 'v');
  }
}

export class BindingEnvironment {
  private readonly byName = new Map<string, Binding>();

  get(name: string): Binding {
    let box = this.byName.get(name);
    if (!box) this.byName.set(name, (box = new Binding(name)));
    return box;
  }

  /** The value of a name, or undefined if no cell has set one. */
  lookup(name: string): { value: unknown } | undefined {
    const box = this.byName.get(name);
    return box?.holds ? { value: box.v } : undefined;
  }

  /**
   * Makes room for a cell's new names and returns the way back: called after the cell, it gives a name that was never
   * reached its former value again and reports which names were set.
   */
  declare(names: readonly { name: string; late: boolean }[]): () => Set<string> {
    const former = new Map<string, { value: unknown } | undefined>();
    for (const { name, late } of names) {
      former.set(name, this.lookup(name));
      const box = this.get(name);
      if (late) delete (box as { v?: unknown }).v;
      else box.v = undefined;
    }
    return () => {
      const set = new Set<string>();
      for (const [name, before] of former) {
        const box = this.get(name);
        if (box.holds) set.add(name);
        else if (before) box.v = before.value;
      }
      return set;
    };
  }
}
