/** Values as text. */

/** Prints a value; the options are those of Node's `util.inspect`. */
export type Inspect = (
  value: unknown,
  options?: {
    depth?: number;
    maxArrayLength?: number;
    maxStringLength?: number;
    breakLength?: number;
    compact?: number;
  },
) => string;

let inspect: Inspect = String;

/** Sets how values are printed from now on: the platform's own way. */
export function setInspect(platform: Inspect): void {
  inspect = platform;
}

/** A value inside a table, on one line as far as it fits. */
export const shortText = (value: unknown): string => inspect(value);

/** A value as text, as Node's own prompt shows it; a value whose printing fails still shows what it is. */
export function textOf(value: unknown): string {
  try {
    return inspect(value, {
      depth: 4,
      maxArrayLength: 100,
      maxStringLength: 20_000,
      breakLength: 100,
      compact: 3,
    });
  } catch (error) {
    const kind = Object.prototype.toString.call(value).slice(8, -1);
    return `[${kind}: cannot be printed: ${messageOf(error)}]`;
  }
}

/** What a thrown value says. */
export function messageOf(error: unknown): string {
  const message = Object(error) === error ? (error as { message?: unknown }).message : undefined;
  return typeof message === 'string' ? message : String(error);
}
