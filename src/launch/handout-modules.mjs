// Builds dist/handout/: what a handout page runs, as CommonJS modules with a list of what each needs. A handout takes only the
// modules of its recipes (src/notebook/handout/bundle.ts), so that the page stays small, and needs no bundler to be made.
import { mkdirSync, readFileSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { dataStandIn } from './data-stand-in.mjs';
import { bundledPackages } from './notices.mjs';

/** Parts of vega that no chart of ours uses (maps, trees, word clouds) stay out: a tenth of the page. */
const chartsOnly = {
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

/** One entry for what wakes the page, and one for each recipe of the catalogue. */
function entriesOf(root) {
  const text = readFileSync(join(root, 'src/recipes/catalogue.ts'), 'utf8');
  const entries = [{ name: 'client', file: './src/notebook/handout/client.ts', exported: 'hydrate' }];
  for (const [, names, file] of text.matchAll(/^import \{ ([^}]*) \} from '\.\/([^']*)\.js';/gm))
    for (const name of names.split(','))
      entries.push({ name: name.trim(), file: `./src/recipes/${file}.ts`, exported: name.trim() });
  return entries;
}

/** Each entry is a module of its own that exports one name. */
const entryModules = (root, entries) => ({
  name: 'entry-modules',
  setup(build) {
    build.onResolve({ filter: /^entry:/ }, (args) => ({ path: args.path.slice(6), namespace: 'entry' }));
    build.onLoad({ filter: /.*/, namespace: 'entry' }, ({ path }) => {
      const { file, exported } = entries.find(({ name }) => name === path);
      return { contents: `export { ${exported} } from '${file}';`, resolveDir: root, loader: 'ts' };
    });
  },
});

/** Gives, for files of ours, the tables of data/ that they name and the sources that they cite. */
function dataReader(root) {
  const ids = JSON.parse(readFileSync(join(root, 'data/sources.json'), 'utf8')).map(({ id }) => id);
  const tables = readdirSync(join(root, 'data')).filter((name) => name.endsWith('.csv'));
  return (inputs) => {
    const own = inputs.filter((path) => path.startsWith('src/'));
    const text = own.map((path) => readFileSync(join(root, path), 'utf8')).join('\n');
    const words = new Set([...text.matchAll(/['"`]([\w.-]+)['"`]/g)].map(([, word]) => word));
    return {
      tables: tables.filter((name) => words.has(name) || words.has(name.replace(/\.csv$/, ''))),
      sources: ids.filter((id) => text.includes(id)),
    };
  };
}

export async function buildHandoutModules(root) {
  const esbuild = await import('esbuild');
  const entries = entriesOf(root);
  const { metafile, outputFiles } = await esbuild.build({
    absWorkingDir: root,
    entryPoints: Object.fromEntries(entries.map(({ name }) => [name, `entry:${name}`])),
    outdir: 'dist/handout',
    chunkNames: 'chunk-[hash]',
    bundle: true,
    splitting: true,
    minify: true,
    write: false,
    metafile: true,
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    charset: 'utf8',
    legalComments: 'none',
    logLevel: 'warning',
    external: ['highs'],
    // The tables come with the handout's script.
    plugins: [entryModules(root, entries), dataStandIn('a handout', 'globalThis.reckonerTables'), chartsOnly],
  });
  const draft = join(root, 'dist', 'handout.new');
  rmSync(draft, { recursive: true, force: true });
  mkdirSync(draft, { recursive: true });
  const modules = {};
  const dataOf = dataReader(root);
  for (const { path, text } of outputFiles) {
    const name = basename(path);
    const { code } = await esbuild.transform(text, {
      format: 'cjs',
      minify: true,
      charset: 'utf8',
      target: 'es2022',
      supported: { 'dynamic-import': false },
    });
    writeFileSync(join(draft, name), code);
    const output = metafile.outputs[`dist/handout/${name}`];
    modules[name] = {
      imports: output.imports.filter(({ external }) => !external).map((next) => basename(next.path)),
      ...dataOf(Object.keys(output.inputs)),
    };
  }
  writeFileSync(join(draft, 'modules.json'), JSON.stringify(modules));
  rmSync(join(root, 'dist/handout'), { recursive: true, force: true });
  renameSync(draft, join(root, 'dist/handout'));
  return bundledPackages(metafile);
}
