import { readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import type { Plugin } from 'esbuild';
import { packageFolder } from '../../engine/data-folder.js';

/**
 * The script of a handout: the recipes it needs, the tables they read and the charts, in one text that runs in a browser from a page
 * opened from disk. Only what is used goes in, so that the page stays small enough for a phone.
 * @param recipes names of recipes in the catalogue
 */
export async function handoutScript(recipes: readonly string[]): Promise<string> {
  const root = packageFolder();
  const { build } = await import('esbuild');
  const files = recipeFiles(root);
  const imports = recipes.flatMap((name) => {
    const file = files.get(name);
    return file === undefined ? [] : [`import { ${name} } from ${JSON.stringify(file)};`];
  });
  const contents = `${imports.join('\n')}\nimport { hydrate } from './src/notebook/handout/client.ts';\nhydrate([${recipes.filter((n) => files.has(n)).join(', ')}]);`;
  const result = await build({
    absWorkingDir: root,
    stdin: { contents, resolveDir: root, sourcefile: 'handout.ts', loader: 'ts' },
    bundle: true,
    minify: true,
    write: false,
    metafile: true,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    charset: 'utf8',
    legalComments: 'none',
    logLevel: 'silent',
    plugins: [tablesOutside, chartsOnly],
  });
  const inputs = Object.keys(result.metafile.inputs).filter((f) => f.startsWith('src/'));
  const tables = tablesOf(root, inputs.map((f) => readFileSync(join(root, f), 'utf8')).join('\n'));
  return `globalThis.reckonerTables=${JSON.stringify(tables)};\n${result.outputFiles[0]?.text ?? ''}`;
}

/** Which file of src/recipes holds which recipe, from the generated catalogue. */
function recipeFiles(root: string): Map<string, string> {
  const catalogue = join(root, 'src', 'recipes', 'catalogue.ts');
  const found = new Map<string, string>();
  for (const [, names = '', file = ''] of readFileSync(catalogue, 'utf8').matchAll(
    /^import \{ ([^}]*) \} from '(\.[^']*)';/gm,
  ))
    for (const name of names.split(','))
      found.set(
        name.trim(),
        `./${relative(root, join(dirname(catalogue), file))
          .replaceAll('\\', '/')
          .replace(/\.js$/, '.ts')}`,
      );
  return found;
}

/** In a page there is no data/ to read: the tables come with the script. */
const tablesOutside: Plugin = {
  name: 'tables-outside',
  setup(build) {
    build.onLoad({ filter: /[\\/]src[\\/]engine[\\/]data-folder\.ts$/ }, () => ({
      loader: 'js',
      contents: `
        const missing = (name) => Object.assign(new Error('no file ' + name + ' in a handout'), { code: 'ENOENT' });
        export function packageFolder() { throw missing('package.json'); }
        export function readDataFile(name) { if (!Object.hasOwn(globalThis.reckonerTables, name)) throw missing(name); return globalThis.reckonerTables[name]; }
        export function dataFileNames() { throw missing('data'); }
        export function readOwnFile(name) { throw missing(name); }`,
    }));
  },
};

/** Parts of vega that no chart of ours uses (maps, trees, word clouds) stay out: a tenth of the page. */
const chartsOnly: Plugin = {
  name: 'charts-only',
  setup(build) {
    const unused =
      /^(vega-(geo|force|hierarchy|label|regression|voronoi|wordcloud|crossfilter)|d3-geo-projection|topojson-client)$/;
    build.onResolve({ filter: unused }, (args) => ({ path: args.path, namespace: 'left-out' }));
    build.onLoad({ filter: /.*/, namespace: 'left-out' }, () => ({
      contents: 'module.exports = {};',
      loader: 'js',
    }));
  },
};

/** The tables that the bundled sources name, and of the list of sources those that they or the tables cite. */
function tablesOf(root: string, sourceText: string): Record<string, string> {
  const folder = join(root, 'data');
  const named = new Set([...sourceText.matchAll(/['"`]([\w.-]+)['"`]/g)].map((m) => m[1] ?? ''));
  const tables: Record<string, string> = {};
  for (const stem of named) {
    const name = stem.endsWith('.csv') ? stem : `${stem}.csv`;
    try {
      tables[name] = readFileSync(join(folder, name), 'utf8');
    } catch {
      continue; // a word that is no table
    }
  }
  const cited = `${sourceText}\n${Object.values(tables).join('\n')}`;
  const sources = JSON.parse(readFileSync(join(folder, 'sources.json'), 'utf8')) as { id: string }[];
  tables['sources.json'] = JSON.stringify(sources.filter((s) => cited.includes(s.id)));
  return tables;
}
