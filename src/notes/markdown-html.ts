import { tex, type MarkdownItTexOptions } from '@mdit/plugin-tex';
import MarkdownIt, { type PluginWithOptions } from 'markdown-it';
import { uniqueSlug } from './unique-slug.js';
import { highlighted } from './highlight.js';
import { mathHtml, type MathForm } from './math-html.js';
import { sanitised } from './sanitise.js';

/** A heading of the text, with the id it has in the HTML. */
export interface Heading {
  readonly level: number;
  readonly text: string;
  readonly id: string;
}

export interface RenderedMarkdown {
  readonly html: string;
  readonly headings: readonly Heading[];
}

interface Env {
  readonly math: string[];
  readonly headings: Heading[];
  readonly taken: Set<string>;
  readonly attachments: Readonly<Record<string, string>>;
  readonly form: MathForm;
}

/** Marks the place of a formula while the text around it is sanitised; letters no keyboard makes. */
const open = '\uE000';
const close = '\uE001';

const markdown = new MarkdownIt({
  html: true,
  linkify: true,
  typographer: false,
  highlight: (code, language) => highlighted(code, language),
})
  .use(tex as PluginWithOptions<MarkdownItTexOptions<Env>>, {
    delimiters: 'dollars',
    render: (latex, display, env) => {
      env.math.push(mathHtml(latex, display, env.form));
      return `${open}${env.math.length - 1}${close}`;
    },
  })
  .use((md) => {
    // Markdown-it knows pictures inside a text as PNG, JPEG, GIF and WebP; our charts are SVG, which an image element holds as safely.
    const usual = md.validateLink.bind(md);
    md.validateLink = (link) => usual(link) || /^data:image\/svg\+xml;base64,[A-Za-z0-9+/=]*$/.test(link);
    md.core.ruler.push('heading_ids', (state) => {
      const env = state.env as Env;
      for (const [i, token] of state.tokens.entries()) {
        if (token.type !== 'heading_open') continue;
        const text = (state.tokens[i + 1]?.children ?? [])
          .filter((t) => t.type === 'text' || t.type === 'code_inline')
          .map((t) => t.content)
          .join('');
        const id = uniqueSlug(text, env.taken);
        token.attrSet('id', id);
        env.headings.push({ level: Number(token.tag.slice(1)), text, id });
      }
    });
    const image = md.renderer.rules.image;
    md.renderer.rules.image = (tokens, i, options, env: Env, self) => {
      const token = tokens[i];
      const src = token?.attrGet('src') ?? '';
      const name = src.startsWith('attachment:')
        ? decodeURIComponent(src.slice('attachment:'.length))
        : undefined;
      const data = name === undefined ? undefined : env.attachments[name];
      if (data !== undefined) token?.attrSet('src', data);
      return image?.(tokens, i, options, env, self) ?? '';
    };
  });

/**
 * Markdown as sanitised HTML with typeset formulas. `taken` holds ids in use on the page already and gains the new ones.
 * `attachments`: pictures a notebook cell carries, name to data URI.
 */
export function markdownHtml(
  text: string,
  taken = new Set<string>(),
  attachments: Readonly<Record<string, string>> = {},
  form: MathForm = 'typeset',
): RenderedMarkdown {
  const env: Env = { math: [], headings: [], taken, attachments, form };
  const rough = markdown.render(text.replaceAll(open, '').replaceAll(close, ''), env);
  const clean = sanitised(rough);
  const html = clean.replace(
    new RegExp(`${open}(\\d+)${close}`, 'g'),
    (_, n: string) => env.math[Number(n)] ?? '',
  );
  return { html, headings: env.headings };
}
