import { readSections, type Description } from './description.js';
import { fieldAt, stepsOf, withValueAt } from './description-path.js';
import type { PieceChanges } from './piece-view.js';

/** A description as it was written and as it was read. */
export interface Described {
  readonly written: object;
  readonly description: Description;
}

/** The description with some values changed; only the sections that hold them are read again. */
export function withChanges(kept: Described, changes: PieceChanges): Described {
  let written: object = kept.written;
  for (const [path, value] of Object.entries(changes)) {
    fieldAt(path);
    written = withValueAt(written, path, value) as object;
  }
  const sections = [...new Set(Object.keys(changes).map((path) => String(stepsOf(path)[0])))];
  return {
    written,
    description: { ...kept.description, ...readSections(written, sections, kept.description) },
  };
}
