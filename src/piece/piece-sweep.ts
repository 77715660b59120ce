// All questions of a piece over ranges of its values.
import { inChunks, type ProgressOptions } from '../explore/chunked-work.js';
import { Range, ValueList } from '../explore/range.js';
import { withProgress } from '../engine/progress.js';
import { kinds, type Kind } from '../units/kind.js';
import { Quantity } from '../units/quantity.js';
import { InputError } from '../units/input-error.js';
import { allQuestions, answerOf } from './answers.js';
import { fieldAt, withValueAt } from './description-path.js';
import type { Description } from './description.js';
import type { PieceView } from './piece-view.js';
import { byVerdict, type PieceVerdict } from './question.js';

export interface PieceSweepOptions extends ProgressOptions {
  /** Values of a range that names no count; default 25. */
  readonly steps?: number;
}

/** A swept value: where it stands, its values in base units and in words. */
export interface SweptValue {
  readonly path: string;
  readonly label: string;
  readonly values: readonly unknown[];
  readonly words: readonly string[];
}

/** What came of a sweep: for every variant the worst verdict, the worst safety verdict, and what decides. */
export class PieceSweep {
  constructor(
    readonly axes: readonly SweptValue[],
    /** Worst verdict of every variant; the last axis runs fastest. */
    readonly verdicts: readonly PieceVerdict[],
    /** Name of the question that decides, of every variant. */
    readonly deciding: readonly string[],
    /** Worst verdict among the safety questions, of every variant. */
    readonly safety: readonly PieceVerdict[],
  ) {}

  get count(): number {
    return this.verdicts.length;
  }

  /** The values of one variant, in words, by path. */
  at(i: number): Readonly<Record<string, string>> {
    return Object.fromEntries(
      placesOf(this.axes, i).map((n, k) => [this.axes[k]?.path ?? '', this.axes[k]?.words[n] ?? '']),
    );
  }

  /** Variants that fail no question, by number. */
  get passing(): readonly number[] {
    return this.verdicts.flatMap((v, i) => (v === 'fails' ? [] : [i]));
  }

  /** How many variants each question decides. */
  get tally(): Readonly<Record<string, number>> {
    const found: Record<string, number> = {};
    for (const name of this.deciding) found[name] = (found[name] ?? 0) + 1;
    return found;
  }

  toText(): string {
    const [first] = this.passing;
    const decides = Object.entries(this.tally)
      .sort((a, b) => b[1] - a[1])
      .map(([name, n]) => `${name} ${n}`);
    return [
      `${this.count} variants over ${this.axes.map((a) => `${a.label} (${a.path})`).join(' and ')}: ${this.passing.length} fail no question.`,
      ...(first === undefined
        ? []
        : [
            `The first that passes: ${Object.entries(this.at(first))
              .map(([p, w]) => `${p} ${w}`)
              .join(', ')}.`,
          ]),
      `What decides: ${decides.join(', ')}.`,
    ].join('\n');
  }

  [Symbol.for('Jupyter.display')](): Readonly<Record<string, string>> {
    return { 'text/plain': this.toText() };
  }
}

/** Places along each axis of a variant. */
function placesOf(axes: readonly SweptValue[], i: number): number[] {
  const places: number[] = [];
  let rest = i;
  for (const axis of [...axes].reverse()) {
    places.unshift(rest % axis.values.length);
    rest = Math.floor(rest / axis.values.length);
  }
  return places;
}

const most = 1_000_000;

/** Works every variant. @throws AbortError when it is interrupted, InputError for a wrong path or value */
export async function sweepPiece(
  piece: PieceView,
  ranges: Readonly<Record<string, Range | ValueList>>,
  options: PieceSweepOptions,
): Promise<PieceSweep> {
  const axes = Object.entries(ranges).map(([path, r]) => axisOf(path, r, options.steps ?? 25));
  const total = axes.reduce((n, a) => n * a.values.length, 1);
  if (axes.length === 0) throw new InputError('ranges: takes at least one path with a range');
  if (total > most) throw new InputError(`ranges: make ${total} variants, takes at most ${most}`);
  const verdicts = new Array<PieceVerdict>(total);
  const safety = new Array<PieceVerdict>(total);
  const deciding = new Array<string>(total);
  await withProgress(options, `Variants of ${piece.name}`, async (progress) => {
    await inChunks(progress, total, 'variants', (start, end) => {
      for (let i = start; i < end; i++) {
        const found = worstOf(variantAt(piece, axes, i));
        verdicts[i] = found.verdict;
        safety[i] = found.safety;
        deciding[i] = found.name;
      }
    });
  });
  return new PieceSweep(axes, verdicts, deciding, safety);
}

function variantAt(piece: PieceView, axes: readonly SweptValue[], i: number): PieceView {
  let description: unknown = piece.description;
  placesOf(axes, i).forEach((n, k) => {
    const axis = axes[k];
    if (axis) description = withValueAt(description, axis.path, axis.values[n]);
  });
  return piece.withRead(description as Description);
}

function worstOf(variant: PieceView): {
  readonly verdict: PieceVerdict;
  readonly safety: PieceVerdict;
  readonly name: string;
} {
  let verdict: PieceVerdict = 'ok';
  let safety: PieceVerdict = 'ok';
  let name = '';
  let least = Infinity;
  for (const question of allQuestions) {
    const answer = answerOf(variant.graph, question);
    if (!answer) continue;
    const worse = byVerdict(answer.verdict, verdict);
    const margin = answer.margin ?? (answer.verdict === 'fails' ? -1 : Infinity);
    if (worse < 0 || (worse === 0 && margin < least)) {
      verdict = answer.verdict;
      least = margin;
      name = answer.name;
    }
    if (answer.safety && byVerdict(answer.verdict, safety) < 0) safety = answer.verdict;
  }
  return { verdict, safety, name };
}

function axisOf(path: string, range: Range | ValueList, steps: number): SweptValue {
  const field = fieldAt(path);
  const read = (value: unknown): unknown => {
    try {
      return field.read(value);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      throw new InputError(error.issues.map((t) => ({ field: path, message: t.message })));
    }
  };
  const whole = (values: readonly unknown[]): SweptValue => ({
    path,
    label: field.label,
    values,
    words: values.map((v) => field.format(v)),
  });
  if (ValueList.is(range)) return whole(range.values.map(read));
  const [from, to] = [read(range.from), read(range.to)];
  if (typeof from !== 'number' || typeof to !== 'number')
    throw new InputError({ field: path, message: 'takes each([...]): its values are no numbers' });
  const count = range.count ?? steps;
  const at = (i: number): number => from + ((to - from) * i) / (count - 1);
  const values = Array.from({ length: count }, (_, i) => at(i));
  return whole(field.kind === 'count' ? [...new Set(values.map(Math.round))] : values.map((v) => checked(v)));
  function checked(value: number): number {
    const kind = field.kind as Kind;
    read(Object.hasOwn(kinds, kind) && !kinds[kind].plain ? new Quantity(kind, value) : value);
    return value;
  }
}
