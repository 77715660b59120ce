import { drawing, type Place, type Shape } from '../../charts/drawing.js';
import { dimension, polyline, rectangle, words } from '../../charts/shapes.js';
import { mm } from './salvage-caution.js';

interface Plan {
  readonly clamps: number;
  readonly spacing: number;
  readonly positions: readonly { readonly clamp: number; readonly position: number; readonly side: string }[];
}

interface Given {
  readonly length: number;
  readonly outerWidth: number;
  readonly pad: number;
  readonly padLength: number;
  readonly head: number;
  readonly needReach: number | undefined;
}

/** Sizes of the drawing in mm: length and width of the slab, its outer strips, pads, clamps. */
interface Sizes {
  readonly length: number;
  readonly width: number;
  readonly outer: number;
  readonly pad: number;
  readonly padLength: number;
  readonly head: number;
  readonly bar: number;
  /** How far a clamp stands out past the edge of the slab. */
  readonly over: number;
}

/** The glue-up in plan: slab, outermost glue lines, clamps below (outline) and above (solid), and the spread of pressure. */
export function clampDrawing(given: Given, plan: Plan) {
  const sizes = sizesOf(given, plan);
  const places = [...plan.positions].sort((a, b) => a.clamp - b.clamp);
  const few = plan.clamps <= 40;
  return drawing({
    title: `${plan.clamps} clamp${plan.clamps === 1 ? '' : 's'}, seen from above`,
    subtitle: 'b: below the slab (outline); a: above (solid). Thin dashes: spread of pressure.',
    description: `Clamps at ${places.map((p) => `${mm(p.position)} ${p.side}`).join(', ')}.`,
    shapes: [
      ...slab(sizes),
      ...(few && sizes.pad > 0 ? places.flatMap((p) => pads(sizes, p.position * 1000)) : []),
      ...(few ? places.map((p) => pressure(sizes, p.position * 1000)) : []),
      ...places.map((p) => bar(sizes, p.position * 1000, p.side)),
      ...names(sizes, places),
      ...dimensions(sizes, given, plan),
    ],
  });
}

function sizesOf(given: Given, plan: Plan): Sizes {
  const length = given.length * 1000;
  const outer = given.outerWidth * 1000;
  const pad = given.pad * 1000;
  const reach = given.needReach === undefined ? 3 * outer : given.needReach * 1000 - 2 * pad;
  const width = Math.max(2.2 * outer, reach);
  return {
    length,
    width,
    outer,
    pad,
    padLength: given.padLength * 1000,
    head: given.head * 1000,
    // A bar never drawn thinner than a line that prints, nor so thick that neighbours touch.
    bar: Math.min(plan.spacing * 1000 * 0.3, Math.max(length * 0.008, 20)),
    over: Math.max(width * 0.05, 12) + pad,
  };
}

const slab = ({ length, width, outer }: Sizes): Shape[] => [
  rectangle(0, 0, length, outer, { fill: 'woodDark', hatch: 'grain' }),
  rectangle(0, outer, length, width - 2 * outer, { fill: 'wood', hatch: 'grain' }),
  rectangle(0, width - outer, length, outer, { fill: 'woodDark', hatch: 'grain' }),
];

function pads({ width, pad, padLength, bar }: Sizes, x: number): Shape[] {
  const long = Math.max(padLength, bar);
  return [-pad, width].map((y) => rectangle(x - long / 2, y, long, pad, { fill: 'ground' }));
}

/** Pressure spreads at 45 degrees from the head, through the pad and the board; a line that reaches an end stops there. */
function pressure({ length, outer, pad, padLength, head }: Sizes, x: number): Shape {
  const widened = head / 2 + pad;
  const edge = padLength === 0 ? widened : Math.min(Math.max(padLength, head) / 2, widened);
  const top = Math.min(head / 2, edge);
  const [from, to] = [x - edge - outer, x + edge + outer];
  const left: Place = from >= 0 ? [from, outer] : [0, Math.max(0, x - edge)];
  const right: Place = to <= length ? [to, outer] : [length, Math.max(0, length - x - edge)];
  const at = (place: number): number => Math.min(Math.max(place, 0), length);
  return polyline(
    [left, [at(x - edge), 0], [at(x - top), -pad], [at(x + top), -pad], [at(x + edge), 0], right],
    { dashed: true, weight: 0.8 },
  );
}

const bar = ({ width, bar, over }: Sizes, x: number, side: string): Shape =>
  rectangle(
    x - bar / 2,
    -over,
    bar,
    width + 2 * over,
    side === 'above' ? { fill: 'accent', weight: 1.2 } : { fill: 'none', weight: 1.8 },
  );

function names({ width, over }: Sizes, places: Plan['positions']): Shape[] {
  const every = Math.ceil(places.length / 24);
  return places
    .filter((_, i) => i % every === 0)
    .map(({ clamp, position, side }) =>
      words(position * 1000, width + over, `${clamp}${side === 'above' ? 'a' : 'b'}`, {
        dy: 9,
        size: places.length > 16 ? 10 : 12,
      }),
    );
}

/** Spacing is shown off to the right, where it cannot run into the distance from the end. */
function dimensions({ length, over }: Sizes, given: Given, { clamps, spacing }: Plan): Shape[] {
  const s = spacing * 1000;
  const k = Math.floor(clamps / 2) - (clamps > 1 && clamps < 4 ? 1 : 0);
  return [
    dimension([0, -over], [length, -over], mm(given.length), -44),
    dimension([0, -over], [s / 2, -over], mm(spacing / 2), -16),
    ...(clamps > 1 ? [dimension([(k + 0.5) * s, -over], [(k + 1.5) * s, -over], mm(spacing), -16)] : []),
  ];
}
