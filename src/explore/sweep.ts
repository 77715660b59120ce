import type { ChartSpec } from '../charts/types.js';
import { shownChart } from '../charts/show.js';
import { renderSvg } from '../charts/svg.js';
import { toQuantity } from '../quantities/parse.js';
import type { Kind } from '../quantities/kind.js';
import { Refusal, nearest, shown } from '../quantities/refusal.js';
import { number } from '../quantities/format.js';
import type { RecipeEntry } from '../recipe/entry.js';
import type { Field, Fields, Given } from '../recipe/field.js';
import type { Outputs } from '../recipe/output.js';
import { escapeHtml, words } from '../recipe/display.js';
import { loopOf, type LongRecipe, type Recipe } from '../recipe/recipe.js';
import {
  axisUnit,
  columnUnit,
  inUnit,
  isNumberField,
  numberOutputs,
  quantityPart,
  type Column,
} from './columns.js';
import { frame, type Frame } from './frame.js';
import { Each, Range, rangeFromText } from './range.js';
import { sweepChart } from './sweep-chart.js';
import { inParts, type Watch } from './watch.js';

/** One swept input: its values in base units, or the things named, with the labels people read. */
export interface Axis {
  readonly name: string;
  readonly field: Field;
  readonly values: ArrayLike<unknown>;
  readonly labels: readonly string[];
  readonly numeric: boolean;
}

export interface SweepOptions extends Watch {
  /** Values a range is cut into when it does not say; default 61 for one range, 25 each for several. */
  readonly steps?: number;
  /** The output drawn; default the first that is a number. */
  readonly output?: string;
}

/** What a sweep gives: typed columns, one row a combination. */
export interface Sweep {
  readonly recipe: string;
  readonly columns: readonly Column[];
  readonly rows: number;
  readonly chart: ChartSpec | undefined;
  /** The column called `name`. @throws Refusal */
  column(name: string): Column;
  /** The same as a danfojs data frame. */
  frame(): Promise<Frame>;
  toMarkdown(): string;
  toJSON(): {
    recipe: string;
    columns: Record<string, { unit: string | undefined; values: readonly (number | string)[] }>;
  };
}

const most = 5_000_000;

/**
 * Reckons a recipe over ranges of one or several inputs: `sweep(cutterMarks, { feed: range('4 m/min', '12 m/min'), knives:
 * each([2, 3, 4]), spindleSpeed: '6000 rpm' })`. Inputs not given take their defaults.
 * @throws Refusal on wrong inputs, or on more than 5 000 000 combinations
 */
