import { dimensionOf, dimensionText } from '../units/dimensions.js';
import { kinds, type Kind } from '../units/kind.js';
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
 * @throws Error naming a letter without a value or of another dimension than its value, an output that no formula gives or
 * that gives it another dimension, or a formula that no output needs
 */
export function checkChain(chain: Chain): void {
  const known = new Map(
    Object.values(chain.inputs).flatMap((f) => (f.symbol === undefined ? [] : [[f.symbol, f.kind] as const])),
  );
  for (const f of chain.steps) {
    for (const [s, letter] of Object.entries(f.variables)) {
      const kind = known.get(s);
      if (kind === undefined) throw new Error(`${chain.name}: the letter ${s} has no value yet`);
      assertAlike(`${chain.name}: the letter ${s} of ${f.symbol} = ${f.expression}`, letter.kind, kind);
    }
    known.set(f.symbol, f.result.kind);
  }
  const needed = new Set<string>();
  for (const [name, o] of Object.entries(chain.outputs)) {
    const kind = o.symbol === undefined ? undefined : known.get(o.symbol);
    if (o.symbol === undefined || kind === undefined)
      throw new Error(`${chain.name}: the output ${name} takes the symbol of an input or of a formula`);
    assertAlike(`${chain.name}: the output ${name}`, o.kind, kind);
    needed.add(o.symbol);
  }
  // From the last to the first: a formula is needed by an output or by a later formula that is.
  for (const f of chain.steps.toReversed()) {
    if (!needed.has(f.symbol))
      throw new Error(`${chain.name}: no output needs the formula ${f.symbol} = ${f.expression}`);
    for (const s of Object.keys(f.variables)) needed.add(s);
  }
}

const isKind = (kind: string): kind is Kind => Object.hasOwn(kinds, kind);

/** @throws Error where two kinds measure different things; other sorts of fields are numbers that only the recipe knows */
function assertAlike(what: string, kind: string, given: string): void {
  if (!isKind(kind) || !isKind(given)) return;
  const [own, other] = [dimensionText(dimensionOf(kind)), dimensionText(dimensionOf(given))];
  if (own !== other) throw new Error(`${what} is ${kinds[kind].called}, its value is ${kinds[given].called}`);
}
