import type { ChartSpec } from '../charts/types.js';
import { Refusal } from '../quantities/refusal.js';
import type { Caution } from './caution.js';
import type { Arithmetic } from './arithmetic.js';
import { compileSteps, guardOf } from './compile.js';
import { finiteAnswer } from './finite-answer.js';
import { schemaOf, watchCurrency, type Fields, type Given, type Read } from './field.js';
import type { Formula } from './formula.js';
import { makeResult, type Result } from './result.js';
import type { Outputs, Raw } from './output.js';
import { Row, type Loop, type Term } from './row.js';
import type { Citation } from './source.js';
import { followed } from './watcher.js';
import { silentWork, WorkBook, type Progress, type Work } from './work.js';

/** Outside what its source covers: `when` decides, `says` tells the range; shown as a caution. */
export interface Limit<F extends Fields, O extends Outputs> {
  readonly when: (given: Read<F>, out: Raw<O>) => boolean;
  readonly says: string | ((given: Read<F>, out: Raw<O>) => string);
  readonly source?: Citation;
}

interface Common<F extends Fields, O extends Outputs> {
  /** The export's own name, such as 'movementAcross'. */
  readonly name: string;
  readonly title: string;
  readonly topic: string;
  /** What it answers, for whom, and when not to use it: one to three sentences. */
  readonly about: string;
  readonly sources: readonly Citation[];
  readonly inputs: F;
  readonly outputs: O;
  readonly limits?: readonly Limit<F, O>[];
  /** Always shown, or decided by the answer. */
  readonly cautions?: readonly Caution[] | ((given: Read<F>, out: Raw<O>) => readonly Caution[]);
  /** A Vega-Lite specification; undefined where there is nothing to draw. Called only when somebody looks. */
  readonly chart?: (given: Read<F>, out: Raw<O>) => ChartSpec | undefined;
  readonly example: Given<F>;
}

/** A recipe of formulas in a row: letters are inputs' and earlier formulas' symbols; each output names its symbol. */
export interface StepsDefinition<F extends Fields, O extends Outputs> extends Common<F, O> {
  readonly steps: readonly Formula[];
}
/** A recipe that chooses, looks up or searches. `formulas` are those it may use, for `reckoner show`. */
export interface SolveDefinition<F extends Fields, O extends Outputs> extends Common<F, O> {
  readonly solve: (given: Read<F>, work: Work) => Raw<O>;
  /**
   * The numbers of `solve` over an {@link Arithmetic}, so that sweeps and draws run as one compiled loop: what the
   * choices settle is settled once, and inputs that vary come as points. Undefined where these inputs are for `solve`
   * itself, point by point. An output left out has no number.
   */
  readonly core?: (
    on: Arithmetic<Term>,
    given: Varied<Read<F>>,
  ) => { readonly [K in keyof O]?: Term } | undefined;
  readonly formulas?: readonly Formula[];
}
/** What was read, where any number may differ from point to point. */
export type Varied<T> = { readonly [K in keyof T]: VariedOne<T[K]> };
type VariedOne<V> = V extends number ? Term : V;
/** A recipe whose search takes long: answers by a promise, reports progress, stops on interrupt. */
export interface LongDefinition<F extends Fields, O extends Outputs> extends Common<F, O> {
  readonly search: (given: Read<F>, work: Work) => Promise<Raw<O>>;
  readonly formulas?: readonly Formula[];
}

/** How a run of a long recipe is watched and stopped. */
export interface RunOptions {
  readonly signal?: AbortSignal;
  readonly onProgress?: (progress: Progress) => void;
}

/** What every recipe tells of itself. */
export interface RecipeFace<F extends Fields, O extends Outputs> {
  readonly name: string;
  readonly title: string;
  readonly topic: string;
  readonly about: string;
  readonly sources: readonly Citation[];
  readonly inputs: F;
  readonly outputs: O;
  readonly example: Given<F>;
  readonly formulas: readonly Formula[];
  readonly long: boolean;
  /** Checks what a person wrote: numbers in base units, defaults filled in. @throws Refusal with every wrong field */
  read(given: Given<F>): Read<F>;
  /** The chart of an evaluated answer, for pages that redraw. */
  chartOf(given: Read<F>, out: Raw<O>): ChartSpec | undefined;
  /** Cautions of an evaluated answer. */
  cautionsOf(given: Read<F>, out: Raw<O>): readonly Caution[];
}

