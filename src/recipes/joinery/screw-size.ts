import { both, Quantity } from '../../quantities/quantity.js';
import { toQuantity } from '../../quantities/parse.js';
import { Refusal, shown } from '../../quantities/refusal.js';
import { makeField } from '../../recipe/field.js';
import { tableRows, type DataRow } from '../../timber/tables.js';

const inch = 0.0254;

/** Shank diameter of a wood screw by its gauge number, metres: 0.060 in and 0.013 in a number. */
export function gaugeDiameter(gauge: number): number {
  return (0.06 + 0.013 * gauge) * inch;
}

const takes = 'a diameter such as "5 mm", or a gauge such as "#8"';

/** A field for a screw's shank diameter, metres: a length or a gauge number. */
export function screwField<const O extends { readonly says: string }>(options: O) {
  const read = (value: unknown): number => {
    const gauge =
      typeof value === 'string' ? /^\s*(?:#|no\.?\s*|gauge\s*)(\d{1,2})\s*(?:gauge)?\s*$/i.exec(value) : null;
    if (gauge) {
      const n = Number(gauge[1]);
      if (n > 24) throw new Refusal(`got ${shown(value)}, takes a gauge of #0 to #24`);
      return gaugeDiameter(n);
    }
    if (typeof value === 'number') {
      if (value >= 0.001 && value <= 0.025) return value;
      throw new Refusal(`got ${value} with no unit, takes ${takes}`);
    }
    const d = toQuantity(value, 'length').value;
    if (d < 0.001 || d > 0.025)
      throw new Refusal(
        `got ${shown(value instanceof Quantity ? value.toString() : value)}, takes ${takes}, 1 to 25 mm`,
      );
    return d;
  };
  return makeField<string | Quantity<'length'>, number, O>(
    {
      kind: 'screw',
      takes,
      read,
      show: (d) => both(new Quantity('length', d)),
      fits: (v) => typeof v === 'string' || v instanceof Quantity,
    },
    options,
  );
}

/** The tables' pilot holes for a shank within half a gauge of a printed one; the fuller table first. */
export function pilotRow(diameter: number): DataRow | undefined {
  return tableRows('screw-pilots.various')
    .map((row) => ({ row, off: Math.abs(gaugeDiameter(Number(row.text('gauge'))) - diameter) }))
    .filter((x) => x.off <= 0.0066 * inch)
    .sort((x, y) => x.off - y.off)[0]?.row;
}

/** "5/64" of an inch in metres; a drill by letter or number (#44) is not one. */
export function drillOf(text: string): number | undefined {
  const m = /^(\d+)\/(\d+)$/.exec(text);
  return m ? (Number(m[1]) / Number(m[2])) * inch : undefined;
}
