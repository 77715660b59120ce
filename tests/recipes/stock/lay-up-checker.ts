// Checks a plan from the survey and the answer's tables alone; it shares no code with the search.

export interface SurveyBoard {
  readonly name: string;
  readonly count: number;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly endLeft: number;
  readonly endRight: number;
  readonly faults: readonly (readonly [number, number])[];
}
export interface CheckedRules {
  readonly topLength: number;
  readonly spare: number;
  readonly kerf: number;
  readonly plane: number;
  readonly jointing: number;
  readonly slabJointing: number;
  readonly widestSlab: number;
  readonly leastPiece: number;
  readonly stagger: number;
  readonly maxJoints: number;
}
export interface CheckedPlan {
  readonly lay: string;
  /** mm */
  readonly thickness: number;
  readonly width: number;
  readonly rows: readonly { readonly width: number; readonly pieces: string; readonly slab: number }[];
  readonly cuts: readonly { readonly board: string; readonly cuts: string }[];
}

interface Cut {
  readonly id: string;
  readonly from: number;
  readonly to: number;
  readonly row: number;
  readonly board: SurveyBoard;
}

// The tables print tenths of a millimetre.
const eps = 0.11;

/** Every rule that the plan breaks, in words; lengths in mm. */
export function faultsOf(boards: readonly SurveyBoard[], rules: CheckedRules, plan: CheckedPlan): string[] {
  const wrong: string[] = [];
  const cuts = readCuts(boards, plan, wrong);
  for (const { board, pieces } of cuts) checkBoard(board, pieces, rules, plan, wrong);
  const byId = new Map(cuts.flatMap((c) => c.pieces).map((p) => [p.id, p]));
  if (byId.size !== cuts.flatMap((c) => c.pieces).length) wrong.push('a piece number stands twice');
  checkRows(byId, rules, plan, wrong);
  checkWidth(rules, plan, wrong);
  return wrong;
}

function readCuts(boards: readonly SurveyBoard[], plan: CheckedPlan, wrong: string[]) {
  const copies = new Map<string, Set<string>>();
  return plan.cuts.map((line) => {
    const board = boards.find((b) => line.board === b.name || line.board.startsWith(`${b.name}.`));
    if (!board) throw new Error(`no board ${line.board}`);
    const seen = copies.get(board.name) ?? new Set();
    if (seen.has(line.board)) wrong.push(`${line.board} is cut twice`);
    copies.set(board.name, seen.add(line.board));
    if (seen.size > board.count) wrong.push(`${board.name}: more copies cut than there are`);
    const pieces = line.cuts.split('; ').map((text): Cut => {
      const m = /^(\S+) ([\d.]+) to ([\d.]+) \(row (\d+)\)$/.exec(text);
      if (!m) throw new Error(`not a cut: ${text}`);
      return { id: m[1] as string, from: Number(m[2]), to: Number(m[3]), row: Number(m[4]), board };
    });
    return { board, pieces };
  });
}

/** Pieces lie in clear wood, thick enough, a kerf apart; on edge as many side by side as the width gives strips. */
function checkBoard(
  b: SurveyBoard,
  pieces: readonly Cut[],
  rules: CheckedRules,
  plan: CheckedPlan,
  wrong: string[],
): void {
  const needed = plan.thickness + 2 * rules.plane;
  const strips = plan.lay === 'flat' ? 1 : Math.floor((b.width + rules.kerf + 1e-6) / (needed + rules.kerf));
  if (plan.lay === 'flat' && b.thickness < needed - eps) wrong.push(`${b.name}: too thin`);
  if (strips < 1) wrong.push(`${b.name}: too narrow for a strip`);
  for (const p of pieces) {
    if (p.from < b.endLeft - eps || p.to > b.length - b.endRight + eps)
      wrong.push(`${p.id} lies in a docked end`);
    for (const [from, to] of b.faults)
      if (p.from < to - eps && p.to > from + eps) wrong.push(`${p.id} holds a fault`);
    const beside = pieces.filter((q) => q.from < p.from + eps && q.to + rules.kerf > p.from + eps).length;
    if (beside > strips) wrong.push(`${p.id}: ${beside} pieces side by side in ${strips} strips`);
  }
}

function checkRows(
  byId: ReadonlyMap<string, Cut>,
  rules: CheckedRules,
  plan: CheckedPlan,
  wrong: string[],
): void {
  let before: number[] = [];
  const placed = new Set<string>();
  plan.rows.forEach((row, r) => {
    const ids = row.pieces.split(' | ').map((text) => text.split(' ')[0] as string);
    const pieces = ids.map((id) => byId.get(id));
    if (pieces.some((p) => p?.row !== r + 1)) wrong.push(`row ${r + 1}: a piece is cut for another row`);
    ids.forEach((id) => placed.add(id));
    const lengths = pieces.map((p) => (p ? p.to - p.from : 0));
    const whole = lengths.reduce((a, b) => a + b, 0);
    if (Math.abs(whole - rules.topLength - rules.spare) > eps * lengths.length)
      wrong.push(`row ${r + 1}: ${whole} mm long`);
    if (lengths.length > rules.maxJoints + 1) wrong.push(`row ${r + 1}: too many joints`);
    lengths.forEach((l, i) => {
      const ends = Number(i === 0) + Number(i === lengths.length - 1);
      if (l - (ends * rules.spare) / 2 < rules.leastPiece - 2 * eps)
        wrong.push(`row ${r + 1}: a piece shows less than the least`);
    });
    const across = Math.min(
      ...pieces.map((p) => (p ? (plan.lay === 'flat' ? p.board.width : p.board.thickness) : 0)),
    );
    if (row.width > across - rules.jointing + eps) wrong.push(`row ${r + 1}: wider than its narrowest piece`);
    const joints: number[] = [];
    lengths.slice(0, -1).reduce((at, l) => (joints.push(at + l), at + l), 0);
    if (joints.some((x) => before.some((y) => Math.abs(x - y) < rules.stagger - 4 * eps)))
      wrong.push(`row ${r + 1}: joints too near`);
    before = joints;
  });
  if (placed.size !== byId.size) wrong.push('a piece is cut and not laid');
}

function checkWidth(rules: CheckedRules, plan: CheckedPlan, wrong: string[]): void {
  const slabs = new Map<number, number>();
  for (const row of plan.rows) slabs.set(row.slab, (slabs.get(row.slab) ?? 0) + row.width);
  for (const [slab, width] of slabs)
    if (width > rules.widestSlab + eps) wrong.push(`slab ${slab}: ${width} mm wide`);
  const total = [...slabs.values()].reduce((a, b) => a + b, 0) - slabs.size * rules.slabJointing;
  if (Math.abs(total - plan.width) > eps * plan.rows.length)
    wrong.push(`top ${plan.width} mm said, ${total} mm by its rows`);
}
