import { el, iconButton } from './element.js';

export interface Panel {
  readonly name: string;
  readonly words: string;
  readonly node: HTMLElement;
  /** Called each time the part comes to view. */
  opened(): void;
}

/** The side panel beside the notebook; on a phone it slides over it. */
export function sidePanel(parts: readonly Panel[]): {
  readonly node: HTMLElement;
  readonly open: (name: string) => void;
  readonly toggle: () => void;
} {
  const body = el('div', { class: 'side-panel-body' }, ...parts.map((part) => part.node));
  const heads = parts.map((part) =>
    el(
      'button',
      {
        type: 'button',
        role: 'tab',
        id: `head-${part.name}`,
        'aria-controls': `part-${part.name}`,
        onclick: () => open(part.name),
      },
      part.words,
    ),
  );
  const node = el(
    'aside',
    { class: 'side-panel', 'aria-label': 'Recipes and build notes', hidden: true },
    el(
      'div',
      { class: 'side-panel-head' },
      el('div', { role: 'tablist', class: 'heads' }, ...heads),
      iconButton('close', 'Close the side panel', () => close()),
    ),
    body,
  );
  for (const part of parts) {
    part.node.id = `part-${part.name}`;
    part.node.setAttribute('role', 'tabpanel');
    part.node.setAttribute('aria-labelledby', `head-${part.name}`);
  }
  let current = parts[0]?.name ?? '';
  function open(name: string): void {
    current = name;
    node.hidden = false;
    document.body.classList.add('side-panel-open');
    for (const [at, part] of parts.entries()) {
      part.node.hidden = part.name !== name;
      heads[at]?.setAttribute('aria-selected', String(part.name === name));
    }
    parts.find((part) => part.name === name)?.opened();
  }
  function close(): void {
    node.hidden = true;
    document.body.classList.remove('side-panel-open');
  }
  node.addEventListener('keydown', (event) => {
    if (event.key === 'Escape') close();
  });
  return { node, open, toggle: () => (node.hidden ? open(current) : close()) };
}
