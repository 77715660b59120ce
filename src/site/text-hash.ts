/**
 * 53 bits of a text, to tell whether it changed: the browser's own digests are missing in a page that came over plain http.
 * Two rounds of multiplication and exclusive or after the FNV-1a hash (Fowler, Noll and Vo).
 */
export function textHash(text: string): string {
  let [a, b] = [0x811c9dc5, 0x1b873593];
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    a = Math.imul(a ^ code, 0x01000193);
    b = Math.imul(b ^ code, 0x85ebca6b);
  }
  a = Math.imul(a ^ (a >>> 16), 0xc2b2ae35) ^ b;
  return `${(a >>> 0).toString(16).padStart(8, '0')}${(b >>> 11).toString(16).padStart(6, '0')}`;
}
