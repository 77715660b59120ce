import { el } from '../../element.js';
import type { Answer, AnswerDetails, Outcome } from '../model/answer.js';
import type { RecipeModel } from '../model/recipe-model.js';
import { AnswerPicture } from './answer-picture.js';
import { exportMenu } from './export-menu.js';
import { capitalised } from '../../../units/capitalised.js';

export interface CardActions {
  /** Leads to a field that is still empty. */
  readonly goTo: (field: string) => void;
  /** Runs a recipe that searches. */
  readonly search: () => void;
  /** The whole answer, for what is looked at or saved. */
  readonly details: () => Promise<AnswerDetails>;
  /** Buttons of the place the card stands in. */
  readonly buttons: readonly HTMLElement[];
  /** Further figures, such as tried values; shown below the buttons. */
  readonly below: HTMLElement;
}

const mostLines = 5;

/** The answer beside a form: the sentence, the picture, at most five figures, cautions; more on request. */
export class AnswerCard {
  readonly element: HTMLElement;
  readonly #badge = el('span', { class: 'verdict' });
  readonly #sentence = el('p', { class: 'sentence', 'aria-live': 'polite' });
  readonly #body = el('div', { class: 'answer-body' });
  readonly #picture = new AnswerPicture();
  readonly #more = el('div', { class: 'answer-more' });
  readonly #moreBox: HTMLDetailsElement;
  #answer: Answer | undefined;

  constructor(
    private readonly model: RecipeModel,
    private readonly actions: CardActions,
    head: readonly HTMLElement[],
  ) {
    this.#moreBox = el(
      'details',
      { class: 'more-answer', hidden: true },
      el('summary', {}, 'Workings, every figure, sources'),
      this.#more,
    );
    this.#moreBox.addEventListener('toggle', () => this.#fillMore());
    this.element = el(
      'section',
      { class: 'answer-card', 'aria-label': 'Answer' },
      el('div', { class: 'card-head' }, ...head, this.#badge),
      this.#sentence,
      this.#picture.element,
      this.#body,
      el(
        'div',
        { class: 'card-acts' },
        ...actions.buttons,
        exportMenu(this.model.name, actions.details, this.#picture),
      ),
      actions.below,
      this.#moreBox,
    );
  }

  get answer(): Answer | undefined {
    return this.#answer;
  }

  show(outcome: Outcome | undefined, isOld = false): void {
    this.#answer = outcome?.state === 'answer' ? outcome.answer : undefined;
    this.element.classList.toggle('old', isOld);
    this.element.dataset['state'] = outcome?.state ?? 'opening';
    this.#moreBox.hidden = this.#answer === undefined;
    this.#showBadge(outcome);
    if (this.#answer === undefined) {
      this.#sentence.textContent = waitingWords(outcome);
      this.#picture.clear();
      this.#body.replaceChildren(...this.#waitingNodes(outcome));
      return;
    }
    this.#showAnswer(this.#answer);
  }

  /** Puts the focus where the next act is likely. */
  focusButton(): void {
    this.actions.buttons[0]?.focus();
  }

  #showAnswer(answer: Answer): void {
    if (this.#sentence.textContent !== answer.sentence) this.#sentence.textContent = answer.sentence;
    this.#picture.show(answer.chart);
    const cautions = answer.cautions.filter(({ level }) => level !== 'note').slice(0, 2);
    this.#body.replaceChildren(
      linesTable(answer),
      ...cautions.map(({ level, word, text }) =>
        el('p', { class: `caution ${level}` }, el('strong', {}, `${word}. `), capital(text)),
      ),
    );
    if (this.#moreBox.open) this.#fillMore();
  }

  #fillMore(): void {
    if (!this.#moreBox.open || this.#answer === undefined) return;
    // The result's own HTML: made from escaped text by the recipe engine.
    void this.actions.details().then(({ html }) => (this.#more.innerHTML = html));
  }

  #showBadge(outcome: Outcome | undefined): void {
    const words = {
      answer: '',
      waiting: 'Waiting',
      wrong: 'Look again',
      code: 'Runs as code',
      search: 'Ready',
    };
    this.#badge.textContent = outcome === undefined ? 'Opening' : words[outcome.state];
    this.#badge.className = `verdict ${outcome?.state ?? 'waiting'}`;
    this.#badge.hidden = this.#badge.textContent === '';
  }

  #waitingNodes(outcome: Outcome | undefined): HTMLElement[] {
    if (outcome?.state === 'search')
      return [
        el('button', { type: 'button', class: 'button first', onclick: this.actions.search }, 'Work it out'),
      ];
    if (outcome === undefined || !('missing' in outcome)) return [];
    const { inputs } = this.model;
    return outcome.missing.map((name) => {
      const label = inputs.find((field) => field.name === name)?.label ?? name;
      const act = { type: 'button', class: 'button small', onclick: () => this.actions.goTo(name) };
      return el('button', act, label);
    });
  }
}

function waitingWords(outcome: Outcome | undefined): string {
  switch (outcome?.state) {
    case 'waiting':
      return outcome.missing.length === 1
        ? 'One value to go.'
        : `${numberWord(outcome.missing.length)} values to go.`;
    case 'wrong':
      return outcome.issues.length === 1
        ? 'One value needs another look.'
        : `${numberWord(outcome.issues.length)} values need another look.`;
    case 'code':
      return 'This one rests on code: run the notebook to see the answer.';
    case 'search':
      return 'This one is searched for, which takes some seconds.';
    default:
      return 'The recipes are being opened…';
  }
}

const numberWord = (n: number): string =>
  ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine'][n] ?? String(n);

function linesTable(answer: Answer): HTMLElement {
  const lines = answer.lines.filter(({ metric }) => metric.length < 70).slice(0, mostLines);
  return el(
    'dl',
    { class: 'figures' },
    ...lines.flatMap(({ label, metric, inch, name }) => [
      el('dt', {}, label),
      el('dd', { 'data-output': name }, metric, inch === '' ? undefined : el('small', {}, ` · ${inch}`)),
    ]),
  );
}

const capital = (text: string): string => {
  const whole = capitalised(text);
  return /[.!?…]$/.test(whole) ? whole : `${whole}.`;
};
