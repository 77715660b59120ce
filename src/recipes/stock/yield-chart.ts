import type { ChartSpec } from '../../charts/chart-spec.js';
import { lineChart } from '../../charts/line-chart.js';
import { steps, totalsAt } from './pile-totals.js';
import { gives, type Dressed, type Dressing } from './survey.js';

/** Yield against common thickness, with its peak and the thickness taken. Metres and fractions. */
export function yieldChart(
  rows: readonly Dressed[],
  how: Dressing,
  answer: {
    readonly roughVolume: number;
    readonly commonThickness: number;
    readonly yield: number;
    readonly peakThickness: number;
    readonly peakYield: number;
  },
): ChartSpec {
  const at = steps(rows.filter(gives), how);
  // Each step is a cliff: just above it the board is gone.
  const xs = [0, ...at.flatMap((t) => [t, t + 2e-6])].slice(0, -1);
  const mark = (name: string, thickness: number, share: number) => ({
    x: thickness * 1000,
    y: share * 100,
    label: `${name}, ${Number((thickness * 1000).toFixed(1))} mm`,
  });
  return lineChart({
    title: 'Yield against common thickness',
    subtitle: 'It rises with thickness and falls where a board becomes too thin to join in.',
    x: { title: 'Common thickness', unit: 'mm', values: xs.map((t) => t * 1000) },
    y: { title: 'Yield', unit: '%', zero: true },
    series: [
      { name: 'yield', values: xs.map((t) => (100 * totalsAt(rows, t, how).volume) / answer.roughVolume) },
    ],
    interpolate: 'linear',
    points: false,
    marks: [
      mark('peak', answer.peakThickness, answer.peakYield),
      ...(Math.abs(answer.peakThickness - answer.commonThickness) > 1e-6
        ? [mark('taken', answer.commonThickness, answer.yield)]
        : []),
    ],
  });
}
