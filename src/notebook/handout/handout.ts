import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { ChartSpec } from '../../charts/chart-spec.js';
import { escapeHtml as e } from '../../engine/escape-html.js';
import { markdownHtml } from '../../notes/markdown-html.js';
import { pageHtml } from '../../notes/html-page.js';
import { FileError, reason } from '../../notes/atomic-write.js';
import { resultMimeType } from '../../engine/result-display.js';
import {
  exerciseFrom,
  exerciseType,
  formOf,
  knownAnswersOf,
  toleranceOf,
  type ExerciseData,
} from '../../engine/exercise.js';
import { sealAnswers } from '../../engine/sealed-answers.js';
import { readRows } from '../../engine/table-field.js';
import { decodeText } from '../../engine/text-encoding.js';
import type { Field, Fields } from '../../engine/field.js';
import type { AnyRecipe } from '../../engine/any-recipe.js';
import { recipeSketch } from '../../sketches/recipe-sketch.js';
import { catalogue } from '../../recipes/catalogue.js';
import { bundleHtml, attachmentsOf, overprinted, titleOf, withoutColours } from '../export/notebook-html.js';
import type { Cell, CodeCell, MimeBundle, Notebook } from '../format/notebook.js';
import { handoutScript } from './bundle.js';
import { handoutDataId, type HandoutData } from './handout-data.js';
import { handoutStyle } from './handout-style.js';

export interface HandoutOptions {
  readonly title?: string;
  /** Folder from which the notebook read its files; tables given by name are put into the page. Default '.'. */
  readonly cwd?: string;
}

export interface Handout {
  /** The page for the class. */
  readonly page: string;
  /** The sheet for the teacher: every exercise with its answer. */
  readonly answers: string;
  /** How many results, exercises and charts with sliders it holds. */
  readonly alive: number;
  readonly exercises: number;
}

/**
 * A class handout from a notebook that has been run: words, and in place of code and printed results the recipes themselves,
 * with fields and sliders; exercises that check answers. One page, no server, from a file; printed, it has blanks to fill in.
 * Throws {@link FileError} when a table that the notebook read is gone.
 */
export async function handout(notebook: Notebook, options: HandoutOptions = {}): Promise<Handout> {
  const title = options.title ?? titleOf(notebook) ?? 'Handout';
  const writer = new HandoutWriter(options.cwd ?? '.');
  const parts: string[] = [];
  for (const cell of notebook.cells) if (!leftOut(cell)) parts.push(...(await writer.cell(cell)));
  const { results, tasks, charts } = writer;
  const key = `reckoner-handout-${createHash('sha256')
    .update(JSON.stringify([title, results, tasks]))
    .digest('hex')
    .slice(0, 12)}`;
  const exercises = await Promise.all(tasks.map((task, i) => sealed(`exercise-${i + 1}`, task, key)));
  const data: HandoutData = { key, results, exercises, charts };
  const nameLine = '<p class="nameLine print">Name <span></span> Date <span></span></p>';
  const foot = `<footer><p class="screen">What you write stays in this browser. <button type="button" id="forget">Clear what I wrote</button></p><p>Figures are for learning and planning; local codes and licensed practice come first.</p></footer>`;
  // A page without interactive parts needs no script.
  const script =
    results.length + exercises.length + charts.length === 0
      ? undefined
      : handoutScript([...new Set(results.map((r) => r.recipe))]);
  const page = pageHtml({
    title,
    body: `${nameLine}<main>${parts.join('\n')}</main>${foot}`,
    style: handoutStyle,
    ...(script === undefined ? {} : { script, evaluates: true }),
    data: { id: handoutDataId, value: data },
  });
  return {
    page,
    answers: answerSheet(title, tasks),
    alive: results.length + charts.length,
    exercises: tasks.length,
  };
}

