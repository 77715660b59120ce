/** Whether a cell's text is a whole, for consoles that decide at each line end whether to run. */
import type { CellFile } from './incremental-program.js';
import { isCompleteCode, loadCompiler } from './tslab.js';

export type Completeness = { status: 'complete' | 'invalid' } | { status: 'incomplete'; indent: string };

/** Unfinished comments and templates, which the bundled test takes for errors. */
const unfinished = new Set([1010, 1160]);

export function isComplete(code: string): Completeness {
  const ts = loadCompiler();
  const { parseDiagnostics } = ts.createSourceFile('cell.ts', code, ts.ScriptTarget.ES2022) as CellFile;
  if (parseDiagnostics.length === 0) return { status: 'complete' };
  const end = code.trimEnd().length;
  const atEnd = parseDiagnostics.every((d) => unfinished.has(d.code) || (d.start ?? 0) >= end);
  const judged = isCompleteCode(code);
  if (atEnd || !judged.completed) {
    // An error before the end stays one whatever is typed after it.
    const early = parseDiagnostics.some((d) => !unfinished.has(d.code) && (d.start ?? 0) < end);
    if (!early) return { status: 'incomplete', indent: judged.indent ?? '' };
  }
  return { status: 'invalid' };
}
