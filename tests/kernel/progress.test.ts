import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import type { NbOutput } from '../../src/kernel/message.js';
import { KernelSession } from '../../src/kernel/session.js';

// On a busy machine a first cell, which loads the package or Node's types, takes a while.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const folder = mkdtempSync(join(tmpdir(), 'progress-'));
let session: KernelSession;
beforeAll(() => {
  session = new KernelSession({ cwd: folder, progress: true });
});
afterAll(async () => {
  await session.dispose();
  rmSync(folder, { recursive: true });
});

type Line = Extract<NbOutput, { output_type: 'display_data' | 'update_display_data' }>;
const linesOf = (outputs: readonly NbOutput[]): Line[] =>
  outputs.filter(
    (o): o is Line => o.output_type === 'display_data' || o.output_type === 'update_display_data',
  );
const textOf = (line: Line | undefined): string => String(line?.data['text/plain']);

/** Strips are computed one by one, some microseconds each, so that this many take several seconds anywhere. */
const long = (samples: number) => `
  const d = await uncertain(movementAcross,
    { strips: [{ timber: 'teak', width: '60 mm', count: 9 }], from: '8 % .. 9 %', to: '11 % .. 13 %' },
    { samples: ${samples}, sensitivity: false });
  d.samples`;

describe('the progress of long work in a cell', () => {
  const outputs: NbOutput[] = [];
  afterEach(() => void outputs.splice(0));

  it(
    'is one line, shown after a second and renewed in its place, that is left at the time taken',
    { timeout: 120_000 },
    async () => {
      expect((await session.run(long(250_000), (o) => outputs.push(o))).error).toBeUndefined();
      const lines = linesOf(outputs);
      expect(lines.length).toBeGreaterThanOrEqual(3);
      expect(lines.map((l) => l.output_type)).toEqual([
        'display_data',
        ...lines.slice(1).map(() => 'update_display_data'),
      ]);
      expect(new Set(lines.map((l) => l.transient?.display_id)).size).toBe(1);
      for (const l of lines.slice(0, -1))
        expect(textOf(l)).toMatch(/^Movement across the grain: sampling, \d+ %$/);
      expect(textOf(lines.at(-1))).toMatch(/^Movement across the grain: done in \d+\.\d s$/);
      const shares = lines.slice(0, -1).map((l) => Number(/(\d+) %$/.exec(textOf(l))?.[1]));
      expect(shares).toEqual([...shares].sort((a, b) => a - b));
    },
  );

  it('is not shown for short work', async () => {
    expect(
      (
        await session.run(
          "await sweep(cutterMarks, { feed: range('4 m/min', '12 m/min'), knives: 4, spindleSpeed: '6000 rpm' })",
          (o) => outputs.push(o),
        )
      ).error,
    ).toBeUndefined();
    expect(linesOf(outputs)).toEqual([]);
  });

  it('is not shown where the cell listens itself', { timeout: 120_000 }, async () => {
    const code = `let told = 0; ${long(30_000).replace('sensitivity: false', 'sensitivity: false, onProgress: () => void told++')}; told > 0`;
    expect((await session.run(code, (o) => outputs.push(o))).error).toBeUndefined();
    expect(linesOf(outputs)).toEqual([]);
    expect(outputs.find((o) => o.output_type === 'execute_result')).toMatchObject({
      data: { 'text/plain': 'true' },
    });
  });

  it(
    'says that it was stopped by an interrupt, which comes within half a second and ends the work too',
    { timeout: 120_000 },
    async () => {
      const seen = new Promise<void>((resolve) => {
        void session.run(long(5_000_000), (o) => {
          outputs.push(o);
          if (linesOf(outputs).length === 2) resolve();
        });
      });
      await seen;
      const began = performance.now();
      session.interrupt();
      const next = await session.run('1 + 1', (o) => outputs.push(o));
      expect(performance.now() - began).toBeLessThan(500);
      expect(next.status).toBe('ok');
      expect(outputs.find((o) => o.output_type === 'error')).toMatchObject({ ename: 'Interrupted' });
      expect(textOf(linesOf(outputs).at(-1))).toMatch(/stopped after \d+\.\d s$/);
      const lines = linesOf(outputs).length;
      await new Promise((resolve) => setTimeout(resolve, 700));
      expect(linesOf(outputs).length).toBe(lines);
    },
  );

  it('is kept out of a notebook that is run from start to end', async () => {
    await session.dispose();
    const plain = new KernelSession({ cwd: folder });
    expect(
      (globalThis as { [key: symbol]: unknown })[Symbol.for('joiners-reckoner.watcher')],
    ).toBeUndefined();
    await plain.dispose();
  });
});
