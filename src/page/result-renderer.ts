import { RenderMimeRegistry } from '@jupyterlab/rendermime';
import type { IRenderMime } from '@jupyterlab/rendermime-interfaces';
import type { ReadonlyPartialJSONObject } from '@lumino/coreutils';
import { Panel } from '@lumino/widgets';
import { formulaNode } from './math-typesetter.js';

/** A name of our own for 'words and chart of one result together'; it is never written into a file. */
const whole = 'application/vnd.joiners-reckoner.whole';
const chartType = /^application\/vnd\.vegalite\.v[456]\+json$/;

/** Of a result with words and a chart the widgets would show one: here both are shown, the chart between answer and workings. */
export class ResultRegistry extends RenderMimeRegistry {
  constructor(options: RenderMimeRegistry.IOptions) {
    super(options);
    this.addFactory({
      safe: true,
      mimeTypes: [whole],
      defaultRank: 20,
      createRenderer: () => new WholeResult(this),
    });
  }

  override preferredMimeType(
    bundle: ReadonlyPartialJSONObject,
    safe: 'ensure' | 'prefer' | 'any' = 'ensure',
  ): string | undefined {
    if ('text/html' in bundle && Object.keys(bundle).some((type) => chartType.test(type))) return whole;
    return super.preferredMimeType(bundle, safe);
  }
}

class WholeResult extends Panel implements IRenderMime.IRenderer {
  constructor(private readonly registry: RenderMimeRegistry) {
    super();
    this.addClass('whole-result');
  }

  async renderModel(model: IRenderMime.IMimeModel): Promise<void> {
    const type = Object.keys(model.data).find((name) => chartType.test(name)) ?? '';
    const [words, chart] = [this.registry.createRenderer('text/html'), this.registry.createRenderer(type)];
    for (const widget of [...this.widgets]) widget.dispose();
    this.addWidget(words);
    this.addWidget(chart);
    await words.renderModel(model);
    // Below the answer, above the long workings; as a child of the panel it still hears of attachment and size.
    words.node.querySelector('details')?.before(chart.node);
    await chart.renderModel(model);
  }
}

/** Workings come as plain text with the LaTeX beside them. */
export function typesetWorkings(node: HTMLElement): void {
  for (const code of Array.from(node.querySelectorAll<HTMLElement>('code[data-latex]'))) {
    const formula = formulaNode(code.dataset['latex'] ?? '', true);
    formula.title = code.textContent;
    code.replaceWith(formula);
  }
}
