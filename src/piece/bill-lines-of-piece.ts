// The lines of the bill, every one from the piece itself: what is bought, what it costs, what it weighs.
import { measured, type LinePrice, type Measured } from '../recipes/bill/line-quantity.js';
import type { LineKind } from '../recipes/bill/bill-lines.js';
import { Quantity } from '../units/quantity.js';
import type { Kind } from '../units/kind.js';
import { grouped } from './grouped.js';
import { massesNode } from './masses.js';
import type { Model, PieceNode } from './piece-graph.js';
import { cutPartsNode, framePlanFits, topPlanFits } from './plan-fit.js';
import { finishesNode } from './questions/finish-questions.js';
import { glueNode } from './gluing-needs.js';
import { OpenQuestion } from './open-question.js';
import { topFixingsNode } from './top-fixings.js';
import { feetNode } from './footing.js';

/** A line as the bill reads it. */
export interface PieceLine {
  readonly item: string;
  readonly kind: LineKind;
  readonly quantity: Measured;
  readonly unit?: string | undefined;
  readonly price?: LinePrice | undefined;
  readonly mass?: number | undefined;
  readonly massEach?: number | undefined;
  readonly density?: number | undefined;
}

const of = (kind: Kind, value: number): Measured => measured(new Quantity(kind, value));

/** What a node gives, or nothing where its question is still open. */
function known<T>(m: Model, node: PieceNode<T>): T | undefined {
  try {
    return m.of(node);
  } catch (error) {
    if (error instanceof OpenQuestion) return undefined;
    throw error;
  }
}

/** Length of batten that is bought: whole battens of the plan, or the parts alone while none is planned. */
export function battenLength(m: Model): number {
  const plan = m.plan('frame');
  if (plan && known(m, framePlanFits)?.fits) return plan.stockLength;
  return m.of(cutPartsNode).reduce((s, p) => s + p.count * p.length, 0);
}

function timberLines(m: Model): PieceLine[] {
  const masses = m.of(massesNode);
  const boards = m.get('costs', 'boards');
  const plan = m.plan('top');
  const fits = plan !== undefined && known(m, topPlanFits)?.fits === true;
  const volume = fits
    ? plan.timber
    : m.get('top', 'length') * m.get('top', 'width') * m.get('top', 'thickness');
  const frame = m.of(cutPartsNode).length > 0;
  return [
    {
      item: 'boards for the top',
      kind: 'timber',
      quantity: boards?.bare === true ? measured(1) : of('volume', volume),
      price: boards,
      mass: masses.top.mass,
    },
    ...(frame
      ? [
          {
            item: 'battens for the frame',
            kind: 'timber' as const,
            quantity: of('length', battenLength(m)),
            price: m.get('costs', 'battens'),
            mass: masses.total - masses.top.mass,
          },
        ]
      : []),
  ];
}

function glueLines(m: Model): PieceLine[] {
  const glue = known(m, glueNode);
  if (!glue) return [];
  const price = m.get('costs', 'glue');
  return [
    {
      item: 'glue',
      kind: 'glue',
      quantity: price?.by === 'liquid' ? of('liquid', glue.out.volume) : of('mass', glue.out.mass),
      price,
    },
  ];
}

function finishLines(m: Model): PieceLine[] {
  return m.of(finishesNode).flatMap((f): PieceLine[] => {
    const prices = f.finish.prices ?? {};
    const priceOf = (part: string): LinePrice | undefined => prices[part];
    if (!f.mix)
      return [
        {
          item: f.name,
          kind: 'finish',
          quantity: of('liquid', f.amount.out.finish),
          price: priceOf(f.name),
        },
      ];
    const amounts = f.mix.out.amounts as Readonly<Record<string, { readonly value: number }>>;
    return Object.entries(amounts).map(([part, amount]) => ({
      item: part,
      kind: 'finish',
      quantity: of('liquid', amount.value),
      price: priceOf(part),
    }));
  });
}

/** The same liquid for several surfaces is bought once. */
function together(lines: readonly PieceLine[]): PieceLine[] {
  return [...grouped(lines, (l) => `${l.item}|${l.price?.text ?? ''}`).values()].flatMap((same) => {
    const [first] = same;
    return first
      ? [
          {
            ...first,
            quantity: of(
              'liquid',
              same.reduce((s, l) => s + l.quantity.value, 0),
            ),
          },
        ]
      : [];
  });
}

/** Screws by their size. */
export function screwsOf(m: Model): { readonly item: string; readonly count: number }[] {
  const fixings = m.all('fixings') ?? {};
  const places = m.of(topFixingsNode);
  const counts = new Map<string, number>();
  for (const [name, f] of Object.entries(fixings)) {
    const own = places.filter((p) => p.name === name).reduce((s, p) => s + p.count, 0);
    const elsewhere =
      f.holds === 'top'
        ? 0
        : (f.at?.length ?? known(m, feetNode)?.contacts.filter((c) => c.part === f.holds).length ?? 0) *
          f.count;
    const size = `screws ${Math.round(f.screw * 1e4) / 10} × ${Math.round(f.length * 1000)} mm`;
    counts.set(size, (counts.get(size) ?? 0) + own + elsewhere);
  }
  return [...counts].map(([item, count]) => ({ item, count })).filter((s) => s.count > 0);
}

/** Every line of the bill, the description's own last. */
export const billLinesNode: PieceNode<readonly PieceLine[]> = {
  name: 'lines of the bill',
  compute: (m) => [
    ...timberLines(m),
    ...glueLines(m),
    ...together(finishLines(m)),
    ...screwsOf(m).map((s): PieceLine => ({
      item: s.item,
      kind: 'fixings',
      quantity: measured(s.count),
      price: m.get('costs', 'screws'),
    })),
    ...Object.entries(m.get('costs', 'hours') ?? {}).map(([item, time]): PieceLine => ({
      item,
      kind: 'time',
      quantity: of('time', time),
    })),
    ...((m.get('costs', 'lines') ?? []) as readonly PieceLine[]),
  ],
};
