/**
 * Every member of the TypeScript compiler that the kernel uses and that its published typings leave out. Nothing else in
 * the kernel reaches into the compiler; tests/kernel/typescript-internals.test.ts names the member that a new version moves.
 */
import type TS from 'typescript';

interface Internals {
  bindSourceFile(file: TS.SourceFile, options: TS.CompilerOptions): void;
  isExpressionNode(node: TS.Node): boolean;
  getTouchingPropertyName(file: TS.SourceFile, position: number): TS.Node;
  getContainerNode(node: TS.Node): TS.Node | undefined;
  getContainingObjectLiteralElement(node: TS.Node): TS.ObjectLiteralElement | undefined;
  getPropertySymbolsFromContextualType(
    node: TS.ObjectLiteralElement,
    checker: TS.TypeChecker,
    type: TS.Type,
    ofEachOfUnion: boolean,
  ): readonly TS.Symbol[];
  SymbolDisplay: {
    getSymbolDisplayPartsDocumentationAndSymbolKind(
      checker: TS.TypeChecker,
      symbol: TS.Symbol,
      file: TS.SourceFile,
      enclosing: TS.Node | undefined,
      location: TS.Node,
    ): Pick<TS.QuickInfo, 'displayParts' | 'documentation' | 'tags'>;
  };
  Completions: {
    getCompletionsAtPosition(
      host: object,
      program: TS.Program,
      log: (text: string) => void,
      file: TS.SourceFile,
      position: number,
      preferences: TS.UserPreferences,
      trigger: string | undefined,
      kind: number,
      cancellation: object,
    ): TS.CompletionInfo | undefined;
  };
}

/** The compiler with the members above. */
export type Compiler = typeof TS & Internals;

/** The names of those members, for the test that they are there. */
export const internalMembers = [
  'bindSourceFile',
  'isExpressionNode',
  'getTouchingPropertyName',
  'getContainerNode',
  'getContainingObjectLiteralElement',
  'getPropertySymbolsFromContextualType',
  'SymbolDisplay.getSymbolDisplayPartsDocumentationAndSymbolKind',
  'Completions.getCompletionsAtPosition',
] as const;

/** A source file with the fields that the binder and the program keep on it. */
export interface CellFile extends TS.SourceFile {
  /** Names are looked up in the file, then in its parent: this is how a cell sees the names of earlier cells. */
  parent: TS.Node;
  locals: Map<string, TS.Symbol>;
  path: string;
  resolvedPath: string;
  originalFileName: string;
  parseDiagnostics: TS.DiagnosticWithLocation[];
  imports: TS.StringLiteral[];
  moduleAugmentations: unknown[];
  ambientModuleNames: string[];
  externalModuleIndicator: unknown;
  symbol: TS.Symbol | undefined;
}

type ProgramInternals = TS.Program & { resolvedModules?: Map<string, unknown> };
type CheckerInternals = TS.TypeChecker & { isUnknownSymbol(symbol: TS.Symbol): boolean };

const neverCancelled = {
  isCancellationRequested: () => false,
  throwIfCancellationRequested: () => undefined,
};

/** Parses a text as a module, whatever it holds. The binder, which comes next, sets each node's parent. */
export function parseModule(ts: Compiler, name: string, text: string): CellFile {
  return ts.createSourceFile(
    name,
    text,
    {
      languageVersion: ts.ScriptTarget.ES2022,
      setExternalModuleIndicator: (made) => ((made as CellFile).externalModuleIndicator ??= true),
    },
    false,
    ts.ScriptKind.TS,
  ) as CellFile;
}

/** Syntax errors of a text. */
export function parseErrors(ts: Compiler, text: string): readonly TS.DiagnosticWithLocation[] {
  return (ts.createSourceFile('cell.ts', text, ts.ScriptTarget.ES2022) as CellFile).parseDiagnostics;
}

/** A module in memory whose names (`locals`) are filled by hand and which is searched after the files below it. */
export function createScope(
  ts: Compiler,
  options: TS.CompilerOptions,
  name: string,
  parent: CellFile | undefined,
): CellFile {
  const file = parseModule(ts, name, 'export {};');
  ts.bindSourceFile(file, options);
  file.locals = new Map();
  if (parent) file.parent = parent;
  return file;
}

