// Writes src/recipes/interfaces.ts: for each recipe an interface of what it takes and one of what it gives, with a comment for
// each field (meaning, limits, default, example), and the closed lists as literal types, so that an editor completes them.
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

/** The catalogue and the lists, as values that this script can read. */
async function loadLists(root) {
  const esbuild = await import('esbuild');
  const { outputFiles } = await esbuild.build({
    absWorkingDir: root,
    stdin: {
      contents: `export { catalogue } from './src/recipes/catalogue.ts';
        export { speciesNames } from './src/materials/species.ts';
        export { climates } from './src/materials/climate.ts';
        export { allGrades } from './src/materials/grades.ts';
        export { kinds } from './src/units/kind.ts';`,
      resolveDir: root,
    },
    bundle: true,
    write: false,
    format: 'esm',
    platform: 'node',
    external: ['highs', 'vega', 'vega-lite'],
    logLevel: 'warning',
    banner: {
      js: "import { createRequire as __makeRequire } from 'node:module'; const require = __makeRequire(import.meta.url);",
    },
  });
  const file = join(root, `.lists-${process.pid}.mjs`);
  writeFileSync(file, outputFiles[0].text);
  try {
    return await import(pathToFileURL(file).href);
  } finally {
    rmSync(file);
  }
}

const literal = (value) => `'${String(value).replace(/\\/g, '\\\\').replace(/'/g, "\\'")}'`;
const union = (values) => [...new Set(values)].map(literal).join(' | ');
const capitalised = (text) => text[0].toUpperCase() + text.slice(1);
const shown = (value) => (typeof value === 'string' ? value : JSON.stringify(value));

function comment(lines) {
  const text = lines
    .filter((line) => line !== undefined && line !== '')
    .map((line) => line.replace(/\*\//g, '*\\/'));
  return [`  /**`, ...text.map((line) => `   * ${line}`), `   */`];
}

function typesOf(kinds) {
  const isKind = (kind) => Object.hasOwn(kinds, kind);
  /** Names to complete, beside whatever else the field takes. */
  const open = (names, path) => `Exclude<${path}, string> | ${names} | (string & {})`;
  const choicesOf = (f) => [...(f.choices ?? []), ...(f.items ?? []).flatMap(choicesOf)];
  const field = (f, path) => {
    // A concentration is also a cut of shellac, which is a plain number.
    if (f.kind === 'concentration') return path;
    if (isKind(f.kind)) return `Written<'${f.kind}'>`;
    if (f.kind === 'choice') return union(f.choices);
    if (f.kind === 'flag') return "boolean | 'yes' | 'no'";
    if (f.kind === 'text') return 'string';
    if (f.kind === 'timber') return open('TimberName | GradeName', path);
    if (f.kind === 'climate') return open('ClimateName', path);
    const choices = ['list', 'record'].includes(f.kind) ? [] : choicesOf(f);
    return choices.length > 0 ? open(union(choices), path) : path;
  };
  const output = (o, path) => {
    if (o.kind === 'ratio' || o.kind === 'count') return 'number';
    if (isKind(o.kind)) return `Quantity<'${o.kind}'>`;
    return { text: 'string', flag: 'boolean' }[o.kind] ?? path;
  };
  return { field, output };
}

function interfacesOf(r, { field, output }) {
  const name = r.name[0].toUpperCase() + r.name.slice(1);
  const inputs = Object.entries(r.inputs).flatMap(([key, f]) => [
    ...comment([
      `${capitalised(f.label)}. ${f.help ?? ''}`.trim(),
      `Takes ${f.expects}.`,
      f.unit && `Shown in ${f.unit}.`,
      f.default !== undefined ? `@default ${shown(f.default)}` : undefined,
      r.example[key] !== undefined ? `@example ${shown(r.example[key])}` : undefined,
    ]),
    `  readonly ${key}${f.optional ? '?' : ''}: ${field(f, `InputOf<(typeof ${r.name})['inputs']['${key}']>`)};`,
  ]);
  const outputs = Object.entries(r.outputs).flatMap(([key, o]) => [
    ...comment([`${capitalised(o.label)}. ${o.help ?? ''}`.trim(), o.unit && `Shown in ${o.unit}.`]),
    `  readonly ${key}${o.optional ? '?' : ''}: ${output(o, `ShownOf<(typeof ${r.name})['outputs']['${key}']>`)}${o.optional ? ' | undefined' : ''};`,
  ]);
  return [
    `/** What {@link ${r.name}} takes. ${r.about} */`,
    `export interface ${name}Input {`,
    ...inputs,
    '}',
    `/** What {@link ${r.name}} gives, beside workings, cautions, sources and chart. */`,
    `export interface ${name}Output {`,
    ...outputs,
    '}',
    `/** An answer of {@link ${r.name}}. */`,
    `export interface ${name}Result extends ${name}Output, ResultMethods {}`,
    '',
  ];
}

/** Each recipe with its interfaces; does not compile where these differ from its fields. */
function documentedRecipes(catalogue) {
  const members = catalogue.map((r) => {
    const name = r.name[0].toUpperCase() + r.name.slice(1);
    const made = `Documented${r.isAsync ? 'Async' : ''}Recipe`;
    const own = `typeof ${r.name}`;
    return `  readonly ${r.name}: InPlaceOf<${own}, ${made}<${name}Input, ${name}Result, (${own})['inputs'], (${own})['outputs']>>;`;
  });
  return [
    '/** Every recipe, its call with the interfaces above. */',
    'export interface DocumentedRecipes {',
    ...members,
    '}',
    '',
  ];
}

export async function writeInterfaces(root) {
  const { catalogue, speciesNames, climates, allGrades, kinds } = await loadLists(root);
  const types = typesOf(kinds);
  const text = [
    '// Written by src/launch/recipe-interfaces.mjs from the fields of every recipe; do not edit.',
    "import type { Quantity } from '../units/quantity.js';",
    "import type { InputOf } from '../engine/field.js';",
    "import type { DocumentedAsyncRecipe, DocumentedRecipe, InPlaceOf } from '../engine/documented-recipe.js';",
    "import type { ShownOf } from '../engine/output.js';",
    "import type { ResultMethods } from '../engine/result-types.js';",
    "import type { Written } from '../engine/quantity-field.js';",
    `import type { ${catalogue.map((r) => r.name).join(', ')} } from './catalogue.js';`,
    '',
    '/** Names of timbers and of groups of timbers. */',
    `export type TimberName = ${union(speciesNames())};`,
    '/** Names of structural grades. */',
    `export type GradeName = ${union(allGrades().map((g) => g.name))};`,
    '/** Places whose outdoor moisture is tabled. */',
    `export type ClimateName = ${union(climates().map((c) => c.place))};`,
    '',
    ...catalogue.flatMap((r) => interfacesOf(r, types)),
    ...documentedRecipes(catalogue),
  ].join('\n');
  const path = join(root, 'src/recipes/interfaces.ts');
  if (!existsSync(path) || readFileSync(path, 'utf8') !== text) writeFileSync(path, text);
}
