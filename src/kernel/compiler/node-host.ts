/** The compiler's host in the kernel: Node's file system and the folders of this package. */
import { readFileSync, realpathSync, statSync } from 'node:fs';
import { distPath, packageName, packageRoot } from '../dist-path.js';
import { missingModule } from '../optional-packages.js';
import { nodeGlobals } from './cell-types.js';
import { libFolder, loadCompiler, nodeTypesFolder } from './compiler-loader.js';
import { IncrementalProgram } from './incremental-program.js';
import type { ProgramHost } from './program-host.js';
import { isNodeModule } from './specifiers.js';

const slashes = (path: string): string => path.replaceAll('\\', '/');

const statOf = (path: string): ReturnType<typeof statSync> => statSync(path, { throwIfNoEntry: false });

export const nodeHost: ProgramHost = {
  readText(path) {
    try {
      return readFileSync(path, 'utf8');
    } catch {
      return undefined;
    }
  },
  isFile: (path) => statOf(path)?.isFile() ?? false,
  isFolder: (path) => statOf(path)?.isDirectory() ?? false,
  realPath(path) {
    try {
      return slashes(realpathSync.native(path));
    } catch {
      return path;
    }
  },
  modifiedAt: (path) => Number(statOf(path)?.mtimeMs ?? Number.NaN) || undefined,
  isPlatformModule: isNodeModule,
  missingModule,
  globals: nodeGlobals,
  caseSensitive: process.platform !== 'win32' && process.platform !== 'darwin',
  paths: {
    packageName,
    packageRoot: slashes(packageRoot),
    declarations: `${slashes(distPath(''))}/`,
    flatLibrary: slashes(distPath('kernel/lib.d.ts')),
    libraryFolder: slashes(libFolder),
    nodeTypes: slashes(nodeTypesFolder),
    exportIndex: slashes(distPath('kernel/names.json')),
  },
};

/** A program whose cells resolve files and packages from `cwd`. */
export const createNodeProgram = (cwd: string): IncrementalProgram =>
  new IncrementalProgram(loadCompiler(), nodeHost, cwd);
