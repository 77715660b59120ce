/**
 * A function made of JavaScript text at run time; undefined where that is forbidden, as the policy of a page may have it.
 * @throws SyntaxError on text that is no JavaScript, a fault of whoever wrote it
 */
export function compileFunction<F>(parameters: readonly string[], body: string): F | undefined {
  try {
    return new Function(...parameters, body) as F;
  } catch (error) {
    if (error instanceof EvalError) return undefined;
    throw error;
  }
}
