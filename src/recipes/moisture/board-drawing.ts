import { drawing, type Place, type Shape } from '../../charts/drawing.js';
import type { ChartSpec } from '../../charts/chart-spec.js';

/** A cupped board at its end, bark side up, its rings in it and its cup drawn deeper where it is shallow. Metres. */
export function boardDrawing(of: {
  readonly width: number;
  readonly ringRadius: number;
  readonly cup: number;
  readonly side: string;
  /** Whether the edges lift, so that the upper face goes hollow. */
  readonly upward: boolean;
}): ChartSpec {
  const [w, R, cup] = [of.width * 1000, of.ringRadius * 1000, of.cup * 1000];
  const t = Math.max(w * 0.14, 12);
  // Up to fifty times as deep, or until the cup is a twelfth of the width.
  const times = Math.max(1, Math.min(50, Math.round((w * 0.08) / Math.max(cup, 1e-6))));
  const lift = (x: number): number => (of.upward ? 1 : -1) * cup * times * ((2 * x) / w) ** 2;
  const xs = Array.from({ length: 41 }, (_, i) => -w / 2 + (w * i) / 40);
  const outline: Place[] = [
    ...xs.map((x): Place => [x, lift(x)]),
    ...xs.toReversed().map((x): Place => [x, lift(x) + t]),
  ];
  const rings = [0.25, 0.5, 0.75].map((k): Place[] => {
    // An arc about the pith below, as far as it lies in the board.
    const r = R + t * k;
    const height = (x: number): number => Math.sqrt(Math.max(0, r * r - x * x)) - R;
    return xs.filter((x) => height(x) > 0 && height(x) < t).map((x): Place => [x, height(x) + lift(x)]);
  });
  const top = Math.max(lift(w / 2), 0) + t;
  const drawnAs = times > 1 && cup > 1e-6 ? `, drawn ${times} times as deep` : '';
  const shapes: Shape[] = [
    { kind: 'polygon', points: outline, fill: 'wood' },
    ...rings
      .filter((points) => points.length > 1)
      .map((points): Shape => ({ kind: 'polyline', weight: 0.8, points })),
    { kind: 'dimension', from: [-w / 2, top], to: [w / 2, top], text: `${w.toFixed(0)} mm`, offset: 16 },
  ];
  return drawing({
    title: 'The board seen at its end',
    subtitle: `Bark side up. Cup of ${cup.toFixed(1)} mm${drawnAs}: ${of.side.split(':', 1).join()}.`,
    shapes,
  });
}
