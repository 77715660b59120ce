import { progressOnTerminal } from './terminal-progress.js';
import { findRecipe, parseInputs, interruptSignal } from './recipe-arguments.js';
import { optionsOf, UsageError } from './usage.js';

/** `reckoner work RECIPE field=value ... [--json|--markdown]`. */
export async function work(words: readonly string[]): Promise<number> {
  const { plain, flags } = optionsOf(words, { flags: ['--json', '--markdown'] });
  if (flags.size > 1) throw new UsageError('--json and --markdown: takes one of them');
  const recipe = findRecipe(plain[0]);
  const given = parseInputs(plain.slice(1));
  progressOnTerminal(process.stderr);
  const result = await recipe(given, recipe.isAsync ? { signal: interruptSignal() } : undefined);
  process.stdout.write(
    flags.has('--json')
      ? `${JSON.stringify(result.toJSON(), null, 2)}\n`
      : flags.has('--markdown')
        ? `${result.toMarkdown()}\n`
        : `${result.toText()}\n`,
  );
  return 0;
}
