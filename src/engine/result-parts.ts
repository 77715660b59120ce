// What of a result is shown at once and what on request: the same for text, Markdown and pages.
import { inUnits, valueInUnits } from '../units/unit-system.js';
import type { Caution } from './caution.js';
import type { ResultInternals, TableBlock, ValueLine } from './result-types.js';
import { spokenAnswer } from './spoken.js';
import { valueLines } from './value-table.js';

/** Figures shown at once; the rest stands under More. */
const mostFigures = 5;
/** Cautions shown at once, unless more of them are dangers. */
const mostCautions = 3;

export interface ResultParts {
  /** The answer as it is said, '' where the recipe has no sentence. */
  readonly sentence: string;
  readonly lines: readonly ValueLine[];
  readonly more: readonly ValueLine[];
  readonly tables: readonly TableBlock[];
  /** What was typed. */
  readonly given: readonly ValueLine[];
  /** Defaults. */
  readonly assumed: readonly ValueLine[];
  readonly cautions: readonly Caution[];
  readonly notes: readonly Caution[];
}

/** A result in the order in which it is read: the sentence first, then five figures, then what to mind. */
export function resultParts(a: ResultInternals): ResultParts {
  const sentence = inUnits(spokenAnswer(a));
  const { lines, tables } = valueLines(a);
  // What the sentence says in full, and a bare yes or no, are not said again.
  const figures = lines.filter(
    (l) => sentence === '' || (l.metric !== sentence && a.outputs[l.name]?.kind !== 'flag'),
  );
  const written = a.rawInputs;
  const typed = (l: ValueLine): boolean =>
    typeof written === 'object' &&
    written !== null &&
    (written as Record<string, unknown>)[l.name] !== undefined;
  const cautions = a.cautions().map((c) => ({ ...c, text: inUnits(c.text) }));
  const shown = Math.max(mostCautions, cautions.filter((c) => c.level === 'danger').length);
  return {
    sentence,
    lines: figures.slice(0, mostFigures),
    more: figures.slice(mostFigures),
    tables,
    given: a.inputs.filter(typed).map(valueInUnits),
    assumed: a.inputs.filter((l) => !typed(l)).map(valueInUnits),
    cautions: cautions.slice(0, shown),
    notes: cautions.slice(shown),
  };
}
