import { drawing, type Place, type Shape } from '../../charts/drawing.js';
import { mm } from './salvage-caution.js';

interface Plan {
  readonly clamps: number;
  readonly spacing: number;
  readonly positions: readonly { readonly clamp: number; readonly position: number; readonly side: string }[];
}

/** The glue-up in plan: slab, outermost glue lines, clamps below (outline) and above (solid), and the spread of pressure. */
export function clampDrawing(
  given: {
    readonly length: number;
    readonly outerWidth: number;
    readonly pad: number;
    readonly padLength: number;
    readonly needReach: number | undefined;
  },
  plan: Plan,
) {
  const L = given.length * 1000;
  const w = given.outerWidth * 1000;
  const t = given.pad * 1000;
  const a = given.padLength * 1000;
  const W = Math.max(2.2 * w, given.needReach === undefined ? 3 * w : given.needReach * 1000 - 2 * t);
  const s = plan.spacing * 1000;
  // A bar never drawn thinner than a line that prints, nor so thick that neighbours touch.
  const bar = Math.min(s * 0.3, Math.max(L * 0.008, 20));
  const over = Math.max(W * 0.05, 12) + t;
  const places = [...plan.positions].sort((x, y) => x.clamp - y.clamp);
  const few = plan.clamps <= 40;
  const slab: Shape[] = [
    { kind: 'rectangle', x: 0, y: 0, width: L, height: w, fill: 'woodDark', hatch: 'grain' },
    { kind: 'rectangle', x: 0, y: w, width: L, height: W - 2 * w, fill: 'wood', hatch: 'grain' },
    { kind: 'rectangle', x: 0, y: W - w, width: L, height: w, fill: 'woodDark', hatch: 'grain' },
  ];
  const pads: Shape[] =
    t > 0 && few
      ? places.flatMap(({ position }) =>
          [-t, W].map((y): Shape => ({
            kind: 'rectangle',
            x: position * 1000 - Math.max(a, bar) / 2,
            y,
            width: Math.max(a, bar),
            height: t,
            fill: 'ground',
          })),
        )
      : [];
  const cones: Shape[] = few
    ? places.flatMap(({ position: p }) => {
        const x = p * 1000;
        // A line that reaches the end of the slab stops there.
        const left: Place = x - a / 2 - w - t >= 0 ? [x - a / 2 - w - t, w] : [0, x - a / 2 - t];
        const right: Place = x + a / 2 + w + t <= L ? [x + a / 2 + w + t, w] : [L, L - x - a / 2 - t];
        return [
          {
            kind: 'polyline',
            points: [left, [Math.max(x - a / 2, 0), -t], [Math.min(x + a / 2, L), -t], right],
            dashed: true,
            weight: 0.8,
          },
        ] as Shape[];
      })
    : [];
  const bars: Shape[] = places.map(({ position, side }) => {
    const x = position * 1000 - bar / 2;
    return side === 'above'
      ? { kind: 'rectangle', x, y: -over, width: bar, height: W + 2 * over, fill: 'accent', weight: 1.2 }
      : { kind: 'rectangle', x, y: -over, width: bar, height: W + 2 * over, fill: 'none', weight: 1.8 };
  });
  const every = Math.ceil(plan.clamps / 24);
  const names: Shape[] = places
    .filter((_, i) => i % every === 0)
    .map(({ clamp, position, side }) => ({
      kind: 'text',
      x: position * 1000,
      y: W + over,
      text: `${clamp}${side === 'above' ? 'a' : 'b'}`,
      dy: 9,
      size: plan.clamps > 16 ? 10 : 12,
    }));
  // Spacing is shown off to the right, where it cannot run into the distance from the end.
  const k = Math.floor(plan.clamps / 2) - (plan.clamps > 1 && plan.clamps < 4 ? 1 : 0);
  const dims: Shape[] = [
    { kind: 'dimension', from: [0, -over], to: [L, -over], text: mm(given.length), offset: -44 },
    { kind: 'dimension', from: [0, -over], to: [s / 2, -over], text: mm(plan.spacing / 2), offset: -16 },
    ...(plan.clamps > 1
      ? [
          {
            kind: 'dimension',
            from: [(k + 0.5) * s, -over],
            to: [(k + 1.5) * s, -over],
            text: mm(plan.spacing),
            offset: -16,
          } as const,
        ]
      : []),
  ];
  return drawing({
    title: `${plan.clamps} clamp${plan.clamps === 1 ? '' : 's'}, seen from above`,
    subtitle: 'b: below the slab (outline); a: above (solid). Thin dashes: spread of pressure.',
    description: `Clamps at ${places.map((p) => `${mm(p.position)} ${p.side}`).join(', ')}.`,
    shapes: [...slab, ...pads, ...cones, ...bars, ...names, ...dims],
  });
}