export interface Recipe<F extends Fields = Fields, O extends Outputs = Outputs> extends RecipeFace<F, O> {
  /** Reckons what was written, with workings, cautions and chart. @throws Refusal with every wrong field */
  (given: Given<F>): Result<O>;
  /**
   * Reckons numbers in base units (m, kg, Pa, °C; per cent as a fraction), no parsing and no display: for sweeps.
   * Fields left out take their defaults. @throws Refusal outside the fields' limits
   */
  evaluate(numbers: Partial<Read<F>>): Raw<O>;
}

export interface LongRecipe<F extends Fields = Fields, O extends Outputs = Outputs> extends RecipeFace<F, O> {
  (given: Given<F>, options?: RunOptions): Promise<Result<O>>;
  evaluate(numbers: Partial<Read<F>>, options?: RunOptions): Promise<Raw<O>>;
}

const reserved = new Set([
  'workings',
  'sources',
  'cautions',
  'chart',
  'given',
  'recipe',
  'title',
  'toText',
  'toMarkdown',
  'toHtml',
  'toJSON',
  'raw',
]);

function face<F extends Fields, O extends Outputs>(
  def: Common<F, O>,
  formulas: readonly Formula[],
  long: boolean,
): RecipeFace<F, O> & { readonly def: Common<F, O> } {
  for (const name of Object.keys(def.outputs))
    if (reserved.has(name)) throw new Error(`${def.name}: an output may not be called ${name}`);
  const check = schemaOf(def.inputs);
  return {
    def,
    name: def.name,
    title: def.title,
    topic: def.topic,
    about: def.about,
    sources: def.sources,
    inputs: def.inputs,
    outputs: def.outputs,
    example: def.example,
    formulas,
    long,
    read: (given) => named(def.name, () => check(given)),
    chartOf: (given, out) => def.chart?.(given, out),
    cautionsOf: (given, out) => [
      ...(typeof def.cautions === 'function' ? def.cautions(given, out) : (def.cautions ?? [])),
      ...(def.limits ?? [])
        .filter((l) => l.when(given, out))
        .map((l): Caution => ({
          level: 'range',
          text: typeof l.says === 'function' ? l.says(given, out) : l.says,
          ...(l.source ? { source: l.source } : {}),
        })),
    ],
  };
}

/** Bad input that only the reckoning finds is given the recipe's name. */
function named<T>(name: string, run: () => T): T {
  try {
    return run();
  } catch (error) {
    throw withName(name, error);
  }
}

/** A refusal that another recipe raised keeps that one's name. */
const withName = (name: string, error: unknown): unknown =>
  error instanceof Refusal && error.during === '' ? new Refusal(error.troubles, name) : error;

/** Makes a callable out of a face: the name and the members of a recipe on a function. */
function callable<T extends object>(call: (...args: never[]) => unknown, members: T): T {
  Object.defineProperty(call, 'name', { value: (members as { name?: string }).name, configurable: true });
  for (const [key, d] of Object.entries(Object.getOwnPropertyDescriptors(members))) {
    if (key !== 'name' && key !== 'def') Object.defineProperty(call, key, d);
  }
  return call as unknown as T;
}

/** Defines a recipe. The order of the parts in the file is the order of {@link StepsDefinition}, read like a handbook page. */
export function recipe<const F extends Fields, const O extends Outputs>(
  def: StepsDefinition<F, O> | SolveDefinition<F, O>,
): Recipe<F, O> {
  const steps = 'steps' in def ? def.steps : undefined;
  const own = face(def, steps ?? (def as SolveDefinition<F, O>).formulas ?? [], false);
  const solve: (given: Read<F>, work: Work) => Raw<O> = steps
    ? (given, work) => runSteps(def, steps, given, work)
    : (def as SolveDefinition<F, O>).solve;
  const call = (given: Given<F>): Result<O> => {
    const read = watchCurrency(() => own.read(given));
    const work = new WorkBook();
    const raw = named(def.name, () => solve(read.value, work));
    finiteAnswer(def.name, raw);
    return makeResult(own, read.value, raw, work, read.currency, given);
  };
  let fast: ((numbers: Partial<Read<F>>) => Raw<O>) | undefined;
  const evaluate = (numbers: Partial<Read<F>>): Raw<O> => {
    if (!fast) {
      if (steps) fast = compileSteps(def.name, def.inputs, steps, def.outputs);
      else {
        const guard = guardOf(def.name, def.inputs);
        fast = (n) => named(def.name, () => solve(guard(n), silentWork));
      }
    }
    return fast(numbers);
  };
  const made = callable(call, { ...own, evaluate }) as unknown as Recipe<F, O>;
  if (steps) rows.add(made);
  cores.set(
    made,
    (steps
      ? (row: Row, given: Readonly<Record<string, unknown>>) => stepsOver(row, def, steps, given)
      : (def as SolveDefinition<F, O>).core) as Core | undefined,
  );
  bare.set(
    made,
    (given) =>
      named(def.name, () => solve(given as Read<F>, silentWork)) as Readonly<Record<string, unknown>>,
  );
  return made;
}

