/**
 * The kernel's process. The sockets get a thread of their own and are open before the compiler is loaded here:
 * `node main.js --connection FILE` for Jupyter, `node main.js --pipe 3` for our own notebook server.
 */
import { spawn } from 'node:child_process';
import { MessageChannel, Worker } from 'node:worker_threads';
import { distPath } from './dist-path.js';
import type { NativeCompiler } from './native/native-checker.js';
import { smallMemoryVariable } from './snapshot/snapshot-paths.js';
import { snapshotState } from './snapshot/snapshot-state.js';
import { signalChildren } from './transport/interrupt.js';
import { SharedState, ExecutionPhase, type IoThreadData } from './transport/ipc.js';

function readTransport(args: string[]): IoThreadData['transport'] {
  const [option, value] = args;
  if (option === '--connection' && value) return { connectionFile: value };
  if (option === '--pipe' && /^\d+$/.test(value ?? '')) return { descriptor: Number(value) };
  process.stderr.write(
    'reckoner kernel: takes --connection FILE (from Jupyter) or --pipe DESCRIPTOR (from its own notebook server)\n',
  );
  process.exit(2);
}

if (process.argv[2] === '--check') {
  const { check } = await import('./snapshot/smoke-test.js');
  process.exit(await check());
}
/** The native compiler, if the environment asks for it and it is installed; the kernel works without it. */
async function loadNative(): Promise<NativeCompiler | undefined> {
  if (!process.env['RECKONER_CHECKER']) return undefined;
  const { loadNativeCompiler } = await import('./native/native-checker.js');
  return loadNativeCompiler(process.env).catch((error: unknown) => {
    process.stderr.write(`reckoner kernel: ${error instanceof Error ? error.message : String(error)}\n`);
    return undefined;
  });
}

const transport = readTransport(process.argv.slice(2));
const flags = new Int32Array(new SharedArrayBuffer(SharedState.size * 4));
Atomics.store(flags, SharedState.phase, ExecutionPhase.compiling);
const requests = new MessageChannel();
const answers = new MessageChannel();
const worker = new Worker(
  distPath('connectionFile' in transport ? 'kernel/zmq-worker.js' : 'kernel/stdio-worker.js'),
  {
    workerData: {
      transport,
      flags,
      port: requests.port2,
      answers: answers.port2,
    } satisfies IoThreadData,
    transferList: [requests.port2, answers.port2],
  },
);
const writeError = process.stderr.write.bind(process.stderr);
const exit = process.exit.bind(process);
worker.on('error', (error) => {
  writeError(`reckoner kernel: ${error.stack ?? String(error)}\n`);
  exit(1);
});

// The I/O thread is starting; only now is the larger part of the kernel loaded.
const [{ KernelDispatcher }, { nodeDispatcherHost }, { storeCompilerCode }, native] = await Promise.all([
  import('./dispatcher/dispatcher.js'),
  import('./dispatcher/node-dispatcher-host.js'),
  import('./compiler/compiler-loader.js'),
  loadNative(),
]);
const dispatcher = new KernelDispatcher(
  nodeDispatcherHost({
    data: { transport, flags, port: requests.port1, answers: answers.port1 },
    cwd: process.cwd(),
    native,
    exit: () => {
      // What the cells started ends with the kernel.
      signalChildren('SIGKILL');
      exit(0);
    },
  }),
);
process.on('uncaughtException', (error) => dispatcher.session.reportUncaught(error));
process.on('unhandledRejection', (error) => dispatcher.session.reportUncaught(error));
// From a terminal; Jupyter interrupts by message.
process.on('SIGINT', () => dispatcher.session.interrupt());
process.exit = () => {
  throw new Error(
    "process.exit() would end the kernel and every cell's values with it; use Restart or Shut down instead",
  );
};
void dispatcher.session.executor.warm().catch((error: unknown) => dispatcher.session.reportUncaught(error));
dispatcher.start();
if (!snapshotState()) {
  // After the first cells, so that the next start is faster.
  setTimeout(() => {
    storeCompilerCode();
    if (process.env[smallMemoryVariable]) return;
    spawn(process.execPath, [distPath('kernel/snapshot-main.js')], { detached: true, stdio: 'ignore' })
      .on('error', () => undefined)
      .unref();
  }, 2_500).unref();
}
