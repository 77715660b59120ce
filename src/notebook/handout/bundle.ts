import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { packageFolder } from '../../engine/data-folder.js';

/** What the build wrote about a module of dist/handout (src/launch/handout-modules.mjs). */
interface HandoutModule {
  /** Files of the modules it needs. */
  readonly imports: readonly string[];
  /** Tables of data/ that it reads. */
  readonly tables: readonly string[];
  /** Ids of the sources that it cites. */
  readonly sources: readonly string[];
}

/**
 * The script of a handout: the recipes it needs, the tables they read and the charts, in one text that runs in a browser from a page
 * opened from disk. Only what is used goes in, so that the page stays small enough for a phone.
 * @param recipes names of recipes in the catalogue
 * @throws Error when the package is not built
 */
export function handoutScript(recipes: readonly string[]): string {
  const folder = join(packageFolder(), 'dist', 'handout');
  const modules = moduleList(folder);
  const entries = recipes.map((name) => `${name}.js`).filter((file) => Object.hasOwn(modules, file));
  const files = withImports(modules, ['client.js', ...entries]);
  const bodies = files.map(
    (file) =>
      `${JSON.stringify(file)}:function(module,exports,require){${readFileSync(join(folder, file), 'utf8')}}`,
  );
  const named = entries.map((file) => `load(${JSON.stringify(`./${file}`)}).${file.slice(0, -3)}`);
  return [
    `globalThis.reckonerTables=${JSON.stringify(tablesFor(files.map((file) => modules[file] as HandoutModule)))};`,
    `(()=>{const modules={${bodies.join(',\n')}},loaded={};`,
    'const load=(path)=>{const name=path.slice(2);if(!(name in loaded)){const m=loaded[name]={exports:{}};modules[name](m,m.exports,load)}return loaded[name].exports};',
    `load("./client.js").hydrate([${named.join(',')}])})();`,
  ].join('\n');
}

function moduleList(folder: string): Record<string, HandoutModule> {
  try {
    return JSON.parse(readFileSync(join(folder, 'modules.json'), 'utf8')) as Record<string, HandoutModule>;
  } catch (error) {
    throw new Error(`the modules of handouts are not built: ${folder} is missing; run \`npm run build\``, {
      cause: error,
    });
  }
}

/** The given modules and all that they need. */
function withImports(modules: Record<string, HandoutModule>, entries: readonly string[]): string[] {
  const found = new Set<string>();
  const add = (file: string): void => {
    if (found.has(file)) return;
    found.add(file);
    modules[file]?.imports.forEach(add);
  };
  entries.forEach(add);
  return [...found];
}

/** The tables that the modules read, and of the list of sources those that the modules or the tables cite. */
function tablesFor(modules: readonly HandoutModule[]): Record<string, string> {
  const folder = join(packageFolder(), 'data');
  const names = new Set(modules.flatMap((module) => module.tables));
  const tables = Object.fromEntries(
    [...names].map((name) => [name, readFileSync(join(folder, name), 'utf8')]),
  );
  const cited = new Set(modules.flatMap((module) => module.sources));
  const inTables = Object.values(tables).join('\n');
  const sources = JSON.parse(readFileSync(join(folder, 'sources.json'), 'utf8')) as { id: string }[];
  const kept = sources.filter(({ id }) => cited.has(id) || inTables.includes(id));
  return { ...tables, 'sources.json': JSON.stringify(kept) };
}
