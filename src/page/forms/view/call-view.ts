import { tell } from '../../dialog.js';
import { el } from '../../element.js';
import { messageOf } from '../../server-api.js';
import { CodeText } from '../cell-text/literal-text.js';
import { removeField, setField, setName, type TextEdit } from '../cell-text/edit-call.js';
import { asName, nameProblem } from '../cell-text/rename.js';
import { asCall, givenOf, type CellCall } from '../cell-text/read-cell.js';
import type { Outcome } from '../model/answer.js';
import type { Call, Scope } from '../model/argument.js';
import type { Figure } from '../model/figure.js';
import type { FieldModel, RecipeModel } from '../model/recipe-model.js';
import { scopeWithFiles, withFiles } from '../file-arguments.js';
import { recipeClient } from '../recipe-client.js';
import { AnswerCard } from './answer-card.js';
import { answerPeek } from './answer-peek.js';
import { RecipeForm } from './recipe-form.js';
import { chooseFigure, takeable } from './take-dialog.js';
import { TryPanel } from './try-panel.js';

/** Where a call stands: a question on the first page, or a cell of a notebook. */
export interface CallPlace {
  /** The text and the call in it as they are now. */
  readonly now: () => { readonly text: string; readonly call: CellCall } | undefined;
  /** Makes a change of the text; `words` say what it is, for undo. */
  readonly write: (edits: readonly TextEdit[], words: string) => void;
  /** Another name for the result, wherever it is used. */
  readonly rename: (name: string) => void;
  /** Other names in the notebook and what they stand for. */
  readonly scope: () => Scope;
  readonly taken: () => ReadonlySet<string>;
  readonly shop: () => unknown;
  /** Called with each new state of the form. */
  readonly shown?: (outcome: Outcome) => void;
  /** Puts a cell with this code after the call; undefined where there is no notebook. */
  readonly keep?: (code: string) => void;
  readonly buttons: readonly HTMLElement[];
}

/** A call of a recipe as a form with its answer beside it. The text of the cell is the state; nothing is kept twice. */
export class CallView {
  readonly element: HTMLElement;
  readonly form: RecipeForm;
  readonly card: AnswerCard;
  readonly #name = el('input', {
    type: 'text',
    class: 'result-name',
    'aria-label': 'Name of this answer',
    spellcheck: 'false',
    autocomplete: 'off',
  });
  readonly #try: TryPanel;
  readonly #peek: ReturnType<typeof answerPeek>;
  #turn = 0;
  #outcome: Outcome | undefined;
  #figures: readonly Figure[] = [];

  constructor(
    readonly model: RecipeModel,
    private readonly place: CallPlace,
    id: string,
  ) {
    this.form = new RecipeForm({
      model,
      id,
      write: (field, value) => this.#write(field, value),
      take: (field) => void this.#take(field),
      takeable: (field) => this.#offers(field).length > 0,
      done: () => this.card.focusButton(),
    });
    this.#try = new TryPanel(model, {
      context: () => this.#context(),
      given: () =>
        Object.keys(place.now() === undefined ? {} : givenOf((place.now() as { call: CellCall }).call)),
      use: (field, text) => this.#write(field, text),
      keep: place.keep,
      name: () => place.now()?.call.name,
      literal: () => this.#callText(),
    });
    const tryButton = this.#try.button;
    this.card = new AnswerCard(
      model,
      {
        goTo: (field) => this.form.focus(field),
        search: () => void this.refresh(true),
        details: async () => {
          const context = await this.#context();
          if (context === undefined) throw new Error('there is no answer yet');
          return recipeClient.ask('details', context);
        },
        buttons: [...place.buttons, ...(model.isAsync ? [] : [tryButton])],
        below: this.#try.element,
      },
      [el('label', { class: 'called' }, 'Called', this.#name)],
    );
    this.#peek = answerPeek(this.card.element);
    this.#name.addEventListener('change', () => this.#rename());
    this.element = el(
      'div',
      { class: 'call-view', 'data-recipe': model.name },
      this.#peek.node,
      el('div', { class: 'form-side' }, this.form.element),
      this.card.element,
    );
  }

  /** Reads the text again and works the answer out; an older answer on its way is dropped. */
  async refresh(search = false): Promise<void> {
    const now = this.place.now();
    if (now === undefined) return;
    const turn = ++this.#turn;
    if (document.activeElement !== this.#name) this.#name.value = now.call.name ?? '';
    this.#name.placeholder = '(no name)';
    const given = givenOf(now.call);
    this.form.showGiven(given);
    if (search) this.card.element.classList.add('busy');
    try {
      const context = await this.#context();
      if (context === undefined || turn !== this.#turn) return;
      const outcome = await recipeClient.ask('calculate', { ...context, search });
      if (turn !== this.#turn) return;
      this.#show(given, outcome);
    } catch (error) {
      if (turn === this.#turn) tell(messageOf(error), 8);
    } finally {
      if (turn === this.#turn) this.card.element.classList.remove('busy');
    }
  }

  /** Figures of other results have changed. */
  setFigures(figures: readonly Figure[]): void {
    this.#figures = figures;
    const now = this.place.now();
    if (now !== undefined && this.#outcome !== undefined) this.form.show(givenOf(now.call), this.#outcome);
  }

  #show(given: ReturnType<typeof givenOf>, outcome: Outcome): void {
    this.#outcome = outcome;
    this.form.show(given, outcome);
    this.card.show(outcome);
    this.#peek.say(outcome.state === 'answer' ? outcome.answer.sentence : '');
    this.#try.refresh(outcome.state === 'answer');
    this.place.shown?.(outcome);
  }

  async #context(): Promise<{ call: Call; scope: Scope; shop: unknown } | undefined> {
    const now = this.place.now();
    if (now === undefined) return undefined;
    const [call, scope] = await Promise.all([
      withFiles(asCall(now.call)),
      scopeWithFiles(this.place.scope()),
    ]);
    return { call, scope, shop: this.place.shop() };
  }

  #callText(): string | undefined {
    const now = this.place.now();
    return now?.call.object && now.text.slice(now.call.object.from, now.call.object.to);
  }

  #write(field: string, value: unknown): void {
    const now = this.place.now();
    if (now === undefined) return;
    const edits =
      value === undefined
        ? removeField(now.text, now.call, field)
        : setField(now.text, now.call, field, value);
    const label = this.model.inputs.find(({ name }) => name === field)?.label ?? field;
    if (edits.length > 0) this.place.write(edits, `change “${label}”`);
    void this.refresh();
  }

  #offers(field: FieldModel): Figure[] {
    return takeable(field, this.#figures, this.place.scope(), this.place.now()?.call.name);
  }

  async #take(field: FieldModel): Promise<void> {
    const figure = await chooseFigure(field, this.#offers(field));
    if (figure === undefined) return;
    const path = figure.path.map((step) => (typeof step === 'number' ? `[${step}]` : `.${step}`)).join('');
    this.#write(field.name, new CodeText(`${figure.name}${path}`));
  }

  #rename(): void {
    const now = this.place.now();
    const name = asName(this.#name.value);
    if (now === undefined || name === (now.call.name ?? '')) return;
    const problem = nameProblem(name, this.place.taken());
    if (problem !== undefined) {
      tell(problem, 8);
      this.#name.value = now.call.name ?? '';
      return;
    }
    if (now.call.name === undefined) this.place.write(setName(now.text, now.call, name), `call it “${name}”`);
    else this.place.rename(name);
    void this.refresh();
  }
}
