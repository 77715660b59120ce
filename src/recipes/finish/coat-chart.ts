import { barChart } from '../../charts/bar-chart.js';
import type { ChartSpec } from '../../charts/chart-spec.js';
import { timeline } from '../../charts/timeline.js';
import { formatQuantity } from '../../units/format-quantity.js';

interface Coats {
  /** Mix for each coat, m³. */
  readonly perCoat: readonly number[];
  readonly area: number;
  readonly elapsed?: number | undefined;
}

const text = (v: number): string => formatQuantity({ kind: 'liquid', value: v }, { digits: 3 });

/** Coats on a time line where the drying time is known, else the mix for each coat as bars. */
export function coatChart(
  given: { readonly coats: number; readonly coatTime: number; readonly dryTime: number | undefined },
  answer: Coats,
): ChartSpec {
  const area = formatQuantity({ kind: 'area', value: answer.area }, { digits: 3 });
  if (given.dryTime !== undefined)
    return timeline({
      title: `${String(given.coats)} coat${given.coats === 1 ? '' : 's'} on ${area}`,
      ...coatTimes(answer, given.coatTime, given.dryTime),
    });
  return barChart({
    title: `Mix for each coat on ${area}`,
    of: '',
    value: { title: 'Mix', unit: 'mL' },
    bars: answer.perCoat.map((v, i) => ({ name: `coat ${String(i + 1)}`, value: v * 1e6, label: text(v) })),
  });
}

/** When each coat goes on and dries, in days for a long job, else in hours. */
function coatTimes(answer: Coats, coatTime: number, dryTime: number) {
  const long = (answer.elapsed as number) >= 72 * 3600;
  const unit = long ? 86400 : 3600;
  const step = coatTime + dryTime;
  return {
    unit: long ? 'days' : 'h',
    stretches: answer.perCoat.flatMap((v, i) => {
      const name = `coat ${String(i + 1)}, ${text(v)}`;
      const dry = (i * step + coatTime) / unit;
      return [
        { name, start: (i * step) / unit, end: dry },
        { name, start: dry, end: ((i + 1) * step) / unit, waiting: true },
      ];
    }),
  };
}
