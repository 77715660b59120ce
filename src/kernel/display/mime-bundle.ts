/** From a value to the forms in which a notebook can show it. */
import type { MimeBundle } from '../message.js';
import { chartBundle } from './chart-bundle.js';
import { frameBundle } from './data-frame.js';
import { mathBundle } from './mathjs-formatter.js';
import { isRecipe, recipeCard } from './recipe-card.js';
import { textOf } from './value-text.js';

/** The public convention by which a value says how it is shown: a bundle, or a function or promise of one. */
export const displaySymbol = Symbol.for('Jupyter.display');

const mediaType = /^[\w.+-]+\/[\w.+-]+$/;

/** A bundle that always holds text/plain, or undefined for a value that shows nothing (its own bundle is `{}`). */
export type Formatted = MimeBundle | undefined;

/** A value's own bundle if it has one, else the kernel's. At once unless the value's own bundle must be awaited. */
export function formatValue(value: unknown): Formatted | Promise<Formatted> {
  const own = offeredBundle(value);
  return own instanceof Promise
    ? own.then((bundle: unknown) => completeBundle(value, bundle))
    : completeBundle(value, own);
}

/** Formats a value: `done` gets its bundle, at once unless that must be awaited; `failed` gets what its own display threw. */
export function formatted(
  value: unknown,
  done: (bundle: Formatted) => void,
  failed: (error: unknown) => void,
): void {
  try {
    const bundle = formatValue(value);
    if (bundle instanceof Promise) bundle.then(done, failed);
    else done(bundle);
  } catch (error) {
    failed(error);
  }
}

function offeredBundle(value: unknown): unknown {
  if (Object(value) !== value) return undefined;
  const offered = (value as Record<symbol, unknown>)[displaySymbol];
  const bundle: unknown = typeof offered === 'function' ? offered.call(value) : offered;
  const isThenable = typeof (bundle as { then?: unknown } | undefined)?.then === 'function';
  return isThenable ? Promise.resolve(bundle) : bundle;
}

function completeBundle(value: unknown, offered: unknown): Formatted | Promise<Formatted> {
  if (typeof offered !== 'object' || offered === null) return defaultBundle(value);
  const entries = Object.entries(offered).filter(([, data]) => data !== undefined);
  if (entries.length === 0) return undefined;
  const bundle: MimeBundle = Object.fromEntries(entries.filter(([type]) => mediaType.test(type)));
  if (Object.keys(bundle).length === 0) return defaultBundle(value);
  bundle['text/plain'] ??= textOf(value);
  return bundle;
}

function defaultBundle(value: unknown): MimeBundle | Promise<MimeBundle> {
  if (isRecipe(value)) return recipeCard(value);
  return chartBundle(value) ?? frameBundle(value) ?? mathBundle(value) ?? { 'text/plain': textOf(value) };
}

/** A bundle passed as it is (`display(bundle, { raw: true })`), checked. */
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
