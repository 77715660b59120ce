import { renderSvg } from '../../charts/svg.js';
import type { ChartSpec } from '../../charts/chart-spec.js';
import { overprinted, withoutColours } from './notebook-html.js';
import type { CodeCell, MimeBundle, Notebook, Output } from '../format/notebook.js';

/** Where a picture of the notebook will stand: takes its bytes and a short name with ending, gives back what a link points at. */
export type PlacePicture = (content: string | Uint8Array, name: string) => string;

/** Puts pictures into the Markdown itself. */
export const inlinePicture: PlacePicture = (content, name) => {
  const type = name.endsWith('.svg') ? 'image/svg+xml' : `image/${name.split('.').at(-1) ?? 'png'}`;
  return `data:${type};base64,${Buffer.from(content).toString('base64')}`;
};

/**
 * A notebook as Markdown: words as they are, code in fences, prints in fences, tables and formulas as Markdown, charts as
 * pictures placed by `place` (default: inside the text).
 */
export async function notebookToMarkdown(
  notebook: Notebook,
  place: PlacePicture = inlinePicture,
): Promise<string> {
  const parts: string[] = [];
  for (const [i, cell] of notebook.cells.entries()) {
    if (cell.cell_type === 'code') parts.push(...(await codeParts(cell, i + 1, place)));
    else if (cell.cell_type === 'raw') parts.push(fenced(cell.source));
    else {
      let words = cell.source.trimEnd();
      for (const [name, data] of Object.entries(cell.attachments ?? {})) {
        const at = pictureOf(data);
        if (at !== undefined)
          words = words.replaceAll(
            `attachment:${name}`,
            place(at.content, `${two(i + 1)}-${safe(name)}.${at.ending}`),
          );
      }
      parts.push(words);
    }
  }
  return `${parts.filter((p) => p !== '').join('\n\n')}\n`;
}

async function codeParts(cell: CodeCell, number: number, place: PlacePicture): Promise<string[]> {
  const parts = cell.source.trim() === '' ? [] : [fenced(cell.source, 'ts')];
  let pictures = 0;
  for (const output of cell.outputs)
    parts.push(
      ...(await outputParts(output, (content, ending) =>
        place(content, `${two(number)}-${++pictures}.${ending}`),
      )),
    );
  return parts;
}

async function outputParts(
  output: Output,
  place: (content: string | Uint8Array, ending: string) => string,
): Promise<string[]> {
  if (output.output_type === 'stream') return [fenced(withoutColours(overprinted(output.text)).trimEnd())];
  if (output.output_type === 'error') return [fenced(`${output.ename}: ${output.evalue}`)];
  const { data } = output;
  const parts = richText(data);
  const picture = (await chartOf(data)) ?? pictureOf(data);
  if (picture !== undefined)
    parts.push(
      `![${(textOf(data, 'text/plain') ?? 'chart').split('\n')[0]?.replace(/[[\]]/g, '').slice(0, 80) ?? 'chart'}](${place(picture.content, picture.ending)})`,
    );
  if (parts.length === 0) {
    const plain = textOf(data, 'text/plain') ?? textOf(data, 'text/html')?.replace(/<[^>]*>/g, ' ');
    if (plain !== undefined && plain.trim() !== '') parts.push(fenced(withoutColours(plain)));
  }
  return parts;
}

/** The Markdown or the formula of an output, where it has one. */
function richText(data: MimeBundle): string[] {
  const markdown = textOf(data, 'text/markdown');
  if (markdown !== undefined) return [markdown.trim()];
  const latex = textOf(data, 'text/latex');
  if (latex === undefined) return [];
  return [/^\s*\$/.test(latex) ? latex.trim() : `$$${latex.trim()}$$`];
}

function textOf(data: MimeBundle, type: string): string | undefined {
  const value = data[type];
  return typeof value === 'string' ? value : undefined;
}

interface Picture {
  readonly content: string | Uint8Array;
  readonly ending: string;
}

async function chartOf(data: MimeBundle): Promise<Picture | undefined> {
  const type = Object.keys(data).find((t) => /^application\/vnd\.vegalite\.v[456]\+json$/.test(t));
  const spec = type === undefined ? undefined : data[type];
  if (typeof spec !== 'object' || spec === null || Array.isArray(spec)) return undefined;
  // A chart that cannot be drawn falls back on the picture it came with.
  return renderSvg(spec as ChartSpec).then(
    (content) => ({ content, ending: 'svg' }),
    () => undefined,
  );
}

function pictureOf(data: MimeBundle): Picture | undefined {
  const svg = data['image/svg+xml'];
  if (typeof svg === 'string')
    return { content: svg.includes('<') ? svg : Buffer.from(svg, 'base64'), ending: 'svg' };
  for (const ending of ['png', 'jpeg', 'gif', 'webp']) {
    const base64 = data[`image/${ending}`];
    if (typeof base64 === 'string') return { content: Buffer.from(base64, 'base64'), ending };
  }
  return undefined;
}

/** A fence longer than any inside it. */
function fenced(text: string, language = ''): string {
  const longest = Math.max(2, ...[...text.matchAll(/`+/g)].map((m) => m[0].length));
  const fence = '`'.repeat(Math.max(3, longest + 1));
  return `${fence}${language}\n${text.replace(/\n$/, '')}\n${fence}`;
}

const two = (n: number): string => String(n).padStart(2, '0');
const safe = (name: string): string =>
  name
    .replace(/\.[^.]*$/, '')
    .replace(/[^\w-]+/g, '-')
    .slice(0, 40);
