/** Clamps from the middle outward, so that squeezed glue and a bowed strip can move; of two at one distance, the left first. */
export function positionsOf(clamps: number, spacing: number, length: number) {
  const fromMiddle = (p: { readonly position: number }): number => Math.abs(p.position - length / 2);
  return Array.from({ length: clamps }, (_, i) => ({
    clamp: i + 1,
    position: (i + 0.5) * spacing,
    side: i % 2 === 0 ? 'below' : 'above',
  })).sort((x, y) => fromMiddle(x) - fromMiddle(y));
}
