import { renderSvg } from '../../charts/svg.js';
import { Refusal } from '../../quantities/refusal.js';
import type { RecipeEntry } from '../../recipe/entry.js';
import type { Result } from '../../recipe/result.js';
import { controlFor, type Control } from './control.js';
import { element } from './element.js';
import type { Kept } from './kept.js';
import { spoken } from './written.js';

/**
 * Brings a printed result to life: its inputs become fields and sliders, and the answer, its cautions, workings and chart
 * follow every change. What is wrong with an input stands beside it, and the last right answer stays, greyed.
 */
export function aliveResult(
  section: HTMLElement,
  recipe: RecipeEntry,
  first: Readonly<Record<string, unknown>>,
  kept: Kept,
): void {
  const id = section.id;
  let inputs = { ...first, ...recordOr(kept.get(id), {}) };
  const form = element('form', { class: 'inputs' });
  form.addEventListener('submit', (event) => event.preventDefault());
  const message = element('p', { class: 'refusal', role: 'alert', hidden: true });
  const answer = element('div', { class: 'alive-answer', 'aria-live': 'polite' });
  const chart = element('figure');
  const controls = new Map<string, { control: Control; row: HTMLElement; trouble: HTMLElement }>();
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
      const trouble = element('span', { class: 'trouble', id: `${inputId}-trouble` });
      const row = element(
        'div',
        { class: 'input' },
        element('label', { for: inputId, title: field.takes }, field.says),
        control.element,
        trouble,
      );
      controls.set(name, { control, row, trouble });
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
          error instanceof Refusal
            ? error.troubles
            : [{ field: '', says: error instanceof Error ? error.message : String(error) }],
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

  const tell = (troubles: readonly { readonly field: string; readonly says: string }[]): void => {
    section.classList.toggle('refused', troubles.length > 0);
    const at = new Map(troubles.map((t) => [/^[\w$]*/.exec(t.field)?.[0] ?? '', t]));
    for (const [name, c] of controls) {
      const trouble = at.get(name);
      c.trouble.textContent =
        trouble === undefined
          ? ''
          : `${trouble.field === name ? '' : `${spoken(trouble.field.slice(name.length))}: `}${trouble.says}`;
      c.row.classList.toggle('wrong', trouble !== undefined);
      const input = c.row.querySelector('input, select');
      if (trouble === undefined) input?.removeAttribute('aria-invalid');
      else input?.setAttribute('aria-invalid', 'true');
    }
    const elsewhere = troubles.filter((t) => !controls.has(/^[\w$]*/.exec(t.field)?.[0] ?? ''));
    message.hidden = elsewhere.length === 0;
    message.textContent = elsewhere.map((t) => (t.field === '' ? t.says : `${t.field}: ${t.says}`)).join(' ');
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
