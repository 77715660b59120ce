import type { SyntaxNode } from '@lezer/common';
import type { Argument } from '../model/argument.js';

/** An argument with its place in the text of a cell, and those of its parts. */
export interface Located {
  readonly argument: Argument;
  readonly from: number;
  readonly to: number;
  /** Items of a list, or values of an object by key. */
  readonly parts: ReadonlyMap<string, Located>;
}

const none: ReadonlyMap<string, Located> = new Map();

/** Reads a value of a cell: plain data, a reference such as `strips.spare`, or code. */
export function readArgument(node: SyntaxNode, text: string): Located {
  const place = { from: node.from, to: node.to };
  const source = text.slice(node.from, node.to);
  const code: Located = { ...place, argument: { type: 'code', text: source }, parts: none };
  switch (node.name) {
    case 'String':
    case 'TemplateString':
    case 'Number':
    case 'BooleanLiteral':
    case 'UnaryExpression': {
      const value = literalValue(node, source);
      return value === undefined ? code : { ...place, argument: { type: 'value', value }, parts: none };
    }
    case 'ArrayExpression':
      return readList(node, text) ?? code;
    case 'ObjectExpression':
      return readObject(node, text) ?? code;
    case 'VariableName':
    case 'MemberExpression': {
      const found = readPath(node, text);
      return found === undefined
        ? code
        : { ...place, argument: { type: 'reference', ...found }, parts: none };
    }
    default:
      return code;
  }
}

function literalValue(node: SyntaxNode, source: string): string | number | boolean | undefined {
  if (node.name === 'BooleanLiteral') return source === 'true';
  if (node.name === 'Number' || node.name === 'UnaryExpression') {
    const number = Number(source.replace(/_/g, ''));
    return Number.isFinite(number) ? number : undefined;
  }
  if (node.name === 'TemplateString' && node.getChild('Interpolation') !== null) return undefined;
  return unquoted(source);
}

const escapes: Readonly<Record<string, string>> = {
  n: '\n',
  t: '\t',
  r: '\r',
  b: '\b',
  f: '\f',
  v: '\v',
  '0': '\0',
};

function unquoted(source: string): string {
  return source
    .slice(1, -1)
    .replace(/\\(u\{[0-9a-f]+\}|u[0-9a-f]{4}|x[0-9a-f]{2}|\r?\n|[\s\S])/gi, (_, escape: string) => {
      const code = /^[ux]\{?([0-9a-f]{2,})\}?$/i.exec(escape)?.[1];
      if (code !== undefined) return String.fromCodePoint(Number.parseInt(code, 16));
      return /^\r?\n$/.test(escape) ? '' : (escapes[escape] ?? escape);
    });
}

function readList(node: SyntaxNode, text: string): Located | undefined {
  const items = children(node).map((child) => readArgument(child, text));
  if (children(node).some(({ name }) => name === 'Spread')) return undefined;
  return {
    from: node.from,
    to: node.to,
    argument: { type: 'list', items: items.map(({ argument }) => argument) },
    parts: new Map(items.map((item, i) => [String(i), item])),
  };
}

function readObject(node: SyntaxNode, text: string): Located | undefined {
  const parts = new Map<string, Located>();
  for (const property of node.getChildren('Property')) {
    const key = keyOf(property, text);
    const value = valueNode(property);
    if (key === undefined || value === undefined) return undefined;
    parts.set(key, readArgument(value, text));
  }
  return {
    from: node.from,
    to: node.to,
    argument: { type: 'object', entries: [...parts].map(([key, { argument }]) => [key, argument] as const) },
    parts,
  };
}

/** The name before the colon; undefined for a spread, a method or a computed name. */
export function keyOf(property: SyntaxNode, text: string): string | undefined {
  const first = property.firstChild;
  if (first === null) return undefined;
  const source = text.slice(first.from, first.to);
  if (first.name === 'PropertyDefinition') return source;
  if (first.name === 'Number') return source;
  return first.name === 'String' ? unquoted(source) : undefined;
}

/** What stands after the colon; undefined where nothing does. */
export function valueNode(property: SyntaxNode): SyntaxNode | undefined {
  const colon = property.getChild(':');
  const last = property.lastChild;
  return colon === null || last === null || last.from < colon.to || last.name === '⚠' ? undefined : last;
}

/** `strips.slabs[0].width` as a name and a path; `shop().kerf` has the name `shop()`. */
function readPath(
  node: SyntaxNode,
  text: string,
): { name: string; path: readonly (string | number)[] } | undefined {
  const source = text.slice(node.from, node.to);
  if (node.name === 'VariableName') return { name: source, path: [] };
  if (node.name === 'CallExpression' && /^shop\s*\(\s*\)$/.test(source)) return { name: 'shop()', path: [] };
  if (node.name !== 'MemberExpression') return undefined;
  const [object, , step] = children(node, true);
  if (object === undefined || step === undefined) return undefined;
  const inner = readPath(object, text);
  if (inner === undefined) return undefined;
  const name = text.slice(step.from, step.to);
  if (step.name === 'PropertyName') return { name: inner.name, path: [...inner.path, name] };
  if (step.name === 'Number') return { name: inner.name, path: [...inner.path, Number(name)] };
  return step.name === 'String' ? { name: inner.name, path: [...inner.path, unquoted(name)] } : undefined;
}

/** Children without brackets, commas and comments; `all` keeps the signs. */
export function children(node: SyntaxNode, all = false): SyntaxNode[] {
  const found: SyntaxNode[] = [];
  for (let child = node.firstChild; child !== null; child = child.nextSibling)
    if (!/Comment$/.test(child.name) && (all || /^\w/.test(child.name))) found.push(child);
  return found;
}