export async function sweep<F extends Fields, O extends Outputs>(
  recipe: Recipe<F, O> | LongRecipe<F, O> | RecipeEntry,
  inputs: Given<F> | Readonly<Record<string, unknown>>,
  options: SweepOptions = {},
): Promise<Sweep> {
  const r = recipe as unknown as RecipeEntry;
  const { axes, base } = axesOf(r, inputs as Readonly<Record<string, unknown>>, options.steps);
  const names = numberOutputs(r.outputs);
  const wanted = options.output ?? names[0];
  if (wanted === undefined || !names.includes(wanted))
    throw new Refusal(
      { field: 'output', says: `got ${shown(options.output)}, takes one of ${names.join(', ')}` },
      r.name,
    );
  const n = axes.reduce((a, x) => a * x.values.length, 1);
  if (n > most) throw new Refusal(`sweep: ${n} combinations, takes at most ${most}; use fewer steps`);
  const inputColumns: Record<string, Float64Array> = {};
  const picks = axes.map((axis, k) => {
    const every = axes.slice(k + 1).reduce((a, x) => a * x.values.length, 1);
    if (axis.numeric) {
      if (axis.values instanceof Float64Array && axis.values.length === n) {
        inputColumns[axis.name] = axis.values;
        return (i: number): number => i;
      }
      const column = new Float64Array(n);
      // Written block by block: a division for each of a million points would cost more than the formula.
      const values = axis.values as ArrayLike<number>;
      for (let i = 0, k = 0; i < n; k = (k + 1) % values.length) {
        const v = values[k] as number;
        for (const end = i + every; i < end; i++) column[i] = v;
      }
      inputColumns[axis.name] = column;
    }
    return (i: number): number => Math.floor(i / every) % axis.values.length;
  });
  const outs = Object.fromEntries(names.map((name) => [name, new Float64Array(n)]));
  const loop = axes.every((a) => a.numeric)
    ? loopOf(
        r,
        base,
        axes.map((a) => a.name),
        names,
      )
    : undefined;
  if (loop)
    await inParts(options, n, 'reckoning', (start, end) => {
      loop(end - start, partsOf(inputColumns, start, end), partsOf(outs, start, end));
    });
  else await pointByPoint(r, base, axes, picks, n, outs, options);
  const columns: Column[] = [
    ...axes.map((a, k): Column => {
      if (!a.numeric)
        return {
          name: a.name,
          says: a.field.says,
          unit: undefined,
          values: Array.from(
            { length: n },
            (_, i) => a.labels[(picks[k] as (i: number) => number)(i)] as string,
          ),
        };
      const column = inputColumns[a.name] as Float64Array;
      const unit = columnUnit(a.field.kind, a.values as ArrayLike<number>, a.field.unit);
      return { name: a.name, says: a.field.says, unit, values: inUnit(a.field.kind, column, unit) };
    }),
    ...names.map((name): Column => {
      const o = r.outputs[name] as Outputs[string];
      const column = outs[name] as Float64Array;
      const unit = columnUnit(o.kind, column, o.unit);
      return { name, says: o.says, unit, values: inUnit(o.kind, column, unit, column) };
    }),
  ];
  return makeSweep(r, axes, columns, n, wanted);
}

/** Splits what was given into the swept axes and one set of base numbers for the rest. */
export function axesOf(
  r: RecipeEntry,
  inputs: Readonly<Record<string, unknown>>,
  steps: number | undefined,
): { axes: Axis[]; base: Readonly<Record<string, unknown>> } {
  const swept: [string, Range | Each][] = [];
  const rest: Record<string, unknown> = {};
  for (const [name, value] of Object.entries(inputs)) {
    const field = r.inputs[name];
    if (!field) {
      const near = nearest(name, Object.keys(r.inputs));
      throw new Refusal(
        {
          field: name,
          says: `no such input${near ? `; did you mean ${shown(near)}?` : `; takes ${Object.keys(r.inputs).join(', ')}`}`,
        },
        r.name,
      );
    }
    const fromText =
      typeof value === 'string' && isNumberField(quantityPart(field)) ? rangeFromText(value) : undefined;
    if (value instanceof Range || value instanceof Each) swept.push([name, value]);
    else if (fromText) swept.push([name, fromText]);
    else if (
      Array.isArray(value) &&
      field.kind !== 'list' &&
      field.kind !== 'table' &&
      !(field.items ?? []).some((x) => x.kind === 'list' || x.kind === 'table')
    )
      swept.push([name, new Each(value)]);
    else rest[name] = value;
  }
  if (swept.length === 0)
    throw new Refusal(
      "sweep: no input has a range; takes one such as range('600 mm', '900 mm'), '600 mm .. 900 mm' or each([...])",
      r.name,
    );
  const ranges = swept.filter(([, v]) => v instanceof Range).length;
  const axes = swept.map(([name, value]) =>
    axisOf(r, name, value, steps ?? (ranges > 1 || swept.length > 1 ? 25 : 61)),
  );
  // The first value of each axis stands in, so that the rest is read and checked once as a whole.
  const base = r.read({
    ...rest,
    ...Object.fromEntries(swept.map(([name, v]) => [name, v instanceof Range ? v.from : v.values[0]])),
  });
  return { axes, base };
}

