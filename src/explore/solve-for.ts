import { lineChart } from '../charts/line-chart.js';
import { renderSvg } from '../charts/svg.js';
import { displayableChart } from '../charts/chart-display.js';
import type { ChartSpec } from '../charts/chart-spec.js';
import { tryParse } from '../units/try-parse.js';
import type { Kind } from '../units/kind.js';
import { both, Quantity } from '../units/quantity.js';
import { InputError, nearest, inspectValue } from '../units/input-error.js';
import { words } from '../engine/result-display.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import type { Field, Fields } from '../engine/field.js';
import type { Output, Outputs } from '../engine/output.js';
import type { Recipe } from '../engine/recipe.js';
import { withProgressSync } from '../engine/progress.js';
import { axisUnit, columnUnit, inUnit, isNumberField, quantityPart, textOf } from './frame-columns.js';
import { withFieldPath } from './field-path.js';
import { targetOf } from './target.js';

export interface SolveOptions {
  /** Ends of the range searched; default the field's own limits. */
  readonly from?: unknown;
  readonly to?: unknown;
}

/** The inputs that meet a target. */
export interface Solution<K extends Kind = Kind> {
  readonly recipe: string;
  readonly input: string;
  readonly output: string;
  /** Every root found in the range, least first; empty when the target is out of reach. */
  readonly roots: readonly (Quantity<K> | number)[];
  /** How near the output comes, and where, when there is no root. */
  readonly nearest: { readonly input: Quantity<K> | number; readonly output: Quantity | number } | undefined;
  readonly chart: ChartSpec;
  toText(): string;
}

const points = 400;

/**
 * The input that makes an output meet a target: `solveFor(railSpan, 'load', { span: '1.5 m' }, { ... })`. The range is
 * scanned at 400 places, on a logarithmic scale where it spans more than a hundredfold, and every change of side is
 * closed in on by bisection with secant steps; no start guess. A pair of roots closer than one step can be missed.
 * @throws InputError on wrong names, or when the range has no ends
 */
export function solveFor<F extends Fields, O extends Outputs>(
  recipe: Recipe<F, O> | AnyRecipe,
  input: string,
  target: Readonly<Record<string, unknown>>,
  inputs: Readonly<Record<string, unknown>>,
  options: SolveOptions = {},
): Solution {
  const r = recipe as unknown as AnyRecipe;
  const whole = r.inputs[input];
  // Where a moisture or air is taken, the moisture is what can be sought.
  const field = whole && quantityPart(whole);
  if (!field || !isNumberField(field)) {
    const names = Object.entries(r.inputs).flatMap(([n, f]) => (isNumberField(quantityPart(f)) ? [n] : []));
    const near = nearest(input, names);
    throw new InputError(
      {
        field: input,
        message: `no such input with a number${near ? `; did you mean ${inspectValue(near)}?` : `; takes ${names.join(', ')}`}`,
      },
      r.name,
    );
  }
  if (r.isAsync) throw new InputError('solveFor takes a recipe that answers at once', r.name);
  const targets = Object.entries(target);
  if (targets.length !== 1)
    throw new InputError(
      `target: got ${targets.length} outputs, takes one, such as { ${Object.keys(r.outputs)[0]}: ... }`,
      r.name,
    );
  const [output, wanted] = targets[0] as [string, unknown];
  const goal = targetOf(r, output, wanted);
  const end = (v: unknown, limit: number | undefined, name: string): number => {
    if (v !== undefined) return withFieldPath(r.name, name, () => field.read(v) as number);
    if (limit !== undefined) return limit;
    throw new InputError(
      {
        field: name,
        message: `missing; ${input} has no limit of its own, so takes an end such as ${inspectValue(String(field.default ?? (r.example as Record<string, unknown>)[input] ?? ''))}`,
      },
      r.name,
    );
  };
  const low = end(options.from, field.min, 'from');
  const high = end(options.to, field.max, 'to');
  if (!(low < high)) throw new InputError({ field: 'to', message: 'takes an end above the other' }, r.name);
  const start =
    (r.example as Record<string, unknown>)[input] ?? field.default ?? textOf(field.kind, (low + high) / 2);
  const base = r.read({ ...inputs, [input]: start });
  const f = (x: number): number | undefined => {
    // Places where the recipe refuses its inputs are gaps in the range, not roots.
    const got = tryParse(() => (r.evaluate({ ...base, [input]: x }) as Record<string, unknown>)[output]);
    return typeof got === 'number' && Number.isFinite(got) ? got - goal : undefined;
  };
  const xs = places(low, high, field.kind === 'count');
  const { ys, roots } = withProgressSync({}, r.title, ({ onProgress }) => {
    const ys = xs.map((x, i) => {
      onProgress({ done: i / xs.length, message: `looking through ${words(input)}` });
      return f(x);
    });
    return {
      ys,
      roots: field.kind === 'count' ? xs.filter((_, i) => ys[i] === 0) : rootsOf(xs, ys, f, goal),
    };
  });
  const wrapIn = (x: number): Quantity | number =>
    field.kind === 'count' || field.kind === 'ratio' ? x : new Quantity(field.kind as Kind, x);
  const o = r.outputs[output] as Output;
  let best = -1;
  ys.forEach((y, i) => {
    if (y !== undefined && (best < 0 || Math.abs(y) < Math.abs(ys[best] as number))) best = i;
  });
  if (best < 0)
    throw new InputError(
      `${input}: nowhere in the range do these inputs give ${output}; change the others`,
      r.name,
    );
  return makeSolution(
    r,
    field,
    input,
    output,
    goal,
    xs,
    ys,
    roots,
    wrapIn,
    o,
    roots.length === 0 ? best : -1,
  );
}

