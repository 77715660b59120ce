/** What a name under the cursor is: its type and documentation, or the card of a recipe or of a recipe's field. */
import type TS from 'typescript';
import type { MimeBundle } from '../message.js';
import { textOf } from '../display/value-text.js';
import { isRecipe, recipeCard, type RecipeField } from '../display/recipe-card.js';
import { toUnits } from './cursor.js';
import { dottedName, fieldPath, nodeAt, valueOf } from './cursor-context.js';
import type { SessionView } from './session-view.js';
import type { CellFile, Compiler } from './typescript-internals.js';

/** `inDepth` adds a function's source. Undefined where nothing is known. */
export function inspectCell(
  session: SessionView,
  code: string,
  cursor: number,
  inDepth: boolean,
): MimeBundle | undefined {
  const program = session.language();
  const file = program.add(code);
  try {
    const node = nodeNear(program.ts, file, code, toUnits(code, cursor));
    return node && inspectNode(session, file, node, inDepth);
  } finally {
    program.drop(file);
  }
}

function inspectNode(
  session: SessionView,
  file: CellFile,
  node: TS.Node,
  inDepth: boolean,
): MimeBundle | undefined {
  const program = session.language();
  const { ts } = program;
  const isProperty = ts.isPropertyAccessExpression(node.parent) && node.parent.name === node;
  const path = dottedName(ts, isProperty ? node.parent : node);
  const value = path && valueOf(session, path);
  if (isRecipe(value)) return recipeCard(value);
  const declared = program.describe(file, node.getStart(file));
  const parts = [
    declared,
    describeField(session, node, declared),
    path && describeValue(value, inDepth),
  ].filter((part) => part !== undefined);
  const [type, ...rest] = parts;
  if (type === undefined) return undefined;
  return {
    'text/plain': parts.join('\n\n'),
    'text/markdown': [`\`\`\`typescript\n${type}\n\`\`\``, ...rest].join('\n\n'),
  };
}

function describeValue(value: unknown, inDepth: boolean): string | undefined {
  if (typeof value === 'function')
    return inDepth ? Function.prototype.toString.call(value).slice(0, 8000) : undefined;
  return value === undefined ? undefined : `value: ${textOf(value).slice(0, 2000)}`;
}

/**
 * The label, form and unit of a recipe's field, for the name of one in a call of the recipe; undefined where the comment
 * of its declaration says so already.
 */
function describeField(
  session: SessionView,
  node: TS.Node,
  declared: string | undefined,
): string | undefined {
  const { ts } = session.program;
  if (!ts.isPropertyAssignment(node.parent) || node.parent.name !== node) return undefined;
  const found = fieldPath(ts, node);
  const callee = found && dottedName(ts, found.call.expression);
  const recipe = callee && valueOf(session, callee);
  const [name, ...deeper] = found?.fields ?? [];
  if (name === undefined || deeper.length > 0 || !isRecipe(recipe)) return undefined;
  const field = recipe.inputs[name];
  if (field?.expects !== undefined && declared?.includes(field.expects)) return undefined;
  return fieldLines(field).join('\n') || undefined;
}

const fieldLines = ({ label, expects, unit }: RecipeField = {}): string[] => [
  ...(label ? [label] : []),
  ...(expects ? [`takes ${expects}`] : []),
  ...(unit ? [`unit ${unit}`] : []),
];

/** The name at the cursor or just before it; inside a call's brackets, the name of what is called. */
function nodeNear(ts: Compiler, file: CellFile, code: string, position: number): TS.Node | undefined {
  for (const at of [position, position - 1]) {
    if (at < 0 || !/[\p{ID_Continue}$]/u.test(code[at] ?? '')) continue;
    const node = nodeAt(ts, file, at);
    const named = ts.isIdentifier(node) ? node : nodeAt(ts, file, at + 1);
    if (ts.isIdentifier(named)) return named;
  }
  for (let node = nodeAt(ts, file, position); !ts.isSourceFile(node); node = node.parent) {
    if (!ts.isCallExpression(node) && !ts.isNewExpression(node)) continue;
    const callee = node.expression;
    return ts.isPropertyAccessExpression(callee) ? callee.name : callee;
  }
  const callee = /([\p{ID_Continue}$.]+)\s*\($/u.exec(code.slice(0, position));
  return callee ? nodeAt(ts, file, callee.index + (callee[1]?.length ?? 0)) : undefined;
}
