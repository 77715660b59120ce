/** A JSON Schema: plain data. */
export type JsonSchema = { readonly [key: string]: unknown };
