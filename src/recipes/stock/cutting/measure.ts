import { formatQuantity } from '../../../quantities/format.js';
import { Quantity } from '../../../quantities/quantity.js';
import type { Output } from '../../../recipe/output.js';
import type { Aim } from './scale.js';

/** Boards, metres of stock or money, whichever a plan makes least. */
export interface Measure {
  readonly kind: 'count' | 'length' | 'money';
  readonly value: number;
}

/** What each aim is measured in. */
export const measured = { boards: 'count', length: 'length', cost: 'money' } as const satisfies Record<
  Aim,
  Measure['kind']
>;

/** An output in whichever of the three the plan makes least. */
export const measure = (says: string): Output<Measure, number | Quantity, false> => ({
  kind: 'measure',
  says,
  optional: false,
  wrap: ({ kind, value }, currency) =>
    kind === 'count' ? value : new Quantity(kind, value, kind === 'money' ? currency : undefined),
  show: ({ kind, value }, currency) => {
    if (kind === 'count') return { metric: `${value} board${value === 1 ? '' : 's'}`, inch: '' };
    if (kind === 'money')
      return { metric: formatQuantity({ kind, value, ...(currency ? { currency } : {}) }), inch: '' };
    return {
      metric: formatQuantity({ kind, value }, { unit: 'm', digits: 5 }),
      inch: formatQuantity({ kind, value }, { system: 'inch' }),
    };
  },
});
