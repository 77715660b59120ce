import { InputError } from '../units/input-error.js';
import { fieldAt } from './description-path.js';

/** A question that cannot be answered yet: what is missing, by its path. */
export class OpenQuestion extends InputError {
  /** The value to give; empty where a search has to run first. */
  readonly missing: string;
  /** What to do, in one sentence. */
  readonly advice: string;

  constructor(missing: string, advice: string) {
    super({ field: missing, message: advice });
    this.missing = missing;
    this.advice = advice;
  }
}

/** The value, or the question left open because it is not given. @throws OpenQuestion */
export function need<T>(value: T, path: string): NonNullable<T> {
  if (value !== undefined && value !== null) return value;
  throw new OpenQuestion(path, `Give ${path} (${fieldAt(path).label}).`);
}
