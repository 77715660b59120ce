import type { Contents } from './contents.js';
import { capitalised } from '../units/capitalised.js';

/** A notebook as the home page lists it. */
export interface NotebookSummary {
  readonly path: string;
  /** Number in front of the file name, `01`; undefined for a user's own notebooks. */
  readonly number: string | undefined;
  readonly title: string;
  readonly summary: string;
  readonly modified: string;
  /** Why the notebook cannot be opened, where it cannot. */
  readonly problem: string | undefined;
}

/** The notebooks of the folder: numbered chapters first. Title and sentence are the notebook's own first heading and first sentence. */
export async function listNotebooks(
  contents: Contents,
): Promise<{ notebooks: NotebookSummary[]; files: { path: string; size: number }[] }> {
  const listing = (await contents.read('')).content as {
    path: string;
    name: string;
    type: string;
    last_modified: string;
    size: number | null;
  }[];
  const out: NotebookSummary[] = [];
  for (const entry of listing.filter((item) => item.type === 'notebook')) {
    const number = /^(\d+)[-_]/.exec(entry.name)?.[1];
    let [title, label, problem]: [string, string, string | undefined] = [
      plainName(entry.name),
      '',
      undefined,
    ];
    try {
      const opened = JSON.parse((await contents.root.read(entry.path)).toString('utf8')) as {
        cells?: { cell_type?: string; source?: string | string[] }[];
      };
      const first = opened.cells?.find((cell) => cell.cell_type === 'markdown')?.source ?? '';
      const heading = headingAndSentence(Array.isArray(first) ? first.join('') : first);
      title = heading.title ?? title;
      label = heading.label;
    } catch {
      problem = 'This file is not a whole notebook. Open it to see where it breaks.';
    }
    out.push({ path: entry.path, number, title, summary: label, modified: entry.last_modified, problem });
  }
  const files = listing
    .filter((item) => item.type === 'file')
    .map((item) => ({ path: item.path, size: item.size ?? 0 }));
  return { notebooks: out, files };
}

/** First heading and first sentence after it of a Markdown text, marks taken off. */
export function headingAndSentence(markdown: string): { title: string | undefined; label: string } {
  const lines = markdown.split('\n');
  const at = lines.findIndex((line) => /^#{1,3} /.test(line));
  const title = at < 0 ? undefined : plain((lines[at] ?? '').replace(/^#+ /, '')).replace(/^\d+[.:]?\s+/, '');
  const paragraph: string[] = [];
  for (const line of lines.slice(at + 1)) {
    const isText = /^[\p{L}\p{N}"'*_(`[]/u.test(line.trim());
    if (isText) paragraph.push(line.trim());
    else if (paragraph.length > 0) break;
  }
  const text = plain(paragraph.join(' '));
  const sentence = /^.{20,}?[.?!](?=\s|$)/.exec(text)?.[0] ?? text;
  return { title, label: sentence.length > 220 ? `${sentence.slice(0, 217).trimEnd()}...` : sentence };
}

const plain = (text: string): string =>
  text
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/[*_`]+/g, '')
    .trim();
const plainName = (name: string): string => {
  const words = name
    .replace(/\.ipynb$/, '')
    .replace(/^\d+[-_]/, '')
    .replace(/[-_]+/g, ' ');
  return capitalised(words);
};
