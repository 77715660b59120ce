import type { AnyRecipe } from '../engine/any-recipe.js';
import { referencePage } from '../engine/reference-page.js';
import { sketchMarkdown } from '../sketches/recipe-sketch.js';
import { pageHtml } from './html-page.js';
import { markdownHtml } from './markdown-html.js';
import { capitalised } from '../units/capitalised.js';

/** The reference page of a recipe as self-contained HTML; it links to those of `all`, beside it, and to their index. */
export async function referenceHtml(recipe: AnyRecipe, all: readonly AnyRecipe[]): Promise<string> {
  const markdown = await referencePage(recipe, all, sketchMarkdown(recipe));
  const linked = markdown.replace(/^- `(\w+)`: (.*)$/gm, '- [$2]($1.html)');
  return html(recipe.title, `${linked}\n\n[All recipes](index.html)\n`);
}

/** The index of the reference: every recipe by topic. */
export function referenceIndexHtml(all: readonly AnyRecipe[]): string {
  const topics = [...new Set(all.map((r) => r.topic))];
  const lists = topics.flatMap((topic) => [
    `## ${capitalised(topic)}`,
    '',
    ...all.filter((r) => r.topic === topic).map((r) => `- [${r.title}](${r.name}.html)`),
    '',
  ]);
  return html('Recipes', ['# Recipes', '', ...lists].join('\n'));
}

const html = (title: string, markdown: string): string =>
  pageHtml({ title, body: markdownHtml(markdown).html });
