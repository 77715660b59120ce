import { InputError } from './input-error.js';

/** What `run` gives, or the refusal it raises: for trying one way of reading after another. @throws whatever else it raises */
export function tryParse<T>(run: () => T): T | InputError {
  try {
    return run();
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
}
