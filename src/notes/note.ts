import { readFileSync } from 'node:fs';
import { basename, dirname, extname, join, relative, resolve } from 'node:path';
import type { ChartSpec } from '../charts/chart-spec.js';
import { InputError, inspectValue } from '../units/input-error.js';
import { valueLines } from '../engine/result-display.js';
import { packageFolder } from '../engine/data-folder.js';
import { resultInternals } from '../engine/result.js';
import { citationText } from '../engine/source.js';
import { contentOf, type NoteHead, type NotePart } from './note-content.js';
import { noteStateOf, type NoteState, type ShownLine } from './note-state.js';
import { noteMarkdown } from './note-markdown.js';
import { makeFolder, writeFileAtomically } from './atomic-write.js';
import { picturePart } from './picture-part.js';

/** Notes of a build: what was computed, in order, with remarks and pictures. Made by {@link buildNotes}. */
export interface BuildNotes {
  readonly title: string;
  /** How many results and charts it holds. */
  readonly count: number;
  /**
   * Adds a recipe's result (or the promise of one), a chart, or anything a notebook can display. `remark` is Markdown.
   * @throws InputError for anything else
   */
  add(thing: unknown, remark?: string): BuildNotes;
  /** Adds words of your own, in Markdown; its headings appear in the contents. */
  addText(markdown: string): BuildNotes;
  /** Adds a picture (PNG, JPEG, WebP, GIF or SVG, up to 20 MB): inside an HTML note, linked from a Markdown one. */
  addPicture(file: string, caption?: string): BuildNotes;
  /** Markdown with the charts inside as data; `save` writes them beside the file instead. */
  toMarkdown(): Promise<string>;
  /** One self-contained page. */
  toHtml(): Promise<string>;
  /**
   * Writes `x.html` (one file) or `x.md` (with its charts in the folder `x-charts` beside it), whole or not at all.
   * @throws FileError, InputError for another ending
   */
  save(file: string): Promise<void>;
}

export interface NoteOptions {
  /** ISO date, `2026-03-08`; default today. */
  readonly date?: string;
  readonly by?: string;
}

/** Starts build notes. `buildNotes('Tea counter').add(result, 'as measured on Tuesday').save('counter.html')` */
export function buildNotes(title: string, options: NoteOptions = {}): BuildNotes {
  if (typeof title !== 'string' || title.trim() === '')
    throw new InputError(
      `title: got ${inspectValue(title)}, takes the name of the build, such as "Tea counter"`,
    );
  const date = options.date ?? new Date().toISOString().slice(0, 10);
  if (typeof date !== 'string' || !/^\d{4}-\d\d-\d\d$/.test(date) || Number.isNaN(Date.parse(date)))
    throw new InputError(`date: got ${inspectValue(date)}, takes a date such as "2026-03-08"`);
  if (options.by !== undefined && typeof options.by !== 'string')
    throw new InputError(`by: got ${inspectValue(options.by)}, takes a name as text`);
  return notesWith(
    {
      title: title.trim(),
      date,
      ...(options.by === undefined ? {} : { by: options.by }),
      version: packageVersion(),
    },
    [],
  );
}

/** Notes that hold `parts` already, as when they are recomputed. */
export function notesWith(head: NoteHead, parts: readonly (NotePart | Promise<NotePart>)[]): BuildNotes {
  const list = [...parts];
  const add = (part: NotePart | Promise<NotePart>): BuildNotes => {
    // A rejected promise is reported when the note is rendered, not as a stray rejection before.
    if (part instanceof Promise) part.catch(() => undefined);
    list.push(part);
    return self;
  };
  const self: BuildNotes & { [key: symbol]: unknown } = {
    title: head.title,
    get count() {
      return list.length;
    },
    add: (thing, remark) => add(partOf(thing, remarkText(remark))),
    addText(text) {
      if (typeof text !== 'string') throw new InputError(`markdown: got ${inspectValue(text)}, takes text`);
      return add({ kind: 'text', markdown: text });
    },
    addPicture(file, caption) {
      if (typeof file !== 'string' || file === '')
        throw new InputError(`file: got ${inspectValue(file)}, takes the name of a picture file`);
      return add(picturePart(file, remarkText(caption)));
    },
    toMarkdown: async () =>
      markdownOf(
        head,
        await ready(list),
        (svg) => `data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')}`,
      ),
    toHtml: async () => htmlOf(head, await ready(list)),
    save: async (file) => saveNotes(head, list, file),
  };
  Object.defineProperty(self, Symbol.for('Jupyter.display'), {
    value: async () => {
      const md = await self.toMarkdown();
      const shortened = md.slice(0, md.lastIndexOf('<!-- reckoner-note '));
      // No HTML: a notebook shows Markdown with its own typesetting, which the style of our page would not reach.
      return {
        'text/plain': `${head.title}: build notes, ${list.length} part${list.length === 1 ? '' : 's'}`,
        'text/markdown': shortened,
      };
    },
  });
  return self;
}

