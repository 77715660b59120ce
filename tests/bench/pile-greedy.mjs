// A falling-order greedy to compare with: widest stretches first, each row filled in that order, joints wherever they fall, and
// a row that breaks the stagger put between any two others or left out. Millimetres.

/** Clear stretches of a pile, widest first. */
export function stretchesOf({ boards, top, shop, rules }) {
  const out = [];
  for (const b of boards) {
    if (b.thickness - (b.allowance ?? 0) < top.thickness + 2 * shop.planeFace) continue;
    for (let copy = 0; copy < (b.count ?? 1); copy++) {
      let at = b.endLeft ?? 0;
      for (const [from, to] of [...(b.faults ?? []), [b.length - (b.endRight ?? 0), b.length]].sort(
        (x, y) => x[0] - y[0],
      )) {
        if (from - at >= rules.leastPiece) out.push({ length: from - at, width: b.width });
        at = Math.max(at, to);
      }
    }
  }
  return out.sort((a, b) => b.width - a.width || b.length - a.length);
}

function nextRow(stretches, { top, shop, rules }) {
  const whole = top.length + top.spare;
  const leastEnd = rules.leastPiece + top.spare / 2;
  const row = [];
  let need = whole;
  for (const s of stretches) {
    if (s.length < rules.leastPiece || row.length > rules.mostJoints) continue;
    const take = s.length >= need ? need : Math.min(s.length, need - leastEnd);
    if (take < (take === need ? leastEnd : rules.leastPiece)) continue;
    if (take < need && row.length === rules.mostJoints) continue;
    row.push({ s, take, width: s.width });
    need -= take;
    if (need <= 0) {
      for (const p of row) p.s.length -= p.take + shop.kerf;
      return row;
    }
  }
  return undefined;
}

const jointsOf = (row) => {
  let at = 0;
  return row.slice(0, -1).map((p) => (at += p.take));
};

/** Width of the top that the greedy lays, slabs left out. */
export function greedyWidth(pile) {
  const stretches = stretchesOf(pile);
  const rows = [];
  for (let row = nextRow(stretches, pile); row; row = nextRow(stretches, pile)) rows.push(row);
  const placed = [];
  const apart = (a, b) =>
    !a || !b || jointsOf(a).every((x) => jointsOf(b).every((y) => Math.abs(x - y) >= pile.rules.stagger));
  for (const row of rows)
    for (let at = 0; at <= placed.length; at++)
      if (apart(placed[at - 1], row) && apart(row, placed[at])) {
        placed.splice(at, 0, row);
        break;
      }
  return placed.reduce((s, row) => s + Math.min(...row.map((p) => p.width)) - pile.shop.jointEdge, 0);
}
