// Writes src/recipes/catalogue.ts from the recipe files there are: one export line a recipe, and the list of all.
// Generated so that adding a recipe touches one file; the build runs it.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
/** The order in which topics are listed; a folder that is not named here comes after them. */
const listed = ['moisture', 'stock', 'lamination', 'joinery', 'rails', 'finish', 'machining', 'bill'];

function topicFolders() {
  const folders = readdirSync(join(root, 'src/recipes'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();
  const known = listed.filter((topic) => folders.includes(topic));
  return [...known, ...folders.filter((topic) => !listed.includes(topic))];
}

function recipesOf(topic) {
  const folder = join(root, 'src/recipes', topic);
  const files = readdirSync(folder)
    .filter((file) => file.endsWith('.ts'))
    .sort();
  return files.flatMap((file) => {
    const text = readFileSync(join(folder, file), 'utf8');
    const names = text.matchAll(/^export const (\w+)\s*=\s*(?:recipe|asyncRecipe)\(/gm);
    return [...names].map((match) => ({
      name: match[1],
      path: `./${topic}/${file.replace(/\.ts$/, '.js')}`,
    }));
  });
}

export function writeCatalogue() {
  const found = topicFolders().flatMap(recipesOf);
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
