import { formatQuantity } from '../../../units/format-quantity.js';
import { Quantity } from '../../../units/quantity.js';
import type { Output } from '../../../engine/output.js';
import type { Aim } from './scale.js';

/** Boards, metres of stock or money, whichever a plan makes least. */
export interface Objective {
  readonly kind: 'count' | 'length' | 'money';
  readonly value: number;
}

/** What each aim is measured in. */
export const objectiveKinds = { boards: 'count', length: 'length', cost: 'money' } as const satisfies Record<
  Aim,
  Objective['kind']
>;

/** An output in whichever of the three the plan makes least. */
export const objectiveOutput = (label: string): Output<Objective, number | Quantity, false> => ({
  kind: 'measure',
  label: label,
  optional: false,
  wrap: ({ kind, value }, currency) =>
    kind === 'count' ? value : new Quantity(kind, value, kind === 'money' ? currency : undefined),
  format: ({ kind, value }, currency) => {
    if (kind === 'count') return { metric: `${value} board${value === 1 ? '' : 's'}`, inch: '' };
    if (kind === 'money')
      return { metric: formatQuantity({ kind, value, ...(currency ? { currency } : {}) }), inch: '' };
    return {
      metric: formatQuantity({ kind, value }, { unit: 'm', digits: 5 }),
      inch: formatQuantity({ kind, value }, { system: 'inch' }),
    };
  },
});
