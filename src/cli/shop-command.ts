import { shopFields, type ShopKey } from '../shop/shop-fields.js';
import { savedShop, shopPath } from '../shop/shop-file.js';
import type { Words } from './usage.js';

/** `reckoner shop`: what is saved under My shop, and in which file. */
export function shopCommand(words: Words): number {
  const values = savedShop() ?? {};
  if (words.flags.has('json')) {
    process.stdout.write(`${JSON.stringify({ path: shopPath(), values }, null, 2)}\n`);
    return 0;
  }
  const names = (Object.keys(shopFields) as ShopKey[]).filter((name) => values[name] !== undefined);
  process.stdout.write(`${shopPath()}\n`);
  if (names.length === 0) process.stdout.write('nothing is saved yet: fill in My shop on the first page\n');
  const wide = Math.max(0, ...names.map((name) => name.length));
  for (const name of names) process.stdout.write(`  ${name.padEnd(wide)}  ${lineOf(values[name])}\n`);
  return 0;
}

/** A value in one line; of a table its rows. */
function lineOf(value: unknown): string {
  if (!Array.isArray(value)) return String(value);
  return value
    .map((row: Readonly<Record<string, unknown>>) => Object.values(row).map(String).join(' '))
    .join('; ');
}
