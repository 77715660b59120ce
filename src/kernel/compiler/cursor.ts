/** Cursor places: the protocol counts characters as Unicode code points, JavaScript counts UTF-16 units. */
export const toUnits = (text: string, points: number): number =>
  [...text].slice(0, Math.max(0, points)).join('').length;
export const toPoints = (text: string, units: number): number =>
  [...text.slice(0, Math.max(0, units))].length;
