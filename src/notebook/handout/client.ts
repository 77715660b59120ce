import { mountInteractiveChart } from '../../charts/mount-interactive-chart.js';
import type { AnyRecipe } from '../../engine/any-recipe.js';
import { hydrateExercise } from './client-exercise.js';
import { hydrateResult } from './client-result.js';
import { handoutDataId, type HandoutData } from './handout-data.js';
import { PersistedState } from './persisted-state.js';

/**
 * What a handout does when it is opened: each part of the page that can come alive does. A part that cannot, for whatever
 * reason, stays as it was printed.
 */
export function hydrate(recipes: readonly AnyRecipe[]): void {
  const data = JSON.parse(document.getElementById(handoutDataId)?.textContent ?? '{}') as HandoutData;
  const kept = new PersistedState(data.key);
  const each = (id: string, work: (section: HTMLElement) => void): void => {
    const section = document.getElementById(id);
    if (section === null) return;
    const printed = section.innerHTML;
    try {
      work(section);
    } catch (error) {
      section.innerHTML = printed;
      console.error(error);
    }
  };
  for (const { id, recipe, inputs } of data.results) {
    const found = recipes.find((r) => r.name === recipe);
    if (found !== undefined) each(id, (section) => hydrateResult(section, found, inputs, kept));
  }
  for (const { id, exercise } of data.exercises)
    each(id, (section) => hydrateExercise(section, exercise, kept));
  for (const { id, spec } of data.charts) each(id, (section) => void mountInteractiveChart(section, spec));
  const forget = document.getElementById('forget');
  forget?.addEventListener('click', () => {
    if (!confirm('Clear every answer and number you have written on this page?')) return;
    kept.clear();
    location.reload();
  });
  document.documentElement.dataset['alive'] = 'yes';
}
