type Child = Node | string | undefined;
type Attributes = Readonly<Record<string, string | boolean | undefined | ((event: never) => void)>>;

/** Makes an HTML element. Attributes that begin with `on` are listeners; true is an empty attribute; undefined leaves it out. */
export function el<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: Child[]
): HTMLElementTagNameMap[K] {
  const node = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === 'function') node.addEventListener(name.slice(2), value as EventListener);
    else if (value === true) node.setAttribute(name, '');
    else if (typeof value === 'string') node.setAttribute(name, value);
  }
  node.append(...children.filter((child): child is Node | string => child !== undefined));
  return node;
}

const shapes = {
  run: 'M7 4.5v15l12-7.5z',
  all: 'M4 5v14l9-7zM13 5v14l9-7z',
  stop: 'M6 6h12v12H6z',
  again: 'M12 5a7 7 0 1 1-6.6 4.7M5 3.5v6h6',
  plus: 'M12 5v14M5 12h14',
  back: 'M14.5 5l-7 7 7 7',
  up: 'M12 19V5M6 11l6-6 6 6',
  down: 'M12 5v14M6 13l6 6 6-6',
  bin: 'M5 7h14M9 7V4.5h6V7M7 7l1 13h8l1-13',
  note: 'M6 3.5h9l4 4v13H6zM9 11h7M9 15h7',
  book: 'M5 5.5c3-1.5 5-1.5 7 0 2-1.5 4-1.5 7 0v13c-3-1.2-5-1.2-7 0-2-1.2-4-1.2-7 0zM12 5.5v13',
  sun: 'M12 8a4 4 0 1 0 0 8 4 4 0 0 0 0-8zM12 2.5v2M12 19.5v2M2.5 12h2M19.5 12h2M5.3 5.3l1.4 1.4M17.3 17.3l1.4 1.4M5.3 18.7l1.4-1.4M17.3 6.7l1.4-1.4',
  look: 'M10.5 4.5a6 6 0 1 0 0 12 6 6 0 0 0 0-12zM15 15l5 5',
  close: 'M6 6l12 12M18 6L6 18',
  copy: 'M8 8h11v12H8zM5 16V4h11',
  save: 'M12 4v11M7 10.5l5 5 5-5M5 20h14',
  load: 'M12 16V5M7 9.5l5-5 5 5M5 20h14',
  more: 'M5 12h.01M12 12h.01M19 12h.01',
  edit: 'M5 19h4L19.5 8.5l-4-4L5 15z',
} as const;

export type Icon = keyof typeof shapes;
const filled: readonly Icon[] = ['run', 'all', 'stop'];

/** A line drawing in the colour of the text around it; hidden from readers of the screen, which get the button's own words. */
export function icon(name: Icon): SVGSVGElement {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  svg.setAttribute('viewBox', '0 0 24 24');
  svg.setAttribute('class', filled.includes(name) ? 'icon filled' : 'icon');
  svg.setAttribute('aria-hidden', 'true');
  const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
  path.setAttribute('d', shapes[name]);
  svg.append(path);
  return svg;
}

/** A button with a drawing. `keys` is how the keyboard does the same, told in the hint. */
export function iconButton(
  name: Icon,
  label: string,
  act: (event: MouseEvent) => void,
  more: { keys?: string; words?: string; class?: string; long?: boolean } = {},
): HTMLButtonElement {
  const hint = more.keys === undefined ? label : `${label} (${more.keys})`;
  return el(
    'button',
    {
      type: 'button',
      title: hint,
      'aria-label': label,
      class: `tool ${more.class ?? ''}`.trim(),
      onclick: act as (event: never) => void,
    },
    icon(name),
    more.words === undefined
      ? undefined
      : el('span', { class: more.long ? 'words long' : 'words' }, more.words),
  );
}
