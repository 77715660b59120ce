import { el } from '../../element.js';
import { exampleText, textOf, type Control, type ControlContext } from './field-control.js';
import { isSameUnit, splitUnit, unitLabel, withUnit } from './unit-text.js';

/** A number with a choice of units; a bare number takes the unit shown. */
export function quantityControl({ field, id, assumed, write }: ControlContext): Control {
  // Shop lengths are written in millimetres, also where an example has metres.
  const usual = field.kind === 'length' && assumed === undefined ? field.units[0] : undefined;
  const first = usual ?? unitOfText(assumed ?? exampleText(field)) ?? field.units[0] ?? '';
  const input = el('input', {
    id,
    type: 'text',
    class: 'numeric',
    inputmode: field.units.includes('in') ? 'text' : 'decimal',
    enterkeyhint: 'next',
    autocomplete: 'off',
    autocapitalize: 'off',
    spellcheck: 'false',
    placeholder: placeholderOf(field, assumed, first),
  });
  const units = el(
    'select',
    { class: 'unit', 'aria-label': `Unit of ${field.label}` },
    ...unitOptions(field.units, first),
  );
  units.value = first;
  const written = (): void => {
    const text = input.value.trim();
    write(text === '' ? undefined : withUnit(text, units.value));
  };
  input.addEventListener('input', written);
  // On leaving the box a unit that was typed moves into the choice beside it.
  input.addEventListener('blur', () => showText(input.value));
  units.addEventListener('change', () => {
    if (input.value.trim() !== '') written();
  });
  function showText(text: string): void {
    const parts = splitUnit(text);
    const unit = parts && [...units.options].find((option) => isSameUnit(option.value, parts.unit))?.value;
    if (unit === undefined || parts === undefined) {
      input.value = text;
      return;
    }
    input.value = parts.number;
    units.value = unit;
  }
  return {
    element: el('span', { class: 'box' }, input, units),
    input,
    show(value) {
      const text = textOf(value) ?? '';
      if (document.activeElement === input && withUnit(input.value, units.value) === text) return;
      showText(text);
      if (text === '' && units.value === '') units.value = first;
      if (splitUnit(text)?.unit === '' && units.options.length > 0) showBare();
    },
  };
  /** The cell has a number without a unit: none is shown, so that it is not read as the unit chosen here. */
  function showBare(): void {
    if (![...units.options].some(({ value }) => value === ''))
      units.append(el('option', { value: '' }, 'no unit'));
    units.value = '';
  }
}

function unitOptions(units: readonly string[], first: string): HTMLOptionElement[] {
  const all = units.some((unit) => isSameUnit(unit, first)) || first === '' ? units : [first, ...units];
  return all.map((unit) => el('option', { value: unit }, unitLabel(unit)));
}

const unitOfText = (text: string): string | undefined => {
  const unit = splitUnit(text)?.unit;
  return unit === '' ? undefined : unit;
};

function placeholderOf(field: ControlContext['field'], assumed: string | undefined, unit: string): string {
  if (assumed !== undefined) return splitUnit(assumed)?.number ?? assumed;
  const parts = splitUnit(exampleText(field));
  const example = parts !== undefined && isSameUnit(parts.unit, unit) ? parts.number : exampleText(field);
  return example === '' ? '' : `e.g. ${example}`;
}
