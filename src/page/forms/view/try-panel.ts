import { el } from '../../element.js';
import { splitUnit } from '../controls/unit-text.js';
import type { Call, Scope } from '../model/argument.js';
import type { RecipeModel } from '../model/recipe-model.js';
import type { TriedValues } from '../model/tried-values.js';
import { recipeClient } from '../recipe-client.js';
import { AnswerPicture } from './answer-picture.js';

interface TryActions {
  readonly context: () => Promise<
    { readonly call: Call; readonly scope: Scope; readonly shop: unknown } | undefined
  >;
  /** Names of the fields that are given. */
  readonly given: () => readonly string[];
  /** Writes a tried value to its field. */
  readonly use: (field: string, text: string) => void;
  /** Puts a cell with this code into the notebook; undefined where there is none. */
  readonly keep: ((code: string) => void) | undefined;
  readonly name: () => string | undefined;
  /** What is given, as code between braces. */
  readonly literal: () => string | undefined;
}

let panels = 0;

/** "What if this were …": one value over a range (and a second in a few steps), the figure along it, what reaches a target, and how sure it is. Nothing else changes until a value is used. */
export class TryPanel {
  readonly element = el('div', { class: 'try', hidden: true });
  readonly button: HTMLElement;
  readonly #field = el('select', {});
  readonly #second = el('select', {});
  readonly #output = el('select', {});
  readonly #slider = el('input', { type: 'range', min: '0', step: '1' });
  readonly #at = el('output', { class: 'tried' });
  readonly #figure = el('p', { class: 'tried-figure', 'aria-live': 'polite' });
  readonly #from = textBox();
  readonly #to = textBox();
  readonly #target = textBox();
  readonly #spread = textBox();
  readonly #remarks = el('div', { class: 'remarks', role: 'status' });
  readonly #picture = new AnswerPicture();
  readonly #use: HTMLButtonElement;
  readonly #keep: HTMLButtonElement;
  #tried: TriedValues | undefined;
  #turn = 0;