function axisOf(r: RecipeEntry, name: string, value: Range | Each, steps: number): Axis {
  const whole = r.inputs[name] as Field;
  const field = value instanceof Range ? quantityPart(whole) : whole;
  const read = (v: unknown): unknown => {
    try {
      return field.read(v);
    } catch (error) {
      if (error instanceof Refusal)
        throw new Refusal(
          error.troubles.map((t) => ({ field: t.field ? `${name}.${t.field}` : name, says: t.says })),
          r.name,
        );
      throw error;
    }
  };
  if (value instanceof Each) {
    const values = value.values.map(read);
    const numeric = isNumberField(field);
    return {
      name,
      field,
      values,
      numeric,
      labels: value.values.map((v, i) =>
        typeof v === 'string' ? v : numeric ? field.show(values[i]) : labelOf(v),
      ),
    };
  }
  if (!isNumberField(field))
    throw new Refusal({ field: name, says: `got a range, takes ${field.takes}; use each([...])` }, r.name);
  const [from, to] = [read(value.from) as number, read(value.to) as number];
  if (from === to)
    throw new Refusal(
      {
        field: name,
        says: `got a range from ${shown(value.from)} to ${shown(value.to)}, takes two ends that differ`,
      },
      r.name,
    );
  const counted = field.kind === 'count';
  const count = counted ? Math.abs(to - from) + 1 : (value.count ?? steps);
  if (!(count >= 2 && count <= 1_000_000))
    throw new Refusal({ field: name, says: `got a range of ${count} values, takes 2 to 1 000 000` }, r.name);
  const values = new Float64Array(count);
  for (let i = 0; i < count; i++)
    values[i] =
      i === count - 1
        ? to
        : counted
          ? from + Math.sign(to - from) * i
          : from + ((to - from) * i) / (count - 1);
  return {
    name,
    field,
    values,
    numeric: true,
    get labels() {
      return Array.from(values, (v) => field.show(v));
    },
  };
}

const labelOf = (v: unknown): string =>
  typeof v === 'object' && v !== null ? Object.values(v).map(String).join(' ') : String(v);

async function pointByPoint(
  r: RecipeEntry,
  base: Readonly<Record<string, unknown>>,
  axes: readonly Axis[],
  picks: readonly ((i: number) => number)[],
  n: number,
  outs: Record<string, Float64Array>,
  watch: Watch,
): Promise<void> {
  const point: Record<string, unknown> = { ...base };
  await inParts(watch, n, 'reckoning', async (start, end) => {
    for (let i = start; i < end; i++) {
      for (let k = 0; k < axes.length; k++)
        point[(axes[k] as Axis).name] = (axes[k] as Axis).values[(picks[k] as (i: number) => number)(i)];
      const answer = (
        r.long ? await r.evaluate(point, { signal: watch.signal }) : r.evaluate(point)
      ) as Readonly<Record<string, unknown>>;
      for (const name of Object.keys(outs))
        (outs[name] as Float64Array)[i] = (answer[name] as number | undefined) ?? NaN;
    }
  });
}

const partsOf = (
  columns: Readonly<Record<string, Float64Array>>,
  start: number,
  end: number,
): Record<string, Float64Array> =>
  Object.fromEntries(Object.entries(columns).map(([name, column]) => [name, column.subarray(start, end)]));

