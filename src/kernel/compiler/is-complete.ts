/** Whether a cell's text is complete, for consoles that decide at each line end whether to run. */
import { parseErrors, type Compiler } from './typescript-internals.js';

export type Completeness = { status: 'complete' | 'invalid' } | { status: 'incomplete'; indent: string };

/** Errors that say that a comment or a template has no end yet, reported at its start. */
const unterminated = new Set([1010, 1160]);

/** Judges a text: `incomplete` if the only errors are at its end, so that more text can complete it. */
export function isComplete(ts: Compiler, code: string): Completeness {
  const errors = parseErrors(ts, code);
  if (errors.length === 0) return { status: 'complete' };
  const end = code.trimEnd().length;
  const isEarly = (error: (typeof errors)[number]): boolean =>
    !unterminated.has(error.code) && error.start < end;
  // An error before the end stays one whatever is typed after it.
  return errors.some(isEarly) ? { status: 'invalid' } : { status: 'incomplete', indent: nextIndent(code) };
}

/** The indent of the line to come: that of the last line, two blanks more after an open bracket. */
function nextIndent(code: string): string {
  const line = code.slice(code.lastIndexOf('\n') + 1);
  const indent = /^\s*/.exec(line)?.[0] ?? '';
  const withoutTexts = line.replace(/(["'`])(?:\\.|(?!\1).)*\1|\/\/.*$/g, '');
  const count = (pattern: RegExp): number => withoutTexts.match(pattern)?.length ?? 0;
  return count(/[{([]/g) > count(/[})\]]/g) ? `${indent}  ` : indent;
}