type Bare = (given: object) => Readonly<Record<string, unknown>>;
const bare = new WeakMap<object, Bare>();

/** The reckoning alone, of a recipe that answers at once, on inputs that were read and checked: for many draws round a checked middle. */
export const bareOf = (recipe: object): Bare => bare.get(recipe) as Bare;

/** Whether a recipe is a row of formulas and nothing else. */
export function isRowOfFormulas(recipe: object): boolean {
  return rows.has(recipe);
}
const rows = new WeakSet<object>();

type Core = (
  row: Row,
  given: Readonly<Record<string, unknown>>,
) => Readonly<Record<string, Term | undefined>> | undefined;
const cores = new WeakMap<object, Core | undefined>();

/**
 * The loop that reckons what `wanted` makes of a recipe's answers, over columns of the inputs that vary, the others being
 * as in `base`, which was read and checked; undefined for a recipe, or for inputs, that must be reckoned point by point.
 * Limits are not looked at: whoever fills the columns keeps within them, which is what lets the loop run like one written
 * by hand.
 */
export function loopOf(
  recipe: { readonly name: string },
  base: Readonly<Record<string, unknown>>,
  varying: readonly string[] | ((row: Row) => Readonly<Record<string, Term>>),
  wanted: (row: Row, answer: Readonly<Record<string, Term | undefined>>) => Readonly<Record<string, Term>>,
  peaks: readonly string[] = [],
): Loop | undefined {
  const row = new Row();
  const points =
    typeof varying === 'function'
      ? varying(row)
      : Object.fromEntries(varying.map((name) => [name, row.column(name)]));
  const given = { ...base, ...points };
  const answer = named(recipe.name, () => cores.get(recipe)?.(row, given));
  return answer && row.loop(wanted(row, answer), peaks);
}

/** Defines a recipe whose search is long. */
export function longRecipe<const F extends Fields, const O extends Outputs>(
  def: LongDefinition<F, O>,
): LongRecipe<F, O> {
  const own = face(def, def.formulas ?? [], true);
  const call = async (given: Given<F>, options: RunOptions = {}): Promise<Result<O>> => {
    const read = watchCurrency(() => own.read(given));
    const { raw, work } = await followed(options, def.title, async (watch) => {
      const work = new WorkBook(watch);
      try {
        return { raw: await def.search(read.value, work), work };
      } catch (error) {
        throw withName(def.name, error);
      }
    });
    finiteAnswer(def.name, raw);
    return makeResult(own, read.value, raw, work, read.currency, given);
  };
  const guard = guardOf(def.name, def.inputs);
  const evaluate = (numbers: Partial<Read<F>>, options: RunOptions = {}): Promise<Raw<O>> =>
    def.search(guard(numbers), new WorkBook(options));
  return callable(call, { ...own, evaluate }) as unknown as LongRecipe<F, O>;
}

function runSteps<F extends Fields, O extends Outputs>(
  def: Common<F, O>,
  steps: readonly Formula[],
  given: Read<F>,
  work: Work,
): Raw<O> {
  return along(
    def,
    steps,
    given as Readonly<Record<string, unknown>>,
    (f, args: Readonly<Record<string, number>>) => work.apply(f, args),
  ) as Raw<O>;
}

/** The row of formulas on terms of a loop. */
function stepsOver<F extends Fields, O extends Outputs>(
  row: Row,
  def: Common<F, O>,
  steps: readonly Formula[],
  given: Readonly<Record<string, unknown>>,
): Readonly<Record<string, Term | undefined>> {
  return along<Term>(def, steps, given, (f, args) => row.apply(f, args));
}

/** Goes along the formulas: each takes inputs' and earlier formulas' letters, and each output is one of them. */
function along<N>(
  def: Pick<Common<Fields, Outputs>, 'inputs' | 'outputs'>,
  steps: readonly Formula[],
  given: Readonly<Record<string, unknown>>,
  apply: (f: Formula, args: Readonly<Record<string, N>>) => N,
): Readonly<Record<string, N | undefined>> {
  const values: Record<string, N> = {};
  for (const [name, f] of Object.entries(def.inputs)) if (f.symbol) values[f.symbol] = given[name] as N;
  for (const f of steps)
    values[f.symbol] = apply(f, Object.fromEntries(Object.keys(f.where).map((s) => [s, values[s] as N])));
  return Object.fromEntries(
    Object.entries(def.outputs).map(([name, o]) => [name, values[o.symbol as string]]),
  );
}
