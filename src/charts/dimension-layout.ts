/** Where a dimension line lies once moved sideways, in px with y upward; the label stands on its far side, reading upright. */
export function dimensionPlace(
  from: readonly [number, number],
  to: readonly [number, number],
  offset: number,
) {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy) || 1;
  const [nx, ny] = [-dy / length, dx / length];
  const moved = (p: readonly [number, number], by: number): [number, number] => [
    p[0] + nx * by,
    p[1] + ny * by,
  ];
  let angle = Math.atan2(dy, dx);
  if (angle > Math.PI / 2 + 1e-9) angle -= Math.PI;
  if (angle <= -Math.PI / 2 + 1e-9) angle += Math.PI;
  const middle: [number, number] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const side = offset < 0 ? -1 : 1;
  return {
    from: moved(from, offset),
    to: moved(to, offset),
    label: moved(middle, offset + side * 10),
    angle,
  };
}
