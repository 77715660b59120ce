import type { SyntaxNode, Tree } from '@lezer/common';
import { parser } from '@lezer/javascript';
import type { Argument, Call, Scope, Binding } from '../model/argument.js';
import { children, keyOf, readArgument, valueNode, type Located } from './located.js';

const typescript = parser.configure({ dialect: 'ts' });

/** One property of a call's object. */
export interface Property {
  /** Undefined for a spread or a name that is computed. */
  readonly key: string | undefined;
  readonly from: number;
  readonly to: number;
  /** Undefined for a spread. `{ width }` refers to `width`. */
  readonly value: Located | undefined;
  readonly isShorthand: boolean;
}

/** A call of a recipe in a cell. */
export interface CellCall {
  readonly recipe: string;
  /** Name given to the result; undefined where it has none. */
  readonly name: string | undefined;
  readonly nameFrom: number;
  readonly from: number;
  readonly to: number;
  /** Where the braces are; undefined in a call with nothing between its brackets. */
  readonly object: { readonly from: number; readonly to: number } | undefined;
  /** Where the bracket after the recipe's name opens. */
  readonly bracket: number;
  readonly properties: readonly Property[];
  /** True where a spread or a computed name hides what some fields are. */
  readonly isPartlyCode: boolean;
}

/** A cell as the forms see it. */
export interface CellText {
  readonly text: string;
  readonly calls: readonly CellCall[];
  /** Names that stand for plain values in this cell. */
  readonly constants: readonly (readonly [string, Argument])[];
  /** Every name that the cell declares. */
  readonly names: readonly string[];
  /** True where the text cannot be read as TypeScript. */
  readonly isBroken: boolean;
  /** True where the cell is calls of recipes and nothing else. */
  readonly isCallsOnly: boolean;
}

export function readCell(text: string, recipes: { has(name: string): boolean }): CellText {
  const tree = typescript.parse(text);
  const statements = children(tree.topNode)
    .filter(({ name }) => name !== 'ImportDeclaration')
    .map((node) => readStatement(node, text, recipes));
  const calls = statements.flatMap(({ call }) => call ?? []);
  const isBroken = hasError(tree);
  const others = statements.filter(
    ({ call, value }) => call === undefined && !isShownName(value, text, calls),
  );
  return {
    text,
    calls,
    constants: statements.flatMap(({ constant }) => (constant === undefined ? [] : [constant])),
    names: statements.flatMap(({ declared }) => declared?.name ?? []),
    isBroken,
    isCallsOnly: others.length === 0 && calls.length > 0 && !isBroken,
  };
}

interface Statement {
  readonly declared: { readonly name: string } | undefined;
  readonly value: SyntaxNode | undefined;
  readonly call: CellCall | undefined;
  readonly constant: readonly [string, Argument] | undefined;
}

function readStatement(node: SyntaxNode, text: string, recipes: { has(name: string): boolean }): Statement {
  const { declared, value, isConstant } = partsOf(node, text);
  const found = value === undefined ? undefined : callOf(value, text, recipes);
  const call = found && { ...found, name: declared?.name, nameFrom: declared?.from ?? node.from };
  const constant =
    found === undefined && isConstant && declared !== undefined && value !== undefined
      ? constantOf(declared.name, value, text)
      : undefined;
  return { declared, value, call, constant };
}

function constantOf(name: string, value: SyntaxNode, text: string): readonly [string, Argument] | undefined {
  const { argument } = readArgument(value, text);
  return argument.type === 'code' ? undefined : [name, argument];
}

/** A line that only shows a result of the cell, such as `strips;`. */
const isShownName = (value: SyntaxNode | undefined, text: string, calls: readonly CellCall[]): boolean =>
  value?.name === 'VariableName' && calls.some(({ name }) => name === text.slice(value.from, value.to));

function hasError(tree: Tree): boolean {
  let found = false;
  tree.iterate({
    enter: ({ type }) => {
      if (type.isError) found = true;
    },
  });
  return found;
}

interface StatementParts {
  readonly declared?: { readonly name: string; readonly from: number } | undefined;
  readonly value?: SyntaxNode | undefined;
  readonly isConstant: boolean;
}

/** Name and value of `const name = value` or of a lone `value`, without its `await`. */
function partsOf(statement: SyntaxNode, text: string): StatementParts {
  if (statement.name === 'ExpressionStatement') {
    const [value] = children(statement);
    return { value: withoutAwait(value), isConstant: false };
  }
  if (statement.name !== 'VariableDeclaration') return { isConstant: false };
  const names = statement.getChildren('VariableDefinition');
  const name = names[0];
  const equals = statement.getChild('Equals');
  if (name === undefined || equals === null || names.length !== 1) return { isConstant: false };
  const value = children(statement).find((node) => node.from >= equals.to);
  return {
    declared: { name: text.slice(name.from, name.to), from: name.from },
    value: withoutAwait(value),
    isConstant: statement.getChild('const') !== null,
  };
}

const withoutAwait = (node: SyntaxNode | undefined): SyntaxNode | undefined =>
  node?.name === 'AwaitExpression' ? children(node).find(({ name }) => name !== 'await') : node;

type FoundCall = Omit<CellCall, 'name' | 'nameFrom'>;

function callOf(
  node: SyntaxNode,
  text: string,
  recipes: { has(name: string): boolean },
): FoundCall | undefined {
  if (node.name !== 'CallExpression') return undefined;
  const callee = node.getChild('VariableName');
  const list = node.getChild('ArgList');
  if (callee === null || list === null) return undefined;
  const recipe = text.slice(callee.from, callee.to);
  if (!recipes.has(recipe)) return undefined;
  const given = children(list);
  const object = given[0];
  if (given.length > 1 || (object !== undefined && object.name !== 'ObjectExpression')) return undefined;
  const properties =
    object === undefined ? [] : object.getChildren('Property').map((p) => propertyOf(p, text));
  return {
    recipe,
    from: node.from,
    to: node.to,
    object: object === undefined ? undefined : { from: object.from, to: object.to },
    bracket: list.from + 1,
    properties,
    isPartlyCode: properties.some(({ key }) => key === undefined),
  };
}

function propertyOf(property: SyntaxNode, text: string): Property {
  const place = { from: property.from, to: property.to };
  const key = keyOf(property, text);
  const value = valueNode(property);
  if (key !== undefined && value === undefined && property.getChild(':') === null) {
    const argument: Argument = { type: 'reference', name: key, path: [] };
    return { ...place, key, value: { ...place, argument, parts: new Map() }, isShorthand: true };
  }
  return { ...place, key, value: value && readArgument(value, text), isShorthand: false };
}

/** What is given for each field; of a field written twice the last counts. */
export function givenOf(call: CellCall): Readonly<Record<string, Argument>> {
  return Object.fromEntries(
    call.properties.flatMap(({ key, value }) =>
      key === undefined || value === undefined ? [] : [[key, value.argument] as const],
    ),
  );
}

/** The names of several cells, in order, with what they stand for. */
export function scopeOf(cells: readonly CellText[]): Scope {
  const scope: Record<string, Binding> = {};
  for (const { calls, constants } of cells) {
    for (const [name, value] of constants) scope[name] = { value };
    for (const call of calls) if (call.name !== undefined) scope[call.name] = { call: asCall(call) };
  }
  return scope;
}

/** The call as plain data for the worker. */
export const asCall = (call: CellCall): Call => ({ recipe: call.recipe, given: givenOf(call) });
