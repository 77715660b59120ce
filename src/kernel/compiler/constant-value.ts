/** The value of an expression that can be known without running anything: literals, and names that cells have set. */
import type TS from 'typescript';
import { dottedName, valueOf } from './cursor-context.js';
import type { SessionView } from './session-view.js';

/** Stands for a value that only a run could tell. */
export const unknownValue = Symbol('unknown');

/** The value of `node`, with {@link unknownValue} wherever it is not known. */
export function constantValue(session: SessionView, node: TS.Expression): unknown {
  const { ts } = session.program;
  if (ts.isStringLiteralLike(node)) return node.text;
  if (ts.isNumericLiteral(node)) return Number(node.text);
  if (ts.isParenthesizedExpression(node) || ts.isAsExpression(node) || ts.isSatisfiesExpression(node))
    return constantValue(session, node.expression);
  if (ts.isArrayLiteralExpression(node)) return node.elements.map((item) => constantValue(session, item));
  if (ts.isObjectLiteralExpression(node)) return constantObject(session, node);
  if (ts.isPrefixUnaryExpression(node)) return negated(session, node);
  if (node.kind === ts.SyntaxKind.TrueKeyword) return true;
  if (node.kind === ts.SyntaxKind.FalseKeyword) return false;
  const path = dottedName(ts, node);
  return (path && valueOf(session, path)) ?? unknownValue;
}

function constantObject(session: SessionView, node: TS.ObjectLiteralExpression): unknown {
  const { ts } = session.program;
  const value: Record<string, unknown> = {};
  for (const property of node.properties) {
    const { name } = property;
    if (!name || !(ts.isIdentifier(name) || ts.isStringLiteral(name))) return unknownValue;
    if (ts.isPropertyAssignment(property)) value[name.text] = constantValue(session, property.initializer);
    else if (ts.isShorthandPropertyAssignment(property))
      value[name.text] = constantValue(session, property.name);
    else value[name.text] = unknownValue;
  }
  return value;
}

function negated(session: SessionView, { operator, operand }: TS.PrefixUnaryExpression): unknown {
  const value = constantValue(session, operand);
  const { MinusToken } = session.program.ts.SyntaxKind;
  return operator === MinusToken && typeof value === 'number' ? -value : unknownValue;
}
