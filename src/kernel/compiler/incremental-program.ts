/**
 * One long-lived type checker that every cell of a session is added to. A new cell costs one parse, one check of its own
 * text and one emit; nothing that earlier cells or the standard library needed is done again.
 *
 * A cell is a module of its own. The names of earlier cells reach it through its chain of scopes: the checker looks a
 * name up in the file, then among the types and the values of the session, then among the package's exports, then among
 * the globals. The symbols there are those of the cells that declared them, so a type is never printed and parsed again.
 */
import type TS from 'typescript';
import { kernelGlobals } from './cell-types.js';
import { compilerOptions, typeRoot } from './compiler-options.js';
import { createCompilerHost, virtualFolder, type CompilerHost } from './compiler-host.js';
import { isTypeOnly, meaningOfFlags, meaningOfImport, type Meaning } from './name-meaning.js';
import { PackageExports } from './package-exports.js';
import type { ProgramHost } from './program-host.js';
import { mentionsSchemas, schemaTypes } from './schema-types.js';
import {
  bindCell,
  completionsAt,
  createScope,
  declaredSymbols,
  describeSymbolAt,
  dropResolvedModules,
  parseModule,
  shareResolvedModules,
  type CellFile,
  type Compiler,
} from './typescript-internals.js';

/** Cells after which the checker is replaced, so that what it remembers of cells long gone is released. */
const rebuildAfter = 250;

const virtual = (name: string): string => `${virtualFolder}/${name}.ts`;

export class IncrementalProgram {
  readonly options: TS.CompilerOptions;
  private program: TS.Program | undefined;
  private readonly compilerHost: CompilerHost;
  private readonly cells = new Map<string, CellFile>();
  private readonly imported = new Set<string>();
  /** Paths of cells that import something: later cells may use what they imported. */
  private readonly importingCells = new Set<string>();
  private readonly valueScope: CellFile;
  private readonly typeScope: CellFile;
  private readonly packageScope: CellFile;
  readonly packageExports: PackageExports;
  /** How often the checker was replaced because of its age: each time much memory can be released. */
  programRebuilds = 0;
  private fullNodeTypes = false;
  private cellsSinceRebuild = 0;
  private cellCount = 0;

  constructor(
    readonly ts: Compiler,
    protected readonly host: ProgramHost,
    private folder: string,
    more: TS.CompilerOptions = {},
  ) {
    this.options = { ...compilerOptions(ts, host, folder), ...more };
    this.packageExports = new PackageExports(host);
    const context = { ts, host, options: this.options, cwd: () => this.folder, texts: this.texts() };
    this.compilerHost = createCompilerHost(context);
    this.packageScope = createScope(ts, this.options, virtual('package'), undefined);
    this.valueScope = createScope(ts, this.options, virtual('values'), this.packageScope);
    this.typeScope = createScope(ts, this.options, virtual('types'), this.valueScope);
    this.current();
  }

  /** The modules that exist in memory alone, by path. */
  private texts(): Record<string, () => string> {
    const nodeTypes = `/// <reference types="node" />\n${kernelGlobals}`;
    return {
      [virtual('globals')]: () => (this.fullNodeTypes ? nodeTypes : `${this.host.globals}\n`),
      [virtual('kernel')]: () => kernelGlobals,
      [virtual('schemas')]: () => schemaTypes,
      [virtual('imports')]: () =>
        ['export {};', ...[...this.imported].map((name) => `import ${JSON.stringify(name)};`)].join('\n'),
    };
  }

  /** The folder that cells resolve files and packages from. */
  get cwd(): string {
    return this.folder;
  }

  /** Gives a program made ahead, in which no cell has imported anything yet, the folder of its session. */
  setCwd(cwd: string): void {
    this.folder = cwd;
    // The same array, so that the program made with it stays valid.
    this.options.typeRoots?.splice(0, 1, typeRoot(cwd));
  }

  get checker(): TS.TypeChecker {
    return this.current().getTypeChecker();
  }

  private readonly current = (): TS.Program => (this.program ??= this.rebuild());

  /** Makes the checker again; files already read are reused. */
  private rebuild(): TS.Program {
    const program = this.ts.createProgram(this.roots(), this.options, this.compilerHost, this.program);
    const fileOf = program.getSourceFile.bind(program);
    program.getSourceFile = (name) => this.cells.get(name) ?? fileOf(name);
    for (const path of this.importingCells) shareResolvedModules(program, virtual('imports'), path);
    this.program = program;
    this.cells.clear();
    this.cellsSinceRebuild = 0;
    // Making the checker binds the files, which gives the package's files their symbols.
    const checker = program.getTypeChecker();
    this.packageScope.locals = this.packageSymbols(checker, fileOf);
    return program;
  }

  /** The files that every program begins from. */
  protected roots(): string[] {
    const own = [virtual('globals'), virtual('kernel'), virtual('imports'), ...this.packageExports.files()];
    return this.options.noLib ? [this.host.paths.flatLibrary, ...own] : own;
  }

  protected packageSymbols(
    checker: TS.TypeChecker,
    fileOf: (path: string) => TS.SourceFile | undefined,
  ): Map<string, TS.Symbol> {
    return this.packageExports.symbols(checker, fileOf);
  }

