// What butt joints take from the bending strength and stiffness of a top. A butt joint carries no bending: the row's share goes
// over to its neighbours by shear in the glue lines, and back again beyond the joint. Over a height t and a width w, the force
// in half the row is f t w / 4; two glue faces of half the height give back v t for each unit of length. The row is
// whole again after (f / v) w / 4 on each side. For f / v = 8, on the safe side of the characteristic values of EN 338, that
// is twice the row's width. A section's share is the width of its rows without a joint so near: (N - 1) / N
// where one row in N is jointed, the form of the butt-joint factor that a bridge code gives for laminated decks.
import { formula, variable } from '../../../engine/formula.js';
import type { Row } from './lay-up-problem.js';

/** Bending strength by shear strength, taken on the safe side. */
export const strengthRatio = 8;

export const reach = formula({
  symbol: 'd',
  result: variable('length', 'length on each side of a joint over which its row does not count'),
  expression: 'q*w/4',
  variables: {
    q: variable('ratio', 'bending strength by shear strength'),
    w: variable('length', 'width of the row'),
  },
  basis: 'estimate',
});

/** Stiffness goes with the cube of thickness and strength with its square: the cube root is the milder, so the square rules. */
export const thicknessLeft = formula({
  symbol: 't_b',
  result: variable('length', 'thickness to calculate sag and bending with'),
  expression: 't*sqrt(s)',
  variables: {
    t: variable('length', 'thickness of the top'),
    s: variable('share', 'share of the width without joints'),
  },
  basis: 'estimate',
});

/** The least share of the width, over all sections along the top, whose rows have no joint near. */
export function unjointedShare(rows: readonly Row[], jointing: number): number {
  const net = (row: Row): number => row.across - jointing;
  const total = rows.reduce((s, row) => s + net(row), 0);
  if (total <= 0) return 1;
  const zones = rows.flatMap((row) =>
    row.joints.map((x) => {
      const d = reach.evaluate({ q: strengthRatio, w: net(row) / 1e6 }) * 1e6;
      return { from: x - d, to: x + d, row };
    }),
  );
  // The share can only change where a zone begins or ends.
  let least = 1;
  for (const { from } of zones) {
    const jointed = new Set(zones.filter((z) => z.from <= from && from < z.to).map((z) => z.row));
    const whole = rows.reduce((s, row) => s + (jointed.has(row) ? 0 : net(row)), 0);
    least = Math.min(least, whole / total);
  }
  return least;
}
