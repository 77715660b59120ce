import { gives, layersAt, type Dressed, type Dressing } from './survey.js';

/** What the dressed rows give at one common thickness. Base units. */
export function totalsAt(rows: readonly Dressed[], thickness: number, how: Dressing) {
  const sum = { boards: 0, pieces: 0, length: 0, area: 0 };
  for (const d of rows) {
    const pieces = d.row.count * d.along * d.across * layersAt(d, thickness, how);
    if (pieces > 0) sum.boards += d.row.count;
    sum.pieces += pieces;
    sum.length += pieces * d.pieceLength;
    sum.area += pieces * d.pieceLength * d.pieceWidth;
  }
  return { ...sum, volume: sum.area * thickness };
}

/** Thicknesses at which boards or layers drop out: between them the yield only rises, so one of them is the peak. Thinnest first. */
export function steps(rows: readonly Dressed[], how: Dressing): number[] {
  const all = new Set<number>();
  for (const d of rows) {
    let layers = 1;
    // One layer is the board's own dressed thickness.
    for (let t = d.thickness; t >= 1e-3; t = (d.flat + how.kerf) / ++layers - how.kerf - 2 * how.plane) {
      // Rounded down to a ten-thousandth of a millimetre, so that equal boards are one step and none drops out of its own.
      all.add(Math.floor(t * 1e7 + 1e-4) / 1e7);
      if (!how.resaw) break;
    }
  }
  // A planer is set to a tenth of a millimetre: a long survey is read at that fineness.
  const list = all.size > 400 ? new Set([...all].map((t) => Math.floor(t * 1e4 + 1e-6) / 1e4)) : all;
  return [...list].sort((a, b) => a - b);
}

/** Volume of the rows as found. */
export const roughOf = (rows: readonly Dressed[]): number =>
  rows.reduce((s, { row: r }) => s + r.count * r.length * r.width * r.thickness, 0);

/** What each group of the survey gives at one common thickness, in the order of the rows. */
export function byGroup(rows: readonly Dressed[], thickness: number, how: Dressing) {
  return [...new Set(rows.map((d) => d.row.group))].map((group) => {
    const own = rows.filter((d) => d.row.group === group);
    const { pieces, length, area, volume } = totalsAt(own, thickness, how);
    const left = own.filter(gives).map((d) => d.thickness);
    return {
      group,
      boards: own.reduce((n, d) => n + d.row.count, 0),
      ...(left.length > 0 ? { thinnest: left.reduce((a, b) => Math.min(a, b)) } : {}),
      pieces,
      usableLength: length,
      area,
      volume,
      yield: volume / roughOf(own),
    };
  });
}
