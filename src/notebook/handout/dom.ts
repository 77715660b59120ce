type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** An element with attributes and children; text children are text, never HTML. */
export function element<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value === undefined || value === false) continue;
    made.setAttribute(name, value === true ? '' : String(value));
  }
  made.append(...children);
  return made;
}
