import type { ChartSpec } from '../../../charts/chart-spec.js';
import { el } from '../../element.js';
import { isDark, onThemeChange } from '../../theme-toggle.js';

/** Wider than any picture: it is not narrowed where it is drawn. */
const unbounded = 10_000;

/** The picture of an answer, drawn anew at each change; a newer one replaces one that is still being drawn. */
export class AnswerPicture {
  readonly element = el('figure', { class: 'answer-picture', hidden: true });
  #turn = 0;
  #spec: ChartSpec | undefined;
  #remove: () => void = () => undefined;

  constructor() {
    onThemeChange(() => this.show(this.#spec));
  }

  get spec(): ChartSpec | undefined {
    return this.#spec;
  }

  show(spec: ChartSpec | undefined): void {
    this.#spec = spec;
    if (spec === undefined) this.clear();
    else void this.#draw(spec, ++this.#turn);
  }

  clear(): void {
    this.#turn += 1;
    this.#spec = undefined;
    this.element.hidden = true;
    this.#remove();
    this.#remove = () => undefined;
    this.element.replaceChildren();
  }

  async #draw(spec: ChartSpec, turn: number): Promise<void> {
    const [{ drawChart }, { fitWidth }] = await Promise.all([
      import('../../chart-view.js'),
      import('../../../charts/svg.js'),
    ]);
    if (turn !== this.#turn) return;
    const host = el('div', { class: 'drawn' });
    this.element.hidden = false;
    // Charts that can be broken anew are drawn to the width there is; drawings keep their shape and are scaled.
    const width = Math.min(620, Math.max(260, this.element.clientWidth));
    try {
      const remove = await drawChart(fitWidth(spec, width), host, unbounded, isDark() ? 'dark' : 'light');
      if (turn !== this.#turn) {
        remove();
        return;
      }
      this.#remove();
      this.#remove = remove;
      const svg = host.querySelector('svg');
      svg?.setAttribute('role', 'img');
      if (svg?.hasAttribute('aria-label') === false) svg.setAttribute('aria-label', titleOf(spec));
      this.element.replaceChildren(host);
    } catch (error) {
      this.element.replaceChildren(
        el('p', { class: 'says' }, `No picture: ${error instanceof Error ? error.message : String(error)}`),
      );
    }
  }
}

/** What the picture is of, for readers who do not see it. */
export function titleOf(spec: ChartSpec): string {
  const { description, title } = spec as { description?: unknown; title?: unknown };
  if (typeof description === 'string') return description;
  if (typeof title === 'string') return title;
  const text = (title as { text?: unknown } | undefined)?.text;
  return Array.isArray(text) ? text.join(' ') : typeof text === 'string' ? text : 'Picture of the answer';
}
