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
      'holds no inputs to calculate again; takes a build note saved as .md or .html by this program',
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

const isText = (value: unknown): value is string => typeof value === 'string';
const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;
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
  const head: unknown = m.head;
  if (typeof head !== 'object' || head === null) return false;
  const { title, date, version } = head as Partial<NoteHead>;
  if (![title, date, version].every(isText)) return false;
  return m.parts.every(isPart);
}

/** What each kind of part has to hold. */
const partChecks: Readonly<Record<string, (part: Readonly<Record<string, unknown>>) => boolean>> = {
  text: (part) => isText(part['markdown']),
  picture: (part) => isText(part['file']),
  chart: (part) => isObject(part['spec']),
  shown: (part) => isObject(part['bundle']),
  result: (part) =>
    isText(part['recipe']) &&
    isObject(part['inputs']) &&
    isListOf(part['shown'], isShownLine) &&
    isListOf(part['sources'], isText),
};

function isPart(value: unknown): boolean {
  if (!isObject(value)) return false;
  const { kind, remark } = value;
  if (remark !== undefined && !isText(remark)) return false;
  return isText(kind) && Object.hasOwn(partChecks, kind) && partChecks[kind]?.(value) === true;
}

/** Calculates a remembered result again. The answer, or in words why there is none. */
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