function makeSweep(
  r: RecipeEntry,
  axes: readonly Axis[],
  columns: readonly Column[],
  n: number,
  wanted: string,
): Sweep {
  // People read the inputs and the output asked for, and a few more; the frame has them all.
  const outs = columns.slice(axes.length);
  const printed = [
    ...columns.slice(0, axes.length),
    ...outs.filter((c) => c.name === wanted),
    ...outs.filter((c) => c.name !== wanted),
  ].slice(0, Math.max(axes.length + 1, 5));
  const result: Sweep = {
    recipe: r.name,
    columns,
    rows: n,
    get chart() {
      const chart = sweepChart(r, axes, columns, wanted);
      return chart && shownChart(chart);
    },
    column(name) {
      const found = columns.find((c) => c.name === name);
      if (!found)
        throw new Refusal(
          `column: no column ${shown(name)}; there are ${columns.map((c) => c.name).join(', ')}`,
        );
      return found;
    },
    frame: () =>
      frame(
        Array.from({ length: n }, (_, i) =>
          Object.fromEntries(columns.map((c) => [c.unit ? `${c.name} (${c.unit})` : c.name, c.values[i]])),
        ),
      ),
    toMarkdown: () =>
      table(
        printed,
        n,
        (cells) => `| ${cells.join(' | ')} |`,
        (k) => `|${'---|'.repeat(k)}`,
      ).join('\n'),
    toJSON: () => ({
      recipe: r.name,
      columns: Object.fromEntries(
        columns.map((c) => [
          c.name,
          {
            unit: c.unit,
            values: [...c.values].map((v) => (typeof v === 'number' && !Number.isFinite(v) ? '' : v)),
          },
        ]),
      ),
    }),
  };
  Object.defineProperty(result, Symbol.for('Jupyter.display'), {
    value: async () => {
      const chart = result.chart;
      const [head, ...body] = table(
        printed,
        n,
        (cells) =>
          cells
            .map(
              (c, i) =>
                `<td style="text-align:${printed[i]?.unit === undefined ? 'left' : 'right'}">${escapeHtml(c)}</td>`,
            )
            .join(''),
        () => '',
      );
      const html = `<table><thead><tr>${head?.replace(/(<\/?)td/g, '$1th')}</tr></thead><tbody>${body.map((b) => `<tr>${b}</tr>`).join('')}</tbody></table>`;
      return {
        'text/plain': `${r.title}: ${n} rows of ${columns.map((c) => c.name).join(', ')}`,
        'text/markdown': result.toMarkdown(),
        'text/html': html,
        ...(chart
          ? { 'image/svg+xml': await renderSvg(chart), 'application/vnd.vegalite.v5+json': chart }
          : {}),
      };
    },
  });
  return result;
}

/** At most twelve rows are printed, spread evenly, the first and last among them. */
function table(
  columns: readonly Column[],
  n: number,
  row: (cells: string[]) => string,
  rule: (k: number) => string,
): string[] {
  const show = Math.min(n, 12);
  const picks = Array.from({ length: show }, (_, k) =>
    show === 1 ? 0 : Math.round((k * (n - 1)) / (show - 1)),
  );
  const cell = (v: number | string | undefined): string =>
    typeof v === 'number' ? (Number.isFinite(v) ? number(v, 4) : '') : (v ?? '');
  return [
    row(columns.map((c) => (c.unit ? `${words(c.name)} (${axisUnit(c.unit)})` : words(c.name)))),
    rule(columns.length),
    ...picks.map((i) => row(columns.map((c) => cell(c.values[i])))),
  ].filter((x) => x !== '');
}

/** The number that stands for text of a field, for targets and limits. @throws Refusal */
export function targetOf(r: RecipeEntry, output: string, value: unknown): number {
  const o = r.outputs[output];
  if (!o || !isNumberField(o)) {
    const names = numberOutputs(r.outputs);
    const near = nearest(output, names);
    throw new Refusal(
      {
        field: output,
        says: `no such output with a number${near ? `; did you mean ${shown(near)}?` : `; takes ${names.join(', ')}`}`,
      },
      r.name,
    );
  }
  try {
    return toQuantity(value, o.kind as Kind).value;
  } catch (error) {
    if (error instanceof Refusal)
      throw new Refusal({ field: output, says: error.troubles[0]?.says ?? '' }, r.name);
    throw error;
  }
}
