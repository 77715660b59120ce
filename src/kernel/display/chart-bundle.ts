/** Plain objects that are Vega-Lite or Vega specifications, known by the `$schema` they state. */
import { renderSvg } from '../../charts/svg.js';
import type { MimeBundle } from '../message.js';

const schemaPattern = /^https?:\/\/vega\.github\.io\/schema\/(vega|vega-lite)\/v(\d+)(?:[.\d]*)\.json$/;

/** The chart as a specification and, for Vega-Lite, as SVG; undefined for any other value. */
export function chartBundle(value: unknown): Promise<MimeBundle> | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const prototype: unknown = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== null) return undefined;
  const spec = value as Record<string, unknown>;
  const [, grammar, version] = schemaPattern.exec(textOf(spec['$schema'])) ?? [];
  if (grammar === undefined || version === undefined) return undefined;
  const type = grammar === 'vega' ? `vnd.vega.v${version}` : `vnd.vegalite.v${version}`;
  return drawn(spec, `application/${type}+json`, grammar === 'vega-lite');
}

async function drawn(spec: Record<string, unknown>, type: string, draw: boolean): Promise<MimeBundle> {
  const title = textOf(spec['title']) || 'chart';
  const bundle: MimeBundle = { 'text/plain': title, [type]: spec };
  if (draw) {
    try {
      bundle['image/svg+xml'] = await renderSvg(spec);
    } catch (error) {
      // A client with its own renderer may still draw it; others show the reason.
      bundle['text/plain'] = `${title}: ${error instanceof Error ? error.message : String(error)}`;
    }
  }
  return bundle;
}

const textOf = (value: unknown): string => (typeof value === 'string' ? value : '');
