import { lineChart } from '../../charts/line-chart.js';
import type { ChartSpec } from '../../charts/chart-spec.js';
import { nullTrace } from '../../engine/trace.js';
import { moveAcross, ruleFor, saturationOf, type Moved, type Piece } from './movement-model.js';
import { cutWords } from './wood-state.js';

/** Width of a board or top against its moisture, both states marked, with the band of what is expected. */
export function widthChart(of: {
  readonly pieces: readonly Piece[];
  readonly from: number;
  readonly to: number;
  readonly finalWidth: number;
  readonly strips: boolean;
}): ChartSpec {
  const { pieces, from: a, to: b, finalWidth, strips } = of;
  const width = pieces.reduce((s, p) => s + p.width, 0);
  const top = Math.max(...pieces.map((p) => saturationOf(p.timber)));
  const [left, right] = [
    Math.max(0, Math.min(a, b, top) - 0.02),
    Math.min(top + 0.02, Math.max(a, b) + 0.02),
  ];
  const xs = Array.from({ length: 41 }, (_, i) => left + ((right - left) * i) / 40);
  // One rule for the whole curve, or it would jump where the range of the coefficients ends.
  const forced = pieces.map((p) =>
    ruleFor(p.timber, p.cut, Math.min(a, saturationOf(p.timber)), Math.min(b, saturationOf(p.timber))),
  );
  const at = (m: number): Moved[] => pieces.map((p, i) => moveAcross(nullTrace, p, a, m, forced[i]));
  const total = (list: readonly Moved[], k: 'change' | 'low' | 'high'): number =>
    (width + list.reduce((s, x) => s + x[k], 0)) * 1000;
  const curve = xs.map(at);
  // A wetter state than the chart holds stands at its edge and says so.
  const mark = (m: number, w: number, label: string) => ({
    x: Math.min(m, right) * 100,
    y: w * 1000,
    label: Math.round((m - right) * 1e9) > 0 ? `${label} at ${(m * 100).toFixed(0)} %` : label,
  });
  return lineChart({
    title: 'Width against moisture',
    subtitle: strips
      ? `${pieces.length} strips of mixed timber; band: what is expected`
      : `${pieces[0]?.timber.name}, ${pieces[0]?.cut.unknown ? 'sawing not known' : cutWords((pieces[0] as Piece).cut)}; band: what is expected`,
    x: { title: 'Moisture content', unit: '%', values: xs.map((x) => x * 100) },
    y: { title: 'Width', unit: 'mm' },
    series: [{ name: 'width', values: curve.map((c) => total(c, 'change')) }],
    bands: [
      {
        name: 'expected',
        low: curve.map((c) => total(c, 'low')),
        high: curve.map((c) => total(c, 'high')),
      },
    ],
    marks: [
      mark(a, width, `${(width * 1000).toFixed(1)} mm now`),
      ...(a === b ? [] : [mark(b, finalWidth, `${(finalWidth * 1000).toFixed(1)} mm`)]),
    ],
    points: false,
  });
}
