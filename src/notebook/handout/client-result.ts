import { renderSvg } from '../../charts/svg.js';
import { InputError } from '../../units/input-error.js';
import type { AnyRecipe } from '../../engine/any-recipe.js';
import type { Result } from '../../engine/result.js';
import { controlFor, type Control } from './form-controls.js';
import { element } from './dom.js';
import type { PersistedState } from './persisted-state.js';
import { humanizeName } from './humanize.js';

/**
 * Brings a printed result to life: its inputs become fields and sliders, and the answer, its cautions, workings and chart
 * follow every change. What is wrong with an input stands beside it, and the last right answer stays, greyed.
 */
export function hydrateResult(
  section: HTMLElement,
  recipe: AnyRecipe,
  first: Readonly<Record<string, unknown>>,
  kept: PersistedState,
): void {
  const id = section.id;
  let inputs = { ...first, ...recordOr(kept.get(id), {}) };
  const form = element('form', { class: 'inputs' });
  form.addEventListener('submit', (event) => event.preventDefault());
  const message = element('p', { class: 'refusal', role: 'alert', hidden: true });
  const answer = element('div', { class: 'alive-answer', 'aria-live': 'polite' });
  const chart = element('figure');
  const controls = new Map<string, { control: Control; row: HTMLElement; issue: HTMLElement }>();
  let turn = 0;
  let waiting = 0;

  const changed = (): void => {
    cancelAnimationFrame(waiting);
    waiting = requestAnimationFrame(() => {
      inputs = Object.fromEntries(
        [...controls].map(([name, c]) => [name, c.control.value()]).filter(([, v]) => v !== undefined),
      ) as typeof inputs;
      kept.set(id, inputs);
      void reckon();
    });
  };

  const build = (): void => {
    controls.clear();
    const more = element('div', {});
    form.replaceChildren();
    for (const [name, field] of Object.entries(recipe.inputs)) {
      const inputId = `${id}-${name}`;
      const control = controlFor(field, inputs[name], inputId, changed);
      const issue = element('span', { class: 'issue', id: `${inputId}-issue` });
      const row = element(
        'div',
        { class: 'input' },
        element('label', { for: inputId, title: field.expects }, field.label),
        control.element,
        issue,
      );
      controls.set(name, { control, row, issue });
      (Object.hasOwn(inputs, name) || !field.optional ? form : more).append(row);
    }
    if (more.childElementCount > 0)
      form.append(element('details', { class: 'more screen' }, element('summary', {}, 'More to set'), more));
    const again = element('button', { type: 'button', class: 'screen again' }, 'As first given');
    again.addEventListener('click', () => {
      inputs = { ...first };
      kept.set(id, undefined);
      build();
      void reckon();
    });
    form.append(again);
  };

  const reckon = async (): Promise<void> => {
    const mine = ++turn;
    try {
      const given = recipe(inputs);
      // Only a search takes time enough to be worth saying so.
      if (given instanceof Promise) section.classList.add('busy');
      const result = await given;
      if (mine !== turn) return;
      await show(result, () => mine === turn);
      tell([]);
    } catch (error) {
      if (mine === turn)
        tell(
          error instanceof InputError
            ? error.issues
            : [{ field: '', message: error instanceof Error ? error.message : String(error) }],
        );
    } finally {
      if (mine === turn) section.classList.remove('busy');
    }
  };

  const show = async (result: Result, current: () => boolean): Promise<void> => {
    // The answer's own HTML: made from escaped text by the recipe room.
    const open = answer.querySelector('details')?.open ?? false;
    answer.innerHTML = result.toHtml();
    // Workings are long: they fold away until asked for, and then stay open while numbers change.
    for (const details of answer.querySelectorAll('details'))
      details.open = open && details.matches('details:first-of-type');
    const spec = result.chart;
    // The chart stands right after the first table of numbers, where sliding shows both.
    answer.querySelector('table')?.after(chart);
    if (spec === undefined) return chart.replaceChildren();
    const svg = await renderSvg(spec, { width: Math.max(300, Math.min(620, section.clientWidth || 620)) });
    if (!current()) return;
    chart.innerHTML = svg;
    const drawn = Number(chart.querySelector('svg')?.getAttribute('width'));
    chart.classList.toggle('fits', drawn <= section.clientWidth);
  };

  const tell = (issues: readonly { readonly field: string; readonly message: string }[]): void => {
    section.classList.toggle('refused', issues.length > 0);
    const at = new Map(issues.map((t) => [/^[\w$]*/.exec(t.field)?.[0] ?? '', t]));
    for (const [name, c] of controls) {
      const issue = at.get(name);
      c.issue.textContent =
        issue === undefined
          ? ''
          : `${issue.field === name ? '' : `${humanizeName(issue.field.slice(name.length))}: `}${issue.message}`;
      c.row.classList.toggle('wrong', issue !== undefined);
      const input = c.row.querySelector('input, select');
      if (issue === undefined) input?.removeAttribute('aria-invalid');
      else input?.setAttribute('aria-invalid', 'true');
    }
    const elsewhere = issues.filter((t) => !controls.has(/^[\w$]*/.exec(t.field)?.[0] ?? ''));
    message.hidden = elsewhere.length === 0;
    message.textContent = elsewhere
      .map((t) => (t.field === '' ? t.message : `${t.field}: ${t.message}`))
      .join(' ');
  };

  build();
  section.replaceChildren(element('h3', {}, recipe.title), form, message, answer);
  section.classList.add('alive');
  void reckon();
}

function recordOr(value: unknown, otherwise: Record<string, unknown>): Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
    ? (value as Record<string, unknown>)
    : otherwise;
}
