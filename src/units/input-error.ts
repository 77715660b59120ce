/** One thing wrong with what was given: which field, what it got, what it takes, and how to fix it. */
export interface Issue {
  /** Path of the field, such as `width` or `boards[3].length`; empty for a bare quantity. */
  readonly field: string;
  /** What was wrong, in words that include what was got and what is taken. */
  readonly message: string;
}

/**
 * The one error that bad input raises. `message` is one line a field; `issues` has them apart.
 * Several wrong fields come back together.
 */
export class InputError extends Error {
  override readonly name = 'InputError';
  readonly issues: readonly Issue[];
  /** What was being done when it was refused, such as a recipe's name; may be empty. */
  readonly context: string;

  constructor(issues: Issue | readonly Issue[] | string, context = '') {
    const list = typeof issues === 'string' ? [{ field: '', message: issues }] : [issues].flat();
    const lines = list.map((t) => (t.field ? `${t.field}: ${t.message}` : t.message));
    // Names that a person wrote stand in fields and words; a line end in one must not break the message.
    super(oneLine((context ? `${context}: ` : '') + lines.join('; ')));
    this.issues = list;
    this.context = context;
  }
}

// Control characters and line ends would break the one-line promise.

const oneLine = (text: string): string => text.replace(/[\u0000-\u001f\u007f-\u009f\u2028\u2029]+/g, ' ');

/** Shows any value in one short line, for error messages: never throws, never longer than 60 characters. */
export function inspectValue(value: unknown): string {
  let text: string;
  try {
    if (value === undefined) text = 'nothing';
    else if (typeof value === 'number') text = String(value);
    else if (typeof value === 'bigint') text = `${value}n`;
    else if (Array.isArray(value)) text = `a list of ${value.length}`;
    else if (typeof value === 'function') text = 'a function';
    else if (typeof value === 'symbol') text = 'a symbol';
    else text = (JSON.stringify as (v: unknown) => string | undefined)(value) ?? 'an object';
  } catch {
    text = 'an object';
  }
  text = oneLine(text);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

/** The nearest of `names` to `text` by edit distance, or undefined when none is near enough to be meant. */
export function nearest(text: string, names: Iterable<string>): string | undefined {
  const wanted = text.slice(0, 60).toLowerCase();
  let best: string | undefined;
  let least = Math.max(1, Math.floor(wanted.length / 3)) + 1;
  for (const name of names) {
    const d = editDistance(wanted, name.toLowerCase());
    if (d < least) {
      least = d;
      best = name;
    }
  }
  return best;
}

/** Letters changed, left out, put in or swapped with the next; a swap is the commonest slip of all, so it counts once. */
function editDistance(a: string, b: string): number {
  let twoBefore: number[] = [];
  let before = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (before[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let d = Math.min(change, (before[j] as number) + 1, (row[j - 1] as number) + 1);
      // Before the first letters there is nothing, which equals no letter.
      if (a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) d = Math.min(d, (twoBefore[j - 2] as number) + 1);
      row.push(d);
    }
    twoBefore = before;
    before = row;
  }
  return before[b.length] as number;
}
