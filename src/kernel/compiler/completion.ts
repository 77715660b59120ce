/** Completion: members, names and keywords from the types, and inside quotes the values a recipe's field takes. */
import type TS from 'typescript';
import { isRecipe } from '../display/recipe-card.js';
import { valuesFor } from './field-completions.js';
import { toPoints, toUnits } from './cursor.js';
import { dottedName, fieldPath, nodeAt, valueOf } from './cursor-context.js';
import type { SessionView } from './session-view.js';
import type { CellFile } from './typescript-internals.js';

export interface Completions {
  matches: string[];
  cursor_start: number;
  cursor_end: number;
}

const maxMatches = 500;

/** A cell's text with the cursor in it, counted in UTF-16 units. */
interface CursorInCell {
  file: CellFile;
  code: string;
  position: number;
}

export function completeCell(session: SessionView, code: string, cursor: number): Completions {
  const program = session.language();
  const file = program.add(code);
  const at = { file, code, position: toUnits(code, cursor) };
  try {
    return inQuotes(session, at) ?? byTypes(session, at);
  } finally {
    program.drop(file);
  }
}

/** Everything between the opening quote and the cursor is what has been typed of the value. */
function inQuotes(session: SessionView, { file, code, position }: CursorInCell): Completions | undefined {
  const { ts } = session.program;
  const node = nodeAt(ts, file, position);
  if (!ts.isStringLiteralLike(node)) return undefined;
  const start = node.getStart(file) + 1;
  const field = position < start ? undefined : fieldPath(ts, node);
  const path = field && dottedName(ts, field.call.expression);
  const recipe = path && valueOf(session, path);
  if (!field || !isRecipe(recipe)) return undefined;
  const typed = code.slice(start, position).toLowerCase();
  const innermostFirst = [...field.fields].reverse();
  const values = innermostFirst.flatMap((name) => valuesFor(recipe, name));
  const found = matching([...new Set(values)], typed).slice(0, maxMatches);
  return found.length > 0
    ? { matches: found, cursor_start: toPoints(code, start), cursor_end: toPoints(code, position) }
    : undefined;
}

/** Values that begin with what was typed, then those that contain it: 'oak' finds 'white oak'. */
function matching(values: string[], typed: string): string[] {
  const first = values.filter((value) => value.toLowerCase().startsWith(typed));
  const within = values.filter(
    (value) => !first.includes(value) && typed !== '' && value.toLowerCase().includes(typed),
  );
  return [...first, ...within];
}

function byTypes(session: SessionView, { file, code, position }: CursorInCell): Completions {
  const info = session.language().completions(file, position);
  const entries = info?.entries ?? [];
  const span =
    info?.optionalReplacementSpan ?? entries.find((entry) => entry.replacementSpan)?.replacementSpan;
  const word = /[\p{ID_Continue}$#]*$/u.exec(code.slice(0, position))?.[0] ?? '';
  const start = span && span.start <= position ? span.start : position - word.length;
  const usable: NamedEntry[] = entries.filter(isUsable);
  if (info?.isGlobalCompletion) usable.push(...packageEntries(session, code.slice(0, start)));
  const typed = code.slice(start, position);
  const exact = usable.filter((entry) => entry.name.startsWith(typed));
  const found =
    exact.length > 0
      ? exact
      : usable.filter((entry) => entry.name.toLowerCase().startsWith(typed.toLowerCase()));
  const matches = found
    .sort((a, b) => a.sortText.localeCompare(b.sortText) || a.name.localeCompare(b.name))
    .map((entry) => entry.name);
  return {
    matches: [...new Set(matches)].slice(0, maxMatches),
    cursor_start: toPoints(code, start),
    cursor_end: toPoints(code, position),
  };
}

type NamedEntry = Pick<TS.CompletionEntry, 'name' | 'sortText'>;

/** The compiler's own order: names in scope before global ones. */
const ownNames = '11';
/** Where the grammar wants a type. */
const beforeType = /(?:[:<|&]|\b(?:as|extends|implements|satisfies|keyof))\s*$/;

/** The package's names, whose types may not be loaded: they stand beside the cell's own. */
function packageEntries(session: SessionView, before: string): NamedEntry[] {
  const names = session.language().packageExports.names(beforeType.test(before));
  return names.map((name) => ({ name, sortText: ownNames }));
}

/** An entry that can be inserted as its plain name, and is not one of the kernel's own. */
function isUsable({ name, insertText }: TS.CompletionEntry): boolean {
  if (name.startsWith('__reckoner')) return false;
  return insertText === undefined || (/^[\p{ID_Continue}$]+$/u.test(name) && !insertText.startsWith('?.'));
}
