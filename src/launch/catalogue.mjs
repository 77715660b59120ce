// Writes src/recipes/catalogue.ts from the recipe files there are: one export line a recipe, and the list of all.
// Generated so that adding a recipe touches one file; the build runs it.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const topics = ['moisture', 'stock', 'lamination', 'joinery', 'rails', 'finish', 'machining', 'bill'];

export function writeCatalogue() {
  const found = [];
  for (const topic of topics) {
    const folder = join(root, 'src/recipes', topic);
    if (!existsSync(folder)) continue;
    for (const file of readdirSync(folder)
      .filter((f) => f.endsWith('.ts'))
      .sort()) {
      const text = readFileSync(join(folder, file), 'utf8');
      for (const m of text.matchAll(/^export const (\w+)\s*=\s*(recipe|asyncRecipe)\(/gm))
        found.push({ name: m[1], path: `./${topic}/${file.replace(/\.ts$/, '.js')}` });
    }
  }
  const text = [
    '// Written by src/launch/catalogue.mjs from the files in this folder; do not edit.',
    "import type { AnyRecipe } from '../engine/any-recipe.ts';",
    ...found.map((r) => `import { ${r.name} } from '${r.path}';`),
    '',
    `export { ${found.map((r) => r.name).join(', ')} };`,
    '',
    '/** Every recipe, by topic and file. */',
    `export const catalogue: readonly AnyRecipe[] = [${found.map((r) => r.name).join(', ')}] as unknown as readonly AnyRecipe[];`,
    '',
  ].join('\n');
  const path = join(root, 'src/recipes/catalogue.ts');
  // Left alone when unchanged, or every build would look like a change of source.
  if (!existsSync(path) || readFileSync(path, 'utf8') !== text) writeFileSync(path, text);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeCatalogue();
