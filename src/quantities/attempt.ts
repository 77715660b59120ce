import { Refusal } from './refusal.js';

/** What `run` gives, or the refusal it raises: for trying one way of reading after another. @throws whatever else it raises */
export function attempt<T>(run: () => T): T | Refusal {
  try {
    return run();
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
}
