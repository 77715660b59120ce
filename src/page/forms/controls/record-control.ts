import type { FieldModel } from '../model/recipe-model.js';
import { textOf, type Control, type ControlContext } from './field-control.js';
import { tableControl } from './table-control.js';
import { capitalised } from '../../../units/capitalised.js';

const blank: FieldModel = {
  name: '',
  label: '',
  help: '',
  kind: 'text',
  expects: '',
  optional: true,
  assumed: undefined,
  example: undefined,
  inExample: false,
  choices: [],
  units: [],
  isPlain: false,
  fields: [],
  items: [],
  hasNames: false,
};

/** Values under names that a person chooses, as a table of two columns. */
export function recordControl(context: ControlContext): Control {
  const { field } = context;
  const item = field.items[0] ?? blank;
  const examples = Object.entries((field.example ?? {}) as Record<string, unknown>);
  const example = examples.map(([name, value]) => ({ name, value }));
  const columns: FieldModel[] = [
    { ...blank, name: 'name', label: 'Name', optional: false, example: examples[0]?.[0] },
    { ...item, name: 'value', label: capitalised(item.label), optional: false, example: examples[0]?.[1] },
  ];
  const grid = tableControl({
    ...context,
    field: { ...field, fields: columns, example },
    write(rows) {
      const named = (rows as { name?: unknown; value?: unknown }[] | undefined)?.flatMap(({ name, value }) =>
        name === undefined || value === undefined ? [] : [[textOf(name) ?? '', value] as const],
      );
      context.write(named === undefined || named.length === 0 ? undefined : Object.fromEntries(named));
    },
  });
  return {
    element: grid.element,
    get input() {
      return grid.input;
    },
    show: (value) =>
      grid.show(
        typeof value === 'object' && value !== null && !Array.isArray(value)
          ? Object.entries(value).map(([name, inner]: [string, unknown]) => ({ name, value: inner }))
          : undefined,
      ),
  };
}

/** A list of objects whose parts are only known by the example, such as the loads of a beam. */
export function partsTable(context: ControlContext): Control {
  const rows = context.field.example as Record<string, unknown>[];
  const names = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const fields = names.map((name): FieldModel => ({
    ...blank,
    name,
    label: capitalised(name.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase()),
    example: rows.find((row) => name in row)?.[name],
  }));
  return tableControl({ ...context, field: { ...context.field, fields } });
}
