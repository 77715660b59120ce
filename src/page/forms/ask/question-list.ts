import { el } from '../../element.js';
import type { RecipeModel } from '../model/recipe-model.js';
import { capitalised } from '../../../units/capitalised.js';

/** A question as a link with what it takes; nothing where there is no such recipe. */
export function questionItem(model: RecipeModel | undefined): HTMLElement[] {
  if (model === undefined) return [];
  const needed = model.inputs.filter(({ optional }) => !optional).length;
  const values = `${needed} ${needed === 1 ? 'value' : 'values'} to fill in`;
  return [
    el(
      'li',
      {},
      el(
        'a',
        { href: `#question=${model.name}`, 'data-question': model.name },
        el('strong', {}, model.question),
        el('span', { class: 'says' }, needed === 0 ? model.title : `${model.title} · ${values}`),
      ),
    ),
  ];
}

/** Every question under its topic. */
export function topicLists(models: readonly RecipeModel[]): HTMLElement[] {
  const topics = [...new Set(models.map(({ topic }) => topic))];
  return topics.flatMap((topic) => [
    el('h4', {}, capitalised(topic)),
    el(
      'ul',
      { class: 'questions' },
      ...models.filter((model) => model.topic === topic).flatMap(questionItem),
    ),
  ]);
}
