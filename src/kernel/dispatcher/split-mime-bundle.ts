/**
 * A Jupyter client shows one form of an output, the richest it knows: of a result's text and chart it would show the text
 * alone. For such clients the chart is sent as an output of its own, right after. Our own page shows both of one.
 */
import type { MimeBundle, NbOutput } from '../message.js';

const isChart = (type: string): boolean =>
  type === 'image/svg+xml' || /^application\/vnd\.vegalite\.v\d\+json$/.test(type);

/** The outputs to send for one: itself, or itself without its chart and then the chart. A change in place changes both. */
export function splitMimeBundle(output: NbOutput): NbOutput[] {
  if (!('data' in output) || output.data['text/html'] === undefined) return [output];
  const entries = Object.entries(output.data);
  const chart = entries.filter(([type]) => isChart(type));
  if (chart.length === 0) return [output];
  const text: MimeBundle = Object.fromEntries(entries.filter(([type]) => !isChart(type)));
  const data: MimeBundle = { 'text/plain': 'chart', ...Object.fromEntries(chart) };
  const id = 'transient' in output ? output.transient?.display_id : undefined;
  const transient = id === undefined ? {} : { transient: { display_id: `${id}-chart` } };
  const type = output.output_type === 'update_display_data' ? 'update_display_data' : 'display_data';
  return [{ ...output, data: text }, { output_type: type, data, metadata: {}, ...transient } as NbOutput];
}
