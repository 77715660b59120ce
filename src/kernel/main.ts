/**
 * The kernel's process. The wires get a thread of their own and are open before the compiler is loaded here:
 * `node main.js --connection FILE` for Jupyter, `node main.js --pipe 3` for our own notebook server.
 */
import { MessageChannel, Worker } from 'node:worker_threads';
import { Desk } from './desk/desk.ts';
import { built } from './place.ts';
import { Flag, Phase, type WireData } from './wires/envelope.ts';
import { keepCompilerCode } from './tslab.ts';

function transport(args: string[]): WireData['transport'] {
  const [option, value] = args;
  if (option === '--connection' && value) return { connectionFile: value };
  if (option === '--pipe' && /^\d+$/.test(value ?? '')) return { descriptor: Number(value) };
  process.stderr.write('reckoner kernel: takes --connection FILE (from Jupyter) or --pipe DESCRIPTOR (from its own notebook server)\n');
  process.exit(2);
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
// Kept once the first cells have shown which functions are needed; only if no earlier start has done so.
setTimeout(keepCompilerCode, 2_500).unref();
