import { InputError } from '../../units/input-error.js';
import type { Trace } from '../../engine/trace.js';
import { tableRows, type DataRow } from '../../materials/data-tables.js';

const side = String.raw`(\d[\d ./]*?|\.\d+)\s*(?:in|")?`;
const section = new RegExp(`^\\s*${side}\\s*[x×]\\s*${side}\\s*$`, 'i');

/** `1 1/4` or `2.5`, in inches; not a number where it makes no sense. */
const inches = (text: string): number =>
  text.split(/\s+/).reduce((sum, piece) => {
    const [a, b = 1] = piece.split('/').map(Number);
    return sum + (a as number) / b;
  }, 0);

/** The two sides of a section such as `2x4` or `1 1/4 x 6`, in inches, the lesser as the thickness. @throws InputError */
export function nominalSides(text: string): { readonly thickness: number; readonly width: number } {
  const sides = (section.exec(text) ?? []).slice(1).map(inches);
  const [thickness = NaN, width = NaN] = sides.sort((a, b) => a - b);
  if (!(thickness > 0 && width < Infinity))
    throw new InputError({
      field: 'nominal',
      message: `got ${JSON.stringify(text.slice(0, 40))}, takes two nominal inch sizes such as 2x4 or 1 1/4 x 6`,
    });
  return { thickness, width };
}

/** The dressed size of one nominal side, in inches: of the table, or as a timber's greatest undersize. @throws InputError */
export function standardSize(
  part: 'thickness' | 'width',
  nominal: number,
  trace: Trace,
): { readonly dry: number; readonly green?: number } {
  const number = (r: DataRow, column: string): number => r.number(column) as number;
  const known = tableRows('dressed-sizes.ps-20').filter((r) => r.text('part').endsWith(part));
  const row = known.find((r) => Math.abs(number(r, 'nominal_in') - nominal) < 1e-9);
  if (row) {
    trace.source(row.citation);
    return { dry: number(row, 'dry_in'), green: number(row, 'green_in') };
  }
  // The last row that begins at or below this size: whole inches only, as the rule has it.
  const big = tableRows('timber-undersize.ps-20').findLast((r) => nominal >= number(r, 'nominal_from_in'));
  if (big && Number.isInteger(nominal)) {
    trace.source(big.citation);
    const under = number(big, 'under_in');
    trace.note(`A timber of ${nominal} in may be under its nominal size by ${under} in at most.`);
    return { dry: nominal - under };
  }
  throw new InputError({
    field: 'nominal',
    message: `got a size of ${Number(nominal.toFixed(4))} in, takes ${known.map((r) => r.text('nominal_in')).join(', ')} or a whole number of inches from 5`,
  });
}
