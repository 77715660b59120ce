import { notesWith } from '../notes/note.js';
import { resultMimeType } from '../engine/result-display.js';
import { catalogue } from '../recipes/catalogue.js';
import { HttpError } from './http-error.js';
import { quoted } from '../notebook/format/notebook.js';
import type { Response } from './router.js';

type Bundle = Readonly<Record<string, unknown>>;

interface Shown {
  readonly bundle: Bundle;
  readonly remark: string | undefined;
}

/** Writes build notes from results as the page holds them: `{title, form: 'html' | 'md', items: [{remark, bundle}]}`. Nothing is stored here. */
export async function notesPage(wish: Record<string, unknown>, version: string): Promise<Response> {
  const { title, form, items } = wish;
  if (typeof title !== 'string' || title.trim() === '')
    throw new HttpError(400, `title: takes text, got ${quoted(title)}`);
  if (form !== 'html' && form !== 'md')
    throw new HttpError(400, `form: takes html or md, got ${quoted(form)}`);
  if (!Array.isArray(items) || items.length === 0)
    throw new HttpError(400, 'items: takes a list with at least one result');
  const shown = items.map((item: unknown, at): Shown => {
    const { bundle, remark } = (item ?? {}) as { bundle?: unknown; remark?: unknown };
    if (typeof bundle !== 'object' || bundle === null || Array.isArray(bundle))
      throw new HttpError(400, `items[${at}].bundle: takes a result by media type`);
    return {
      bundle: joined(bundle as Bundle),
      remark: typeof remark === 'string' && remark.trim() !== '' ? remark : undefined,
    };
  });
  let notes = notesWith({ title: title.trim(), date: new Date().toISOString().slice(0, 10), version }, []);
  for (const { bundle, remark } of shown) {
    const result = reckonedAgain(bundle);
    notes =
      result === undefined
        ? notes.add({ [Symbol.for('Jupyter.display')]: bundle }, remark)
        : notes.add(result, remark);
  }
  return form === 'html'
    ? {
        headers: { 'Content-Type': 'text/html; charset=utf-8', 'Content-Disposition': 'attachment' },
        body: await notes.toHtml(),
      }
    : { headers: { 'Content-Type': 'text/markdown; charset=utf-8' }, body: await notes.toMarkdown() };
}

/**
 * A recipe's result tells which recipe gave it and from what: recalculated, it is a full sheet of the notes, numbered, with its sources
 * and cautions gathered, and one that can be redone later. Whatever else a cell shows goes in as it was shown.
 */
function reckonedAgain(bundle: Bundle): unknown {
  const kept = bundle[resultMimeType] as { recipe?: unknown; inputs?: unknown } | undefined;
  const recipe = catalogue.find(({ name, isAsync: long }) => name === kept?.recipe && !long);
  if (recipe === undefined || typeof kept?.inputs !== 'object' || kept.inputs === null) return undefined;
  try {
    return recipe(kept.inputs as Readonly<Record<string, unknown>>);
  } catch {
    // From another version of the recipe: what was shown then still stands.
    return undefined;
  }
}

/** Text that a notebook file keeps as a list of lines, as one text again. */
const joined = (bundle: Bundle): Bundle =>
  Object.fromEntries(
    Object.entries(bundle).map(([type, data]) => [
      type,
      Array.isArray(data) && data.every((line) => typeof line === 'string') ? data.join('') : data,
    ]),
  );
