import type { SyntaxNode } from '@lezer/common';
import { parser } from '@lezer/javascript';
import type { TextEdit } from './edit-call.js';
import { capitalised } from '../../../units/capitalised.js';

const typescript = parser.configure({ dialect: 'ts' });
const inner = new Set([
  'FunctionDeclaration',
  'FunctionExpression',
  'ArrowFunction',
  'MethodDeclaration',
  'Block',
]);

/** The edits that give a name of the notebook another one in a cell: by what is parsed, not by text, and not where an inner name hides it. */
export function renameIn(text: string, from: string, to: string): TextEdit[] {
  const edits: TextEdit[] = [];
  const visit = (node: SyntaxNode): void => {
    if (inner.has(node.name) && declares(node, text, from)) return;
    const source = node.firstChild === null ? text.slice(node.from, node.to) : '';
    if (source === from && (node.name === 'VariableName' || node.name === 'VariableDefinition'))
      edits.push({ from: node.from, to: node.to, insert: to });
    // `{ strips }` keeps the field's name and takes the new value.
    if (
      source === from &&
      node.name === 'PropertyDefinition' &&
      node.nextSibling === null &&
      node.parent?.name === 'Property'
    )
      edits.push({ from: node.to, to: node.to, insert: `: ${to}` });
    for (let child = node.firstChild; child !== null; child = child.nextSibling) visit(child);
  };
  visit(typescript.parse(text).topNode);
  return edits;
}

/** Whether a function or block has a parameter or variable of this name itself. */
function declares(node: SyntaxNode, text: string, name: string): boolean {
  for (let child = node.firstChild; child !== null; child = child.nextSibling) {
    if (child.name === 'VariableDefinition' && text.slice(child.from, child.to) === name) return true;
    if (declares(child, text, name)) return true;
  }
  return false;
}

const reserved = new Set(
  'await break case catch class const continue debugger default delete do else enum export extends false finally for function if implements import in instanceof interface let new null package private protected public return static super switch this throw true try typeof undefined var void while with yield shop'.split(
    ' ',
  ),
);

/** A name as code writes it: `hall top` becomes `hallTop`. */
export function asName(words: string): string {
  const parts = words
    .trim()
    .split(/[^\p{L}\p{N}_$]+/u)
    .filter((part) => part !== '');
  return parts.map((part, i) => (i === 0 ? part : capitalised(part))).join('');
}

/** Why a name cannot be taken, in words; undefined where it can. */
export function nameProblem(name: string, taken: ReadonlySet<string>): string | undefined {
  if (name === '') return 'A name needs at least one letter.';
  if (!/^[\p{L}_$]/u.test(name)) return `“${name}” begins with a figure. Begin with a letter.`;
  if (reserved.has(name)) return `“${name}” has a meaning of its own in the notebook. Choose another name.`;
  if (taken.has(name)) return `“${name}” is already used. Choose another name.`;
  return undefined;
}

/** `noun`, then `noun2`, `noun3`: the first that is free. */
export function freeName(noun: string, taken: ReadonlySet<string>): string {
  for (let i = 1; ; i += 1) {
    const name = i === 1 ? noun : `${noun}${i}`;
    if (nameProblem(name, taken) === undefined) return name;
  }
}
