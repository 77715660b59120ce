import { savedUnits } from '../shop/shop-file.js';
import { setUnits, unitSystems, type UnitSystem } from '../units/unit-system.js';
import { progressOnTerminal } from './terminal-progress.js';
import { findRecipe, parseInputs, interruptSignal } from './recipe-arguments.js';
import { formOf, UsageError, type Words } from './usage.js';

/** `reckoner work RECIPE field=value ... [--json|--csv|--markdown]`. */
export async function work(words: Words): Promise<number> {
  const form = formOf(words, ['json', 'csv', 'markdown']);
  setUnits(unitsFor(words));
  const recipe = findRecipe(words.plain[0]);
  const given = parseInputs(words.plain.slice(1));
  progressOnTerminal(process.stderr);
  const result = await recipe(given, recipe.isAsync ? { signal: interruptSignal() } : undefined);
  if (form === 'csv') process.stdout.write(result.toCSV());
  else if (form === 'json') process.stdout.write(`${JSON.stringify(result.toJSON(), null, 2)}\n`);
  else process.stdout.write(`${form === 'markdown' ? result.toMarkdown() : result.toText()}\n`);
  return 0;
}

/** The units asked for, else those of My shop, else both. @throws UsageError */
function unitsFor(words: Words): UnitSystem {
  const asked = words.values.get('units');
  if (asked === undefined) return savedUnits() ?? 'both';
  const found = unitSystems.find((u) => u === asked);
  if (!found)
    throw new UsageError(
      `--units: got ${JSON.stringify(asked.slice(0, 40))}, takes ${unitSystems.join(', ')}`,
    );
  return found;
}
