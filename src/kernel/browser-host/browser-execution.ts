/** How cells run in a browser's worker. */
import type { CompiledCell } from '../compiler/compile-cell.js';
import { bodySource, headLines } from '../execution/body-source.js';
import type { CellBody, ExecutionHost, ModuleExports, TaskQueue } from '../session-host.js';
import { browserMissingModule, notebookFolder } from './browser-program-host.js';

/** Modules that cells may import, by name: each loaded when the first cell asks for it. */
export type ModuleTable = Readonly<Record<string, () => Promise<ModuleExports>>>;

class MessageTasks implements TaskQueue {
  private readonly channel = new MessageChannel();
  private readonly pending: (() => void)[] = [];

  constructor() {
    this.channel.port2.onmessage = () => this.pending.shift()?.();
  }

  post(work: () => void): void {
    this.pending.push(work);
    this.channel.port1.postMessage(null);
  }

  ref(): void {
    // A worker lives until its page ends it.
  }

  unref(): void {
    // As above.
  }

  close(): void {
    this.channel.port1.close();
    this.channel.port2.close();
  }
}

export function browserExecution(modules: ModuleTable, packageName: string): ExecutionHost {
  const load = async (specifier: string): Promise<ModuleExports> => {
    const found = Object.hasOwn(modules, specifier) ? modules[specifier] : undefined;
    if (!found) throw new Error(browserMissingModule(specifier));
    return found();
  };
  return {
    loader: {
      require: (id: unknown): never => {
        throw new Error(browserMissingModule(String(id)));
      },
      package: () => load(packageName),
      load,
    },
    tasks: new MessageTasks(),
    meta: {
      url: `file://${notebookFolder}/cell.ts`,
      dirname: notebookFolder,
      filename: `${notebookFolder}/cell.ts`,
    },
    stack: {
      // `new Function` puts two lines of its own before the text.
      lineOffset: headLines + 2,
      isKernelFrame: (line) => !/In\[/.test(line),
    },
    compileBody,
  };
}

function compileBody(cell: CompiledCell, label: string): CellBody {
  const text = `${bodySource(cell)}\n//# sourceURL=${label}`;
  // eslint-disable-next-line @typescript-eslint/no-implied-eval, @typescript-eslint/no-unsafe-call -- running what the user wrote is what a notebook is for
  return new Function(text)() as CellBody;
}
