import sanitizeHtml from 'sanitize-html';

const allowedTags = (
  'a abbr b blockquote br caption code col colgroup dd del details div dl dt em figcaption figure ' +
  'h1 h2 h3 h4 h5 h6 hr i img ins kbd li mark ol p pre s section small span strong sub summary sup ' +
  'table tbody td tfoot th thead tr u ul'
).split(' ');

/**
 * HTML from a notebook or a remark, with everything taken out that could act or load: scripts, handlers, frames, forms,
 * outside pictures and styles. Words, tables, lists, simple styles and pictures that travel inside the page stay.
 */
export function sanitised(html: string): string {
  return sanitizeHtml(html, {
    allowedTags,
    allowedAttributes: {
      '*': ['class', 'id', 'style', 'title', 'lang', 'dir'],
      a: ['href'],
      code: ['data-latex', 'data-display'],
      img: ['src', 'alt', 'width', 'height'],
      ol: ['start'],
      details: ['open'],
      td: ['colspan', 'rowspan'],
      th: ['colspan', 'rowspan', 'scope'],
    },
    allowedClasses: { '*': ['hljs-*', 'language-*', 'reckoner-*', 'note-*'] },
    allowedStyles: { '*': simpleStyles },
    allowedSchemes: ['http', 'https', 'mailto'],
    allowedSchemesByTag: { img: ['data'] },
    allowProtocolRelative: false,
    // A link to a heading of the same page, or to a file beside it, has no scheme and stays; a picture from outside goes.
    exclusiveFilter: (frame) =>
      frame.tag === 'img' &&
      !/^data:image\/(png|jpeg|gif|webp|svg\+xml)[;,]/i.test(frame.attribs['src'] ?? ''),
    transformTags: {
      a: (tagName, attribs) => ({
        tagName,
        attribs: /^https?:/i.test(attribs['href'] ?? '') ? { ...attribs, rel: 'noopener' } : attribs,
      }),
    },
  });
}

const size = /^-?[\d.]+(px|em|rem|%|ch|pt|mm)?( -?[\d.]+(px|em|rem|%|ch|pt|mm)?){0,3}$/;
const word = /^[a-z-]+$/;
const simpleStyles = {
  'text-align': [word],
  'vertical-align': [word],
  'white-space': [word],
  'font-weight': [/^(\d{3}|bold|normal)$/],
  'font-style': [word],
  'font-size': [size],
  'min-width': [size],
  'font-family': [/^[\w ,.-]+$/],
  'font-variant-numeric': [word],
  'overflow-wrap': [word],
  'border-collapse': [word],
  margin: [size],
  padding: [size],
  'margin-top': [size],
  'margin-bottom': [size],
  'margin-left': [size],
  'margin-right': [size],
  'padding-left': [size],
  'padding-right': [size],
  width: [size],
  'max-width': [size],
};
