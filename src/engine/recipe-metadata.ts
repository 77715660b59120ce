import { InputError, nearest, inspectValue } from '../units/input-error.js';
import type { Caution } from './caution.js';
import { fieldsSchema, makeParser, type Fields, type Parsed } from './field.js';
import type { Formula } from './formula.js';
import { forgetCurrency } from './quantity-field.js';
import { inputsJsonSchema } from './json-schema.js';
import type { Outputs, RawOutput } from './output.js';
import type { BaseDefinition, Limit, RecipeMetadata } from './recipe-definition.js';

/** Members of every result, which no output may hide. */
const reserved = new Set([
  'workings',
  'sources',
  'cautions',
  'chart',
  'inputs',
  'recipe',
  'title',
  'toText',
  'toMarkdown',
  'toHtml',
  'toJSON',
  'toCSV',
  'toClipboard',
  'raw',
]);

/** Metadata of a recipe from its definition. @throws Error on an output that would hide a member of the result */
export function recipeMetadata<F extends Fields, O extends Outputs>(
  def: BaseDefinition<F, O>,
  formulas: readonly Formula[],
  isAsync: boolean,
): RecipeMetadata<F, O> {
  const hidden = Object.keys(def.outputs).find((name) => reserved.has(name));
  if (hidden !== undefined) throw new Error(`${def.name}: an output may not be called ${hidden}`);
  const parse = makeParser(def.inputs);
  return {
    name: def.name,
    title: def.title,
    topic: def.topic,
    about: def.about,
    sources: def.sources,
    inputs: def.inputs,
    outputs: def.outputs,
    example: def.example,
    formulas,
    isAsync,
    ...(def.mending ? { mending: def.mending } : {}),
    get schema() {
      return fieldsSchema(def.inputs, forgetCurrency);
    },
    get jsonSchema() {
      return inputsJsonSchema(def);
    },
    read: (given) => named(def.name, () => accepted(def, parse(given))),
    chartOf: (given, out) => def.chart?.(given, out),
    limitsOf: (given, out) =>
      (def.limits ?? [])
        // A text made of the answer says nothing true of another one.
        .filter((l) => typeof l.message === 'string' || l.when(given, out))
        .map((l) => limitText(l, given, out)),
    sentenceOf: (given, out) =>
      typeof def.sentence === 'function' ? def.sentence(given, out) : def.sentence,
    cautionsOf: (given, out) => [
      ...(typeof def.cautions === 'function' ? def.cautions(given, out) : (def.cautions ?? [])),
      ...(def.limits ?? [])
        .filter((l) => l.when(given, out))
        .map((l): Caution => ({
          level: 'range',
          text: limitText(l, given, out),
          ...(l.source ? { source: l.source } : {}),
        })),
    ],
  };
}

const limitText = <F extends Fields, O extends Outputs>(
  limit: Limit<F, O>,
  given: Parsed<F>,
  out: RawOutput<O>,
): string => (typeof limit.message === 'function' ? limit.message(given, out) : limit.message);

/** Inputs that were read one by one, once the recipe's own `refuse` has nothing against them. @throws InputError */
export function accepted<F extends Fields, O extends Outputs>(
  def: Pick<BaseDefinition<F, O>, 'name' | 'refuse'>,
  given: Parsed<F>,
): Parsed<F> {
  const issues = def.refuse?.(given);
  if (issues === undefined) return given;
  const list = [issues].flat();
  if (list.length > 0) throw new InputError(list, def.name);
  return given;
}

/** Gives bad input that only the evaluation finds the recipe's name. */
export function named<T>(name: string, run: () => T): T {
  try {
    return run();
  } catch (error) {
    throw withName(name, error);
  }
}

/** An error that another recipe raised keeps that recipe's name. */
export const withName = (name: string, error: unknown): unknown =>
  error instanceof InputError && error.context === '' ? new InputError(error.issues, name) : error;

/** A function that carries the members of a recipe. */
export function callable<T extends object>(call: (...args: never[]) => unknown, members: T): T {
  Object.defineProperty(call, 'name', { value: (members as { name?: string }).name, configurable: true });
  for (const [key, d] of Object.entries(Object.getOwnPropertyDescriptors(members)))
    if (key !== 'name') Object.defineProperty(call, key, d);
  return call as unknown as T;
}

/** @throws Error where an answer has a value under a name that is not among the outputs: a fault of the recipe's author */
export function assertDeclared(recipe: string, outputs: Outputs, raw: object): void {
  const extra = Object.keys(raw).find((name) => !Object.hasOwn(outputs, name));
  if (extra === undefined) return;
  const near = nearest(extra, Object.keys(outputs));
  throw new Error(
    `${recipe}: the answer has ${inspectValue(extra)}, which is not among its outputs${near ? `; did you mean ${inspectValue(near)}?` : ''}`,
  );
}
