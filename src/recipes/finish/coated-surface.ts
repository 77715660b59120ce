// What is coated: an area, or a piece by its own dimensions and the faces that are done.
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import type { Trace } from '../../engine/trace.js';

const L = variable('length', 'length', { unit: 'mm' });
const W = variable('length', 'width', { unit: 'mm' });
const t = variable('length', 'thickness', { unit: 'mm' });
const faceArea = variable('area', 'area to coat', { unit: 'mm2' });

export const allFaces = formula({
  symbol: 'A',
  result: faceArea,
  expression: '2 (L W + L t + W t)',
  variables: { L, W, t },
  basis: 'geometry',
});
export const topAndEdges = formula({
  symbol: 'A',
  result: faceArea,
  expression: 'L W + 2 t * (L + W)',
  variables: { L, W, t },
  basis: 'geometry',
});
export const topAndBottom = formula({
  symbol: 'A',
  result: faceArea,
  expression: '2 L W',
  variables: { L, W },
  basis: 'geometry',
});
export const topOnly = formula({
  symbol: 'A',
  result: faceArea,
  expression: 'L W',
  variables: { L, W },
  basis: 'geometry',
});

/** A piece by its dimensions. */
export const piece = field.group(
  {
    length: field.length({ label: 'length of the piece', above: '0 mm', max: '100 m' }),
    width: field.length({ label: 'width of the piece', above: '0 mm', max: '100 m' }),
    thickness: field.length({ label: 'thickness of the piece', above: '0 mm', max: '10 m' }),
    faces: field.choice(['all', 'top and edges', 'top and bottom', 'top'], {
      label: 'which faces are coated',
      default: 'all',
    }),
    count: field.count({ label: 'how many such pieces', min: 1, max: 100_000, default: 1 }),
  },
  { label: 'dimensions of a piece', help: 'Length, width and thickness of the piece to be coated.' },
);
/** An area. */
export const surface = field.area({ label: 'an area to coat', above: '0 mm2', max: '100000 m2' });

/** A piece as read: metres. */
export interface Piece {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly faces: 'all' | 'top and edges' | 'top and bottom' | 'top';
  readonly count: number;
}

/** Area of one such piece, m². */
export function pieceArea(p: Piece, which: string, trace: Trace): number {
  const at = { L: p.length, W: p.width };
  const label = `area${which}${p.count > 1 ? ', one of them' : ''}, ${p.faces === 'all' ? 'all faces' : p.faces}`;
  switch (p.faces) {
    case 'all':
      return trace.evaluate(allFaces, { ...at, t: p.thickness }, label);
    case 'top and edges':
      return trace.evaluate(topAndEdges, { ...at, t: p.thickness }, label);
    case 'top and bottom':
      return trace.evaluate(topAndBottom, at, label);
    case 'top':
      return trace.evaluate(topOnly, at, label);
  }
}
