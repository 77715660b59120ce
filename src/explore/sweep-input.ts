import type { ExpressionGraph, Operand } from '../engine/expression-graph.js';
import type { Axis } from './sweep-axes.js';
import { columnUnit } from './frame-columns.js';
import { maxChunk } from './chunked-work.js';

/** One swept input over all points; each of its values stands for `every` points in a row, then the next. */
export class SweepInput {
  /** The unit its numbers are shown in; undefined for things that are named. */
  readonly unit: string | undefined;
  /** Whether it is a column for the loop, to be filled part by part; else the loop calculates it from the point's number. */
  readonly filled: boolean;
  readonly #buffer: Float64Array;

  constructor(
    readonly axis: Axis,
    private readonly every: number,
    points: number,
  ) {
    this.unit = axis.numeric ? columnUnit(axis.field.kind, axis.ends, axis.field.unit) : undefined;
    this.filled = axis.numeric && !(axis.even && axis.count === points);
    this.#buffer = new Float64Array(this.filled ? maxChunk : 0);
  }

  /** It at each point of a loop. */
  in(row: ExpressionGraph): Operand {
    const { name, ends, count } = this.axis;
    return this.filled ? row.input(name) : row.linspace(ends[0] as number, ends[1] as number, count - 1);
  }

  /** The value at a point. */
  at(i: number): unknown {
    return this.axis.at(this.#place(i));
  }

  /** What people read at a point. */
  label(i: number): string {
    return this.axis.labels[this.#place(i)] as string;
  }

  /** Base-unit numbers of the points from `start` to `end`, which hold until the next call. */
  part(start: number, end: number): Float64Array {
    const { axis, every } = this;
    const part = this.#buffer.subarray(0, end - start);
    // Written run by run: a division for each of a million points would cost more than the formula.
    for (let i = start; i < end;) {
      const k = this.#place(i);
      const stop = Math.min(end, i + (every === 1 ? axis.count - k : every - (i % every)));
      if (every === 1) axis.fill(k, part.subarray(i - start, stop - start));
      else part.fill(axis.at(k) as number, i - start, stop - start);
      i = stop;
    }
    return part;
  }

  #place(i: number): number {
    return Math.floor(i / this.every) % this.axis.count;
  }
}
