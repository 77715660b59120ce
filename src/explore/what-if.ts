import { axis, heading } from '../charts/axis.js';
import { colours } from '../charts/theme.js';
import { displayableChart } from '../charts/chart-display.js';
import type { ChartSpec } from '../charts/chart-spec.js';
import { InputError } from '../units/input-error.js';
import { unitOf } from '../units/unit.js';
import type { Kind } from '../units/kind.js';
import { words } from '../engine/result-display.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import type { Fields } from '../engine/field.js';
import type { Output, Outputs } from '../engine/output.js';
import type { Recipe } from '../engine/recipe.js';
import { isFormulaChain } from '../engine/recipe-registry.js';
import { capitalised } from '../units/capitalised.js';
import { withDisplay } from './display.js';
import type { NumberOutput, SweepInputs } from './explore-types.js';
import { outputNamed } from './option-names.js';
import { axisUnit, columnUnit, isNumberField } from './frame-columns.js';
import { axesOf } from './sweep-axes.js';
import { vegaExpressions } from './vega-expressions.js';
import { shownAt, sliders, tidy, type Slid } from './what-if-sliders.js';

/** A chart with sliders. */
export interface WhatIf {
  readonly recipe: string;
  readonly chart: ChartSpec;
}

/**
 * A chart whose x axis is the first input given a range, with a slider for every other one:
 * `whatIf(cutterMarks, { feed: range('2 m/min', '12 m/min'), spindleSpeed: range('3000 rpm', '9000 rpm'), knives: range(2, 6) })`.
 * A recipe made of formulas is compiled into the chart itself and recalculates in the page at every move of a slider,
 * with no kernel; a recipe that solves is tabled on a grid (at most 20 000 points) and the sliders snap to it.
 * @throws InputError on wrong inputs, no range, or more than five
 */
export function whatIf<F extends Fields, O extends Outputs>(
  recipe: Recipe<F, O>,
  inputs: SweepInputs<F>,
  options?: { readonly output?: NumberOutput<O> },
): WhatIf;
export function whatIf(
  recipe: AnyRecipe,
  inputs: Readonly<Record<string, unknown>>,
  options?: { readonly output?: string },
): WhatIf;
export function whatIf(
  recipe: unknown,
  inputs: Readonly<Record<string, unknown>>,
  options: { readonly output?: string } = {},
): WhatIf {
  const r = recipe as AnyRecipe;
  const output = outputNamed(r, options.output);
  if (r.isAsync) throw new InputError('whatIf takes a recipe that answers at once', r.name);
  const { axes, base } = axesOf(r, inputs, 11);
  if (axes.length > 5 || axes.some((a) => !a.numeric))
    throw new InputError(
      `whatIf: got ${axes.length} ranges, takes 1 to 5 of numbers: the x axis first, then a slider each`,
      r.name,
    );
  const slid = axes.map((a): Slid => {
    const unit = columnUnit(a.field.kind, a.ends, a.field.unit);
    const u = unitOf(a.field.kind as Kind, unit);
    return { axis: a, unit, scale: u.scale, offset: u.offset };
  });
  const spec = isFormulaChain(r)
    ? live(r, slid, base as Record<string, number>, output)
    : tabled(r, slid, base, output);
  const others = axes.slice(1).map((a) => words(a.name));
  const shown = shownAt(slid);
  const still = shown === '' ? spec : { ...spec, ...heading(r.title, stillLine(shown), 620) };
  const made: WhatIf = { recipe: r.name, chart: displayableChart(spec, still) };
  const text =
    shown === ''
      ? `${r.title}: a chart`
      : `${r.title}: a chart with sliders for ${others.join(', ')}, drawn at ${shown}`;
  return withDisplay(
    made,
    () => ({ 'text/plain': text }),
    () => spec,
    () => still,
  );
}

/** Under the title of a picture, whose sliders do not move. */
const stillLine = (shown: string): string => `Drawn at ${shown}. In a running notebook, sliders change this.`;

function plot(r: AnyRecipe, [x, ...others]: readonly Slid[], output: string, unit: string): ChartSpec {
  const sliders = others.length > 0;
  const o = r.outputs[output] as Output;
  return {
    ...heading(r.title, sliders ? 'Move the sliders below the chart' : undefined, 620),
    width: 620,
    height: 320,
    autosize: { type: 'fit-x', contains: 'padding' },
    usermeta: { reckoner: { fluid: true } },
    mark: { type: 'line', color: colours.light.series[0], tooltip: true, interpolate: 'monotone' },
    encoding: {
      x: { field: 'x', ...axis(capitalised(words((x as Slid).axis.name)), axisUnit((x as Slid).unit)) },
      y: { field: 'y', ...axis(capitalised(o.label), axisUnit(unit)) },
    },
  };
}

