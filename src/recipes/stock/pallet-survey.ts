import type { Trace } from '../../engine/trace.js';
import { tableRows } from '../../materials/data-tables.js';
import { InputError } from '../../units/input-error.js';

/** Boards alike of a kind of pallet: metres. */
export interface PalletBoard {
  readonly name: string;
  readonly count: number;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}

/** The boards printed for a kind of pallet. */
export function boardsOf(
  given: { readonly kind: string; readonly thickness: number | undefined },
  trace: Trace,
): readonly PalletBoard[] {
  const rows = tableRows('pallets.various').filter(
    (r) => r.text('pallet') === given.kind && r.text('part').includes('board'),
  );
  for (const row of rows) trace.source(row.citation);
  return rows.map((r) => {
    const printed = r.number('thickness_mm');
    const thickness = given.thickness ?? (printed === undefined ? undefined : printed / 1000);
    if (thickness === undefined)
      throw new InputError({
        field: 'thickness',
        message: `missing: none is printed for the boards of a ${given.kind}; takes a length such as "22 mm"`,
      });
    return {
      name: r.text('part'),
      count: r.number('count') as number,
      length: (r.number('length_mm') as number) / 1000,
      width: (r.number('width_mm') as number) / 1000,
      thickness,
    };
  });
}

/** The middles of the bearers, the outer ones flush with the ends. */
export function nailLines(
  given: { readonly bearers: number; readonly bearerWidth: number },
  length: number,
): string {
  const step = (length - given.bearerWidth) / (given.bearers - 1);
  return (
    Array.from({ length: given.bearers }, (_, i) =>
      ((given.bearerWidth / 2 + i * step) * 1000).toFixed(0),
    ).join(', ') + ' mm'
  );
}
