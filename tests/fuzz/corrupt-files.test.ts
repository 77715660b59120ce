// Surveys and saved notes, corrupted as disks, editors and spreadsheets spoil them: 150 of each in an ordinary run,
// RECKONER_HOSTILE=10000 for the long one, whose figures tests/proof stores.
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { buildNotes } from '../../src/notes/note.js';
import { recomputeNotes } from '../../src/notes/recompute.js';
import { FileError } from '../../src/notes/atomic-write.js';
import { InputError } from '../../src/units/input-error.js';
import type { AnyRecipe } from '../../src/engine/any-recipe.js';
import { catalogue, cutterMarks, pileYield, stripCount } from '../../src/recipes/catalogue.js';
import { storeFigures } from '../proof/store-figures.js';
import { hostileRuns, SeededRandom } from './seeded-random.js';

const runs = hostileRuns(150);
const scraps = [
  ',',
  ',,',
  ';',
  '"',
  '""',
  '\n',
  '\r',
  '\r\n',
  '\t',
  '\ufeff',
  '\u0000',
  '\ufffd',
  '-',
  '0',
  '-1',
  '1e400',
  'nan',
  'mm',
  ' in',
  '%',
  '#',
  '=1+1',
  '__proto__',
  '{',
  '}',
  '[',
  ']',
  '<',
  '-->',
  '<script>',
  '\\',
  ':',
  'null',
];

/** A text with one to three wounds: cut off, doubled, swapped, or with something put in. */
function corrupted(random: SeededRandom, text: string, wounds = 1 + random.below(3)): string {
  let out = text;
  for (let i = 0; i < wounds; i++) {
    const at = random.below(out.length + 1);
    const to = Math.min(out.length, at + 1 + random.below(30));
    switch (random.below(6)) {
      case 0:
        out = out.slice(0, at);
        break;
      case 1:
        out = out.slice(0, at) + out.slice(to);
        break;
      case 2:
        out = out.slice(0, to) + out.slice(at);
        break;
      case 3:
        out = out.slice(0, at) + String.fromCharCode(random.below(300)) + out.slice(at + 1);
        break;
      default:
        out = out.slice(0, at) + random.pick(scraps) + out.slice(at);
    }
  }
  return out;
}

it(
  `${runs} corrupted surveys: every wrong row named with its line, or a finite yield`,
  { timeout: 600_000 },
  async () => {
    const folder = await mkdtemp(join(tmpdir(), 'reckoner-surveys-'));
    const whole = await readFile(new URL('../../data/demo/tea-counter-boards.csv', import.meta.url), 'utf8');
    const random = new SeededRandom(33);
    const seen = { read: 0, refused: 0 };
    try {
      for (let i = 0; i < runs; i++) {
        const file = join(folder, `s${i % 10}.csv`);
        const text = corrupted(random, whole);
        await writeFile(file, text);
        const fault = `survey ${i}: ${JSON.stringify(text.slice(0, 200))}`;
        try {
          const answer = pileYield({ boards: file });
          seen.read++;
          expect(JSON.stringify(answer.toJSON()), fault).not.toMatch(/NaN|Infinity|"value":null/);
        } catch (error) {
          if (!(error instanceof InputError)) throw new Error(fault, { cause: error });
          seen.refused++;
          for (const t of error.issues) {
            expect(t.field, fault).toMatch(/^boards/);
            // An issue in a row names its line; one of the whole file names the file.
            if (t.field.startsWith('boards[')) expect(t.field, fault).toMatch(/^boards\[\d+\] \(line \d+\)/);
            // What was written is quoted as it was; the words round it are ours.
            expect(t.message.replace(/"(?:[^"\\]|\\.)*"/g, ''), fault).not.toMatch(/undefined|NaN/);
          }
        }
        expect(await readFile(file, 'utf8'), 'the file is as it was').toBe(Buffer.from(text).toString());
      }
    } finally {
      await rm(folder, { recursive: true });
    }
    expect(seen.read).toBeGreaterThan(runs * 0.05);
    expect(seen.refused).toBeGreaterThan(runs * 0.2);
    if (runs >= 1e4) storeFigures('fuzz-surveys', { tried: runs, ...seen });
  },
);

it(
  `${runs} corrupted notes: calculated again, or refused with the name of the file`,
  { timeout: 1_200_000 },
  async () => {
    const folder = await mkdtemp(join(tmpdir(), 'reckoner-corrupted-notes-'));
    const random = new SeededRandom(34);
    const seen = { read: 0, refused: 0 };
    const named = (name: string): AnyRecipe | undefined => catalogue.find((r) => r.name === name);
    try {
      const good = join(folder, 'good.md');
      await buildNotes('Tea counter', { date: '2026-03-08' })
        .addText('# Why\n\nThe hall has no counter.')
        .add(stripCount(stripCount.example), 'Measured twice.')
        .add(cutterMarks(cutterMarks.example))
        .save(good);
      const whole = await readFile(good, 'utf8');
      const memory = whole.lastIndexOf('<!--');
      for (let i = 0; i < runs; i++) {
        const file = join(folder, `n${i % 10}.md`);
        // Most wounds go where the note keeps its inputs: the page about it is not read.
        const text =
          random.chance(0.8) && memory > 0
            ? whole.slice(0, memory) + corrupted(random, whole.slice(memory), 1)
            : corrupted(random, whole);
        await writeFile(file, text);
        const fault = `note ${i}: ${JSON.stringify(text.slice(memory, memory + 200))}`;
        try {
          const again = await recomputeNotes(file, named);
          seen.read++;
          expect(again.toText(), fault).not.toMatch(/NaN|\[object/);
        } catch (error) {
          if (!(error instanceof FileError)) throw new Error(`${fault} ${String(error)}`, { cause: error });
          seen.refused++;
          expect(error.message, fault).toContain(file);
          expect(error.message, fault).not.toMatch(/undefined|NaN/);
        }
        expect(await readFile(file, 'utf8'), 'the file is as it was').toBe(Buffer.from(text).toString());
      }
    } finally {
      await rm(folder, { recursive: true });
    }
    expect(seen.read).toBeGreaterThan(runs * 0.05);
    expect(seen.refused).toBeGreaterThan(runs * 0.05);
    if (runs >= 1e4) storeFigures('fuzz-notes', { tried: runs, ...seen });
  },
);
