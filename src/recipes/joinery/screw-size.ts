import { Quantity } from '../../units/quantity.js';
import { InputError, inspectValue } from '../../units/input-error.js';
import { tryParse } from '../../units/try-parse.js';
import { field, makeField } from '../../engine/field.js';
import { tableRows, type DataRow } from '../../materials/data-tables.js';

const inch = 0.0254;

/** Shank diameter of a wood screw by its gauge number, metres: 0.060 in and 0.013 in a number. */
export function gaugeDiameter(gauge: number): number {
  return (0.06 + 0.013 * gauge) * inch;
}

const takes = 'a diameter of 1 to 25 mm such as "5 mm", or a gauge from #0 to #24 such as "#8"';

/** A field for a screw's shank diameter, metres: a length or a gauge number. */
export function screwField<const O extends { readonly label: string }>(options: O) {
  const length = field.length({ label: options.label, min: '1 mm', max: '25 mm' });
  const read = (value: unknown): number => {
    const gauge = /^\s*(?:#|no\.?\s*|gauge\s*)(\d{1,2})\s*(?:gauge)?\s*$/i.exec(
      typeof value === 'string' ? value : '',
    );
    const d =
      gauge && Number(gauge[1]) <= 24 ? gaugeDiameter(Number(gauge[1])) : tryParse(() => length.read(value));
    if (d instanceof InputError)
      throw new InputError(
        `got ${inspectValue(value instanceof Quantity ? value.toString() : value)}, takes ${takes}`,
      );
    return d;
  };
  return makeField<string | Quantity<'length'>, number, O>(
    {
      kind: 'screw',
      expects: takes,
      read,
      format: (d) => length.format(d),
      accepts: (v) => length.accepts(v),
    },
    options,
  );
}

/** The gauge number nearest to a shank. */
export const gaugeOf = (diameter: number): number => Math.round((diameter / inch - 0.06) / 0.013);

/** The tables' pilot holes for a shank within half a gauge of a printed one; the fuller table first. */
export function pilotRow(diameter: number): DataRow | undefined {
  const gauge = gaugeOf(diameter);
  return tableRows('screw-pilots.various').find((row) => Number(row.text('gauge')) === gauge);
}

/** "5/64" of an inch in metres; a drill by letter or number (#44) is not one. */
export function drillOf(text: string): number | undefined {
  const m = /^(\d+)\/(\d+)$/.exec(text);
  return m ? (Number(m[1]) / Number(m[2])) * inch : undefined;
}

/** The printed pilot hole of a shank in words: a fraction of an inch, or a drill by its number. */
export function printedHole(diameter: number, wood: 'hardwood' | 'softwood') {
  const row = pilotRow(diameter);
  if (!row) return undefined;
  const hole = row.text(`pilot_${wood}_in`);
  const size = drillOf(hole);
  const text = size === undefined ? `drill ${hole}` : `${hole} in`;
  const words = size === undefined ? text : `${text} (${(size * 1000).toFixed(2)} mm)`;
  return { gauge: row.text('gauge'), text, words, citation: row.citation };
}

/** The printed diameter at the root of the thread, metres; undefined where no table has the gauge. */
export function printedRoot(diameter: number): number | undefined {
  const gauge = gaugeOf(diameter);
  const row = tableRows('screw-pilots.various').find(
    (r) => Number(r.text('gauge')) === gauge && r.number('root_in') !== undefined,
  );
  const root = row?.number('root_in');
  return root === undefined ? undefined : root * inch;
}
