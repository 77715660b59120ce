// Builds the browser page: src/page -> dist/page, by esbuild. Nothing is done when nothing it is made of has changed, since the
// page is the slowest part of the build. Plain JavaScript because it runs before anything is compiled.
import { createHash } from 'node:crypto';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bundledPackages } from './notices.mjs';
import { buildRecipeWorker } from './recipe-worker.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const source = join(root, 'src', 'page');
const target = join(root, 'dist', 'page');
/** Built here first and then put in place whole: a page that is open meanwhile never meets half of it. */
const draft = join(root, 'dist', 'page.new');
const entries = { home: 'src/page/home.ts', notebook: 'src/page/notebook-page.ts' };

/** What the page was last built from: a hash of each of our own files it used, of the lock file for all others, and the packages. */
function lastBuild() {
  const stamp = join(target, 'stamp.json');
  if (!existsSync(stamp) || !existsSync(join(target, 'manifest.json'))) return undefined;
  return JSON.parse(readFileSync(stamp, 'utf8'));
}

const isCurrent = ({ files = {} }) =>
  Object.keys(files).length > 0 &&
  Object.entries(files).every(([path, hash]) => existsSync(join(root, path)) && hashOf(path) === hash);

const hashOf = (path) =>
  createHash('sha256')
    .update(readFileSync(join(root, path)))
    .digest('hex')
    .slice(0, 16);

/** CSS of packages written with `~package/...` is looked up like any other; pictures become part of the file. */
const packages = {
  name: 'packages',
  setup(build) {
    build.onResolve({ filter: /^~/ }, (args) =>
      build.resolve(args.path.slice(1), { kind: 'import-statement', resolveDir: args.resolveDir }),
    );
    // A hundred languages the editor could load lazily: a notebook here holds TypeScript and Markdown.
    build.onResolve({ filter: /^@codemirror\/(legacy-modes|lang-)/ }, (args) =>
      args.kind === 'dynamic-import' && /@jupyterlab/.test(args.importer)
        ? { path: 'nothing', namespace: 'left-out' }
        : undefined,
    );
    build.onResolve(
      {
        filter: /^(@rjsf\/|@jupyterlab\/(filebrowser|statusbar|lsp)$|vscode-|json5$|markdown-to-jsx)/,
      },
      (args) => (args.pluginData === 'seen' ? undefined : { path: 'nothing', namespace: 'left-out' }),
    );
    build.onLoad({ filter: /.*/, namespace: 'left-out' }, () => ({
      // Named imports of a CommonJS module are looked up at run time, so one empty function answers for all of them.
      contents:
        'const nothing = new Proxy(class {}, { get: (t, k) => (k in t || typeof k === "symbol" ? t[k] : k === "__esModule" ? true : nothing) }); module.exports = nothing;',
      loader: 'js',
    }));
    // Without this every index file of the widgets would be kept whole.
    build.onResolve({ filter: /^@(jupyterlab|lumino|jupyter)\// }, async (args) => {
      if (args.pluginData === 'seen' || args.kind === 'import-rule') return undefined;
      const { path, errors } = await build.resolve(args.path, {
        kind: args.kind,
        resolveDir: args.resolveDir,
        importer: args.importer,
        pluginData: 'seen',
      });
      return errors.length > 0 ? undefined : { path, sideEffects: path.endsWith('.css') };
    });
    build.onLoad({ filter: /\.svg$/ }, (args) => ({
      contents: readFileSync(args.path, 'utf8'),
      loader: args.with?.type === 'url' ? 'dataurl' : 'text',
    }));
  },
};

/** Where the package lies and which versions it has, for a page: there is no folder to look into. */
const versions = {
  name: 'versions',
  setup(build) {
    build.onLoad({ filter: /[\\/]src[\\/]kernel[\\/]dist-path\.ts$/ }, () => {
      const version = (name) => JSON.parse(readFileSync(join(root, name), 'utf8')).version;
      return {
        contents: `
          export const packageName = 'joiners-reckoner';
          export const packageVersion = ${JSON.stringify(version('package.json'))};
          export const compilerVersion = () => ${JSON.stringify(version('node_modules/typescript/package.json'))};`,
        loader: 'js',
      };
    });
  },
};

