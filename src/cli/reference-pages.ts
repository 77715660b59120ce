import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { referenceHtml, referenceIndexHtml } from '../notes/reference-html.js';
import { catalogue } from '../recipes/catalogue.js';

/** Writes the reference as self-contained HTML: one page a recipe and an index. @throws the file system's own error */
export async function writePages(folder: string): Promise<number> {
  mkdirSync(folder, { recursive: true });
  const write = (name: string, page: string): void => writeFileSync(join(folder, `${name}.html`), page);
  for (const r of catalogue) write(r.name, await referenceHtml(r, catalogue));
  write('index', referenceIndexHtml(catalogue));
  process.stdout.write(`${catalogue.length} pages and an index written to ${folder}\n`);
  return 0;
}
