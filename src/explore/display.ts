import { renderSvg } from '../charts/svg.js';
import type { ChartSpec } from '../charts/chart-spec.js';

/**
 * Gives an object its mime bundle for a notebook: the texts, and the chart as SVG and as Vega-Lite. `still` is the chart for
 * the SVG, where that says something else because it does not move.
 */
export function withDisplay<T extends object>(
  value: T,
  texts: () => Readonly<Record<string, unknown>>,
  chart: () => ChartSpec | undefined,
  still: () => ChartSpec | undefined = chart,
): T {
  return Object.defineProperty(value, Symbol.for('Jupyter.display'), {
    value: async () => {
      const spec = chart();
      const picture = still();
      return {
        ...texts(),
        ...(picture ? { 'image/svg+xml': await renderSvg(picture) } : {}),
        ...(spec ? { 'application/vnd.vegalite.v5+json': spec } : {}),
      };
    },
  });
}
