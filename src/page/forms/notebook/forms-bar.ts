import { CodeCell } from '@jupyterlab/cells';
import type { Notebook } from '@jupyterlab/notebook';
import { el } from '../../element.js';
import { SearchBox } from '../ask/search-box.js';
import { searchedQuestions, type Searched } from '../ask/search-questions.js';
import { understand } from '../ask/understand.js';
import { recipeClient } from '../recipe-client.js';
import type { NotebookForms, NotebookView } from './notebook-forms.js';

const viewKey = 'reckoner-view';

/** How a notebook opens: as it was last shown by this person, else as forms where it was begun from a question. */
export function firstView(notebook: Notebook): NotebookView {
  const own = notebook.model?.getMetadata('reckoner') as { view?: unknown } | undefined;
  if (own?.view === 'forms') return 'forms';
  return localStorage.getItem(viewKey) === 'forms' ? 'forms' : 'code';
}

/** The search that puts a question into the notebook. */
function questionSearch(forms: NotebookForms): SearchBox {
  let questions: Searched[] = [];
  const box = new SearchBox({
    id: 'ask-here',
    placeholder: 'What do you want to know?',
    all: () => questions,
    isReady: () => questions.length > 0,
    open: (found, words) => {
      box.clear();
      const model = forms.models.get(found.target);
      void forms.addQuestion(found.target, model === undefined ? {} : understand(words, model, []));
    },
  });
  box.input.setAttribute('aria-label', 'What do you want to know?');
  box.input.addEventListener(
    'focus',
    () =>
      void recipeClient.models().then((models) => {
        questions = searchedQuestions(models.values());
        box.refresh();
      }),
    { once: true },
  );
  return box;
}

/** The line under the toolbar: ask another question, and see the notebook as forms or as code. */
export function formsBar(notebook: Notebook, forms: NotebookForms, menu: HTMLElement): HTMLElement {
  const box = questionSearch(forms);
  const views = viewButtons(forms);
  const asForm = el(
    'button',
    {
      type: 'button',
      class: 'button small as-form-button',
      hidden: true,
      onclick: () => {
        if (notebook.activeCell instanceof CodeCell) forms.turn(notebook.activeCell);
      },
    },
    'This cell as a form',
  );
  const hint = el(
    'p',
    { class: 'forms-hint', hidden: true },
    'Ask a question here, or type code in the cell below.',
  );
  const show = (): void => {
    hint.hidden = notebook.widgets.some((cell) => cell.model.sharedModel.getSource().trim() !== '');
    for (const button of views)
      button.setAttribute('aria-pressed', String(button.dataset['view'] === forms.view));
    const cell = notebook.activeCell;
    asForm.hidden = !(cell instanceof CodeCell) || !forms.couldBeForm(cell);
  };
  forms.onView(show);
  notebook.activeCellChanged.connect(show);
  notebook.modelContentChanged.connect(show);
  show();
  return el(
    'div',
    { class: 'forms-bar' },
    box.node,
    hint,
    asForm,
    menu,
    el('div', { class: 'view-switch', role: 'group', 'aria-label': 'Show cells as' }, ...views),
  );
}

function viewButtons(forms: NotebookForms): HTMLButtonElement[] {
  return (['forms', 'code'] as const).map((view) =>
    el(
      'button',
      {
        type: 'button',
        'data-view': view,
        onclick: () => {
          localStorage.setItem(viewKey, view);
          forms.show(view);
        },
      },
      view === 'forms' ? 'Forms' : 'Code',
    ),
  );
}
