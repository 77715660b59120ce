// Checks a layout against the rules, from its answer alone: knows nothing of how it was found.
interface Piece {
  readonly piece: string;
  readonly start: number;
  readonly length: number;
  readonly tone?: string | undefined;
  readonly cut: boolean;
}
export interface Pile {
  readonly name: string;
  readonly length: number;
  readonly tone?: string;
}
export interface Rules {
  readonly topLength: number;
  readonly rows: number;
  readonly minStagger: number;
  readonly kerf: number;
  readonly shortest: number;
}

/** Everything that is wrong with a layout, all lengths in mm; empty when it is legal. */
export function faultsOfLayout(
  rows: readonly (readonly Piece[])[],
  pile: readonly Pile[],
  rules: Rules,
): string[] {
  const faults: string[] = [];
  const eps = 1e-6;
  if (rows.length !== rules.rows) faults.push(`${rows.length} rows, not ${rules.rows}`);
  const used = new Map<string, number[]>();
  rows.forEach((row, r) => {
    let x = 0;
    for (const p of row) {
      if (Math.abs(p.start - x) > eps)
        faults.push(`row ${r + 1}: ${p.piece} starts at ${p.start}, the row has come to ${x}`);
      if (p.length <= 0) faults.push(`row ${r + 1}: ${p.piece} has no length`);
      x += p.length;
      used.set(p.piece, [...(used.get(p.piece) ?? []), p.length]);
      const stock = pile.find((s) => s.name === p.piece);
      if (!stock) faults.push(`row ${r + 1}: ${p.piece} is not in the pile`);
      else {
        if (stock.tone !== p.tone) faults.push(`${p.piece} is ${stock.tone}, not ${p.tone}`);
        if (p.cut !== p.length < stock.length - eps)
          faults.push(`${p.piece}: cut is ${p.cut}, ${p.length} of ${stock.length}`);
        if (p.cut && p.length < rules.shortest - eps)
          faults.push(`${p.piece} is cut to ${p.length}, under ${rules.shortest}`);
      }
    }
    if (Math.abs(x - rules.topLength) > eps) faults.push(`row ${r + 1} is ${x} long, not ${rules.topLength}`);
  });
  for (const [name, parts] of used) {
    const stock = pile.find((s) => s.name === name);
    const need = parts.reduce((a, b) => a + b, 0) + (parts.length - 1) * rules.kerf;
    if (stock && need > stock.length + eps) faults.push(`${name}: ${need} is cut from ${stock.length}`);
  }
  if (worstStagger(rows) < rules.minStagger - eps)
    faults.push(`joints ${worstStagger(rows)} apart, ${rules.minStagger} asked`);
  return faults;
}

/** Least distance of joints in neighbouring rows, mm. */
export function worstStagger(rows: readonly (readonly Piece[])[]): number {
  let least = Infinity;
  for (let r = 1; r < rows.length; r++)
    for (const p of rows[r]!.slice(1))
      for (const q of rows[r - 1]!.slice(1)) least = Math.min(least, Math.abs(p.start - q.start));
  return least;
}

/** Length of like tones side by side, by walking along every seam in steps between the joints. */
export function likeTones(rows: readonly (readonly Piece[])[]): number {
  let same = 0;
  const at = (row: readonly Piece[], x: number) =>
    row.find((p) => p.start <= x && x < p.start + p.length)?.tone;
  for (let r = 1; r < rows.length; r++) {
    const ends = [...rows[r]!, ...rows[r - 1]!]
      .flatMap((p) => [p.start, p.start + p.length])
      .sort((a, b) => a - b);
    for (let i = 1; i < ends.length; i++) {
      const middle = (ends[i]! + ends[i - 1]!) / 2;
      const tone = at(rows[r]!, middle);
      if (tone !== undefined && tone === at(rows[r - 1]!, middle)) same += ends[i]! - ends[i - 1]!;
    }
  }
  return same;
}
