import { el } from '../../element.js';
import { textOf, type Control, type ControlContext } from './field-control.js';

/** One of a few words, or yes and no. */
export function choiceControl({ field, id, assumed, write }: ControlContext): Control {
  const isFlag = field.kind === 'flag';
  const empty = assumed !== undefined ? `${assumed} (assumed)` : field.optional ? 'not given' : 'choose one';
  const select = el(
    'select',
    { id },
    el('option', { value: '' }, empty),
    ...field.choices.map((choice) => el('option', { value: choice }, choice)),
  );
  const mark = (): void => void select.classList.toggle('assumed', select.value === '');
  select.addEventListener('change', () => {
    mark();
    write(select.value === '' ? undefined : isFlag ? select.value === 'yes' : select.value);
  });
  mark();
  const plain = (text: string): string => text.toLowerCase().replace(/[\s_-]+/g, '');
  return {
    element: el('span', { class: 'box' }, select),
    input: select,
    show(value) {
      const text = plain(textOf(value) ?? '');
      const meant = isFlag && (text === 'true' || text === 'false') ? (text === 'true' ? 'yes' : 'no') : text;
      select.value = field.choices.find((choice) => plain(choice) === meant) ?? '';
      mark();
    },
  };
}
