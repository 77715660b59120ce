/**
 * The one door to tslab: its bundled TypeScript compiler, its test for unfinished cells and its printer of type
 * information. All three are reached by paths inside the package, so its version is pinned exactly and
 * tests/kernel/tslab.test.ts fails if anything used here changes its shape.
 */
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import Module, { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { startupSnapshot } from 'node:v8';
import vm from 'node:vm';
import type TS from 'typescript';
import { cacheFolder } from '../dist-path.js';
import { snapshotState } from '../snapshot/snapshot-state.js';
import { compilerTextVariable } from '../snapshot/snapshot-paths.js';

/** What the compiler offers its own language service and the kernel needs too, though its typings leave it out. */
export interface CompilerInside {
  bindSourceFile(file: TS.SourceFile, options: TS.CompilerOptions): void;
  isExpressionNode(node: TS.Node): boolean;
  getQuickInfoAtPosition(
    file: TS.SourceFile,
    checker: TS.TypeChecker,
    token: object,
    position: number,
  ): TS.QuickInfo | undefined;
  Completions: {
    getCompletionsAtPositionForTslab(
      host: object,
      program: TS.Program,
      log: (text: string) => void,
      file: TS.SourceFile,
      position: number,
      preferences: TS.UserPreferences,
      trigger: string | undefined,
      kind: number,
      token: object,
    ): TS.CompletionInfo | undefined;
  };
}

export type Compiler = typeof TS & CompilerInside;

interface Converter {
  isCompleteCode(code: string): { completed: boolean; indent?: string };
}
interface Inspector {
  printQuickInfo(info: TS.QuickInfo): string;
}

const require = createRequire(import.meta.url);
export const compilerFile = createRequire(require.resolve('tslab')).resolve('@tslab/typescript-for-tslab');

/** The folder of the standard library's type files. */
export const libFolder = dirname(compilerFile);

/** The folder holding the @types/node that tslab brings along: used when a cell imports a module of Node's own. */
export const nodeTypesFolder = dirname(
  dirname(createRequire(require.resolve('tslab')).resolve('@types/node/package.json')),
);

let compiler: Compiler | undefined;
let script: vm.Script | undefined;
let codeFile = '';
let codeIsFresh = false;

/** Loads the compiler once: from the frozen start if this process began there, else from the disk. */
export function loadCompiler(): Compiler {
  if (compiler) return compiler;
  if (startupSnapshot.isBuildingSnapshot()) return (compiler = compilerForSnapshot());
  compiler = snapshotState()?.compiler ?? compilerFromDisk();
  // tslab's own converter asks for the compiler by `require`: it gets this one instead of loading a second.
  const module = Object.assign(new Module(compilerFile), { exports: compiler, loaded: true });
  (require.cache as Record<string, unknown>)[compilerFile] = module;
  return compiler;
}

/** With the machine code of an earlier run at hand this takes a third of the time. */
function compilerFromDisk(): Compiler {
  const { size, mtimeMs } = statSync(compilerFile);
  // The engine takes machine code back only under the options it was made with.
  const made = [compilerFile, size, mtimeMs, process.version, process.arch, ...process.execArgv].join(' ');
  const key = createHash('sha256').update(made).digest('hex');
  codeFile = join(cacheFolder, `compiler-${key.slice(0, 16)}.bin`);
  let cachedData: Buffer | undefined;
  try {
    cachedData = readFileSync(codeFile);
  } catch {
    // First start on this machine: the plain text is compiled.
  }
  script = new vm.Script(Module.wrap(readFileSync(compilerFile, 'utf8')), {
    filename: compilerFile,
    cachedData,
  });
  codeIsFresh = cachedData === undefined || script.cachedDataRejected === true;
  const module = new Module(compilerFile);
  module.filename = compilerFile;
  const run = script.runInThisContext() as (
    exports: object,
    require: NodeRequire,
    module: object,
    file: string,
    folder: string,
  ) => void;
  run(module.exports as object, createRequire(compilerFile), module, compilerFile, libFolder);
  return module.exports as Compiler;
}

/** The compiler as it can be frozen: without a handle on a script of the engine's, and from the text that freezer.ts prepared. */
function compilerForSnapshot(): Compiler {
  const module = { exports: {} };
  const run = new Function(
    'exports',
    'require',
    'module',
    '__filename',
    '__dirname',
    readFileSync(process.env[compilerTextVariable] ?? compilerFile, 'utf8'),
  ) as (...given: unknown[]) => void;
  run(module.exports, createRequire(compilerFile), module, compilerFile, libFolder);
  return module.exports as Compiler;
}

/** Keeps the compiler's machine code, with the functions used so far, for the next start. Losing it costs only time. */
export function keepCompilerCode(): void {
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

function converter(): Converter {
  loadCompiler();
  return require('tslab/dist/converter.js') as Converter;
}

/** Whether a cell's text is finished, and if not, how far the next line is indented. */
export function isCompleteCode(code: string): { completed: boolean; indent?: string } {
  return converter().isCompleteCode(code);
}

/** A symbol's type and documentation as plain text. */
export function printQuickInfo(info: TS.QuickInfo): string {
  return (require('tslab/dist/inspect.js') as Inspector).printQuickInfo(info);
}