  constructor(
    private readonly model: RecipeModel,
    private readonly actions: TryActions,
  ) {
    const id = `try-${panels++}`;
    this.button = el(
      'button',
      { type: 'button', class: 'button', 'aria-expanded': 'false', onclick: () => this.#toggle() },
      'Try values',
    );
    this.#use = el(
      'button',
      { type: 'button', class: 'button small', onclick: () => this.#useValue() },
      'Use it',
    );
    this.#keep = el(
      'button',
      {
        type: 'button',
        class: 'button small',
        hidden: actions.keep === undefined,
        onclick: () => this.#keepCell(),
      },
      'Keep as a cell',
    );
    this.#layOut(id);
    this.#field.addEventListener('change', () => {
      for (const box of [this.#from, this.#to, this.#target, this.#spread]) box.value = '';
      void this.#ask();
    });
    for (const box of [this.#second, this.#output, this.#from, this.#to, this.#target, this.#spread])
      box.addEventListener('change', () => void this.#ask());
    this.#slider.addEventListener('input', () => this.#showPlace());
  }

  #layOut(id: string): void {
    const labelled = (words: string, control: HTMLElement, name: string): HTMLElement => {
      control.id = `${id}-${name}`;
      return el('span', { class: 'try-part' }, el('label', { for: control.id }, words), control);
    };
    this.#slider.setAttribute('aria-label', 'Value to try');
    this.element.append(
      el(
        'div',
        { class: 'try-row' },
        labelled('What if', this.#field, 'field'),
        el('span', {}, 'were'),
        this.#at,
      ),
      this.#slider,
      this.#figure,
      this.#picture.element,
      el(
        'div',
        { class: 'try-row' },
        labelled('Figure', this.#output, 'output'),
        labelled('from', this.#from, 'from'),
        labelled('to', this.#to, 'to'),
        labelled('and with', this.#second, 'second'),
      ),
      el(
        'div',
        { class: 'try-row' },
        labelled('To reach', this.#target, 'target'),
        labelled('Off by ±', this.#spread, 'spread'),
      ),
      this.#remarks,
      el('div', { class: 'try-row' }, this.#use, this.#keep),
    );
  }

  /** The call has changed. */
  refresh(hasAnswer: boolean): void {
    this.button.toggleAttribute('disabled', !hasAnswer);
    if (!this.element.hidden && hasAnswer) void this.#ask();
  }

  #toggle(): void {
    this.element.hidden = !this.element.hidden;
    this.button.setAttribute('aria-expanded', String(!this.element.hidden));
    if (this.element.hidden) return;
    this.#fillChoices();
    void this.#ask();
    this.#field.focus();
  }

  #fillChoices(): void {
    if (this.#field.childElementCount > 0) return;
    const isNumber = (field: (typeof this.model.inputs)[number]): boolean =>
      field.units.length > 0 || field.isPlain || field.items.some(({ units }) => units.length > 0);
    const given = this.actions.given();
    const fields = this.model.inputs.filter(
      (field) => isNumber(field) && (given.includes(field.name) || field.assumed !== undefined),
    );
    const options = (): HTMLElement[] =>
      fields.map(({ name, label }) => el('option', { value: name }, label));
    this.#field.replaceChildren(...options());
    this.#second.replaceChildren(el('option', { value: '' }, 'nothing else'), ...options());
    const words = new Set(['text', 'flag', 'table', 'list', 'record']);
    const outputs = this.model.outputs.filter(({ kind }) => !words.has(kind));
    this.#output.replaceChildren(...outputs.map(({ name, label }) => el('option', { value: name }, label)));
    if (this.model.main !== undefined) this.#output.value = this.model.main;
  }

  async #ask(): Promise<void> {
    const turn = ++this.#turn;
    const context = await this.actions.context();
    if (context === undefined || this.#field.value === '' || turn !== this.#turn) return;
    const text = (box: HTMLInputElement): string | undefined =>
      box.value.trim() === '' ? undefined : box.value.trim();
    const tried = await recipeClient.ask('tryValues', {
      ...context,
      field: this.#field.value,
      second: this.#secondField(),
      output: this.#output.value,
      from: text(this.#from),
      to: text(this.#to),
      target: text(this.#target),
      plusMinus: text(this.#spread),
    });
    if (turn !== this.#turn) return;
    this.#show(tried);
  }

  /** The second field that is tried too; undefined where it is none. The first one cannot be chosen again. */
  #secondField(): string | undefined {
    for (const option of this.#second.options) option.disabled = option.value === this.#field.value;
    if (this.#second.value === this.#field.value) this.#second.value = '';
    return this.#second.value || undefined;
  }

  #show(tried: TriedValues): void {
    this.#tried = tried;
    this.#from.placeholder = tried.from;
    this.#to.placeholder = tried.to;
    this.#spread.placeholder =
      splitUnit(tried.from)?.unit === '' ? 'e.g. 1' : `e.g. 2 ${splitUnit(tried.from)?.unit ?? ''}`;
    this.#target.placeholder = tried.places[tried.now]?.figure ?? '';
    this.#slider.max = String(Math.max(0, tried.places.length - 1));
    this.#slider.value = String(tried.now);
    this.#picture.show(tried.chart);
    this.#remarks.replaceChildren(
      ...(tried.problem === undefined ? [] : [el('p', { class: 'message' }, tried.problem)]),
      ...tried.remarks.map((remark) => el('p', {}, remark)),
      ...tried.reached.slice(0, 4).map((text) =>
        el(
          'button',
          {
            type: 'button',
            class: 'button small',
            onclick: () => this.actions.use(this.#field.value, text),
          },
          `Use ${text}`,
        ),
      ),
    );
    this.#showPlace();
  }

  #showPlace(): void {
    const place = this.#tried?.places[Number(this.#slider.value)];
    this.#at.textContent = place?.text ?? '';
    this.#slider.setAttribute('aria-valuetext', place?.text ?? '');
    const label = this.model.outputs.find(({ name }) => name === this.#output.value)?.label ?? '';
    this.#figure.textContent = place === undefined ? '' : `${label}: ${place.figure ?? 'no answer here'}`;
    this.#use.textContent = `Use ${place?.text ?? ''}`;
    this.#use.disabled = place === undefined || Number(this.#slider.value) === this.#tried?.now;
  }

  #useValue(): void {
    const place = this.#tried?.places[Number(this.#slider.value)];
    if (place !== undefined) this.actions.use(this.#field.value, place.text);
  }

  /** The same as code: a sweep of the recipe over the range. */
  #keepCell(): void {
    const tried = this.#tried;
    const given = this.actions.literal();
    if (tried === undefined || given === undefined) return;
    const inner = given.replace(/^\{\s*|,?\s*\}$/g, '').trim();
    const name = this.#field.value;
    const second = this.#secondField();
    const values = tried.others.map((text) => `'${text}'`).join(', ');
    const steps = second === undefined ? '' : `, ${second}: each([${values}])`;
    const field = `${name}: range('${tried.from}', '${tried.to}')${steps}`;
    const names = second === undefined ? 'range, sweep' : 'each, range, sweep';
    this.actions.keep?.(
      [
        `// What if ${name} were something else`,
        `import { ${names} } from 'joiners-reckoner';`,
        `await sweep(${this.model.name}, { ...{ ${inner} }, ${field} }, { output: '${this.#output.value}' });`,
      ].join('\n'),
    );
  }
}

const textBox = (): HTMLInputElement =>
  el('input', { type: 'text', class: 'short', autocomplete: 'off', spellcheck: 'false' });
