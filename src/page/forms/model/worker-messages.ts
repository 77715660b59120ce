import type { AnswerDetails, Outcome } from './answer.js';
import type { Call, Scope } from './argument.js';
import type { Figure } from './figure.js';
import type { RecipeModel } from './recipe-model.js';
import type { GlossaryWord } from './glossary-word.js';
import type { SurveyChoices, SurveyReading } from './survey-reading.js';
import type { TriedValues, TryQuestion } from './tried-values.js';

/** What the page asks of the worker that runs the recipes, by kind of request, with what comes back. */
export interface WorkerRequests {
  readonly models: { readonly ask: null; readonly answer: readonly RecipeModel[] };
  readonly words: { readonly ask: null; readonly answer: readonly GlossaryWord[] };
  readonly calculate: {
    readonly ask: {
      readonly call: Call;
      readonly scope: Scope;
      readonly shop: unknown;
      readonly search: boolean;
    };
    readonly answer: Outcome;
  };
  readonly details: {
    readonly ask: { readonly call: Call; readonly scope: Scope; readonly shop: unknown };
    readonly answer: AnswerDetails;
  };
  readonly names: {
    readonly ask: { readonly recipe: string; readonly path: readonly string[] };
    readonly answer: readonly string[];
  };
  readonly figures: {
    readonly ask: { readonly scope: Scope; readonly shop: unknown };
    readonly answer: readonly Figure[];
  };
  readonly shopModel: { readonly ask: null; readonly answer: RecipeModel };
  readonly checkShop: {
    readonly ask: Readonly<Record<string, unknown>>;
    readonly answer: Outcome;
  };
  readonly survey: {
    readonly ask: { readonly text: string; readonly choices: SurveyChoices };
    readonly answer: SurveyReading;
  };
  readonly tryValues: {
    readonly ask: TryQuestion & { readonly call: Call; readonly scope: Scope; readonly shop: unknown };
    readonly answer: TriedValues;
  };
}

export type RequestKind = keyof WorkerRequests;
export type AskOf<K extends RequestKind> = WorkerRequests[K]['ask'];
export type AnswerOf<K extends RequestKind> = WorkerRequests[K]['answer'];

export interface RequestMessage {
  readonly id: number;
  readonly kind: RequestKind;
  readonly ask: unknown;
}
export type ReplyMessage =
  { readonly id: number; readonly answer: unknown } | { readonly id: number; readonly problem: string };
