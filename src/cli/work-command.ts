import { progressOnTerminal } from './terminal-progress.js';
import { findRecipe, parseInputs, interruptSignal } from './recipe-arguments.js';
import { formOf, type Words } from './usage.js';

/** `reckoner work RECIPE field=value ... [--json|--csv|--markdown]`. */
export async function work(words: Words): Promise<number> {
  const form = formOf(words, ['json', 'csv', 'markdown']);
  const recipe = findRecipe(words.plain[0]);
  const given = parseInputs(words.plain.slice(1));
  progressOnTerminal(process.stderr);
  const result = await recipe(given, recipe.isAsync ? { signal: interruptSignal() } : undefined);
  if (form === 'csv') process.stdout.write(result.toCSV());
  else if (form === 'json') process.stdout.write(`${JSON.stringify(result.toJSON(), null, 2)}\n`);
  else process.stdout.write(`${form === 'markdown' ? result.toMarkdown() : result.toText()}\n`);
  return 0;
}
