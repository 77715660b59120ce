import { tell } from './dialog.js';
import { el } from './element.js';
import { messageOf } from './server-api.js';

export interface MenuItem {
  readonly words: string;
  /** What goes wrong is said on the page. */
  readonly act: () => void | Promise<void>;
}

/** A button that opens a list of acts; it closes when one is taken, at Escape, and when the focus leaves it. */
export function dropMenu(title: string, buttonClass: string, items: readonly MenuItem[]): HTMLElement {
  const menu = el('details', { class: 'menu' }, el('summary', { class: buttonClass }, title));
  const take = ({ act }: MenuItem): void => {
    menu.open = false;
    void Promise.resolve()
      .then(act)
      .catch((error: unknown) => tell(messageOf(error), 10));
  };
  menu.append(
    el(
      'div',
      { class: 'menu-items' },
      ...items.map((item) =>
        el('button', { type: 'button', class: 'menu-item', onclick: () => take(item) }, item.words),
      ),
    ),
  );
  menu.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape') return;
    menu.open = false;
    menu.querySelector('summary')?.focus();
  });
  menu.addEventListener('focusout', (event) => {
    if (!(event.relatedTarget instanceof Node) || !menu.contains(event.relatedTarget)) menu.open = false;
  });
  return menu;
}
