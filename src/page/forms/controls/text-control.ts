import { el } from '../../element.js';
import { exampleText, textOf, type Control, type ControlContext } from './field-control.js';

/** A line of text: words, a plain number, or a thing with a way of writing of its own such as `45 x 70 mm`. */
export function textControl({ field, id, assumed, write }: ControlContext): Control {
  const example = exampleText(field);
  const input = el('input', {
    id,
    type: 'text',
    autocomplete: 'off',
    autocapitalize: 'off',
    spellcheck: 'false',
    enterkeyhint: 'next',
    ...(field.isPlain ? { inputmode: 'decimal' } : {}),
    placeholder: assumed ?? (example === '' ? '' : `e.g. ${example}`),
  });
  input.addEventListener('input', () => write(valueOf(input.value, field.isPlain)));
  return {
    element: el('span', { class: 'box' }, input),
    input,
    show(value) {
      const text = textOf(value) ?? '';
      if (document.activeElement !== input || valueOf(input.value, field.isPlain) !== value)
        input.value = text;
    },
  };
}

/** Counts and ratios are written as numbers, with a decimal comma or point. */
function valueOf(typed: string, isPlain: boolean): unknown {
  const text = typed.trim();
  if (text === '') return undefined;
  return isPlain && /^[-+]?\d+([.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) : text;
}

/** Values set apart by commas. */
export function listControl(context: ControlContext): Control {
  const { field, id, assumed, write } = context;
  const example = Array.isArray(field.example) ? field.example.map(textOf).join(', ') : exampleText(field);
  const input = el('input', {
    id,
    type: 'text',
    autocomplete: 'off',
    autocapitalize: 'off',
    spellcheck: 'false',
    placeholder: assumed ?? (example === '' ? '' : `e.g. ${example}`),
  });
  const values = (): unknown => {
    const items = input.value
      .split(/;|,(?!\d)/)
      .map((item) => item.trim())
      .filter((item) => item !== '');
    return items.length === 0 ? undefined : items;
  };
  input.addEventListener('input', () => write(values()));
  return {
    element: el('span', { class: 'box' }, input),
    input,
    show(value) {
      if (document.activeElement === input) return;
      input.value = Array.isArray(value)
        ? value.map((item) => textOf(item) ?? '').join(', ')
        : (textOf(value) ?? '');
    },
  };
}
