// Whether the description agrees with itself.
import { contradictionsNode } from '../contradictions/contradictions-node.js';
import type { Model } from '../piece-graph.js';
import { counted, type Finding, type Question } from '../question.js';

function agreement(m: Model, safety: boolean): Finding | undefined {
  const all = m.of(contradictionsNode).filter((c) => c.safety === safety);
  if (all.length === 0)
    return safety ? undefined : { verdict: 'ok', answer: 'Everything in the description fits together.' };
  return {
    verdict: 'fails',
    answer: `${counted(all.length, 'contradiction')}: ${all.map((c) => `${c.path}: ${c.message}`).join('; ')}.`,
  };
}

export const agreementQuestions: readonly Question[] = [
  {
    name: 'agreement',
    title: 'Does the description agree with itself?',
    topic: 'joints',
    answer: (m) => agreement(m, false),
  },
  {
    name: 'unsafeDescription',
    title: 'Can it be built as described without danger?',
    topic: 'strength',
    safety: true,
    answer: (m) => agreement(m, true),
  },
];
