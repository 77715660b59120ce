import {
  arc,
  box,
  disc,
  line,
  outline,
  ring,
  thin,
  type Fill,
  type Mark,
  type Point,
} from './model/marks.js';

type Figure = readonly Mark<never>[];

/** A board in oblique view: its front edge is `length` by `thickness`, its width runs back along `back`. */
export function plank([x, y]: Point, length: number, thickness: number, back: Point): Figure {
  const [bx, by] = back;
  return [
    outline('wood', [x, y], [x + length, y], [x + length + bx, y + by], [x + bx, y + by]),
    box(x, y, length, thickness),
    outline(
      'endGrain',
      [x + length, y],
      [x + length + bx, y + by],
      [x + length + bx, y + thickness + by],
      [x + length, y + thickness],
    ),
    ...[0.3, 0.6].map((t) =>
      ring([x + bx * t + length * 0.1, y + by * t], [x + bx * t + length * (0.95 - t / 2), y + by * t]),
    ),
  ];
}

/** Boards of one size upon one another in oblique view; `at` is the near left corner of the uppermost face. */
export const stack = (
  [x, y]: Point,
  length: number,
  thickness: number,
  back: Point,
  count: number,
): Figure => [
  ...plank([x, y], length, thickness, back),
  ...Array.from({ length: count - 1 }, (_, i) => {
    const top = y + (i + 1) * thickness;
    const end = x + length;
    const [bx, by] = back;
    return [
      box(x, top, length, thickness),
      outline(
        'endGrain',
        [end, top],
        [end + bx, top + by],
        [end + bx, top + by + thickness],
        [end, top + thickness],
      ),
    ];
  }).flat(),
];

/** Bench scales; `at` is the middle of the plate's upper face. */
export const scales = ([x, y]: Point, width = 90): Figure => [
  box(x - width / 2, y, width, 5, 'none'),
  line([x - 8, y + 5], [x - 14, y + 12]),
  line([x + 8, y + 5], [x + 14, y + 12]),
  box(x - width * 0.4, y + 12, width * 0.8, 30, 'none'),
  box(x - 17, y + 18, 34, 18, 'none'),
];

/** A thermometer whose bulb is at `at`. */
export const thermometer = ([x, y]: Point, height = 60): Figure => [
  disc([x, y], 7, 'solid'),
  line([x - 4, y - 6], [x - 4, y - height]),
  line([x + 4, y - 6], [x + 4, y - height]),
  line(...arc([x, y - height], 4, 180, 360)),
  line([x, y - 6], [x, y - height * 0.6]),
];

/** A round dial with a needle. */
export const dial = ([x, y]: Point, radius = 20): Figure => [
  disc([x, y], radius),
  ...[215, 270, 325].map((a) => {
    const [outer, inner] = [arc([x, y], radius - 2, a, a)[0], arc([x, y], radius - 6, a, a)[0]];
    return thin(outer as Point, inner as Point);
  }),
  line([x, y], arc([x, y], radius - 7, 300, 300)[0] as Point),
];

/** A tin, jar or pot with liquid up to a share of its height; `at` is the middle of its foot. */
export const tin = ([x, y]: Point, width: number, height: number, level = 0.7): Figure => [
  outline(
    'liquid',
    [x - width / 2, y - height * level],
    [x + width / 2, y - height * level],
    [x + width / 2, y],
    [x - width / 2, y],
  ),
  line([x - width / 2, y - height], [x - width / 2, y], [x + width / 2, y], [x + width / 2, y - height]),
];

/** A post, board or beam end seen on its end grain. */
export const endGrain = (x: number, y: number, width: number, height: number): Figure => [
  box(x, y, width, height, 'endGrain'),
];

/** The floor, or the ground under something: a line with short strokes below. */
export const floor = (from: number, to: number, y: number): Figure => [
  line([from, y], [to, y]),
  ...Array.from({ length: Math.floor((to - from) / 12) }, (_, i) =>
    ring([from + 8 + i * 12, y], [from + 2 + i * 12, y + 6]),
  ),
];

/** A support under a beam: a triangle whose tip is at `at`. */
export const support = ([x, y]: Point, size = 14, fill: Fill = 'none'): Figure => [
  outline(fill, [x, y], [x - size * 0.7, y + size], [x + size * 0.7, y + size]),
];

/** A screw that points down from the middle of its head at `at`. */
export function screw([x, y]: Point, length: number, thread: number, shank = 8, head = 18): Figure {
  const start = y + length - thread;
  return [
    outline(
      'solid',
      [x - head / 2, y],
      [x + head / 2, y],
      [x + shank / 2, y + head / 3],
      [x - shank / 2, y + head / 3],
    ),
    line([x - shank / 2, y + head / 3], [x - shank / 2, start]),
    line([x + shank / 2, y + head / 3], [x + shank / 2, start]),
    outline(
      'none',
      [x - shank * 0.35, start],
      [x + shank * 0.35, start],
      [x + shank * 0.35, y + length - 8],
      [x, y + length],
      [x - shank * 0.35, y + length - 8],
    ),
    ...Array.from({ length: Math.floor((thread - 10) / 7) }, (_, i) =>
      thin([x - shank / 2, start + 5 + i * 7], [x + shank / 2, start + 2 + i * 7]),
    ),
  ];
}
