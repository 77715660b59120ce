import type { Fields } from './field.js';
import type { Formula } from './formula.js';
import type { Outputs } from './output.js';

/** What a chain of formulas takes and gives. */
export interface Chain {
  readonly name: string;
  readonly inputs: Fields;
  readonly outputs: Outputs;
  readonly steps: readonly Formula[];
}

/**
 * Goes along the formulas: each takes the letters of inputs and of earlier formulas, and each output is one of the
 * letters. `apply` evaluates one formula, on numbers or on nodes of a loop.
 */
export function evaluateChain<N>(
  chain: Chain,
  given: Readonly<Record<string, unknown>>,
  apply: (f: Formula, args: Readonly<Record<string, N>>) => N,
): Readonly<Record<string, N | undefined>> {
  const values: Record<string, N> = {};
  for (const [name, f] of Object.entries(chain.inputs)) if (f.symbol) values[f.symbol] = given[name] as N;
  for (const f of chain.steps)
    values[f.symbol] = apply(f, Object.fromEntries(Object.keys(f.variables).map((s) => [s, values[s] as N])));
  return Object.fromEntries(
    Object.entries(chain.outputs).map(([name, o]) => [name, values[o.symbol as string]]),
  );
}

/**
 * Checks that the chain holds together, when the recipe is defined.
 * @throws Error naming a letter without a value, an output that no formula gives, or a formula that no output needs
 */
export function checkChain(chain: Chain): void {
  const known = new Set(Object.values(chain.inputs).flatMap((f) => f.symbol ?? []));
  for (const f of chain.steps) {
    const missing = Object.keys(f.variables).find((s) => !known.has(s));
    if (missing !== undefined) throw new Error(`${chain.name}: the letter ${missing} has no value yet`);
    known.add(f.symbol);
  }
  const needed = new Set<string>();
  for (const [name, o] of Object.entries(chain.outputs)) {
    if (o.symbol === undefined || !known.has(o.symbol))
      throw new Error(`${chain.name}: the output ${name} takes the symbol of an input or of a formula`);
    needed.add(o.symbol);
  }
  // From the last to the first: a formula is needed by an output or by a later formula that is.
  for (const f of chain.steps.toReversed()) {
    if (!needed.has(f.symbol))
      throw new Error(`${chain.name}: no output needs the formula ${f.symbol} = ${f.expression}`);
    for (const s of Object.keys(f.variables)) needed.add(s);
  }
}
