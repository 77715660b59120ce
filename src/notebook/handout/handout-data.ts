import type { ChartSpec } from '../../charts/chart-spec.js';
import type { AnswerForm } from '../../engine/answer-form.js';
import type { SealedAnswers } from '../../engine/sealed-answers.js';

/** An exercise without its answers: they travel sealed, and a word tells only that one is asked for. */
export interface SealedExercise {
  readonly form: AnswerForm;
  readonly answers: SealedAnswers;
  /** Said with the second wrong answer. */
  readonly hint?: string;
}

/** What a handout page carries for its script: which parts of it come alive, and with what. Ids are those of elements of the page. */
export interface HandoutData {
  /** Under which the browser keeps what a pupil wrote. */
  readonly key: string;
  readonly results: readonly {
    readonly id: string;
    readonly recipe: string;
    readonly inputs: Readonly<Record<string, unknown>>;
  }[];
  readonly exercises: readonly { readonly id: string; readonly exercise: SealedExercise }[];
  /** Charts with sliders of their own. */
  readonly charts: readonly { readonly id: string; readonly spec: ChartSpec }[];
}

export const handoutDataId = 'handout-data';
