import { createHash } from 'node:crypto';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readNotebook } from '../../src/notebook/format/notebook-file.js';
import { notebookText, parseNotebook } from '../../src/notebook/format/notebook-json.js';
import { NotebookError } from '../../src/notebook/format/notebook.js';
import { schemaFaults } from '../notebook/nbformat-schema.js';
import { full, older } from '../notebook/samples.js';
import { storeFigures } from '../proof/store-figures.js';

// 400 in an ordinary run; RECKONER_HOSTILE=10000 (or more) for the long one.
const runs = Number(process.env['RECKONER_HOSTILE'] ?? 400);

/** Numbers from 0 to 1 that are the same in every run (mulberry32). */
function numbers(seed: number): () => number {
  return () => {
    seed = (seed + 0x6d2b79f5) | 0;
    let t = Math.imul(seed ^ (seed >>> 15), 1 | seed);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const junk: readonly unknown[] = [
  null,
  true,
  0,
  -1,
  1.5,
  1e308,
  '',
  'x',
  '\u0000',
  '\ud800',
  [],
  [[]],
  {},
  { a: 1 },
  ['a', 1],
  '__proto__',
  'constructor',
  '<script>',
  '💥'.repeat(5),
];

/** One corruption of a notebook's text. */
function corrupt(random: () => number, source: unknown): Buffer {
  const below = (n: number): number => Math.floor(random() * n);
  const pick = <T>(list: readonly T[]): T => list[below(list.length)] as T;
  const text = Buffer.from(JSON.stringify(source, null, random() < 0.5 ? 1 : undefined));
  const at = below(text.length);
  switch (below(7)) {
    case 0:
      return text.subarray(0, at);
    case 1: {
      const copy = Buffer.from(text);
      for (let i = 0; i <= below(4); i++) copy[below(copy.length)] = below(256);
      return copy;
    }
    case 2:
      return Buffer.concat([text.subarray(0, at), text.subarray(at + 1 + below(40))]);
    case 3:
      return Buffer.concat([
        text.subarray(0, at),
        Buffer.from(
          pick(['{', '}', '[', ']', '"', ',', ':', '\\', '//', '\n', '\t', 'NaN', 'Infinity', '\u2028', '<']),
        ),
        text.subarray(at),
      ]);
    default: {
      // A wrong value, a missing field, a strange key: still JSON.
      const copy = structuredClone(source) as Record<string, unknown>;
      let node: Record<string, unknown> | unknown[] = copy;
      for (let depth = below(7); depth > 0; depth--) {
        const inner = Object.values(node).filter((v) => typeof v === 'object' && v !== null) as Record<
          string,
          unknown
        >[];
        if (inner.length === 0) break;
        node = pick(inner);
      }
      const keys = Object.keys(node);
      const key = keys.length === 0 ? 'x' : pick(keys);
      const target = node;
      if (random() < 0.25) Reflect.deleteProperty(target, key);
      else if (random() < 0.2)
        target[pick(['__proto__x', 'toString', '', 'id', 'cells', 'hasOwnProperty'])] = pick(junk);
      else target[key] = pick(junk);
      return Buffer.from(JSON.stringify(copy));
    }
  }
}

it(
  `${runs} corrupted notebooks: a located error or a right reading, never anything else`,
  { timeout: 300_000 },
  async () => {
    const folder = await mkdtemp(join(tmpdir(), 'reckoner-hostile-'));
    const random = numbers(20);
    const sources = [full, older(0), older(4)];
    const seen = { errors: 0, readings: 0 };
    try {
      for (let i = 0; i < runs; i++) {
        const bytes = corrupt(random, sources[i % sources.length]);
        const file = join(folder, `n${i % 10}.ipynb`);
        await writeFile(file, bytes);
        try {
          const notebook = await readNotebook(file);
          seen.readings++;
          const again = notebookText(notebook);
          const faults = schemaFaults(JSON.parse(again));
          expect(faults, `run ${i}: ${bytes.toString().slice(0, 300)}`).toEqual([]);
          expect(parseNotebook(again), `run ${i}`).toEqual(notebook);
          for (const cell of notebook.cells) expect(typeof cell.source, `run ${i}`).toBe('string');
        } catch (error) {
          if (!(error instanceof NotebookError)) throw error;
          seen.errors++;
          const { fault, message } = error;
          expect(fault.file, message).toBe(file);
          expect(fault.line !== undefined || fault.field !== '', `run ${i}: ${message}`).toBe(true);
          if (fault.line !== undefined)
            expect(fault.line).toBeLessThanOrEqual(bytes.toString().split('\n').length);
          expect(message).not.toMatch(/undefined|\[object|NaN,/);
          expect(message.length, message).toBeLessThan(400);
        }
        const hash = (b: Buffer): string => createHash('sha1').update(b).digest('hex');
        expect(hash(await readFile(file)), 'the file is untouched').toBe(hash(bytes));
      }
    } finally {
      await rm(folder, { recursive: true });
    }
    // Both ends of the promise were met often enough to mean something.
    expect(seen.errors).toBeGreaterThan(runs * 0.4);
    expect(seen.readings).toBeGreaterThan(runs * 0.05);
    if (runs >= 10_000)
      storeFigures('fuzz-notebooks', { tried: runs, read: seen.readings, refused: seen.errors });
  },
);
