// What it costs, how long it takes and what to buy.
import { bill } from '../../recipes/bill/bill.js';
import { formatQuantity } from '../../units/format-quantity.js';
import { billLinesNode } from '../bill-lines-of-piece.js';
import type { Model, PieceNode } from '../piece-graph.js';
import {
  counted,
  hoursMinutes,
  marginOf,
  verdictOfMargin,
  type Finding,
  type Question,
} from '../question.js';
import { ask, type Asked } from '../recipe-ask.js';

/** The bill. */
export const billNode: PieceNode<Asked<typeof bill.outputs>> = {
  name: 'bill',
  compute: (m) =>
    ask(m, bill, {
      lines: () => m.of(billLinesNode),
      hourly: () => m.get('costs', 'hourly'),
      forgotten: () => m.get('costs', 'forgotten'),
      tax: () => m.get('costs', 'tax'),
    }),
};

const money = (m: Model, value: number): string => {
  const currency = m.of(billLinesNode).find((l) => l.price?.currency !== undefined)?.price?.currency;
  return formatQuantity({ kind: 'money', value, ...(currency === undefined ? {} : { currency }) });
};

function cost(m: Model): Finding {
  const { ask: asked, out } = m.of(billNode);
  const budget = m.get('costs', 'budget');
  const unpriced = m.of(billLinesNode).filter((l) => l.price === undefined && l.kind !== 'time');
  const rest =
    unpriced.length > 0
      ? ` ${counted(unpriced.length, 'line')} without a price: ${unpriced.map((l) => l.item).join(', ')}.`
      : '';
  const margin = budget === undefined ? undefined : marginOf(budget, out.total);
  return {
    verdict: margin === undefined ? 'ok' : verdictOfMargin(margin),
    ...(margin === undefined ? {} : { margin }),
    answer: `${money(m, out.total)} in all${budget === undefined ? '' : `; the budget is ${money(m, budget)}`}.${rest}`,
    asks: [asked],
  };
}

function hours(m: Model): Finding {
  const given = m.get('costs', 'hours');
  if (given === undefined)
    return {
      verdict: 'open',
      answer: 'Give costs.hours: how long each part of the work takes at the bench.',
      missing: 'costs.hours',
    };
  const sum = Object.values(given).reduce((a, b) => a + b, 0);
  const there = m.get('costs', 'hoursWanted');
  const margin = there === undefined ? undefined : marginOf(there, sum);
  return {
    verdict: margin === undefined ? 'ok' : verdictOfMargin(margin),
    ...(margin === undefined ? {} : { margin }),
    answer: `${hoursMinutes(sum)} of work${there === undefined ? '' : `; there are ${hoursMinutes(there)}`}.`,
  };
}

function toBuy(m: Model): Finding {
  const lines = m.of(billLinesNode).filter((l) => l.kind !== 'time');
  return {
    verdict: 'ok',
    answer: `${lines.map((l) => `${l.item} ${l.quantity.written}`).join('; ')}.`,
  };
}

export const costQuestions: readonly Question[] = [
  {
    name: 'cost',
    title: 'What does it cost?',
    topic: 'cost',
    levers: [{ path: 'costs.budget', way: 'more', words: 'a larger budget' }],
    answer: cost,
  },
  {
    name: 'hours',
    title: 'How long does it take?',
    topic: 'cost',
    levers: [{ path: 'costs.hoursWanted', way: 'more', words: 'more time' }],
    answer: hours,
  },
  { name: 'toBuy', title: 'What has to be bought?', topic: 'cost', answer: toBuy },
];
