/** From a cell's text to code that the executor can run, or to the reasons why it cannot. */
import type TS from 'typescript';
import { importsOf, type CellImport } from './cell-imports.js';
import type { IncrementalProgram } from './incremental-program.js';
import { cellTransformer } from './transform.js';
import type { TransformContext } from './transform-expressions.js';
import { parseErrors, type CellFile, type Compiler } from './typescript-internals.js';

export interface Declaration {
  name: string;
  /** A let, const or class cannot be read before its line has run; a var, a function or an import can. */
  late: boolean;
}

export interface CompiledCell {
  code: string;
  map: string;
  /** Columns by which the compiled text is ahead of the cell's own on its first line. */
  shift: number;
  declares: Declaration[];
  /** Bindings the code uses, its own and earlier cells'. */
  bindings: string[];
  /** Names of other cells that this one reads, and those it assigns to. */
  reads: string[];
  writes: string[];
  imports: CellImport[];
  hasTopLevelAwait: boolean;
  usesPackage: boolean;
  /** Lets later cells see this cell's names: all types, and those values for which `isSet` holds. */
  publish(isSet: (name: string) => boolean): void;
}

/** A reason why a cell cannot run; line and column from 1. */
export interface CellProblem {
  message: string;
  code: number;
  line: number;
  column: number;
  length: number;
  /** The same in plain words, to be shown first: see recipe-problems.ts. */
  plain?: string;
  /** The kind of error; by default a syntax or a type error, by its code. */
  ename?: string;
}

export type Compiled = { cell: CompiledCell } | { problems: CellProblem[] };

/** Errors that do not stop a notebook cell: a `let` whose type only a later cell decides, and a package without typings. Both are `any`. */
const tolerated = new Set([7034, 7005, 7016]);

/** "Cannot find name", without a suggestion. */
const unknownName = 2304;

export function compileCell(program: IncrementalProgram, source: string): Compiled {
  const { ts } = program;
  // A cell that is one object literal parses as a block; the object is meant.
  const asObject = /^\s*\{[\s\S]*\}\s*$/.test(source) && isObjectLiteral(ts, source);
  const file = program.add(asObject ? `(${source.replace(/\s+$/, '')})` : source);
  const found = program
    .diagnose(file)
    .filter((d) => d.category === ts.DiagnosticCategory.Error && !tolerated.has(d.code));
  if (found.length === 0) return { cell: emitCell(program, file, asObject ? 1 : 0) };
  program.drop(file);
  // With all names in scope the compiler knows the one that was meant.
  if (found.some(({ code }) => code === unknownName) && program.loadWholePackage())
    return compileCell(program, source);
  const problems = found.map((d) => explainModule(program, problemOf(ts, file, d, asObject)));
  return { problems: problems.sort((a, b) => a.line - b.line || a.column - b.column) };
}

function emitCell(program: IncrementalProgram, file: CellFile, shift: number): CompiledCell {
  const { ts } = program;
  const own = program.namesOf(file);
  const values = [...own].filter(([, symbol]) => program.meaningOf(symbol).value);
  const declared = new Set(values.map(([name]) => name));
  const context: TransformContext = {
    declared,
    bindings: new Set(),
    reads: new Set(),
    writes: new Set(),
    hasTopLevelAwait: false,
    usesPackage: false,
    originOf: (identifier) => {
      if (!declared.has(identifier.text) && !program.hasName(identifier.text)) return 'elsewhere';
      const symbol = program.symbolAt(identifier);
      if (!symbol) return 'elsewhere';
      if (own.get(symbol.name) === symbol || program.isSessionValue(symbol)) return 'cell';
      return program.isPackageValue(symbol) ? 'package' : 'elsewhere';
    },
  };
  const { code, map } = program.emit(file, cellTransformer(ts, context));
  const fromOthers = (names: Set<string>): string[] => [...names].filter((name) => !declared.has(name));
  return {
    code: code.replace(/^export \{\};\s*$/m, '').replace(/\n?\/\/# sourceMappingURL=.*\s*$/, ''),
    map,
    shift,
    declares: values.map(([name, symbol]) => ({ name, late: isLate(ts, symbol) })),
    bindings: [...new Set([...context.bindings, ...declared])],
    reads: fromOthers(context.reads),
    writes: fromOthers(context.writes),
    imports: importsOf(ts, file, declared),
    hasTopLevelAwait: context.hasTopLevelAwait,
    usesPackage: context.usesPackage,
    publish: (isSet) => {
      program.publish(file, new Map([...own].filter(([name]) => !declared.has(name) || isSet(name))));
    },
  };
}

/** Whether a text in braces is an object rather than a block: `{ a: 1 }` is, `{ const a = 1 }` is not. */
function isObjectLiteral(ts: Compiler, source: string): boolean {
  if (parseErrors(ts, `(${source})`).length > 0) return false;
  if (parseErrors(ts, source).length > 0) return true;
  const [first, ...others] = ts.createSourceFile('cell.ts', source, ts.ScriptTarget.ES2022).statements;
  if (!first || others.length > 0 || !ts.isBlock(first)) return false;
  return first.statements.every((s) => ts.isLabeledStatement(s) || ts.isExpressionStatement(s));
}

function isLate({ SymbolFlags }: Compiler, { flags }: TS.Symbol): boolean {
  const late =
    SymbolFlags.BlockScopedVariable | SymbolFlags.Class | SymbolFlags.Enum | SymbolFlags.ValueModule;
  return (flags & late) !== 0 && (flags & SymbolFlags.Function) === 0;
}

function problemOf(ts: Compiler, file: TS.SourceFile, d: TS.Diagnostic, shifted: boolean): CellProblem {
  const start = d.file === file && d.start !== undefined ? d.start : 0;
  const { line, character } = file.getLineAndCharacterOfPosition(start);
  return {
    message: ts.flattenDiagnosticMessageText(d.messageText, '\n'),
    code: d.code,
    line: line + 1,
    column: character + 1 - (shifted && line === 0 ? 1 : 0),
    length: Math.max(1, d.length ?? 1),
  };
}

const cannotFindModule = 2307;

/** An import of something that is not there, with the host's sentence on how to get it. */
function explainModule(program: IncrementalProgram, problem: CellProblem): CellProblem {
  const specifier = /'([^']+)'/.exec(problem.message)?.[1];
  if (problem.code !== cannotFindModule || specifier === undefined) return problem;
  return { ...problem, plain: program.missingModule(specifier) };
}
