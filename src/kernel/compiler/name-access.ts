/** Whether a name in a cell is read, written or both where it stands. */
import type TS from 'typescript';
import type { Compiler } from './typescript-internals.js';

export interface NameAccess {
  reads: boolean;
  writes: boolean;
}

const read: NameAccess = { reads: true, writes: false };
const write: NameAccess = { reads: false, writes: true };
const readWrite: NameAccess = { reads: true, writes: true };

/** How an expression is used by the node around it: `a` in `a = 1` is written, in `a++` both, else read. */
export function accessOf(ts: Compiler, node: TS.Node): NameAccess {
  const { parent } = node;
  if (ts.isPrefixUnaryExpression(parent) || ts.isPostfixUnaryExpression(parent)) {
    const { PlusPlusToken, MinusMinusToken } = ts.SyntaxKind;
    return parent.operator === PlusPlusToken || parent.operator === MinusMinusToken ? readWrite : read;
  }
  if (ts.isBinaryExpression(parent)) return parent.left === node ? assignmentAccess(ts, parent) : read;
  if (ts.isForInStatement(parent) || ts.isForOfStatement(parent))
    return parent.initializer === node ? write : read;
  return isTransparent(ts, node) ? accessOf(ts, parent) : read;
}

function assignmentAccess(ts: Compiler, { operatorToken: { kind } }: TS.BinaryExpression): NameAccess {
  if (kind === ts.SyntaxKind.EqualsToken) return write;
  return kind >= ts.SyntaxKind.FirstAssignment && kind <= ts.SyntaxKind.LastAssignment ? readWrite : read;
}

/** Whether a node is a part of its parent that is assigned to when the parent is: brackets, patterns, `!`. */
function isTransparent(ts: Compiler, node: TS.Node): boolean {
  const { parent } = node;
  if (ts.isPropertyAssignment(parent)) return parent.initializer === node;
  if (ts.isShorthandPropertyAssignment(parent)) return parent.name === node;
  return (
    ts.isSpreadAssignment(parent) ||
    ts.isSpreadElement(parent) ||
    ts.isArrayLiteralExpression(parent) ||
    ts.isObjectLiteralExpression(parent) ||
    ts.isParenthesizedExpression(parent) ||
    ts.isNonNullExpression(parent)
  );
}
