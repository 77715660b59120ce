import type { Fill, Point, Weight } from './marks.js';

/** Width of every sketch. */
export const sheetWidth = 320;
/** Half the width of a letter's box. */
export const letterRadius = 9;
/** Height of the letters and of the words, in units of the sheet. */
export const letterSize = 12;
export const wordSize = 12;
/** Advance of a character in a wide sans serif face, as a share of its size, and what a short word of wide letters takes over that. */
const advance = 0.6;
const spare = 4;

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A line of the drawing; `field` is the one whose letter it belongs to. */
export interface Stroke {
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly weight: Weight | 'measure' | 'extension' | 'push';
  readonly fill: Fill;
  readonly field: string | undefined;
}
/** A filled arrow head: its tip and the way it points, as a unit vector. */
export interface Head {
  readonly tip: Point;
  readonly way: Point;
  readonly isBold: boolean;
  readonly field: string | undefined;
}
export interface PlacedLetter {
  readonly field: string;
  readonly at: Point;
}
export interface PlacedWords {
  readonly text: string;
  readonly at: Point;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** A sketch laid out: every line, arrow head, letter and word with its place. */
export interface Sheet {
  readonly height: number;
  readonly strokes: readonly Stroke[];
  readonly heads: readonly Head[];
  readonly letters: readonly PlacedLetter[];
  readonly words: readonly PlacedWords[];
}

export const letterBox = ({ at: [x, y] }: PlacedLetter): Box => ({
  left: x - letterRadius,
  right: x + letterRadius,
  top: y - letterRadius,
  bottom: y + letterRadius,
});

export function wordsBox({ text, at: [x, y], anchor }: PlacedWords): Box {
  const width = text.length * wordSize * advance + spare;
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return { left, right: left + width, top: y - wordSize / 2, bottom: y + wordSize / 2 };
}

export const boxesOf = (sheet: Sheet): readonly { readonly name: string; readonly box: Box }[] => [
  ...sheet.letters.map((letter) => ({ name: letter.field, box: letterBox(letter) })),
  ...sheet.words.map((text) => ({ name: `"${text.text}"`, box: wordsBox(text) })),
];

/** The parts of a segment inside a box as shares of its length; undefined where it passes by. */
export function shareInside(
  [ax, ay]: Point,
  [bx, by]: Point,
  box: Box,
): readonly [number, number] | undefined {
  let from = 0;
  let to = 1;
  for (const [p, d, low, high] of [
    [ax, bx - ax, box.left, box.right],
    [ay, by - ay, box.top, box.bottom],
  ] as const) {
    if (Math.abs(d) < 1e-9) {
      if (p < low || p > high) return undefined;
      continue;
    }
    const [near, far] = d > 0 ? [(low - p) / d, (high - p) / d] : [(high - p) / d, (low - p) / d];
    from = Math.max(from, near);
    to = Math.min(to, far);
  }
  return from < to ? [from, to] : undefined;
}
