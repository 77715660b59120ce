/** JSON that can stand inside a script element or an HTML comment: no tag and no end of comment can arise in it. */
export function jsonForHtml(value: unknown): string {
  return JSON.stringify(value)
    .replace(/</g, '\\u003c')
    .replace(/>/g, '\\u003e')
    .replace(/\u2028/g, '\\u2028')
    .replace(/\u2029/g, '\\u2029')
    .replace(/--/g, '-\\u002d');
}
