import type { RecipeModel } from './model/recipe-model.js';
import type { AnswerOf, AskOf, ReplyMessage, RequestKind } from './model/worker-messages.js';

declare const RECIPE_WORKER: string;

interface Waiting {
  readonly resolve: (answer: unknown) => void;
  readonly reject: (error: Error) => void;
}

/** The worker that runs the recipes; it starts when it is first asked. */
class RecipeClient {
  #worker: Worker | undefined;
  #next = 0;
  #models: Promise<ReadonlyMap<string, RecipeModel>> | undefined;
  readonly #waiting = new Map<number, Waiting>();

  /** @throws Error with what went wrong in the worker */
  ask<K extends RequestKind>(kind: K, ask: AskOf<K>): Promise<AnswerOf<K>> {
    const id = this.#next++;
    return new Promise((resolve, reject) => {
      this.#waiting.set(id, { resolve: resolve as (answer: unknown) => void, reject });
      (this.#worker ??= this.#start()).postMessage({ id, kind, ask });
    });
  }

  /** Every recipe by its name, asked for once. */
  models(): Promise<ReadonlyMap<string, RecipeModel>> {
    return (this.#models ??= this.ask('models', null).then(
      (models) => new Map(models.map((model) => [model.name, model])),
    ));
  }

  #start(): Worker {
    const worker = new Worker(new URL(RECIPE_WORKER, import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<ReplyMessage>) => {
      const waiting = this.#waiting.get(data.id);
      this.#waiting.delete(data.id);
      if ('problem' in data) waiting?.reject(new Error(data.problem));
      else waiting?.resolve(data.answer);
    });
    worker.addEventListener('error', (event) => {
      const error = new Error(event.message || 'the recipes cannot be loaded; load the page again');
      for (const { reject } of this.#waiting.values()) reject(error);
      this.#waiting.clear();
      this.#worker = undefined;
    });
    return worker;
  }
}

export const recipeClient = new RecipeClient();
