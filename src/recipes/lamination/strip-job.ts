import { InputError } from '../../units/input-error.js';
import { field, makeField, type Input, type Parsed } from '../../engine/field.js';
import { tableField, type TableGiven } from '../../engine/table-field.js';
import { mm } from './salvage-caution.js';
import { wasteOf, type Job, type Stock } from './strip-row.js';

const columns = {
  name: field.text({ label: 'name of the piece', optional: true }),
  length: field.length({
    label: 'usable length',
    help: 'Length with ends square and sound.',
    above: '0 mm',
    max: '20 m',
  }),
  tone: field.either([field.text({ label: 'tone' }), field.ratio({ label: 'tone by number' })], {
    label: 'tone',
    help: 'In any words or numbers, such as light or dark.',
    optional: true,
  }),
  count: field.count({ label: 'pieces alike', min: 1, max: 1000, default: 1 }),
} as const;
const lengths = field.list(columns.length, { label: 'lengths', most: 2000 });
const table = tableField(columns, { label: 'pieces', most: 2000 });
type Piece = Parsed<typeof columns>;

/** Pieces as bare lengths or as a table. */
export const piecesField = makeField<
  readonly (string | Input<typeof columns>)[] | TableGiven<typeof columns>,
  readonly Piece[],
  { label: string }
>(
  {
    kind: 'table',
    expects: "lengths such as '640 mm, 815 mm, 590 mm', or a table with columns name?, length, tone?, count?",
    accepts: (v) => table.accepts(v),
    format: (pieces) =>
      `${pieces.reduce((n, p) => n + p.count, 0)} pieces, ${mm(pieces.reduce((sum, p) => sum + p.count * p.length, 0))} in all`,
    read: (v) => {
      const bare =
        typeof v === 'string'
          ? !/[\r\n]|\.(csv|tsv|txt)$/i.test(v.trim())
          : Array.isArray(v) && !v.some((x) => typeof x === 'object' && x !== null && !('value' in x));
      return bare
        ? lengths.read(v).map((length) => ({ name: undefined, length, tone: undefined, count: 1 }))
        : table.read(v);
    },
  },
  { label: 'pieces' },
  { fields: columns },
);

const nano = (metres: number): number => Math.round(metres * 1e9);
type JobInput = {
  readonly topLength: number;
  readonly rows: number;
  readonly lengths: readonly Piece[];
  readonly minStagger: number;
  readonly kerf: number;
  readonly shortest: number | undefined;
};

/** The job in whole nanometres. @throws InputError when the pieces do not reach */
export function jobOf(given: JobInput): Job & { readonly toneNames: readonly string[] } {
  const toneNames = [
    ...new Set(given.lengths.flatMap((p) => (p.tone === undefined ? [] : [String(p.tone)]))),
  ].sort();
  const shortest = Math.max(1, nano(given.shortest ?? Math.min(given.minStagger, 0.1)));
  const total = given.lengths.reduce((n, p) => n + p.count, 0);
  if (total > 5000)
    throw new InputError({ field: 'lengths', message: `got ${total} pieces, takes 5000 at most` });
  const all = given.lengths.flatMap((p, i) => {
    const name = p.name ?? String(i + 1);
    return Array.from({ length: p.count }, (_, k): Stock => ({
      name: p.count > 1 ? `${name}${/\d$/.test(name) ? '.' : ''}${k + 1}` : name,
      length: nano(p.length),
      tone: p.tone === undefined ? -1 : toneNames.indexOf(String(p.tone)),
    }));
  });
  const stocks = given.shortest === undefined ? all : all.filter((s) => s.length >= shortest);
  const length = nano(given.topLength);
  const have = stocks.reduce((s, x) => s + x.length, 0);
  if (have < given.rows * length) {
    throw new InputError({
      field: 'lengths',
      message: `got ${mm(have / 1e9)} in all${stocks.length < all.length ? ` that is not shorter than ${mm(shortest / 1e9)}` : ''}, takes at least the ${mm((given.rows * length) / 1e9)} of ${given.rows} rows: ${mm((given.rows * length - have) / 1e9)} more, or fewer rows`,
    });
  }
  return {
    length,
    rows: given.rows,
    stagger: nano(given.minStagger),
    kerf: nano(given.kerf),
    shortest,
    stocks,
    toneWeight: 0.02,
    toneNames,
  };
}

/** Every stock piece that meets the saw: its parts in words, and what is left. */
export function cutsOf(
  job: Job,
  rows: readonly (readonly { readonly stock: number; readonly length: number }[])[],
) {
  const parts = new Map<number, { row: number; length: number }[]>();
  rows.forEach((row, r) =>
    row.forEach((p) => parts.set(p.stock, [...(parts.get(p.stock) ?? []), { row: r + 1, length: p.length }])),
  );
  return [...parts].flatMap(([i, list]) => {
    const stock = job.stocks[i] as Stock;
    const sum = list.reduce((s, p) => s + p.length, 0);
    if (sum === stock.length) return [];
    const kept = stock.length - sum - wasteOf(job, stock.length, sum, list.length);
    const saw = stock.length - sum <= (list.length - 1) * job.kerf ? list.length - 1 : list.length;
    return [
      {
        piece: stock.name,
        from: stock.length / 1e9,
        parts: list.map((p) => `${mm(p.length / 1e9)} for row ${p.row}`).join(', '),
        left: Math.max(0, stock.length - sum - saw * job.kerf) / 1e9,
        fate: kept > 0 ? 'kept' : 'lost',
        saw,
      },
    ];
  });
}
