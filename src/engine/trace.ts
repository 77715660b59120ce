import { inUnits, unitSystem, workingInUnits } from '../units/unit-system.js';
import type { Caution } from './caution.js';
import type { Formula, Variable } from './formula.js';
import type { Citation } from './source.js';

/** One line of the workings, as data. */
export type Working =
  | {
      readonly kind: 'formula';
      /** What the line calculates, in words. */
      readonly text: string;
      /** The formula, and the same with the numbers in: LaTeX and plain text. */
      readonly latex: string;
      readonly numbersLatex: string;
      readonly plain: string;
      readonly numbersPlain: string;
      readonly basis: Formula['basis'];
      readonly source?: Citation;
    }
  | { readonly kind: 'remark'; readonly text: string; readonly source?: Citation };

/** What long work reports while it runs. */
export interface Progress {
  /** Done, 0 to 1, or undefined when it cannot be told. */
  readonly done?: number;
  readonly message: string;
  /** Best answer so far and the bound on any answer, for a search. */
  readonly best?: number;
  readonly bound?: number;
}

/** What a recipe's `solve` writes its workings into. In `.evaluate` the writing costs nothing. */
export interface Trace {
  /** Calculates a formula on base-unit numbers and notes it with the numbers in. `label` replaces the formula's own words. */
  evaluate<L extends Readonly<Record<string, Variable>>>(
    f: Formula<L>,
    args: { readonly [S in keyof L]: number },
    label?: string,
  ): number;
  /** Notes in words what was searched, looked up or chosen. */
  note(text: string, source?: Citation): void;
  warn(warn: Caution): void;
  /** Adds a source that this answer rests on, such as the row of a species. */
  source(citation: Citation): void;
  /** Reports progress of long work; a search calls it each time something changes. */
  progress(progress: Progress): void;
  /** Fires when the person interrupts: long work stops with the best it has. */
  readonly signal: AbortSignal | undefined;
  /** True in `.evaluate`: words made for people need not be made. */
  readonly silent: boolean;
}

type Entry =
  | {
      readonly formula: Formula;
      readonly args: Readonly<Record<string, number>>;
      readonly text: string;
      readonly source?: Citation;
    }
  | { readonly formula?: never; readonly text: string; readonly source?: Citation };

/** Collects workings; rendered only when somebody looks. */
export class TraceRecorder implements Trace {
  readonly silent = false;
  readonly signal: AbortSignal | undefined;
  readonly cautions: Caution[] = [];
  readonly citations: Citation[] = [];
  readonly #entries: Entry[] = [];
  readonly #onProgress: ((p: Progress) => void) | undefined;

  constructor(
    options: { signal?: AbortSignal | undefined; onProgress?: ((p: Progress) => void) | undefined } = {},
  ) {
    this.signal = options.signal;
    this.#onProgress = options.onProgress;
  }

  evaluate<L extends Readonly<Record<string, Variable>>>(
    f: Formula<L>,
    args: { readonly [S in keyof L]: number },
    label?: string,
  ): number {
    this.#entries.push({ formula: f as unknown as Formula, args, text: label ?? f.result.label });
    return f.evaluate(args);
  }

  note(text: string, source?: Citation): void {
    this.#entries.push({ text: text, ...(source ? { source } : {}) });
  }

  warn(warn: Caution): void {
    this.cautions.push(warn);
  }

  source(citation: Citation): void {
    this.citations.push(citation);
  }

  progress(progress: Progress): void {
    this.#onProgress?.(progress);
  }

  /** The lines in the order they were calculated. */
  lines(): Working[] {
    return this.#entries.map((e): Working => {
      if (!e.formula)
        return { kind: 'remark', text: inUnits(e.text), ...(e.source ? { source: e.source } : {}) };
      const f = e.formula;
      return {
        kind: 'formula',
        text: e.text,
        latex: f.latex,
        numbersLatex: unitSystem() === 'inches' ? '' : f.latexWith(e.args),
        plain: f.plain,
        numbersPlain: workingInUnits(f.plainWith(e.args), f.empirical),
        basis: f.basis,
        ...(f.source ? { source: f.source } : {}),
      };
    });
  }

  /** Sources of the formulas used and those added by name. */
  sources(): Citation[] {
    return [...this.#entries.flatMap((e) => e.formula?.source ?? e.source ?? []), ...this.citations];
  }

  /** True when some line rests on an estimate or on common practice. */
  estimated(): string[] {
    return this.#entries.flatMap((e) =>
      e.formula && (e.formula.basis === 'estimate' || e.formula.basis === 'common practice')
        ? [e.formula.result.label]
        : [],
    );
  }
}

/** Calculates and remembers nothing: for sweeps. */
export const nullTrace: Trace = {
  silent: true,
  signal: undefined,
  evaluate: (f, args) => f.evaluate(args),
  note: () => undefined,
  warn: () => undefined,
  source: () => undefined,
  progress: () => undefined,
};
