import { InputError } from '../units/input-error.js';
import type { Quantity } from '../units/quantity.js';
import { solveFor } from '../explore/solve-for.js';
import { sweep } from '../explore/sweep.js';
import { uncertain } from '../explore/uncertain.js';
import { progressOnTerminal } from './terminal-progress.js';
import { findRecipe, parseInputs, interruptSignal } from './recipe-arguments.js';
import { optionsOf, UsageError } from './usage.js';

const print = (value: unknown): void =>
  void process.stdout.write(`${typeof value === 'string' ? value : JSON.stringify(value, null, 2)}\n`);

/** A whole number given to an option. @throws UsageError */
function whole(values: ReadonlyMap<string, string>, name: string): number | undefined {
  const text = values.get(name);
  if (text === undefined) return undefined;
  if (!/^\d{1,9}$/.test(text))
    throw new UsageError(`${name}: got ${JSON.stringify(text.slice(0, 40))}, takes a whole number`);
  return Number(text);
}

/** `reckoner sweep RECIPE field='A .. B' ...`. */
export async function sweepCommand(words: readonly string[]): Promise<number> {
  const { plain, flags, values } = optionsOf(words, { flags: ['--json'], values: ['--steps', '--output'] });
  const recipe = findRecipe(plain[0]);
  progressOnTerminal(process.stderr);
  const result = await sweep(recipe, parseInputs(plain.slice(1)), {
    signal: interruptSignal(),
    ...option('steps', whole(values, '--steps')),
    ...option('output', values.get('--output')),
  });
  print(flags.has('--json') ? result.toJSON() : result.toMarkdown());
  return 0;
}

/** `reckoner uncertain RECIPE field='A +- B' ...`. */
export async function uncertainCommand(words: readonly string[]): Promise<number> {
  const { plain, flags, values } = optionsOf(words, {
    flags: ['--json'],
    values: ['--samples', '--seed', '--output', '--at-most', '--at-least'],
  });
  const recipe = findRecipe(plain[0]);
  progressOnTerminal(process.stderr);
  const result = await uncertain(recipe, parseInputs(plain.slice(1)), {
    signal: interruptSignal(),
    ...option('draws', whole(values, '--samples')),
    ...option('seed', whole(values, '--seed')),
    ...option('output', values.get('--output')),
    ...option('atMost', values.get('--at-most')),
    ...option('atLeast', values.get('--at-least')),
  });
  print(flags.has('--json') ? result.toJSON() : result.toMarkdown());
  return 0;
}

/** `reckoner solve RECIPE input OUTPUT=VALUE field=value ...`. */
export async function solveCommand(words: readonly string[]): Promise<number> {
  const { plain, flags, values } = optionsOf(words, { flags: ['--json'], values: ['--from', '--to'] });
  const recipe = findRecipe(plain[0]);
  const input = plain[1];
  if (input === undefined || input.includes('='))
    throw new UsageError('solve: takes RECIPE, the input to find, OUTPUT=VALUE, then the other inputs');
  const given = parseInputs(plain.slice(2));
  const targets = Object.entries(given).filter(
    ([name]) => Object.hasOwn(recipe.outputs, name) && !Object.hasOwn(recipe.inputs, name),
  );
  if (targets.length !== 1)
    throw new InputError(
      `solve: got ${targets.length} targets, takes one output with the value wanted, such as ${Object.keys(recipe.outputs)[0]}=...`,
    );
  const [name, value] = targets[0] as [string, unknown];
  delete given[name];
  progressOnTerminal(process.stderr);
  const result = solveFor(recipe, input, { [name]: value }, given, {
    ...option('from', values.get('--from')),
    ...option('to', values.get('--to')),
  });
  print(
    flags.has('--json')
      ? {
          recipe: recipe.name,
          input,
          output: name,
          roots: result.roots.map((q) => (typeof q === 'number' ? { value: q, unit: '' } : q.toJSON())),
          ...(result.nearest
            ? { nearest: { input: json(result.nearest.input), output: json(result.nearest.output) } }
            : {}),
        }
      : result.toText(),
  );
  return result.roots.length > 0 ? 0 : 1;
}

const json = (q: Quantity | number): unknown => (typeof q === 'number' ? { value: q, unit: '' } : q.toJSON());
const option = <T>(name: string, value: T | undefined): Record<string, T> =>
  value === undefined ? {} : { [name]: value };
