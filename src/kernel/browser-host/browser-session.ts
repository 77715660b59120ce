/** A session in a browser's worker. */
import { inspect } from 'node-inspect-extracted';
import type { SessionOptions } from '../cell-session.js';
import { IncrementalProgram } from '../compiler/incremental-program.js';
import type { Compiler } from '../compiler/typescript-internals.js';
import { CoreSession } from '../core-session.js';
import { setInspect } from '../display/value-text.js';
import type { SessionHost } from '../session-host.js';
import { browserExecution, type ModuleTable } from './browser-execution.js';
import { browserProgramHost, notebookFolder, type TextFiles } from './browser-program-host.js';
import { WorkerConsole } from './worker-console.js';

export interface BrowserParts {
  compiler: Compiler;
  /** The types, and files beside the notebook. */
  files: TextFiles;
  modules: ModuleTable;
}

function browserSessionHost({ compiler, files, modules }: BrowserParts): SessionHost {
  setInspect(inspect);
  const host = browserProgramHost(files);
  return {
    openPrograms: () => {
      const program = new IncrementalProgram(compiler, host, notebookFolder);
      return { checking: program, language: () => program, record: () => undefined, close: () => undefined };
    },
    openExecution: () => browserExecution(modules, host.paths.packageName),
    captureConsole: (write) => new WorkerConsole(write),
  };
}

export const createBrowserSession = (parts: BrowserParts, options: SessionOptions = {}): CoreSession =>
  new CoreSession(browserSessionHost(parts), options);

/** The compiler from its text, which is a CommonJS module; what it would need of Node is not there. */
export function compilerFrom(text: string): Compiler {
  const module = { exports: {} };
  // eslint-disable-next-line @typescript-eslint/no-implied-eval, @typescript-eslint/no-unsafe-call -- the compiler comes with the page
  new Function('exports', 'module', text)(module.exports, module);
  return module.exports as Compiler;
}