  /** Loads the types of all the package's names, before a name is called unknown. False if they were. */
  loadWholePackage(): boolean {
    if (!this.packageExports.loadAll()) return false;
    this.rebuild();
    return true;
  }

  /** Adds a cell's text as a module that sees the session's names. */
  add(text: string): CellFile {
    if (++this.cellsSinceRebuild > rebuildAfter) {
      this.rebuild();
      this.programRebuilds++;
    }
    const { ts } = this;
    const file = parseModule(ts, virtual(`cell${++this.cellCount}`), text);
    const imports = /\b(?:import|export|require|reference)\b/.test(text);
    const specifiers = imports
      ? ts.preProcessFile(text, true, true).importedFiles.map((found) => found.fileName)
      : [];
    this.ensureTypes(specifiers, text);
    bindCell(ts, this.options, file, this.typeScope);
    if (imports) {
      this.importingCells.add(file.path);
      shareResolvedModules(this.current(), virtual('imports'), file.path);
    }
    this.cells.set(file.path, file);
    return file;
  }

  /** Brings in the types of modules and of the package's names that no cell used before. */
  protected ensureTypes(specifiers: string[], text: string): void {
    const before = this.imported.size;
    for (const name of specifiers) {
      this.imported.add(name);
      if (this.host.isPlatformModule(name)) this.fullNodeTypes = true;
    }
    const newExports = specifiers.includes(this.host.paths.packageName)
      ? this.packageExports.loadAll()
      : this.packageExports.load(text);
    const schemas = mentionsSchemas(text) && this.compilerHost.loadSchemas();
    const changed = specifiers.some((name) => name.startsWith('.')) && this.compilerHost.filesChanged();
    if (this.imported.size > before || newExports || schemas || changed) this.rebuild();
  }

  missingModule = (specifier: string): string => this.host.missingModule(specifier);
  /** The names a cell declares at its top level. */
  namesOf(file: CellFile): Map<string, TS.Symbol> {
    return declaredSymbols(file);
  }

  /** Errors of a cell: those of its syntax if there are any, else those of its types. */
  diagnose(file: CellFile): readonly TS.Diagnostic[] {
    const syntax = file.parseDiagnostics;
    return syntax.length > 0 ? syntax : this.typeErrors(file);
  }

  protected typeErrors(file: CellFile): readonly TS.Diagnostic[] {
    return this.current().getSemanticDiagnostics(file);
  }

  emit(file: CellFile, before: TS.TransformerFactory<TS.SourceFile>): { code: string; map: string } {
    const written = { code: '', map: '' };
    const write: TS.WriteFileCallback = (name, text) =>
      (written[name.endsWith('.map') ? 'map' : 'code'] = text);
    this.current().emit(file, write, undefined, false, { before: [before] });
    return written;
  }

  /** The symbol of a value name at this place in a cell, aliases left as they are. */
  symbolAt(identifier: TS.Identifier): TS.Symbol | undefined {
    const { ts, checker } = this;
    return ts.isShorthandPropertyAssignment(identifier.parent)
      ? checker.getShorthandAssignmentValueSymbol(identifier.parent)
      : checker.getSymbolAtLocation(identifier);
  }

  isSessionValue = (symbol: TS.Symbol): boolean => this.valueScope.locals.get(symbol.name) === symbol;
  isPackageValue = (symbol: TS.Symbol): boolean => this.packageScope.locals.get(symbol.name) === symbol;
  hasName = (name: string): boolean => this.valueScope.locals.has(name) || this.packageScope.locals.has(name);

  /** What a name stands for as a value and as a type, imports followed to what they import. */
  meaningOf(symbol: TS.Symbol): Meaning {
    if (!(symbol.flags & this.ts.SymbolFlags.Alias)) return meaningOfFlags(this.ts, symbol.flags);
    const { value, type } = this.importMeaning(symbol);
    return { value: value && !isTypeOnly(this.ts, symbol), type };
  }

  protected importMeaning(symbol: TS.Symbol): Meaning {
    return meaningOfImport(this.ts, this.checker, symbol);
  }

  /** Lets later cells see names of this cell. */
  publish(_file: CellFile, names: ReadonlyMap<string, TS.Symbol>): void {
    for (const [name, symbol] of names) {
      const { value, type } = this.meaningOf(symbol);
      if (value) this.valueScope.locals.set(name, symbol);
      if (value && type) this.typeScope.locals.delete(name);
      else if (type) this.typeScope.locals.set(name, symbol);
    }
  }

  completions(file: CellFile, position: number): TS.CompletionInfo | undefined {
    return completionsAt(this.ts, this.current(), file, position);
  }

  /** Type and documentation of the name at a position. */
  describe(file: CellFile, position: number): string | undefined {
    return describeSymbolAt(this.ts, this.checker, file, position);
  }

  /** Removes all cells. Their numbers stay used: the checker remembers its findings by a file's name. */
  reset(): void {
    this.cells.clear();
    this.cellsSinceRebuild = 0;
  }

  /** Removes a cell's file that is no longer needed: a completion's or an inspection's. */
  drop(file: CellFile): void {
    this.cells.delete(file.path);
    this.importingCells.delete(file.path);
    dropResolvedModules(this.current(), file.path);
  }
}
