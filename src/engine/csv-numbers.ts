import { InputError, inspectValue } from '../units/input-error.js';

/** A cell of a column that holds numbers, with the line of the file it stands in. */
export interface NumberCell {
  readonly line: number;
  readonly text: string;
}

type Mark = '.' | ',';

interface Evidence {
  /** A cell that shows this mark to set decimals apart. */
  readonly decimal: Readonly<Record<Mark, NumberCell | undefined>>;
  /** A cell of one mark before three digits: `2.400` is 2.4 or 2400. */
  readonly open: NumberCell | undefined;
}

/** Plain, thin and unbreakable spaces between groups of three digits. */
const spaced = /(?<=\d)[ \u00a0\u2009\u202f](?=\d{3}(?!\d| ?\/))/g;
const number = /\d[\d.,]*/;

/**
 * How a file writes its numbers, decided once for all cells: with a decimal comma or a decimal point. Where a file of commas or tabs
 * leaves it open whether `2.400` is 2.4 or 2400, it is refused with both readings; a file parted by semicolons is one of decimal commas,
 * since programs part by semicolons where the comma is taken.
 */
export class NumberStyle {
  private constructor(private readonly decimal: Mark) {}

  /** @throws InputError naming the cells that contradict each other or leave the style open */
  static of(cells: readonly NumberCell[], delimiter: string): NumberStyle {
    const { decimal, open } = evidenceOf(cells);
    const [point, comma] = [decimal['.'], decimal[',']];
    if (point !== undefined && comma !== undefined)
      throw new InputError(
        `got ${quote(comma)} with a decimal comma and ${quote(point)} with a decimal point, takes one way of writing numbers in a file`,
      );
    if (comma !== undefined) return new NumberStyle(',');
    if (point !== undefined || open === undefined) return new NumberStyle('.');
    const mark: Mark = open.text.includes('.') ? '.' : ',';
    if (delimiter === ';') return new NumberStyle(',');
    if (delimiter === ',' && mark === '.') return new NumberStyle('.');
    throw new InputError(bothReadings(open, mark));
  }

  /** The cell as it is written with a decimal point and without marks between thousands. */
  plain(text: string): string {
    const joined = text.replace(spaced, '');
    const thousands = this.decimal === ',' ? '.' : ',';
    return joined.replace(/\d[\d.,]*\d/g, (written) => {
      const whole = written.split(this.decimal)[0] ?? '';
      const grouped = new RegExp(`^\\d{1,3}(\\${thousands}\\d{3})+$`).test(whole);
      if (written.includes(thousands) && !grouped) return written;
      return written.replaceAll(thousands, '').replace(this.decimal, '.');
    });
  }

  /** One line on what was read otherwise than it stands there; undefined where nothing was. */
  note(cells: readonly NumberCell[]): string | undefined {
    const thousands = this.decimal === ',' ? '.' : ',';
    const changed = cells.filter(({ text }) => this.plain(text) !== text);
    const grouped = changed.find(({ text }) => text.includes(thousands) || text.replace(spaced, '') !== text);
    const decimal = changed.find(({ text }) => text.includes(this.decimal) && this.decimal === ',');
    const told = [
      grouped && `${grouped.text} read as ${this.plain(grouped.text)}: thousands`,
      decimal && `${decimal.text} read as ${this.plain(decimal.text)}: decimal comma`,
    ].filter((line) => line !== undefined);
    return told.length === 0 ? undefined : told.join('; ');
  }
}

function evidenceOf(cells: readonly NumberCell[]): Evidence {
  const decimal: Record<Mark, NumberCell | undefined> = { '.': undefined, ',': undefined };
  let open: NumberCell | undefined;
  for (const cell of cells) {
    const written = number.exec(cell.text.replace(spaced, ''))?.[0].replace(/[.,]$/, '') ?? '';
    const found = decimalOf(written);
    if (found === 'open') open ??= cell;
    else if (found !== undefined) decimal[found] ??= cell;
  }
  return { decimal, open };
}

/** The mark that sets decimals apart in one written number; undefined where it has none. */
function decimalOf(written: string): Mark | 'open' | undefined {
  const marks: readonly string[] = written.match(/[.,]/g) ?? [];
  const last = marks.at(-1) as Mark | undefined;
  if (last === undefined) return undefined;
  const other: Mark = last === '.' ? ',' : '.';
  if (marks.includes(other)) return last;
  // One mark that comes again parts thousands: 1.250.000.
  if (marks.length > 1) return other;
  const [before = '', after = ''] = written.split(last);
  return after.length === 3 && /^[1-9]\d{0,2}$/.test(before) ? 'open' : last;
}

const quote = ({ text, line }: NumberCell): string => `${inspectValue(text)} (line ${line})`;

function bothReadings(cell: NumberCell, mark: Mark): string {
  const asDecimal = cell.text.replace(mark, '.').replace(/0+(?=\D|$)/, '');
  const asThousands = cell.text.replace(mark, '');
  return `got ${quote(cell)}, which is ${asDecimal} or ${asThousands}; write ${inspectValue(asDecimal)} or ${inspectValue(asThousands)}`;
}
