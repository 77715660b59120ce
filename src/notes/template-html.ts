import { pxPerMm } from '../charts/drawing.js';
import { escapeHtml as e } from '../engine/escape-html.js';
import { pageHtml } from './html-page.js';

/** A drawing at full size: SVG without its outer element, and its size in mm. */
export interface TemplateDrawing {
  readonly inner: string;
  readonly wide: number;
  readonly high: number;
}

/** Paper in mm, and what stays of it for the drawing inside margins of 10 mm and under the head of a sheet. */
const margin = 10;
const head = 30;
const overlap = 10;
const papers = {
  A4: { page: 'A4 portrait', wide: 210, high: 297 },
  Letter: { page: 'letter portrait', wide: 215.9, high: 279.4 },
} as const;

/** Length of the bar that is checked with a rule, mm. */
export const checkBar = 50;

interface Tile {
  readonly left: number;
  readonly top: number;
  readonly name: string;
  readonly rightEnd: boolean;
  readonly lowerEnd: boolean;
}

/** The sheets of one drawing: columns by letter, rows by number; neighbours share a strip of 10 mm. */
function tilesOf(drawing: TemplateDrawing, wide: number, high: number): Tile[] {
  const count = (size: number, sheet: number): number =>
    Math.max(1, Math.ceil((size - overlap) / (sheet - overlap) - 1e-9));
  const [columns, rows] = [count(drawing.wide, wide), count(drawing.high, high)];
  return Array.from({ length: columns * rows }, (_, i): Tile => {
    const [column, row] = [i % columns, Math.floor(i / columns)];
    return {
      left: column * (wide - overlap),
      top: row * (high - overlap),
      name: `${String.fromCharCode(65 + column)}${row + 1}`,
      rightEnd: column === columns - 1,
      lowerEnd: row === rows - 1,
    };
  });
}

/** The template as one page, each sheet in real millimetres. */
export function templateHtml(
  title: string,
  drawings: readonly TemplateDrawing[],
  paper: keyof typeof papers,
  warnings: readonly string[],
): string {
  const { page, wide, high } = papers[paper];
  const [w, h] = [wide - 2 * margin, high - 2 * margin - head];
  const sheets = drawings.flatMap((drawing, i) =>
    tilesOf(drawing, w, h).map((tile) => {
      const name = drawings.length > 1 ? `${i + 1}, sheet ${tile.name}` : `sheet ${tile.name}`;
      return `<section class="sheet">${headSvg(title, name, paper, w, warnings)}${tileSvg(drawing, tile, w, h)}</section>`;
    }),
  );
  const style = `
@page{size:${page};margin:${margin}mm;@bottom-right{content:none}}
body{max-width:none;width:${w}mm;padding:0;margin:0 auto;background:#fff;color:#000}
.sheet{break-after:page;break-inside:avoid;width:${w}mm;height:${h + head - 1}mm;overflow:hidden}.sheet:last-child{break-after:auto}
.sheet svg{display:block;max-width:none;max-height:none;height:auto}
@media screen{.sheet{outline:1px solid #999;margin:0 0 8mm}}
@media print{.sheet svg{max-height:none!important;max-width:none!important}}
`;
  return pageHtml({ title: `${title}: template at full size`, body: sheets.join('\n'), style });
}

/** The head of a sheet: what it is, the bar to check the print by, and what spoils it. */
function headSvg(
  title: string,
  name: string,
  paper: string,
  wide: number,
  warnings: readonly string[],
): string {
  const ticks = [0, 10, 20, 30, 40, 50]
    .map((x) => `<rect x="${x}" y="18" width="0.15" height="3"/>`)
    .join('');
  const unsafe = warnings
    .slice(0, 1)
    .map((t) => `<text x="60" y="27" font-size="3.2" font-weight="700">NOT SAFE AS DESCRIBED: ${e(t)}</text>`)
    .join('');
  return `<svg xmlns="http://www.w3.org/2000/svg" style="width:${wide}mm;height:${head}mm" viewBox="0 0 ${wide} ${head}" font-family="DejaVu Sans,Verdana,sans-serif"><text x="0" y="6" font-size="5" font-weight="700">${e(title)}, ${e(name)}</text><text x="0" y="12" font-size="3.6">Print on ${paper} at 100 %. Switch off "fit to page" and "shrink": they make it smaller.</text><rect class="check-bar" x="0" y="19" width="${checkBar}" height="1" fill="#000"/>${ticks}<text x="0" y="26" font-size="3.6">This bar must measure ${checkBar} mm.</text>${unsafe}</svg>`;
}

/** One sheet of the drawing with the marks that join it to its neighbours. */
function tileSvg(drawing: TemplateDrawing, tile: Tile, w: number, h: number): string {
  const px = (mm: number): string => String(mm * pxPerMm);
  const line = (x1: number, y1: number, x2: number, y2: number): string =>
    `<line x1="${px(x1)}" y1="${px(y1)}" x2="${px(x2)}" y2="${px(y2)}" stroke="#000" stroke-width="0.6" stroke-dasharray="6 6"/>`;
  const cross = (x: number, y: number): string =>
    `<path d="M${px(x - 3)} ${px(y)}H${px(x + 3)}M${px(x)} ${px(y - 3)}V${px(y + 3)}" stroke="#000" stroke-width="0.8" fill="none"/>`;
  const [right, low] = [tile.left + w - overlap / 2, tile.top + h - overlap / 2];
  const marks = [
    ...(tile.rightEnd
      ? []
      : [
          line(right, tile.top, right, tile.top + h),
          cross(right, tile.top + 20),
          cross(right, tile.top + h - 20),
        ]),
    ...(tile.left === 0
      ? []
      : [
          line(tile.left + overlap / 2, tile.top, tile.left + overlap / 2, tile.top + h),
          cross(tile.left + overlap / 2, tile.top + 20),
          cross(tile.left + overlap / 2, tile.top + h - 20),
        ]),
    ...(tile.lowerEnd
      ? []
      : [
          line(tile.left, low, tile.left + w, low),
          cross(tile.left + 20, low),
          cross(tile.left + w - 20, low),
        ]),
    ...(tile.top === 0
      ? []
      : [
          line(tile.left, tile.top + overlap / 2, tile.left + w, tile.top + overlap / 2),
          cross(tile.left + 20, tile.top + overlap / 2),
          cross(tile.left + w - 20, tile.top + overlap / 2),
        ]),
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" style="width:${w}mm;height:${h - 1}mm" viewBox="${px(tile.left)} ${px(tile.top)} ${px(w)} ${px(h - 1)}">${drawing.inner}${marks.join('')}</svg>`;
}
