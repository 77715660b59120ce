/**
 * Types of cells checked by the native TypeScript compiler (version 7) in a process of its own. Its interface is called
 * unstable, so it is off unless the environment says RECKONER_CHECKER=native; the compiler in this process still parses
 * cells, rewrites them and answers completion and inspection.
 */
import { writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type TS from 'typescript';
import type { API, Diagnostic, Project, Snapshot } from 'typescript-native/unstable/sync';
import { kernelGlobals, nodeGlobals } from '../compiler/cell-types.js';
import type { CellChecker } from '../compiler/cell-checker.js';
import { compilerOptions } from '../compiler/compiler-options.js';
import { meaningOfFlags, type Meaning } from '../compiler/name-meaning.js';
import type { ProgramHost } from '../compiler/program-host.js';
import { declaredSymbols, type CellFile, type Compiler } from '../compiler/typescript-internals.js';
import { packageRoot } from '../dist-path.js';
import { requirePackages } from '../optional-packages.js';
import { packageSpecifier, SessionModule } from './session-module.js';
import { ResolutionFolder } from './resolution-folder.js';

export const checkerVariable = 'RECKONER_CHECKER';

/** The client of the native compiler: the module's own exports. */
export type NativeCompiler = typeof import('typescript-native/unstable/sync');

/** The native compiler's client, if the environment asks for it. @throws MissingPackageError */
export async function loadNativeCompiler(env: NodeJS.ProcessEnv): Promise<NativeCompiler | undefined> {
  if (env[checkerVariable] !== 'native') return undefined;
  requirePackages(`${checkerVariable}=native`, ['typescript-native']);
  const path = createRequire(join(packageRoot, 'package.json')).resolve('typescript-native/unstable/sync');
  return (await import(pathToFileURL(path).href)) as NativeCompiler;
}

const cellFile = 'cell.ts';
const sessionFile = 'session.ts';
const globalsFile = 'globals.ts';

/** The errors by which the two compilers say the same of a constant that a cell assigns to. */
const assignedImport = 2632;
const assignedConstant = 2588;

export class NativeChecker implements CellChecker {
  private readonly folder: ResolutionFolder;
  private readonly session: SessionModule;
  private api: API | undefined;
  private snapshot: Snapshot | undefined;
  private project: Project | undefined;
  private hasNodeTypes = false;
  private sessionChanged = false;
  private closed = false;

  constructor(
    private readonly native: NativeCompiler,
    private readonly ts: Compiler,
    private readonly host: ProgramHost,
    private readonly cwd: string,
  ) {
    this.folder = new ResolutionFolder(cwd, host.paths.packageRoot);
    const index = JSON.parse(host.readText(host.paths.exportIndex) ?? '{}') as Record<string, unknown>;
    this.session = new SessionModule(
      ts,
      new Set(Object.keys(index)),
      new Set(Object.getOwnPropertyNames(globalThis)),
    );
    this.write('tsconfig.json', JSON.stringify(this.configuration()));
    this.write('kernel.ts', kernelGlobals);
    this.write(globalsFile, nodeGlobals);
    this.write(sessionFile, this.session.text);
    this.write(cellFile, this.cellText('', new Set()));
    this.update([]);
  }

  private configuration(): object {
    const { host, ts, cwd } = this;
    const { typeRoots = [] } = compilerOptions(ts, host, cwd);
    return {
      compilerOptions: {
        target: 'es2022',
        module: 'esnext',
        moduleResolution: 'bundler',
        moduleDetection: 'force',
        strict: true,
        esModuleInterop: true,
        resolveJsonModule: true,
        allowImportingTsExtensions: true,
        allowUnusedLabels: true,
        preserveConstEnums: true,
        skipLibCheck: true,
        noEmit: true,
        noLib: true,
        types: [],
        typeRoots,
        rootDirs: [this.folder.path, cwd],
        paths: { [packageSpecifier]: [`${host.paths.declarations}index.d.ts`] },
      },
      files: [host.paths.flatLibrary, 'kernel.ts', globalsFile, sessionFile, cellFile],
    };
  }

  private write(name: string, text: string): void {
    writeFileSync(join(this.folder.path, name), text);
  }

  private path(name: string): string {
    return join(this.folder.path, name).replaceAll('\\', '/');
  }

  /** Brings the process up to date with files that were written, and starts it where it does not run. */
  private update(changed: readonly string[]): Project {
    this.api ??= new this.native.API({ cwd: this.folder.path });
    const next = this.api.updateSnapshot({
      openProjects: [this.path('tsconfig.json')],
      fileChanges: { changed: changed.map((name) => this.path(name)) },
    });
    this.snapshot?.dispose();
    this.snapshot = next;
    const project = next.getProject(this.path('tsconfig.json'));
    if (!project) throw new Error('the native compiler did not open its project');
    return (this.project = project);
  }

  private restart(): void {
    try {
      this.api?.close();
    } catch {
      // It has ended already.
    }
    this.api = this.snapshot = this.project = undefined;
  }

  private cellText(text: string, own: ReadonlySet<string>): string {
    const imports = this.session.importsFor(text, own);
    // At the end, so that every line and column stays the cell's own.
    return (
      `${text}\nimport { ${imports.session.join(', ')} } from './session.js';` +
      `import { ${imports.package.join(', ')} } from '${packageSpecifier}'; export {};\n`
    );
  }

  diagnose(file: CellFile): readonly TS.Diagnostic[] {
    this.bringSessionUpToDate();
    const changed = [cellFile];
    if (!this.hasNodeTypes && this.importsNodeModule(file)) {
      this.hasNodeTypes = true;
      this.write(globalsFile, '/// <reference types="node" />\nexport {};\n');
      changed.push(globalsFile);
    }
    const { DiagnosticCategory } = this.native;
    this.write(cellFile, this.cellText(file.text, new Set(declaredSymbols(file).keys())));
    const check = (): readonly Diagnostic[] =>
      this.update(changed).program.getSemanticDiagnostics(this.path(cellFile));
    return this.again(check)
      .filter(({ pos, category }) => pos < file.text.length && category === DiagnosticCategory.Error)
      .map((found) => this.diagnostic(file, found));
  }

  /** Does what needs the process; once more, in a new one, if it has ended: an interrupt ends a kernel's child processes. */
  private again<T>(work: () => T): T {
    try {
      return work();
    } catch {
      this.restart();
      return work();
    }
  }

  private importsNodeModule(file: CellFile): boolean {
    if (!/\b(?:import|require|export)\b/.test(file.text)) return false;
    const found = this.ts.preProcessFile(file.text, true, true).importedFiles;
    return found.some(({ fileName }) => this.host.isPlatformModule(fileName));
  }

  private diagnostic(file: CellFile, { pos, end, code, text, messageChain }: Diagnostic): TS.Diagnostic {
    const category = this.ts.DiagnosticCategory.Error;
    const chain = (next: readonly Diagnostic[] | undefined): TS.DiagnosticMessageChain[] =>
      (next ?? []).map((d) => ({ messageText: d.text, category, code: d.code, next: chain(d.messageChain) }));
    const isConstant = code === assignedImport;
    const messageText = isConstant ? text.replace(/an import\.$/, 'a constant.') : text;
    return {
      file,
      start: pos,
      length: end - pos,
      category,
      code: isConstant ? assignedConstant : code,
      messageText: { messageText, category, code, next: chain(messageChain) },
    };
  }

  importMeaning(_file: CellFile, position: number): Meaning {
    const checker = this.project?.checker;
    const symbol = checker?.getSymbolAtPosition(this.path(cellFile), position);
    if (!checker || !symbol) return { value: true, type: false };
    const aliased = checker.getAliasedSymbol(symbol);
    // A module without typings has an unknown symbol behind it: it is a value.
    const { value, type } = meaningOfFlags(this.ts, aliased.flags);
    return { value: value || checker.isUnknownSymbol(aliased), type };
  }

  publish(file: CellFile, names: ReadonlyMap<string, Meaning>): void {
    this.session.publish(file, names);
    this.sessionChanged = true;
    // The next cell then finds the process up to date: two files changed at once cost it much more than one after the other.
    setImmediate(() => {
      if (!this.closed) this.bringSessionUpToDate();
    });
  }

  private bringSessionUpToDate(): void {
    if (!this.sessionChanged) return;
    this.sessionChanged = false;
    this.write(sessionFile, this.session.text);
    this.again(() => this.update([sessionFile]));
  }

  close(): void {
    this.closed = true;
    this.restart();
    this.folder.remove();
  }
}
