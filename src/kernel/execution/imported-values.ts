/** The values that a cell's imports bind. */
import type { CellImport, ImportedName } from '../compiler/cell-imports.js';
import type { CellLoader, ModuleExports } from '../session-host.js';

/** Loads a cell's imports; returns the value for each binding they set. */
export async function valuesOfImports(
  loader: CellLoader,
  imports: readonly CellImport[],
): Promise<Map<string, unknown>> {
  const values = new Map<string, unknown>();
  for (const { specifier, names } of imports) {
    const module = await loader.load(specifier);
    for (const { binding, from } of names) values.set(binding, pick(module, from, specifier));
  }
  return values;
}

function pick(module: ModuleExports, from: ImportedName['from'], specifier: string): unknown {
  if (from.kind === 'all') return module;
  if (from.kind === 'default') return defaultOf(module);
  if (from.name in module) return module[from.name];
  const fallback: unknown = module['default'];
  if (isObject(fallback) && from.name in fallback) return fallback[from.name];
  throw new SyntaxError(`the module '${specifier}' has no export named '${from.name}'`);
}

/** The default export; for a module compiled to CommonJS, the one that was written. */
function defaultOf(module: ModuleExports): unknown {
  if (!('default' in module)) return module;
  const exported = module['default'];
  const isCompiled = isObject(exported) && exported['__esModule'] === true && 'default' in exported;
  return isCompiled ? exported['default'] : exported;
}

const isObject = (value: unknown): value is ModuleExports => Object(value) === value;
