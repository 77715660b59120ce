import type { Formula } from './formula.js';
import { compileFunction } from './compile-function.js';

/** A number that differs from point to point: a column, or a value computed from columns. Made by {@link ExpressionGraph} alone. */
export class GraphNode {
  constructor(
    /** JavaScript of its value, over the names of the nodes it is computed from. */
    readonly code: string,
    readonly name: string,
    readonly from: readonly GraphNode[],
  ) {}
}
/** A number: known now, or at each point. */
export type Operand = number | GraphNode;

/**
 * Computes the points from `first` to before `end`. The columns hold these points alone; the answers are written into
 * columns of all points, because a view on each column for each chunk would cost as much as a formula. Each entry of
 * `peaks` grows to the largest absolute value of its answer; NaN is ignored.
 */
export type CompiledLoop = (
  first: number,
  end: number,
  columns: Readonly<Record<string, Float64Array>>,
  outs: Readonly<Record<string, Float64Array>>,
  peaks?: Float64Array,
) => void;

/**
 * Records what is computed at each point and compiles it into one loop over typed columns. What is known for all points
 * is computed at once; an expression that occurs twice is computed once.
 */
export class ExpressionGraph {
  readonly #points = new Map<string, GraphNode>();
  readonly #known: number[] = [];

  /** The column called `name`, a JavaScript name. */
  input(name: string): GraphNode {
    return this.#point(`c_${name}[i - first]`, []);
  }
  /** Even steps over all points, from the first to number `last`: cheaper than to read them from a column. */
  linspace(from: number, to: number, last: number): GraphNode {
    const [start, end, span, count] = [from, to, to - from, last].map((x) => this.#written(x));
    // Rounding may miss the end by a bit; it is given, so it is met.
    return this.#point(`i === ${count} ? ${end} : ${start} + (${span} * i) / ${count}`, []);
  }

  evaluate(f: Formula, args: Readonly<Record<string, Operand>>): Operand {
    const terms = Object.values(args);
    if (terms.every((t) => typeof t === 'number'))
      return f.evaluate(args as Readonly<Record<string, number>>);
    return this.#point(
      f.toJavaScript((s) => this.#written(args[s] as Operand)),
      terms,
    );
  }
  subtract(a: Operand, b: Operand): Operand {
    return this.#both(a, b, '-', (x, y) => x - y);
  }
  multiply(a: Operand, b: Operand): Operand {
    return this.#both(a, b, '*', (x, y) => x * y);
  }

  /**
   * The loop that computes `outputs` and nothing else, and keeps the peaks of those named; undefined where code may not be
   * made at run time.
   */
  compile(
    outputs: Readonly<Record<string, Operand>>,
    peaks: readonly string[] = [],
  ): CompiledLoop | undefined {
    const needed = new Set(Object.values(outputs));
    // A node comes after those it is computed from, so one pass from the last to the first finds all.
    const all = [...this.#points.values()];
    for (const p of all.toReversed()) if (needed.has(p)) p.from.forEach((q) => needed.add(q));
    const points = all.filter((p) => needed.has(p));
    const columns = points.flatMap((p) => /^c_(\w+)\[i - first\]$/.exec(p.code)?.[1] ?? []);
    const answers = Object.entries(outputs).map(([o, t]) => `o_${o}[i] = ${this.#written(t)};`);
    const k = [...this.#known];
    const text = [
      ...k.map((_, j) => `const k${j} = k[${j}];`),
      ...columns.map((c) => `const c_${c} = columns.${c};`),
      ...Object.keys(outputs).map((o) => `const o_${o} = outs.${o};`),
      ...peaks.map((_, j) => `let peak${j} = peaks[${j}];`),
      'for (let i = first; i < end; i++) {',
      ...points.map((p) => `const ${p.name} = ${p.code};`),
      ...answers,
      ...peaks.map(
        (o, j) =>
          `if (Math.abs(${this.#written(outputs[o] as Operand)}) > peak${j}) peak${j} = Math.abs(${this.#written(outputs[o] as Operand)});`,
      ),
      '}',
      ...peaks.map((_, j) => `peaks[${j}] = peak${j};`),
    ].join('\n');
    const run = compiled(text);
    return run && ((first, end, columns, outs, most = none) => run(k, first, end, columns, outs, most));
  }

  #written(t: Operand): string {
    if (t instanceof GraphNode) return t.name;
    // Not indexOf, to which NaN is never there.
    const at = this.#known.findIndex((x) => Object.is(x, t));
    return `k${at < 0 ? this.#known.push(t) - 1 : at}`;
  }

  #both(a: Operand, b: Operand, sign: string, now: (x: number, y: number) => number): Operand {
    return typeof a === 'number' && typeof b === 'number'
      ? now(a, b)
      : this.#point(`${this.#written(a)} ${sign} ${this.#written(b)}`, [a, b]);
  }

  #point(code: string, from: readonly Operand[]): GraphNode {
    const known = this.#points.get(code);
    if (known) return known;
    const made = new GraphNode(
      code,
      `p${this.#points.size}`,
      from.filter((t) => t instanceof GraphNode),
    );
    this.#points.set(code, made);
    return made;
  }
}

const none = new Float64Array(0);

/** Made once for a text: what is known for all points comes in as `k`, so that other numbers need no other code. */
type Made = (k: readonly number[], ...of: Required<Parameters<CompiledLoop>>) => void;
const made = new Map<string, Made>();

function compiled(text: string): Made | undefined {
  const now =
    made.get(text) ??
    (compileFunction(['k', 'first', 'end', 'columns', 'outs', 'peaks'], text) as Made | undefined);
  // A bound on memory; what falls out is made again.
  if (made.size >= 200) made.clear();
  if (now) made.set(text, now);
  return now;
}
