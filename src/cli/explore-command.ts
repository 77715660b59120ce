import { InputError } from '../units/input-error.js';
import { solveFor } from '../explore/solve-for.js';
import { sweep } from '../explore/sweep.js';
import { uncertain, type Correlation } from '../explore/uncertain.js';
import { progressOnTerminal } from './terminal-progress.js';
import { findRecipe, parseInputs, interruptSignal } from './recipe-arguments.js';
import { formOf, UsageError, wholeNumber, type Words } from './usage.js';

const print = (value: unknown): void =>
  void process.stdout.write(`${typeof value === 'string' ? value : JSON.stringify(value, null, 2)}\n`);

/** `reckoner sweep RECIPE field='A .. B' ...`. */
export async function sweepCommand(words: Words): Promise<number> {
  const form = formOf(words, ['json', 'csv']);
  const recipe = findRecipe(words.plain[0]);
  progressOnTerminal(process.stderr);
  const result = await sweep(recipe, parseInputs(words.plain.slice(1)), {
    signal: interruptSignal(),
    ...option('steps', wholeNumber(words, 'steps')),
    ...option('output', words.values.get('output')),
  });
  if (form === 'csv') process.stdout.write(result.toCSV());
  else print(form === 'json' ? result.toJSON() : result.toMarkdown());
  return 0;
}

/** `reckoner uncertain RECIPE field='A +- B' ...`. */
export async function uncertainCommand(words: Words): Promise<number> {
  const recipe = findRecipe(words.plain[0]);
  progressOnTerminal(process.stderr);
  const result = await uncertain(recipe, parseInputs(words.plain.slice(1)), {
    signal: interruptSignal(),
    correlated: (words.lists.get('correlated') ?? []).map(correlation),
    ...option('samples', wholeNumber(words, 'samples')),
    ...option('seed', wholeNumber(words, 'seed')),
    ...option('output', words.values.get('output')),
    ...option('atMost', words.values.get('at-most')),
    ...option('atLeast', words.values.get('at-least')),
  });
  print(words.flags.has('json') ? result.toJSON() : result.toMarkdown());
  return 0;
}

/** `a,b:0.5`: inputs and their correlation. */
function correlation(text: string): Correlation {
  const [names = '', coefficient] = text.split(':');
  const inputs = names.split(',').map((n) => n.trim());
  return coefficient === undefined ? { inputs } : { inputs, coefficient: Number(coefficient) };
}

/** `reckoner solve RECIPE input OUTPUT=VALUE field=value ...`. */
export function solveCommand(words: Words): number {
  const recipe = findRecipe(words.plain[0]);
  const input = words.plain[1];
  if (input === undefined || input.includes('='))
    throw new UsageError('solve: takes RECIPE, the input to find, OUTPUT=VALUE, then the other inputs');
  const given = Object.entries(parseInputs(words.plain.slice(2)));
  const isTarget = (name: string): boolean =>
    Object.hasOwn(recipe.outputs, name) && !Object.hasOwn(recipe.inputs, name);
  const targets = given.filter(([name]) => isTarget(name));
  if (targets.length !== 1)
    throw new InputError(
      `solve: got ${targets.length} targets, takes one output with the value wanted, such as ${Object.keys(recipe.outputs)[0]}=...`,
    );
  const inputs = Object.fromEntries(given.filter(([name]) => !isTarget(name)));
  progressOnTerminal(process.stderr);
  const result = solveFor(recipe, input, Object.fromEntries(targets), inputs, {
    ...option('from', words.values.get('from')),
    ...option('to', words.values.get('to')),
  });
  print(words.flags.has('json') ? result.toJSON() : result.toText());
  return result.roots.length > 0 ? 0 : 1;
}

const option = <T>(name: string, value: T | undefined): Record<string, T> =>
  value === undefined ? {} : { [name]: value };
