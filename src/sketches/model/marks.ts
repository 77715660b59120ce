/** A place on the sheet of a sketch, which is 320 units wide: x to the right, y down. */
export type Point = readonly [x: number, y: number];

/** What a closed outline is filled with. End grain is hatched; wood and liquid are tinted. */
export type Fill = 'none' | 'wood' | 'endGrain' | 'liquid' | 'solid';
/** How a line is drawn: an edge, something lighter, something hidden or imagined, a bold line, or figure of the grain. */
export type Weight = 'edge' | 'thin' | 'dashed' | 'bold' | 'grain';

interface Path {
  readonly mark: 'path';
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly weight: Weight;
  readonly fill: Fill;
}
interface Arrow {
  readonly mark: 'arrow';
  readonly points: readonly Point[];
}
interface Words {
  readonly mark: 'words';
  readonly at: Point;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
}
/** A dimension line between two places, moved aside by `off`. */
interface Measure<Field extends string> {
  readonly mark: 'measure';
  readonly field: Field;
  readonly from: Point;
  readonly to: Point;
  readonly off: Point;
  readonly letter: LetterPlace;
}
/** An angle about an apex; degrees from the right, clockwise on the sheet. */
interface Turn<Field extends string> {
  readonly mark: 'turn';
  readonly field: Field;
  readonly apex: Point;
  readonly radius: number;
  readonly from: number;
  readonly to: number;
  readonly letter: Point | undefined;
}
/** A letter with a line to what it stands for; none where the letter lies on it. */
interface Note<Field extends string> {
  readonly mark: 'note';
  readonly field: Field;
  readonly at: Point;
  readonly tip: Point | undefined;
}
/** A force or motion: a bold arrow with the letter at its tail. */
interface Push<Field extends string> {
  readonly mark: 'push';
  readonly field: Field;
  readonly from: Point;
  readonly to: Point;
  /** Where the letter stands, if not at the arrow's tail. */
  readonly letter: Point | undefined;
}

/** Where the letter of a dimension line stands: in the line at a share of its length, beyond one of its ends, or at a place of its own. */
export type LetterPlace = number | 'start' | 'end' | Point | undefined;

/** One part of a sketch; `Field` names the fields that its letters stand for. */
export type Mark<Field extends string = string> =
  Path | Arrow | Words | Measure<Field> | Turn<Field> | Note<Field> | Push<Field>;

const path = (points: readonly Point[], weight: Weight, closed = false, fill: Fill = 'none'): Path => ({
  mark: 'path',
  points,
  closed,
  weight,
  fill,
});

/** An edge of something. */
export const line = (...points: readonly Point[]): Path => path(points, 'edge');
export const thin = (...points: readonly Point[]): Path => path(points, 'thin');
/** Something hidden, imagined, or as it was before. */
export const dashed = (...points: readonly Point[]): Path => path(points, 'dashed');
export const bold = (...points: readonly Point[]): Path => path(points, 'bold');
/** A line of the figure of wood; it gives way to letters. */
export const ring = (...points: readonly Point[]): Path => path(points, 'grain');

export const outline = (fill: Fill, ...points: readonly Point[]): Path => path(points, 'edge', true, fill);
/** A closed outline of something imagined, or as it was before. */
export const ghost = (...points: readonly Point[]): Path => path(points, 'dashed', true);

const corners = (x: number, y: number, width: number, height: number): Point[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];
export const box = (x: number, y: number, width: number, height: number, fill: Fill = 'wood'): Path =>
  outline(fill, ...corners(x, y, width, height));
export const ghostBox = (x: number, y: number, width: number, height: number): Path =>
  ghost(...corners(x, y, width, height));

/** Places along an arc; degrees from the right, clockwise on the sheet. */
export function arc([x, y]: Point, radius: number, from: number, to: number): Point[] {
  const steps = Math.max(2, Math.ceil(Math.abs(to - from) / 6));
  return Array.from({ length: steps + 1 }, (_, i) => {
    const a = ((from + ((to - from) * i) / steps) * Math.PI) / 180;
    return [x + radius * Math.cos(a), y + radius * Math.sin(a)];
  });
}

/** Places along a shallow curve from one place to another, whose middle stands `rise` aside (to the left of the way on the sheet). */
export function bend([x0, y0]: Point, [x1, y1]: Point, rise: number): Point[] {
  const length = Math.hypot(x1 - x0, y1 - y0);
  return Array.from({ length: 17 }, (_, i) => {
    const t = i / 16;
    const h = (4 * rise * t * (1 - t)) / length;
    return [x0 + (x1 - x0) * t + h * (y1 - y0), y0 + (y1 - y0) * t - h * (x1 - x0)];
  });
}

export const disc = (at: Point, radius: number, fill: Fill = 'none'): Path =>
  outline(fill, ...arc(at, radius, 0, 354));

/** Lines that show which way the grain runs in a rectangle. */
export function grain(
  x: number,
  y: number,
  width: number,
  height: number,
  way: 'across' | 'down' = 'across',
): Path[] {
  const along = way === 'across' ? width : height;
  const rows = Math.max(1, Math.floor((way === 'across' ? height : width) / 9));
  const gap = (way === 'across' ? height : width) / (rows + 1);
  return Array.from({ length: rows }, (_, i) => {
    const from = along * (0.06 + 0.1 * ((i * 7) % 4));
    const to = along * (0.94 - 0.12 * ((i * 5) % 3));
    const at = gap * (i + 1);
    return way === 'across'
      ? ring([x + from, y + at], [x + to, y + at])
      : ring([x + at, y + from], [x + at, y + to]);
  });
}

/** A motion without a letter of its own. */
export const arrow = (...points: readonly Point[]): Arrow => ({ mark: 'arrow', points });

/** A few short words; `at` is the middle of their height. */
export const words = (at: Point, text: string, anchor: Words['anchor'] = 'middle'): Words => ({
  mark: 'words',
  at,
  text,
  anchor,
});

export const measure = <Field extends string>(
  field: Field,
  from: Point,
  to: Point,
  off: Point = [0, 0],
  letter?: LetterPlace,
): Measure<Field> => ({ mark: 'measure', field, from, to, off, letter });

export const turn = <Field extends string>(
  field: Field,
  apex: Point,
  radius: number,
  from: number,
  to: number,
  letter?: Point,
): Turn<Field> => ({ mark: 'turn', field, apex, radius, from, to, letter });

export const note = <Field extends string>(field: Field, at: Point, tip?: Point): Note<Field> => ({
  mark: 'note',
  field,
  at,
  tip,
});

export const push = <Field extends string>(
  field: Field,
  from: Point,
  to: Point,
  letter?: Point,
): Push<Field> => ({ mark: 'push', field, from, to, letter });
