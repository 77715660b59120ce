// What is coated: an area, or a piece by its own dimensions and the faces that are done.
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import type { Work } from '../../recipe/work.js';

const L = letter('length', 'length', { in: 'mm' });
const W = letter('length', 'width', { in: 'mm' });
const t = letter('length', 'thickness', { in: 'mm' });
const faceArea = letter('area', 'area to coat', { in: 'mm2' });

export const allFaces = formula({
  symbol: 'A',
  gives: faceArea,
  text: '2 (L W + L t + W t)',
  where: { L, W, t },
  basis: 'geometry',
});
export const topAndEdges = formula({
  symbol: 'A',
  gives: faceArea,
  text: 'L W + 2 t * (L + W)',
  where: { L, W, t },
  basis: 'geometry',
});
export const topAndBottom = formula({
  symbol: 'A',
  gives: faceArea,
  text: '2 L W',
  where: { L, W },
  basis: 'geometry',
});
export const topOnly = formula({
  symbol: 'A',
  gives: faceArea,
  text: 'L W',
  where: { L, W },
  basis: 'geometry',
});

/** A piece by its dimensions. */
export const piece = field.group(
  {
    length: field.length({ says: 'length of the piece', above: '0 mm', max: '100 m' }),
    width: field.length({ says: 'width of the piece', above: '0 mm', max: '100 m' }),
    thickness: field.length({ says: 'thickness of the piece', above: '0 mm', max: '10 m' }),
    faces: field.choice(['all', 'top and edges', 'top and bottom', 'top'], {
      says: 'which faces are coated',
      default: 'all',
    }),
    count: field.count({ says: 'how many such pieces', min: 1, max: 100_000, default: 1 }),
  },
  { says: 'a piece by its dimensions' },
);
/** An area. */
export const surface = field.area({ says: 'an area to coat', above: '0 mm2', max: '100000 m2' });

/** A piece as read: metres. */
export interface Piece {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly faces: 'all' | 'top and edges' | 'top and bottom' | 'top';
  readonly count: number;
}

/** Area of one such piece, m². */
export function pieceArea(p: Piece, which: string, work: Work): number {
  const at = { L: p.length, W: p.width };
  const says = `area${which}${p.count > 1 ? ', one of them' : ''}, ${p.faces === 'all' ? 'all faces' : p.faces}`;
  switch (p.faces) {
    case 'all':
      return work.apply(allFaces, { ...at, t: p.thickness }, says);
    case 'top and edges':
      return work.apply(topAndEdges, { ...at, t: p.thickness }, says);
    case 'top and bottom':
      return work.apply(topAndBottom, at, says);
    case 'top':
      return work.apply(topOnly, at, says);
  }
}
