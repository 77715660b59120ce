// What the piece weighs and who lifts it.
import { massesNode } from '../masses.js';
import type { Model } from '../piece-graph.js';
import { counted, kg, marginOf, verdictOfMargin, type Finding, type Question } from '../question.js';

function weight(m: Model): Finding {
  const masses = m.of(massesNode);
  const frame = masses.total - masses.top.mass;
  return {
    verdict: 'ok',
    answer: `About ${kg(masses.total)} in all (${kg(masses.least)} to ${kg(masses.most)}): the top ${kg(masses.top.mass)}, the frame ${kg(frame)}.`,
    asks: masses.asks,
  };
}

function lifting(m: Model): Finding {
  const { top } = m.of(massesNode);
  const people = m.get('use', 'lifters');
  const can = people * m.get('use', 'liftEach');
  const margin = marginOf(can, top.most);
  const needed = Math.ceil(top.most / m.get('use', 'liftEach'));
  return {
    verdict: verdictOfMargin(margin),
    margin,
    answer:
      margin < 0
        ? `The top weighs up to ${kg(top.most)}: ${counted(needed, 'person', 'people')} must lift it, not ${people}.`
        : `The top weighs up to ${kg(top.most)}; ${counted(people, 'person lifts', 'people lift')} ${kg(can)}.`,
  };
}

export const weightQuestions: readonly Question[] = [
  { name: 'weight', title: 'What does it weigh?', topic: 'weight', answer: weight },
  {
    name: 'lifting',
    title: 'Who lifts the top?',
    topic: 'weight',
    safety: true,
    levers: [
      { path: 'use.lifters', way: 'more', words: 'more people' },
      { path: 'top.thickness', way: 'less', words: 'a thinner top' },
    ],
    answer: lifting,
  },
];
