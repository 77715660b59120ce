/** Loads the TypeScript compiler once, from the startup snapshot, from cached machine code or from its text. */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import Module, { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { startupSnapshot } from 'node:v8';
import vm from 'node:vm';
import { cacheFolder, distPath } from '../dist-path.js';
import { snapshotState } from '../snapshot/snapshot-state.js';
import type { Compiler } from './typescript-internals.js';

const require = createRequire(import.meta.url);
const minified = distPath('kernel/compiler.cjs');

/** The compiler's text: minified by the build, else as the package has it. */
export const compilerFile = existsSync(minified) ? minified : require.resolve('typescript');

/** The folder of the standard library's type files, for a tree that is not built: see dist/kernel/lib.d.ts. */
export const libFolder = dirname(compilerFile);

/** The folder that holds `node`, the typings of Node's own modules: read when a cell imports one. */
export const nodeTypesFolder = dirname(dirname(require.resolve('@types/node/package.json')));

type ModuleBody = (
  exports: object,
  require: NodeJS.Require,
  module: object,
  file: string,
  folder: string,
) => void;

let compiler: Compiler | undefined;
let script: vm.Script | undefined;
let codeFile = '';
let codeIsFresh = false;

/** The compiler, loaded at the first call. */
export function loadCompiler(): Compiler {
  compiler ??= startupSnapshot.isBuildingSnapshot()
    ? compilerForSnapshot()
    : (snapshotState()?.compiler ?? compilerFromDisk());
  return compiler;
}

/** With the machine code of an earlier run this takes a third of the time. */
function compilerFromDisk(): Compiler {
  const { size, mtimeMs } = statSync(compilerFile);
  // V8 accepts cached code only under the options it was made with.
  const origin = [compilerFile, size, mtimeMs, process.version, process.arch, ...process.execArgv].join(' ');
  const key = createHash('sha256').update(origin).digest('hex');
  codeFile = join(cacheFolder, `compiler-${key.slice(0, 16)}.bin`);
  let cachedData: Buffer | undefined;
  try {
    cachedData = readFileSync(codeFile);
  } catch {
    // First start on this machine: the text is compiled.
  }
  script = new vm.Script(Module.wrap(readFileSync(compilerFile, 'utf8')), {
    filename: compilerFile,
    cachedData,
  });
  codeIsFresh = cachedData === undefined || script.cachedDataRejected === true;
  return runModule(script.runInThisContext() as ModuleBody);
}

/** The compiler in a form that a snapshot can hold: without a handle on a V8 script, and from the minified text. */
function compilerForSnapshot(): Compiler {
  const text = readFileSync(compilerFile, 'utf8');
  const names = ['exports', 'require', 'module', '__filename', '__dirname'];
  // eslint-disable-next-line @typescript-eslint/no-implied-eval -- a vm.Script cannot be part of a startup snapshot
  return runModule(new Function(...names, text) as ModuleBody);
}

function runModule(body: ModuleBody): Compiler {
  const module = { exports: {} };
  body(module.exports, createRequire(compilerFile), module, compilerFile, libFolder);
  return module.exports as Compiler;
}

/** Stores the compiler's machine code, with the functions used so far, for the next start. Failing costs only time. */
export function storeCompilerCode(): void {
  if (!script || !codeIsFresh) return;
  codeIsFresh = false;
  try {
    mkdirSync(cacheFolder, { recursive: true });
    const draft = `${codeFile}.${process.pid}`;
    writeFileSync(draft, script.createCachedData());
    renameSync(draft, codeFile);
  } catch {
    // A read-only home: every start compiles the text again.
  }
}
