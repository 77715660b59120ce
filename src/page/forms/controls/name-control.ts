import { el } from '../../element.js';
import { exampleText, textOf, type Control, type ControlContext } from './field-control.js';

/** A timber, a grade or a place: typed, with a list of the names that fit what is typed. */
export function nameControl({ field, id, assumed, write, names }: ControlContext): Control {
  const listId = `${id}-names`;
  const list = el('datalist', { id: listId });
  const input = el('input', {
    id,
    type: 'text',
    list: listId,
    autocomplete: 'off',
    autocapitalize: 'off',
    spellcheck: 'false',
    enterkeyhint: 'next',
    placeholder:
      assumed ?? `e.g. ${exampleText(field) || (field.kind === 'climate' ? 'Seattle-Tacoma' : 'Scots pine')}`,
  });
  const fill = (): void => {
    if (list.childElementCount > 0) return;
    void names().then((all) => list.replaceChildren(...all.map((name) => el('option', { value: name }))));
  };
  input.addEventListener('focus', fill, { once: true });
  input.addEventListener('input', () => {
    const text = input.value.trim();
    write(text === '' ? undefined : text);
  });
  return {
    element: el('span', { class: 'box' }, input, list),
    input,
    show(value) {
      const text = textOf(value) ?? '';
      if (document.activeElement !== input || input.value.trim() !== text) input.value = text;
    },
  };
}
