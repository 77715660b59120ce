/** How cells run in Node. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import vm from 'node:vm';
import { MessageChannel } from 'node:worker_threads';
import type { CompiledCell } from '../compiler/compile-cell.js';
import type { NbOutput } from '../message.js';
import type { CellBody, ExecutionHost, TaskQueue } from '../session-host.js';
import { bodySource, headLines } from './body-source.js';
import { ModuleLoader } from './module-loader.js';

/** Tasks that each begin with a message. */
class MessageTasks implements TaskQueue {
  private readonly channel = new MessageChannel();
  private readonly pending: (() => void)[] = [];

  constructor() {
    this.channel.port2.on('message', () => this.pending.shift()?.());
    this.channel.port2.unref();
  }

  post(work: () => void): void {
    this.pending.push(work);
    this.channel.port1.postMessage(null);
  }

  ref(): void {
    this.channel.port2.ref();
  }

  unref(): void {
    this.channel.port2.unref();
  }

  close(): void {
    this.channel.port1.close();
  }
}

/** `file` is the notebook's, if it is known; `emit` takes the outputs of libraries that display by themselves. */
export function nodeExecution(
  cwd: string,
  file: string | undefined,
  emit: (output: NbOutput) => void,
): ExecutionHost {
  const filename = file ?? join(cwd, 'cell.ts');
  return {
    loader: new ModuleLoader(cwd, emit),
    tasks: new MessageTasks(),
    meta: { url: pathToFileURL(filename).href, dirname: cwd, filename },
    stack: {
      lineOffset: 0,
      isKernelFrame: (line) =>
        /node:internal|node:vm|\/dist\/(?:chunks|kernel)\/|src\/kernel\/|node:events/.test(line),
    },
    compileBody,
  };
}

function compileBody(cell: CompiledCell, label: string): CellBody {
  // Not a vm.Script: Node 20 keeps a little of each for good, which adds up over ten thousand cells.
  const make = vm.compileFunction(bodySource(cell), [], {
    filename: label,
    lineOffset: -headLines,
    importModuleDynamically: vm.constants.USE_MAIN_CONTEXT_DEFAULT_LOADER,
  }) as () => CellBody;
  return make();
}
