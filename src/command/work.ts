import type { Progress } from '../recipe/work.js';
import { findRecipe, givenOf, interruptSignal } from './recipe-words.js';
import { optionsOf, UsageError } from './usage.js';

/** `reckoner work RECIPE field=value ... [--json|--markdown]`. */
export async function work(words: readonly string[]): Promise<number> {
  const { plain, flags } = optionsOf(words, { flags: ['--json', '--markdown'] });
  if (flags.size > 1) throw new UsageError('--json and --markdown: takes one of them');
  const recipe = findRecipe(plain[0]);
  const given = givenOf(plain.slice(1));
  const result = await recipe(
    given,
    recipe.long ? { signal: interruptSignal(), onProgress: progressLine() } : undefined,
  );
  process.stdout.write(
    flags.has('--json')
      ? `${JSON.stringify(result.toJSON(), null, 2)}\n`
      : flags.has('--markdown')
        ? `${result.toMarkdown()}\n`
        : `${result.toText()}\n`,
  );
  return 0;
}

/** Progress of a long search on one line of the terminal, where there is one. */
function progressLine(): (p: Progress) => void {
  if (!process.stderr.isTTY) return () => undefined;
  process.once('exit', () => process.stderr.write('\r\u001b[K'));
  return (p) =>
    process.stderr.write(
      `\r\u001b[K${p.done === undefined ? '' : `${Math.round(p.done * 100)} % `}${p.says}${p.best === undefined ? '' : `, best ${p.best}`}${p.bound === undefined ? '' : `, bound ${p.bound}`}`,
    );
}
