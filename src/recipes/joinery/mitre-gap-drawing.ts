import { drawing, type Place } from '../../charts/drawing.js';
import { dimension, line, polygon, words } from '../../charts/shapes.js';

/** The mitre in section, its gap drawn larger where it is small. Metres and radians in. */
export function mitreGapDrawing(of: {
  readonly thickness: number;
  readonly turn: number;
  readonly bevelError: number;
  readonly gap: number;
  readonly opensAt: string;
}) {
  const t = of.thickness * 1000;
  const half = of.turn / 2;
  const face = t / Math.cos(half);
  // Drawn as a gap of at least a sixth of the thickness, so that it can be seen.
  const real = 2 * Math.abs(of.bevelError);
  const times = real === 0 ? 1 : Math.max(1, Math.round(t / 6 / Math.max(face * real, 1e-9)));
  const open = Math.min(real * times, 0.5);
  const long = 3 * t;
  const outside = of.bevelError < 0;
  // The left board lies flat; its mitred face runs from the outside corner (0, 0) up to the inside one.
  const left: Place[] = [[-long, 0], [0, 0], [-t * Math.tan(half), t], [-long, t]]; // prettier-ignore
  // The right board is the left one mirrored in the mitre, then swung open about the edge that meets.
  const axis: Place = [-Math.sin(half), Math.cos(half)];
  const mirrored = left.map(([x, y]): Place => {
    const along = x * axis[0] + y * axis[1];
    return [2 * along * axis[0] - x, 2 * along * axis[1] - y];
  });
  const pivot: Place = outside ? [-t * Math.tan(half), t] : [0, 0];
  const swing = outside ? open : -open;
  const right = mirrored.map(([x, y]): Place => {
    const [dx, dy] = [x - pivot[0], y - pivot[1]];
    const [c, s] = [Math.cos(swing), Math.sin(swing)];
    return [pivot[0] + dx * c - dy * s, pivot[1] + dx * s + dy * c];
  });
  const shown = times > 1 ? `, drawn ${times} times as wide` : '';
  return drawing({
    title: 'The mitre in section',
    subtitle: `Gap of ${(of.gap * 1000).toFixed(2)} mm${shown}: ${of.opensAt.split(':', 1).join()}.`,
    shapes: [
      polygon(left, { fill: 'wood' }),
      polygon(right, { fill: 'woodDark' }),
      line([0, 0], [-t * Math.tan(half), t], { dashed: true, weight: 0.8 }),
      dimension([-long, 0], [-long, t], `${t.toFixed(0)} mm`, 16),
      words(0, 0, 'outside', { dy: 14, align: 'left' }),
    ],
    maxHeight: 360,
  });
}
