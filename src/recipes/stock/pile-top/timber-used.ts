// What a lay-up takes from the pile: the rough volume of the boards that are cut, less offcuts worth keeping.
import type { Row, Stick } from './lay-up-problem.js';
import { copyKey, usedLengths } from './lay-up-plan.js';
import type { PileBoard } from './pile-sticks.js';

/** Cubic millimetres of a box whose sides are in micrometres. */
export const boxVolume = (length: number, width: number, thickness: number): number =>
  (length / 1000) * (width / 1000) * (thickness / 1000);

/** Rough volume of all boards that are cut, less the offcuts that stay, in mm³. */
export function timberOf(
  rows: readonly Row[],
  sticks: readonly Stick[],
  boards: readonly PileBoard[],
  kerf: number,
  least: number,
): number {
  const used = usedLengths(rows, kerf);
  const touched = new Set<string>();
  let volume = 0;
  for (const i of used.keys()) {
    const stick = sticks[i] as Stick;
    if (touched.has(copyKey(stick))) continue;
    touched.add(copyKey(stick));
    const b = boards[stick.board] as PileBoard;
    volume += boxVolume(b.length, b.width, b.thickness);
  }
  sticks.forEach((s, i) => {
    if (!touched.has(copyKey(s))) return;
    const rest = s.length - (used.get(i) ?? 0);
    if (rest >= least)
      volume -= boxVolume(rest, s.strip[1] - s.strip[0], (boards[s.board] as PileBoard).thickness);
  });
  return Math.max(0, volume);
}

/** Rough volume per net width and length of a stick, with its share of what is lost at ends and faults. */
export function costs(sticks: readonly Stick[], boards: readonly PileBoard[], jointing: number): number[] {
  const clear = new Map<string, number>();
  for (const s of sticks)
    clear.set(copyKey(s), (clear.get(copyKey(s)) ?? 0) + s.length * (s.across - jointing));
  return sticks.map((s) => {
    const b = boards[s.board] as PileBoard;
    return (b.length * b.width * b.thickness) / Math.max(1, clear.get(copyKey(s)) ?? 1);
  });
}
