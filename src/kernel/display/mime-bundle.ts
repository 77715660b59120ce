/** From a value to the forms a notebook can show it in. */
import { inspect } from 'node:util';
import type { MimeBundle } from '../message.js';
import { frameBundle } from './data-frame.js';
import { mathBundle } from './mathjs-formatter.js';

/** The public convention by which a value says how it wants to be shown. */
export const displaySymbol = Symbol.for('Jupyter.display');

const mediaType = /^[\w.+-]+\/[\w.+-]+$/;

/** A value's own bundle if it has one, else the kernel's best reading of it. Always holds text/plain. */
export async function formatValue(value: unknown): Promise<MimeBundle> {
  const own = await ownBundle(value);
  if (own) return own;
  return plainBundle(value);
}

/** The same at once, for values that do not have to be waited for; undefined for those that must. */
export function formatValueSync(value: unknown): MimeBundle | undefined {
  if (Object(value) !== value || (value as Record<symbol, unknown>)[displaySymbol] === undefined)
    return plainBundle(value);
  return undefined;
}

async function ownBundle(value: unknown): Promise<MimeBundle | undefined> {
  if (Object(value) !== value) return undefined;
  const offered = (value as Record<symbol, unknown>)[displaySymbol];
  const bundle: unknown =
    typeof offered === 'function' ? await (offered.call(value) as unknown) : await offered;
  if (typeof bundle !== 'object' || bundle === null) return undefined;
  const kept = Object.fromEntries(
    Object.entries(bundle).filter(([type, data]) => mediaType.test(type) && data !== undefined),
  ) as MimeBundle;
  if (Object.keys(kept).length === 0) return undefined;
  if (kept['text/plain'] === undefined) kept['text/plain'] = textOf(value);
  return kept;
}

function plainBundle(value: unknown): MimeBundle {
  return frameBundle(value) ?? mathBundle(value) ?? { 'text/plain': textOf(value) };
}

/** A value as text, as Node's own prompt shows it; a value whose printing fails still shows what it is. */
export function textOf(value: unknown): string {
  try {
    return inspect(value, {
      depth: 4,
      maxArrayLength: 100,
      maxStringLength: 20_000,
      breakLength: 100,
      compact: 3,
    });
  } catch (error) {
    return `[${Object.prototype.toString.call(value).slice(8, -1)}: cannot be printed: ${String((error as Error)?.message ?? error)}]`;
  }
}

/** A bundle given as it is (`display(bundle, { raw: true })`), checked. */
export function rawBundle(value: unknown): MimeBundle {
  const entries = typeof value === 'object' && value !== null ? Object.entries(value) : [];
  const wrong = entries.find(([type]) => !mediaType.test(type));
  if (entries.length === 0 || wrong) {
    throw new TypeError(
      `display: with raw, the value is an object by media type such as { 'text/html': '<b>..</b>' }; got ${wrong ? `the key '${wrong[0]}'` : textOf(value)}`,
    );
  }
  return Object.fromEntries(entries);
}
