/** What is at a cursor in a cell: a string meant for a recipe's field, a name, a call. */
import type TS from 'typescript';
import type { SessionView } from './session-view.js';
import type { CellFile, Compiler } from './typescript-internals.js';

/** The innermost node around a position, names and tokens included. */
export function nodeAt(ts: Compiler, file: CellFile, position: number): TS.Node {
  const innerOf = (node: TS.Node): TS.Node | undefined =>
    ts.forEachChild(node, (child) => (child.pos <= position && position <= child.end ? child : undefined));
  let node: TS.Node = file;
  for (let inner = innerOf(node); inner; inner = innerOf(node)) node = inner;
  return node;
}

/** The dotted name of an expression, such as `beam.sag`; undefined for anything that would have to be run. */
export function dottedName(ts: Compiler, node: TS.Node): string[] | undefined {
  if (ts.isIdentifier(node)) return [node.text];
  if (!ts.isPropertyAccessExpression(node)) return undefined;
  const before = dottedName(ts, node.expression);
  return before && [...before, node.name.text];
}

/** The value a dotted name has now: a cell's own, else the package's. Getters are not run. */
export function valueOf(session: SessionView, [first, ...rest]: readonly string[]): unknown {
  return rest.reduce(propertyOf, first === undefined ? undefined : session.lookup(first));
}

function propertyOf(value: unknown, name: string): unknown {
  for (let holder = Object(value) === value ? (value as object) : null; holder;) {
    const descriptor = Object.getOwnPropertyDescriptor(holder, name);
    if (descriptor) return descriptor.value;
    holder = Object.getPrototypeOf(holder) as object | null;
  }
  return undefined;
}

/** A call and the fields of its first argument, an object literal, that lead to a node in it. */
export interface FieldPath {
  call: TS.CallExpression;
  fields: string[];
}

/** The call whose first argument holds this node in an object literal, and the names of the fields on the way in. */
export function fieldPath(ts: Compiler, node: TS.Node): FieldPath | undefined {
  const fields: string[] = [];
  for (let at = node; !ts.isSourceFile(at); at = at.parent) {
    if (ts.isPropertyAssignment(at) && (ts.isIdentifier(at.name) || ts.isStringLiteral(at.name)))
      fields.unshift(at.name.text);
    if (ts.isCallExpression(at) && fields.length > 0) return { call: at, fields };
    if (ts.isFunctionLike(at)) return undefined;
  }
  return undefined;
}
