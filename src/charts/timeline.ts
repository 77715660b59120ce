import { inUnits } from '../units/unit-system.js';
import { axis, finite, frame, withHalo, heading } from './axis.js';
import { colours } from './theme.js';
import { ChartError, type ChartSpec } from './chart-spec.js';

/** One stretch of work or waiting; `start` and `end` in the timeline's unit. */
export interface Stretch {
  readonly name: string;
  readonly start: number;
  readonly end: number;
  /** Hands-on work is drawn solid; waiting (glue, finish, timber settling) hatched light with a dashed edge. */
  readonly waiting?: boolean;
  readonly note?: string;
}

export interface Timeline {
  readonly title?: string;
  readonly subtitle?: string;
  /** `h`, `min`, `days` */
  readonly unit: string;
  readonly stretches: readonly Stretch[];
  readonly width?: number;
}

/** Bars along a common clock, one row for each name, in the order first named. */
export function timeline(chart: Timeline): ChartSpec {
  check(chart);
  const width = chart.width ?? 620;
  const c = colours.light;
  const rows = chart.stretches.map((s) => ({
    ...s,
    name: inUnits(s.name),
    kind: s.waiting === true ? 'waiting' : 'work',
    note: s.note ?? '',
  }));
  const x = { field: 'start', ...axis('Time', chart.unit, { zero: true }) };
  const y = {
    field: 'name',
    type: 'nominal',
    sort: null,
    title: null,
    axis: { labelLimit: 300, grid: false },
  };
  const kinds = [...new Set(rows.map((r) => r.kind))];
  return {
    ...heading(chart.title, chart.subtitle, width),
    ...frame(width, { step: 30 }),
    data: { values: rows },
    layer: [
      {
        mark: { type: 'bar', height: { band: 0.62 }, cornerRadius: 2, tooltip: true },
        encoding: {
          x,
          x2: { field: 'end' },
          y,
          color: {
            field: 'kind',
            type: 'nominal',
            title: null,
            scale: { domain: ['work', 'waiting'], range: [c.series[6], c.faint] },
            legend:
              kinds.length > 1
                ? { symbolType: 'square', symbolStrokeColor: c.soft, symbolStrokeWidth: 1 }
                : null,
          },
          stroke: { value: c.soft },
          strokeDash: { condition: { test: "datum.kind === 'waiting'", value: [4, 3] }, value: [1, 0] },
        },
      },
      ...withHalo({
        mark: { type: 'text', align: 'left', dx: 5, color: c.ink },
        encoding: { x, y, text: { field: 'note' } },
      }),
    ],
  };
}

/** @throws ChartError on a time that is not finite, or an end before its start */
function check(chart: Timeline): void {
  for (const key of ['start', 'end'] as const)
    finite(
      `stretches.${key}`,
      chart.stretches.map((s) => s[key]),
    );
  const back = chart.stretches.findIndex((s) => s.end < s.start);
  if (back >= 0)
    throw new ChartError(
      `stretches[${back}]`,
      `ends at ${chart.stretches[back]?.end} before it starts at ${chart.stretches[back]?.start}`,
    );
}
