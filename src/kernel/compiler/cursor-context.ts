/** Where in a cell a cursor stands: in a string meant for a recipe's field, on a name, in a call. */
import type TS from 'typescript';
import type { KernelSession } from '../session.js';
import type { CellFile } from './incremental-program.js';

type Compiler = KernelSession['program']['ts'];

/** The innermost node around a position, names and tokens included. */
export function nodeAt(ts: Compiler, file: CellFile, position: number): TS.Node {
  let node: TS.Node = file;
  for (;;) {
    const inner: TS.Node | undefined = ts.forEachChild(node, (child) =>
      child.pos <= position && position <= child.end ? child : undefined,
    );
    if (!inner) return node;
    node = inner;
  }
}

/** The dotted name of an expression, such as `beam.sag`; undefined for anything that would have to be run. */
export function dottedName(ts: Compiler, node: TS.Node): string[] | undefined {
  if (ts.isIdentifier(node)) return [node.text];
  if (!ts.isPropertyAccessExpression(node)) return undefined;
  const before = dottedName(ts, node.expression);
  return before && [...before, node.name.text];
}

/** The value a dotted name has now: a cell's own, else the package's. Getters are not run. */
export function valueOf(session: KernelSession, path: readonly string[]): unknown {
  const [first, ...rest] = path;
  const own = session.executor.bindings.lookup(first!);
  let value: unknown = own ? own.value : session.executor.loadedPackage?.[first!];
  for (const name of rest) {
    if (Object(value) !== value) return undefined;
    let holder: object | null = value as object;
    let descriptor: PropertyDescriptor | undefined;
    while (holder && !(descriptor = Object.getOwnPropertyDescriptor(holder, name)))
      holder = Object.getPrototypeOf(holder) as object | null;
    value = descriptor?.value as unknown;
  }
  return value;
}

/** The call whose first argument holds this node in an object literal, and the names of the fields on the way in. */
export function fieldPath(
  ts: Compiler,
  node: TS.Node,
): { call: TS.CallExpression; fields: string[] } | undefined {
  const fields: string[] = [];
  for (let at: TS.Node | undefined = node; at && !ts.isSourceFile(at); at = at.parent) {
    if (ts.isPropertyAssignment(at) && (ts.isIdentifier(at.name) || ts.isStringLiteral(at.name)))
      fields.unshift(at.name.text);
    if (ts.isCallExpression(at) && fields.length > 0) return { call: at, fields };
    if (ts.isFunctionLike(at)) return undefined;
  }
  return undefined;
}
