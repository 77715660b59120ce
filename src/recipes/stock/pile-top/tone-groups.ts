// Lay-ups of several tones put side by side, so that rows of a tone lie together and joints keep their stagger.
import { jointsOf, staggered, type Row, type RowRules } from './lay-up-problem.js';

/** A row with its pieces from right to left. */
function mirrored(row: Row): Row {
  const pieces = [...row.pieces].reverse();
  return { ...row, pieces, joints: jointsOf(pieces) };
}

/** A group as it is, turned round, mirrored, or both: each keeps its own stagger. */
const turns = (group: readonly Row[]): (readonly Row[])[] => {
  const back = [...group].reverse();
  return [group, back, group.map(mirrored), back.map(mirrored)];
};

/** Groups one after another. Where two cannot meet however they are turned, rows of the second are left out until they can. */
export function joinTones(groups: readonly (readonly Row[])[], rules: RowRules): Row[] {
  let rows: Row[] = [];
  for (const group of groups) {
    const last = rows.at(-1);
    for (let cut = 0; cut <= group.length; cut++) {
      const way = [...turns(group.slice(cut)), ...turns(group.slice(0, group.length - cut))].find(
        (g) => !last || !g[0] || staggered(last.joints, g[0].joints, rules.stagger),
      );
      if (!way) continue;
      rows = [...rows, ...way];
      break;
    }
  }
  return rows;
}
