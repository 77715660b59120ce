import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { referencePage } from '../engine/reference-page.js';
import { pageHtml } from '../notes/html-page.js';
import { markdownHtml } from '../notes/markdown-html.js';
import { catalogue } from '../recipes/catalogue.js';

/** Writes the reference as self-contained HTML: one page a recipe and an index. @throws the file system's own error */
export async function writePages(folder: string): Promise<number> {
  mkdirSync(folder, { recursive: true });
  const write = (name: string, title: string, markdown: string): void =>
    writeFileSync(join(folder, `${name}.html`), pageHtml({ title, body: markdownHtml(markdown).html }));
  for (const r of catalogue) write(r.name, r.title, linked(await referencePage(r, catalogue)));
  const topics = [...new Set(catalogue.map((r) => r.topic))];
  const lists = topics.flatMap((topic) => [
    `## ${topic}`,
    '',
    ...catalogue.filter((r) => r.topic === topic).map((r) => `- [${r.title}](${r.name}.html)`),
    '',
  ]);
  write('index', 'Recipes', ['# Recipes', '', ...lists].join('\n'));
  process.stdout.write(`${catalogue.length} pages and an index written to ${folder}\n`);
  return 0;
}

/** The page with its related recipes as links. */
const linked = (markdown: string): string =>
  markdown.replace(/^- `(\w+)`: (.*)$/gm, '- [$2]($1.html)').concat('\n\n[All recipes](index.html)\n');
