import type { Field } from '../../engine/field.js';
import type { Control } from './control.js';
import { controlFor } from './form-controls.js';
import { element } from './dom.js';
import { humanizeName } from './humanize.js';

export interface FieldIssue {
  readonly field: string;
  readonly message: string;
}

interface InputFormOptions {
  readonly id: string;
  readonly fields: Readonly<Record<string, Field>>;
  /** The inputs as the notebook gave them. */
  readonly first: Readonly<Record<string, unknown>>;
  /** What was written here on an earlier visit. */
  readonly stored: Readonly<Record<string, unknown>>;
  /** Called once per frame while inputs change; `isFirst` when they are set back to the notebook's own. */
  readonly onChange: (inputs: Readonly<Record<string, unknown>>, isFirst: boolean) => void;
}

interface Row {
  readonly control: Control;
  readonly element: HTMLElement;
  readonly issue: HTMLElement;
}

/** The inputs of one recipe as a form; each field's issue stands beside it, others in `message`. */
export class InputForm {
  readonly element = element('form', { class: 'inputs' });
  readonly message = element('p', { class: 'refusal', role: 'alert', hidden: true });
  inputs: Readonly<Record<string, unknown>>;
  readonly #rows = new Map<string, Row>();
  #frame = 0;
  #letters: ReadonlyMap<string, string> = new Map();

  constructor(private readonly options: InputFormOptions) {
    this.inputs = { ...options.first, ...options.stored };
    this.element.addEventListener('submit', (event) => event.preventDefault());
    this.#build();
  }

  showIssues(issues: readonly FieldIssue[]): void {
    const byField = new Map(issues.map((issue) => [rootOf(issue.field), issue]));
    for (const [name, row] of this.#rows) showIssue(row, name, byField.get(name));
    const elsewhere = issues.filter((issue) => !this.#rows.has(rootOf(issue.field)));
    this.message.hidden = elsewhere.length === 0;
    this.message.textContent = elsewhere
      .map((issue) => (issue.field === '' ? issue.message : `${issue.field}: ${issue.message}`))
      .join(' ');
  }

  /** Puts the letters that fields have on a sketch before their labels. */
  showLetters(letters: ReadonlyMap<string, string>): void {
    this.#letters = letters;
    this.#build();
  }

  #build(): void {
    this.#rows.clear();
    const more = element('div', {});
    this.element.replaceChildren();
    for (const [name, field] of Object.entries(this.options.fields)) {
      const row = this.#row(name, field);
      this.#rows.set(name, row);
      (Object.hasOwn(this.inputs, name) || !field.optional ? this.element : more).append(row.element);
    }
    if (more.childElementCount > 0)
      this.element.append(
        element('details', { class: 'more screen' }, element('summary', {}, 'More to set'), more),
      );
    const reset = element('button', { type: 'button', class: 'screen again' }, 'As first given');
    reset.addEventListener('click', () => {
      this.inputs = { ...this.options.first };
      this.#build();
      this.options.onChange(this.inputs, true);
    });
    this.element.append(reset);
  }

  #row(name: string, field: Field): Row {
    const id = `${this.options.id}-${name}`;
    const control = controlFor(field, this.inputs[name], id, () => this.#changed());
    const issue = element('span', { class: 'issue', id: `${id}-issue` });
    const letter = this.#letters.get(name);
    const label = element(
      'label',
      { for: id, title: field.expects },
      ...(letter === undefined ? [] : [element('b', { class: 'letter' }, letter), ' ']),
      field.label,
    );
    return { control, issue, element: element('div', { class: 'input' }, label, control.element, issue) };
  }

  #changed(): void {
    cancelAnimationFrame(this.#frame);
    this.#frame = requestAnimationFrame(() => {
      this.inputs = Object.fromEntries(
        [...this.#rows]
          .map(([name, row]) => [name, row.control.value()] as const)
          .filter(([, value]) => value !== undefined),
      );
      this.options.onChange(this.inputs, false);
    });
  }
}

/** `pieces[2].length` belongs to the field `pieces`. */
export const rootOf = (field: string): string => /^[\w$]*/.exec(field)?.[0] ?? '';

function showIssue(row: Row, name: string, issue: FieldIssue | undefined): void {
  const where =
    issue === undefined || issue.field === name ? '' : `${humanizeName(issue.field.slice(name.length))}: `;
  row.issue.textContent = issue === undefined ? '' : `${where}${issue.message}`;
  row.element.classList.toggle('wrong', issue !== undefined);
  const input = row.element.querySelector('input, select');
  if (issue === undefined) input?.removeAttribute('aria-invalid');
  else input?.setAttribute('aria-invalid', 'true');
}
