import type { Field } from '../recipe/field.js';
import type { RecipeEntry } from '../recipe/entry.js';
import { citationText } from '../recipe/source.js';
import { findRecipe } from './recipe-words.js';
import { optionsOf } from './usage.js';

/** `reckoner show RECIPE`: what it takes and gives, formulas, sources, an example. */
export async function show(words: readonly string[]): Promise<number> {
  const { plain } = optionsOf(words, {});
  process.stdout.write(`${describe(findRecipe(plain[0]))}\n`);
  return 0;
}

export function describe(r: RecipeEntry): string {
  const lines = [`${r.name}: ${r.title}  (${r.topic})`, '', r.about, '', 'Takes'];
  for (const [name, f] of Object.entries(r.inputs)) lines.push(...fieldLines(name, f, '  '));
  lines.push('', 'Gives');
  for (const [name, o] of Object.entries(r.outputs))
    lines.push(`  ${name}${o.optional ? '?' : ''}: ${o.says} (${o.kind})`);
  if (r.formulas.length > 0) {
    lines.push('', 'Formulas');
    for (const f of r.formulas) {
      lines.push(
        `  ${f.plain}`,
        `      ${f.gives.says}${f.source ? `  [${citationText(f.source)}]` : `  [${f.basis}]`}`,
      );
      const letters = Object.entries(f.where).map(([s, l]) => `${s} ${l.says}${l.in ? ` in ${l.in}` : ''}`);
      lines.push(`      ${letters.join('; ')}`);
    }
  }
  const sources = [
    ...new Set([...r.sources, ...r.formulas.flatMap((f) => f.source ?? [])].map(citationText)),
  ];
  if (sources.length > 0) lines.push('', 'Sources', ...sources.map((s) => `  ${s}`));
  lines.push('', 'Example', `  reckoner work ${r.name} ${wordsOf(r.example)}`, '', `  ${callOf(r)}`);
  return lines.join('\n');
}

function fieldLines(name: string, f: Field, indent: string): string[] {
  const tail =
    f.default !== undefined
      ? `; default ${typeof f.default === 'string' ? f.default : JSON.stringify(f.default)}`
      : f.optional
        ? '; may be left out'
        : '';
  return [`${indent}${name}${f.optional ? '?' : ''}: ${f.says}${tail}`, `${indent}    takes ${f.takes}`];
}

/** The example as a TypeScript call, for a cell. */
export function callOf(r: RecipeEntry): string {
  const literal = (v: unknown): string => {
    if (typeof v === 'string') return `'${v.replace(/\\/g, '\\\\').replace(/'/g, "\\'")}'`;
    if (Array.isArray(v)) return `[${v.map(literal).join(', ')}]`;
    if (typeof v === 'object' && v !== null)
      return `{ ${Object.entries(v)
        .map(([k, x]) => `${/^[A-Za-z_]\w*$/.test(k) ? k : `'${k}'`}: ${literal(x)}`)
        .join(', ')} }`;
    return String(v);
  };
  return `${r.long ? 'await ' : ''}${r.name}(${literal(r.example)})`;
}

function wordsOf(example: Readonly<Record<string, unknown>>): string {
  const quote = (s: string): string => (/^[\w.,:/%+-]+$/.test(s) ? s : `'${s.replace(/'/g, "'\\''")}'`);
  return Object.entries(example)
    .map(([k, v]) => `${k}=${quote(typeof v === 'object' && v !== null ? JSON.stringify(v) : String(v))}`)
    .join(' ');
}
