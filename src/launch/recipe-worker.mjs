// Builds the worker that runs the recipes for the forms of the page, with the tables of data/ inside it.
import { copyFileSync, readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname, join } from 'node:path';
import { dataStandIn } from './data-stand-in.mjs';
import { bundledPackages } from './notices.mjs';

const entry = 'src/page/forms/worker/recipe-worker.ts';

const tableFiles = (root) =>
  readdirSync(join(root, 'data')).filter((name) => name.endsWith('.csv') || name === 'sources.json');

const tablesOf = (root) =>
  Object.fromEntries(tableFiles(root).map((name) => [name, readFileSync(join(root, 'data', name), 'utf8')]));

/** Puts the worker into `folder`. Gives its file name, the packages in it and the files whose change makes it out of date. */
export async function buildRecipeWorker(root, folder) {
  const esbuild = await import('esbuild');
  const { metafile } = await esbuild.build({
    absWorkingDir: root,
    entryPoints: { 'recipe-worker': entry },
    outdir: folder,
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    minify: true,
    metafile: true,
    charset: 'utf8',
    legalComments: 'none',
    logLevel: 'warning',
    entryNames: '[name]-[hash]',
    chunkNames: 'recipe-worker-[name]-[hash]',
    assetNames: 'recipe-worker-[name]-[hash]',
    // Pictures are drawn by the page; here a chart is only data.
    external: ['node:*', 'module', 'fs', 'path', 'url', 'crypto', 'vega', 'vega-lite'],
    loader: { '.wasm': 'file' },
    define: { 'process.env.NODE_ENV': '"production"', global: 'globalThis' },
    // Its tables are part of the worker.
    plugins: [dataStandIn('the page', 'tables', `const tables = ${JSON.stringify(tablesOf(root))};`)],
  });
  // The solver fetches its own part of WebAssembly from beside it.
  const solver = dirname(createRequire(join(root, 'package.json')).resolve('highs'));
  copyFileSync(join(solver, 'highs.wasm'), join(folder, 'highs.wasm'));
  const [file] = Object.entries(metafile.outputs).find(([, output]) => output.entryPoint === entry);
  const own = Object.keys(metafile.inputs).filter((path) => path.startsWith('src/'));
  return {
    file: basename(file),
    packages: bundledPackages(metafile),
    sources: [
      ...own,
      ...tableFiles(root).map((name) => `data/${name}`),
      'src/launch/recipe-worker.mjs',
      'src/launch/data-stand-in.mjs',
    ],
  };
}