function places(low: number, high: number, whole: boolean): number[] {
  if (whole)
    return Array.from(
      { length: Math.min(100_000, Math.floor(high) - Math.ceil(low) + 1) },
      (_, i) => Math.ceil(low) + i,
    );
  // A field whose limit is "more than nought" starts a millionth above it.
  const floor = low <= 0 && high > 0 && low === 0 ? high * 1e-6 : low;
  const many = floor > 0 && high / floor > 100;
  const list = Array.from({ length: points + 1 }, (_, i) =>
    many ? floor * (high / floor) ** (i / points) : floor + ((high - floor) * i) / points,
  );
  list[points] = high;
  return low < floor ? [low, ...list] : list;
}

function rootsOf(
  xs: readonly number[],
  ys: readonly (number | undefined)[],
  f: (x: number) => number | undefined,
  goal: number,
): number[] {
  const roots: number[] = [];
  const add = (x: number): void => {
    if (roots.every((k) => Math.abs(k - x) > 1e-9 * Math.max(1e-12, Math.abs(x)))) roots.push(x);
  };
  for (let i = 0; i < xs.length; i++) {
    const [x, y] = [xs[i] as number, ys[i]];
    if (y === undefined) continue;
    if (y === 0) add(x);
    const next = ys[i + 1];
    if (next === undefined || next === 0 || y === 0 || Math.sign(y) === Math.sign(next)) continue;
    const root = closeIn(x, y, xs[i + 1] as number, next, f, goal);
    if (root !== undefined) add(root);
  }
  return roots.sort((a, b) => a - b);
}

/** Bisection with secant steps (the ITP idea kept plain): always inside the bracket, never slower than halving by much. */
function closeIn(
  a: number,
  fa: number,
  b: number,
  fb: number,
  f: (x: number) => number | undefined,
  goal: number,
): number | undefined {
  let [x0, y0, x1, y1] = [a, fa, b, fb];
  for (let i = 0; i < 200; i++) {
    const secant = x0 - (y0 * (x1 - x0)) / (y1 - y0);
    const x = i % 2 === 0 && secant > Math.min(x0, x1) && secant < Math.max(x0, x1) ? secant : (x0 + x1) / 2;
    const y = f(x);
    if (y === undefined) return undefined;
    if (y === 0 || Math.abs(x1 - x0) <= Math.abs(x) * 4e-16)
      return y === 0 || Math.abs(y) < jump(goal, fa, fb) ? x : undefined;
    if (Math.sign(y) === Math.sign(y0)) [x0, y0] = [x, y];
    else [x1, y1] = [x, y];
  }
  const x = Math.abs(y0) < Math.abs(y1) ? x0 : x1;
  return Math.min(Math.abs(y0), Math.abs(y1)) < jump(goal, fa, fb) ? x : undefined;
}

