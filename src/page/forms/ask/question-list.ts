import { el } from '../../element.js';
import { commonest } from '../worker/questions.js';
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

/** Room for the questions that are on their way: what stands below must not move under the hand when they come. Most fill two lines. */
export function awaitedQuestions(): HTMLElement[] {
  return commonest.map((_, i) =>
    el(
      'li',
      i === 0 ? {} : { 'aria-hidden': true },
      el(
        'a',
        {},
        el('strong', {}, i === 0 ? 'Opening the questions…' : '\u00a0', el('br', {}), '\u00a0'),
        el('span', { class: 'says' }, '\u00a0'),
      ),
    ),
  );
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
