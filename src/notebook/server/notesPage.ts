import { notesWith } from '../../notes/note.ts';
import { Refusal } from './refusal.ts';
import type { Answer } from './route.ts';

type Bundle = Readonly<Record<string, unknown>>;

/** Writes build notes from results as the page holds them: `{title, form: 'html' | 'md', items: [{remark, bundle}]}`. Nothing is stored here. */
export async function notesPage(wish: Record<string, unknown>, version: string): Promise<Answer> {
  const { title, form, items } = wish;
  if (typeof title !== 'string' || title.trim() === '') throw new Refusal(400, `title: takes text, got ${JSON.stringify(title) ?? 'nothing'}`);
  if (form !== 'html' && form !== 'md') throw new Refusal(400, `form: takes html or md, got ${JSON.stringify(form) ?? 'nothing'}`);
  if (!Array.isArray(items) || items.length === 0) throw new Refusal(400, 'items: takes a list with at least one result');
  const parts = items.map((item: unknown, at) => {
    const { bundle, remark } = (item ?? {}) as { bundle?: unknown; remark?: unknown };
    if (typeof bundle !== 'object' || bundle === null || Array.isArray(bundle)) throw new Refusal(400, `items[${at}].bundle: takes a result by media type`);
    return { kind: 'shown' as const, bundle: joined(bundle as Bundle), ...(typeof remark === 'string' && remark.trim() !== '' ? { remark } : {}) };
  });
  const notes = notesWith({ title: title.trim(), date: new Date().toISOString().slice(0, 10), version }, parts);
  return form === 'html'
    ? { headers: { 'Content-Type': 'text/html; charset=utf-8', 'Content-Disposition': 'attachment' }, body: await notes.toHtml() }
    : { headers: { 'Content-Type': 'text/markdown; charset=utf-8' }, body: await notes.toMarkdown() };
}

/** Text that a notebook file keeps as a list of lines, as one text again. */
const joined = (bundle: Bundle): Bundle => Object.fromEntries(Object.entries(bundle).map(([type, data]) => [type, Array.isArray(data) && data.every((line) => typeof line === 'string') ? data.join('') : data]));
