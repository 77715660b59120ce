/** The values of a session's names. Every cell that uses a name holds the same binding, so all see its newest value. */

/** The value of one name in `v`. Reading a binding that is declared but not initialised throws, as with `let`. */
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
  get isInitialised(): boolean {
    return Object.hasOwn(this, 'v');
  }
}

export class BindingEnvironment {
  private readonly byName = new Map<string, Binding>();

  get(name: string): Binding {
    let binding = this.byName.get(name);
    if (!binding) this.byName.set(name, (binding = new Binding(name)));
    return binding;
  }

  /** The value of a name, or undefined if no cell has set one. */
  lookup(name: string): { value: unknown } | undefined {
    const binding = this.byName.get(name);
    return binding?.isInitialised ? { value: binding.v } : undefined;
  }

  /**
   * Declares a cell's names anew. The function returned is called after the cell: it restores the previous value of
   * names whose declaration did not run and reports which names were set.
   */
  declare(names: readonly { name: string; late: boolean }[]): () => Set<string> {
    const former = new Map<string, { value: unknown } | undefined>();
    for (const { name, late } of names) {
      former.set(name, this.lookup(name));
      const binding = this.get(name);
      if (late) Reflect.deleteProperty(binding, 'v');
      else binding.v = undefined;
    }
    return () => {
      const set = new Set<string>();
      for (const [name, before] of former) {
        const binding = this.get(name);
        if (binding.isInitialised) set.add(name);
        else if (before) binding.v = before.value;
      }
      return set;
    };
  }
}
