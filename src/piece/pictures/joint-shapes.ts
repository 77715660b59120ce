// A joint drawn apart: both parts seen square to the cut, the second moved out of the first.
import type { Shape } from '../../charts/drawing.js';
import { dimension, polygon } from '../../charts/shapes.js';
import type { JointPlace } from '../joint-places.js';
import { sizeAlong, type Member } from '../member.js';

const mm = (metres: number): number => Math.round(metres * 1e5) / 100;
const text = (n: number): string => `${Math.round(n * 10) / 10}`;

/** Both parts in profile: along each runs the paper's width, the cut goes down from the upper edge of one and up into the other. */
export function jointShapes(place: JointPlace): Shape[] {
  const thick = (m: Member): number => mm(sizeAlong(m, place.normal));
  const [a, b] = [thick(place.a), thick(place.b)];
  const gap = Math.max(a, b) * 1.4;
  const butt = place.depth <= 0;
  return [
    ...profile(mm(place.widthInA), mm(place.depth), a, 0, 'up', place.a.part, butt),
    ...profile(mm(place.widthInB), mm(place.depth), b, a + gap, 'down', place.b.part, butt),
  ];
}

function profile(
  width: number,
  depth: number,
  thick: number,
  at: number,
  opens: 'up' | 'down',
  name: string,
  butt: boolean,
): Shape[] {
  const side = Math.max(width * 1.2, thick);
  const long = width + 2 * side;
  const flip = (y: number): number => at + (opens === 'up' ? y : thick - y);
  const outline: [number, number][] = butt
    ? [
        [0, 0],
        [long, 0],
        [long, thick],
        [0, thick],
      ]
    : [
        [0, 0],
        [long, 0],
        [long, thick],
        [side + width, thick],
        [side + width, thick - depth],
        [side, thick - depth],
        [side, thick],
        [0, thick],
      ];
  const up = opens === 'up' ? 1 : -1;
  return [
    polygon(
      outline.map(([x, y]): [number, number] => [x, flip(y)]),
      { fill: 'wood', label: name },
    ),
    ...(butt
      ? []
      : [
          dimension([side, flip(thick)], [side + width, flip(thick)], text(width), 18 * up),
          dimension([side + width, flip(thick - depth)], [side + width, flip(thick)], text(depth), -side / 3),
        ]),
    dimension([long, flip(0)], [long, flip(thick)], text(thick), opens === 'up' ? -18 : 18),
  ];
}
