// Builds dist/browser/: the recipes as ES modules for bundlers and pages. One module a recipe, so that a page takes only those it
// imports; tables of data/ are modules beside the code that reads them; nothing of Node is needed.
import {
  copyFileSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import Papa from 'papaparse';
import { bundledPackages } from './notices.mjs';

/** Modules of ours that need Node, and what takes their place. */
const replaced = {
  'src/engine/data-folder.ts': 'src/engine/data-modules.ts',
  'src/units/algebra.ts': 'src/units/precompiled.ts',
};
/** What only Node has, as modules of one line. */
const absent = {
  'src/explore/danfo.ts': `
    import { InputError } from '../units/input-error.js';
    export function danfo() { throw new InputError('frame: data frames need Node; use toJSON or toCSV in a browser'); }`,
  'src/charts/svg.ts': `
    import { ChartError } from './chart-spec.js';
    export async function renderSvg() { throw new ChartError('chart', 'is drawn in Node; in a browser give the chart, a Vega-Lite specification, to vega-embed'); }
    export const fitWidth = (spec) => spec;`,
};

const nodeParts = (root) => ({
  name: 'node-parts',
  setup(build) {
    // The solver of cutting plans asks for it in Node alone; in a page its code lies beside it, as highs.wasm.
    build.onResolve({ filter: /^node:module$/ }, ({ path }) => ({ path, namespace: 'absent' }));
    build.onLoad({ filter: /.*/, namespace: 'absent' }, () => ({
      contents: `export const createRequire = () => (name) => { throw new Error('no ' + name + ' in a browser'); };`,
    }));
    build.onLoad({ filter: /[\\/]src[\\/](?:engine|explore|charts|units)[\\/][\w-]+\.ts$/ }, ({ path }) => {
      const file = path
        .slice(root.length)
        .replace(/^[\\/]/, '')
        .replaceAll('\\', '/');
      if (replaced[file])
        return { contents: `export * from ${JSON.stringify(join(root, replaced[file]))};`, resolveDir: root };
      const own = absent[file];
      return own ? { contents: own, loader: 'js', resolveDir: join(root, file, '..') } : undefined;
    });
  },
});

/** What parses and prints formulas, as a module that this script can call. */
async function formulaCompiler(root, esbuild) {
  const { outputFiles } = await esbuild.build({
    absWorkingDir: root,
    stdin: {
      contents: `export * from './algebra.js'; export { withoutSlack } from './expression-slack.js';`,
      resolveDir: join(root, 'src/units'),
    },
    bundle: true,
    write: false,
    format: 'esm',
    platform: 'node',
    logLevel: 'warning',
  });
  const file = join(root, 'dist', `algebra-${process.pid}.mjs`);
  writeFileSync(file, outputFiles[0].text);
  const algebra = await import(pathToFileURL(file).href);
  rmSync(file);
  const mark = (name, power) => `\u0001${name}${power ? '^' : ''}\u0002`;
  const parsed = (expression) => {
    const tree = algebra.parseTree(expression);
    return {
      node: plainNode(tree.node),
      symbols: tree.symbols,
      hidden: algebra.latexOf(tree, mark),
      shown: algebra.latexOf(tree, mark, 'shown'),
      plain: algebra.plainOf(tree, mark),
    };
  };
  // As it is calculated, and as a reader sees it.
  return (expression) =>
    [...new Set([expression, algebra.withoutSlack(expression)])].map((form) => [form, parsed(form)]);
}

/** A node of a parsed expression as data: what src/units/expression-tree.ts names, and no more. */
function plainNode(n) {
  const parts = { type: n.type };
  if (n.type === 'FunctionNode') parts.fn = { name: n.fn.name };
  else if (typeof n.fn === 'string') parts.fn = n.fn;
  for (const key of ['name', 'value', 'op']) if (n[key] !== undefined) parts[key] = n[key];
  for (const key of ['content', 'condition', 'trueExpr', 'falseExpr'])
    if (n[key]) parts[key] = plainNode(n[key]);
  if (n.args) parts.args = n.args.map(plainNode);
  return parts;
}

/** A table without the column that no code reads: the address where a row was read is for whoever checks data/. */
function withoutAddresses(text) {
  const rows = Papa.parse(text, { skipEmptyLines: true }).data;
  const column = rows[0].indexOf('address');
  return column < 0
    ? text
    : Papa.unparse(
        rows.map((row) => row.toSpliced(column, 1)),
        { newline: '\n' },
      );
}

/** Puts before a module of ours the tables that it reads, the sources that it cites and its formulas, parsed. */
function withData(root, compile) {
  const sources = JSON.parse(readFileSync(join(root, 'data/sources.json'), 'utf8'));
  const tables = readdirSync(join(root, 'data')).filter((name) => name.endsWith('.csv'));
  const registry = JSON.stringify(join(root, 'src/engine/data-modules.ts'));
  const algebra = JSON.stringify(join(root, 'src/units/precompiled.ts'));
  const citedIn = (text) => sources.filter(({ id }) => text.includes(id));
  return {
    name: 'with-data',
    setup(build) {
      build.onResolve({ filter: /^data:/ }, ({ path }) => ({ path: path.slice(5), namespace: 'data' }));
      build.onLoad({ filter: /.*/, namespace: 'data' }, ({ path }) => {
        const text = withoutAddresses(readFileSync(join(root, 'data', path), 'utf8'));
        const contents = `export const table = ${JSON.stringify({ name: path, text })};\nexport const sources = ${JSON.stringify(citedIn(text))};`;
        return { contents, loader: 'js' };
      });
      build.onLoad({ filter: /[\\/]src[\\/](?:materials|recipes)[\\/].*\.ts$/ }, ({ path }) => {
        const text = readFileSync(path, 'utf8');
        const words = new Set([...text.matchAll(/['"`]([\w.-]+)['"`]/g)].map(([, word]) => word));
        const read = tables.filter((name) => words.has(name) || words.has(name.replace(/\.csv$/, '')));
        const cited = sources.filter(({ id }) => words.has(id));
        const formulas = [...text.matchAll(/\bexpression:\s*'([^'\n]+)'/g)].flatMap(([, formula]) =>
          compile(formula),
        );
        if (read.length + cited.length + formulas.length === 0) return undefined;
        const lines = [
          `import { addSources as __addSources, addTable as __addTable } from ${registry};`,
          ...read.map((name, i) => `import * as __data${i} from 'data:${name}';`),
          ...read.map((_, i) => `__addTable(__data${i}.table); __addSources(__data${i}.sources);`),
          ...(formulas.length > 0
            ? [
                `import { addFormulas as __addFormulas } from ${algebra};`,
                `__addFormulas(${JSON.stringify(Object.fromEntries(formulas))});`,
              ]
            : []),
          ...(cited.length > 0 ? [`__addSources(${JSON.stringify(cited)});`] : []),
        ];
        return { contents: `${lines.join(' ')} ${text}`, loader: 'ts' };
      });
    },
  };
}

/** The files whose values src/browser.ts exports, each with their names. */
function entriesOf(root) {
  const files = new Map();
  const add = (file, names) => {
    const values = names.split(',').map((name) => name.trim());
    const had = files.get(file) ?? [];
    files.set(file, [...had, ...values.filter((name) => name !== '')]);
  };
  const own = readFileSync(join(root, 'src/browser.ts'), 'utf8');
  for (const [, names, file] of own.matchAll(/^export \{([^}]*)\} from '\.\/(.*)\.js';/gm)) add(file, names);
  const catalogue = readFileSync(join(root, 'src/recipes/catalogue.ts'), 'utf8');
  for (const [, name, file] of catalogue.matchAll(/^import \{ (\w+) \} from '\.\/([^']*)\.js';/gm))
    add(`recipes/${file}`, name);
  add('recipes/catalogue', 'catalogue');
  // No two files of src/ have one basename.
  return [...files].map(([file, names]) => ({ entry: basename(file), file: `./src/${file}.ts`, names }));
}

const entryModules = (root, entries) => ({
  name: 'entry-modules',
  setup(build) {
    build.onResolve({ filter: /^entry:/ }, (args) => ({ path: args.path.slice(6), namespace: 'entry' }));
    build.onLoad({ filter: /.*/, namespace: 'entry' }, ({ path }) => {
      const { file, names } = entries.find(({ entry }) => entry === path);
      return { contents: `export { ${names.join(', ')} } from '${file}';`, resolveDir: root, loader: 'ts' };
    });
  },
});

export async function buildBrowserModules(root) {
  const esbuild = await import('esbuild');
  const entries = entriesOf(root);
  const draft = join(root, 'dist', 'browser.new');
  rmSync(draft, { recursive: true, force: true });
  mkdirSync(draft, { recursive: true });
  const { metafile, outputFiles } = await esbuild.build({
    absWorkingDir: root,
    entryPoints: Object.fromEntries(entries.map(({ entry }) => [entry, `entry:${entry}`])),
    outdir: 'dist/browser',
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
    plugins: [
      entryModules(root, entries),
      nodeParts(root),
      withData(root, await formulaCompiler(root, esbuild)),
    ],
  });
  // No module is there for its effects alone: imports without a name would only make bundlers warn.
  for (const { path, text } of outputFiles)
    writeFileSync(join(draft, basename(path)), text.replace(/import"\.\/chunk-\w+\.js";/g, ''));
  if (process.env.RECKONER_METAFILE) writeFileSync(process.env.RECKONER_METAFILE, JSON.stringify(metafile));
  copyFileSync(join(root, 'node_modules/highs/build/highs.wasm'), join(draft, 'highs.wasm'));
  writeFileSync(
    join(draft, 'index.js'),
    entries.map(({ entry, names }) => `export { ${names.join(', ')} } from './${entry}.js';\n`).join(''),
  );
  rmSync(join(root, 'dist/browser'), { recursive: true, force: true });
  renameSync(draft, join(root, 'dist/browser'));
  return bundledPackages(metafile);
}