/** Pictures named in CSS are data URLs, pictures imported by code are text: the same file, two loaders. */
const cssPictures = {
  name: 'css-pictures',
  setup(build) {
    build.onResolve({ filter: /\.svg$/ }, async (args) => {
      if (args.kind !== 'url-token' || args.pluginData === 'url') return undefined;
      const { path } = await build.resolve(args.path, {
        kind: args.kind,
        resolveDir: args.resolveDir,
        pluginData: 'url',
      });
      return { path, namespace: 'picture' };
    });
    build.onLoad({ filter: /.*/, namespace: 'picture' }, (args) => ({
      contents: readFileSync(args.path),
      loader: 'dataurl',
    }));
  },
};

/** Builds dist/page unless it is current. `packages`: names of the packages that are in it. */
export async function buildPage({ force = false, report = false } = {}) {
  const last = lastBuild();
  if (!force && last !== undefined && isCurrent(last)) return { built: false, packages: last.packages };
  const esbuild = await import('esbuild');
  rmSync(draft, { recursive: true, force: true });
  mkdirSync(draft, { recursive: true });
  const worker = await buildRecipeWorker(root, draft);
  const result = await esbuild.build({
    absWorkingDir: root,
    entryPoints: entries,
    outdir: draft,
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    minify: true,
    metafile: true,
    entryNames: '[name]-[hash]',
    chunkNames: 'chunk-[name]-[hash]',
    assetNames: 'font-[name]-[hash]',
    loader: { '.woff2': 'file', '.woff': 'empty', '.ttf': 'empty', '.eot': 'empty', '.png': 'dataurl' },
    alias: { path: join(source, 'shims', 'path.ts') },
    inject: [join(source, 'shims', 'process.ts')],
    define: {
      'process.env.NODE_ENV': '"production"',
      global: 'globalThis',
      RECIPE_WORKER: JSON.stringify(`./${worker.file}`),
    },
    plugins: [cssPictures, packages, versions],
    logLevel: 'warning',
    legalComments: 'none',
  });
  for (const name of ['mark.svg', 'theme-init.js']) copyFileSync(join(source, name), join(draft, name));
  writeFileSync(join(draft, 'manifest.json'), JSON.stringify(manifestOf(result.metafile), null, 1));
  if (report) writeFileSync(join(draft, 'meta.json'), JSON.stringify(result.metafile));
  const bundled = [...new Set([...bundledPackages(result.metafile), ...worker.packages])];
  const sources = [...new Set([...sourcesOf(result.metafile), ...worker.sources])];
  const files = Object.fromEntries(sources.map((path) => [path, hashOf(path)]));
  writeFileSync(join(draft, 'stamp.json'), JSON.stringify({ files, packages: bundled }));
  rmSync(target, { recursive: true, force: true });
  renameSync(draft, target);
  return { built: true, packages: bundled };
}

/** Every file whose change makes the page out of date. */
function sourcesOf(metafile) {
  const own = Object.keys(metafile.inputs).filter((path) => path.startsWith('src/'));
  const copied = readdirSync(source).filter((name) => /\.(svg|js)$/.test(name));
  return [
    ...new Set([
      ...own,
      ...copied.map((name) => `src/page/${name}`),
      'src/launch/page.mjs',
      'package-lock.json',
    ]),
  ];
}

/** For each page: its script, its style, and the scripts it will ask for first, so that the browser can fetch them at once. */
function manifestOf(metafile) {
  const named = (file) => relative(draft, join(root, file));
  const imported = (file, found = new Set()) => {
    for (const next of metafile.outputs[file]?.imports ?? []) {
      if (next.kind !== 'import-statement' || next.external || found.has(next.path)) continue;
      found.add(next.path);
      imported(next.path, found);
    }
    return [...found];
  };
  const page = (entry) => {
    const [path, output] = Object.entries(metafile.outputs).find(([, o]) => o.entryPoint === entry);
    return {
      js: named(path),
      css: output.cssBundle ? [named(output.cssBundle)] : [],
      preload: imported(path).map(named),
    };
  };
  return Object.fromEntries(Object.entries(entries).map(([name, entry]) => [name, page(entry)]));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const began = Date.now();
  const { built } = await buildPage({
    force: process.argv.includes('--force'),
    report: process.argv.includes('--report'),
  });
  console.log(built ? `page built in ${((Date.now() - began) / 1000).toFixed(1)} s` : 'page unchanged');
}
