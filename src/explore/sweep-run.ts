import type { AnyRecipe } from '../engine/any-recipe.js';
import type { Output } from '../engine/output.js';
import { uncheckedSolve, compileSweep } from '../engine/recipe-registry.js';
import type { Operand } from '../engine/expression-graph.js';
import { columnUnit, inUnit, lensOf, type Column } from './frame-columns.js';
import type { SweepInput } from './sweep-input.js';
import { inChunks, type ProgressOptions } from './chunked-work.js';

/** What is swept: a recipe, the inputs that stay, those that go through their values, the outputs, and the points. */
export interface SweepPlan {
  readonly recipe: AnyRecipe;
  readonly base: Readonly<Record<string, unknown>>;
  readonly inputs: readonly SweepInput[];
  readonly outputs: readonly (readonly [name: string, output: Output])[];
  readonly points: number;
}

/**
 * Runs a sweep as one compiled loop that writes every column in the unit shown, in one pass over memory; undefined
 * where the recipe, or a swept input, has no such loop.
 */
export async function runLooped(plan: SweepPlan, watch: ProgressOptions): Promise<Column[] | undefined> {
  if (plan.recipe.isAsync || plan.inputs.some((c) => c.unit === undefined)) return undefined;
  // The unit shown is that of the largest number. The ends mostly have it; where a point between them is so large that
  // another unit is due, all is computed once more.
  const ends = [0, plan.points - 1].map((i) => uncheckedSolve(plan.recipe)(pointAt(plan, {}, i)));
  const guess = plan.outputs.map(([name, o]) =>
    columnUnit(
      o.kind,
      ends.map((e) => (e[name] as number | undefined) ?? 0),
      o.unit,
    ),
  );
  const first = await once(plan, guess, watch);
  if (!first) return undefined;
  const due = plan.outputs.map(([, o], k) => columnUnit(o.kind, [first.largest[k] as number], o.unit));
  const right = due.every((unit, k) => unit === guess[k]);
  return right ? first.columns : (await once(plan, due, watch))?.columns;
}

async function once(
  plan: SweepPlan,
  units: readonly string[],
  watch: ProgressOptions,
): Promise<{ columns: Column[]; largest: number[] } | undefined> {
  const { recipe, base, inputs, outputs, points } = plan;
  const columns = [
    ...inputs.map(({ axis, unit }) => ({ key: `in_${axis.name}`, of: axis.field, name: axis.name, unit })),
    ...outputs.map(([name, of], k) => ({ key: `out_${name}`, of, name, unit: units[k] })),
  ].map((c) => ({ ...c, values: new Float64Array(points), lens: lensOf(c.of.kind, c.unit as string) }));
  const answers = columns.slice(inputs.length);
  const loop = compileSweep(
    recipe,
    base,
    (row) => Object.fromEntries(inputs.map((c) => [c.axis.name, c.in(row)])),
    (row, answer) =>
      Object.fromEntries(
        columns.map(({ key, name, lens }, k) => {
          const term: Operand = inputs[k]?.in(row) ?? answer[name] ?? NaN;
          const from = lens.offset === 0 ? term : row.subtract(term, lens.offset);
          return [key, lens.factor === 1 ? from : row.multiply(from, lens.factor)];
        }),
      ),
    answers.map((c) => c.key),
  );
  if (!loop) return undefined;
  const peaks = new Float64Array(outputs.length);
  const all = Object.fromEntries(columns.map((c) => [c.key, c.values]));
  await inChunks(watch, points, 'computing', (start, end) => {
    const given = Object.fromEntries(
      inputs.flatMap((c) => (c.filled ? [[c.axis.name, c.part(start, end)]] : [])),
    );
    loop(start, end, given, all, peaks);
  });
  return {
    columns: columns.map(({ name, of, unit, values }) => ({ name, label: of.label, unit, values })),
    largest: answers.map(({ lens }, k) => (peaks[k] as number) / lens.factor + lens.offset),
  };
}

/** Runs a sweep point by point, and puts the columns into the unit shown at the end. */
export async function runOneByOne(plan: SweepPlan, watch: ProgressOptions): Promise<Column[]> {
  const { recipe, inputs, outputs, points } = plan;
  const point: Record<string, unknown> = {};
  const answers = outputs.map(() => new Float64Array(points));
  await inChunks(watch, points, 'computing', async (start, end) => {
    for (let i = start; i < end; i++) {
      const given = recipe.evaluate(pointAt(plan, point, i), { signal: watch.signal });
      const answer = (recipe.isAsync ? await given : given) as Readonly<Record<string, number | undefined>>;
      outputs.forEach(([name], k) => {
        (answers[k] as Float64Array)[i] = answer[name] ?? NaN;
      });
    }
  });
  return [
    ...inputs.map((c): Column => {
      const { name, field } = c.axis;
      const whole = { length: points };
      if (c.unit === undefined)
        return { name, label: field.label, unit: undefined, values: Array.from(whole, (_, i) => c.label(i)) };
      const values = Float64Array.from(whole, (_, i) => c.at(i) as number);
      return { name, label: field.label, unit: c.unit, values: inUnit(field.kind, values, c.unit) };
    }),
    ...outputs.map(([name, o], k): Column => {
      const values = answers[k] as Float64Array;
      const unit = columnUnit(o.kind, values, o.unit);
      return { name, label: o.label, unit, values: inUnit(o.kind, values, unit) };
    }),
  ];
}

/** The inputs at a point, put into `point`. */
function pointAt(plan: SweepPlan, point: Record<string, unknown>, i: number): Record<string, unknown> {
  Object.assign(point, plan.base);
  for (const c of plan.inputs) point[c.axis.name] = c.at(i);
  return point;
}
