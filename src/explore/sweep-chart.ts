import { axisTitle, heading } from '../charts/axis.js';
import { barChart } from '../charts/bar-chart.js';
import { lineChart } from '../charts/line-chart.js';
import type { ChartSpec } from '../charts/chart-spec.js';
import { words } from '../engine/result-display.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import { number } from '../units/format-quantity.js';
import { capitalised } from '../units/capitalised.js';
import { axisUnit, type Column } from './frame-columns.js';
import type { Axis } from './sweep-axes.js';

/** What is drawn: the output wanted, at every point of the swept inputs. */
interface Drawn {
  readonly recipe: AnyRecipe;
  readonly axes: readonly Axis[];
  readonly columns: readonly Column[];
  readonly out: Column;
}

/** Line, family of lines, heat map or bars, by the number and kind of the swept inputs; undefined for more than two. */
export function sweepChart(
  r: AnyRecipe,
  axes: readonly Axis[],
  columns: readonly Column[],
  wanted: string,
): ChartSpec | undefined {
  const out = columns.find((c) => c.name === wanted) as Column;
  const drawn = { recipe: r, axes, columns, out };
  const numeric = axes.filter((a) => a.numeric && a.count > 1);
  const named = axes.filter((a) => !a.numeric || a.count === 1);
  const [n0, n1] = numeric;
  const [m0, m1] = named;
  if (axes.length === 1) return n0 ? lines(drawn, n0, undefined) : bars(drawn, m0 as Axis, undefined);
  if (axes.length !== 2) return undefined;
  if (m0 && m1) return bars(drawn, m0, m1);
  // The family is distinguished by the shorter axis, up to seven lines; beyond that a heat map.
  const [first, second] = [n0, n1] as [Axis, Axis];
  const family = m0 ?? (second.count < first.count ? second : first);
  const x = family === first ? second : first;
  if (family.count <= 7) return lines(drawn, x, family);
  return m0 ? undefined : heatMap(r, [first, second], columns, out);
}

/** The answer where each of the axes named stands at the place given; null where there is none. */
function valueAt({ axes, out }: Drawn, places: ReadonlyMap<string, number>): number | null {
  let i = 0;
  for (const a of axes) i = i * a.count + (places.get(a.name) ?? 0);
  const v = out.values[i] as number;
  return Number.isFinite(v) ? v : null;
}

const yAxis = ({ out }: Drawn): { title: string; unit: string } => ({
  title: capitalised(words(out.name)),
  unit: axisUnit(out.unit),
});

function lines(drawn: Drawn, x: Axis, family: Axis | undefined): ChartSpec {
  const y = yAxis(drawn);
  const values = (j: number): (number | null)[] =>
    Array.from(x.values, (_, i) =>
      valueAt(drawn, new Map([[x.name, i], ...(family ? [[family.name, j] as const] : [])])),
    );
  return lineChart({
    title: drawn.recipe.title,
    ...(family ? { subtitle: `by ${words(family.name)}` } : {}),
    x: xAxis(x, drawn.columns),
    y,
    series: (family?.labels ?? [y.title]).map((name, j) => ({ name, values: values(j) })),
  });
}

function bars(drawn: Drawn, a: Axis, b: Axis | undefined): ChartSpec {
  const bar = (name: string, places: readonly (readonly [string, number])[]) => {
    const value = valueAt(drawn, new Map(places));
    return value === null ? [] : [{ name, value, label: number(value, 4) }];
  };
  return barChart({
    title: drawn.recipe.title,
    of: b ? '' : capitalised(words(a.name)),
    value: yAxis(drawn),
    bars: a.labels.flatMap((n, i) =>
      b
        ? b.labels.flatMap((m, j) =>
            bar(`${n}, ${m}`, [
              [a.name, i],
              [b.name, j],
            ]),
          )
        : bar(n, [[a.name, i]]),
    ),
  });
}

function xAxis(a: Axis, columns: readonly Column[]): { title: string; unit: string; values: number[] } {
  const c = columns.find((k) => k.name === a.name) as Column;
  // The column repeats the axis over the other inputs; its distinct values, in order, are the axis in the unit shown.
  return {
    title: capitalised(words(a.name)),
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
  const title = (c: Column): string => axisTitle(capitalised(words(c.name)), axisUnit(c.unit));
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
