// What depends on what: every node notes which values it reads, and is worked out again only where one of them changed.
import { InputError } from '../units/input-error.js';
import { stepsOf } from './description-path.js';
import type { Description } from './description.js';
import { shareEqual } from './shared-structure.js';
import type { KeptPlans, PlanName } from './kept-plan.js';

/** Something worked out from the description and from other nodes. */
export interface PieceNode<T> {
  readonly name: string;
  readonly compute: (model: Model) => T;
}

/** What a node reads; every reading is noted. */
export interface Model {
  /** A value of the description by section and name. */
  get<S extends keyof Description, K extends keyof NonNullable<Description[S]>>(
    section: S,
    name: K,
  ): NonNullable<Description[S]>[K];
  /** A whole section of it. */
  all<S extends keyof Description>(section: S): Description[S];
  /** What another node came to. @throws what that node threw */
  of<T>(node: PieceNode<T>): T;
  /** A search that was kept, if there is one. */
  plan<P extends PlanName>(name: P): KeptPlans[P];
  /** Paths read since the count given, for telling where an input came from. */
  readsSince(count: number): readonly string[];
  readonly readCount: number;
}

type Outcome = { readonly value: unknown } | { readonly error: unknown };
type Read =
  | { readonly path: string; readonly steps: readonly (string | number)[] }
  | { readonly path: string; readonly node: PieceNode<unknown> }
  | { readonly path: string; readonly plan: PlanName };

/** Outcomes of a node whose readings were the same ones, by the values read. */
interface Remembered {
  readonly reads: readonly Read[];
  readonly outcomes: Map<string, Outcome>;
}

const most = 2048;
let objects = 0;
const numbers = new WeakMap<object, number>();

/** A short text that is the same for the same value; objects by identity. */
function keyOf(value: unknown): string {
  if (typeof value === 'object' && value !== null) {
    let n = numbers.get(value);
    if (n === undefined) numbers.set(value, (n = ++objects));
    return `#${n}`;
  }
  return typeof value === 'string' ? `"${value}` : String(value);
}

const contents = new Map<string, number>();

/** The same, but of two equal values of a description alike: a value that is changed back is known again. */
function contentKey(value: unknown): string {
  if (typeof value !== 'object' || value === null || numbers.has(value)) return keyOf(value);
  const text = JSON.stringify(value);
  const known = contents.get(text);
  if (contents.size > 20_000) contents.clear();
  if (known === undefined) {
    const key = keyOf(value);
    contents.set(text, Number(key.slice(1)));
    return key;
  }
  numbers.set(value, known);
  return `#${known}`;
}
const readKey = (read: Read, value: unknown): string => ('steps' in read ? contentKey(value) : keyOf(value));

/** Outcomes remembered over all variants of a piece. */
export class PieceMemory {
  readonly #byNode = new Map<PieceNode<unknown>, Remembered[]>();
  readonly #last = new Map<PieceNode<unknown>, unknown>();

  /** The remembered outcome whose readings hold the same values now. */
  find(node: PieceNode<unknown>, current: (read: Read) => unknown): Outcome | undefined {
    for (const { reads, outcomes } of this.#byNode.get(node) ?? []) {
      const found = outcomes.get(reads.map((r) => readKey(r, current(r))).join('|'));
      if (found) return found;
    }
    return undefined;
  }

  keep(
    node: PieceNode<unknown>,
    reads: readonly Read[],
    values: readonly unknown[],
    outcome: Outcome,
  ): Outcome {
    const kept = 'value' in outcome ? { value: shareEqual(this.#last.get(node), outcome.value) } : outcome;
    if ('value' in kept) this.#last.set(node, kept.value);
    const shape = reads.map((r) => r.path).join('|');
    const all = this.#byNode.get(node) ?? [];
    if (all.length === 0) this.#byNode.set(node, all);
    let same = all.find((r) => r.reads.map((x) => x.path).join('|') === shape);
    if (!same) all.push((same = { reads, outcomes: new Map() }));
    if (same.outcomes.size >= most) same.outcomes.clear();
    same.outcomes.set(reads.map((r, i) => readKey(r, values[i])).join('|'), kept);
    return kept;
  }
}

/** One variant of a piece, its nodes worked out as they are asked for. */
export class PieceGraph {
  readonly #description: Description;
  readonly #plans: Partial<KeptPlans>;
  readonly #memory: PieceMemory;
  readonly #done = new Map<PieceNode<unknown>, Outcome>();
  readonly #working = new Set<PieceNode<unknown>>();
  /** Names of the nodes worked out anew, in order. */
  readonly recalculated: string[] = [];

  constructor(description: Description, plans: Partial<KeptPlans>, memory: PieceMemory) {
    this.#description = description;
    this.#plans = plans;
    this.#memory = memory;
  }

  /** What a node comes to. @throws what its calculation throws */
  of<T>(node: PieceNode<T>): T {
    const outcome = this.#outcome(node);
    if ('error' in outcome) throw outcome.error;
    return outcome.value as T;
  }

  #outcome(node: PieceNode<unknown>): Outcome {
    const done = this.#done.get(node);
    if (done) return done;
    if (this.#working.has(node)) throw new Error(`${node.name} depends on itself`);
    this.#working.add(node);
    try {
      const outcome = this.#memory.find(node, (read) => this.#valueOf(read)) ?? this.#calculate(node);
      this.#done.set(node, outcome);
      return outcome;
    } finally {
      this.#working.delete(node);
    }
  }

  #valueOf(read: Read): unknown {
    if ('node' in read) {
      const outcome = this.#outcome(read.node);
      return 'value' in outcome ? outcome.value : outcome.error;
    }
    if ('plan' in read) return this.#plans[read.plan];
    let at: unknown = this.#description;
    for (const step of read.steps) at = (at as Record<string | number, unknown> | undefined)?.[step];
    return at;
  }

  #calculate(node: PieceNode<unknown>): Outcome {
    this.recalculated.push(node.name);
    const reads: Read[] = [];
    const values: unknown[] = [];
    const note = (read: Read): unknown => {
      const value = this.#valueOf(read);
      reads.push(read);
      values.push(value);
      return value;
    };
    const model: Model = {
      get: (section, name) => note(pathRead(`${section}.${String(name)}`)) as never,
      all: (section) => note(pathRead(section)) as never,
      of: (other) => {
        note({ path: `(${other.name})`, node: other });
        return this.of(other);
      },
      plan: (name) => note({ path: `plan ${name}`, plan: name }) as never,
      readsSince: (count) => reads.slice(count).map((r) => r.path),
      get readCount() {
        return reads.length;
      },
    };
    let outcome: Outcome;
    try {
      outcome = { value: node.compute(model) };
    } catch (error) {
      // A mistake of the program is not an answer.
      if (!(error instanceof InputError)) throw error;
      outcome = { error };
    }
    return this.#memory.keep(node, reads, values, outcome);
  }
}

const paths = new Map<string, Read>();
function pathRead(path: string): Read {
  let read = paths.get(path);
  if (!read) paths.set(path, (read = { path, steps: stepsOf(path) }));
  return read;
}
