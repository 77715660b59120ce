/** What was last written for each question, kept in this browser. */
export class QuestionStore {
  static readonly #prefix = 'reckoner-question ';

  read(recipe: string): string | undefined {
    try {
      return localStorage.getItem(QuestionStore.#prefix + recipe) ?? undefined;
    } catch {
      return undefined;
    }
  }

  write(recipe: string, text: string): void {
    try {
      localStorage.setItem(QuestionStore.#prefix + recipe, text);
    } catch {
      // A private window or a full storage: the form works all the same.
    }
  }

  remove(recipe: string): void {
    localStorage.removeItem(QuestionStore.#prefix + recipe);
  }
}

/** Texts of one question, one step back at a time and forward again. Typing in one field within a moment is one step. */
export class TextHistory {
  #steps: { readonly text: string; readonly words: string; readonly time: number }[];
  #at = 0;

  constructor(text: string) {
    this.#steps = [{ text, words: '', time: 0 }];
  }

  get text(): string {
    return this.#steps[this.#at]?.text ?? '';
  }

  /** What the next step back takes away; undefined where there is none. */
  get undoWords(): string | undefined {
    return this.#at > 0 ? this.#steps[this.#at]?.words : undefined;
  }

  get redoWords(): string | undefined {
    return this.#steps[this.#at + 1]?.words;
  }

  add(text: string, words: string, now = Date.now()): void {
    const last = this.#steps[this.#at];
    const joins = this.#at > 0 && last?.words === words && now - last.time < 1500;
    this.#steps = [...this.#steps.slice(0, joins ? this.#at : this.#at + 1), { text, words, time: now }];
    this.#at = this.#steps.length - 1;
  }

  undo(): boolean {
    if (this.#at === 0) return false;
    this.#at -= 1;
    return true;
  }

  redo(): boolean {
    if (this.#at + 1 >= this.#steps.length) return false;
    this.#at += 1;
    return true;
  }
}
