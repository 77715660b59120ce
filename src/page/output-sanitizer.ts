import { Sanitizer } from '@jupyterlab/apputils';
import type { IRenderMime } from '@jupyterlab/rendermime-interfaces';

/** Nothing a stranger's result needs, and each could mislead: a form that sends, a frame or a field that looks like ours. */
const misleading = [
  'form',
  'iframe',
  'input',
  'button',
  'select',
  'option',
  'optgroup',
  'textarea',
  'datalist',
  'fieldset',
  'legend',
  'keygen',
  'dialog',
  'base',
  'link',
  'meta',
  'style',
  'map',
  'area',
];

/** The widgets' own rules for HTML, less what misleads, and with the one attribute in which a recipe's workings keep their formula. */
export function makeSanitizer(): IRenderMime.ISanitizer {
  const base = new Sanitizer();
  const rules =
    (
      base as unknown as {
        _options?: { allowedAttributes?: Record<string, unknown[]>; allowedTags?: string[] };
      }
    )._options ?? {};
  const allowedAttributes = {
    ...rules.allowedAttributes,
    code: [...(rules.allowedAttributes?.['code'] ?? []), 'data-latex', 'style'],
  };
  const allowedTags = (rules.allowedTags ?? []).filter((tag) => !misleading.includes(tag));
  return {
    sanitize: (dirty, options) =>
      base.sanitize(dirty, { allowedAttributes, allowedTags, ...options } as typeof options),
  };
}

/** Elements by which HTML could leave the page, send what is in it, or put another page into it. */
const navigating = 'meta, base, link, form, iframe, frame, frameset, object, embed, portal, dialog';

/** Trusted HTML may look as it likes; it still never leaves the page, and never brings another one into it. */
export function withoutNavigation(html: string): string {
  const parsed = new DOMParser().parseFromString(html, 'text/html');
  for (const element of Array.from(parsed.querySelectorAll(navigating))) {
    // The words of a form stay, the form goes.
    element.replaceWith(...(element.localName === 'form' ? Array.from(element.childNodes) : []));
  }
  for (const element of Array.from(parsed.querySelectorAll('[formaction], [srcdoc], [ping], a[target]')))
    for (const name of ['formaction', 'srcdoc', 'ping', 'target']) element.removeAttribute(name);
  return parsed.head.innerHTML + parsed.body.innerHTML;
}