/** Writes the cells one after the other and gathers what the page's script needs. */
class HandoutWriter {
  readonly results: HandoutData['results'][number][] = [];
  readonly tasks: ExerciseData[] = [];
  readonly charts: HandoutData['charts'][number][] = [];
  readonly #taken = new Set<string>([handoutDataId, 'forget']);
  /** The words just before announce an exercise, which then needs no heading of its own. */
  #headed = false;

  constructor(private readonly cwd: string) {}

  async cell(cell: Cell): Promise<string[]> {
    if (cell.cell_type === 'code') return outputsOf(cell, (data) => this.#output(data));
    if (cell.cell_type === 'raw') return [];
    this.#headed = /^#+ .*exercise/im.test(cell.source);
    const { html } = markdownHtml(cell.source, this.#taken, attachmentsOf(cell), 'mathml');
    return [`<div class="words">${html}</div>`];
  }

  async #output(data: MimeBundle): Promise<string> {
    const task = data[exerciseType] as unknown as ExerciseData | undefined;
    if (task !== undefined) return this.#exercise(task);
    const html = await bundleHtml(data, this.#taken, 'mathml');
    const computed = data[resultMimeType] as { recipe?: unknown; inputs?: unknown } | undefined;
    const recipe = catalogue.find((r) => r.name === computed?.recipe);
    // A search (a cutting plan) takes a phone too long: it is printed as the notebook computed it.
    if (computed !== undefined && recipe !== undefined && !recipe.isAsync) {
      const id = `result-${this.results.length + 1}`;
      const inputs = withTables(recipe.inputs, computed.inputs as Record<string, unknown>, this.cwd);
      this.results.push({ id, recipe: recipe.name, inputs });
      return `<section class="result" id="${id}">${this.#sketchOf(recipe)}${html}</section>`;
    }
    const spec = sliderChart(data);
    if (spec === undefined) return `<section class="shown">${html}</section>`;
    const id = `chart-${this.charts.length + 1}`;
    this.charts.push({ id, spec });
    return `<section class="chart" id="${id}">${html}</section>`;
  }

  /** The lettered sketch of a recipe, folded where the page has shown it before. */
  #sketchOf(recipe: AnyRecipe): string {
    const sketch = recipeSketch(recipe);
    if (sketch === undefined) return '';
    const isFirst = this.results.filter(({ recipe: name }) => name === recipe.name).length === 1;
    return `<details class="sketch"${isFirst ? ' open' : ''}><summary>What is measured</summary>${sketch.svg}</details>`;
  }

  /** The question and its check cell show the same exercise; what the check said to the notebook's author is left out. */
  #exercise(task: ExerciseData): string {
    if (this.tasks.some((x) => JSON.stringify(x) === JSON.stringify(task))) return '';
    const id = `exercise-${this.tasks.push(task)}`;
    return exerciseHtml(id, this.#headed ? undefined : this.tasks.length, task, this.#taken);
  }
}

/** An exercise as the page carries it: nothing of its answers can be read. */
async function sealed(
  id: string,
  task: ExerciseData,
  key: string,
): Promise<HandoutData['exercises'][number]> {
  const answers = await sealAnswers(`${key} ${id}`, toleranceOf(task), knownAnswersOf(task));
  const hint = task.hint === undefined ? {} : { hint: task.hint };
  return { id, exercise: { form: formOf(task), answers, ...hint } };
}

async function outputsOf(cell: CodeCell, output: (data: MimeBundle) => Promise<string>): Promise<string[]> {
  const parts: string[] = [];
  for (const o of cell.outputs) {
    if (o.output_type === 'stream' && o.name === 'stdout')
      parts.push(`<pre class="prints">${e(withoutColours(overprinted(o.text)))}</pre>`);
    else if (o.output_type === 'display_data' || o.output_type === 'execute_result')
      parts.push(await output(o.data));
  }
  return parts.filter((p) => p !== '');
}

/** Cells tagged `notebook-only` speak of running cells, which a handout has none of. */
function leftOut(cell: Cell): boolean {
  const tags = cell.metadata['tags'];
  return Array.isArray(tags) && tags.includes('notebook-only');
}

function sliderChart(data: MimeBundle): ChartSpec | undefined {
  const type = Object.keys(data).find((t) => /^application\/vnd\.vegalite\.v[456]\+json$/.test(t));
  const spec = type === undefined ? undefined : (data[type] as ChartSpec | undefined);
  const params = spec?.['params'];
  return Array.isArray(params) && params.some((p) => typeof p === 'object' && p !== null && 'bind' in p)
    ? spec
    : undefined;
}

/** Tables given as the name of a CSV file become their rows, since a page reads no files. */
function withTables(
  fields: Fields | Readonly<Record<string, Field>>,
  inputs: Readonly<Record<string, unknown>>,
  cwd: string,
): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(inputs).map(([name, value]) => {
      const field = fields[name];
      if (field?.kind !== 'table' || typeof value !== 'string') return [name, value];
      return [name, rowsOf(value, cwd, field)];
    }),
  );
}

