import MarkdownIt from 'markdown-it';

/** Markdown as HTML for the widgets, which take formulas out before, put them back after and then sanitise what comes out. */
const markdown = new MarkdownIt({ html: true, linkify: true, typographer: false });

// A heading can be linked to by its words, as in the finished pages.
markdown.core.ruler.push('heading_ids', (state) => {
  for (const [at, token] of state.tokens.entries()) {
    if (token.type !== 'heading_open') continue;
    const words = state.tokens[at + 1]?.content ?? '';
    token.attrSet(
      'id',
      words
        .toLowerCase()
        .replace(/[^\p{L}\p{N}]+/gu, '-')
        .replace(/^-|-$/g, ''),
    );
  }
});

export const markdownParser = {
  render: (source: string): Promise<string> => Promise.resolve(markdown.render(source)),
};
