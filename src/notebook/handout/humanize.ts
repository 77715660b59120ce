/** `endLoss` as people read it: end loss. */
export function humanizeName(name: string): string {
  return name.replace(/([a-z0-9])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);
}

/** What a person would write for a value: text, a number, a quantity as number and unit; undefined for anything larger. */
export function asText(value: unknown): string | undefined {
  if (typeof value === 'string') return value;
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  if (isRecord(value) && typeof value['value'] === 'number' && typeof value['unit'] === 'string')
    return `${value['value']} ${value['unit']}`.trim();
  return undefined;
}

/** Parts by name; a quantity as {value, unit} is one thing and not parts. */
export function isRecord(value: unknown): value is Record<string, unknown> {
  return (
    typeof value === 'object' &&
    value !== null &&
    !Array.isArray(value) &&
    !(typeof (value as { value?: unknown }).value === 'number' && 'unit' in value)
  );
}
