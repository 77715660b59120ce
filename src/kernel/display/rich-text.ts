/** The tagged templates `html`, `md` and `svg` of cells: text that is displayed as what it is. */
import { displaySymbol } from './mime-bundle.js';
import { textOf } from './value-text.js';

type MarkupType = 'text/html' | 'text/markdown' | 'image/svg+xml';
type Tag = (parts: TemplateStringsArray, ...values: unknown[]) => Markup;

/** A text of a media type. In a template it is inserted as it is; other values are escaped in HTML and SVG. */
export class Markup {
  constructor(
    readonly type: MarkupType,
    private readonly text: string,
  ) {}

  toString(): string {
    return this.text;
  }

  get [displaySymbol](): Record<string, string> {
    return { [this.type]: this.text, 'text/plain': this.text };
  }
}

function tagFor(type: MarkupType, insert: (value: unknown) => string): Tag {
  return (parts, ...values) => {
    // `raw` would keep the backslashes of `\n`; of html`..` the text is meant as written, with its escapes resolved.
    const text = parts.map((part, i) => part + (i < values.length ? insert(values[i]) : '')).join('');
    return new Markup(type, text);
  };
}

const entities: Record<string, string> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

function escaped(value: unknown): string {
  if (value instanceof Markup) return value.toString();
  if (Array.isArray(value)) return value.map(escaped).join('');
  return plain(value).replace(/[&<>"']/g, (c) => entities[c] ?? c);
}

function plain(value: unknown): string {
  if (value === undefined || value === null || value === false) return '';
  return typeof value === 'string' ? value : textOf(value);
}

export const html = tagFor('text/html', escaped);
export const svg = tagFor('image/svg+xml', escaped);
export const md = tagFor('text/markdown', plain);
