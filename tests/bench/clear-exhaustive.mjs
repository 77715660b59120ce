// Clear pieces from a few faulty boards by looking at everything: each set of boards, and each way to fill their clear lengths.
// Millimetres.

function clearLengths(b) {
  const out = [];
  let at = b.endLeft ?? 0;
  for (const [from, to] of [...(b.faults ?? []), [b.length - (b.endRight ?? 0), b.length]].sort(
    (x, y) => x[0] - y[0],
  )) {
    if (from > at) out.push(from - at);
    at = Math.max(at, to);
  }
  return out;
}

/** The least length of parts that these clear lengths leave missing. */
function leastMissing(lengths, parts, counts, kerf, known = new Map()) {
  const missing = parts.reduce((s, p, i) => s + p.length * counts[i], 0);
  if (lengths.length === 0 || missing === 0) return missing;
  const key = `${lengths.length}:${counts.join()}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const [first, ...rest] = lengths;
  let best = Infinity;
  const fill = (i, left, now) => {
    if (i === parts.length) {
      best = Math.min(best, leastMissing(rest, parts, now, kerf, known));
      return;
    }
    for (let n = 0; n <= now[i] && n * (parts[i].length + kerf) <= left; n++)
      fill(
        i + 1,
        left - n * (parts[i].length + kerf),
        now.map((c, j) => (j === i ? c - n : c)),
      );
  };
  fill(0, first + kerf, counts);
  known.set(key, best);
  return best;
}

/** The least length missing, and the least length of boards that leaves no more missing. */
export function fewestBoards(boards, parts, kerf) {
  const copies = boards.flatMap((b) => Array(b.count ?? 1).fill(b));
  const counts = parts.map((p) => p.count);
  let best = { missing: Infinity, length: Infinity };
  for (let set = 0; set < 1 << copies.length; set++) {
    const chosen = copies.filter((_, i) => (set >> i) & 1);
    const missing = leastMissing(chosen.flatMap(clearLengths), parts, counts, kerf);
    const length = chosen.reduce((s, b) => s + b.length, 0);
    if (missing < best.missing || (missing === best.missing && length < best.length))
      best = { missing, length };
  }
  return best;
}
