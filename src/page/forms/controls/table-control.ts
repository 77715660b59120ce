import { el, icon } from '../../element.js';
import type { FieldModel } from '../model/recipe-model.js';
import { exampleText, textOf, type Control, type ControlContext } from './field-control.js';
import { pastedRows } from './pasted-rows.js';
import { splitUnit, unitLabel, withUnit } from './unit-text.js';

type Row = Record<string, unknown>;

/** A table as a grid: a box a cell, rows added and taken out, and rows pasted from a spreadsheet. */
export function tableControl(context: ControlContext): Control {
  return new TableGrid(context);
}

class TableGrid implements Control {
  readonly element: HTMLElement;
  #rows: Row[] = [];
  #shown: string;
  readonly #table = el('table', { class: 'grid' });
  readonly #chip = el('p', { class: 'chip-line', hidden: true });
  #all = false;

  constructor(private readonly context: ControlContext) {
    this.#shown = '';
    const add = el(
      'button',
      { type: 'button', class: 'button small', onclick: () => this.#addRow() },
      icon('plus'),
      'Add a row',
    );
    const more = el(
      'button',
      {
        type: 'button',
        class: 'button small',
        hidden: this.#columns().length === context.field.fields.length,
        onclick: () => {
          this.#all = true;
          more.hidden = true;
          this.#draw();
        },
      },
      'More columns',
    );
    const hint = el('span', { class: 'says' }, 'Rows can be pasted from a spreadsheet.');
    const head = el('div', { class: 'grid-scroll' }, this.#table);
    this.element = el(
      'div',
      { class: 'table-box' },
      this.#chip,
      head,
      el('div', { class: 'grid-acts' }, add, more, hint),
    );
    this.#draw();
  }

  get input(): HTMLElement {
    return this.#table.querySelector('input') ?? this.#table;
  }

  show(value: unknown): void {
    const text = JSON.stringify(value ?? null);
    if (text === this.#shown) return;
    this.#shown = text;
    const isFile = typeof value === 'string';
    this.#chip.hidden = !isFile;
    this.#chip.textContent = isFile && !value.includes('\n') ? `From the file ${value}` : '';
    this.#rows = Array.isArray(value) ? value.map((row) => ({ ...(row as Row) })) : [];
    this.#draw();
  }

  /** Columns that are needed, in the example or given; all of them once asked for. */
  #columns(): readonly FieldModel[] {
    const { fields } = this.context.field;
    const example = Array.isArray(this.context.field.example) ? (this.context.field.example as Row[]) : [];
    const used = new Set([...example, ...this.#rows].flatMap((row) => Object.keys(row)));
    const kept = fields.filter(({ name, optional }) => this.#all || !optional || used.has(name));
    return kept.length > 0 ? kept : fields;
  }

  #draw(): void {
    const columns = this.#columns();
    const rows = this.#rows.length === 0 ? [{}] : this.#rows;
    this.#table.replaceChildren(
      el('caption', { class: 'hidden-words' }, this.context.field.label),
      el(
        'thead',
        {},
        el('tr', {}, ...columns.map(headCell), el('th', {}, el('span', { class: 'hidden-words' }, 'Row'))),
      ),
      el('tbody', {}, ...rows.map((row, at) => this.#row(row, at, columns))),
    );
  }

  #row(row: Row, at: number, columns: readonly FieldModel[]): HTMLElement {
    const cells = columns.map((column, i) => el('td', {}, this.#cell(row, at, column, i)));
    const remove = el(
      'button',
      {
        type: 'button',
        class: 'tool',
        title: `Take out row ${at + 1}`,
        'aria-label': `Take out row ${at + 1}`,
        onclick: () => {
          this.#rows.splice(at, 1);
          this.#draw();
          this.#write();
        },
      },
      icon('close'),
    );
    return el('tr', {}, ...cells, el('td', {}, remove));
  }

  #cell(row: Row, at: number, column: FieldModel, i: number): HTMLElement {
    const id = at === 0 && i === 0 ? { id: this.context.id } : {};
    const label = { 'aria-label': `${column.label}, row ${at + 1}` };
    if (column.choices.length > 0) {
      const select = el(
        'select',
        { ...id, ...label },
        el('option', { value: '' }, ''),
        ...column.choices.map((choice) => el('option', { value: choice }, choice)),
      );
      select.value = textOf(row[column.name]) ?? '';
      select.addEventListener('change', () => this.#set(at, column, select.value));
      return select;
    }
    const input = el('input', {
      ...id,
      ...label,
      type: 'text',
      autocomplete: 'off',
      spellcheck: 'false',
      placeholder: this.#rows.length === 0 ? exampleCell(column) : '',
    });
    input.value = cellText(row[column.name], unitOf(column));
    input.addEventListener('input', () => this.#set(at, column, input.value));
    input.addEventListener('paste', (event) => this.#paste(event, at, i));
    return input;
  }

  #set(at: number, column: FieldModel, typed: string): void {
    const text = typed.trim();
    const row = (this.#rows[at] ??= {});
    if (text === '') Reflect.deleteProperty(row, column.name);
    else row[column.name] = cellValue(text, column);
    this.#write();
  }

  /** Several cells at once; a first line of headings chooses the columns. */
  #paste(event: ClipboardEvent, at: number, column: number): void {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (!/[\t\n]/.test(text.trim())) return;
    event.preventDefault();
    const columns = this.#columns();
    for (const [i, cells] of pastedRows(text, columns, column).entries()) {
      const row: Row = { ...this.#rows[at + i] };
      for (const [name, typed] of Object.entries(cells)) {
        const found = this.context.field.fields.find((field) => field.name === name);
        if (found !== undefined && typed !== '') row[name] = cellValue(typed, found);
      }
      this.#rows[at + i] = row;
    }
    this.#draw();
    this.#write();
  }

  #addRow(): void {
    if (this.#rows.length === 0) this.#rows.push({});
    this.#rows.push({});
    this.#draw();
    const last = this.#table.querySelector('tbody tr:last-child');
    last?.querySelector<HTMLElement>('input, select')?.focus();
  }

  #write(): void {
    const rows = this.#rows.filter((row) => Object.keys(row).length > 0);
    this.#shown = JSON.stringify(rows.length === 0 ? null : rows);
    this.context.write(rows.length === 0 ? undefined : rows);
  }
}

function headCell(column: FieldModel): HTMLElement {
  const unit = unitOf(column);
  return el(
    'th',
    { scope: 'col', ...(column.help === '' ? {} : { title: column.help }) },
    column.label,
    unit === '' ? undefined : el('small', {}, `, ${unitLabel(unit)}`),
  );
}

/** Unit of a column: that of its example, else the usual one of its kind. */
function unitOf(column: FieldModel): string {
  const unit = column.units.length > 0 ? splitUnit(exampleText(column))?.unit : '';
  return unit === undefined || unit === '' ? (column.units[0] ?? '') : unit;
}

function cellValue(text: string, column: FieldModel): unknown {
  const takesNumbers = column.isPlain || column.items.some(({ isPlain }) => isPlain);
  if (takesNumbers && /^[-+]?\d+([.,]\d+)?$/.test(text)) return Number(text.replace(',', '.'));
  return column.units.length > 0 ? withUnit(text, unitOf(column)) : text;
}

/** A value in the column's own unit is shown as a bare number. */
function cellText(value: unknown, unit: string): string {
  const text = textOf(value) ?? '';
  const parts = unit === '' ? undefined : splitUnit(text);
  return parts?.unit === unit ? parts.number : text;
}

const exampleCell = (column: FieldModel): string => cellText(column.example, unitOf(column));
