/** What a name under the cursor is: its type and its documentation, or the whole card of a recipe or of a recipe's field. */
import { isRecipe, recipeCard } from './field-completions.js';
import type { MimeBundle } from '../message.js';
import type { KernelSession } from '../session.js';
import { textOf } from '../display/mime-bundle.js';
import { printQuickInfo } from './tslab.js';
import { toUnits } from './cursor.js';
import { dottedName, fieldPath, nodeAt, valueOf } from './cursor-context.js';
import type { CellFile } from './incremental-program.js';

export function inspectCell(
  session: KernelSession,
  code: string,
  cursor: number,
  inDepth: boolean,
): MimeBundle | undefined {
  const { program: room } = session;
  room.loadWholePackage();
  const file = room.add(code);
  try {
    return inspect(session, file, code, toUnits(code, cursor), inDepth);
  } finally {
    room.drop(file);
  }
}

function inspect(
  session: KernelSession,
  file: CellFile,
  code: string,
  position: number,
  inDepth: boolean,
): MimeBundle | undefined {
  const { ts } = session.program;
  const node = nodeNear(session, file, code, position);
  if (!node) return undefined;
  const field = fieldPath(ts, node);
  const path = dottedName(
    ts,
    ts.isPropertyAccessExpression(node.parent) && node.parent.name === node ? node.parent : node,
  );
  const value = path && valueOf(session, path);
  if (isRecipe(value)) return recipeCard(value);

  // The compiler tells `any` of a name that nobody has declared.
  const known = session.program.checker.getSymbolAtLocation(node) !== undefined;
  const info = known ? session.program.quickInfo(file, node.getStart(file)) : undefined;
  const parts: string[] = [];
  if (info) parts.push(printQuickInfo(info));
  if (field && ts.isPropertyAssignment(node.parent) && node.parent.name === node) {
    const callee = dottedName(ts, field.call.expression);
    const recipe = callee && valueOf(session, callee);
    const told = isRecipe(recipe) ? recipe.inputs[field.fields[0]!] : undefined;
    if (told && field.fields.length === 1)
      parts.push(
        [told.label, told.expects && `takes ${told.expects}`, told.unit && `unit ${told.unit}`]
          .filter(Boolean)
          .join('\n'),
      );
  }
  if (path && value !== undefined && typeof value !== 'function')
    parts.push(`value: ${textOf(value).slice(0, 2000)}`);
  if (inDepth && typeof value === 'function')
    parts.push(Function.prototype.toString.call(value).slice(0, 8000));
  if (parts.length === 0) return undefined;
  const [type, ...rest] = parts;
  return {
    'text/plain': parts.join('\n\n'),
    'text/markdown': [`\`\`\`typescript\n${type}\n\`\`\``, ...rest].join('\n\n'),
  };
}

/** The name at the cursor or just before it; inside a call's brackets, the name of what is called. */
function nodeNear(
  session: KernelSession,
  file: CellFile,
  code: string,
  position: number,
): import('typescript').Node | undefined {
  const { ts } = session.program;
  for (const at of [position, position - 1]) {
    if (at < 0 || !/[\p{ID_Continue}$]/u.test(code[at] ?? '')) continue;
    const node = nodeAt(ts, file, at);
    const named = ts.isIdentifier(node) ? node : nodeAt(ts, file, at + 1);
    if (ts.isIdentifier(named)) return named;
  }
  for (
    let node: import('typescript').Node | undefined = nodeAt(ts, file, position);
    node && !ts.isSourceFile(node);
    node = node.parent
  ) {
    if (!ts.isCallExpression(node) && !ts.isNewExpression(node)) continue;
    const callee = node.expression;
    return ts.isPropertyAccessExpression(callee) ? callee.name : callee;
  }
  const callee = /([\p{ID_Continue}$.]+)\s*\($/u.exec(code.slice(0, position));
  return callee ? nodeAt(ts, file, callee.index + callee[1]!.length) : undefined;
}