/** The rows of a file, or of its text, each number as the recipe reads it. */
function rowsOf(given: string, cwd: string, field: Field): unknown {
  let text = given;
  if (!/[\r\n]/.test(given)) {
    const file = resolve(cwd, given.trim());
    try {
      text = `${decodeText(readFileSync(file))}\n`;
    } catch (error) {
      throw new FileError(file, `could not be read into the handout: ${reason(error, 'read')}`);
    }
  }
  return readRows(text, field.fields ?? {}, field.expects).rows.map((row) =>
    Object.fromEntries(Object.entries(row).filter(([, value]) => value !== undefined)),
  );
}

function exerciseHtml(
  id: string,
  number: number | undefined,
  task: ExerciseData,
  taken: Set<string>,
): string {
  const unit =
    typeof task.answer === 'object'
      ? 'with its unit'
      : typeof task.answer === 'number'
        ? 'a plain number'
        : 'in a word';
  return `<section class="exercise keep" id="${id}">${number === undefined ? '' : `<h3>Exercise ${number}</h3>`}${markdownHtml(task.question, taken, {}, 'mathml').html}
<div class="print workspace" aria-hidden="true"><i></i><i></i><i></i></div>
<form><label>Your answer, ${unit} <input type="text" name="answer" autocomplete="off" autocapitalize="off" spellcheck="false"></label> <button type="submit" class="screen">Check</button></form>
<output class="screen" role="status"></output></section>`;
}

function answerSheet(title: string, exercises: readonly ExerciseData[]): string {
  const taken = new Set<string>();
  const rows = exercises.map((x, i) => {
    const also =
      (x.alsoRight ?? []).length === 0
        ? ''
        : `<br><small>also right: ${e((x.alsoRight ?? []).join(', '))}</small>`;
    const within =
      typeof x.answer === 'string'
        ? ''
        : `<br><small>within ${(100 * (x.tolerance ?? 0.01)).toPrecision(2).replace(/\.?0+$/, '')} % is taken as right</small>`;
    const hint =
      x.hint === undefined ? '' : `<p><small>Hint after the second wrong answer: ${e(x.hint)}</small></p>`;
    return `<tr><td class="number">${i + 1}</td><td>${markdownHtml(x.question, taken, {}, 'mathml').html}${hint}</td><td><strong>${e(exerciseFrom(x).reveal())}</strong>${within}${also}</td></tr>`;
  });
  const body = `<h1>Answers: ${e(title)}</h1><p>For the teacher. ${exercises.length === 0 ? 'This handout has no exercises.' : ''}</p>${exercises.length === 0 ? '' : `<table class="answers"><thead><tr><th></th><th>Exercise</th><th>Answer</th></tr></thead><tbody>${rows.join('\n')}</tbody></table>`}`;
  return pageHtml({ title: `Answers: ${title}`, body, style: handoutStyle });
}
