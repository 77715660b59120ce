// Is there timber enough: the pile for the top, the battens for the frame.
import { pileYield } from '../../recipes/stock/pile-yield.js';
import { layUpNode } from '../lay-up.js';
import type { Model, PieceNode } from '../piece-graph.js';
import { framePlanFits, frameAskedNode, topAskedNode, topPlanFits, type PlanFit } from '../plan-fit.js';
import { counted, marginOf, mm, perCent, type Finding, type Question } from '../question.js';
import { ask, type Asked } from '../recipe-ask.js';

const yieldNode: PieceNode<Asked<typeof pileYield.outputs>> = {
  name: 'yield of the pile',
  compute: (m) =>
    ask(m, pileYield, {
      boards: () => m.of(topAskedNode).boards,
      plane: () => m.get('pile', 'plane'),
      kerf: () => m.get('shop', 'kerf'),
      jointing: () => m.get('pile', 'jointing'),
    }),
};

const keptWords: Readonly<Record<PlanFit['state'], string>> = {
  none: '',
  current: '',
  'still fits': ' The plan kept from an earlier search still fits.',
  'no longer fits': '',
};

function pileEnough(m: Model): Finding | undefined {
  if (m.get('pile', 'survey') === undefined) return undefined;
  const asked = m.of(topAskedNode);
  const fit = m.of(topPlanFits);
  const plan = m.plan('top');
  if (plan && fit.fits) {
    // The search stops at the width it was asked for; its bound says how much more the pile might give.
    return {
      verdict: 'ok',
      margin: marginOf(plan.widthBound, asked.width),
      answer: `The pile gives the ${mm(asked.width)} that are needed, ${mm(plan.thickness)} thick, out of ${counted(plan.boardsCut, 'board')}; ${mm(plan.widthBound)} at most.${keptWords[fit.state]}`,
    };
  }
  if (
    plan &&
    fit.state === 'no longer fits' &&
    plan.widthBound < asked.width &&
    asked.boards === plan.asked.boards
  )
    return { verdict: 'fails', answer: `The pile gives ${mm(plan.widthBound)} at most.` };
  const pile = m.of(yieldNode);
  const needed = asked.topLength * asked.width * asked.thickness;
  // The whole volume is a bound: no search finds more timber than there is.
  if (pile.out.roughVolume < needed)
    return {
      verdict: 'fails',
      margin: marginOf(pile.out.roughVolume, needed),
      answer: `The pile holds ${pile.out.roughVolume.toFixed(3)} m³; the top alone takes ${needed.toFixed(3)} m³.`,
      asks: [pile.ask],
    };
  return {
    verdict: 'open',
    answer: plan
      ? `The kept plan no longer fits: ${fit.why}. Run the search again.`
      : 'Run the search: it says whether the pile is enough and which board goes where.',
    asks: [pile.ask],
    missing: '',
  };
}

function rows(m: Model): Finding | undefined {
  const plan = m.plan('top');
  if (!plan || !m.of(topPlanFits).fits) return undefined;
  const layUp = m.of(layUpNode);
  const least = m.get('pile', 'stagger');
  if (plan.worstStagger === undefined)
    return {
      verdict: 'ok',
      answer: `${counted(layUp.rows.length, 'row')}; no two end joints stand side by side.`,
    };
  const margin = marginOf(plan.worstStagger, least);
  return {
    verdict: margin < 0 ? 'fails' : 'ok',
    margin,
    answer: `${counted(layUp.rows.length, 'row')}; end joints of neighbours stand ${mm(plan.worstStagger)} apart or more, ${mm(least)} is asked for.`,
  };
}

function battens(m: Model): Finding | undefined {
  if (m.get('pile', 'battens') === undefined) return undefined;
  const asked = m.of(frameAskedNode);
  const needed = asked.parts.reduce((s, p) => s + p.count * p.length, 0);
  const fit = m.of(framePlanFits);
  const plan = m.plan('frame');
  if (plan && fit.fits) {
    if (plan.missing && plan.missing.length > 0)
      return {
        verdict: 'fails',
        answer: `The battens are too few: ${plan.missing.map((p) => `${p.count} × ${p.name} ${mm(p.length)}`).join(', ')} cannot be cut.`,
      };
    return {
      verdict: 'ok',
      answer: `${counted(plan.boardsUsed, 'batten')} give every part, ${perCent(plan.waste)} wasted.${keptWords[fit.state]}`,
    };
  }
  const there = asked.stock.reduce((s, x) => s + (x.count ?? Infinity) * x.length, 0);
  if (there < needed)
    return {
      verdict: 'fails',
      margin: marginOf(there, needed),
      answer: `The frame takes ${needed.toFixed(1)} m of batten; there are ${there.toFixed(1)} m.`,
    };
  return {
    verdict: 'open',
    answer: plan
      ? `The kept cutting plan no longer fits: ${fit.why}. Run the search again.`
      : 'Run the search: it plans which part comes out of which batten.',
    missing: '',
  };
}

export const timberQuestions: readonly Question[] = [
  {
    name: 'pileEnough',
    title: 'Is the pile enough for the top?',
    topic: 'timber',
    levers: [
      { path: 'top.thickness', way: 'less', words: 'a thinner top' },
      { path: 'top.width', way: 'less', words: 'a narrower top' },
    ],
    answer: pileEnough,
  },
  { name: 'rows', title: 'How do the rows lie?', topic: 'timber', answer: rows },
  { name: 'battens', title: 'Do the battens give the frame?', topic: 'timber', answer: battens },
];