/** A step in the answer (a count that jumps past the target) is a change of side but no root. */
const jump = (goal: number, fa: number, fb: number): number =>
  1e-6 * (Math.abs(goal) + Math.abs(fa) + Math.abs(fb)) + 1e-300;

function makeSolution(
  r: AnyRecipe,
  field: Field,
  input: string,
  output: string,
  goal: number,
  xs: readonly number[],
  ys: readonly (number | undefined)[],
  roots: readonly number[],
  wrapIn: (x: number) => Quantity | number,
  o: Output,
  best: number,
): Solution {
  const near =
    best < 0
      ? undefined
      : {
          input: wrapIn(xs[best] as number),
          output: o.wrap((ys[best] as number) + goal) as Quantity | number,
        };
  const say = (q: Quantity | number): string => (typeof q === 'number' ? String(q) : both(q));
  const text = (): string =>
    roots.length > 0
      ? `${words(input)} for ${words(output)} of ${textOf(o.kind, goal, o.unit)}: ${roots.map((x) => say(wrapIn(x))).join('; ')}`
      : `no ${words(input)} in the range gives ${words(output)} of ${textOf(o.kind, goal, o.unit)}; the nearest is ${say(near?.output as Quantity)} at ${say(near?.input as Quantity)}`;
  const solution: Solution = {
    recipe: r.name,
    input,
    output,
    roots: roots.map(wrapIn),
    nearest: near,
    get chart() {
      // Drawn round what was found, not over a range of six powers of ten.
      const centre = roots.length > 0 ? roots : [xs[best] as number];
      const lo = Math.max(xs[0] as number, Math.min(...centre) * 0.25);
      const hi = Math.min(xs[xs.length - 1] as number, Math.max(...centre) * 2);
      const near_ = Float64Array.from(xs.filter((x) => x >= lo && x <= hi));
      const picked = near_.length >= 2 ? near_ : Float64Array.from(xs);
      const ux = columnUnit(field.kind, picked, field.unit);
      const values = Array.from(picked, (x) => {
        const y = ys[xs.indexOf(x)];
        return y === undefined ? null : y + goal;
      });
      const uy = columnUnit(
        o.kind,
        values.map((v) => v ?? 0),
        o.unit,
      );
      const inY = (v: number): number => inUnit(o.kind, Float64Array.of(v), uy)[0] as number;
      return displayableChart(
        lineChart({
          title: `${words(output)} against ${words(input)}`.replace(/^./, (c) => c.toUpperCase()),
          x: {
            title: capital(words(input)),
            unit: axisUnit(ux),
            values: Array.from(inUnit(field.kind, picked, ux)),
          },
          y: { title: capital(words(output)), unit: axisUnit(uy) },
          series: [{ name: words(output), values: values.map((v) => (v === null ? null : inY(v))) }],
          rules: [{ y: inY(goal), label: 'target' }],
          marks: roots.map((x) => ({
            x: inUnit(field.kind, Float64Array.of(x), ux)[0] as number,
            y: inY(goal),
            label: textOf(field.kind, x),
          })),
          points: false,
        }),
      );
    },
    toText: text,
  };
  Object.defineProperty(solution, Symbol.for('Jupyter.display'), {
    value: async () => ({
      'text/plain': text(),
      'text/markdown': `**${text()}**`,
      'image/svg+xml': await renderSvg(solution.chart),
      'application/vnd.vegalite.v5+json': solution.chart,
    }),
  });
  return solution;
}

const capital = (s: string): string => s.charAt(0).toUpperCase() + s.slice(1);
