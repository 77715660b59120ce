import type { IRenderMime } from '@jupyterlab/rendermime-interfaces';
import { Widget } from '@lumino/widgets';
import type { ChartSpec } from '../charts/chart-spec.js';
import { isDark, onThemeChange } from './theme-toggle.js';

/** Shows application/vnd.vegalite.v4 to v6 with the Vega of this project. The drawing library is loaded with the first chart. */
class ChartOutput extends Widget implements IRenderMime.IRenderer {
  #model: IRenderMime.IMimeModel | undefined;
  #clear: (() => void) | undefined;
  #room = 0;
  #turn = 0;
  readonly #watch = new ResizeObserver(() => {
    const room = this.node.clientWidth;
    if (room > 0 && Math.abs(room - this.#room) > 24) void this.#draw();
  });

  constructor(private readonly mime: string) {
    super();
    this.addClass('chart-output');
    this.#watch.observe(this.node);
    shown.add(this);
  }

  renderModel(model: IRenderMime.IMimeModel): Promise<void> {
    this.#model = model;
    return this.#draw();
  }

  redraw(): void {
    void this.#draw();
  }

  override dispose(): void {
    shown.delete(this);
    this.#watch.disconnect();
    this.#clear?.();
    super.dispose();
  }

  /** A later drawing has begun, or the output is gone. */
  #isStale(turn: number): boolean {
    return turn !== this.#turn || this.isDisposed;
  }

  async #draw(): Promise<void> {
    const spec = this.#model?.data[this.mime] as ChartSpec | undefined;
    if (spec === undefined || this.isDisposed) return;
    const turn = ++this.#turn;
    this.#room = this.node.clientWidth;
    const host = document.createElement('div');
    try {
      const { drawChart } = await import('./chart-view.js');
      const clear = await drawChart(spec, host, this.#room, isDark() ? 'dark' : 'light');
      if (this.#isStale(turn)) {
        clear();
        return;
      }
      this.#clear?.();
      this.#clear = clear;
      const svg = host.querySelector('svg');
      svg?.setAttribute('role', 'img');
      svg?.setAttribute('aria-label', describe(spec));
      this.node.replaceChildren(host);
    } catch (error) {
      if (this.#isStale(turn)) return;
      const said = document.createElement('p');
      said.className = 'problem';
      said.textContent = `This chart cannot be drawn: ${error instanceof Error ? error.message : String(error)}`;
      this.node.replaceChildren(said);
    }
  }
}

const shown = new Set<ChartOutput>();
onThemeChange(() => {
  for (const chart of shown) chart.redraw();
});

function describe(spec: ChartSpec): string {
  const title = spec['title'] as string | { text?: string | string[] } | undefined;
  const text = typeof title === 'object' ? title.text : title;
  return `Chart: ${[spec['description'], text].flat().find((part) => typeof part === 'string') ?? 'no title'}`;
}

export const chartFactory: IRenderMime.IRendererFactory = {
  // Safe without trust: no expression is compiled, no address is fetched.
  safe: true,
  mimeTypes: ['v4', 'v5', 'v6'].map((version) => `application/vnd.vegalite.${version}+json`),
  defaultRank: 30,
  createRenderer: (options) => new ChartOutput(options.mimeType),
};
