// Every question asked of a piece, worst first.
import { InputError, inspectValue, nearest } from '../units/input-error.js';
import { OpenQuestion } from './open-question.js';
import type { PieceGraph, PieceNode } from './piece-graph.js';
import type { Ask } from './recipe-ask.js';
import { byVerdict, type Finding, type Question } from './question.js';
import { agreementQuestions } from './questions/agreement-questions.js';
import { costQuestions } from './questions/cost-questions.js';
import { finishQuestions } from './questions/finish-questions.js';
import { gluingQuestions } from './questions/gluing-questions.js';
import { jointQuestions } from './questions/joint-questions.js';
import { machiningQuestions } from './questions/machining-questions.js';
import { movementQuestions } from './questions/movement-questions.js';
import { stabilityQuestions } from './questions/stability-questions.js';
import { strengthQuestions } from './questions/strength-questions.js';
import { timberQuestions } from './questions/timber-questions.js';
import { weightQuestions } from './questions/weight-questions.js';

/** Every question, in the order of the work. */
export const allQuestions: readonly Question[] = [
  ...timberQuestions,
  ...gluingQuestions,
  ...machiningQuestions,
  ...weightQuestions,
  ...movementQuestions,
  ...strengthQuestions,
  ...stabilityQuestions,
  ...jointQuestions,
  ...finishQuestions,
  ...costQuestions,
  ...agreementQuestions,
];

/** A question with its answer. */
export interface Answer extends Finding {
  readonly name: string;
  readonly title: string;
  readonly topic: Question['topic'];
  readonly safety: boolean;
}

const nodes: ReadonlyMap<Question, PieceNode<Finding | undefined>> = new Map(
  allQuestions.map((q) => [q, { name: q.name, compute: q.answer }]),
);

const asked = new WeakMap<Finding, Answer>();

/** The answer to one question; undefined where it does not apply to the piece. */
export function answerOf(graph: PieceGraph, question: Question): Answer | undefined {
  const finding = findingOf(graph, question);
  if (!finding) return undefined;
  let answer = asked.get(finding);
  if (!answer) {
    const { name, title, topic } = question;
    answer = { name, title, topic, safety: question.safety === true, ...finding };
    asked.set(finding, answer);
  }
  return answer;
}

const refused = new WeakMap<InputError, Finding>();

function findingOf(graph: PieceGraph, question: Question): Finding | undefined {
  try {
    return graph.of(nodes.get(question) as PieceNode<Finding | undefined>);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    let finding = refused.get(error);
    if (!finding) {
      finding =
        error instanceof OpenQuestion
          ? { verdict: 'open', answer: error.advice, missing: error.missing }
          : { verdict: 'open', answer: `Not answered: ${error.message}.` };
      refused.set(error, finding);
    }
    // One error may leave several questions open, so each gets an answer of its own.
    return { ...finding };
  }
}

/** Answers in the order of the work. */
export const answersInOrder = (graph: PieceGraph): Answer[] =>
  allQuestions.flatMap((q) => answerOf(graph, q) ?? []);

/** Failing safety questions first, then by verdict, then by margin. */
export function worstFirst(answers: readonly Answer[]): Answer[] {
  const place = (a: Answer): number => (a.safety && a.verdict === 'fails' ? -1 : 0);
  return [...answers].sort(
    (a, b) =>
      place(a) - place(b) ||
      byVerdict(a.verdict, b.verdict) ||
      Number(b.safety) - Number(a.safety) ||
      (a.margin ?? 10) - (b.margin ?? 10),
  );
}

/** The question of a name. */
export const questionNamed = (name: string): Question | undefined =>
  allQuestions.find((q) => q.name === name);

/** The answer to the question of a name. @throws InputError for a name that no question has, or one that does not apply */
export function answerCalled(graph: PieceGraph, name: string): Answer {
  const question = questionNamed(name);
  if (!question) {
    const names = allQuestions.map((q) => q.name);
    const near = nearest(name, names);
    const hint = near ? `; did you mean ${inspectValue(near)}?` : ` such as ${names.slice(0, 5).join(', ')}`;
    throw new InputError(`got ${inspectValue(name)}, takes the name of a question${hint}`);
  }
  const answer = answerOf(graph, question);
  if (!answer) throw new InputError(`${name}: does not apply to this piece`);
  return answer;
}

/** The uses of recipes behind an answer, of one part where it is named. @throws InputError where there is none */
export function asksOf(
  { name, answer, asks = [] }: Answer,
  about: string | undefined,
): readonly [Ask, ...Ask[]] {
  const [first, ...rest] = asks.filter((a) => about === undefined || a.about === about);
  if (first) return [first, ...rest];
  const names = asks.flatMap((a) => (a.about === undefined ? [] : [a.about]));
  throw new InputError(
    about === undefined
      ? `${name}: no recipe answers it yet: ${answer}`
      : `${name}: got ${inspectValue(about)}, takes ${[...new Set(names)].map(inspectValue).join(', ') || 'no part'}`,
  );
}
