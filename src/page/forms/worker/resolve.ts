import type { AnyRecipe } from '../../../engine/any-recipe.js';
import type { Argument, Call, Scope } from '../model/argument.js';

/** Raised where a value is only known once the kernel has run the notebook. */
export class CodeOnly extends Error {}

/** Turns what is written for fields into values: references are followed through the calls of the notebook. */
export class Resolver {
  readonly #results = new Map<string, unknown>();
  readonly #open = new Set<string>();

  constructor(
    private readonly recipes: ReadonlyMap<string, AnyRecipe>,
    private readonly scope: Scope,
    private readonly shop: unknown,
  ) {}

  /** @throws CodeOnly where the argument is code or rests on code; InputError where a recipe it rests on refuses its inputs */
  async value(argument: Argument): Promise<unknown> {
    switch (argument.type) {
      case 'value':
        return argument.value;
      case 'list':
        return Promise.all(argument.items.map((item) => this.value(item)));
      case 'object':
        return Object.fromEntries(
          await Promise.all(
            argument.entries.map(async ([key, inner]) => [key, await this.value(inner)] as const),
          ),
        );
      case 'reference':
        return this.#reference(argument.name, argument.path);
      case 'code':
        throw new CodeOnly(argument.text);
    }
  }

  async #reference(name: string, path: readonly (string | number)[]): Promise<unknown> {
    let value = name === 'shop()' ? this.shop : await this.#named(name);
    for (const step of path) {
      if (typeof value !== 'object' || value === null) throw new CodeOnly(name);
      value = (value as Record<string | number, unknown>)[step];
    }
    if (value === undefined) throw new CodeOnly(name);
    return value;
  }

  async #named(name: string): Promise<unknown> {
    if (this.#results.has(name)) return this.#results.get(name);
    const binding = Object.hasOwn(this.scope, name) ? this.scope[name] : undefined;
    if (binding === undefined || this.#open.has(name)) throw new CodeOnly(name);
    this.#open.add(name);
    const value = 'value' in binding ? await this.value(binding.value) : await this.#result(binding.call);
    this.#open.delete(name);
    this.#results.set(name, value);
    return value;
  }

  async #result({ recipe, given }: Call): Promise<unknown> {
    const found = this.recipes.get(recipe);
    if (found === undefined || found.isAsync) throw new CodeOnly(recipe);
    const inputs: Record<string, unknown> = {};
    for (const [name, argument] of Object.entries(given)) inputs[name] = await this.value(argument);
    return found(inputs);
  }
}
