import { lineChart } from '../../charts/line-chart.js';
import type { ChartSpec } from '../../charts/chart-spec.js';
import { monthNames } from '../../materials/climate.js';

interface Month {
  readonly airMoisture: number;
  readonly moisture: number;
  readonly width: number;
}

const months = Array.from({ length: 12 }, (_, i) => i + 1);

/** Two panels over one year: what the air asks for and what the wood has above, its width below. */
export function yearChart(of: {
  readonly title: string;
  readonly place: string;
  readonly months: readonly Month[];
}): ChartSpec {
  const x = { title: '', values: months, domain: [1, 12] as const };
  const upper = lineChart({
    title: of.title,
    subtitle: of.place,
    x,
    y: { title: 'Moisture', unit: '%' },
    series: [
      { name: 'what the air asks for', values: of.months.map((m) => m.airMoisture * 100) },
      { name: 'moisture of the wood', values: of.months.map((m) => m.moisture * 100) },
    ],
    points: false,
    width: 540,
    height: 200,
  });
  const widths = of.months.map((m) => m.width * 1000);
  const [least, most] = [Math.min(...widths), Math.max(...widths)];
  const lower = lineChart({
    x,
    y: { title: 'Width', unit: 'mm' },
    series: [{ name: 'width', values: widths }],
    rules:
      Math.round((most - least) * 1e6) > 0
        ? [
            { y: most, label: `widest ${most.toFixed(1)} mm` },
            { y: least, label: `narrowest ${least.toFixed(1)} mm` },
          ]
        : [],
    width: 540,
    height: 200,
  });
  const { title, ...top } = byMonth(upper) as { title: unknown };
  // Legends and colours belong to each panel of its own.
  return {
    title,
    vconcat: [top, byMonth(lower)],
    spacing: 18,
    resolve: { scale: { color: 'independent', strokeDash: 'independent', shape: 'independent' } },
  };
}

/** Letters of the months along x in place of 1 to 12. */
function byMonth(spec: ChartSpec): ChartSpec {
  const label = `${JSON.stringify(monthNames.map((m) => m.slice(0, 3)))}[datum.value - 1]`;
  const layers = (spec['layer'] as ChartSpec[]).map((layer) => {
    const encoding = layer['encoding'] as { x?: ChartSpec } | undefined;
    if (encoding?.x?.['field'] !== 'x') return layer;
    return {
      ...layer,
      encoding: {
        ...encoding,
        x: { ...encoding.x, title: null, axis: { values: months, labelExpr: label } },
      },
    };
  });
  return { ...spec, layer: layers };
}
