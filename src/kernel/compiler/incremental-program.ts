/**
 * The compiler room: one long-lived type checker that every cell of a session is added to. A new cell costs one parse,
 * one check of its own text and one emit; nothing that earlier cells or the standard library needed is done again.
 *
 * A cell is a module of its own. The names of earlier cells reach it through the scope its file hangs in: the checker
 * looks a name up in the file, then in the types and the values of the session, then among the package's exports, then
 * among the globals. The symbols there are those of the cells that declared them, so a type is never written out and
 * read back.
 */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { join, posix } from 'node:path';
import type TS from 'typescript';
import { distPath, packageName, packageRoot } from '../dist-path.js';
import { libFolder, loadCompiler, nodeTypesFolder, type Compiler } from './tslab.js';
import { kernelGlobals, nodeGlobals } from './cell-types.js';
import { isNodeModule } from './specifiers.js';

/** What the compiler hangs on its nodes, beyond its published typings. */
export interface CellFile extends TS.SourceFile {
  parent: TS.Node;
  locals: Map<string, TS.Symbol>;
  path: string;
  resolvedPath: string;
  originalFileName: string;
  parseDiagnostics: TS.Diagnostic[];
  bindDiagnostics: TS.Diagnostic[];
  imports: TS.StringLiteral[];
  moduleAugmentations: unknown[];
  ambientModuleNames: string[];
  resolvedModules: unknown;
  externalModuleIndicator: unknown;
  symbol: TS.Symbol;
}

/** Cells after which the checker is replaced, so that what it remembers of cells long gone is let go. */
const renewAfter = 250;

/** Where the texts stand that are in no file. What they import is looked for from the session's folder. */
const virtualFolder = '/__reckoner__';

export class IncrementalProgram {
  readonly ts: Compiler;
  readonly options: TS.CompilerOptions;
  private program!: TS.Program;
  private host: TS.CompilerHost;
  private readonly files = new Map<string, { file: TS.SourceFile; stamp: number }>();
  private readonly cells = new Map<string, CellFile>();
  private readonly imported = new Set<string>();
  private readonly values: CellFile;
  private readonly types: CellFile;
  private readonly package: CellFile;
  /** Where each of the package's names is declared, if the build told; and those whose types are loaded so far. */
  private readonly exportIndex: Record<string, [file: string, name: string]> | undefined = readNames();
  private readonly referencedExports = new Set<string>();
  private wholePackage = this.exportIndex === undefined;
  /** How often the checker was replaced because of its age: each time much memory can be given back. */
  programRebuilds = 0;
  private fullNodeTypes = false;
  private seen = 0;
  private added = 0;

  private folder: string;

  constructor(cwd: string) {
    const ts = (this.ts = loadCompiler());
    this.folder = cwd;
    const flat = distPath('kernel/lib.d.ts');
    this.options = {
      target: ts.ScriptTarget.ES2022,
      module: ts.ModuleKind.ESNext,
      moduleResolution: ts.ModuleResolutionKind.Bundler,
      strict: true,
      esModuleInterop: true,
      resolveJsonModule: true,
      allowImportingTsExtensions: true,
      allowUnusedLabels: true,
      experimentalDecorators: false,
      preserveConstEnums: true,
      skipLibCheck: true,
      sourceMap: true,
      types: [],
      typeRoots: [join(cwd, 'node_modules/@types'), nodeTypesFolder],
      ...(existsSync(flat) ? { noLib: true } : { lib: ['lib.es2023.d.ts'] }),
    };
    this.host = this.createHost();
    this.package = this.scopeFile('package', undefined);
    this.values = this.scopeFile('values', this.package);
    this.types = this.scopeFile('types', this.values);
    this.rebuild();
  }

  /** The folder that cells resolve files and packages from. */
  get cwd(): string {
    return this.folder;
  }

  /** Gives a room made ahead, in which no cell has imported anything yet, the folder of its session. */
  setCwd(cwd: string): void {
    this.folder = cwd;
    // The same array, so that the program made with it stays good.
    this.options.typeRoots![0] = join(cwd, 'node_modules/@types');
  }

