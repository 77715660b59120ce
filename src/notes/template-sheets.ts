// Full-size templates on paper: a drawing in real millimetres, tiled over sheets that overlap and carry marks to join them by.
import { isFullSize, pxPerMm } from '../charts/drawing.js';
import type { ChartSpec } from '../charts/chart-spec.js';
import { renderSvg } from '../charts/svg.js';
import { resultInternals } from '../engine/result.js';
import { catalogue } from '../recipes/catalogue.js';
import { InputError, inspectValue } from '../units/input-error.js';
import { writeFileAtomically } from './atomic-write.js';
import { fileEnding } from './file-ending.js';
import { templateHtml, type TemplateDrawing } from './template-html.js';

export const templatePapers = ['A4', 'Letter'] as const;
export type TemplatePaper = (typeof templatePapers)[number];

export interface TemplateOptions {
  readonly paper?: TemplatePaper;
  readonly title?: string;
  /** Stands at the head of every sheet. */
  readonly warnings?: readonly string[];
}

/** Sheets of a template, ready to print at 100 %. */
export interface TemplateSheets {
  readonly title: string;
  /** One self-contained page whose sheets have their scale locked. */
  toHtml(): Promise<string>;
  /** Writes the page whole or not at all. @throws InputError for a name that does not end in .html, FileError */
  save(file: string): Promise<void>;
}

/**
 * A template at full size from a result whose recipe draws one (`halfLap`, `angledRail`, `splineSlot`), or from charts drawn
 * at {@link pxPerMm}. @throws InputError for anything else
 */
export function templateSheets(thing: unknown, options: TemplateOptions = {}): TemplateSheets {
  const paper = options.paper ?? 'A4';
  if (!templatePapers.includes(paper))
    throw new InputError({
      field: 'paper',
      message: `got ${inspectValue(paper)}, takes ${templatePapers.map((p) => inspectValue(p)).join(' or ')}`,
    });
  const { title, charts } = chartsOf(thing, options.title);
  // A drawing fitted to the page would be marked out wrong.
  if (!charts.every(isFullSize))
    throw new InputError({
      field: 'result',
      message:
        'is too large to draw at full size, takes a joint at most 1.5 m wide; mark it out from its numbers',
    });
  const made: TemplateSheets = {
    title,
    toHtml: async () =>
      templateHtml(title, await Promise.all(charts.map(drawn)), paper, options.warnings ?? []),
    async save(file) {
      fileEnding(file, ['html']);
      await writeFileAtomically(file, await made.toHtml());
    },
  };
  return Object.freeze(made);
}

function chartsOf(
  thing: unknown,
  title: string | undefined,
): { readonly title: string; readonly charts: readonly ChartSpec[] } {
  if (Array.isArray(thing)) return { title: title ?? 'Template', charts: thing as readonly ChartSpec[] };
  const answer = resultInternals(thing);
  const recipe = catalogue.find((r) => r.name === answer?.name);
  if (!answer || !recipe || !Object.hasOwn(recipe.inputs, 'picture'))
    throw new InputError({
      field: 'result',
      message: `got ${answer ? `a result of ${answer.name}` : inspectValue(thing)}, takes the result of a recipe that draws a template: ${catalogue
        .filter((r) => Object.hasOwn(r.inputs, 'picture'))
        .map((r) => r.name)
        .join(', ')}`,
    });
  const full = recipe({ ...(answer.rawInputs as object), picture: 'full size' });
  const chart = full instanceof Promise ? undefined : resultInternals(full)?.chart();
  if (!chart) throw new InputError({ field: 'result', message: `${recipe.name} draws no template here` });
  return { title: title ?? answer.title, charts: [chart] };
}

/** A chart as lines in px, without the size that would let a page shrink it. */
async function drawn(chart: ChartSpec): Promise<TemplateDrawing> {
  const svg = await renderSvg(chart);
  const box = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg);
  const inner = svg.slice(svg.indexOf('>') + 1, svg.lastIndexOf('</svg>'));
  return {
    inner,
    wide: Number(box?.[1] ?? 0) / pxPerMm,
    high: Number(box?.[2] ?? 0) / pxPerMm,
  };
}
