/**
 * Loads the modules a cell imports: natively, so that ESM-only packages and top-level await work. A package is looked for
 * from the notebook's folder first and then from this package's own, and `joiners-reckoner` always means the copy that
 * runs the kernel.
 */
import { existsSync, statSync } from 'node:fs';
import { createRequire, register } from 'node:module';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import vm from 'node:vm';
import type { CellImport, ImportedName } from '../compiler/compile-cell.js';
import { distPath, packageName, packageRoot } from '../dist-path.js';
import { libFolder } from '../compiler/tslab.js';

type Namespace = Record<string, unknown>;
type Import = (specifier: string) => Promise<Namespace>;

/** Node calls the loader option experimental at its first use; a person at a notebook can do nothing about it. */
const warn = process.emitWarning;
process.emitWarning = function (this: unknown, warning: string | Error, ...rest: unknown[]): void {
  if (!String(warning).includes('USE_MAIN_CONTEXT_DEFAULT_LOADER'))
    Reflect.apply(warn, process, [warning, ...rest]);
};

/** An `import` as a module in `folder` would do it. */
function importFrom(folder: string): Import {
  return new vm.Script('(specifier) => import(specifier)', {
    filename: pathToFileURL(join(folder, 'cell.mjs')).href,
    importModuleDynamically: vm.constants.USE_MAIN_CONTEXT_DEFAULT_LOADER,
  }).runInThisContext() as Import;
}

/** Lets Node load the notebook's own .ts files; set up only when a cell imports one. */
const typescriptLoader = (compiler: string): string => `
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
let ts;
export async function resolve(specifier, context, next) {
  if (specifier.startsWith('.') && context.parentURL?.startsWith('file:')) {
    for (const tail of ['', '.ts', '/index.ts']) {
      const url = new URL(specifier.replace(/\\.js$/, tail ? '' : '.js') + tail, context.parentURL);
      if (url.pathname.endsWith('.ts') && existsSync(url)) return { url: url.href, format: 'module', shortCircuit: true };
    }
  }
  return next(specifier, context);
}
export async function load(url, context, next) {
  if (!new URL(url).pathname.endsWith('.ts')) return next(url, context);
  ts ??= createRequire(import.meta.url)(${JSON.stringify(compiler)});
  const text = await readFile(fileURLToPath(url.split('?')[0]), 'utf8');
  const { outputText } = ts.transpileModule(text, { fileName: url, compilerOptions: { module: 99, target: 9, inlineSourceMap: true } });
  return { format: 'module', source: outputText, shortCircuit: true };
}`;

export class ModuleLoader {
  private readonly fromNotebook: Import;
  private readonly fromPackage = importFrom(packageRoot);
  private readonly requireHere: NodeRequire;
  private readonly requireOwn = createRequire(join(packageRoot, 'cell.js'));
  private loadsTypeScript = false;

  constructor(private readonly cwd: string) {
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

  /** Everything the package offers: ready in each cell without an import. */
  package(): Promise<Namespace> {
    return import(pathToFileURL(distPath('index.js')).href) as Promise<Namespace>;
  }

  async load(specifier: string): Promise<Namespace> {
    if (specifier === packageName) return this.package();
    if (specifier.startsWith('.') || specifier.startsWith('/')) return this.ownFile(specifier);
    try {
      return await this.fromNotebook(specifier);
    } catch (error) {
      if (!isMissing(error, specifier)) throw error;
      return this.fromPackage(specifier);
    }
  }

  /** A file beside the notebook. Its address carries the time it was changed, so an edited file is loaded afresh. */
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
      delete this.requireHere.cache[path];
      const value = this.requireHere(path) as object;
      return { ...value, default: value };
    }
    if (path.endsWith('.ts') && !this.loadsTypeScript) {
      this.loadsTypeScript = true;
      register(
        `data:text/javascript,${encodeURIComponent(typescriptLoader(join(libFolder, 'typescript.js')).replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href)))}`,
      );
    }
    return this.fromNotebook(`${pathToFileURL(path).href}?changed=${statSync(path).mtimeMs}`);
  }

  /** Loads a cell's imports; returns the value for each box they fill. */
  async fill(imports: readonly CellImport[]): Promise<Map<string, unknown>> {
    const values = new Map<string, unknown>();
    for (const { specifier, names } of imports) {
      const module = await this.load(specifier);
      for (const { binding: box, from } of names) values.set(box, pick(module, from, specifier));
    }
    return values;
  }
}

function pick(module: Namespace, from: ImportedName['from'], specifier: string): unknown {
  const fallback = module['default'] as Namespace | undefined;
  if (from.kind === 'all') return module;
  if (from.kind === 'default') {
    const compiled =
      fallback && typeof fallback === 'object' && fallback['__esModule'] === true && 'default' in fallback;
    return compiled ? fallback['default'] : 'default' in module ? fallback : module;
  }
  if (from.name in module) return module[from.name];
  if (fallback !== undefined && fallback !== null && Object(fallback) === fallback && from.name in fallback)
    return fallback[from.name];
  throw new SyntaxError(`the module '${specifier}' has no export named '${from.name}'`);
}

function isMissing(error: unknown, specifier: string): boolean {
  const { code, message } = error as { code?: string; message?: string };
  const bare = specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');
  return (
    (code === 'ERR_MODULE_NOT_FOUND' || code === 'MODULE_NOT_FOUND') && (message ?? '').includes(`'${bare}`)
  );
}
