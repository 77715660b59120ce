/**
 * The kernel's process. The wires get a thread of their own and are open before the compiler is loaded here:
 * `node main.js --connection FILE` for Jupyter, `node main.js --pipe 3` for our own notebook server.
 */
import { spawn } from 'node:child_process';
import { MessageChannel, Worker } from 'node:worker_threads';
import { built } from './place.ts';
import { frozen } from './start/frozen.ts';
import { Flag, Phase, type WireData } from './wires/envelope.ts';

function transport(args: string[]): WireData['transport'] {
  const [option, value] = args;
  if (option === '--connection' && value) return { connectionFile: value };
  if (option === '--pipe' && /^\d+$/.test(value ?? '')) return { descriptor: Number(value) };
  process.stderr.write('reckoner kernel: takes --connection FILE (from Jupyter) or --pipe DESCRIPTOR (from its own notebook server)\n');
  process.exit(2);
}

if (process.argv[2] === '--check') {
  const { check } = await import('./start/check.ts');
  process.exit(await check());
}
const wires = transport(process.argv.slice(2));
const flags = new Int32Array(new SharedArrayBuffer(Flag.size * 4));
Atomics.store(flags, Flag.phase, Phase.compiling);
const requests = new MessageChannel();
const answers = new MessageChannel();
const worker = new Worker(built('connectionFile' in wires ? 'kernel/wire.js' : 'kernel/pipe.js'), {
  workerData: { transport: wires, flags, port: requests.port2, answers: answers.port2 } satisfies WireData,
  transferList: [requests.port2, answers.port2],
});
const say = process.stderr.write.bind(process.stderr);
const exit = process.exit.bind(process);
worker.on('error', (error) => {
  say(`reckoner kernel: ${error.stack ?? String(error)}\n`);
  exit(1);
});

// The wires' thread is on its way; only now is the larger part of the kernel read.
const [{ Desk }, { keepCompilerCode }] = await Promise.all([import('./desk/desk.ts'), import('./tslab.ts')]);
const desk = new Desk({ transport: wires, flags, port: requests.port1, answers: answers.port1 }, process.cwd(), () => exit(0));
process.on('uncaughtException', (error) => desk.session.reportStray(error));
process.on('unhandledRejection', (error) => desk.session.reportStray(error));
// From a terminal; Jupyter asks by message.
process.on('SIGINT', () => desk.session.interrupt());
process.exit = (() => {
  throw new Error("process.exit() would end the kernel and every cell's values with it; use Restart or Shut down instead");
}) as typeof process.exit;
void desk.session.executor.warm().catch((error: unknown) => desk.session.reportStray(error));
desk.open();
if (!frozen()) {
  // Once the first cells have run: the next start is to be quicker than this one.
  setTimeout(() => {
    keepCompilerCode();
    spawn(process.execPath, [built('kernel/freezer.js')], { detached: true, stdio: 'ignore' }).on('error', () => undefined).unref();
  }, 2_500).unref();
}
