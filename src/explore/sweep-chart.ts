import { axisTitle, heading } from '../charts/axis.js';
import { barChart } from '../charts/bar-chart.js';
import { lineChart } from '../charts/line-chart.js';
import type { ChartSpec } from '../charts/chart-spec.js';
import { words } from '../engine/result-display.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import { number } from '../units/format-quantity.js';
import { axisUnit, type Column } from './frame-columns.js';
import type { Axis } from './sweep-axes.js';

const capital = (s: string): string => s.charAt(0).toUpperCase() + s.slice(1);

/** Line, family of lines, heat map or bars, by the number and kind of the swept inputs; undefined for more than three. */
export function sweepChart(
  r: AnyRecipe,
  axes: readonly Axis[],
  columns: readonly Column[],
  wanted: string,
): ChartSpec | undefined {
  const out = columns.find((c) => c.name === wanted) as Column;
  const numeric = axes.filter((a) => a.numeric && a.count > 1);
  const named = axes.filter((a) => !a.numeric || a.count === 1);
  const values = out.values as Float64Array;
  const y = { title: capital(words(out.name)), unit: axisUnit(out.unit) };
  const at = (picks: ReadonlyMap<string, number>): number | null => {
    let i = 0;
    for (const a of axes) i = i * a.count + (picks.get(a.name) ?? 0);
    const v = values[i] as number;
    return Number.isFinite(v) ? v : null;
  };
  if (axes.length === 1 && named.length === 1) {
    const a = named[0] as Axis;
    return barChart({
      title: r.title,
      of: capital(words(a.name)),
      value: y,
      bars: a.labels.flatMap((name, i) =>
        Number.isFinite(values[i])
          ? [{ name, value: values[i] as number, label: number(values[i] as number, 4) }]
          : [],
      ),
    });
  }
  // The family is told apart by the shorter axis, up to seven lines; beyond that a heat map.
  const family =
    named[0] ?? (numeric.length === 2 ? [...numeric].sort((a, b) => a.count - b.count)[0] : undefined);
  const x = numeric.find((a) => a !== family);
  if (axes.length === 1 && x) {
    return lineChart({
      title: r.title,
      x: xAxis(x, columns),
      y,
      series: [{ name: y.title, values: Array.from(x.values, (_, i) => at(new Map([[x.name, i]]))) }],
    });
  }
  if (axes.length === 2 && x && family && family.count <= 7) {
    return lineChart({
      title: r.title,
      subtitle: `by ${words(family.name)}`,
      x: xAxis(x, columns),
      y,
      series: family.labels.map((name, j) => ({
        name,
        values: Array.from(x.values, (_, i) =>
          at(
            new Map([
              [x.name, i],
              [family.name, j],
            ]),
          ),
        ),
      })),
    });
  }
  if (axes.length === 2 && numeric.length === 2) return heatMap(r, numeric as [Axis, Axis], columns, out);
  if (axes.length === 2 && named.length === 2) {
    const [a, b] = named as [Axis, Axis];
    return barChart({
      title: r.title,
      of: '',
      value: y,
      bars: a.labels.flatMap((n, i) =>
        b.labels.flatMap((m, j) => {
          const v = at(
            new Map([
              [a.name, i],
              [b.name, j],
            ]),
          );
          return v === null ? [] : [{ name: `${n}, ${m}`, value: v, label: number(v, 4) }];
        }),
      ),
    });
  }
  return undefined;
}

function xAxis(a: Axis, columns: readonly Column[]): { title: string; unit: string; values: number[] } {
  const c = columns.find((k) => k.name === a.name) as Column;
  // The column repeats the axis over the other inputs; its distinct values, in order, are the axis in the unit shown.
  return {
    title: capital(words(a.name)),
    unit: axisUnit(c.unit),
    values: [...new Set(c.values as Float64Array)].slice(0, a.count),
  };
}

function heatMap(
  r: AnyRecipe,
  [a, b]: readonly [Axis, Axis],
  columns: readonly Column[],
  out: Column,
): ChartSpec {
  const [ca, cb] = [a, b].map((x) => columns.find((c) => c.name === x.name) as Column) as [Column, Column];
  const n = out.values.length;
  const width = 620;
  const rows = Array.from({ length: n }, (_, i) => ({
    x: round(ca.values[i] as number),
    y: round(cb.values[i] as number),
    v: out.values[i] as number,
  })).filter((d) => Number.isFinite(d.v));
  const title = (c: Column): string => axisTitle(capital(words(c.name)), axisUnit(c.unit));
  return {
    ...heading(r.title, title(out), width),
    width,
    height: 340,
    autosize: { type: 'fit-x', contains: 'padding' },
    usermeta: { reckoner: { fluid: true } },
    data: { values: rows },
    mark: { type: 'rect', tooltip: true },
    encoding: {
      x: {
        field: 'x',
        type: 'ordinal',
        title: title(ca),
        axis: {
          labelOverlap: 'greedy',
          labelAngle: 0,
          grid: false,
          labelExpr: "format(datum.value, '.3~r')",
        },
      },
      y: {
        field: 'y',
        type: 'ordinal',
        title: title(cb),
        sort: 'descending',
        axis: { labelOverlap: 'greedy', grid: false, labelExpr: "format(datum.value, '.3~r')" },
      },
      // Cividis reads the same to colour-blind eyes and in grey.
      color: {
        field: 'v',
        type: 'quantitative',
        scale: { scheme: 'cividis' },
        legend: { title: axisUnit(out.unit) || words(out.name) },
      },
    },
  };
}

const round = (v: number): number => Number(v.toPrecision(5));
