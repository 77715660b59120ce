// npm run soak: ten thousand cells with 500 interrupts and 50 restarts over the private channel; memory has to stay flat.
// `npm run soak -- --short` runs a fiftieth of it, for CI.
import { readFileSync } from 'node:fs';
import { spawnKernel } from '../../dist/kernel/kernel-process.js';

const short = process.argv.includes('--short');
const restarts = short ? 2 : 50;
const cells = short ? 100 : 200;
const interrupts = short ? 5 : 10;

/** A kernel as the notebook server starts it, and a way to run a cell: when it has begun, and what it answers. */
async function start() {
  const child = await spawnKernel({ cwd: process.cwd() });
  const waiting = new Map();
  child.onMessage(({ header, parent_header: parent, content }) => {
    const wait = waiting.get(parent.msg_id);
    if (header.msg_type === 'execute_input') wait?.begun();
    if (header.msg_type === 'execute_reply') wait?.replied(content);
  });
  let last = 0;
  const run = (code) => {
    const msg_id = `s${++last}`;
    const wait = {};
    wait.started = new Promise((resolve) => (wait.begun = resolve));
    wait.reply = new Promise((resolve, reject) => {
      wait.replied = resolve;
      setTimeout(() => reject(new Error(`no reply within 30 s to ${code}`)), 30_000).unref();
    }).finally(() => waiting.delete(msg_id));
    waiting.set(msg_id, wait);
    const header = {
      msg_id,
      msg_type: 'execute_request',
      session: 's',
      username: 'u',
      date: '',
      version: '5.3',
    };
    child.send({
      channel: 'shell',
      header,
      parent_header: {},
      metadata: {},
      content: { code, store_history: true },
    });
    return wait;
  };
  return { child, run };
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
  const kernel = await start();
  await kernel.run('let sum = 0; const add = (n: number) => (sum += n); interface Row { n: number }').reply;
  for (let i = 1; i <= cells; i++) {
    const reply = await kernel.run(`const row${i % 20}: Row = { n: ${i} }; add(row${i % 20}.n)`).reply;
    expect(reply.status === 'ok', `cell ${i} of life ${life}: ${JSON.stringify(reply)}`);
    ran++;
    if (i % (cells / interrupts) !== 0) continue;
    const loop = kernel.run(loops[(i / (cells / interrupts)) % loops.length]);
    await loop.started;
    await kernel.child.interrupt();
    const end = await loop.reply;
    expect(end.ename === 'Interrupted', `interrupt after cell ${i} of life ${life}: ${JSON.stringify(end)}`);
    stopped++;
  }
  const kept = await kernel.run(
    `if (sum !== ${(cells * (cells + 1)) / 2}) throw new Error('the sum is ' + sum)`,
  ).reply;
  expect(kept.status === 'ok', `values after life ${life}: ${kept.evalue}`);
  atEnd.push(memory(kernel));
  await kernel.child.shutdown();
}

// One long life: memory once warm against memory at the end.
const kernel = await start();
const long = short ? 600 : 10_000;
const marks = [];
for (let i = 1; i <= long; i++) {
  const reply = await kernel.run(`const a${i % 50} = [${i}, 2].map((x) => x * 2); a${i % 50}[0]`).reply;
  expect(reply.status === 'ok', `long life, cell ${i}: ${JSON.stringify(reply)}`);
  if (i % (long / 10) === 0) marks.push(memory(kernel));
}
await kernel.child.shutdown();
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
