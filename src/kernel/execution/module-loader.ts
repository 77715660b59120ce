/**
 * Loads the modules a cell imports: natively, so that ESM-only packages and top-level await work. A package is resolved
 * from the notebook's folder first and then from this package's own, and `joiners-reckoner` is always the copy that runs
 * the kernel.
 */
import { existsSync, statSync } from 'node:fs';
import { createRequire, register } from 'node:module';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import vm from 'node:vm';
import { compilerFile } from '../compiler/compiler-loader.js';
import { isNodeModule } from '../compiler/specifiers.js';
import { distPath, packageName, packageRoot } from '../dist-path.js';
import type { NbOutput } from '../message.js';
import type { CellLoader } from '../session-host.js';
import { loadTslab } from './tslab-display.js';
import { typescriptHooks } from './typescript-hooks.js';

type Namespace = Record<string, unknown>;
type Import = (specifier: string) => Promise<Namespace>;

/** Node reports the loader option as experimental at its first use; a notebook's user can do nothing about it. */
const emitWarning = process.emitWarning.bind(process) as (...args: unknown[]) => void;
process.emitWarning = (warning: string | Error, ...rest: unknown[]): void => {
  if (!String(warning).includes('USE_MAIN_CONTEXT_DEFAULT_LOADER')) emitWarning(warning, ...rest);
};

/** An `import` as a module in `folder` would do it. */
function importFrom(folder: string): Import {
  return new vm.Script('(specifier) => import(specifier)', {
    filename: pathToFileURL(join(folder, 'cell.mjs')).href,
    importModuleDynamically: vm.constants.USE_MAIN_CONTEXT_DEFAULT_LOADER,
  }).runInThisContext() as Import;
}

export class ModuleLoader implements CellLoader {
  private readonly fromNotebook: Import;
  private readonly fromPackage = importFrom(packageRoot);
  private readonly requireHere: NodeJS.Require;
  private readonly requireOwn = createRequire(join(packageRoot, 'cell.js'));
  private loadsTypeScript = false;

  /** `emit` takes the outputs of libraries that display by themselves. */
  constructor(
    private readonly cwd: string,
    private readonly emit: (output: NbOutput) => void,
  ) {
    this.fromNotebook = importFrom(cwd);
    this.requireHere = createRequire(join(cwd, 'cell.js'));
  }

  /** What a cell's `require` is. */
  readonly require = Object.assign(
    (id: string): unknown => {
      try {
        return this.requireHere(id);
      } catch (error) {
        if (!isMissing(error, id)) throw error;
        return this.requireOwn(id);
      }
    },
    { resolve: (id: string): string => this.requireHere.resolve(id) },
  );

  /** The package's exports, which every cell has without an import. */
  package(): Promise<Namespace> {
    return import(pathToFileURL(distPath('index.js')).href) as Promise<Namespace>;
  }

  async load(specifier: string): Promise<Namespace> {
    if (specifier === packageName) return this.package();
    if (isNodeModule(specifier)) return nodeModule(specifier);
    if (specifier === 'tslab') return loadTslab(this.requireOwn, this.emit);
    if (specifier.startsWith('.') || specifier.startsWith('/')) return this.ownFile(specifier);
    try {
      return await this.fromNotebook(specifier);
    } catch (error) {
      if (!isMissing(error, specifier)) throw error;
      return this.fromPackage(specifier);
    }
  }

  /** A file beside the notebook. Its URL carries the time of its last change, so an edited file is loaded again. */
  private async ownFile(specifier: string): Promise<Namespace> {
    const path = [
      specifier,
      `${specifier}.ts`,
      `${specifier}.js`,
      specifier.replace(/\.js$/, '.ts'),
      join(specifier, 'index.ts'),
    ]
      .map((name) => resolve(this.cwd, name))
      .find((name) => existsSync(name) && statSync(name).isFile());
    if (path === undefined) throw new Error(`no file ${specifier} in ${this.cwd}`);
    if (path.endsWith('.json') || path.endsWith('.cjs')) {
      Reflect.deleteProperty(this.requireHere.cache, path);
      const value = this.requireHere(path) as object;
      return { ...value, default: value };
    }
    if (path.endsWith('.ts') && !this.loadsTypeScript) {
      this.loadsTypeScript = true;
      register(typescriptHooks(compilerFile, path));
    }
    return this.fromNotebook(`${pathToFileURL(path).href}?changed=${statSync(path).mtimeMs}`);
  }
}

/** A module of Node's own. By way of the loader it would not be found from a startup snapshot under its bare name. */
function nodeModule(specifier: string): Namespace {
  const loaded = process.getBuiltinModule(specifier) as unknown as Namespace | undefined;
  if (!loaded) throw new Error(`Node ${process.version} has no module '${specifier}'`);
  return { ...loaded, default: loaded };
}

function isMissing(error: unknown, specifier: string): boolean {
  const { code, message } = error as Partial<Record<'code' | 'message', string>>;
  const name = specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');
  if (code !== 'ERR_MODULE_NOT_FOUND' && code !== 'MODULE_NOT_FOUND') return false;
  return message?.includes(`'${name}`) ?? false;
}
