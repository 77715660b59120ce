/** A function compiled at run time; its caller knows the types of its parameters and result. */
export type CompiledFunction = (...args: never[]) => unknown;

/**
 * A function compiled from JavaScript text; undefined where that is forbidden, as the policy of a page may have it.
 * @throws SyntaxError on text that is not JavaScript, a fault of whoever wrote it
 */
export function compileFunction(parameters: readonly string[], body: string): CompiledFunction | undefined {
  try {
    // eslint-disable-next-line @typescript-eslint/no-implied-eval -- the one place that compiles formulas
    return new Function(...parameters, body) as CompiledFunction;
  } catch (error) {
    if (error instanceof EvalError) return undefined;
    throw error;
  }
}
