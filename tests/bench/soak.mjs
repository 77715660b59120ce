// npm run soak: ten thousand cells with 500 interrupts and 50 restarts over the private channel; memory has to stay flat.
// `npm run soak -- --short` runs a fiftieth of it, for CI.
import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

const program = fileURLToPath(new URL('../../dist/kernel/main.js', import.meta.url));
const short = process.argv.includes('--short');
const restarts = short ? 2 : 50;
const cells = short ? 100 : 200;
const interrupts = short ? 5 : 10;

// From the frozen start where there is one, as the notebook server does.
const blob = fileURLToPath(new URL('../../dist/kernel/start.blob', import.meta.url));
const flags = [
  '--no-force-async-hooks-checks',
  '--disable-warning=ExperimentalWarning',
  '--interrupt-budget=500000',
];
if (existsSync(blob)) flags.push('--snapshot-blob', blob);

function start() {
  const child = spawn(process.execPath, [...flags, program, '--pipe', '3'], {
    stdio: ['ignore', 'ignore', 'inherit', 'pipe'],
  });
  const waiting = new Map();
  let last = 0;
  createInterface({ input: child.stdio[3] }).on('line', (line) => {
    const { header, parent_header: parent, content } = JSON.parse(line);
    const wait = waiting.get(parent.msg_id);
    if (header.msg_type === 'execute_input') wait?.begun();
    if (header.msg_type.endsWith('_reply')) wait?.replied(content);
  });
  const ask = (channel, msg_type, content) => {
    const msg_id = `s${++last}`;
    const wait = {};
    wait.started = new Promise((resolve) => (wait.begun = resolve));
    wait.reply = new Promise((resolve, reject) => {
      wait.replied = resolve;
      setTimeout(
        () => reject(new Error(`no reply within 30 s to ${JSON.stringify(content)}`)),
        30_000,
      ).unref();
    }).finally(() => waiting.delete(msg_id));
    waiting.set(msg_id, wait);
    child.stdio[3].write(
      `${JSON.stringify({ channel, header: { msg_id, msg_type, session: 's', username: 'u', date: '', version: '5.3' }, parent_header: {}, metadata: {}, content })}\n`,
    );
    return wait;
  };
  const run = (code) => ask('shell', 'execute_request', { code, store_history: true });
  return { child, ask, run, ended: new Promise((resolve) => child.once('exit', resolve)) };
}

const memory = ({ child }) =>
  Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${child.pid}/status`, 'utf8'))[1]) / 1024;
const expect = (fine, what) => {
  if (!fine) throw new Error(what);
};
const atEnd = [];
const loops = [
  'while (true) {}',
  'await new Promise(() => {})',
  'while (true) { await null }',
  'for (;;) console.log(1)',
];
let ran = 0;
let stopped = 0;
for (let life = 0; life < restarts; life++) {
  const kernel = start();
  await kernel.run('let sum = 0; const add = (n: number) => (sum += n); interface Row { n: number }').reply;
  for (let i = 1; i <= cells; i++) {
    const reply = await kernel.run(`const row${i % 20}: Row = { n: ${i} }; add(row${i % 20}.n)`).reply;
    expect(reply.status === 'ok', `cell ${i} of life ${life}: ${JSON.stringify(reply)}`);
    ran++;
    if (i % (cells / interrupts) !== 0) continue;
    const loop = kernel.run(loops[(i / (cells / interrupts)) % loops.length]);
    await loop.started;
    await kernel.ask('control', 'interrupt_request', {}).reply;
    const end = await loop.reply;
    expect(end.ename === 'Interrupted', `interrupt after cell ${i} of life ${life}: ${JSON.stringify(end)}`);
    stopped++;
  }
  const kept = await kernel.run(
    `if (sum !== ${(cells * (cells + 1)) / 2}) throw new Error('the sum is ' + sum)`,
  ).reply;
  expect(kept.status === 'ok', `values after life ${life}: ${kept.evalue}`);
  atEnd.push(memory(kernel));
  kernel.ask('control', 'shutdown_request', { restart: true }).reply.catch(() => undefined);
  await kernel.ended;
}

// One long life: memory once warm against memory at the end.
const kernel = start();
const long = short ? 600 : 10_000;
const marks = [];
for (let i = 1; i <= long; i++) {
  const reply = await kernel.run(`const a${i % 50} = [${i}, 2].map((x) => x * 2); a${i % 50}[0]`).reply;
  expect(reply.status === 'ok', `long life, cell ${i}: ${JSON.stringify(reply)}`);
  if (i % (long / 10) === 0) marks.push(memory(kernel));
}
kernel.ask('control', 'shutdown_request', { restart: false }).reply.catch(() => undefined);
await kernel.ended;
const whole = (numbers) => numbers.map((n) => n.toFixed(0)).join(' ');
console.log(`${ran} cells, ${stopped} interrupts, ${restarts} lives; MB at the end of each: ${whole(atEnd)}`);
console.log(`${long} cells in one life; MB at each tenth: ${whole(marks)}`);
const [warm, end] = [Math.max(...marks.slice(1, 4)), marks.at(-1)];
const flat = end <= warm * 1.25;
console.log(
  flat
    ? '1 passed, 0 failed'
    : `memory grew from ${warm.toFixed(0)} to ${end.toFixed(0)} MB\n0 passed, 1 failed`,
);
process.exit(flat ? 0 : 1);
