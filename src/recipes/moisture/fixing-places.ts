// Where the fixings of a top stand across its width.
import { InputError } from '../../units/input-error.js';
import { nanometres } from '../../engine/nanometres.js';

/** Distance of the held line from the edge that is measured from. */
export const heldAt = (g: {
  readonly width: number;
  readonly fixedAt: 'centre' | 'edge' | number;
}): number => (g.fixedAt === 'centre' ? g.width / 2 : g.fixedAt === 'edge' ? 0 : g.fixedAt);

/** Where the fixings stand, measured from one edge. @throws InputError */
export function placesOf(
  g: {
    width: number;
    positions: readonly number[] | undefined;
    spacing: number | undefined;
    edgeDistance: number;
  },
  fixed: number,
): number[] {
  if ((g.positions === undefined) === (g.spacing === undefined)) {
    throw new InputError({
      field: g.positions ? 'spacing' : 'positions',
      message: g.positions
        ? 'given together with positions; takes one of the two'
        : 'missing; takes a list of lengths from one edge such as "60 mm, 320 mm, 580 mm", or give spacing',
    });
  }
  if (g.positions) {
    g.positions.forEach((p, i) => {
      if (nanometres(p) > nanometres(g.width))
        throw new InputError({
          field: `positions[${i + 1}]`,
          message: `got ${(p * 1000).toFixed(1)} mm, takes a distance from one edge within the width of ${(g.width * 1000).toFixed(1)} mm`,
        });
    });
    return [...g.positions];
  }
  const spacing = g.spacing as number;
  if (g.width / spacing > 2000)
    throw new InputError({
      field: 'spacing',
      message: `got ${(spacing * 1000).toFixed(2)} mm, takes a spacing that gives 2000 fixings or fewer`,
    });
  // Steps of the spacing from the held line to either edge distance; the last binary digit of a quotient decides nothing.
  const steps = (to: number): number => Number(((to - fixed) / spacing).toFixed(9));
  const [first, last] = [Math.ceil(steps(g.edgeDistance)), Math.floor(steps(g.width - g.edgeDistance))];
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => fixed + (first + i) * spacing);
}
