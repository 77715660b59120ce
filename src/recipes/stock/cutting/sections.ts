import { InputError, type Issue } from '../../../units/input-error.js';
import type { Aim } from './scale.js';

export interface PartRow {
  readonly name?: string | undefined;
  readonly length: number;
  readonly count: number;
  readonly width?: number | undefined;
  readonly thickness?: number | undefined;
}
export interface StockRow extends Omit<PartRow, 'count'> {
  /** Boards there are; "as needed" or left out: without end. */
  readonly count?: number | 'as needed' | undefined;
  readonly cost?: number | undefined;
}
export interface CuttingGiven {
  readonly parts: readonly PartRow[];
  readonly stock: readonly StockRow[];
  readonly kerf: number;
  readonly trimEachEnd: number;
  readonly aim?: Aim | undefined;
}

/** Parts and stock of one section, with the rows they came from. */
export interface Section {
  /** Such as `70 x 34 mm`; undefined where no sections were given. */
  readonly label?: string;
  readonly parts: readonly PartRow[];
  readonly stock: readonly StockRow[];
}

const mm = (m: number): string => `${Number((m * 1000).toFixed(2))}`;

/** Section by name: the lesser side last, so that 34 x 70 and 70 x 34 are one. */
function sectionOf(r: { width?: number | undefined; thickness?: number | undefined }): string | undefined {
  const sides = [r.width, r.thickness].filter((s): s is number => s !== undefined).sort((a, b) => b - a);
  return sides.length === 0 ? undefined : `${sides.map(mm).join(' x ')} mm`;
}

/** What to make least: as asked, or what the stock suggests. @throws InputError when costs are wanted and missing */
export function aimOf(given: CuttingGiven): Aim {
  const priced = given.stock.filter((s) => s.cost !== undefined);
  if (given.aim === 'cost' && priced.length === 0)
    throw new InputError({
      field: 'stock',
      message: 'got no cost, takes a cost for the boards when the cost is to be made least',
    });
  if (given.aim) return given.aim;
  if (priced.some((s) => (s.cost as number) > 0)) return 'cost';
  return new Set(given.stock.map((s) => s.length)).size > 1 ? 'length' : 'boards';
}

/**
 * Parts and stock put together by section. Stock without a section serves any part, parts without one any stock.
 * @throws InputError for parts that no board is long enough for, or has the section of
 */
export function sectionsOf(given: CuttingGiven): Section[] {
  const pieces = given.parts.reduce((s, p) => s + p.count, 0);
  if (pieces > 100_000)
    throw new InputError({ field: 'parts', message: `got ${pieces} parts in all, takes at most 100000` });
  const names = [...new Set(given.parts.map(sectionOf))];
  const issues: Issue[] = [];
  const sections = names.map((label): Section => {
    const stock = given.stock.filter(
      (s) => label === undefined || sectionOf(s) === undefined || sectionOf(s) === label,
    );
    const longest = Math.max(0, ...stock.map((s) => s.length - 2 * given.trimEachEnd));
    given.parts.forEach((p, i) => {
      if (sectionOf(p) !== label) return;
      if (stock.length === 0)
        issues.push({
          field: `parts[${i + 1}]`,
          message: `got the section ${label}, takes one that the stock has: ${[...new Set(given.stock.map(sectionOf))].join(', ')}`,
        });
      else if (p.length > longest + 1e-10)
        issues.push({
          field: `parts[${i + 1}].length`,
          message: `got ${mm(p.length)} mm, takes at most ${mm(longest)} mm: the longest that the stock leaves${given.trimEachEnd > 0 ? ' once both ends are docked' : ''}`,
        });
    });
    return {
      ...(label === undefined ? {} : { label }),
      parts: given.parts.filter((p) => sectionOf(p) === label),
      stock,
    };
  });
  // Boards with a count cannot serve two sections at once: who has them would depend on the order.
  given.stock.forEach((s, i) => {
    if (typeof s.count === 'number' && sections.filter((x) => x.stock.includes(s)).length > 1)
      issues.push({
        field: `stock[${i + 1}].width`,
        message: `missing; takes the board’s width and thickness, since ${s.count} board${s.count === 1 ? '' : 's'} cannot be shared among ${sections.length} sections of parts; or count: "as needed"`,
      });
  });
  if (issues.length > 0) throw new InputError(issues);
  return sections;
}
