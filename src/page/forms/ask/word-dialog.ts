import { ask } from '../../dialog.js';
import { el } from '../../element.js';
import { capitalised } from '../../../units/capitalised.js';
import type { GlossaryWord } from '../model/glossary-word.js';
import type { RecipeModel } from '../model/recipe-model.js';
import { questionItem } from './question-list.js';

/** Explains a word of the trade, with the questions that use it; one of those opens and the dialog goes. */
export async function explainWord(
  word: GlossaryWord,
  models: ReadonlyMap<string, RecipeModel>,
): Promise<void> {
  const questions = word.recipes.slice(0, 8).flatMap((name) => questionItem(models.get(name)));
  const list = el('ul', { class: 'questions' }, ...questions);
  list.addEventListener('click', () => list.closest('dialog')?.close());
  await ask({
    title: capitalised(word.term),
    class: 'word',
    text: [
      word.meaning,
      ...(word.also.length > 0 ? [`Also: ${word.also.join(', ')}.`] : []),
      ...(questions.length > 0 ? [el('h3', {}, 'Questions that use it'), list] : []),
    ],
    choices: [{ value: 'close', words: 'Close', first: true }],
  });
}
