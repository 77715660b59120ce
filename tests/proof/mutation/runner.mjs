// Runs each test once as it is, sees which faults it passes, and then once more for every one of them that no test has
// noticed yet, with that fault awake. In the end-to-end way (FAULTS_ONE) one fault is awake from the start and nothing is repeated.
import { appendFileSync, existsSync, readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { TestRunner } from 'vitest';

const env = process.env;
/** The name under which Stryker's instrumented code keeps what is awake, and what was passed. */
const ns = (globalThis.__stryker__ ??= {});
const read = (file) => (existsSync(file) ? readFileSync(file, 'utf8').split('\n').filter(Boolean) : []);

/** The suites a test stands in, the file's own first. */
function suitesAround(test) {
  const suites = [];
  for (let s = test.suite ?? test.file; s; s = s.suite ?? (s === test.file ? undefined : test.file))
    suites.unshift(s);
  return suites;
}

export default class FaultRunner extends TestRunner {
  one = env.FAULTS_ONE;
  /** From a run of this file that was stopped: test -> faults already tried with it; what it passes; those done with. */
  tried = new Map();
  known = new Map();
  /** Test -> how often a fault in it left the process corrupted; after three it is used no more. */
  corrupted = new Map();
  done = new Set();
  wanted = new Set(read(env.FAULTS_WANTED));
  only = env.FAULTS_TESTS ? new Set(JSON.parse(readFileSync(env.FAULTS_TESTS, 'utf8'))) : undefined;
  noticed = new Set();
  /** Faults that a quick test comes to, here or in a file before. */
  reached = new Set();
  ran = [];

  constructor(config) {
    super(config);
    if (this.one) {
      ns.activeMutant = this.one;
      return;
    }
    for (const line of read(env.FAULTS_LOG)) {
      const entry = JSON.parse(line);
      if (entry.does === 'test') this.known.set(entry.test, entry);
      else if (entry.does === 'end' || entry.does === 'broken') this.done.add(entry.test);
      else if (entry.does === 'corrupted')
        this.corrupted.set(entry.test, (this.corrupted.get(entry.test) ?? 0) + 1);
      else if (entry.does === 'start') {
        if (!this.tried.has(entry.test)) this.tried.set(entry.test, new Set());
        this.tried.get(entry.test).add(entry.fault);
      }
    }
  }

  forget() {
    for (const drop of ns.forget ?? []) drop();
  }

  say(entry) {
    appendFileSync(env.FAULTS_LOG, `${JSON.stringify(entry)}\n`);
  }

  nameOf(test) {
    const names = [];
    for (let t = test; t && t !== test.file; t = t.suite) names.unshift(t.name);
    return `${relative(env.FAULTS_FOLDER, test.file.filepath)}#${names.join(' > ')}`;
  }

  async onBeforeRunTask(test) {
    await super.onBeforeRunTask(test);
    const name = this.nameOf(test);
    if (this.done.has(name) || (this.only && !this.only.has(name))) test.mode = 'skip';
  }

  async runTask(test) {
    const run = TestRunner.getTestFn(test);
    if (this.one) {
      ns.hitCount = 0;
      ns.hitLimit = Number(env.FAULTS_LIMIT);
      await run();
      if (ns.hitCount > ns.hitLimit) throw new Error('out of turns');
      return;
    }
    const known = this.known.get(this.nameOf(test));
    if (known) {
      this.ran.push({ ...known, test, run, name: this.nameOf(test) });
      return;
    }
    if (this.ran.length === 0)
      this.say({ does: 'import', faults: Object.keys(ns.mutantCoverage?.static ?? {}) });
    const name = this.nameOf(test);
    const began = performance.now();
    this.forget();
    ns.currentTestId = name;
    try {
      await run();
    } catch (error) {
      this.say({ does: 'broken', test: name, label: String(error?.message ?? error).slice(0, 300) });
      throw error;
    } finally {
      ns.currentTestId = '-';
    }
    const ms = performance.now() - began;
    const passed = ns.mutantCoverage?.perTest?.[name] ?? {};
    this.say({ does: 'test', test: name, ms: Math.round(ms), passed });
    this.ran.push({ test, run, name, ms, passed });
  }

  /** The quick tests first: a slow one tries only what no quick one comes to. */
  async onAfterRunSuite(suite) {
    if (suite.filepath && !this.one) {
      for (const f of read(env.FAULTS_REACHED)) this.reached.add(f);
      for (const t of this.ran.sort((x, y) => x.ms - y.ms)) await this.tryFaults(t);
      appendFileSync(env.FAULTS_REACHED, [...this.reached].map((f) => `${f}\n`).join(''));
    }
    await super.onAfterRunSuite(suite);
  }

  async tryFaults({ test, run, name, ms, passed }) {
    const tried = this.tried.get(name) ?? new Set();
    if ((this.corrupted.get(name) ?? 0) >= 3) return;
    const slow = ms > 1500;
    let turn = 0;
    for (const [fault, hits] of Object.entries(passed)) {
      if (turn++ % 20 === 0) for (const f of read(env.FAULTS_NOTICED)) this.noticed.add(f);
      if (!this.wanted.has(fault) || this.noticed.has(fault) || tried.has(fault)) continue;
      if (slow && this.reached.has(fault)) continue;
      if (!slow) this.reached.add(fault);
      this.say({ does: 'start', test: name, fault, until: Date.now() + 8000 + 4 * ms });
      await this.tryFault(test, run, name, fault, hits);
    }
    this.say({ does: 'end', test: name });
  }

  /** A fault is noticed when the test fails with it, holds without it, and fails with it again. */
  async tryFault(test, run, name, fault, hits) {
    const limit = Math.max(1000, 100 * hits);
    const first = await this.again(test, run, fault, limit);
    if (!first.failed) {
      if (first.hits === 0) this.say({ does: 'unreached', test: name, fault });
      return;
    }
    const clean = await this.again(test, run, undefined, limit);
    if (clean.failed) {
      // What the fault left behind spoils this process: whoever drives it starts another, and tries the fault alone.
      this.say({ does: 'corrupted', test: name, fault, label: clean.label });
      await new Promise((_, no) => setTimeout(() => no(new Error('not stopped')), 60_000));
    }
    if (!(await this.again(test, run, fault, limit)).failed) {
      this.say({ does: 'unreached', test: name, fault });
      return;
    }
    this.noticed.add(fault);
    appendFileSync(env.FAULTS_NOTICED, `${fault}\n`);
    this.say({ does: first.outOfTime ? 'out of turns' : 'noticed', test: name, fault });
  }

  async again(test, run, fault, limit) {
    const suites = suitesAround(test);
    const cleanups = [];
    let failed = false;
    let outOfTime = false;
    let label;
    this.forget();
    ns.hitCount = 0;
    ns.hitLimit = limit;
    try {
      this.onBeforeTryTask(test);
      ns.activeMutant = fault;
      for (const s of suites)
        for (const hook of TestRunner.getSuiteHooks(s).beforeEach) cleanups.push(await hook(test.context, s));
      await run();
      this.onAfterTryTask(test);
    } catch (error) {
      failed = true;
      label = String(error?.message ?? error).slice(0, 300);
      outOfTime = /timed out in/.test(error?.message);
    }
    ns.activeMutant = undefined;
    const hits = ns.hitCount;
    if (hits > limit) failed = outOfTime = true;
    for (const s of suites.reverse())
      for (const hook of TestRunner.getSuiteHooks(s).afterEach) await hook(test.context, s);
    for (const c of cleanups) if (typeof c === 'function') await c();
    return { failed, outOfTime, hits, label };
  }
}
