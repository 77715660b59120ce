/** What a name under the cursor is: its type and its documentation, or the whole card of a recipe or of a recipe's field. */
import { isRecipe, recipeCard } from '../hints.ts';
import type { MimeBundle } from '../message.ts';
import type { KernelSession } from '../session.ts';
import { textOf } from '../showing/bundle.ts';
import { printQuickInfo } from '../tslab.ts';
import { toUnits } from './cursor.ts';
import { dottedName, fieldPath, nodeAt, valueOf } from './place.ts';
import type { CellFile } from './room.ts';

export function inspectCell(session: KernelSession, code: string, cursor: number, inDepth: boolean): MimeBundle | undefined {
  const { room } = session;
  room.loadWholePackage();
  const file = room.add(code);
  try {
    return inspect(session, file, code, toUnits(code, cursor), inDepth);
  } finally {
    room.drop(file);
  }
}

function inspect(session: KernelSession, file: CellFile, code: string, position: number, inDepth: boolean): MimeBundle | undefined {
  const { ts } = session.room;
  const node = nodeNear(session, file, code, position);
  if (!node) return undefined;
  const field = fieldPath(ts, node);
  const path = dottedName(ts, ts.isPropertyAccessExpression(node.parent) && node.parent.name === node ? node.parent : node);
  const value = path && valueOf(session, path);
  if (isRecipe(value)) return recipeCard(value);

  // The compiler tells `any` of a name that nobody has declared.
  const known = session.room.checker.getSymbolAtLocation(node) !== undefined;
  const info = known ? session.room.quickInfo(file, node.getStart(file)) : undefined;
  const parts: string[] = [];
  if (info) parts.push(printQuickInfo(info));
  if (field && ts.isPropertyAssignment(node.parent) && node.parent.name === node) {
    const callee = dottedName(ts, field.call.expression);
    const recipe = callee && valueOf(session, callee);
    const told = isRecipe(recipe) ? recipe.inputs[field.fields[0]!] : undefined;
    if (told && field.fields.length === 1) parts.push([told.says, told.takes && `takes ${told.takes}`, told.unit && `unit ${told.unit}`].filter(Boolean).join('\n'));
  }
  if (path && value !== undefined && typeof value !== 'function') parts.push(`value: ${textOf(value).slice(0, 2000)}`);
  if (inDepth && typeof value === 'function') parts.push(Function.prototype.toString.call(value).slice(0, 8000));
  if (parts.length === 0) return undefined;
  const [type, ...rest] = parts;
  return { 'text/plain': parts.join('\n\n'), 'text/markdown': [`\`\`\`typescript\n${type}\n\`\`\``, ...rest].join('\n\n') };
}

/** The name at the cursor or just before it; inside a call's brackets, the name of what is called. */
function nodeNear(session: KernelSession, file: CellFile, code: string, position: number): import('typescript').Node | undefined {
  const { ts } = session.room;
  for (const at of [position, position - 1]) {
    if (at < 0 || !/[\p{ID_Continue}$]/u.test(code[at] ?? '')) continue;
    const node = nodeAt(ts, file, at);
    const named = ts.isIdentifier(node) ? node : nodeAt(ts, file, at + 1);
    if (ts.isIdentifier(named)) return named;
  }
  for (let node: import('typescript').Node | undefined = nodeAt(ts, file, position); node && !ts.isSourceFile(node); node = node.parent) {
    if (!ts.isCallExpression(node) && !ts.isNewExpression(node)) continue;
    const callee = node.expression;
    return ts.isPropertyAccessExpression(callee) ? callee.name : callee;
  }
  const callee = /([\p{ID_Continue}$.]+)\s*\($/u.exec(code.slice(0, position));
  return callee ? nodeAt(ts, file, callee.index + callee[1]!.length) : undefined;
}
