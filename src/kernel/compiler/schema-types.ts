/**
 * The types of `recipe.schema` while no cell uses it. Zod's own declarations are two fifths of what a first cell would load, for
 * one member that few notebooks touch; they take this one's place once a cell mentions a schema or imports zod.
 */
export const schemaModule = 'zod/mini';

export const schemaTypes = `
export interface ZodMiniType<Output = unknown, Input = unknown> {
  readonly _zod: { readonly output: Output; readonly input: Input };
  parse(value: unknown): Output;
}
`;

/** Whether a cell may need the real ones; the `$schema` of a chart does not. */
export const mentionsSchemas = (text: string): boolean => /(?<![$/])\bschema\b(?!\/)|\bzod\b/i.test(text);
