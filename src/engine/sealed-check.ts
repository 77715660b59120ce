import {
  judgeExact,
  judgeNeighbours,
  neighboursOf,
  type Judgement,
  type KnownAnswer,
} from './answer-check.js';
import { readAnswer, type AnswerForm, type ReadAnswer } from './answer-form.js';
import { openAnswers, type SealedAnswers } from './sealed-answers.js';

/**
 * A judgement on what was written, made from sealed answers; or the sentence that says why it cannot be read.
 * @param scale base units in one of the unit that the answers are sealed in
 */
export async function checkSealed(
  given: unknown,
  form: AnswerForm,
  answers: SealedAnswers,
  scale = 1,
): Promise<Judgement | string> {
  const read = readAnswer(given, form);
  if (typeof read === 'string') return read;
  if (!isSecureContext) return 'Answers can be checked only on a page opened from a file or over https.';
  if (typeof read.value === 'string')
    return (
      judgeExact(await openAnswers(answers, read.value)) ?? {
        outcome: 'unknown',
        place: 0,
        says: 'That is not the word that is asked for.',
      }
    );
  const value = read.value / scale;
  const exact = judgeExact(await foundAt(answers, value, read, scale));
  if (exact !== undefined) return exact;
  const neighbours = neighboursOf(value, answers.tolerance).filter(
    ({ outcome }) => outcome === 'rounding' || form.form !== 'quantity' || form.kind !== 'temperature',
  );
  return judgeNeighbours(
    await Promise.all(neighbours.map(async (n) => [n, await openAnswers(answers, n.value)] as const)),
  );
}

/** The known answers at a value; the right one also within the fineness of the rule it is read off. */
async function foundAt(
  answers: SealedAnswers,
  value: number,
  { fineness }: ReadAnswer,
  scale: number,
): Promise<KnownAnswer[]> {
  const here = await openAnswers(answers, value);
  if (here.length > 0 || fineness === 0) return here;
  for (const share of [-1, 1, -0.5, 0.5]) {
    const beside = await openAnswers(answers, value + (share * fineness) / scale);
    if (beside.some(({ place }) => place === 0)) return beside;
  }
  return [];
}
