import { capitalised } from '../../units/capitalised.js';
import { CharacterGrid } from './character-grid.js';
import type { Letter } from './lettering.js';
import { sheetWidth, type Head, type PlacedWords, type Sheet, type Stroke } from './sheet.js';

/** Units of the sheet that a character cell is wide and high. */
const cellWidth = 5;
const cellHeight = 10;

const toCell = ([x, y]: readonly [number, number]): [number, number] => [x / cellWidth, y / cellHeight];

/** Figure of the grain and extension lines would only clutter cells this coarse; the dot of a letter's line is a cell of that line. */
const isDrawn = ({ weight, closed, field }: Stroke): boolean =>
  weight !== 'grain' && weight !== 'extension' && !(closed && field !== undefined);

function arrowSign({ way: [wx, wy] }: Head): string {
  if (Math.abs(wx) >= Math.abs(wy)) return wx > 0 ? '►' : '◄';
  return wy > 0 ? '▼' : '▲';
}

function leftOf({ text, at, anchor }: PlacedWords, width: number): number {
  const [x] = toCell(at);
  const before = { start: 0, middle: text.length / 2, end: text.length }[anchor];
  return Math.min(Math.max(0, x - before), width - text.length);
}

/** The sketch in characters, at most 64 wide: (A) is given, [A] is an answer. */
export function sketchPicture(sheet: Sheet, letters: readonly Letter[]): string[] {
  const grid = new CharacterGrid(sheetWidth / cellWidth, Math.ceil(sheet.height / cellHeight));
  for (const { points, closed, weight } of sheet.strokes.filter(isDrawn))
    grid.stroke((closed ? [...points, ...points.slice(0, 1)] : points).map(toCell), weight === 'dashed');
  for (const head of sheet.heads) grid.put(...toCell(head.tip), arrowSign(head));
  for (const words of sheet.words) grid.write(leftOf(words, grid.width), toCell(words.at)[1], words.text);
  for (const { field, at } of sheet.letters) {
    const known = letters.find((letter) => letter.field === field);
    const [x, y] = toCell(at);
    if (known !== undefined) grid.write(x - 1.5, y, framed(known));
  }
  return grid.rows();
}

const framed = ({ letter, isOutput }: Letter): string => (isOutput ? `[${letter}]` : `(${letter})`);

/** The letters with what they measure and from where, a line each. */
export function letterLines(letters: readonly Letter[]): string[] {
  return letters.map((letter) => {
    const { field, label, meaning } = letter;
    return `${framed(letter)} ${field}: ${capitalised(label)}${meaning === '' ? '' : `. ${meaning}`}`;
  });
}