/** The formulas themselves, in Vega's expression language, recalculated by the page. */
function live(
  r: AnyRecipe,
  slid: readonly Slid[],
  base: Readonly<Record<string, number>>,
  output: string,
): ChartSpec {
  const x = slid[0] as Slid;
  const expression = new Map<string, string>();
  for (const [name, field] of Object.entries(r.inputs)) {
    const f = field;
    if (!f.symbol || !isNumberField(f)) continue;
    const s = slid.find((k) => k.axis.name === name);
    const source = s === undefined ? String(base[name]) : s === x ? 'datum.x' : `s_${name}`;
    expression.set(f.symbol, s === undefined ? `(${source})` : `(${source} * ${s.scale} + ${s.offset})`);
  }
  const transforms: object[] = [];
  for (const f of r.formulas) {
    const known = new Map(expression);
    const calculate = f.toJavaScript((s) => known.get(s) ?? `datum.v_${s}`, vegaExpressions);
    transforms.push({ calculate, as: `v_${f.symbol}` });
    expression.delete(f.symbol);
  }
  const o = r.outputs[output] as Output;
  const u0 = columnUnit(o.kind, [sampleOf(r, slid, base, output)], o.unit);
  const u = unitOf(o.kind as Kind, u0);
  transforms.push({ calculate: `(datum.v_${o.symbol} - (${u.offset})) / ${u.scale}`, as: 'y' });
  const values = Array.from(x.axis.values as ArrayLike<number>, (v) => (v - x.offset) / x.scale);
  const [from, to] = [values[0] as number, values[values.length - 1] as number];
  const n = x.axis.field.kind === 'count' ? Math.abs(to - from) : 80;
  return {
    ...plot(r, slid, output, u0),
    params: sliders(slid, 'fine'),
    data: { values: Array.from({ length: n + 1 }, (_, i) => ({ x: tidy(from + ((to - from) * i) / n) })) },
    transform: transforms,
  };
}

function sampleOf(
  r: AnyRecipe,
  slid: readonly Slid[],
  base: Readonly<Record<string, unknown>>,
  output: string,
): number {
  const last = Object.fromEntries(slid.map((s) => [s.axis.name, s.axis.at(Math.floor(s.axis.count / 2))]));
  return (r.evaluate({ ...base, ...last }) as Record<string, number>)[output] as number;
}

function tabled(
  r: AnyRecipe,
  slid: readonly Slid[],
  base: Readonly<Record<string, unknown>>,
  output: string,
): ChartSpec {
  const x = slid[0] as Slid;
  const n = slid.reduce((a, s) => a * s.axis.count, 1);
  if (n > 20_000)
    throw new InputError(
      `whatIf: ${n} points to table, takes at most 20 000; give ranges fewer steps, such as range(a, b, 7)`,
      r.name,
    );
  const o = r.outputs[output] as Output;
  const rows: Record<string, number>[] = [];
  for (let i = 0; i < n; i++) {
    const point: Record<string, unknown> = { ...base };
    const row: Record<string, number> = {};
    let k = i;
    for (const s of slid) {
      const v = s.axis.at(k % s.axis.count) as number;
      k = Math.floor(k / s.axis.count);
      point[s.axis.name] = v;
      row[s === x ? 'x' : `k_${s.axis.name}`] = tidy((v - s.offset) / s.scale);
    }
    const y = (r.evaluate(point) as Record<string, number | undefined>)[output];
    if (y !== undefined) rows.push({ ...row, y });
  }
  const unit = columnUnit(
    o.kind,
    rows.map((d) => d['y'] as number),
    o.unit,
  );
  const u = unitOf(o.kind as Kind, unit);
  const params = sliders(slid, 'grid');
  const near = slid.slice(1).map((s) => {
    const step = (params.find((p) => p.name === `s_${s.axis.name}`)?.bind as { step: number }).step;
    return `abs(datum.k_${s.axis.name} - s_${s.axis.name}) < ${step / 2}`;
  });
  return {
    ...plot(r, slid, output, unit),
    params,
    data: { values: rows.map((d) => ({ ...d, y: tidy(((d['y'] as number) - u.offset) / u.scale) })) },
    transform: near.length > 0 ? [{ filter: near.join(' && ') }] : [],
  };
}
