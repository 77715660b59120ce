/** Cursor positions: the protocol counts Unicode code points, JavaScript counts UTF-16 units. */

/** UTF-16 units before a position counted in code points. */
export function toUnits(text: string, points: number): number {
  let units = 0;
  for (let n = 0; n < points && units < text.length; n++) units += isPair(text, units) ? 2 : 1;
  return units;
}

/** Code points before a position counted in UTF-16 units. */
export function toPoints(text: string, units: number): number {
  return countPoints(text.slice(0, Math.max(0, units)));
}

/** Code points of a text. */
export function countPoints(text: string): number {
  let points = 0;
  for (let at = 0; at < text.length; at += isPair(text, at) ? 2 : 1) points++;
  return points;
}

const isPair = (text: string, at: number): boolean => (text.codePointAt(at) ?? 0) > 0xffff;
