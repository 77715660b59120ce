import { tell } from '../../dialog.js';
import { el, icon } from '../../element.js';
import { backend } from '../../backend.js';
import { messageOf } from '../../server-api.js';
import { withEdits } from '../cell-text/edit-call.js';
import { newCall } from '../cell-text/new-call.js';
import { freeName, renameIn } from '../cell-text/rename.js';
import { readCell, type CellText } from '../cell-text/read-cell.js';
import type { RecipeModel } from '../model/recipe-model.js';
import { shopDefaults } from '../shop/shop-defaults.js';
import { CallView } from '../view/call-view.js';
import { putIntoNotebook } from './put-into.js';
import { QuestionStore, TextHistory } from './question-store.js';

interface QuestionOptions {
  readonly model: RecipeModel;
  readonly recipes: ReadonlyMap<string, RecipeModel>;
  /** Values from the question that was typed. */
  readonly given: Readonly<Record<string, unknown>>;
  readonly shop: unknown;
}

/** One question as a form, with its answer and the same thing as a cell. */
export class QuestionPage {
  readonly element: HTMLElement;
  readonly #view: CallView;
  readonly #store = new QuestionStore();
  readonly #history: TextHistory;
  readonly #code = el('textarea', {
    class: 'cell-code',
    'aria-label': 'The same thing as a notebook cell',
    spellcheck: 'false',
    rows: '7',
  });
  readonly #codeState = el('p', { class: 'says', role: 'status' });
  readonly #undo = el(
    'button',
    { type: 'button', class: 'button small', onclick: () => this.#step('undo') },
    'Undo',
  );
  readonly #redo = el(
    'button',
    { type: 'button', class: 'button small', onclick: () => this.#step('redo') },
    'Redo',
  );

  constructor(private readonly options: QuestionOptions) {
    const { model } = options;
    this.#history = new TextHistory(this.#firstText());
    const put = el(
      'button',
      { type: 'button', class: 'button first', onclick: () => void this.#put() },
      'Put into the notebook',
    );
    this.#view = new CallView(
      model,
      {
        now: () => this.#now(),
        write: (edits, words) => this.#change(withEdits(this.#history.text, edits), words),
        rename: (name) => {
          const old = this.#now()?.call.name;
          if (old === undefined) return;
          this.#change(
            withEdits(this.#history.text, renameIn(this.#history.text, old, name)),
            `call it “${name}”`,
          );
        },
        scope: () => ({}),
        taken: () => new Set(options.recipes.keys()),
        shop: () => options.shop,
        buttons: [put],
      },
      'q',
    );
    this.element = el(
      'article',
      { class: 'question-page' },
      el(
        'div',
        { class: 'question-head' },
        el('a', { href: '#', class: 'button small back' }, icon('back'), 'All questions'),
        el('div', { class: 'history' }, this.#undo, this.#redo, this.#startAgain()),
      ),
      el(
        'h1',
        { tabindex: '-1' },
        model.question,
        el('small', {}, model.question === model.title ? '' : model.title),
      ),
      this.#view.element,
      el(
        'details',
        { class: 'as-cell' },
        el('summary', {}, 'The same thing as a notebook cell'),
        this.#code,
        this.#codeState,
      ),
    );
    this.#code.addEventListener('input', () => this.#typeCode());
    this.element.addEventListener('keydown', (event) => this.#onKey(event));
    this.#changed();
  }

  /** Puts the focus into the first field; not on a phone, where the keyboard would hide the sketch. */
  begin(): void {
    if (matchMedia('(min-width: 700px)').matches) this.#view.form.focusFirst();
    else this.element.querySelector('h1')?.focus({ preventScroll: true });
  }

  /** What was typed in the question, else what was written here the last time, else what the shop has. */
  #firstText(): string {
    const { model, given, recipes, shop } = this.options;
    const kept = this.#store.read(model.name);
    if (Object.keys(given).length === 0 && kept !== undefined && callIn(kept, model, recipes) !== undefined)
      return kept;
    const name = freeName(model.noun, new Set(recipes.keys()));
    return newCall(model, name, { ...shopDefaults(model, shop), ...given });
  }

  #now(): ReturnType<typeof callIn> {
    return callIn(this.#history.text, this.options.model, this.options.recipes);
  }

  #change(text: string, words: string): void {
    this.#history.add(text, words);
    this.#changed();
  }

  #changed(): void {
    const { text, undoWords, redoWords } = this.#history;
    this.#store.write(this.options.model.name, text);
    if (document.activeElement !== this.#code) this.#code.value = text;
    for (const [button, words, verb] of [
      [this.#undo, undoWords, 'Undo'],
      [this.#redo, redoWords, 'Redo'],
    ] as const) {
      button.disabled = words === undefined;
      button.title = words === undefined ? verb : `${verb}: ${words}`;
      button.setAttribute('aria-label', button.title);
    }
    this.#codeState.textContent =
      this.#now() === undefined ? 'The form is waiting: this cannot be read yet.' : '';
    void this.#view.refresh();
  }

  #typeCode(): void {
    this.#change(this.#code.value, 'change the cell');
  }

  #step(way: 'undo' | 'redo'): void {
    if (way === 'undo' ? this.#history.undo() : this.#history.redo()) this.#changed();
  }

  #startAgain(): HTMLElement {
    return el(
      'button',
      {
        type: 'button',
        class: 'button small',
        onclick: () => {
          const { model, recipes, shop } = this.options;
          const name = freeName(model.noun, new Set(recipes.keys()));
          this.#change(newCall(model, name, shopDefaults(model, shop)), 'start again');
        },
      },
      'Start again',
    );
  }

  #onKey(event: KeyboardEvent): void {
    const isText = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
    const control = event.ctrlKey || event.metaKey;
    if (control && event.key === 'Enter') void this.#put();
    else if (control && event.key.toLowerCase() === 'z' && !isText)
      this.#step(event.shiftKey ? 'redo' : 'undo');
    else return;
    event.preventDefault();
  }

  async #put(): Promise<void> {
    try {
      const path = await putIntoNotebook(this.#history.text);
      if (path !== undefined) location.href = backend.notebookAddress(path);
    } catch (error) {
      tell(messageOf(error), 10);
    }
  }
}

/** The call of the recipe in a text. */
function callIn(
  text: string,
  model: RecipeModel,
  recipes: ReadonlyMap<string, RecipeModel>,
): { text: string; call: CellText['calls'][number] } | undefined {
  const cell = readCell(text, recipes);
  const call = cell.calls.find(({ recipe }) => recipe === model.name);
  return cell.isBroken || call === undefined ? undefined : { text, call };
}
