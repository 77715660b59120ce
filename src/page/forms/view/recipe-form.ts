import { el } from '../../element.js';
import { rootOf } from '../model/issue-root.js';
import type { Outcome } from '../model/answer.js';
import type { Argument } from '../model/argument.js';
import type { FieldModel, RecipeModel } from '../model/recipe-model.js';
import { FieldRow } from './field-row.js';
import { SketchFigure } from './sketch-figure.js';
import { capitalised } from '../../../units/capitalised.js';

export interface FormHost {
  readonly model: RecipeModel;
  /** Unique on the page: the start of the ids of its boxes. */
  readonly id: string;
  readonly write: (field: string, value: unknown) => void;
  readonly take: (field: FieldModel) => void;
  /** Names of the fields for which an earlier result could be taken. */
  readonly takeable: (field: FieldModel) => boolean;
  /** Enter in the last field that was still empty. */
  readonly done: () => void;
}

/** The fields of a recipe: those that are needed or usual first, what is assumed folded below. */
export class RecipeForm {
  readonly element: HTMLFormElement;
  readonly #rows = new Map<string, FieldRow>();
  readonly #more: HTMLDetailsElement;
  readonly #moreWords = el('summary', {});
  readonly #general = el('p', { class: 'message general', role: 'status', hidden: true });
  readonly #folded: readonly FieldModel[];
  #given: Readonly<Record<string, Argument>> = {};
  #missing: readonly string[] = [];

  constructor(private readonly host: FormHost) {
    const { model } = host;
    const first = model.inputs.filter((field) => isInFront(field));
    this.#folded = model.inputs.filter((field) => !first.includes(field));
    this.#more = el('details', { class: 'more-fields', hidden: this.#folded.length === 0 }, this.#moreWords);
    this.element = el('form', { class: 'recipe-form', 'aria-label': model.title, novalidate: true });
    this.element.addEventListener('submit', (event) => event.preventDefault());
    this.element.addEventListener('keydown', (event) => this.#onKey(event));
    const sketch = model.sketch && new SketchFigure(model.sketch, { go: (name) => this.focus(name) });
    if (sketch !== undefined) this.#addSketch(sketch);
    for (const field of [...first, ...this.#folded]) {
      const row = new FieldRow({
        recipe: model.name,
        field,
        letters: lettersOf(model, field),
        id: `${host.id}-${field.name}`,
        write: (value) => host.write(field.name, value),
        take: () => host.take(field),
      });
      this.#rows.set(field.name, row);
      (this.#folded.includes(field) ? this.#more : this.element).append(row.element);
    }
    this.element.append(this.#general, this.#more);
  }

  /** The sketch stands over the fields, and the letters of the one that is looked at light up. */
  #addSketch(sketch: SketchFigure): void {
    this.element.append(sketch.element);
    const fieldOf = ({ target }: Event): string | undefined =>
      target instanceof Element ? target.closest<HTMLElement>('.field-row')?.dataset['field'] : undefined;
    const focused = (): string | undefined =>
      document.activeElement?.closest<HTMLElement>('.recipe-form .field-row')?.dataset['field'];
    this.element.addEventListener('focusin', (event) => sketch.light(fieldOf(event)));
    this.element.addEventListener('focusout', () => sketch.light(undefined));
    this.element.addEventListener('pointerover', (event) => sketch.light(fieldOf(event) ?? focused()));
    this.element.addEventListener('pointerleave', () => sketch.light(focused()));
  }

  focusFirst(): void {
    this.focus(this.#missing[0] ?? this.host.model.inputs[0]?.name ?? '');
  }

  focus(name: string): void {
    if (this.#folded.some((field) => field.name === name)) this.#more.open = true;
    this.#rows.get(name)?.focus();
  }

  /** Shows what is given now, while the answer to it is on its way: undo, redo and Enter do not wait for it. */
  showGiven(given: Readonly<Record<string, Argument>>): void {
    this.#given = given;
    for (const { name } of this.host.model.inputs) this.#rows.get(name)?.showArgument(given[name]);
  }

  show(given: Readonly<Record<string, Argument>>, outcome: Outcome | undefined): void {
    this.#given = given;
    this.#missing = outcome !== undefined && 'missing' in outcome ? outcome.missing : [];
    const issues = outcome?.state === 'wrong' ? outcome.issues : [];
    for (const field of this.host.model.inputs) {
      const issue = issues.find((found) => rootOf(found.field) === field.name);
      this.#rows.get(field.name)?.show({
        argument: given[field.name],
        read: outcome?.read[field.name],
        // A field that is still empty is waited for and not scolded.
        issue: given[field.name] === undefined ? undefined : issue,
        isMissing: this.#missing.includes(field.name),
        canTake: this.host.takeable(field),
      });
    }
    this.#showMore(issues.map((issue) => rootOf(issue.field)));
    const general = issues.filter(
      ({ field }) => !this.#rows.has(rootOf(field)) || given[rootOf(field)] === undefined,
    );
    this.#general.hidden = general.length === 0;
    this.#general.textContent = general.map(({ message }) => capitalised(message)).join(' ');
  }

  #showMore(wrong: readonly string[]): void {
    const given = this.#folded.filter(({ name }) => this.#given[name] !== undefined);
    if (given.length > 0 || this.#folded.some(({ name }) => wrong.includes(name))) this.#more.open = true;
    const assumed = this.#folded.filter(
      ({ name, assumed }) => assumed !== undefined && this.#given[name] === undefined,
    );
    const words = assumed.slice(0, 3).map((field) => `${field.label.toLowerCase()} ${field.assumed ?? ''}`);
    this.#moreWords.textContent =
      words.length === 0
        ? 'More to give'
        : `Also assumed: ${words.join(', ')}${assumed.length > 3 ? ' …' : ''}`;
  }

  /** Enter goes to the next value that is still needed; when none is left, to the answer. */
  #onKey(event: KeyboardEvent): void {
    if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
    event.preventDefault();
    const next = this.host.model.inputs.find(
      ({ name, optional }) => this.#given[name] === undefined && (!optional || this.#missing.includes(name)),
    )?.name;
    if (next === undefined) this.host.done();
    else this.focus(next);
  }
}

/** Needed fields, and optional ones without a default that a short form has place for. */
function isInFront(field: FieldModel): boolean {
  if (!field.optional) return true;
  return field.assumed === undefined && field.example !== undefined && field.inExample;
}

/** Letters of a field and its parts on the sketch; none where it has no place there. */
const lettersOf = ({ sketch }: RecipeModel, { name }: FieldModel): readonly string[] =>
  (sketch?.letters ?? [])
    .filter(({ field, isOutput }) => !isOutput && (field === name || field.startsWith(`${name}.`)))
    .map(({ letter }) => letter);
