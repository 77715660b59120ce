/**
 * A chart as plain data, in the Vega-Lite grammar (version 5, also read by 6). Nothing here is drawn:
 * a notebook, a page or {@link renderSvg} does that. The type names no vega type on purpose, so that a
 * notebook cell that uses a chart type-checks without loading vega's declarations.
 */
export type ChartSpec = { readonly [key: string]: unknown };

/** A chart that cannot be drawn, with the field to blame. */
export class ChartError extends Error {
  override readonly name = 'ChartError';
  constructor(
    /** Which part of the chart: `series[1].values`, `data.url`. */
    readonly field: string,
    message: string,
  ) {
    super(`${field}: ${message}`);
  }
}
