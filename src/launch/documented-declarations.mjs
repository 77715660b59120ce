// In dist/, gives each recipe's declaration the interfaces of what it takes and gives, so that an editor and a cell show the
// comment of an input where it is written. They stand in the recipe's own file: a cell that names one recipe loads no other.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

/** Files that the interfaces name types of, as seen from a folder of recipes. */
const homes = {
  Quantity: '../../units/quantity.js',
  InputOf: '../../engine/field-shape.js',
  ShownOf: '../../engine/output.js',
  Written: '../../engine/quantity-field.js',
  TimberName: '../closed-lists.js',
  GradeName: '../closed-lists.js',
  ClimateName: '../closed-lists.js',
};
const mark = '// Interfaces of its recipes.';

/** Names of types in code, not in comments, by way of the files they come from. */
const qualified = (text) =>
  text
    .split('\n')
    .map((line) =>
      /^\s*(?:\/\*\*|\*)/.test(line)
        ? line
        : line.replace(
            new RegExp(`\\b(${Object.keys(homes).join('|')})\\b`, 'g'),
            (name) => `import("${homes[name]}").${name}`,
          ),
    )
    .join('\n');

/** The declarations in src/recipes/interfaces.ts, each with its comment, by name. */
function declarationsOf(root) {
  const ts = createRequire(join(root, 'package.json'))('typescript');
  const text = readFileSync(join(root, 'src/recipes/interfaces.ts'), 'utf8');
  const file = ts.createSourceFile('interfaces.ts', text, ts.ScriptTarget.ES2022, true);
  return new Map(file.statements.flatMap((s) => (s.name ? [[s.name.text, s.getFullText().trim()]] : [])));
}

/** A recipe's declaration, and below it its interfaces; the same when it has them already. */
function documented(text, recipes, declarations) {
  const own = text.split(`\n${mark}`)[0].trimEnd();
  const blocks = recipes.flatMap(({ type }) =>
    ['Input', 'Output', 'Result'].map((part) => qualified(declarations.get(`${type}${part}`))),
  );
  const typed = recipes.reduce((out, { name, type }) => {
    const declared = new RegExp(
      `(declare const ${name}: )import\\("[^"]+"\\)\\.(?:Documented)?(Async)?Recipe<(?:\\w+Input, \\w+Result, )?`,
    );
    if (!declared.test(out)) throw new Error(`${name}: its declaration is not that of a recipe`);
    return out.replace(
      declared,
      (_, start, long = '') =>
        `${start}import("../../engine/documented-recipe.js").Documented${long}Recipe<${type}Input, ${type}Result, `,
    );
  }, own);
  // What an interface extends has to be a name.
  const methods = "import type { ResultMethods } from '../../engine/result-types.js';";
  return [typed, mark, methods, ...blocks, ''].join('\n');
}

export function documentDeclarations(root) {
  const folder = join(root, 'dist/recipes');
  if (!existsSync(join(folder, 'catalogue.d.ts'))) return;
  const declarations = declarationsOf(root);
  const catalogue = readFileSync(join(root, 'src/recipes/catalogue.ts'), 'utf8');
  const files = new Map();
  for (const [, name, file] of catalogue.matchAll(/^import \{ (\w+) \} from '\.\/(.+)\.js';/gm)) {
    const recipe = { name, type: name[0].toUpperCase() + name.slice(1) };
    files.set(file, [...(files.get(file) ?? []), recipe]);
  }
  const lists = ['TimberName', 'GradeName', 'ClimateName'];
  const shown = [`export type { ${lists.join(', ')} } from './closed-lists.js';`];
  for (const [file, recipes] of files) {
    const path = join(folder, `${file}.d.ts`);
    const text = readFileSync(path, 'utf8');
    const now = documented(text, recipes, declarations);
    if (now !== text) writeFileSync(path, now);
    const names = recipes.flatMap(({ type }) => [`${type}Input`, `${type}Output`, `${type}Result`]);
    shown.push(`export type { ${names.join(', ')} } from './${file}.js';`);
  }
  writeFileSync(
    join(folder, 'closed-lists.d.ts'),
    lists.map((name) => `${declarations.get(name)}\n`).join(''),
  );
  writeFileSync(join(folder, 'interfaces.d.ts'), `${shown.join('\n')}\n`);
}
