import { fitWidth, renderSvg } from '../charts/svg.js';
import type { ChartSpec } from '../charts/chart-spec.js';
import { sortBySeverity, type Caution } from '../engine/caution.js';
import { valueLines } from '../engine/result-display.js';
import type { ResultInternals, TableBlock, ValueLine } from '../engine/result.js';
import type { Citation } from '../engine/source.js';
import type { Working } from '../engine/trace.js';
import { uniqueSlug } from './unique-slug.js';

/** One thing in a note, as it was added. */
export type NotePart =
  | { readonly kind: 'text'; readonly markdown: string }
  | { readonly kind: 'result'; readonly answer: ResultInternals; readonly remark?: string }
  | { readonly kind: 'chart'; readonly spec: ChartSpec; readonly remark?: string }
  | { readonly kind: 'shown'; readonly bundle: Readonly<Record<string, unknown>>; readonly remark?: string }
  | { readonly kind: 'picture'; readonly file: string; readonly data: string; readonly caption?: string };

export interface NoteHead {
  readonly title: string;
  /** ISO date */
  readonly date: string;
  readonly by?: string;
  readonly version: string;
}

/** A line of the workings with the numbers of the sources it rests on. */
export type NoteWorking = Working & { readonly refs: readonly number[] };

/** A recipe's answer as it stands in a note: all text and data, nothing of a page. */
export interface ResultSheet {
  readonly kind: 'result';
  /** 1, 2, ... in the order added. */
  readonly number: number;
  readonly id: string;
  readonly title: string;
  readonly recipe: string;
  readonly remark?: string;
  readonly given: readonly ValueLine[];
  readonly answer: readonly ValueLine[];
  readonly tables: readonly TableBlock[];
  readonly workings: readonly NoteWorking[];
  readonly refs: readonly number[];
  readonly svg?: string;
}
export interface ChartSheet {
  readonly kind: 'chart';
  readonly number: number;
  readonly id: string;
  readonly title: string;
  readonly remark?: string;
  readonly svg: string;
}

export type Sheet = ResultSheet | ChartSheet | Extract<NotePart, { kind: 'text' | 'picture' | 'shown' }>;

export interface NoteContent {
  readonly head: NoteHead;
  readonly sheets: readonly Sheet[];
  /** Each caution once, the dangerous first, with the numbers of the results it belongs to. */
  readonly cautions: readonly {
    readonly caution: Caution;
    readonly sheets: readonly number[];
    readonly ref?: number;
  }[];
  /** In the order they were first used; the index plus one is the number printed. */
  readonly sources: readonly Citation[];
}

const keyOf = (c: Citation): string => `${c.id}|${c.locator}`;

/** Puts the parts of a note in order for printing: numbers, charts drawn, sources and cautions gathered. */
export async function contentOf(head: NoteHead, parts: readonly NotePart[]): Promise<NoteContent> {
  const gathered = new Gathered();
  const sheets: Sheet[] = [];
  let number = 0;
  for (const part of parts) {
    if (part.kind === 'result') sheets.push(await resultSheet(part, ++number, gathered));
    else if (part.kind === 'chart') sheets.push(await chartSheet(part, ++number, gathered));
    else sheets.push(part);
  }
  return { head, sheets, cautions: gathered.cautionLines(), sources: gathered.sources };
}

/** What the sheets of a note have in common: numbered sources, cautions with the sheets they stand on, ids. */
class Gathered {
  readonly sources: Citation[] = [];
  readonly ids = new Set<string>(['cautions', 'sources', 'contents']);
  readonly #cautions = new Map<string, { caution: Caution; sheets: number[] }>();

  /** The number of a source, in the order of first use. */
  numberOf(c: Citation): number {
    const at = this.sources.findIndex((s) => keyOf(s) === keyOf(c));
    return at >= 0 ? at + 1 : this.sources.push(c);
  }

  addCaution(caution: Caution, sheet: number): void {
    const key = `${caution.level}|${caution.text}`;
    const entry = this.#cautions.get(key) ?? { caution, sheets: [] };
    if (!entry.sheets.includes(sheet)) entry.sheets.push(sheet);
    this.#cautions.set(key, entry);
  }

  cautionLines(): NoteContent['cautions'] {
    return sortBySeverity([...this.#cautions.values()].map((e) => e.caution)).map((caution) => ({
      caution,
      sheets: this.#cautions.get(`${caution.level}|${caution.text}`)?.sheets ?? [],
      ...(caution.source === undefined ? {} : { ref: this.numberOf(caution.source) }),
    }));
  }
}

async function resultSheet(
  part: Extract<NotePart, { kind: 'result' }>,
  number: number,
  gathered: Gathered,
): Promise<Sheet> {
  const { answer } = part;
  for (const caution of answer.cautions()) gathered.addCaution(caution, number);
  const { lines, tables } = valueLines(answer);
  const numberOf = (c: Citation): number => gathered.numberOf(c);
  const workings = answer
    .workings()
    .map((w): NoteWorking => ({ ...w, refs: w.source === undefined ? [] : [numberOf(w.source)] }));
  const chart = answer.chart();
  return {
    kind: 'result',
    number,
    id: uniqueSlug(answer.title, gathered.ids),
    title: answer.title,
    recipe: answer.name,
    ...(part.remark === undefined ? {} : { remark: part.remark }),
    given: answer.inputs,
    answer: lines,
    tables,
    workings,
    refs: [...new Set(answer.sources().map(numberOf))].sort((a, b) => a - b),
    ...(chart === undefined ? {} : { svg: await drawn(chart) }),
  };
}

async function chartSheet(
  part: Extract<NotePart, { kind: 'chart' }>,
  number: number,
  gathered: Gathered,
): Promise<Sheet> {
  const title = titleOf(part.spec) ?? 'Chart';
  return {
    kind: 'chart',
    number,
    id: uniqueSlug(title, gathered.ids),
    title,
    ...(part.remark === undefined ? {} : { remark: part.remark }),
    svg: await drawn(part.spec),
  };
}

function drawn(spec: ChartSpec): Promise<string> {
  return renderSvg(fitWidth(spec, 620));
}

function titleOf(spec: ChartSpec): string | undefined {
  const title = spec['title'];
  const text = typeof title === 'object' && title !== null ? (title as { text?: unknown }).text : title;
  return Array.isArray(text) ? text.join(' ') : typeof text === 'string' ? text : undefined;
}
