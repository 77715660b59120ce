// A lay-up carried over to other sticks of the same boards: to a thinner top, to more boards, or to looser rules.
import { staggered, type Piece, type Row, type Stick, type Strip } from './lay-up-problem.js';
import type { Lay } from './pile-sticks.js';
import { insertRow } from './row-order.js';
import { mulberry32 } from '../../../engine/random.js';
import { ripsIn, type TopAt, type TopJob } from './top-job.js';

/** Names of sticks that stay the same when others come or go; strips on edge are counted from the side they begin at. */
function namesOf(sticks: readonly Stick[], lay: Lay): string[] {
  const strips = new Map<string, number[]>();
  const at = (s: Stick): string => `${s.board}:${s.copy}:${s.from}`;
  for (const s of sticks) strips.set(at(s), [...(strips.get(at(s)) ?? []), s.strip[0]]);
  for (const list of strips.values()) list.sort((a, b) => a - b);
  return sticks.map((s) =>
    lay === 'flat'
      ? `${at(s)}:${s.strip[0]}`
      : `${at(s)}#${(strips.get(at(s)) as number[]).indexOf(s.strip[0])}`,
  );
}

/** The rows of a lay-up that other sticks give too, in places that keep the stagger. */
export function carryOver(top: TopAt, sticks: readonly Stick[], job: TopJob, lay: Lay): Row[] {
  if (top.lay !== lay) return [];
  const places = new Map(namesOf(sticks, lay).map((name, i) => [name, i]));
  const names = namesOf(top.sticks, lay);
  const { rules } = job;
  const ripped = ripsIn(job, lay);
  const strips = new Map<Strip | number, Strip>();
  const carried = (piece: Piece): Piece | undefined => {
    const stick = places.get(names[piece.stick] as string);
    if (stick === undefined) return undefined;
    const there = sticks[stick] as Stick;
    const before = top.sticks[piece.stick] as Stick;
    if (there.length < before.length || there.across < before.across) return undefined;
    if (!ripped) return piece.strip ? undefined : { stick, length: piece.length, across: piece.across };
    const source = piece.strip ?? stick;
    const strip = strips.get(source) ?? { stick, pieces: [] };
    strips.set(source, strip);
    return { stick, length: piece.length, across: piece.across, strip };
  };
  const random = mulberry32(1);
  let rows: Row[] = [];
  for (const row of top.rows) {
    const pieces = row.pieces.map(carried);
    if (pieces.some((p) => p === undefined) || row.joints.length > rules.maxJoints) continue;
    const same: Row = { ...row, pieces: pieces as Piece[] };
    const last = rows.at(-1);
    if (!last || staggered(last.joints, same.joints, rules.stagger)) rows = [...rows, same];
    else rows = insertRow(rows, same, rules, random) ?? rows;
  }
  return rows;
}
