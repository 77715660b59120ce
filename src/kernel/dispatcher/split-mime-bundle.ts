/**
 * A Jupyter client shows one form of an output, the richest it knows: of a result's text and chart it would show the text
 * alone. For such clients the chart is sent as an output of its own, right after. Our own page shows both of one.
 *
 * Clients and converters that remove SVG elements, as nbconvert's HTML does, find the picture in an <img> as well.
 */
import type { MimeBundle, NbOutput } from '../message.js';

const isChart = (type: string): boolean =>
  type === 'image/svg+xml' || /^application\/vnd\.vega(?:lite)?\.v\d+\+json$/.test(type);

/** The outputs to send for one: itself, or itself without its chart and then the chart. A change in place changes both. */
export function splitMimeBundle(output: NbOutput): NbOutput[] {
  if (!('data' in output)) return [output];
  const entries = Object.entries(output.data);
  const chart: MimeBundle = Object.fromEntries(entries.filter(([type]) => isChart(type)));
  if (Object.keys(chart).length === 0) return [output];
  const text: MimeBundle = Object.fromEntries(entries.filter(([type]) => !isChart(type)));
  if (text['text/html'] === undefined) return [{ ...output, data: withImage(output.data) }];
  const data = withImage({ 'text/plain': 'chart', ...chart });
  const id = 'transient' in output ? output.transient?.display_id : undefined;
  const transient = id === undefined ? {} : { transient: { display_id: `${id}-chart` } };
  const type = output.output_type === 'update_display_data' ? 'update_display_data' : 'display_data';
  return [{ ...output, data: text }, { output_type: type, data, metadata: {}, ...transient } as NbOutput];
}

/** The bundle with its SVG as an image in HTML too. */
function withImage(bundle: MimeBundle): MimeBundle {
  const svg = bundle['image/svg+xml'];
  if (typeof svg !== 'string') return bundle;
  const data = Buffer.from(svg, 'utf8').toString('base64');
  const image = `<img alt="${nameOf(bundle)}" style="max-width:100%" src="data:image/svg+xml;base64,${data}">`;
  return { ...bundle, 'text/html': image };
}

/** What the SVG says it shows, as attribute text. */
function nameOf({ 'image/svg+xml': svg }: MimeBundle): string {
  const label = typeof svg === 'string' ? /^[^>]*\saria-label="([^"]*)"/.exec(svg)?.[1] : undefined;
  return label ?? 'chart';
}
