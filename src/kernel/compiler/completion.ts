/** Completion: members, names and keywords from the types, and inside quotes the values a recipe's field takes. */
import { isRecipe, valuesFor } from './field-completions.js';
import type { KernelSession } from '../session.js';
import { toPoints, toUnits } from './cursor.js';
import { dottedName, fieldPath, nodeAt, valueOf } from './cursor-context.js';
import type { CellFile } from './incremental-program.js';

export interface Completions {
  matches: string[];
  cursor_start: number;
  cursor_end: number;
}

const most = 500;

export function completeCell(session: KernelSession, code: string, cursor: number): Completions {
  const { program: room } = session;
  const position = toUnits(code, cursor);
  room.loadWholePackage();
  const file = room.add(code);
  try {
    return inQuotes(session, file, code, position) ?? byTypes(session, file, code, position);
  } finally {
    room.drop(file);
  }
}

/** Everything between the opening quote and the cursor is what has been typed of the value. */
function inQuotes(
  session: KernelSession,
  file: CellFile,
  code: string,
  position: number,
): Completions | undefined {
  const { ts } = session.program;
  const node = nodeAt(ts, file, position);
  if (!ts.isStringLiteralLike(node)) return undefined;
  const start = node.getStart(file) + 1;
  if (position < start) return undefined;
  const place = fieldPath(ts, node);
  const path = place && dottedName(ts, place.call.expression);
  const recipe = path && valueOf(session, path);
  if (!place || !isRecipe(recipe)) return undefined;
  const typed = code.slice(start, position).toLowerCase();
  const values = [
    ...new Set(
      [...place.fields]
        .reverse()
        .flatMap((field) => valuesFor(session.executor.loadedPackage, recipe, field)),
    ),
  ];
  const matches = values.filter((value) => value.toLowerCase().startsWith(typed));
  // A name's later word finds it as well: 'oak' finds 'white oak'.
  const within = values.filter(
    (value) => !matches.includes(value) && typed !== '' && value.toLowerCase().includes(typed),
  );
  const found = [...matches, ...within].slice(0, most);
  return found.length > 0
    ? { matches: found, cursor_start: toPoints(code, start), cursor_end: toPoints(code, position) }
    : undefined;
}

function byTypes(session: KernelSession, file: CellFile, code: string, position: number): Completions {
  const info = session.program.completions(file, position);
  const span =
    info?.optionalReplacementSpan ?? info?.entries.find((entry) => entry.replacementSpan)?.replacementSpan;
  const word = /[\p{ID_Continue}$#]*$/u.exec(code.slice(0, position))![0];
  const start = span && span.start <= position ? span.start : position - word.length;
  const typed = code.slice(start, position);
  const usable = (info?.entries ?? []).filter(
    (entry) => !entry.insertText || entry.insertText === entry.name || !entry.insertText.startsWith('?.'),
  );
  const plain = usable.filter(
    (entry) => entry.insertText === undefined || /^[\p{ID_Continue}$]+$/u.test(entry.name),
  );
  const exact = plain.filter((entry) => entry.name.startsWith(typed));
  const loose =
    exact.length > 0
      ? exact
      : plain.filter((entry) => entry.name.toLowerCase().startsWith(typed.toLowerCase()));
  const matches = loose
    .filter((entry) => !entry.name.startsWith('__reckoner'))
    .sort((a, b) => a.sortText.localeCompare(b.sortText) || a.name.localeCompare(b.name))
    .map((entry) => entry.name);
  return {
    matches: [...new Set(matches)].slice(0, most),
    cursor_start: toPoints(code, start),
    cursor_end: toPoints(code, position),
  };
}
