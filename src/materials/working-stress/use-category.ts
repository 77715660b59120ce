import type { Citation } from '../../engine/source.js';
import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';
import { tableRows, type DataRow } from '../data-tables.js';
import type { Duration, ServiceClass } from './load-case.js';

/** Categories of use of data/use-categories.csv; a test keeps the two alike. */
export const useCategories = ['home', 'hall', 'workshop', 'shelf', 'permanent', 'short'] as const;
export type UseCategory = (typeof useCategories)[number];

/** How a use loads a piece: the share of the imposed load that stays, and how long the full load lasts in all. */
export interface UseFigures {
  readonly label: string;
  readonly stays: number;
  readonly duration: Duration;
  readonly citation: Citation;
  readonly read: DataRow['read'];
}

/** The figures of a category of use. */
export function useFigures(category: UseCategory): UseFigures {
  const row = tableRows('use-categories').find((r) => r.text('category') === category) as DataRow;
  return {
    label: row.text('label'),
    stays: row.number('stays') as number,
    duration: row.text('duration') as Duration,
    citation: row.citation,
    read: row.read,
  };
}

/** Places a piece may stand in, of data/service-classes.csv: service classes 1, 2 and 3 of EN 1995-1-1. */
export const servicePlaces = ['heated room', 'under cover', 'outdoors'] as const;
export type ServicePlace = (typeof servicePlaces)[number];

/** Service class and creep factor of a place. */
export function placeFigures(place: ServicePlace): {
  readonly serviceClass: ServiceClass;
  readonly creep: number;
  readonly citation: Citation;
} {
  const row = tableRows('service-classes').find((r) => r.text('name') === place) as DataRow;
  const creep = tableRows('creep-factors').find((r) => r.text('choice') === place) as DataRow;
  return {
    serviceClass: row.number('service_class') as ServiceClass,
    creep: creep.number('factor') as number,
    citation: creep.citation,
  };
}

/** Sag in the long run over the first sag, for a load of which a part is permanent and a part of the rest stays. */
export const longTermFactor = formula({
  symbol: 'K',
  result: variable('ratio', 'sag in the long run over the first sag'),
  expression: '(G k + Q * (1 + s * (k - 1))) / (G + Q)',
  variables: {
    G: variable('ratio', 'permanent load as a share of the whole'),
    Q: variable('ratio', 'imposed load as a share of the whole'),
    k: variable('ratio', 'creep factor of a load that stays'),
    s: variable('ratio', 'share of the imposed load that stays'),
  },
  source: cite('en-1995-1-1', '2.2.3 and 3.1.4', { also: cite('awc-faq-creep', 'NDS 3.5.2') }),
});
