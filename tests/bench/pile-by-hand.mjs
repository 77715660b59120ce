// The width that comes from joining the other recipes by hand, as a maker would without topFromPile: choose one width for all
// rows, list the clear lengths that are wide enough, and let stripLayout lay as many rows as it can. Millimetres.
import { stretchesOf } from './pile-greedy.mjs';

async function rowsAt(stripLayout, pile, lengths, seconds) {
  const whole = pile.top.length + pile.top.spare;
  const total = lengths.reduce((s, l) => s + l, 0);
  for (let rows = Math.floor(total / whole); rows > 0; rows--) {
    try {
      await stripLayout({
        topLength: `${whole} mm`,
        rows,
        lengths: lengths.map((l) => ({ length: `${l} mm`, count: 1 })),
        minStagger: `${pile.rules.stagger} mm`,
        shortest: `${pile.rules.leastPiece + pile.top.spare / 2} mm`,
        kerf: `${pile.shop.kerf} mm`,
        timeLimit: `${Math.max(0.2, seconds / 8)} s`,
      });
      return rows;
    } catch {
      if (rows < total / whole - 5) return 0;
    }
  }
  return 0;
}

/** The best of five widths. */
export async function joinedByHand(stripLayout, pile, seconds) {
  const stretches = stretchesOf(pile);
  let best = 0;
  for (const share of [0.4, 0.6, 0.8, 0.95, 1]) {
    const width = stretches[Math.min(stretches.length - 1, Math.floor(share * stretches.length))]?.width;
    if (width === undefined) continue;
    const lengths = stretches.filter((s) => s.width >= width).map((s) => s.length);
    const rows = await rowsAt(stripLayout, pile, lengths, seconds);
    best = Math.max(best, rows * (width - pile.shop.jointEdge));
  }
  return best;
}