  get checker(): TS.TypeChecker {
    return this.program.getTypeChecker();
  }

  private virtual(name: string): string {
    return `${virtualFolder}/${name}.ts`;
  }

  private createHost(): TS.CompilerHost {
    const { ts } = this;
    const host = ts.createCompilerHost(this.options);
    host.getDefaultLibLocation = () => libFolder;
    host.getDefaultLibFileName = () => join(libFolder, 'lib.d.ts');
    host.getCurrentDirectory = () => this.cwd;
    const texts: Record<string, () => string> = {
      [this.virtual('globals')]: () =>
        this.fullNodeTypes ? `/// <reference types="node" />\n${kernelGlobals}` : `${nodeGlobals}\n`,
      [this.virtual('kernel')]: () => kernelGlobals,
      [this.virtual('imports')]: () =>
        ['export {};', ...[...this.imported].map((name) => `import ${JSON.stringify(name)};`)].join('\n'),
    };
    host.getSourceFile = (name, languageVersion) => {
      const text = texts[name];
      if (text) return this.module(name, text());
      let stamp = 0;
      if (!name.includes('/node_modules/') && !name.startsWith(packageRoot)) {
        try {
          stamp = statSync(name).mtimeMs;
        } catch {
          return undefined;
        }
      }
      const known = this.files.get(name);
      if (known && known.stamp === stamp) return known.file;
      try {
        const file = ts.createSourceFile(name, readFileSync(name, 'utf8'), languageVersion, false);
        this.files.set(name, { file, stamp });
        return file;
      } catch {
        return undefined;
      }
    };
    const cache = ts.createModuleResolutionCache(virtualFolder, (name) => name, this.options);
    const face = distPath('index.d.ts');
    const ownTypes = distPath('').replaceAll('\\', '/');
    host.resolveModuleNames = (names, from) =>
      names.map((name) => {
        const containing = from.startsWith(virtualFolder)
          ? join(this.cwd, 'cell.ts').replaceAll('\\', '/')
          : from;
        // Within our own build every import names a neighbour: no need to ask the disk.
        if (containing.startsWith(ownTypes) && /^\..*\.js$/.test(name)) {
          return {
            resolvedFileName: posix.join(posix.dirname(containing), name.replace(/js$/, 'd.ts')),
            extension: ts.Extension.Dts,
          };
        }
        if (name === packageName && existsSync(face))
          return { resolvedFileName: face, extension: ts.Extension.Dts };
        const found = ts.resolveModuleName(
          name,
          containing,
          this.options,
          host,
          name.startsWith('.') ? undefined : cache,
        ).resolvedModule;
        if (found || name.startsWith('.') || isNodeModule(name)) return found;
        return ts.resolveModuleName(name, join(packageRoot, 'cell.ts'), this.options, host).resolvedModule;
      });
    return host;
  }

  /** A file in memory that is a module whatever it holds. */
  private module(name: string, text: string): CellFile {
    const { ts } = this;
    const file = ts.createSourceFile(
      name,
      text,
      {
        languageVersion: ts.ScriptTarget.ES2022,
        setExternalModuleIndicator: (made) => ((made as CellFile).externalModuleIndicator ??= true),
      },
      // The binder, which comes next, names each node's parent.
      false,
      ts.ScriptKind.TS,
    ) as CellFile;
    return file;
  }

  private scopeFile(name: string, parent: CellFile | undefined): CellFile {
    const file = this.module(this.virtual(name), 'export {};');
    this.ts.bindSourceFile(file, this.options);
    file.locals = new Map();
    if (parent) file.parent = parent;
    return file;
  }

