import { el } from '../../element.js';
import type { FieldModel } from '../model/recipe-model.js';
import type { Control, ControlContext } from './field-control.js';

export type MakeControl = (context: ControlContext) => Control;

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Several parts that make one value, each with a control of its own. */
export function groupControl(context: ControlContext, make: MakeControl): Control {
  let values: Record<string, unknown> = {};
  const parts = context.field.fields.map((field) => {
    const id = `${context.id}-${field.name}`;
    const control = make({
      ...context,
      field,
      id,
      assumed: field.assumed,
      write(value) {
        values = { ...values, [field.name]: value };
        const given = Object.fromEntries(Object.entries(values).filter(([, inner]) => inner !== undefined));
        context.write(Object.keys(given).length === 0 ? undefined : given);
      },
    });
    const row = el('div', { class: 'part' }, el('label', { for: id }, field.label), control.element);
    return { name: field.name, control, row };
  });
  const element = el(
    'div',
    { class: 'parts', id: context.id, role: 'group', 'aria-label': context.field.label, tabindex: '-1' },
    ...parts.map(({ row }) => row),
  );
  return {
    element,
    input: parts[0]?.control.input ?? element,
    show(value) {
      values = isRecord(value) ? { ...value } : {};
      for (const { name, control } of parts) control.show(values[name]);
    },
  };
}

/** One of several kinds of thing: a switch between them, and the control of the one chosen. */
export function eitherControl(context: ControlContext, make: MakeControl): Control {
  const { field, id } = context;
  const options = field.items.map((item, i) => ({ item, label: alternativeLabel(item, field.items), i }));
  const controls = options.map(({ item, i }) =>
    make({
      ...context,
      field: { ...item, label: field.label, example: item.example ?? field.example },
      id: i === 0 ? id : `${id}-${i}`,
      assumed: i === 0 ? context.assumed : undefined,
    }),
  );
  const select = el(
    'select',
    { class: 'kind', 'aria-label': `${field.label}: how it is given` },
    ...options.map(({ label, i }) => el('option', { value: String(i) }, label)),
  );
  const place = el('span', { class: 'chosen' });
  const choose = (i: number): void => {
    select.value = String(i);
    const control = controls[i];
    if (control !== undefined && place.firstChild !== control.element) place.replaceChildren(control.element);
  };
  select.addEventListener('change', () => {
    choose(Number(select.value));
    context.write(undefined);
  });
  choose(0);
  return {
    element: el('div', { class: 'either' }, select, place),
    get input() {
      return (controls[Number(select.value)] ?? controls[0])?.input ?? select;
    },
    show(value) {
      const at = value === undefined ? Number(select.value) : alternativeOf(field.items, value);
      choose(at);
      controls[at]?.show(value);
    },
  };
}

/** The alternative that a value is meant for: by its shape, then by its words. */
function alternativeOf(items: readonly FieldModel[], value: unknown): number {
  const fits = (item: FieldModel): boolean => {
    if (Array.isArray(value)) return item.kind === 'list' || item.kind === 'table';
    if (isRecord(value)) return item.kind === 'group' || item.kind === 'record';
    if (item.kind === 'choice') return item.choices.includes(String(value));
    return item.kind !== 'group' && item.kind !== 'list' && item.kind !== 'table';
  };
  return Math.max(0, items.findIndex(fits));
}

const kindWords: Readonly<Record<string, string>> = {
  choice: 'from a list',
  group: 'by its parts',
  list: 'several',
  text: 'in words',
  moisture: 'a moisture',
};

function alternativeLabel(item: FieldModel, all: readonly FieldModel[]): string {
  const names = item.fields.map(({ name }) => name);
  if (names.includes('humidity')) return 'air';
  const word = kindWords[item.kind] ?? `a ${item.kind}`;
  return all.filter(({ kind }) => kind === item.kind).length > 1 ? item.label : word;
}
