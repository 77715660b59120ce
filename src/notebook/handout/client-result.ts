import { renderSvg } from '../../charts/svg.js';
import { InputError } from '../../units/input-error.js';
import type { AnyRecipe } from '../../engine/any-recipe.js';
import type { Result } from '../../engine/result.js';
import { InputForm, rootOf, type FieldIssue } from './input-form.js';
import { element } from './dom.js';
import type { PersistedState } from './persisted-state.js';

/**
 * Makes a printed result interactive: its inputs become fields and sliders, and the answer, its cautions, workings and chart
 * follow every change. What is wrong with an input stands beside it, and the last right answer stays, greyed.
 */
export function hydrateResult(
  section: HTMLElement,
  recipe: AnyRecipe,
  first: Readonly<Record<string, unknown>>,
  kept: PersistedState,
): void {
  const view = new ResultView(section, recipe);
  const form = new InputForm({
    id: section.id,
    fields: recipe.inputs,
    first,
    stored: recordOrEmpty(kept.get(section.id)),
    onChange: (inputs, isFirst) => {
      kept.set(section.id, isFirst ? undefined : inputs);
      void view.compute(inputs, form);
    },
  });
  const sketch = section.querySelectorAll<HTMLElement>(':scope > .sketch');
  form.showLetters(lettersOf(sketch));
  section.replaceChildren(
    element('h3', {}, recipe.title),
    ...sketch,
    form.element,
    form.message,
    view.answer,
  );
  section.classList.add('alive');
  void view.compute(form.inputs, form);
}

/** Letters by field, read from the printed sketch. */
function lettersOf(sketches: Iterable<Element>): ReadonlyMap<string, string> {
  const letters = new Map<string, string>();
  for (const sketch of sketches)
    for (const mark of sketch.querySelectorAll('g[data-measures]')) {
      const field = rootOf(mark.getAttribute('data-measures') ?? '');
      const letter = mark.getAttribute('data-letter') ?? '';
      letters.set(field, [letters.get(field), letter].filter(Boolean).join(', '));
    }
  return letters;
}

/** The answer of one recipe; a newer computation replaces an older one that is still on its way. */
class ResultView {
  readonly answer = element('div', { class: 'alive-answer', 'aria-live': 'polite' });
  readonly #chart = element('figure');
  #turn = 0;

  constructor(
    private readonly section: HTMLElement,
    private readonly recipe: AnyRecipe,
  ) {}

  async compute(inputs: Readonly<Record<string, unknown>>, form: InputForm): Promise<void> {
    const turn = ++this.#turn;
    const isCurrent = (): boolean => turn === this.#turn;
    try {
      const computed = this.recipe(inputs);
      // Only a search takes long enough to be worth saying so.
      if (computed instanceof Promise) this.section.classList.add('busy');
      const result = await computed;
      if (!isCurrent()) return;
      await this.#show(result, isCurrent);
      this.#tell(form, []);
    } catch (error) {
      if (isCurrent()) this.#tell(form, issuesOf(error));
    } finally {
      if (isCurrent()) this.section.classList.remove('busy');
    }
  }

  async #show(result: Result, isCurrent: () => boolean): Promise<void> {
    // The answer's own HTML: made from escaped text by the recipe engine.
    const open = this.answer.querySelector<HTMLDetailsElement>('details.reckoner-workings')?.open ?? false;
    this.answer.innerHTML = result.toHtml();
    // Workings are long: they fold away until asked for, and then stay open while numbers change.
    for (const details of this.answer.querySelectorAll('details'))
      details.open = open && details.matches('.reckoner-workings');
    const spec = result.chart;
    const chart = this.#chart;
    // The chart stands right after the first table of numbers, where sliding shows both.
    this.answer.querySelector('table')?.after(chart);
    if (spec === undefined) {
      chart.replaceChildren();
      return;
    }
    const width = Math.max(300, Math.min(620, this.section.clientWidth || 620));
    const svg = await renderSvg(spec, { width });
    if (!isCurrent()) return;
    chart.innerHTML = svg;
    const drawn = Number(chart.querySelector('svg')?.getAttribute('width'));
    chart.classList.toggle('fits', drawn <= this.section.clientWidth);
  }

  #tell(form: InputForm, issues: readonly FieldIssue[]): void {
    this.section.classList.toggle('refused', issues.length > 0);
    form.showIssues(issues);
  }
}

function issuesOf(error: unknown): readonly FieldIssue[] {
  if (error instanceof InputError) return error.issues;
  return [{ field: '', message: error instanceof Error ? error.message : String(error) }];
}

function recordOrEmpty(value: unknown): Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
    ? (value as Record<string, unknown>)
    : {};
}
