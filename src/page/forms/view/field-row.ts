import { el } from '../../element.js';
import { argumentOf, isPlainArgument, plainValue, type Argument } from '../model/argument.js';
import type { FieldIssue } from '../model/answer.js';
import type { FieldModel } from '../model/recipe-model.js';
import { makeControl } from '../controls/make-control.js';
import type { Control } from '../controls/field-control.js';
import { recipeClient } from '../recipe-client.js';
import { capitalised } from '../../../units/capitalised.js';

export interface RowContext {
  readonly recipe: string;
  readonly field: FieldModel;
  /** Letters that it has on the sketch. */
  readonly letters: readonly string[];
  readonly id: string;
  /** A person gave plain data; undefined where they emptied it. */
  readonly write: (value: unknown) => void;
  /** Opens the choice of earlier results; undefined where there is none to choose. */
  readonly take: () => void;
}

/** What a row shows: what is given, how it was read, and what is wrong with it. */
export interface RowState {
  readonly argument: Argument | undefined;
  readonly read: { readonly metric: string; readonly inch: string } | undefined;
  readonly issue: FieldIssue | undefined;
  readonly isMissing: boolean;
  readonly canTake: boolean;
}

/** Time after the last key until an error is shown, so that a text on its way is not scolded. */
const patience = 550;

/** One field of a form: its letters on the sketch, label, help, box, and what is to be said of it. */
export class FieldRow {
  readonly element: HTMLElement;
  readonly #control: Control;
  readonly #chip = el('span', { class: 'chip', hidden: true });
  readonly #under = el('p', { class: 'under' });
  readonly #need = el('span', { class: 'need' });
  readonly #message: HTMLElement;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #state: RowState | undefined;

  constructor(private readonly context: RowContext) {
    const { field, id, letters, recipe } = context;
    this.#message = el('p', { class: 'message', id: `${id}-message`, role: 'status' });
    this.#control = makeControl({
      field,
      id,
      assumed: field.assumed,
      write: (value) => context.write(value),
      names: () => recipeClient.ask('names', { recipe, path: [field.name] }),
    });
    this.element = el(
      'div',
      { class: 'field-row', 'data-field': field.name },
      el(
        'span',
        { class: 'letters', 'aria-hidden': 'true' },
        ...letters.map((letter) => el('span', { class: 'letter' }, letter)),
      ),
      el(
        'div',
        { class: 'words' },
        el('label', { for: id }, field.label),
        this.#need,
        field.help === '' ? undefined : el('p', { class: 'help', id: `${id}-help` }, field.help),
      ),
      el('div', { class: 'entry' }, this.#control.element, this.#chip, this.#under),
      this.#message,
    );
    const described = [field.help === '' ? '' : `${id}-help`, `${id}-message`].join(' ').trim();
    this.#control.input.setAttribute('aria-describedby', described);
    this.element.addEventListener('focusout', () => this.#showIssue());
  }

  focus(): void {
    if (this.#chip.hidden) this.#control.input.focus();
    else this.#chip.querySelector('button')?.focus();
  }

  /** Another value, whose reading is not known yet; the rest stays as it was shown last. */
  showArgument(argument: Argument | undefined): void {
    const last = this.#state;
    if (last === undefined || JSON.stringify(last.argument) === JSON.stringify(argument)) return;
    const isPlain = argument === undefined || isPlainArgument(argument);
    this.show({ ...last, argument, read: isPlain ? last.read : undefined });
  }

  show(state: RowState): void {
    this.#state = state;
    const { argument } = state;
    const isChip = argument !== undefined && !isPlainArgument(argument);
    this.#chip.hidden = !isChip;
    this.#control.element.hidden = isChip;
    if (isChip) this.#showChip(argument, state.read?.metric);
    else this.#control.show(argument === undefined ? undefined : plainValue(argument));
    this.#showUnder(state, isChip);
    const { field } = this.context;
    this.#need.textContent = argument !== undefined ? '' : field.optional ? 'optional' : 'needed';
    this.element.classList.toggle('empty', argument === undefined);
    this.element.classList.toggle('missing', state.isMissing && argument === undefined);
    clearTimeout(this.#timer);
    if (state.issue === undefined) this.#showIssue();
    else this.#timer = setTimeout(() => this.#showIssue(), patience);
  }

  /** A value that stands elsewhere: what it is now, where it comes from, and a way to write it here. */
  #showChip(argument: Argument, now: string | undefined): void {
    const { field } = this.context;
    const change = el(
      'button',
      {
        type: 'button',
        class: 'chip-change',
        'aria-label': `Change ${field.label}`,
        onclick: () => {
          this.context.write(now ?? undefined);
          requestAnimationFrame(() => this.#control.input.focus());
        },
      },
      'Change',
    );
    this.#chip.className = `chip ${sourceKind(argument)}`;
    this.#chip.replaceChildren(
      el('span', { class: 'chip-value' }, now ?? codeOf(argument)),
      el('span', { class: 'chip-source' }, sourceWords(argument)),
      change,
    );
  }

  #showUnder({ argument, read, canTake }: RowState, isChip: boolean): void {
    const { field } = this.context;
    const notes: (Node | string)[] = [];
    if (argument === undefined && field.assumed !== undefined)
      notes.push(el('span', { class: 'assumed-note' }, `assumed: ${field.assumed}`));
    else if (!isChip && read !== undefined && read.inch !== '') notes.push(el('span', {}, read.inch));
    if (argument !== undefined && field.optional)
      notes.push(
        this.#door(field.assumed === undefined ? 'Leave it out' : `Back to ${field.assumed}`, () =>
          this.context.write(undefined),
        ),
      );
    else if (canTake) notes.push(this.#door('Take from…', () => this.context.take()));
    this.#under.replaceChildren(...notes);
  }

  #door(words: string, act: () => void): HTMLElement {
    const label = { 'aria-label': `${words}: ${this.context.field.label}` };
    return el('button', { type: 'button', class: 'door', ...label, onclick: act }, words);
  }

  #showIssue(): void {
    const issue = this.#state?.issue;
    const isShown = issue !== undefined;
    this.element.classList.toggle('wrong', isShown);
    if (isShown) this.#control.input.setAttribute('aria-invalid', 'true');
    else this.#control.input.removeAttribute('aria-invalid');
    const { repair } = issue ?? {};
    const text = issue === undefined ? '' : messageText(issue, this.context.field);
    if (this.#message.dataset['text'] === text) return;
    this.#message.dataset['text'] = text;
    this.#message.replaceChildren(
      ...(issue === undefined
        ? []
        : [
            text,
            ...(repair === undefined
              ? []
              : [
                  el(
                    'button',
                    { type: 'button', class: 'button small', onclick: () => this.context.write(repair) },
                    `Write ${repair}`,
                  ),
                ]),
          ]),
    );
  }
}

