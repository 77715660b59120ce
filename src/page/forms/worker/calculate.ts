import { inUnits } from '../../../units/unit-system.js';
import type { AnyRecipe } from '../../../engine/any-recipe.js';
import { asSentence, cautionWord } from '../../../engine/caution.js';
import { resultInternals, type Result, type ResultInternals } from '../../../engine/result.js';
import { valueLines } from '../../../engine/value-table.js';
import { InputError } from '../../../units/input-error.js';
import type { Answer, AnswerDetails, Outcome, ReadFields } from '../model/answer.js';
import type { Call } from '../model/argument.js';
import { rootOf } from '../model/issue-root.js';
import { issuesOfFields, readFields, withRepair } from './read-fields.js';
import { CodeOnly, type Resolver } from './resolve.js';
import { sentenceOf } from './sentence.js';
import { capitalised } from '../../../units/capitalised.js';

/** What a call comes to: the answer, or what stands in its way. `search` runs a recipe that searches; else it waits to be asked. */
export async function calculate(
  recipe: AnyRecipe,
  call: Call,
  resolver: Resolver,
  search: boolean,
): Promise<Outcome> {
  const { inputs, codes } = await resolved(call, resolver);
  const read = readFields(recipe.inputs, inputs);
  const missing = Object.entries(recipe.inputs)
    .filter(([name, field]) => !field.optional && !(name in call.given))
    .map(([name]) => name);
  const wrong = issuesOfFields(recipe.inputs, inputs);
  if (wrong.length > 0) return { state: 'wrong', issues: wrong, missing, read };
  if (codes.length > 0) return { state: 'code', fields: codes, read };
  if (missing.length > 0) return { state: 'waiting', missing, read };
  try {
    if (recipe.isAsync && !search) {
      recipe.read(inputs);
      return { state: 'search', read };
    }
    return { state: 'answer', answer: answerOf(await recipe(inputs)), read };
  } catch (error) {
    return refusal(recipe, error, inputs, read);
  }
}

/** What the recipe itself has against inputs that are right one by one. A field it names that is still empty is waited for. */
function refusal(
  recipe: AnyRecipe,
  error: unknown,
  inputs: Readonly<Record<string, unknown>>,
  read: ReadFields,
): Outcome {
  if (!(error instanceof InputError)) {
    const message = error instanceof Error ? error.message : String(error);
    return { state: 'wrong', issues: [{ field: '', message }], missing: [], read };
  }
  const issues = error.issues.map((issue) => withRepair(recipe.inputs, issue, inputs));
  const empty = error.issues
    .map(({ field }) => rootOf(field))
    .filter((name) => Object.hasOwn(recipe.inputs, name) && inputs[name] === undefined);
  return { state: 'wrong', issues, missing: [...new Set(empty)], read };
}

async function resolved(
  call: Call,
  resolver: Resolver,
): Promise<{ inputs: Record<string, unknown>; codes: string[] }> {
  const inputs: Record<string, unknown> = {};
  const codes: string[] = [];
  for (const [name, argument] of Object.entries(call.given)) {
    try {
      inputs[name] = await resolver.value(argument);
    } catch (error) {
      if (!(error instanceof CodeOnly) && !(error instanceof InputError)) throw error;
      codes.push(name);
    }
  }
  return { inputs, codes };
}

/** The whole answer of a call that has one. */
export async function detailsOf(recipe: AnyRecipe, call: Call, resolver: Resolver): Promise<AnswerDetails> {
  const { inputs } = await resolved(call, resolver);
  const result = await recipe(inputs);
  return { html: result.toHtml(), csv: result.toCSV(), clipboard: result.toClipboard() };
}

/** A result as plain data for the page. */
export function answerOf(result: Result): Answer {
  const inner = resultInternals(result) as ResultInternals;
  const { lines, tables } = valueLines(inner);
  return {
    recipe: inner.name,
    title: inner.title,
    sentence: inUnits(sentenceOf(inner, lines)),
    lines: lines
      .filter(({ name }) => name !== 'sentence')
      .map(({ name, label, metric, inch }) => ({
        name,
        label: shortLabel(label),
        metric,
        inch,
      })),
    tables: tables.map(({ name, label, columns, rows }) => ({ name, label, columns, rows })),
    cautions: inner
      .cautions()
      .map(({ level, text }) => ({ level, word: cautionWord[level], text: asSentence(inUnits(text)) })),
    chart: result.chart,
  };
}

/** The part of a label before its explanation. */
function shortLabel(label: string): string {
  const [first = label] = label.split(/[;:,]/);
  return capitalised(first);
}
