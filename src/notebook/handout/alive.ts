import { drawAlive } from '../../charts/drawAlive.js';
import type { RecipeEntry } from '../../recipe/entry.js';
import { aliveExercise } from './aliveExercise.js';
import { aliveResult } from './aliveResult.js';
import { handoutDataId, type HandoutData } from './data.js';
import { Kept } from './kept.js';

/**
 * What a handout does when it is opened: each part of the page that can come alive does. A part that cannot, for whatever
 * reason, stays as it was printed.
 */
export function wake(recipes: readonly RecipeEntry[]): void {
  const data = JSON.parse(document.getElementById(handoutDataId)?.textContent ?? '{}') as HandoutData;
  const kept = new Kept(data.key);
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
    if (found !== undefined) each(id, (section) => aliveResult(section, found, inputs, kept));
  }
  for (const { id, exercise } of data.exercises)
    each(id, (section) => aliveExercise(section, exercise, kept));
  for (const { id, spec } of data.charts) each(id, (section) => void drawAlive(section, spec));
  const forget = document.getElementById('forget');
  forget?.addEventListener('click', () => {
    if (!confirm('Clear every answer and number you have written on this page?')) return;
    kept.clear();
    location.reload();
  });
  document.documentElement.dataset['alive'] = 'yes';
}
