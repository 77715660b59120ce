// Builds the worker that runs the cells of a site: the package's public face with the tables of data/ inside it. What only Node has is
// there by name and says so when it is called; the demo's files are read as if they lay beside the notebook.
import { mkdirSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { builtinModules, createRequire } from 'node:module';
import { basename, join } from 'node:path';
import { dataStandIn } from './data-stand-in.mjs';
import { bundledPackages } from './notices.mjs';

const require = createRequire(import.meta.url);
const entry = 'src/site/kernel-worker.ts';

const textsBelow = (folder, wanted) =>
  Object.fromEntries(
    readdirSync(folder)
      .filter((name) => wanted.test(name))
      .map((name) => [name, readFileSync(join(folder, name), 'utf8')]),
  );

const writing =
  'writeFileSync mkdirSync renameSync rmSync unlinkSync openSync closeSync fsyncSync writeSync lstatSync mkdtempSync accessSync chmodSync copyFileSync linkSync realpathSync readlinkSync fstatSync';

/**
 * The files that cells can read: those of the demo, and the user's own, which come with the worker's first message (see
 * src/site/kernel-worker.ts). A path is looked up by what follows data/demo/, or the notebook's folder.
 */
const filesModule = (demo) => `
  const demo = ${JSON.stringify(demo)};
  const nameOf = (path) => String(path).replace(/^.*data\\/demo\\//, '').replace(/^(?:\\/notebook\\/|\\.\\/|\\/)/, '');
  export const fileText = (path) => {
    const own = globalThis.reckonerFiles ?? {};
    const name = nameOf(path);
    return Object.hasOwn(own, name) ? own[name] : Object.hasOwn(demo, name) ? demo[name] : undefined;
  };`;

/** Node's reading of files, over those; everything that writes throws when it is used. */
const fsModule = `
  import { fileText } from 'site-files';
  const read = (path) => {
    const text = fileText(path);
    if (text === undefined) throw Object.assign(new Error('no file ' + path + ' in this site'), { code: 'ENOENT' });
    return text;
  };
  class Bytes extends Uint8Array { toString() { return new TextDecoder().decode(this); } }
  export const existsSync = (path) => fileText(path) !== undefined;
  export const readFileSync = (path, encoding) => encoding === undefined ? Bytes.from(new TextEncoder().encode(read(path))) : read(path);
  export const statSync = (path) => ({ isFile: () => true, isDirectory: () => false, size: read(path).length, mtimeMs: 0 });
  const refuse = () => { throw Object.assign(new Error('a site keeps files in the browser alone; to write files, start the program on your own machine (npm start)'), { code: 'EROFS' }); };
  ${writing
    .split(' ')
    .map((name) => `export const ${name} = refuse;`)
    .join('\n  ')}
  export const readdirSync = () => [];
  export const constants = {};
  export default { existsSync, readFileSync, statSync, readdirSync };`;

/** A module of Node's that a browser lacks: every name of it is a function that says so. */
function absentModule(name) {
  const own = builtinModules.includes(name) ? Object.keys(require(`node:${name}`)) : [];
  const names = own.filter((n) => /^[A-Za-z_$][\w$]*$/.test(n) && n !== 'default');
  return `
  const say = () => { throw new Error("Node's module ${name} is not in a browser; start the program on your own machine (npm start)"); };
  ${names.map((n) => `const own_${n} = say; export { own_${n} as ${n} };`).join(' ')}
  export default new Proxy(say, { get: (t, k) => typeof k === 'symbol' ? undefined : say });`;
}

/** Where a program's own files would be; none are there. */
const systemModule = `
  export const homedir = () => '/'; export const tmpdir = () => '/'; export const EOL = '\\n';
  export const availableParallelism = () => 1; export const cpus = () => []; export const platform = () => 'browser';
  export default { homedir, tmpdir, EOL };`;

const nodeModules = (root, demo) => ({
  name: 'node-modules',
  setup(build) {
    const names = new Set(builtinModules);
    build.onResolve({ filter: /^(?:node:)?[a-z_/]+$/ }, ({ path }) => {
      const name = path.replace(/^node:/, '');
      if (!names.has(name)) return undefined;
      if (name === 'path') return { path: join(root, 'src/page/shims/path.ts') };
      if (name === 'util') return { path: join(root, 'node_modules/node-inspect-extracted/dist/inspect.js') };
      return { path: name, namespace: 'node-module' };
    });
    build.onLoad({ filter: /.*/, namespace: 'node-module' }, ({ path }) => ({
      contents: path === 'fs' ? fsModule : path === 'os' ? systemModule : absentModule(path),
      loader: 'js',
      resolveDir: root,
    }));
    build.onLoad({ filter: /[\\/]src[\\/]explore[\\/]danfo\.ts$/ }, () => ({
      contents: `
        import { InputError } from '../units/input-error.js';
        export function danfo() { throw new InputError('frame: data frames need the program on your own machine (npm start); in a browser use toJSON or toCSV'); }`,
      loader: 'js',
      resolveDir: join(root, 'src/explore'),
    }));
    build.onResolve({ filter: /^site-files$/ }, ({ path }) => ({ path, namespace: 'site-files' }));
    build.onLoad({ filter: /.*/, namespace: 'site-files' }, () => ({
      contents: filesModule(demo),
      loader: 'js',
    }));
    build.onResolve({ filter: /^(?:danfojs-node|tslab|zeromq|canvas|esbuild|sharp)/ }, ({ path }) => ({
      path,
      namespace: 'node-module',
    }));
  },
});

/** Puts the worker into `folder`. Gives its file name and the packages in it. */
export async function buildKernelWorker(root, folder) {
  const esbuild = await import('esbuild');
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const tables = textsBelow(join(root, 'data'), /\.(?:csv|json)$/);
  for (const [name, text] of Object.entries(textsBelow(join(root, 'data/checks'), /\.json$/)))
    tables[`checks/${name}`] = text;
  const { metafile } = await esbuild.build({
    absWorkingDir: root,
    entryPoints: { 'kernel-worker': entry },
    outdir: folder,
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    minify: true,
    keepNames: true,
    metafile: true,
    charset: 'utf8',
    legalComments: 'none',
    logLevel: 'warning',
    entryNames: '[name]-[hash]',
    chunkNames: 'kernel-worker-[name]-[hash]',
    inject: [join(root, 'src/page/shims/process.ts')],
    define: { 'process.env.NODE_ENV': '"production"', global: 'globalThis' },
    plugins: [
      dataStandIn(
        'this site',
        'tables',
        `import { fileText } from 'site-files'; const tables = ${JSON.stringify(tables)};`,
        'fileText',
      ),
      nodeModules(root, textsBelow(join(root, 'data/demo'), /\.(?:csv|json)$/)),
    ],
  });
  const [file] = Object.entries(metafile.outputs).find(([, output]) => output.entryPoint === entry);
  return { file: basename(file), packages: bundledPackages(metafile) };
}
