/** What stands for a field in a cell: a plain value, a list or object of such, a result of another cell, or other code. */
export type Argument =
  | { readonly type: 'value'; readonly value: string | number | boolean | null }
  | { readonly type: 'list'; readonly items: readonly Argument[] }
  | { readonly type: 'object'; readonly entries: readonly (readonly [string, Argument])[] }
  | { readonly type: 'reference'; readonly name: string; readonly path: readonly (string | number)[] }
  | { readonly type: 'code'; readonly text: string };

/** A call of a recipe with what is given for its fields. */
export interface Call {
  readonly recipe: string;
  readonly given: Readonly<Record<string, Argument>>;
}

/** What a name in a notebook stands for. */
export type Binding = { readonly call: Call } | { readonly value: Argument };
/** Names of a notebook. */
export type Scope = Readonly<Record<string, Binding>>;

/** The argument as plain data, where no part of it is a reference or code. */
export function plainValue(argument: Argument): unknown {
  if (argument.type === 'value') return argument.value;
  if (argument.type === 'list') return argument.items.map(plainValue);
  if (argument.type === 'object')
    return Object.fromEntries(argument.entries.map(([key, inner]) => [key, plainValue(inner)]));
  return undefined;
}

/** Plain data as an argument. */
export function argumentOf(value: unknown): Argument {
  if (Array.isArray(value)) return { type: 'list', items: value.map(argumentOf) };
  if (typeof value === 'object' && value !== null)
    return {
      type: 'object',
      entries: Object.entries(value)
        .filter(([, inner]) => inner !== undefined)
        .map(([key, inner]) => [key, argumentOf(inner)] as const),
    };
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean')
    return { type: 'value', value };
  return { type: 'value', value: null };
}

/** True where the argument holds no reference and no code. */
export function isPlainArgument(argument: Argument): boolean {
  if (argument.type === 'list') return argument.items.every(isPlainArgument);
  if (argument.type === 'object') return argument.entries.every(([, inner]) => isPlainArgument(inner));
  return argument.type === 'value';
}
