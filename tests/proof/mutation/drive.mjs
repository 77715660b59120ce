// Runs the tests over a copy with faults: a process for each test file, two at a time, stopped and started again past a fault
// that never ends or that leaves the process corrupted. Faults that act while modules load, and those whose work is kept from an
// earlier call, are tried each in a process of its own where the fault is awake from the start.
import { spawn } from 'node:child_process';
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { cpus } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { root } from './copy.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const vitest = join(root, 'node_modules/vitest/vitest.mjs');
/** Runs under way, to be ended with this process. */
const running = new Set();
const end = (pid) => {
  try {
    process.kill(-pid, 'SIGKILL');
  } catch {
    // Ended by itself meanwhile.
  }
};
process.on('exit', () => running.forEach(end));
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => process.exit(1));
const wait = (ms) => new Promise((done) => setTimeout(done, ms));
const parse = (file) =>
  existsSync(file)
    ? readFileSync(file, 'utf8')
        .split('\n')
        .filter(Boolean)
        .map((l) => JSON.parse(l))
    : [];
const mapSet = (map, key) => map.get(key) ?? (map.set(key, new Set()), map.get(key));

export async function drive(folder, faults, testFiles, say) {
  const logs = join(folder, '.faults');
  rmSync(logs, { recursive: true, force: true });
  mkdirSync(logs);
  const wanted = join(logs, 'wanted');
  const noticedFile = join(logs, 'noticed');
  writeFileSync(wanted, faults.map((f) => `${f.id}\n`).join(''));
  writeFileSync(noticedFile, '');
  const seen = {
    /** Fault -> 'noticed' or 'out of time'. */
    end: new Map(),
    /** Fault -> tests that come there; files that come there while they load. */
    tests: new Map(),
    loads: new Map(),
    /** Faults to be tried in a process of their own -> the tests to do it with. */
    alone: new Map(),
    broken: [],
    ms: new Map(),
  };

  async function sweep(file, number) {
    const log = join(logs, `${number}.log`);
    const env = {
      FAULTS_LOG: log,
      FAULTS_WANTED: wanted,
      FAULTS_NOTICED: noticedFile,
      FAULTS_REACHED: join(logs, 'reached'),
    };
    for (let starts = 0; starts < 200; starts++) {
      const stopped = await run(folder, [file], env, log, 600_000);
      const last = parse(log).at(-1);
      if (stopped === 'out of time' && last?.does === 'start') {
        seen.end.set(last.fault, 'out of time');
        appendFileSync(noticedFile, `${last.fault}\n`);
      } else if (stopped === 'corrupted' || last?.does === 'start') {
        mapSet(seen.alone, last.fault).add(last.test);
        appendFileSync(noticedFile, `${last.fault}\n`);
      } else break;
    }
    readLog(file, log, seen);
    say(`${file}: ${seen.end.size} of ${faults.length} noticed so far`);
  }
  await pool(testFiles.map((file, i) => () => sweep(file, i)));

  // All tests of a file run where the fault acts while it loads; a file that fails without any fault tells nothing.
  const fromStart = (file, loading) =>
    loading.has(file) && !seen.broken.some((b) => b.test.startsWith(`${file}#`));
  // One test may be that which loads the module once more.
  const rest = faults.filter(
    (f) =>
      !seen.end.has(f.id) &&
      !f.picture &&
      (seen.alone.has(f.id) || (seen.loads.has(f.id) && (seen.tests.get(f.id)?.size ?? 0) <= 1)),
  );
  say(`${rest.length} to be tried in a process of their own`);
  let done = 0;
  await pool(
    rest.map((f) => async () => {
      const tests = [...(seen.alone.get(f.id) ?? [])];
      const loading = seen.loads.get(f.id) ?? new Set();
      const ordered = testFiles.filter(
        (file) => fromStart(file, loading) || tests.some((t) => t.startsWith(`${file}#`)),
      );
      const env = { FAULTS_ONE: f.id, FAULTS_LIMIT: '5000000' };
      if (loading.size === 0) {
        env.FAULTS_TESTS = join(logs, `only-${f.id}.json`);
        writeFileSync(env.FAULTS_TESTS, JSON.stringify(tests));
      }
      if (ordered.length === 0) return;
      // Laws and malformed inputs take their time and seldom tell more here.
      const short = ordered.filter((file) => !/^tests\/(properties|fuzz)\//.test(file));
      const stopped = await run(folder, short.length > 0 ? short : ordered, env, undefined, 180_000);
      if (stopped === 'out of time') seen.end.set(f.id, 'out of time');
      else if (stopped !== 0) seen.end.set(f.id, 'noticed');
      if (++done % 20 === 0) say(`${done} of ${rest.length} tried alone`);
    }),
  );
  return { ...seen, triedAlone: rest.length };
}

/** Runs jobs, as many at a time as there are cores. */
async function pool(jobs) {
  const left = [...jobs];
  const work = async () => {
    for (let job = left.shift(); job; job = left.shift()) await job();
  };
  await Promise.all(cpus().map(work));
}

const sizeOf = (log) => (log && existsSync(log) ? statSync(log).size : 0);

/** Why a run is to be stopped after the last entry of its log; undefined while it may go on. */
function verdictOf(last) {
  if (last?.does === 'corrupted') return 'corrupted';
  return last?.does === 'start' && Date.now() > last.until ? 'out of time' : undefined;
}

/** One run of Vitest: its exit code, or why it was stopped. `limit` is for the whole where nothing is written in `log`. */
async function run(folder, files, env, log, limit) {
  const child = spawn(
    process.execPath,
    [vitest, 'run', '--config', join(here, 'vitest.config.ts'), ...files],
    {
      cwd: folder,
      detached: true,
      stdio: process.env.FAULTS_TALK ? 'inherit' : 'ignore',
      env: { ...process.env, HOSTILE_RUNS: '60', RECKONER_HOSTILE: '60', FAULTS_FOLDER: folder, ...env },
    },
  );
  running.add(child.pid);
  let code;
  child.on('exit', (c) => {
    code = c ?? 1;
    running.delete(child.pid);
  });
  const began = Date.now();
  // What an earlier process told is no news.
  const old = sizeOf(log);
  let size = old;
  while (code === undefined) {
    await wait(60);
    const now = sizeOf(log);
    // Only a log that has come to rest is read: while it grows, all is well.
    const rests = now === size && now > old;
    const outOfTime = Date.now() - began > limit && !log;
    const why = outOfTime ? 'out of time' : rests ? verdictOf(tail(log, now)) : undefined;
    size = now;
    if (!why) continue;
    end(child.pid);
    while (code === undefined) await wait(20);
    return why;
  }
  return code;
}

const lastRead = new Map();
function tail(log, size) {
  if (size === 0) return undefined;
  const kept = lastRead.get(log);
  if (kept?.size === size) return kept.entry;
  const text = readFileSync(log, 'utf8');
  if (!text.endsWith('\n')) return undefined;
  const entry = JSON.parse(text.slice(text.lastIndexOf('\n', text.length - 2) + 1));
  lastRead.set(log, { size, entry });
  return entry;
}

/** What the log of a test file tells, put into `seen`. */
export function readLog(file, log, seen) {
  if (parse(log).length === 0) seen.broken.push({ test: `${file}#`, label: 'no test of it could be run' });
  for (const e of parse(log)) {
    if (e.does === 'import') for (const f of e.faults) mapSet(seen.loads, f).add(file);
    else if (e.does === 'test') {
      seen.ms.set(e.test, e.ms);
      for (const f of Object.keys(e.passed)) mapSet(seen.tests, f).add(e.test);
    } else if (e.does === 'noticed') seen.end.set(e.fault, 'noticed');
    else if (e.does === 'out of turns') seen.end.set(e.fault, 'out of time');
    else if (e.does === 'unreached') mapSet(seen.alone, e.fault).add(e.test);
    else if (e.does === 'broken' && !seen.broken.some((b) => b.test === e.test)) seen.broken.push(e);
  }
}
