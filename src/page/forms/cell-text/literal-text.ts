/** TypeScript that stands for a reference or other code rather than for plain data. */
export class CodeText {
  constructor(readonly text: string) {}
}

const indentStep = '  ';

/** Plain data as TypeScript: short lists and objects on one line, long ones an item a line. */
export function literalText(value: unknown, indent = indentStep): string {
  if (value instanceof CodeText) return value.text;
  if (typeof value === 'string') return quoted(value);
  if (Array.isArray(value))
    return folded(
      value.map((item) => literalText(item, indent + indentStep)),
      ['[', ']'],
      indent,
    );
  if (typeof value === 'object' && value !== null)
    return folded(
      Object.entries(value)
        .filter(([, inner]) => inner !== undefined)
        .map(([key, inner]) => `${keyText(key)}: ${literalText(inner, indent + indentStep)}`),
      ['{ ', ' }'],
      indent,
    );
  return String(value);
}

export const keyText = (key: string): string => (/^[A-Za-z_$][\w$]*$/.test(key) ? key : quoted(key));

const quoted = (text: string): string =>
  `'${text.replace(/\\/g, '\\\\').replace(/'/g, "\\'").replace(/\n/g, '\\n').replace(/\r/g, '\\r')}'`;

function folded(items: readonly string[], [open, close]: readonly [string, string], indent: string): string {
  if (items.length === 0) return `${open}${close}`.replace(/\s/g, '');
  const flat = `${open}${items.join(', ')}${close}`;
  if (flat.length + indent.length < 92 && !flat.includes('\n')) return flat;
  const inner = items.map((item) => `${indent}${indentStep}${item},\n`).join('');
  return `${open.trim()}\n${inner}${indent}${close.trim()}`;
}
