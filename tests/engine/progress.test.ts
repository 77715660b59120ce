import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { progressOnTerminal } from '../../src/cli/terminal-progress.js';
import {
  lineReporter,
  withProgress,
  withProgressSync,
  setProgressReporter,
  type ProgressReporter,
} from '../../src/engine/progress.js';
import type { Progress } from '../../src/engine/trace.js';

beforeEach(() => void vi.useFakeTimers({ toFake: ['performance'] }));
afterEach(() => void vi.useRealTimers());

/** A line and every text it showed. */
function line() {
  const shown: [text: string, over: boolean][] = [];
  let opened = 0;
  const begin = lineReporter(() => {
    opened++;
    return (text, over) => void shown.push([text, over]);
  });
  return { begin, shown, opened: () => opened };
}

/** Tells after so many milliseconds each. */
function tellAt(times: readonly number[], tell: (p: Progress) => void): void {
  let now = 0;
  for (const t of times) {
    vi.advanceTimersByTime(t - now);
    now = t;
    tell({ done: t / 10_000, message: 'drawing' });
  }
}

describe('a line of progress', () => {
  it('is not there for work of less than a second, nor when that ends', () => {
    const { begin, shown, opened } = line();
    const work = begin('Shrinkage');
    tellAt([0, 400, 999], (p) => work.report(p));
    work.end(true);
    expect(shown).toEqual([]);
    expect(opened()).toBe(0);
  });

  it('comes at one second, is renewed four times a second at the most, and ends with the time taken', () => {
    const { begin, shown, opened } = line();
    const work = begin('Shrinkage');
    tellAt([500, 1000, 1100, 1249, 1250, 1400, 1500], (p) => work.report(p));
    vi.advanceTimersByTime(740);
    work.end(true);
    expect(shown).toEqual([
      ['Shrinkage: drawing, 10 %', false],
      ['Shrinkage: drawing, 13 %', false],
      ['Shrinkage: drawing, 15 %', false],
      ['Shrinkage: done in 2.2 s', true],
    ]);
    expect(opened()).toBe(1);
  });

  it('says that work was stopped', () => {
    const { begin, shown } = line();
    const work = begin('Shrinkage');
    tellAt([3000], (p) => work.report(p));
    work.end(false);
    expect(shown.at(-1)).toEqual(['Shrinkage: stopped after 3.0 s', true]);
  });

  it('has best and bound where a search tells them, and no share where none can be told', () => {
    const { begin, shown } = line();
    const work = begin('Plan');
    vi.advanceTimersByTime(1000);
    work.report({ message: 'searching', best: 12.34567, bound: 11 });
    vi.advanceTimersByTime(250);
    work.report({ message: '', done: 0.5 });
    expect(shown.map(([text]) => text)).toEqual(['Plan: searching, best 12.35, bound 11', 'Plan: 50 %']);
  });

  it('several works have a line each', () => {
    const { begin, opened } = line();
    const [a, b] = [begin('A'), begin('B')];
    vi.advanceTimersByTime(1000);
    a.report({ message: 'x' });
    b.report({ message: 'y' });
    expect(opened()).toBe(2);
  });
});

describe('who follows long work', () => {
  const signal = new AbortController().signal;
  function watcher(): ProgressReporter & { told: string[] } {
    const told: string[] = [];
    return {
      told,
      signal,
      start: (what) => {
        told.push(`begin ${what}`);
        return {
          report: (p) => told.push(p.message),
          end: (finished) => told.push(finished ? 'finished' : 'stopped'),
        };
      },
    };
  }
  let off: (() => void) | undefined;
  afterEach(() => off?.());

  it('is told of work that asked for no reports of its own, and may stop it', async () => {
    const w = watcher();
    off = setProgressReporter(w);
    const result = await withProgress({}, 'Work', (watch) => {
      expect(watch.signal).toBe(signal);
      watch.onProgress({ message: 'half' });
      return Promise.resolve(7);
    });
    expect(result).toBe(7);
    expect(withProgressSync({}, 'Now', (watch) => (watch.onProgress({ message: 'soon' }), 8))).toBe(8);
    expect(w.told).toEqual(['begin Work', 'half', 'finished', 'begin Now', 'soon', 'finished']);
  });

  it('is told that work stopped when it throws', async () => {
    const w = watcher();
    off = setProgressReporter(w);
    await expect(withProgress({}, 'Work', () => Promise.reject(new Error('no')))).rejects.toThrow('no');
    expect(() =>
      withProgressSync({}, 'Now', () => {
        throw new Error('nor this');
      }),
    ).toThrow('nor this');
    expect(w.told).toEqual(['begin Work', 'stopped', 'begin Now', 'stopped']);
  });

  it('is told nothing where the caller listens itself, yet may still stop the work', async () => {
    const w = watcher();
    off = setProgressReporter(w);
    const own: string[] = [];
    await withProgress({ onProgress: (p) => own.push(p.message) }, 'Work', (watch) => {
      expect(watch.signal).toBe(signal);
      watch.onProgress({ message: 'mine' });
      return Promise.resolve();
    });
    expect(own).toEqual(['mine']);
    expect(w.told).toEqual([]);
  });

  it('a signal of the caller’s own goes before', async () => {
    off = setProgressReporter(watcher());
    const own = new AbortController().signal;
    await withProgress({ signal: own }, 'Work', (watch) => Promise.resolve(expect(watch.signal).toBe(own)));
  });

  it('nobody follows when nobody asked to, or once they went', async () => {
    const first = watcher();
    const second = watcher();
    const offFirst = setProgressReporter(first);
    const offSecond = setProgressReporter(second);
    offSecond();
    await withProgress({}, 'A', () => Promise.resolve());
    expect(first.told).toEqual(['begin A', 'finished']);
    // Out of turn: who went already is not put back, nor who follows now sent away.
    offSecond();
    offFirst();
    await withProgress({}, 'B', (watch) => {
      watch.onProgress({ message: 'to nobody' });
      expect(watch.signal).toBeUndefined();
      return Promise.resolve();
    });
    expect([first.told.length, second.told.length]).toEqual([2, 0]);
  });
});

describe('on a terminal', () => {
  const key = Symbol.for('joiners-reckoner.watcher');
  const current = () => (globalThis as { [key]?: ProgressReporter })[key];
  afterEach(() => {
    Reflect.deleteProperty(globalThis, key);
  });

  it('the line is written over itself, and cleared at the end', () => {
    const written: string[] = [];
    progressOnTerminal({ isTTY: true, write: (text) => written.push(text) });
    const work = current()?.start('Sweep');
    vi.advanceTimersByTime(1000);
    work?.report({ message: 'calculating', done: 0.25 });
    work?.end(true);
    expect(written).toEqual(['\r\u001b[KSweep: calculating, 25 %', '\r\u001b[K']);
  });

  it('nothing is written where the text goes into a file', () => {
    progressOnTerminal({ write: () => expect.fail('wrote') });
    expect(current()).toBeUndefined();
  });
});