  /** Makes the checker anew; files already read are taken over as they are. */
  private rebuild(): void {
    const { ts } = this;
    const roots = [this.virtual('globals'), this.virtual('kernel'), this.virtual('imports')];
    const flat = distPath('kernel/lib.d.ts');
    if (this.options.noLib) roots.unshift(flat);
    const face = distPath('index.d.ts');
    const referencedExports = [...this.referencedExports].map(
      (name) => [name, distPath(this.exportIndex![name]![0]), this.exportIndex![name]![1]] as const,
    );
    if (!this.wholePackage) roots.push(...new Set(referencedExports.map(([, path]) => path)));
    else if (existsSync(face)) roots.push(face);
    const program = ts.createProgram(roots, this.options, this.host, this.program);
    const fileOf = program.getSourceFile.bind(program);
    program.getSourceFile = (name) => this.cells.get(name) ?? fileOf(name);
    this.program = program;
    this.cells.clear();
    this.seen = 0;
    this.package.locals.clear();
    // Making the checker binds the files, which gives the package's file its symbol.
    const checker = program.getTypeChecker();
    const exportsOf = (path: string): TS.Symbol[] => {
      const symbol = (fileOf(path) as CellFile | undefined)?.symbol;
      return symbol ? checker.getExportsOfModule(symbol) : [];
    };
    if (this.wholePackage)
      for (const exported of exportsOf(face)) this.package.locals.set(exported.name, exported);
    else {
      for (const [name, path, inside] of referencedExports) {
        const found = exportsOf(path).find((exported) => exported.name === inside);
        if (found) this.package.locals.set(name, found);
      }
    }
  }

  /** Loads the types of all the package's names: for completion, and before a name is called unknown. False if they were. */
  loadWholePackage(): boolean {
    if (this.wholePackage) return false;
    this.wholePackage = true;
    this.rebuild();
    return true;
  }

  /** Adds a cell's text as a module that sees the session's names. `keep` for a cell that will run. */
  add(text: string, name = this.virtual(`cell${++this.added}`)): CellFile {
    if (++this.seen > renewAfter) {
      this.rebuild();
      this.programRebuilds++;
    }
    const { ts } = this;
    const file = this.module(name, text);
    const imports = /\b(?:import|export|require|reference)\b/.test(text);
    const specifiers = imports
      ? ts.preProcessFile(text, true, true).importedFiles.map((found) => found.fileName)
      : [];
    this.ensureTypes(specifiers, text);
    file.path = file.resolvedPath = file.originalFileName = name;
    file.imports = [];
    file.moduleAugmentations = [];
    file.ambientModuleNames = [];
    file.resolvedModules = (this.program.getSourceFile(this.virtual('imports')) as CellFile | undefined)
      ?.resolvedModules;
    ts.bindSourceFile(file, this.options);
    file.parent = this.types;
    this.cells.set(name, file);
    return file;
  }

  /** Brings in the types of modules and of the package's names not seen before. */
  private ensureTypes(specifiers: string[], text: string): void {
    const before = this.imported.size + this.referencedExports.size;
    for (const name of specifiers) {
      this.imported.add(name);
      if (isNodeModule(name)) this.fullNodeTypes = true;
      if (name === packageName) this.wholePackage = true;
    }
    if (!this.wholePackage) {
      for (const [word] of text.matchAll(/[\p{ID_Start}$_][\p{ID_Continue}$]*/gu))
        if (Object.hasOwn(this.exportIndex!, word)) this.referencedExports.add(word);
    }
    const changed = specifiers.some((name) => name.startsWith('.')) && this.ownFilesChanged();
    if (this.imported.size + this.referencedExports.size > before || changed) this.rebuild();
  }

  private ownFilesChanged(): boolean {
    for (const [name, { stamp }] of this.files) {
      if (stamp !== 0 && (statSync(name, { throwIfNoEntry: false })?.mtimeMs ?? -1) !== stamp) return true;
    }
    return false;
  }

  /** The names a cell declares at its top level. An exported one has two symbols; the outer one is the one others see. */
  namesOf(file: CellFile): Map<string, TS.Symbol> {
    return new Map(
      [...file.locals].map(([name, symbol]) => [
        name,
        (symbol as { exportSymbol?: TS.Symbol }).exportSymbol ?? symbol,
      ]),
    );
  }

