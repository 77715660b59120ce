import { arc, type Mark, type Point } from './marks.js';
import { hatching, withGaps } from './hatching.js';
import type { SketchDefinition } from './sketch-definition.js';
import { boxesOf, letterRadius, type Head, type PlacedLetter, type Sheet, type Stroke } from './sheet.js';

type Lettered = Extract<Mark, { readonly field: string }>;

const plus = ([ax, ay]: Point, [bx, by]: Point, share = 1): Point => [ax + bx * share, ay + by * share];
const minus = ([ax, ay]: Point, [bx, by]: Point): Point => [ax - bx, ay - by];
const size = ([x, y]: Point): number => Math.hypot(x, y);
function unit(way: Point): Point {
  const length = size(way);
  return length === 0 ? [0, 0] : [way[0] / length, way[1] / length];
}

/** Free length between the middle of a letter and a line that comes to it upright or level. */
const gap = letterRadius + 2;
/** The same for a line that comes in the direction `way`, a unit vector: a letter's box is square. */
const gapTo = ([x, y]: Point): number => letterRadius / Math.max(Math.abs(x), Math.abs(y), 0.1) + 2;
/** Least length of a dimension line that holds its letter and both arrow heads. */
const leastForLetter = 2 * gap + 22;
/** Length of the tails of a dimension that is too short for arrow heads inside. */
const tail = 11;
const leastForHeads = 16;

/** The sketch with every line, arrow head and letter in its place. */
export function layOut(definition: SketchDefinition): Sheet {
  const pen = new Pen();
  for (const mark of definition.marks.flat()) pen.draw(mark);
  const { heads, letters, words } = pen;
  const sheet: Sheet = { height: definition.height, strokes: pen.strokes, heads, letters, words };
  const boxes = boxesOf(sheet).map(({ box }) => box);
  const strokes = sheet.strokes.flatMap((stroke) => [
    ...(stroke.weight === 'grain' ? withGaps(stroke, boxes) : [stroke]),
    ...(stroke.fill === 'endGrain' ? hatching(stroke.points).flatMap((s) => withGaps(s, boxes)) : []),
  ]);
  return { ...sheet, strokes };
}

class Pen {
  readonly strokes: Stroke[] = [];
  readonly heads: Head[] = [];
  readonly letters: PlacedLetter[] = [];
  readonly words: Sheet['words'][number][] = [];

  draw(mark: Mark): void {
    switch (mark.mark) {
      case 'path':
        this.strokes.push({ ...mark, field: undefined });
        break;
      case 'words':
        this.words.push(mark);
        break;
      case 'arrow':
        this.#line(mark.points, 'thin', undefined);
        this.#headAt(mark.points, undefined, false);
        break;
      case 'measure':
        this.#measure(mark);
        break;
      case 'turn':
        this.#turn(mark);
        break;
      case 'note':
        this.#note(mark);
        break;
      case 'push':
        this.#line([mark.from, plus(mark.to, unit(minus(mark.from, mark.to)), 5)], 'push', mark.field);
        this.#headAt([mark.from, mark.to], mark.field, true);
        this.#letter(
          mark,
          mark.letter ??
            plus(mark.from, unit(minus(mark.from, mark.to)), gapTo(unit(minus(mark.from, mark.to)))),
        );
    }
  }

  #line(points: readonly Point[], weight: Stroke['weight'], field: string | undefined): void {
    this.strokes.push({ points, closed: false, weight, fill: 'none', field });
  }

  #letter({ field }: Lettered, at: Point): void {
    this.letters.push({ field, at });
  }

  /** A head at the last of the points, pointing the way the line goes. */
  #headAt(points: readonly Point[], field: string | undefined, isBold: boolean): void {
    const tip = points.at(-1);
    const before = points.at(-2);
    if (tip && before) this.heads.push({ tip, way: unit(minus(tip, before)), isBold, field });
  }

  #measure(mark: Extract<Mark, { readonly mark: 'measure' }>): void {
    const { field, off } = mark;
    const from = plus(mark.from, off);
    const to = plus(mark.to, off);
    const way = unit(minus(to, from));
    const length = size(minus(to, from));
    for (const place of size(off) === 0 ? [] : [mark.from, mark.to])
      this.#line([plus(place, unit(off), 3), plus(plus(place, off), unit(off), 4)], 'extension', field);
    const isInside = length >= leastForHeads;
    const place = mark.letter ?? (length >= leastForLetter ? 0.5 : 'end');
    const reach = (isInside ? 0 : tail) + gapTo(way);
    const at: Point =
      typeof place === 'number'
        ? plus(from, way, length * place)
        : place === 'end'
          ? plus(to, way, reach)
          : place === 'start'
            ? plus(from, way, -reach)
            : place;
    this.#letter(mark, at);
    if (typeof place === 'number') {
      this.#line([from, plus(at, way, -gapTo(way))], 'measure', field);
      this.#line([plus(at, way, gapTo(way)), to], 'measure', field);
    } else this.#line([from, to], 'measure', field);
    if (!isInside) {
      this.#line([from, plus(from, way, -tail)], 'measure', field);
      this.#line([to, plus(to, way, tail)], 'measure', field);
    }
    const outward = isInside ? 1 : -1;
    this.heads.push({ tip: to, way: plus([0, 0], way, outward), isBold: false, field });
    this.heads.push({ tip: from, way: plus([0, 0], way, -outward), isBold: false, field });
  }

  #turn(mark: Extract<Mark, { readonly mark: 'turn' }>): void {
    const { apex, radius, from, to, field } = mark;
    const middle = (from + to) / 2;
    const onArc = arc(apex, radius, middle, middle)[0] as Point;
    const length = (Math.abs(to - from) * Math.PI * radius) / 180;
    const isOnArc = mark.letter === undefined && length >= leastForLetter;
    const half = isOnArc ? ((1.3 * gap) / radius) * (180 / Math.PI) : 0;
    const sign = Math.sign(to - from);
    const first = arc(apex, radius, middle - sign * half, from);
    const second = arc(apex, radius, middle + sign * half, to);
    this.#line(first, 'measure', field);
    this.#line(second, 'measure', field);
    if (length >= leastForHeads) {
      this.#headAt(first, field, false);
      this.#headAt(second, field, false);
    }
    const beside = arc(apex, radius + gap, middle, middle)[0] as Point;
    this.#letter(mark, mark.letter ?? (isOnArc ? onArc : beside));
  }

  #note(mark: Extract<Mark, { readonly mark: 'note' }>): void {
    this.#letter(mark, mark.at);
    if (mark.tip === undefined) return;
    const way = unit(minus(mark.tip, mark.at));
    this.#line([plus(mark.at, way, gapTo(way)), mark.tip], 'measure', mark.field);
    this.strokes.push({
      points: arc(mark.tip, 1.8, 0, 324),
      closed: true,
      weight: 'thin',
      fill: 'solid',
      field: mark.field,
    });
  }
}