async function ready(parts: readonly (NotePart | Promise<NotePart>)[]): Promise<NotePart[]> {
  return Promise.all(parts.map((part) => Promise.resolve(part)));
}

async function htmlOf(head: NoteHead, parts: readonly NotePart[]): Promise<string> {
  // Typesetting, Markdown and highlighting load when a page is made, not when a recipe is run.
  const { noteHtml } = await import('./note-html.js');
  return noteHtml(await contentOf(head, parts), memory(head, parts));
}

async function markdownOf(
  head: NoteHead,
  parts: readonly NotePart[],
  place: (svg: string, name: string) => string,
): Promise<string> {
  return noteMarkdown(await contentOf(head, parts), memory(head, parts), place);
}

async function saveNotes(
  head: NoteHead,
  list: readonly (NotePart | Promise<NotePart>)[],
  file: string,
): Promise<void> {
  const kind = typeof file === 'string' ? extname(file).toLowerCase() : '';
  if (kind === '.html' || kind === '.htm')
    return writeFileAtomically(file, await htmlOf(head, await ready(list)));
  if (kind !== '.md')
    throw new InputError(`file: got ${inspectValue(file)}, takes a name that ends in .html or .md`);
  const folder = `${basename(file, extname(file))}-charts`;
  const drawings = new Map<string, string>();
  const linked = (await ready(list)).map((p) => linkedFrom(dirname(resolve(file)), p));
  const text = await markdownOf(head, linked, (svg, name) => {
    let free = `${name}.svg`;
    for (let n = 2; drawings.has(free); n++) free = `${name}-${n}.svg`;
    drawings.set(free, svg);
    return `${encodeURI(folder)}/${encodeURI(free)}`;
  });
  if (drawings.size > 0) await makeFolder(join(dirname(file), folder));
  for (const [name, svg] of drawings) await writeFileAtomically(join(dirname(file), folder, name), svg);
  // The note comes last: while it is the old one, so are the words that go with its charts.
  await writeFileAtomically(file, text);
}

/** A picture's file as it is named from the folder of the note. */
const linkedFrom = (folder: string, part: NotePart): NotePart =>
  part.kind === 'picture'
    ? { ...part, file: relative(folder, resolve(part.file)).replaceAll('\\', '/') }
    : part;

function memory(head: NoteHead, parts: readonly NotePart[]): NoteState {
  return noteStateOf(head, parts, (part) => ({
    lines: shownLines(part.answer),
    sources: part.answer.sources().map(citationText),
  }));
}

/** Every value of an answer as it is printed, tables row by row. */
export function shownLines(answer: Parameters<typeof valueLines>[0]): ShownLine[] {
  const { lines, tables } = valueLines(answer);
  return [
    ...lines.map((l) => ({ name: l.name, label: l.label, text: l.metric })),
    ...tables.flatMap((t) =>
      t.rows.map((row, i) => ({
        name: `${t.name}[${i + 1}]`,
        label: `${t.label}, row ${i + 1}`,
        text: row.join(' · '),
      })),
    ),
  ];
}

function partOf(thing: unknown, remark: string | undefined): NotePart | Promise<NotePart> {
  const words = remark === undefined ? {} : { remark };
  const takes = 'takes a result of a recipe, a chart, or a value that a notebook can display';
  if (thing instanceof Promise) return thing.then((value: unknown) => partOf(value, remark));
  const answer = resultInternals(thing);
  if (answer !== undefined) return { kind: 'result', answer, ...words };
  if (typeof thing !== 'object' || thing === null)
    throw new InputError(`got ${inspectValue(thing)}, ${takes}; words go in with addText`);
  const spec = thing as ChartSpec;
  if (
    ['mark', 'layer', 'concat', 'hconcat', 'vconcat', 'facet', 'repeat'].some((key) =>
      Object.hasOwn(spec, key),
    )
  )
    return { kind: 'chart', spec, ...words };
  const display = (thing as Record<symbol, unknown>)[Symbol.for('Jupyter.display')];
  if (typeof display === 'function')
    return Promise.resolve((display as () => unknown).call(thing)).then((bundle) => ({
      kind: 'shown',
      bundle: stringsOf(bundle),
      ...words,
    }));
  if (typeof display === 'object' && display !== null)
    return { kind: 'shown', bundle: stringsOf(display), ...words };
  throw new InputError(`got ${inspectValue(thing)}, ${takes}`);
}

/** The text parts of a bundle; a chart specification is left to its own SVG. */
function stringsOf(bundle: unknown): Record<string, unknown> {
  return Object.fromEntries(Object.entries(bundle ?? {}).filter(([, v]) => typeof v === 'string'));
}

function remarkText(remark: unknown): string | undefined {
  if (remark === undefined) return undefined;
  if (typeof remark !== 'string') throw new InputError(`remark: got ${inspectValue(remark)}, takes text`);
  return remark.trim() === '' ? undefined : remark;
}

export function packageVersion(): string {
  return (JSON.parse(readFileSync(join(packageFolder(), 'package.json'), 'utf8')) as { version: string })
    .version;
}
