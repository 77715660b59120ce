import type { Arithmetic } from './arithmetic.js';
import type { Formula } from './formula.js';

/** A number that differs from point to point: a column, or what is reckoned from columns. Made by {@link Row} alone. */
export class Point {
  constructor(
    /** JavaScript of its value, over the names of the points it is reckoned from. */
    readonly code: string,
    readonly name: string,
    readonly from: readonly Point[],
  ) {}
}
/** A number of a row: known now, or at each point. */
export type Term = number | Point;

/** Runs over columns of `n` points and writes the answers into `outs`. */
export type Loop = (
  n: number,
  columns: Readonly<Record<string, Float64Array>>,
  outs: Readonly<Record<string, Float64Array>>,
) => void;

/**
 * Writes down what is reckoned at each point, to be compiled into one loop over typed columns. What is known for all
 * points is reckoned here and now; what is reckoned twice in the same way is written once.
 */
export class Row implements Arithmetic<Term> {
  readonly #points = new Map<string, Point>();

  /** The column called `name`, a JavaScript name. */
  column(name: string): Point {
    return this.#point(`c_${name}[i]`, []);
  }

  apply(f: Formula, args: Readonly<Record<string, Term>>): Term {
    const terms = Object.values(args);
    if (terms.every((t) => typeof t === 'number')) return f.of(args as Readonly<Record<string, number>>);
    return this.#point(
      f.source_((s) => written(args[s] as Term)),
      terms,
    );
  }
  plus(a: Term, b: Term): Term {
    return this.#both(a, b, '+', (x, y) => x + y);
  }
  minus(a: Term, b: Term): Term {
    return this.#both(a, b, '-', (x, y) => x - y);
  }
  times(a: Term, b: Term): Term {
    return this.#both(a, b, '*', (x, y) => x * y);
  }
  over(a: Term, b: Term): Term {
    return this.#both(a, b, '/', (x, y) => x / y);
  }
  least(a: Term, b: Term): Term {
    return typeof a === 'number' && typeof b === 'number'
      ? Math.min(a, b)
      : this.#point(`Math.min(${written(a)}, ${written(b)})`, [a, b]);
  }
  most(a: Term, b: Term): Term {
    return typeof a === 'number' && typeof b === 'number'
      ? Math.max(a, b)
      : this.#point(`Math.max(${written(a)}, ${written(b)})`, [a, b]);
  }
  atMost(a: Term, b: Term): Term {
    return typeof a === 'number' && typeof b === 'number'
      ? Number(a <= b)
      : this.#point(`${written(a)} <= ${written(b)} ? 1 : 0`, [a, b]);
  }
  where<R extends { readonly [name: string]: Term }>(test: Term, yes: () => R, no: () => R): R {
    if (typeof test === 'number') return test ? yes() : no();
    const [y, n] = [yes(), no()];
    return Object.fromEntries(
      Object.entries(y).map(([name, a]) => {
        const b = n[name] as Term;
        return [
          name,
          a === b ? a : this.#point(`${test.name} ? ${written(a)} : ${written(b)}`, [test, a, b]),
        ];
      }),
    ) as R;
  }

  /**
   * The loop that reckons `outputs` and nothing that they do not need; undefined where code may not be made at run time.
   */
  loop(outputs: Readonly<Record<string, Term>>): Loop | undefined {
    const needed = new Set(Object.values(outputs));
    // A point stands after those it is reckoned from, so one pass from the last to the first finds all.
    const all = [...this.#points.values()];
    for (const p of all.toReversed()) if (needed.has(p)) p.from.forEach((q) => needed.add(q));
    const points = all.filter((p) => needed.has(p));
    const columns = points.flatMap((p) => /^c_(\w+)\[i\]$/.exec(p.code)?.[1] ?? []);
    const lines = [
      ...columns.map((c) => `const c_${c} = columns.${c};`),
      ...Object.keys(outputs).map((o) => `const o_${o} = outs.${o};`),
      'for (let i = 0; i < n; i++) {',
      ...points.map((p) => `const ${p.name} = ${p.code};`),
      ...Object.entries(outputs).map(([o, t]) => `o_${o}[i] = ${written(t)};`),
      '}',
    ];
    try {
      return new Function('n', 'columns', 'outs', lines.join('\n')) as Loop;
    } catch (error) {
      if (!(error instanceof EvalError)) throw error;
      return undefined;
    }
  }

  #both(a: Term, b: Term, sign: string, now: (x: number, y: number) => number): Term {
    return typeof a === 'number' && typeof b === 'number'
      ? now(a, b)
      : this.#point(`${written(a)} ${sign} ${written(b)}`, [a, b]);
  }

  #point(code: string, from: readonly Term[]): Point {
    const known = this.#points.get(code);
    if (known) return known;
    const made = new Point(
      code,
      `p${this.#points.size}`,
      from.filter((t) => t instanceof Point),
    );
    this.#points.set(code, made);
    return made;
  }
}

const written = (t: Term): string => (t instanceof Point ? t.name : `(${t})`);
