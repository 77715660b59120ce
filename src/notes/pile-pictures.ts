// Pictures of a pile and of the top laid from it, as SVG: boards with docked ends, faults and cuts; rows with their numbered
// pieces; labels to stick on. Lengths in metres as in a result, drawn in millimetres.
import { escapeHtml as e } from '../engine/escape-html.js';

export interface DrawnPiece {
  readonly piece: string;
  readonly board: string;
  readonly copy: number;
  readonly boardFrom: number;
  readonly stripFrom: number;
  readonly stripTo: number;
  readonly row: number;
  readonly start: number;
  readonly length: number;
  readonly width: number;
}
export interface DrawnBoard {
  readonly name: string;
  readonly count: number;
  readonly length: number;
  readonly width: number;
  readonly endLeft: number;
  readonly endRight: number;
  readonly faults: readonly (readonly [from: number, to: number])[];
}

const mm = (m: number): string => (m * 1000).toFixed(1).replace(/\.0$/, '');
const n = (x: number): string => String(Number(x.toFixed(2)));

const rectangle = (x: number, y: number, w: number, h: number, looks: string): string =>
  `<rect x="${n(x)}" y="${n(y)}" width="${n(Math.max(0, w))}" height="${n(Math.max(0, h))}" ${looks}/>`;
const words = (x: number, y: number, size: number, text: string, anchor = 'middle'): string =>
  `<text x="${n(x)}" y="${n(y)}" font-size="${n(size)}" text-anchor="${anchor}" dominant-baseline="central">${e(text)}</text>`;

const hatch = (id: string): string =>
  `<defs><pattern id="${id}" width="3" height="3" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line x1="0" y1="0" x2="0" y2="3" stroke="#000" stroke-width="1"/></pattern></defs>`;

const svg = (width: number, height: number, title: string, inner: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label="${e(title)}" width="${n(width)}mm" height="${n(height)}mm" viewBox="0 0 ${n(width)} ${n(height)}" font-family="DejaVu Sans,Verdana,sans-serif" fill="#000"><title>${e(title)}</title>${inner}</svg>`;

const wood = 'fill="#f3e3c6" stroke="#000" stroke-width="0.3"';
const cutWood = 'fill="#dcb986" stroke="#000" stroke-width="0.3"';
const names = 30;

/** One board with its docks hatched and its pieces, `scale` paper millimetres for a metre. */
function boardPicture(
  b: DrawnBoard,
  label: string,
  pieces: readonly DrawnPiece[],
  y: number,
  high: number,
  scale: number,
): string {
  const x = (m: number): number => names + m * scale;
  const docked = 'fill="url(#dock)" stroke="#000" stroke-width="0.3"';
  return [
    words(names - 2, y + high / 2, 3, label, 'end'),
    rectangle(x(0), y, b.length * scale, high, wood),
    ...pieces.map((p) => {
      const top = y + (p.stripFrom / b.width) * high;
      const deep = ((p.stripTo - p.stripFrom) / b.width) * high;
      const text = `${p.piece} ${mm(p.length)} r${p.row}`;
      const size = Math.min(2.8, deep * 0.7, (p.length * scale) / (text.length * 0.62));
      return `${rectangle(x(p.boardFrom), top, p.length * scale, deep, cutWood)}${words(x(p.boardFrom + p.length / 2), top + deep / 2, size, text)}`;
    }),
    rectangle(x(0), y, b.endLeft * scale, high, docked),
    rectangle(x(b.length - b.endRight), y, b.endRight * scale, high, docked),
    ...b.faults.map(([from, to]) => rectangle(x(from), y, (to - from) * scale, high, docked)),
    words(x(b.length) + 1, y + high / 2, 2.6, mm(b.length), 'start'),
  ].join('');
}

/** The pile as surveyed, every copy of a board by itself where it is cut; on as many pictures as the sheets take. */
export function pilePictures(
  boards: readonly DrawnBoard[],
  pieces: readonly DrawnPiece[],
  sheet: { readonly width: number; readonly height: number },
): string[] {
  const longest = Math.max(...boards.map((b) => b.length));
  const scale = (sheet.width - names - 14) / longest;
  const lines = boards.flatMap((b) => {
    const copies = Array.from({ length: b.count }, (_, k) =>
      pieces.filter((p) => p.board === b.name && p.copy === k + 1),
    );
    const untouched = copies.filter((own) => own.length === 0).length;
    const cut = copies.flatMap((own, k) =>
      own.length === 0 ? [] : [{ b, own, label: b.count > 1 ? `${b.name}.${k + 1}` : b.name }],
    );
    return untouched === 0
      ? cut
      : [...cut, { b, own: [], label: `${b.name}${untouched > 1 ? ` × ${untouched}` : ''}` }];
  });
  const step = 11;
  const each = Math.max(1, Math.floor((sheet.height - 18) / step));
  const pictures: string[] = [];
  for (let at = 0; at < lines.length; at += each) {
    const part = lines.slice(at, at + each);
    const inner = part
      .map((l, i) => boardPicture(l.b, l.label, l.own, i * step + 1, step - 3, scale))
      .join('');
    pictures.push(
      svg(sheet.width, part.length * step + 2, 'The pile with its docks and cuts', hatch('dock') + inner),
    );
  }
  return pictures;
}

export interface DrawnTop {
  readonly length: number;
  readonly spare: number;
  /** Last rows of slabs. */
  readonly slabEnds: readonly number[];
}

/** The rows to scale, numbered, their pieces with numbers and lengths. */
export function rowsPicture(
  pieces: readonly DrawnPiece[],
  top: DrawnTop,
  sheet: { readonly width: number; readonly height: number },
): string {
  const rows = [...new Set(pieces.map((p) => p.row))].sort((a, b) => a - b);
  const widthOf = (r: number): number => pieces.find((p) => p.row === r)?.width ?? 0;
  const whole = top.length + top.spare;
  const deep = rows.reduce((s, r) => s + widthOf(r), 0);
  const scale = Math.min((sheet.width - 14) / whole, (sheet.height - 20) / Math.max(deep, 1e-6));
  const x = (m: number): number => 10 + m * scale;
  let y = 1;
  const inner: string[] = [];
  for (const r of rows) {
    const high = widthOf(r) * scale;
    inner.push(words(8, y + high / 2, Math.min(3.4, high * 0.7), String(r), 'end'));
    for (const p of pieces.filter((q) => q.row === r)) {
      const text = `${p.piece} ${mm(p.length)}`;
      const size = Math.min(3, high * 0.6, (p.length * scale) / (text.length * 0.62));
      inner.push(
        rectangle(x(p.start), y, p.length * scale, high, wood),
        words(x(p.start + p.length / 2), y + high / 2, size, text),
      );
    }
    y += high;
    if (top.slabEnds.includes(r) && r !== rows.at(-1))
      inner.push(rectangle(x(0) - 2, y - 0.5, whole * scale + 4, 1, 'fill="#000"'));
  }
  for (const at of [top.spare / 2, whole - top.spare / 2])
    inner.push(
      `<line x1="${n(x(at))}" y1="0" x2="${n(x(at))}" y2="${n(y + 1)}" stroke="#000" stroke-width="0.4" stroke-dasharray="2 1.5"/>`,
    );
  return svg(sheet.width, y + 2, 'The rows of the top to scale', inner.join(''));
}
