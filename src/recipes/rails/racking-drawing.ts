import { drawing, type Place } from '../../charts/drawing.js';
import { arrow, dimension, line, polyline, words } from '../../charts/shapes.js';

/** The frame to scale, pushed along its top, its sway enlarged. */
export function rackingDrawing(
  given: {
    readonly height: number;
    readonly width: number;
    readonly joint: string;
    readonly jointStiffness: number | undefined;
    readonly push: number;
  },
  sway: number,
) {
  const [h, L] = [given.height * 1000, given.width * 1000];
  const shown = h * 0.12;
  const braced = given.joint === 'braced';
  const upright: readonly Place[] = [[0, 0], [0, h], [L, h], [L, 0]]; // prettier-ignore
  return drawing({
    title: `Sway of the frame, ${given.jointStiffness === undefined ? `${given.joint} corners` : 'corners as given'}`,
    subtitle: 'Frame to scale, sway enlarged.',
    shapes: [
      polyline(upright, { dashed: true, weight: 1.2 }),
      polyline(leg(0, h, shown), { weight: 4 }),
      polyline(leg(L, h, shown), { weight: 4 }),
      polyline(rail(L, h, shown, braced), { weight: 4 }),
      ...(braced ? [line([0, 0], [L + shown, h], { weight: 3 })] : []),
      line([-60, 0], [L + 60, 0]),
      arrow([-h * 0.28, h], [-12, h]),
      words(-h * 0.28, h, `${given.push.toFixed(0)} N`, { align: 'right', dx: -6, bold: true }),
      dimension([L, h], [L + shown, h], `${(sway * 1000).toPrecision(3)} mm`, 18),
      dimension([0, 0], [L, 0], `${L.toFixed(0)} mm`, -24),
    ],
    maxHeight: 400,
  });
}

/** A leg as a cantilever's curve, held upright at neither end: enough to see which way it goes. */
const leg = (x: number, h: number, shown: number): Place[] =>
  Array.from({ length: 13 }, (_, i) => {
    const t = i / 12;
    return [x + shown * (1.5 * t - 0.5 * t ** 3), h * t];
  });

/** The top rail, bent in an S by its corners unless a brace holds them. */
const rail = (L: number, h: number, shown: number, braced: boolean): Place[] =>
  Array.from({ length: 25 }, (_, i) => [
    shown + (L * i) / 24,
    h - (braced ? 0 : 0.18 * shown * Math.sin((2 * Math.PI * i) / 24)),
  ]);
