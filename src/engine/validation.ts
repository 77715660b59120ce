// Checks against print: a row names a recipe, what was given, and the figure a source prints; the runner calculates it again.
// Tests and the validation notebook use this one module, so neither can pass what the other would not.
import { unitOf } from '../units/unit.js';
import { Quantity } from '../units/quantity.js';
import type { Kind } from '../units/kind.js';
import { allSources } from './source.js';

/** One published figure to be calculated again. */
export interface CheckRow {
  readonly id: string;
  /** Export name of a recipe, or of a named procedure. */
  readonly recipe: string;
  readonly source: string;
  readonly locator: string;
  /** As a person would write them. */
  readonly inputs: Readonly<Record<string, unknown>>;
  /** Path into the answer: `change`, `slots[1].travel`. */
  readonly output: string;
  /** A second set of inputs whose answer is taken off the first: for figures printed as a difference. */
  readonly less?: Readonly<Record<string, unknown>>;
  /** The figure as printed: its last digit sets the tolerance (half a unit of it). Words are compared as words. */
  readonly printed: string;
  /** Unit of the printed figure; '' for a pure number. */
  readonly unit: string;
  readonly read: 'text' | 'memory';
  /** 'derived' where the source prints the figures and the formula and not this answer. */
  readonly basis?: 'printed' | 'derived';
  /** A wider tolerance, in the printed unit, with the reason. */
  readonly tolerance?: number;
  readonly why?: string;
  readonly note?: string;
}

/** What came of one row. */
export interface CheckOutcome {
  readonly row: CheckRow;
  readonly source: string;
  /** Our value in the printed unit; text where words are compared; undefined where the calculation failed. */
  readonly ours: number | string | undefined;
  /** Ours minus printed. */
  readonly difference: number | undefined;
  readonly tolerance: number;
  readonly passes: boolean;
  readonly error?: string;
}

/** Anything that answers named inputs: a recipe, or a procedure for what no recipe gives alone. */
export type Answering = (inputs: Readonly<Record<string, unknown>>) => unknown;

/** Half a unit of the last printed digit: `13.284` gives 0.0005, `80000` gives 0.5. */
export function printedTolerance(printed: string): number {
  const [, decimals = '', exponent = '0'] =
    /^[-+]?[\d\s]*\.?(\d*)(?:e([-+]?\d+))?$/i.exec(printed.trim()) ?? [];
  return 0.5 * 10 ** (Number(exponent) - decimals.length);
}

/** The value at a path of an answer. @throws Error naming the part that is missing */
export function valueAt(answer: unknown, path: string): unknown {
  return path.split(/\.|(?=\[)/).reduce<unknown>((at, part) => {
    const index = /^\[(\d+)\]$/.exec(part);
    const next = index
      ? (at as readonly unknown[] | undefined)?.[Number(index[1]) - 1]
      : (at as Record<string, unknown> | undefined)?.[part];
    if (next === undefined) throw new Error(`the answer has no ${part} of ${path}`);
    return next;
  }, answer);
}

function numberIn(value: unknown, unit: string): number | string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number' || typeof value === 'string') return value;
  if (value instanceof Quantity)
    return unit === ''
      ? value.value
      : (value.value - unitOf(value.kind as Kind, unit).offset) / unitOf(value.kind as Kind, unit).scale;
  throw new Error(`the answer is ${typeof value}, not a figure`);
}

/** Calculates one row again. */
export async function runCheck(
  row: CheckRow,
  find: (name: string) => Answering | undefined,
): Promise<CheckOutcome> {
  const tolerance = row.tolerance ?? printedTolerance(row.printed);
  const source = allSources().get(row.source)?.title ?? row.source;
  const fail = (error: string): CheckOutcome => ({
    row,
    source,
    ours: undefined,
    difference: undefined,
    tolerance,
    passes: false,
    error,
  });
  const recipe = find(row.recipe);
  if (!recipe) return fail(`no recipe ${row.recipe}`);
  try {
    const ours = numberIn(valueAt(await recipe(row.inputs), row.output), row.unit);
    const off = row.less ? numberIn(valueAt(await recipe(row.less), row.output), row.unit) : 0;
    if (typeof ours === 'string' || typeof off === 'string')
      return { row, source, ours, difference: undefined, tolerance: 0, passes: ours === row.printed };
    const value = ours - off;
    const difference = value - Number(row.printed);
    // A last binary digit of slack: a figure just half a unit off still prints the same.
    return {
      row,
      source,
      ours: value,
      difference,
      tolerance,
      passes: Math.abs(difference) <= tolerance * (1 + 1e-9) + Math.abs(value) * 1e-12,
    };
  } catch (error) {
    return fail((error as Error).message);
  }
}

/** Calculates every row again, in order. */
export async function runChecks(
  rows: readonly CheckRow[],
  find: (name: string) => Answering | undefined,
): Promise<CheckOutcome[]> {
  const out: CheckOutcome[] = [];
  for (const row of rows) out.push(await runCheck(row, find));
  return out;
}

/** Faults in a list of rows: ids twice, unknown sources, wider tolerances without a reason. Empty when sound. */
export function faultsOf(rows: readonly CheckRow[]): string[] {
  const ids = new Set<string>();
  return rows.flatMap((r) => {
    const faults: string[] = [];
    if (ids.has(r.id)) faults.push(`${r.id}: stands twice`);
    ids.add(r.id);
    if (!allSources().has(r.source))
      faults.push(`${r.id}: the source ${r.source} is not in data/sources.json`);
    if (!r.locator) faults.push(`${r.id}: no locator`);
    if (!['text', 'memory'].includes(r.read)) faults.push(`${r.id}: read is ${r.read}`);
    if (r.tolerance !== undefined && !r.why) faults.push(`${r.id}: a tolerance of its own without a reason`);
    if (typeof r.printed !== 'string') faults.push(`${r.id}: printed is not text`);
    return faults;
  });
}
