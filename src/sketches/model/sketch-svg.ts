import { capitalised } from '../../units/capitalised.js';
import { escapeHtml as escapeText } from '../../engine/escape-html.js';
import type { Letter } from './lettering.js';
import type { Point } from './marks.js';
import {
  letterRadius,
  letterSize,
  sheetWidth,
  wordSize,
  type Head,
  type Sheet,
  type Stroke,
} from './sheet.js';

const number = (x: number): string => String(Math.round(x * 10) / 10);
const at = ([x, y]: Point): string => `${number(x)} ${number(y)}`;

const strokeWidths: Readonly<Record<Stroke['weight'], number>> = {
  edge: 1.7,
  thin: 1,
  dashed: 1.1,
  bold: 3,
  grain: 0.8,
  measure: 1,
  extension: 0.7,
  push: 2.6,
};
const opacities: Partial<Record<Stroke['weight'], number>> = { grain: 0.4, extension: 0.6 };
const fills: Readonly<Record<Stroke['fill'], string>> = {
  none: 'fill="none"',
  wood: 'fill="currentColor" fill-opacity="0.07"',
  endGrain: 'fill="currentColor" fill-opacity="0.07"',
  liquid: 'fill="currentColor" fill-opacity="0.2"',
  solid: 'fill="currentColor"',
};

function path(stroke: Stroke): string {
  const d = stroke.points.map((point, i) => `${i === 0 ? 'M' : 'L'}${at(point)}`).join('');
  const opacity = opacities[stroke.weight];
  return [
    `<path d="${d}${stroke.closed ? 'Z' : ''}" ${fills[stroke.fill]}`,
    `stroke-width="${strokeWidths[stroke.weight]}"`,
    ...(stroke.weight === 'dashed' ? ['stroke-dasharray="5 3"'] : []),
    ...(opacity === undefined ? [] : [`stroke-opacity="${opacity}"`]),
  ]
    .join(' ')
    .concat('/>');
}

function head({ tip: [x, y], way: [wx, wy], isBold }: Head): string {
  const length = isBold ? 11 : 7;
  const half = isBold ? 4.5 : 2.6;
  const corner = (side: number): Point => [
    x - wx * length - wy * half * side,
    y - wy * length + wx * half * side,
  ];
  return `<path d="M${at([x, y])}L${at(corner(1))}L${at(corner(-1))}Z" fill="currentColor" stroke="none"/>`;
}

/** A letter in its frame: round for what is given, square for an answer. */
function letterMark([x, y]: Point, letter: Letter): string {
  const r = letterRadius - 0.8;
  const frame = letter.isOutput
    ? `<rect class="sketch-frame" x="${number(x - r)}" y="${number(y - r)}" width="${number(2 * r)}" height="${number(2 * r)}" rx="2" fill="none" stroke-width="1.2"/>`
    : `<circle class="sketch-frame" cx="${number(x)}" cy="${number(y)}" r="${number(r)}" fill="none" stroke-width="1.2"/>`;
  return `${frame}<text x="${number(x)}" y="${number(y + letterSize * 0.36)}" font-size="${letterSize}" font-weight="700" text-anchor="middle" fill="currentColor" stroke="none">${letter.letter}</text>`;
}

/** What a sketch shows and what its letters mean, for who cannot see it. */
export function sketchInWords(shows: string, letters: readonly Letter[]): string {
  const meanings = letters.map(({ letter, label }) => `${letter} ${label}`);
  return `Sketch. ${shows} ${meanings.join('; ')}.`;
}

/**
 * The sketch as SVG in the colour of the text around it. Everything that belongs to a letter stands in a group with `data-measures` (the
 * field's path) and `data-letter`. `isAlone` gives a picture that is looked at by itself, which follows the reader's light or dark
 * setting.
 */
export function sketchSvg(
  sheet: Sheet,
  letters: readonly Letter[],
  shows: string,
  { isAlone = false }: { readonly isAlone?: boolean } = {},
): string {
  const drawn = (field: string | undefined): string[] => [
    ...sheet.strokes.filter((stroke) => stroke.field === field).map(path),
    ...sheet.heads.filter((found) => found.field === field).map(head),
  ];
  const groups = letters.map((letter) => {
    const marks = sheet.letters.filter(({ field }) => field === letter.field);
    const own = [...drawn(letter.field), ...marks.map((mark) => letterMark(mark.at, letter))];
    return `<g class="sketch-letter" data-measures="${escapeText(letter.field)}" data-letter="${letter.letter}"><title>${escapeText(capitalised(letter.label))}</title>${own.join('')}</g>`;
  });
  const texts = sheet.words.map(
    ({ text, at: [x, y], anchor }) =>
      `<text x="${number(x)}" y="${number(y + wordSize * 0.36)}" font-size="${wordSize}" text-anchor="${anchor}" fill="currentColor" stroke="none">${escapeText(text)}</text>`,
  );
  const style = isAlone
    ? '<style>svg{color:#222}@media(prefers-color-scheme:dark){svg{color:#eee}}</style>'
    : '';
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" class="sketch-drawing" viewBox="0 0 ${sheetWidth} ${sheet.height}"${isAlone ? ` width="${1.5 * sheetWidth}" height="${1.5 * sheet.height}"` : ''} role="img" aria-label="${escapeText(sketchInWords(shows, letters))}" font-family="system-ui, 'DejaVu Sans', sans-serif" stroke="currentColor" stroke-linejoin="round" stroke-linecap="round">`,
    style,
    ...drawn(undefined),
    ...groups,
    ...texts,
    '</svg>',
  ].join('');
}