  /** Type errors of a cell, in the order they stand in it. */
  diagnose(file: CellFile): readonly TS.Diagnostic[] {
    const syntax = file.parseDiagnostics;
    return syntax.length > 0 ? syntax : this.program.getSemanticDiagnostics(file);
  }

  emit(file: CellFile, before: TS.TransformerFactory<TS.SourceFile>): { code: string; map: string } {
    let code = '';
    let map = '';
    this.program.emit(
      file,
      (name, text) => (name.endsWith('.map') ? (map = text) : (code = text)),
      undefined,
      false,
      { before: [before] },
    );
    return { code, map };
  }

  /** The symbol a value name means at this place in a cell, aliases left as they are. */
  symbolAt(identifier: TS.Identifier): TS.Symbol | undefined {
    const { ts, checker } = this;
    return ts.isShorthandPropertyAssignment(identifier.parent)
      ? checker.getShorthandAssignmentValueSymbol(identifier.parent)
      : checker.getSymbolAtLocation(identifier);
  }

  isSessionValue = (symbol: TS.Symbol): boolean => this.values.locals.get(symbol.name) === symbol;
  isPackageValue = (symbol: TS.Symbol): boolean => this.package.locals.get(symbol.name) === symbol;
  hasName = (name: string): boolean => this.values.locals.has(name) || this.package.locals.has(name);

  /** What a name means as a value and as a type, imports followed to what they import. */
  meaningOf(symbol: TS.Symbol): { value: boolean; type: boolean } {
    const { SymbolFlags } = this.ts;
    let flags = symbol.flags;
    if (flags & SymbolFlags.Alias) {
      const typeOnly =
        symbol.declarations?.every((d) => this.ts.isTypeOnlyImportOrExportDeclaration(d)) ?? false;
      const aliased = this.checker.getAliasedSymbol(symbol);
      // A module without typings has an unknown symbol behind it: it is a value.
      flags = aliased.flags;
      const unknown = (this.checker as unknown as { isUnknownSymbol(s: TS.Symbol): boolean }).isUnknownSymbol(
        aliased,
      );
      return {
        value: !typeOnly && (unknown || (flags & SymbolFlags.Value) !== 0),
        type: (flags & (SymbolFlags.Type | SymbolFlags.Namespace)) !== 0,
      };
    }
    return {
      value: (flags & SymbolFlags.Value) !== 0,
      type: (flags & (SymbolFlags.Type | SymbolFlags.Namespace)) !== 0,
    };
  }

  /** Lets later cells see a name of this cell. */
  publish(name: string, symbol: TS.Symbol): void {
    const { value, type } = this.meaningOf(symbol);
    if (value) {
      this.values.locals.set(name, symbol);
      if (type) this.types.locals.delete(name);
    } else if (type) {
      this.types.locals.set(name, symbol);
    }
  }

  completions(file: CellFile, position: number): TS.CompletionInfo | undefined {
    const { ts } = this;
    return ts.Completions.getCompletionsAtPositionForTslab(
      { getCompilerOptions: () => this.options },
      this.program,
      () => undefined,
      file,
      position,
      {},
      undefined,
      1,
      neverCancelled,
    );
  }

  quickInfo(file: CellFile, position: number): TS.QuickInfo | undefined {
    return this.ts.getQuickInfoAtPosition(file, this.checker, neverCancelled, position);
  }

  /** Forgets the cells there were. Their numbers stay used: the checker remembers its findings by a file's name. */
  reset(): void {
    this.cells.clear();
    this.seen = 0;
  }

  /** Forgets a cell's file that is no longer needed: a completion's or an inspection's. */
  drop(file: CellFile): void {
    this.cells.delete(file.path);
  }

  /** Values the session holds a type for. */
  names(): string[] {
    return [...this.values.locals.keys()];
  }
}

function readNames(): Record<string, [file: string, name: string]> | undefined {
  try {
    return JSON.parse(readFileSync(distPath('kernel/names.json'), 'utf8')) as Record<
      string,
      [string, string]
    >;
  } catch {
    return undefined;
  }
}

const neverCancelled = {
  isCancellationRequested: () => false,
  throwIfCancellationRequested: () => undefined,
};
