import { tryParse } from '../units/try-parse.js';
import { InputError, nearest, inspectValue } from '../units/input-error.js';
import { words } from '../engine/result-display.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import type { Field, Fields, Input } from '../engine/field.js';
import type { Outputs } from '../engine/output.js';
import type { Recipe } from '../engine/recipe.js';
import { withProgressSync } from '../engine/progress.js';
import type { NumberInput, Target } from './explore-types.js';
import { isNumberField, quantityPart, textOf } from './frame-columns.js';
import { withFieldPath } from './field-path.js';
import type { Written } from './range.js';
import { meetingSpans, scanPlaces } from './root-scan.js';
import { makeSolution, type Solution } from './solution.js';
import { targetOf } from './target.js';

export interface SolveOptions {
  /** Ends of the range searched; default the field's own limits. */
  readonly from?: Written;
  readonly to?: Written;
}

/** A recipe's inputs without the one that is looked for, which may stand among them and is ignored. */
type OtherInputs<F extends Fields, K extends string> = Omit<Input<F>, K> & Partial<Input<F>>;

/**
 * The input that makes an output meet a target: `solveFor(railSpan, 'load', { span: '1.5 m' }, { ... })`. The range is
 * scanned at 400 places, on a logarithmic scale where it spans more than a hundredfold, and every change of side is
 * closed in on by Brent's method; no start guess. Two roots within one step can be missed. Where the answer stays on the
 * target over a stretch, as a count does, the stretch is given with its ends.
 * @throws InputError on wrong names, or when the range has no ends
 */
export function solveFor<F extends Fields, O extends Outputs, K extends NumberInput<F>>(
  recipe: Recipe<F, O>,
  input: K,
  target: Target<O>,
  inputs: OtherInputs<F, K>,
  options?: SolveOptions,
): Solution;
export function solveFor(
  recipe: AnyRecipe,
  input: string,
  target: Readonly<Record<string, unknown>>,
  inputs: Readonly<Record<string, unknown>>,
  options?: SolveOptions,
): Solution;
export function solveFor(
  recipe: unknown,
  input: string,
  target: object,
  inputs: object,
  options: SolveOptions = {},
): Solution {
  const r = recipe as AnyRecipe;
  const field = soughtField(r, input);
  if (r.isAsync) throw new InputError('solveFor takes a recipe that answers at once', r.name);
  const [output, wanted] = soleTarget(r, target);
  const goal = targetOf(r, output, wanted);
  const [low, high] = endsOf(r, input, field, options);
  const start = r.example[input] ?? field.default ?? textOf(field.kind, (low + high) / 2);
  const base = r.read({ ...inputs, [input]: start });
  const f = (x: number): number | undefined => {
    // Places where the recipe refuses its inputs are gaps in the range, not roots.
    const got = tryParse(() => (r.evaluate({ ...base, [input]: x }) as Record<string, unknown>)[output]);
    return typeof got === 'number' && Number.isFinite(got) ? got - goal : undefined;
  };
  const whole = field.kind === 'count';
  const xs = scanPlaces(low, high, whole);
  const { ys, spans } = withProgressSync({}, r.title, ({ onProgress }) => {
    const ys = xs.map((x, i) => {
      onProgress({ done: i / xs.length, message: `looking through ${words(input)}` });
      return f(x);
    });
    return { ys, spans: meetingSpans(xs, ys, f, goal, whole) };
  });
  const nearest = nearestPlace(ys);
  if (nearest < 0)
    throw new InputError(
      `${input}: nowhere in the range do these inputs give ${output}; change the others`,
      r.name,
    );
  return makeSolution({ recipe: r, field, input, output, goal, xs, ys, spans, nearest });
}

/** The field of the input, or the part of it that is a number: where a moisture or air is taken, the moisture. */
function soughtField(r: AnyRecipe, input: string): Field {
  const whole = r.inputs[input];
  const field = whole && quantityPart(whole);
  if (field && isNumberField(field)) return field;
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

function soleTarget(r: AnyRecipe, target: object): [string, unknown] {
  const targets = Object.entries(target);
  const [only] = targets;
  if (only && targets.length === 1) return only;
  throw new InputError(
    `target: got ${targets.length} outputs, takes one, such as { ${Object.keys(r.outputs)[0]}: ... }`,
    r.name,
  );
}

function endsOf(r: AnyRecipe, input: string, field: Field, options: SolveOptions): [number, number] {
  const end = (name: 'from' | 'to', limit: number | undefined): number => {
    const written = options[name];
    if (written !== undefined) return withFieldPath(r.name, name, () => field.read(written) as number);
    if (limit !== undefined) return limit;
    const example = field.default ?? r.example[input] ?? '';
    throw new InputError(
      {
        field: name,
        message: `missing; ${input} has no limit of its own, so takes an end such as ${inspectValue(example)}`,
      },
      r.name,
    );
  };
  const [low, high] = [end('from', field.min), end('to', field.max)];
  if (!(low < high)) throw new InputError({ field: 'to', message: 'takes an end above the other' }, r.name);
  return [low, high];
}

/** The place whose answer is nearest to the target; -1 where no place has an answer. */
function nearestPlace(ys: readonly (number | undefined)[]): number {
  let best = -1;
  ys.forEach((y, i) => {
    if (y !== undefined && (best < 0 || Math.abs(y) < Math.abs(ys[best] as number))) best = i;
  });
  return best;
}