const longest = 260;

/** The message without the field's own path; a part's path is told in words. */
function messageText(issue: FieldIssue, field: FieldModel): string {
  const rest = issue.field.slice(field.name.length).replace(/^\./, '');
  const row = /^\[(\d+)\](?: \([^)]*\))?\.?(.*)$/.exec(rest);
  const where = row === null ? rest : `row ${row[1] ?? ''}${row[2] === '' ? '' : `, ${row[2] ?? ''}`}`;
  const text = `${where === '' ? '' : `${where}: `}${issue.message}`;
  const whole = capitalised(text);
  return whole.length > longest ? `${whole.slice(0, longest - 1)}…` : whole;
}

const sourceKind = (argument: Argument): string =>
  argument.type === 'reference' ? (argument.name === 'shop()' ? 'from-shop' : 'from-result') : 'from-code';

/** Where a value comes from, in words. */
function sourceWords(argument: Argument): string {
  if (argument.type !== 'reference') return 'written in code';
  if (argument.name === 'shop()') return 'from your shop';
  const path = argument.path.map((step) => (typeof step === 'number' ? `row ${step + 1}` : humanized(step)));
  return path.length === 0
    ? `from “${argument.name}” in the notebook`
    : `${argument.name}: ${path.join(', ')}`;
}

const humanized = (name: string): string => name.replace(/([a-z0-9])([A-Z])/g, '$1 $2').toLowerCase();

function codeOf(argument: Argument): string {
  if (argument.type === 'code') return argument.text;
  if (argument.type === 'reference') return [argument.name, ...argument.path].join('.');
  return 'in code';
}

/** The argument for plain data; undefined for nothing. */
export const givenArgument = (value: unknown): Argument | undefined =>
  value === undefined ? undefined : argumentOf(value);
