/**
 * Type errors inside the call of a recipe, in the recipe's own words: which field, what it got, what it takes. The recipe
 * only checks its inputs for that; nothing of the cell is run.
 */
import type TS from 'typescript';
import { isRecipe, type RecipeInfo } from '../display/recipe-card.js';
import type { CellProblem } from './compile-cell.js';
import { constantValue, unknownValue } from './constant-value.js';
import { dottedName, nodeAt, valueOf } from './cursor-context.js';
import type { SessionView } from './session-view.js';
import type { CellFile } from './typescript-internals.js';

interface Issue {
  field: string;
  message: string;
}

interface RecipeCall {
  recipe: RecipeInfo;
  inputs: TS.Expression | undefined;
}

/** Whether a text may hold a call with named inputs: else no recipe has to be loaded to explain its errors. */
export const mayCallRecipe = (code: string): boolean => /[\p{ID_Continue}$]\s*\(\s*(?:\{|\))/u.test(code);

/** The problems, those inside a recipe's call with the recipe's sentences in `plain`, one problem for each call. */
export function explainProblems(session: SessionView, code: string, problems: CellProblem[]): CellProblem[] {
  const { ts } = session.program;
  const file = ts.createSourceFile('cell.ts', code, ts.ScriptTarget.ES2022, true) as CellFile;
  const explained = new Set<TS.Node>();
  return problems.flatMap((problem) => {
    const call = enclosingCall(session, file, problem);
    if (!call) return [problem];
    const position = call.node.getStart(file);
    if (explained.has(call.node)) return [];
    const issues = issuesOf(session, call);
    if (issues.length === 0) return [problem];
    explained.add(call.node);
    const at = file.getLineAndCharacterOfPosition(fieldPosition(ts, call, issues[0]) ?? position);
    const plain = issues.map(({ field, message }) => `${field ? `${field}: ` : ''}${message}`).join('\n');
    return [
      {
        ...problem,
        line: at.line + 1,
        column: at.character + 1,
        plain: `${call.recipe.name}: ${plain}`,
        ename: 'InputError',
      },
    ];
  });
}

function enclosingCall(
  session: SessionView,
  file: CellFile,
  { line, column }: CellProblem,
): (RecipeCall & { node: TS.CallExpression }) | undefined {
  const { ts } = session.program;
  const start = file.getPositionOfLineAndCharacter(line - 1, Math.max(0, column - 1));
  for (
    let node = nodeAt(ts, file, Math.min(start + 1, file.end));
    !ts.isSourceFile(node);
    node = node.parent
  ) {
    if (!ts.isCallExpression(node)) continue;
    const path = dottedName(ts, node.expression);
    const recipe = path && valueOf(session, path);
    if (isRecipe(recipe)) return { node, recipe, inputs: node.arguments[0] };
  }
  return undefined;
}

/** What the recipe says of the inputs as far as they are known; unknown ones are replaced by those of its example. */
function issuesOf(session: SessionView, { recipe, inputs }: RecipeCall): Issue[] {
  const given = inputs && constantValue(session, inputs);
  if (given === unknownValue) return [];
  const example = (recipe.example ?? {}) as Record<string, unknown>;
  const known =
    typeof given === 'object' && given !== null
      ? Object.fromEntries(
          Object.entries(given).map(([name, value]) => [name, isKnown(value) ? value : example[name]]),
        )
      : given;
  try {
    recipe.read?.(known);
    return [];
  } catch (error) {
    const { issues } = error as { issues?: unknown };
    return Array.isArray(issues) ? (issues as Issue[]) : [];
  }
}

function isKnown(value: unknown): boolean {
  if (value === unknownValue) return false;
  return typeof value !== 'object' || value === null || Object.values(value).every(isKnown);
}

/** Where the field of an issue is written. */
function fieldPosition(
  ts: SessionView['program']['ts'],
  { inputs }: RecipeCall,
  issue: Issue | undefined,
): number | undefined {
  if (!inputs || !ts.isObjectLiteralExpression(inputs)) return undefined;
  const name = issue?.field.split(/[.[]/)[0];
  return inputs.properties.find((p) => p.name && ts.isIdentifier(p.name) && p.name.text === name)?.getStart();
}
