// Plan, front, end and section of a piece as shapes in millimetres.
import type { Shape } from '../../charts/drawing.js';
import { dimension, line, polygon, rectangle } from '../../charts/shapes.js';
import type { Member } from '../member.js';
import type { FixingPlace } from '../top-fixings.js';

/** What the pictures are drawn from; the top in mm, members and fixings in metres. */
export interface Drawn {
  readonly top: {
    readonly length: number;
    readonly width: number;
    readonly thickness: number;
    readonly endHeight: number;
  };
  readonly height: number;
  readonly members: readonly Member[];
  readonly fixings: readonly FixingPlace[];
}

const mm = (metres: number): number => Math.round(metres * 1e5) / 100;
const text = (n: number): string => `${Math.round(n)}`;

/** A part seen along one axis; a part that rises is drawn sloping. */
function seen(m: Member, across: 'x' | 'y', up: 'y' | 'z', dashed: boolean): Shape {
  const [left, right] = [mm(m[across][0]), mm(m[across][1])];
  const [low, high] = [mm(m[up][0]), mm(m[up][1])];
  const rise = mm(m.rise);
  if (rise > 0 && up === 'z' && m.runs === across) {
    const deep = high - low - rise;
    return polygon(
      [
        [left, low],
        [right, low + rise],
        [right, low + rise + deep],
        [left, low + deep],
      ],
      { fill: dashed ? 'none' : 'wood', dashed },
    );
  }
  return rectangle(left, low, right - left, high - low, {
    fill: dashed ? 'none' : 'wood',
    dashed,
    label: m.part,
  });
}

/** Members from the farthest to the nearest along an axis. */
const farFirst = (list: readonly Member[], axis: 'x' | 'y'): Member[] =>
  [...list].sort((a, b) => b[axis][0] - a[axis][0]);

const distinctNumbers = (list: readonly number[]): number[] =>
  [...new Set(list.map((n) => Math.round(n)))].sort((a, b) => a - b);

/** Dimensions from one place to the next along a level line. */
function chain(places: readonly number[], at: number, offset: number): Shape[] {
  return places
    .slice(1)
    .map((to, i) => dimension([places[i] as number, at], [to, at], text(to - (places[i] as number)), offset));
}

/** Dimensions from one height to the next along an upright line. */
const upright = (heights: readonly number[], at: number, offset: number): Shape[] =>
  heights
    .slice(1)
    .map((to, i) =>
      dimension([at, heights[i] as number], [at, to], text(to - (heights[i] as number)), offset),
    );

const middles = (list: readonly Member[], axis: 'x' | 'y'): number[] =>
  list.map((m) => (mm(m[axis][0]) + mm(m[axis][1])) / 2);

export function planShapes({ top, members, fixings }: Drawn): Shape[] {
  const legs = members.filter((m) => m.role === 'leg');
  return [
    rectangle(0, 0, top.length, top.width, { fill: 'wood', hatch: 'grain' }),
    ...members.filter((m) => m.role !== 'leg').map((m) => seen(m, 'x', 'y', true)),
    ...legs.map((m) => seen(m, 'x', 'y', true)),
    ...fixings.map((f): Shape => ({
      kind: 'circle',
      x: mm(f.x),
      y: mm(f.y),
      radius: f.kind === 'slotted' ? 9 : 6,
      fill: f.kind === 'slotted' ? 'ground' : 'accent',
    })),
    ...chain(distinctNumbers([0, ...middles(legs, 'x'), top.length]), 0, -30),
    dimension([0, 0], [top.length, 0], text(top.length), -62),
    ...upright(distinctNumbers([0, ...middles(legs, 'y'), top.width]), top.length, -30),
    dimension([top.length, 0], [top.length, top.width], text(top.width), -62),
  ];
}

/** The top seen from the front or the end, with the ends of a waterfall. */
function topSeen({ top, height }: Drawn, size: number, ends: boolean): Shape[] {
  const low = height - top.thickness;
  const fall = ends ? top.endHeight : 0;
  return [
    rectangle(0, low, size, top.thickness, { fill: 'wood', hatch: 'grain' }),
    ...(fall > 0
      ? [
          rectangle(0, height - fall, top.thickness, fall - top.thickness, {
            fill: 'wood',
            hatch: 'grainUp',
          }),
          rectangle(size - top.thickness, height - fall, top.thickness, fall - top.thickness, {
            fill: 'wood',
            hatch: 'grainUp',
          }),
        ]
      : []),
  ];
}

function elevation(drawn: Drawn, axis: 'x' | 'y', size: number): Shape[] {
  const other = axis === 'x' ? 'y' : 'x';
  const { height, top, members } = drawn;
  const legs = members.filter((m) => m.role === 'leg' || m.role === 'foot');
  const edges = [...legs.flatMap((m) => [mm(m[axis][0]), mm(m[axis][1])])];
  const [least, most] = [Math.min(0, ...edges), Math.max(size, ...edges)];
  const levels = distinctNumbers([
    0,
    ...members
      .filter((m) => m.role !== 'leg' && m.rise === 0 && m.runs === axis)
      .flatMap((m) => [mm(m.z[0])]),
    height - top.thickness,
    height,
  ]);
  return [
    ...farFirst(members, other).map((m) => seen(m, axis, 'z', false)),
    ...topSeen(drawn, size, axis === 'x'),
    line([least - 60, 0], [most + 60, 0]),
    ...chain(distinctNumbers([0, ...middles(legs, axis), size]), 0, -30),
    dimension([0, 0], [size, 0], text(size), -62),
    ...upright(levels, most, -30),
    dimension([most, 0], [most, height], text(height), -62),
  ];
}

export const frontShapes = (drawn: Drawn): Shape[] => elevation(drawn, 'x', drawn.top.length);
export const endShapes = (drawn: Drawn): Shape[] => elevation(drawn, 'y', drawn.top.width);

/** What a saw across the middle of the piece would cut, hatched; what stands behind it in outline. */
export function sectionShapes(drawn: Drawn): Shape[] {
  const { top, height, members } = drawn;
  const at = top.length / 2;
  const cut = members.filter((m) => mm(m.x[0]) <= at && mm(m.x[1]) >= at);
  const behind = members.filter((m) => mm(m.x[0]) > at);
  return [
    ...behind.map((m) => seen(m, 'y', 'z', true)),
    ...cut.map((m) =>
      rectangle(mm(m.y[0]), mm(m.z[0]), mm(m.y[1]) - mm(m.y[0]), mm(m.z[1]) - mm(m.z[0]), {
        fill: 'wood',
        hatch: 'waste',
      }),
    ),
    rectangle(0, height - top.thickness, top.width, top.thickness, { fill: 'wood', hatch: 'waste' }),
    line([-60, 0], [top.width + 60, 0]),
    dimension([0, height], [top.width, height], text(top.width), 24),
    ...upright([0, height - top.thickness, height], top.width, -34),
  ];
}
