// Parts chosen for the clear lengths of boards: an integer programme. Whole micrometres.
import type { Highs } from 'highs';
import { ExactModel } from './exact-model.js';
import { clearStretches, type PileBoard } from './pile-sticks.js';

export interface PartKind {
  readonly name: string;
  readonly length: number;
  readonly count: number;
}
export interface ChosenCuts {
  readonly boards: number;
  readonly length: number;
  /** No plan with as few parts missing cuts boards shorter in all. */
  readonly bound: number;
  readonly proved: boolean;
  readonly cuts: readonly { board: string; part: string; from: number; length: number }[];
  readonly missing: readonly PartKind[];
}

interface Stretch {
  readonly from: number;
  readonly length: number;
  /** Columns: how many of each part. */
  readonly takes: readonly number[];
}
interface Choice {
  readonly name: string;
  readonly board: PileBoard;
  readonly used: number;
  readonly stretches: readonly Stretch[];
}

const mm = (um: number): number => um / 1000;

/** Columns of one board: whether it is cut, and what each clear length of it gives. */
function writeBoard(
  model: ExactModel,
  board: PileBoard,
  name: string,
  parts: readonly PartKind[],
  kerf: number,
): Choice {
  const used = model.choice(mm(board.length));
  const stretches = clearStretches(board).map(([from, to]): Stretch => {
    const length = to - from;
    const takes = parts.map((p) =>
      model.column(0, Math.min(p.count, Math.floor((length + kerf) / (p.length + kerf))), 0, true),
    );
    model.row(
      -Infinity,
      [
        ...takes.map((t, i): [number, number] => [t, mm((parts[i] as PartKind).length + kerf)]),
        [used, -mm(length + kerf)],
      ],
      0,
    );
    return { from, length, takes };
  });
  return { name, board, used, stretches };
}

/** The parts that each clear length gives, one after another from its left end. */
function cutsOf(choices: readonly Choice[], parts: readonly PartKind[], kerf: number, values: Float64Array) {
  const cuts: { board: string; part: string; from: number; length: number }[] = [];
  for (const { name, stretches } of choices)
    for (const s of stretches) {
      let at = s.from;
      for (const [i, part] of parts.entries())
        for (let n = Math.round(values[s.takes[i] as number] as number); n > 0; n--) {
          cuts.push({ board: name, part: part.name, from: at, length: part.length });
          at += part.length + kerf;
        }
    }
  return cuts;
}

/** The answer where the time did not suffice for any plan. */
const nothing = (parts: readonly PartKind[], bound: number): ChosenCuts => ({
  boards: 0,
  length: 0,
  bound: Math.min(0, bound),
  proved: false,
  cuts: [],
  missing: parts,
});

/** The plan that leaves the least length of parts missing, and of those one whose boards are shortest in all. */
export function chooseStretches(
  highs: Highs,
  boards: readonly PileBoard[],
  parts: readonly PartKind[],
  kerf: number,
  seconds: number,
): ChosenCuts {
  const model = new ExactModel();
  const choices = boards.flatMap((b) =>
    Array.from({ length: b.count }, (_, k) =>
      writeBoard(model, b, b.count > 1 ? `${b.name}.${k + 1}` : b.name, parts, kerf),
    ),
  );
  // A part that is missing costs more than any boards could.
  const all = choices.reduce((s, c) => s + mm(c.board.length), 0) + 1;
  const short = parts.map((p) => model.column(0, p.count, all * (1 + mm(p.length)), true));
  parts.forEach((p, i) => {
    const given = choices.flatMap((c) => c.stretches.map((s): [number, number] => [s.takes[i] as number, 1]));
    model.row(p.count, [...given, [short[i] as number, 1]], p.count);
  });
  // Copies of one board are alike: those cut come first.
  for (let i = 1; i < choices.length; i++) {
    const [a, b] = [choices[i - 1] as Choice, choices[i] as Choice];
    if (a.board === b.board)
      model.row(
        -Infinity,
        [
          [b.used, 1],
          [a.used, -1],
        ],
        0,
      );
  }
  const got = model.best(highs, seconds);
  if (got.values.length === 0) return nothing(parts, got.bound);
  const cuts = cutsOf(choices, parts, kerf, got.values);
  const missing = parts.flatMap((p, i) => {
    const count = Math.round(got.values[short[i] as number] as number);
    return count > 0 ? [{ ...p, count }] : [];
  });
  const touched = choices.filter((c) => cuts.some((cut) => cut.board === c.name));
  const length = touched.reduce((s, c) => s + c.board.length, 0);
  const lost = missing.reduce((s, p) => s + p.count * all * (1 + mm(p.length)), 0);
  return {
    boards: touched.length,
    length,
    bound: Math.min(length, Math.max(0, Math.floor((got.bound - lost) * 1000))),
    proved: got.proved,
    cuts,
    missing,
  };
}