/** Makes a parsed cell checkable: bound, with `scope` as its outer scope. */
export function bindCell(ts: Compiler, options: TS.CompilerOptions, file: CellFile, scope: CellFile): void {
  file.path = file.resolvedPath = file.originalFileName = file.fileName;
  file.imports = [];
  file.moduleAugmentations = [];
  file.ambientModuleNames = [];
  ts.bindSourceFile(file, options);
  file.parent = scope;
}

/** Lets a file that is not in the program resolve what `from`, which is in it, resolves. */
export function shareResolvedModules(program: TS.Program, from: string, path: string): void {
  const { resolvedModules } = program as ProgramInternals;
  const shared = resolvedModules?.get(from);
  if (shared !== undefined) resolvedModules?.set(path, shared);
}

/** Undoes {@link shareResolvedModules}. */
export function dropResolvedModules(program: TS.Program, path: string): void {
  (program as ProgramInternals).resolvedModules?.delete(path);
}

/** The module symbol of a file of the program, once its checker was made. */
export const moduleSymbol = (file: TS.SourceFile | undefined): TS.Symbol | undefined =>
  (file as CellFile | undefined)?.symbol;

/** The names declared at a file's top level. An exported name has two symbols; the outer one is seen by other files. */
export function declaredSymbols(file: CellFile): Map<string, TS.Symbol> {
  return new Map(
    [...file.locals].map(([name, symbol]) => [
      name,
      (symbol as { exportSymbol?: TS.Symbol }).exportSymbol ?? symbol,
    ]),
  );
}

/** Whether an alias leads to a module without typings. */
export const isUnknownSymbol = (checker: TS.TypeChecker, symbol: TS.Symbol): boolean =>
  (checker as CheckerInternals).isUnknownSymbol(symbol);

export function completionsAt(
  ts: Compiler,
  program: TS.Program,
  file: CellFile,
  position: number,
): TS.CompletionInfo | undefined {
  const options = program.getCompilerOptions();
  const host = { getCompilerOptions: () => options, getCompilationSettings: () => options };
  return ts.Completions.getCompletionsAtPosition(
    host,
    program,
    () => undefined,
    file,
    position,
    {},
    undefined,
    1,
    neverCancelled,
  );
}

/** The member that a name in an object literal stands for: its documentation is with the type that is expected there. */
function expectedMember(ts: Compiler, checker: TS.TypeChecker, node: TS.Node): TS.Symbol | undefined {
  const element = ts.getContainingObjectLiteralElement(node);
  if (!element || !ts.isObjectLiteralExpression(element.parent)) return undefined;
  const expected = checker.getContextualType(element.parent);
  if (!expected) return undefined;
  const members = ts.getPropertySymbolsFromContextualType(element, checker, expected, false);
  return members.length === 1 ? members[0] : undefined;
}

/** Type and documentation of the name at a position as plain text; undefined where there is no name. */
export function describeSymbolAt(
  ts: Compiler,
  checker: TS.TypeChecker,
  file: CellFile,
  position: number,
): string | undefined {
  const node = ts.getTouchingPropertyName(file, position);
  const symbol = ts.isSourceFile(node)
    ? undefined
    : (expectedMember(ts, checker, node) ?? checker.getSymbolAtLocation(node));
  if (!symbol) return undefined;
  const info = ts.SymbolDisplay.getSymbolDisplayPartsDocumentationAndSymbolKind(
    checker,
    symbol,
    file,
    ts.getContainerNode(node),
    node,
  );
  const text = (parts: readonly TS.SymbolDisplayPart[] | undefined): string =>
    ts.displayPartsToString([...(parts ?? [])]);
  const documentation = text(info.documentation);
  const tags = (info.tags ?? []).map((tag) => `@${tag.name} ${text(tag.text)}`.trim());
  const notes = [documentation, ...tags].filter((line) => line !== '');
  return [text(info.displayParts), ...(notes.length > 0 ? ['', ...notes] : [])].join('\n');
}
