/** The compiler's own host interface over a {@link ProgramHost}: files are read once, modules resolved as a notebook needs it. */
import type TS from 'typescript';
import type { ProgramHost } from './program-host.js';
import { schemaModule } from './schema-types.js';
import { parseModule, type Compiler } from './typescript-internals.js';

/** The folder of texts that exist in memory only. What they import is resolved from the session's folder. */
export const virtualFolder = '/__reckoner__';

export interface CompilerHost extends TS.CompilerHost {
  /** Whether a file of the notebook's own changed since it was read. */
  filesChanged(): boolean;
  /** From now on the package's own declarations find zod's, too large for every start. False if they did before. */
  loadSchemas(): boolean;
}

/** The stand-in for zod's declarations: one of the texts in memory. */
const schemaFile = `${virtualFolder}/schemas.ts`;

export interface HostContext {
  ts: Compiler;
  host: ProgramHost;
  options: TS.CompilerOptions;
  /** The folder of the session now. */
  cwd: () => string;
  /** Texts in memory by path. */
  texts: Readonly<Record<string, () => string>>;
}

export function createCompilerHost(context: HostContext): CompilerHost {
  const { ts, host, options } = context;
  const cache = new SourceCache(context);
  let schemas = false;
  const compilerHost: CompilerHost = {
    getSourceFile: (name, version) => cache.get(name, version),
    filesChanged: () => cache.isStale(),
    loadSchemas: () => {
      if (schemas) return false;
      return (schemas = true);
    },
    // Asked for files whose imports were resolved before: where that of zod leads can change.
    hasInvalidatedResolutions: (path) => schemas && path.startsWith(host.paths.declarations),
    getDefaultLibLocation: () => host.paths.libraryFolder,
    getDefaultLibFileName: () => `${host.paths.libraryFolder}/${ts.getDefaultLibFileName(options)}`,
    getCurrentDirectory: context.cwd,
    getCanonicalFileName: (name) => (host.caseSensitive ? name : name.toLowerCase()),
    useCaseSensitiveFileNames: () => host.caseSensitive,
    getNewLine: () => '\n',
    writeFile: () => undefined,
    fileExists: (path) => host.isFile(path),
    readFile: (path) => host.readText(path),
    directoryExists: (path) => host.isFolder(path),
    realpath: (path) => host.realPath(path),
  };
  const resolve = moduleResolver(context, compilerHost, () => schemas);
  compilerHost.resolveModuleNameLiterals = (literals, from) =>
    literals.map((literal) => ({ resolvedModule: resolve(literal.text, from) }));
  return compilerHost;
}

/** Parsed files. Those of packages never change; the notebook's own are read again when they did. */
class SourceCache {
  private readonly files = new Map<string, { file: TS.SourceFile; stamp: number }>();

  constructor(private readonly context: HostContext) {}

  get(name: string, version: TS.ScriptTarget | TS.CreateSourceFileOptions): TS.SourceFile | undefined {
    const { ts, host, texts } = this.context;
    const virtual = texts[name];
    if (virtual) return parseModule(ts, name, virtual());
    const stamp = this.isFixed(name) ? 0 : host.modifiedAt(name);
    if (stamp === undefined) return undefined;
    const known = this.files.get(name);
    if (known?.stamp === stamp) return known.file;
    const text = host.readText(name);
    if (text === undefined) return undefined;
    const file = ts.createSourceFile(name, text, version, false);
    this.files.set(name, { file, stamp });
    return file;
  }

  isStale(): boolean {
    for (const [name, { stamp }] of this.files)
      if (stamp !== 0 && this.context.host.modifiedAt(name) !== stamp) return true;
    return false;
  }

  private isFixed(name: string): boolean {
    return name.includes('/node_modules/') || name.startsWith(this.context.host.paths.packageRoot);
  }
}

type Resolve = (name: string, from: string) => TS.ResolvedModuleFull | undefined;

function moduleResolver(
  { ts, host, options, cwd }: HostContext,
  compilerHost: TS.CompilerHost,
  hasSchemas: () => boolean,
): Resolve {
  const { paths } = host;
  const cache = ts.createModuleResolutionCache(virtualFolder, (name) => name, options);
  const publicTypes = `${paths.declarations}index.d.ts`;
  const dts = ts.Extension.Dts;
  return (name, from) => {
    const containing = from.startsWith(virtualFolder) ? `${cwd().replaceAll('\\', '/')}/cell.ts` : from;
    // Within our own build every import names a neighbour: no need to search the file system.
    if (containing.startsWith(paths.declarations) && /^\..*\.js$/.test(name))
      return { resolvedFileName: joinRelative(containing, name.replace(/js$/, 'd.ts')), extension: dts };
    if (name === schemaModule && !hasSchemas() && containing.startsWith(paths.declarations))
      return { resolvedFileName: schemaFile, extension: ts.Extension.Ts };
    if (name === paths.packageName && host.isFile(publicTypes))
      return { resolvedFileName: publicTypes, extension: dts };
    const isRelative = name.startsWith('.');
    const lookUp = (file: string): TS.ResolvedModuleFull | undefined =>
      ts.resolveModuleName(name, file, options, compilerHost, isRelative ? undefined : cache).resolvedModule;
    const found = lookUp(containing);
    if (found || isRelative || host.isPlatformModule(name)) return found;
    return lookUp(`${paths.packageRoot}/cell.ts`);
  };
}

/** The path of `./a` or `../a` seen from a file. */
function joinRelative(file: string, relative: string): string {
  const parts = file.split('/').slice(0, -1);
  for (const part of relative.split('/')) {
    if (part === '..') parts.pop();
    else if (part !== '.') parts.push(part);
  }
  return parts.join('/');
}
