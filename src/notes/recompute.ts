import { readFile } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import type { AnyRecipe } from '../engine/any-recipe.js';
import { citationText } from '../engine/source.js';
import type { NotePart } from './note-content.js';
import { readNoteState, recompute, type NoteState, type PartState } from './note-state.js';
import { notesWith, packageVersion, shownLines, type BuildNotes } from './note.js';
import { FileError, reason } from './atomic-write.js';

/** One value that came out differently, or could not be calculated. */
export interface NoteChange {
  /** Number of the result in the note, from 1. */
  readonly part: number;
  readonly recipe: string;
  /** The output, such as `change` or `slabs[2]`; empty when the whole result failed. */
  readonly field: string;
  readonly message: string;
  /** As it was printed; undefined where it is new. */
  readonly before?: string;
  /** As it is now; undefined where it is gone. */
  readonly after?: string;
}

export interface RecomputedNote {
  readonly file: string;
  readonly title: string;
  /** Version that wrote the note, and this one. */
  readonly versions: readonly [before: string, now: string];
  /** How many results were recalculated. */
  readonly results: number;
  readonly changes: readonly NoteChange[];
  /** The note with the new figures, to be saved or not. */
  readonly notes: BuildNotes;
  /** What changed, in lines for a terminal. */
  toText(): string;
}

/**
 * Calculates a saved build note again from the inputs it remembers, with the recipes and tables as they are now, and tells what
 * came out differently. The file itself is only read. `recipeNamed` finds a recipe by its name.
 * Throws {@link FileError} for a file that is no build note.
 */
export async function recomputeNotes(
  file: string,
  recipeNamed: (name: string) => AnyRecipe | undefined,
  options: { date?: string } = {},
): Promise<RecomputedNote> {
  const text = await readFile(file, 'utf8').catch((error: unknown) => {
    throw new FileError(file, `could not be read: ${reason(error, 'read')}`);
  });
  const memory = readNoteState(text, file);
  const changes: NoteChange[] = [];
  const parts: NotePart[] = [];
  let number = 0;
  let pictures = 0;
  for (const part of memory.parts) {
    if (part.kind === 'picture') {
      pictures++;
      parts.push(await pictureAgain(part, pictures, text, file));
    } else if (part.kind !== 'result') {
      if (part.kind === 'chart') number++;
      parts.push(part);
    } else {
      number++;
      const answer = await recompute(part, recipeNamed(part.recipe));
      if (typeof answer === 'string')
        changes.push({ part: number, recipe: part.recipe, field: '', message: answer });
      else {
        changes.push(
          ...differences(number, part, shownLines(answer), answer.sources().map(citationText)),
          ...numberDifferences(number, part, answer.raw),
        );
        parts.push({ kind: 'result', answer, ...(part.remark === undefined ? {} : { remark: part.remark }) });
      }
    }
  }
  const now = packageVersion();
  const versions = [memory.head.version, now] as const;
  const head = { ...memory.head, version: now, date: options.date ?? new Date().toISOString().slice(0, 10) };
  const results = memory.parts.filter((p) => p.kind === 'result').length;
  const redone = {
    file,
    title: memory.head.title,
    versions,
    results,
    changes,
    notes: notesWith(head, parts),
  };
  return { ...redone, toText: () => textOf(redone, memory) };
}

type ResultMemory = Extract<PartState, { kind: 'result' }>;

function differences(
  part: number,
  was: ResultMemory,
  now: readonly { name: string; label: string; text: string }[],
  sources: readonly string[],
): NoteChange[] {
  const before = new Map(was.shown.map((l) => [l.name, l]));
  const after = new Map(now.map((l) => [l.name, l]));
  const found: NoteChange[] = [];
  for (const [name, line] of new Map([...before, ...after])) {
    const [b, a] = [before.get(name)?.text, after.get(name)?.text];
    if (a !== b)
      found.push({
        part,
        recipe: was.recipe,
        field: name,
        message: line.label,
        ...(b === undefined ? {} : { before: b }),
        ...(a === undefined ? {} : { after: a }),
      });
  }
  for (const s of was.sources)
    if (!sources.includes(s))
      found.push({
        part,
        recipe: was.recipe,
        field: 'sources',
        message: 'a source is no longer used',
        before: s,
      });
  for (const s of sources)
    if (!was.sources.includes(s))
      found.push({ part, recipe: was.recipe, field: 'sources', message: 'a source is new', after: s });
  return found;
}

/** Changes too small to print: a line that reads the same but whose number moved by more than rounding in the last bits. */
function numberDifferences(
  part: number,
  was: ResultMemory,
  raw: Readonly<Record<string, unknown>>,
): NoteChange[] {
  const old = was.outputs as Record<string, unknown> | null;
  if (typeof old !== 'object' || old === null) return [];
  const seen = new Set(was.shown.map((l) => l.name));
  return Object.entries(raw).flatMap(([name, after]): NoteChange[] => {
    const before = old[name];
    if (typeof before !== 'number' || typeof after !== 'number' || !seen.has(name)) return [];
    const moved = Math.abs(after - before) > 1e-9 * Math.max(Math.abs(after), Math.abs(before));
    const line = was.shown.find((l) => l.name === name);
    return moved && line !== undefined && sameToSixDigits(before, after)
      ? [
          {
            part,
            recipe: was.recipe,
            field: name,
            message: `${line.label} (too little to show in print)`,
            before: String(before),
            after: String(after),
          },
        ]
      : [];
  });
}
const sameToSixDigits = (a: number, b: number): boolean => a.toPrecision(6) === b.toPrecision(6);

/** A picture is taken from the page itself, or from its file beside a Markdown note. */
async function pictureAgain(
  part: Extract<PartState, { kind: 'picture' }>,
  number: number,
  text: string,
  file: string,
): Promise<NotePart> {
  const inPage = new RegExp(`<img id="picture-${number}" src="(data:[^"]*)"`).exec(text)?.[1];
  if (inPage !== undefined) return { ...part, data: inPage };
  const path = resolve(dirname(file), part.file);
  const bytes = await readFile(path).catch(() => undefined);
  const ending = path.split('.').at(-1)?.toLowerCase() ?? 'png';
  const type = ending === 'svg' ? 'svg+xml' : ending === 'jpg' ? 'jpeg' : ending;
  if (bytes === undefined)
    return { kind: 'text', markdown: `*(the picture ${part.file} is no longer there)*` };
  return { ...part, file: path, data: `data:image/${type};base64,${bytes.toString('base64')}` };
}

function textOf(r: Omit<RecomputedNote, 'toText'>, memory: NoteState): string {
  const [before, now] = r.versions;
  const out = [
    `${r.title}: ${r.results} result${r.results === 1 ? '' : 's'} recalculated; the note is of ${memory.head.date}, version ${before}${before === now ? '' : `; this is ${now}`}.`,
  ];
  if (r.changes.length === 0) out.push('Nothing changed.');
  for (const c of r.changes) {
    const head = `  ${c.part}. ${c.recipe}${c.field === '' ? '' : `, ${c.field}`}`;
    if (c.field === '') out.push(`${head}: could not be calculated: ${c.message}`);
    else out.push(`${head}: ${c.message}: ${c.before ?? '(nothing)'} -> ${c.after ?? '(nothing)'}`);
  }
  return out.join('\n');
}
