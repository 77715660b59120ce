// Builds dist/: JavaScript by esbuild (one pass, shared chunks, so the command and the kernel start fast),
// declarations by the TypeScript compiler. Plain JavaScript because it runs before anything is compiled.
import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, readdirSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { dirname, join } from 'node:path';
import { buildBrowserModules } from './browser-modules.mjs';
import { writeInterfaces } from './recipe-interfaces.mjs';
import { writeCatalogue } from './catalogue.mjs';
import { writeCellCompiler } from './cell-compiler.mjs';
import { writeCellLib } from './cell-lib.mjs';
import { writeCellNames } from './cell-names.mjs';
import { documentDeclarations } from './documented-declarations.mjs';
import { buildHandoutModules } from './handout-modules.mjs';
import { buildKernelWorker } from './kernel-worker.mjs';
import { buildPage } from './page.mjs';
import { bundledPackages, writeNotices } from './notices.mjs';
import { buildSnapshotBuilder, removeSnapshot } from './snapshot.mjs';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Entry points that exist: the public face, the command, and the processes the kernel and the page start. */
const entries = {
  index: 'src/index.ts',
  cli: 'src/cli/cli.ts',
  'kernel/main': 'src/kernel/main.ts',
  'kernel/zmq-worker': 'src/kernel/transport/zmq-worker.ts',
  'kernel/stdio-worker': 'src/kernel/transport/stdio-worker.ts',
  'kernel/snapshot-main': 'src/kernel/snapshot-main.ts',
  'kernel/kernel-process': 'src/kernel/kernel-process.ts',
  'server/serve': 'src/server/serve.ts',
  'server/parent-watch': 'src/server/parent-watch.ts',
};

/**
 * Libraries are bundled, so that an install is small and only the used parts load (mathjs: 0.06 s instead of 0.6 s). Outside stay
 * what is native or WebAssembly, and what a user adds only for notebooks or frames.
 */
const parts = {
  external: [
    'tslab',
    '@tslab/*',
    'zeromq',
    'danfojs-node',
    '@tensorflow/*',
    'highs',
    'esbuild',
    'typescript',
    'canvas',
  ],
  // Its main file is UMD, which hides its parts from a bundler; the same in ESM does not.
  alias: { 'jsonc-parser': 'jsonc-parser/lib/esm/main.js' },
};

export async function build({ declarations = true } = {}) {
  removeSnapshot(root);
  writeCatalogue();
  await writeInterfaces(root);
  writeCellLib(root);
  await writeCellCompiler(root);
  const esbuild = await import('esbuild');
  const entryPoints = Object.fromEntries(
    Object.entries(entries).filter(([, path]) => existsSync(join(root, path))),
  );
  const result = await esbuild.build({
    absWorkingDir: root,
    entryPoints,
    outdir: 'dist',
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    chunkNames: 'chunks/[name]-[hash]',
    sourcemap: 'linked',
    // Names stay; a text without other letters than ASCII takes half the memory while it is loaded.
    minifyWhitespace: true,
    charset: 'ascii',
    legalComments: 'none',
    ...parts,
    banner: {
      js: "import { createRequire as __makeRequire } from 'node:module'; const require = __makeRequire(import.meta.url);",
    },
    logLevel: 'warning',
    metafile: true,
  });
  removeStaleChunks(new Set(Object.keys(result.metafile.outputs)));
  copyMathFonts();
  writeNotices(root, [
    ...bundledPackages(result.metafile),
    ...(await buildHandoutModules(root)),
    ...(await buildBrowserModules(root)),
    ...(await buildPage()).packages,
    ...(await buildKernelWorker(root, join(root, 'dist/kernel-worker'))).packages,
    'katex',
  ]);
  if (declarations && existsSync(join(root, 'src/index.ts'))) {
    const tsc = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
    const run = spawnSync(process.execPath, [tsc, '-p', 'tsconfig.build.json'], {
      cwd: root,
      encoding: 'utf8',
    });
    if (run.status !== 0) process.stderr.write(run.stdout + run.stderr);
    if (run.status !== 0 && process.env.CI) throw new Error('the declarations did not build');
    documentDeclarations(root);
    writeCellNames(root);
    await buildSnapshotBuilder(root, parts);
  }
}

/** KaTeX's style sheet and fonts, which pages with typeset formulas carry inside. */
function copyMathFonts() {
  const from = dirname(createRequire(import.meta.url).resolve('katex'));
  const to = join(root, 'dist', 'katex');
  mkdirSync(join(to, 'fonts'), { recursive: true });
  copyFileSync(join(from, 'katex.min.css'), join(to, 'katex.min.css'));
  for (const font of readdirSync(join(from, 'fonts')).filter((name) => name.endsWith('.woff2')))
    copyFileSync(join(from, 'fonts', font), join(to, 'fonts', font));
}

/** Old chunks go only after the new ones stand: a build that fails, or a kernel that runs meanwhile, keeps a whole dist/. */
function removeStaleChunks(kept) {
  const folder = join(root, 'dist', 'chunks');
  if (!existsSync(folder)) return;
  for (const file of readdirSync(folder)) if (!kept.has(`dist/chunks/${file}`)) rmSync(join(folder, file));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  await build({ declarations: !process.argv.includes('--js-only') });
}
