import { fitWidth } from './svg.js';
import { themed } from './theme.js';
import type { ChartSpec } from './chart-spec.js';

/**
 * Draws a chart with sliders into an element of a page, where it answers to them; the drawing that stood there stays if
 * this fails. For pages in a browser only; {@link renderSvg} draws without one.
 */
export async function mountInteractiveChart(place: HTMLElement, spec: ChartSpec): Promise<void> {
  const [vega, lite] = await Promise.all([import('vega'), import('vega-lite')]);
  const full = fitWidth(themed(spec), Math.max(300, Math.min(620, place.clientWidth || 620)));
  const compiled = lite.compile(full as never).spec;
  const holder = document.createElement('div');
  const sliders = document.createElement('div');
  sliders.className = 'chart-sliders';
  const refuse = (): Promise<never> => Promise.reject(new Error('a chart fetches nothing'));
  const view = new vega.View(vega.parse(compiled), {
    renderer: 'svg',
    container: holder,
    bind: sliders,
    hover: true,
    loader: { options: {}, load: refuse, sanitize: refuse, http: refuse, file: refuse } as never,
  });
  await view.runAsync();
  place.replaceChildren(sliders, holder);
}
