import type { AnyRecipe } from '../engine/any-recipe.js';
import { toSerializable } from '../engine/to-serializable.js';
import { resultInternals } from '../engine/result.js';
import type { ChartSpec } from '../charts/chart-spec.js';
import type { NoteHead, NotePart } from './note-content.js';
import { noteStateMarkers } from './note-markdown.js';
import { FileError } from './atomic-write.js';

/** What a note keeps of itself, so that it can be recomputed. */
export interface NoteState {
  readonly format: 'reckoner build note 1';
  readonly head: NoteHead;
  readonly parts: readonly PartState[];
}
export type PartState =
  | { readonly kind: 'text'; readonly markdown: string }
  | { readonly kind: 'chart'; readonly spec: ChartSpec; readonly remark?: string }
  | { readonly kind: 'shown'; readonly bundle: Readonly<Record<string, unknown>>; readonly remark?: string }
  | { readonly kind: 'picture'; readonly file: string; readonly caption?: string }
  | {
      readonly kind: 'result';
      readonly recipe: string;
      readonly inputs: unknown;
      readonly remark?: string;
      readonly outputs: unknown;
      readonly shown: readonly ShownLine[];
      readonly sources: readonly string[];
    };

/** A line as it was printed, for telling later what changed. */
export interface ShownLine {
  readonly name: string;
  readonly label: string;
  readonly text: string;
}

export function noteStateOf(
  head: NoteHead,
  parts: readonly NotePart[],
  shown: (part: Extract<NotePart, { kind: 'result' }>) => {
    lines: readonly ShownLine[];
    sources: readonly string[];
  },
): NoteState {
  return {
    format: 'reckoner build note 1',
    head,
    parts: parts.map((part): PartState => {
      const remark = 'remark' in part && part.remark !== undefined ? { remark: part.remark } : {};
      switch (part.kind) {
        case 'text':
          return part;
        case 'chart':
          return { kind: 'chart', spec: part.spec, ...remark };
        case 'shown':
          return { kind: 'shown', bundle: part.bundle, ...remark };
        case 'picture':
          return {
            kind: 'picture',
            file: part.file,
            ...(part.caption === undefined ? {} : { caption: part.caption }),
          };
        case 'result': {
          const { lines, sources } = shown(part);
          return {
            kind: 'result',
            recipe: part.answer.name,
            inputs: toSerializable(part.answer.rawInputs),
            ...remark,
            outputs: part.answer.raw,
            shown: lines,
            sources,
          };
        }
      }
    }),
  };
}

/** The memory in the text of a saved note. Throws FileError when there is none or it is damaged. */
export function readNoteState(text: string, file: string): NoteState {
  const json =
    /<script type="application\/json" id="note-memory">([^<]*)<\/script>/.exec(text)?.[1] ??
    between(text, noteStateMarkers.start, noteStateMarkers.end);
  if (json === undefined)
    throw new FileError(
      file,
      'holds no inputs to reckon again; takes a build note saved as .md or .html by this program',
    );
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch {
    throw new FileError(
      file,
      'the inputs kept in it are damaged and cannot be read; save the note again from its notebook',
    );
  }
  if (!isMemory(value))
    throw new FileError(file, 'the inputs kept in it are not of a form this version knows');
  return value;
}

function between(text: string, start: string, end: string): string | undefined {
  const from = text.lastIndexOf(start);
  const to = from < 0 ? -1 : text.indexOf(end, from);
  return to < 0 ? undefined : text.slice(from + start.length, to);
}

const isListOf = (value: unknown, accepts: (item: unknown) => boolean): boolean =>
  Array.isArray(value) && value.every(accepts);

function isShownLine(value: unknown): boolean {
  const line = value as Partial<ShownLine> | null;
  return [line?.name, line?.label, line?.text].every((part) => typeof part === 'string');
}

function isMemory(value: unknown): value is NoteState {
  const m = value as Partial<NoteState> | null;
  if (typeof m !== 'object' || m === null || m.format !== 'reckoner build note 1' || !Array.isArray(m.parts))
    return false;
  const text = (v: unknown): boolean => typeof v === 'string';
  const head: unknown = m.head;
  if (typeof head !== 'object' || head === null) return false;
  const { title, date, version } = head as Partial<NoteHead>;
  if (![title, date, version].every(text)) return false;
  return m.parts.every((p: unknown) => {
    if (typeof p !== 'object' || p === null) return false;
    const part = p as Record<string, unknown>;
    if (part['remark'] !== undefined && !text(part['remark'])) return false;
    switch (part['kind']) {
      case 'text':
        return text(part['markdown']);
      case 'picture':
        return text(part['file']);
      case 'chart':
        return typeof part['spec'] === 'object' && part['spec'] !== null;
      case 'shown':
        return typeof part['bundle'] === 'object' && part['bundle'] !== null;
      case 'result':
        return (
          text(part['recipe']) &&
          typeof part['inputs'] === 'object' &&
          part['inputs'] !== null &&
          isListOf(part['shown'], isShownLine) &&
          isListOf(part['sources'], text)
        );
      default:
        return false;
    }
  });
}

/** Reckons a remembered result again. The answer, or in words why there is none. */
export async function recompute(
  part: Extract<PartState, { kind: 'result' }>,
  recipe: AnyRecipe | undefined,
): Promise<NonNullable<ReturnType<typeof resultInternals>> | string> {
  if (recipe === undefined) return `there is no recipe called ${part.recipe} any more`;
  try {
    const answer = resultInternals(await recipe(part.inputs as Record<string, unknown>));
    return answer ?? `${part.recipe} gave no result`;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}
