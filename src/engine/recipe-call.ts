import type { AnyRecipe } from './any-recipe.js';

/** The example as a TypeScript call, for a cell. */
export function callOf(r: Pick<AnyRecipe, 'name' | 'isAsync' | 'example'>): string {
  return `${r.isAsync ? 'await ' : ''}${r.name}(${literal(r.example)})`;
}

function literal(v: unknown): string {
  if (typeof v === 'string') return `'${v.replace(/\\/g, '\\\\').replace(/'/g, "\\'")}'`;
  if (Array.isArray(v)) return `[${v.map(literal).join(', ')}]`;
  if (typeof v === 'object' && v !== null)
    return `{ ${Object.entries(v)
      .map(([k, x]) => `${/^[A-Za-z_]\w*$/.test(k) ? k : `'${k}'`}: ${literal(x)}`)
      .join(', ')} }`;
  return String(v);
}
