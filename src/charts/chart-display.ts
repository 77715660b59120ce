import { renderSvg } from './svg.js';
import type { ChartSpec } from './chart-spec.js';

/**
 * The same chart, which a notebook draws when it is the last thing in a cell. The specification itself stays plain data.
 * `still` is drawn where nothing moves.
 */
export function displayableChart(spec: ChartSpec, still: ChartSpec = spec): ChartSpec {
  if (Object.hasOwn(spec, display)) return spec;
  const chart = { ...spec };
  Object.defineProperty(chart, display, {
    value: async () => ({
      'text/plain': `chart: ${titleOf(spec)}`,
      'image/svg+xml': await renderSvg(still),
      'application/vnd.vegalite.v5+json': spec,
    }),
  });
  return chart;
}

const display = Symbol.for('Jupyter.display');

function titleOf(spec: ChartSpec): string {
  const title = spec['title'] as string | { text?: string | readonly string[] } | undefined;
  if (typeof title === 'string') return title;
  return [title?.text ?? []].flat().join(' ') || 'untitled';
}

/** The chart with what it shows and what it finds as its alternative text. */
export function describedChart(spec: ChartSpec | undefined, finding: string): ChartSpec | undefined {
  if (spec === undefined || finding === '') return spec;
  const own = spec['description'];
  const title = titleOf(spec);
  const parts = [title === 'untitled' ? '' : `${title}.`, finding, typeof own === 'string' ? own : ''];
  return { ...spec, description: parts.filter(Boolean).join(' ') };
}

/** Charts one under the other, each at a fixed width, since a stack cannot take its container's. */
export function stacked(specs: readonly ChartSpec[], width = 520): ChartSpec {
  return {
    vconcat: specs.map((s) => {
      const { autosize: _a, usermeta: _u, ...rest } = s;
      return { ...rest, width };
    }),
    spacing: 28,
  };
}
