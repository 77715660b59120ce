import { el } from '../../element.js';
import type { Argument, Scope } from '../model/argument.js';
import type { Figure } from '../model/figure.js';
import type { FieldModel } from '../model/recipe-model.js';

/** Figures that a field could take: of its own kind, and not resting on the answer itself. */
export function takeable(
  field: FieldModel,
  figures: readonly Figure[],
  scope: Scope,
  own: string | undefined,
): Figure[] {
  const kinds = new Set([field.kind, ...field.items.map(({ kind }) => kind)]);
  const needed = field.fields.filter(({ optional }) => !optional).map(({ name }) => name);
  return figures.filter((figure) => {
    if (figure.name === own || (own !== undefined && restsOn(figure.name, own, scope))) return false;
    if (figure.kind === 'text' || figure.kind === 'flag' || figure.kind === 'choice') return false;
    if (figure.kind === 'table')
      return field.kind === 'table' && needed.every((column) => figure.columns.includes(column));
    return kinds.has(figure.kind);
  });
}

/** Whether the result called `name` rests on the one called `base`, directly or through others. */
function restsOn(name: string, base: string, scope: Scope, seen: ReadonlySet<string> = new Set()): boolean {
  if (seen.has(name)) return false;
  const binding = scope[name];
  if (binding === undefined) return false;
  const used =
    'call' in binding ? Object.values(binding.call.given).flatMap(namesIn) : namesIn(binding.value);
  return used.some((other) => other === base || restsOn(other, base, scope, new Set([...seen, name])));
}

/** Names that an argument refers to. */
export function namesIn(argument: Argument): readonly string[] {
  if (argument.type === 'reference') return [argument.name];
  if (argument.type === 'list') return argument.items.flatMap(namesIn);
  if (argument.type === 'object') return argument.entries.flatMap(([, inner]) => namesIn(inner));
  return [];
}

/** Lets a person choose an earlier figure for a field; undefined where they close it. */
export function chooseFigure(field: FieldModel, figures: readonly Figure[]): Promise<Figure | undefined> {
  return new Promise((resolve) => {
    let chosen: Figure | undefined;
    const names = [...new Set(figures.map(({ name }) => name))];
    const item = (figure: Figure): HTMLElement =>
      el(
        'li',
        {},
        el(
          'button',
          {
            type: 'button',
            class: 'figure-item',
            onclick: () => {
              chosen = figure;
              dialog.close();
            },
          },
          el('span', {}, figure.label),
          el('strong', {}, figure.text),
        ),
      );
    const dialog = el(
      'dialog',
      { class: 'ask take', 'aria-labelledby': 'take-title' },
      el('h2', { id: 'take-title' }, `Take “${field.label}” from`),
      ...names.flatMap((name) => [
        el('h3', {}, name),
        el('ul', { class: 'figure-list' }, ...figures.filter((figure) => figure.name === name).map(item)),
      ]),
      el(
        'div',
        { class: 'choices' },
        el('button', { type: 'button', class: 'button', onclick: () => dialog.close() }, 'Close'),
      ),
    );
    const opener = document.activeElement;
    dialog.addEventListener('close', () => {
      dialog.remove();
      if (opener instanceof HTMLElement) opener.focus();
      resolve(chosen);
    });
    document.body.append(dialog);
    dialog.showModal();
  });
}
