import { kinds } from '../../units/kind.js';
import { anyQuantity } from '../../units/parse-quantity.js';
import type { Field } from '../../engine/field.js';
import type { Control } from './control.js';
import { element } from './dom.js';
import { grid } from './grid.js';
import { sliderRange } from './slider.js';
import { asText, isRecord, humanizeName } from './humanize.js';

const mostRows = 16;

/** The control that fits a field and what was given for it; `changed` is called at each change a person makes. */
export function controlFor(field: Field, given: unknown, id: string, changed: () => void): Control {
  const text = asText(given);
  const own = controlOfKind(field, given, id, changed);
  if (own !== undefined) return own;
  if (Array.isArray(given) && given.every(isListable)) return list(field, given, id, changed);
  if (text !== undefined || given === undefined) return typed(field, text ?? '', id, changed);
  // A field of a kind of its own, given by parts: each part by what its own text says it is.
  if (isRecord(given) && Object.values(given).every((v) => asText(v) !== undefined))
    return group(
      Object.fromEntries(
        Object.entries(given).map(([name, v]) => [
          name,
          { ...field, fields: undefined, label: name, kind: kindOf(asText(v) ?? '') },
        ]),
      ),
      given,
      id,
      changed,
    );
  // Long tables and things with no simple form stay as the notebook gave them.
  const many = Array.isArray(given) ? `${given.length} rows, as in the notebook` : 'as in the notebook';
  return { element: element('span', { class: 'asGiven', id }, many), value: () => given };
}

/** The control of a field whose kind settles it; undefined where the given value decides. */
function controlOfKind(field: Field, given: unknown, id: string, changed: () => void): Control | undefined {
  if (field.kind === 'choice') return choice(field, asText(given), id, changed);
  if (field.kind === 'flag') return flag(given, id, changed);
  if (field.kind === 'either') return either(field, given, id, changed);
  if (field.kind === 'group' && isRecord(given)) return group(field.fields ?? {}, given, id, changed);
  const item = field.items?.[0];
  if (field.kind === 'record' && isRecord(given) && item !== undefined) {
    const fields = Object.keys(given).map((name) => [name, { ...item, label: name }] as const);
    return group(Object.fromEntries(fields), given, id, changed);
  }
  if (field.kind === 'table' && Array.isArray(given) && given.length <= mostRows && given.every(isRecord))
    return grid(given, id, changed);
  return undefined;
}

/** Fits into a list written with commas. */
const isListable = (value: unknown): boolean => asText(value)?.includes(',') === false;

function list(field: Field, given: readonly unknown[], id: string, changed: () => void): Control {
  const input = typed(field, given.map(asText).join(', '), id, changed);
  return {
    element: input.element,
    value: () =>
      (input.value() as string | undefined)
        // A comma inside a number is a decimal comma.
        ?.split(/;|,(?!\d)/)
        .map((s) => s.trim())
        .filter((s) => s !== ''),
  };
}

function typed(field: Field, text: string, id: string, changed: () => void): Control {
  const input = element('input', {
    id,
    type: 'text',
    value: text,
    autocomplete: 'off',
    autocapitalize: 'off',
    spellcheck: 'false',
    placeholder: text === '' ? placeholderOf(field) : undefined,
  });
  const box = element('span', { class: 'typed' }, input);
  const range = Object.hasOwn(kinds, field.kind) ? sliderRange(field, text) : undefined;
  if (range !== undefined) {
    const slider = element('input', {
      type: 'range',
      class: 'slider',
      min: range.from,
      max: range.to,
      step: range.step,
      value: range.at,
      'aria-label': `${field.label}, slider`,
    });
    slider.addEventListener('input', () => {
      input.value = range.text(Number(slider.value));
      changed();
    });
    input.addEventListener('input', () => {
      const n = Number.parseFloat(input.value);
      if (Number.isFinite(n)) slider.value = String(n);
    });
    box.append(slider);
  }
  input.addEventListener('input', changed);
  return {
    element: box,
    value: () => (input.value.trim() === '' ? undefined : plainNumber(field, input.value.trim())),
  };
}

/** The kind of quantity that a text with a unit is, where it is one. */
function kindOf(text: string): string {
  try {
    return /[a-z%°]/i.test(text) ? anyQuantity(text).kind : 'text';
  } catch {
    return 'text';
  }
}

/** Counts and ratios are written without a unit; everything else is text with one. */
function plainNumber(field: Field, text: string): unknown {
  return /^-?\d+(\.\d+)?$/.test(text) && (field.kind === 'count' || field.kind === 'ratio')
    ? Number(text)
    : text;
}

function placeholderOf(field: Field): string {
  return field.default === undefined ? '' : `${asText(field.default) ?? 'as usual'} (if left empty)`;
}

function choice(field: Field, text: string | undefined, id: string, changed: () => void): Control {
  const plain = (s: string): string => s.toLowerCase().replace(/[\s_-]+/g, '');
  const select = element(
    'select',
    { id },
    ...(text === undefined ? [element('option', { value: '' }, '(as usual)')] : []),
    ...(field.choices ?? []).map((c) =>
      element('option', { value: c, selected: text !== undefined && plain(c) === plain(text) }, c),
    ),
  );
  select.addEventListener('change', changed);
  return { element: select, value: () => (select.value === '' ? undefined : select.value) };
}

function flag(given: unknown, id: string, changed: () => void): Control {
  const box = element('input', {
    id,
    type: 'checkbox',
    checked: given === true || given === 'yes' || given === 'true',
  });
  box.addEventListener('change', changed);
  return { element: box, value: () => box.checked };
}

function group(
  fields: Readonly<Record<string, Field>>,
  given: Readonly<Record<string, unknown>>,
  id: string,
  changed: () => void,
): Control {
  const parts = Object.entries(given).map(([name, value]) => {
    const field = fields[name];
    const control = field === undefined ? undefined : controlFor(field, value, `${id}-${name}`, changed);
    return { name, control, value, label: field?.label ?? name };
  });
  const box = element('span', { class: 'group', id });
  for (const p of parts)
    if (p.control !== undefined)
      box.append(
        element('label', { for: `${id}-${p.name}`, title: p.label }, humanizeName(p.name), p.control.element),
      );
  return {
    element: box,
    value: () =>
      Object.fromEntries(
        parts
          .map((p): [string, unknown] => [p.name, p.control === undefined ? p.value : p.control.value()])
          .filter(([, v]) => v !== undefined),
      ),
  };
}

/** Of several alternatives, the one that the given value fits. */
function either(field: Field, given: unknown, id: string, changed: () => void): Control {
  const meant = (field.items ?? []).filter((f) => f.accepts(given));
  const right = meant.find((f) => {
    try {
      f.read(given);
      return true;
    } catch {
      return false;
    }
  });
  return controlFor({ ...(right ?? { ...field, kind: 'text' }), label: field.label }, given, id, changed);
}
