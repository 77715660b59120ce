// 2,500 inputs over all recipes in an ordinary run; RECKONER_HOSTILE=1000000 for the long one, whose figures tests/proof stores.
import { expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import type { AnyRecipe } from '../../src/engine/any-recipe.js';
import { catalogue } from '../../src/recipes/catalogue.js';
import { storeFigures } from '../proof/store-figures.js';
import { hostileGiven, hostileValue } from './bad-inputs.js';
import { hostileRuns, SeededRandom } from './seeded-random.js';

const runs = hostileRuns(2500);
const seen = { answered: 0, refused: 0, shown: 0 };
let sound = true;
const slowest: { ms: number; recipe: string; seed: number }[] = [];

/** Inputs number `seed` of a recipe: half of them its example with a few fields changed, half all made up. */
export function givenOf(recipe: AnyRecipe, seed: number): Record<string, unknown> {
  const random = new SeededRandom(seed * 7919 + recipe.name.length);
  const spoil = random.pick([0, 0, 0.02, 0.1]);
  if (random.chance(0.5)) return hostileGiven(random, recipe.inputs, spoil);
  const given: Record<string, unknown> = { ...(recipe.example as object) };
  const names = Object.keys(recipe.inputs);
  for (let i = 0; i <= random.below(3); i++) {
    const name = random.pick(names);
    given[name] = hostileValue(random, recipe.inputs[name] as AnyRecipe['inputs'][string], spoil);
  }
  return given;
}

function shownOf(given: unknown): string {
  try {
    return JSON.stringify(given, (_, v: unknown) =>
      typeof v === 'symbol' || typeof v === 'bigint' || typeof v === 'function'
        ? String(v)
        : typeof v === 'number' && !Number.isFinite(v)
          ? String(v)
          : v,
    ).slice(0, 600);
  } catch {
    return 'something that JSON cannot show';
  }
}

/** What an answer says but for the words of the inputs: a user may call a board "NaN". */
const withoutNames = (text: string, given: unknown): string =>
  namesIn(given).reduce((t, name) => t.replaceAll(name, ''), text);

/** All words within the inputs that could pass for a number gone wrong, those in the cells of tables included. */
function namesIn(given: unknown): string[] {
  if (typeof given === 'string')
    return [given, ...given.split(/[,\n]/)]
      .map((s) => s.trim())
      .filter((s) => /NaN|Infinity|undefined|\[object/.test(s));
  if (typeof given !== 'object' || given === null) return [];
  return Object.entries(given).flatMap(([key, value]) => [...namesIn(key), ...namesIn(value)]);
}

/** What is wrong with the answer to some inputs; undefined where nothing is. */
async function faultOf(
  recipe: AnyRecipe,
  given: Record<string, unknown>,
  look: boolean,
): Promise<string | undefined> {
  let result;
  // A search is stopped after a while, as a user would: it must then come to an end.
  const stop = new AbortController();
  const timer = recipe.isAsync ? setTimeout(() => stop.abort(), 200) : undefined;
  try {
    result = await recipe(given, recipe.isAsync ? { signal: stop.signal } : undefined);
  } catch (error) {
    seen.refused++;
    if (!(error instanceof InputError))
      return String((error as Error).stack)
        .split('\n')
        .slice(0, 4)
        .join(' ');
    const { message, issues: troubles } = error;
    if (troubles.length === 0 || !message.startsWith(recipe.name))
      return `refused without a field or a name: ${message}`;
    // What was got is quoted as it was; what is taken is ours.
    if (/\n|(?:takes|such as|at least|at most|more than|is) (?:NaN|undefined|\[object)/.test(message))
      return `refused with ${message.slice(0, 300)}`;
    return undefined;
  } finally {
    clearTimeout(timer);
  }
  seen.answered++;
  try {
    const json = withoutNames(JSON.stringify(result.toJSON()), given);
    if (/NaN|Infinity|"value":null/.test(json)) return `answered ${json.slice(0, 300)}`;
    if (look) {
      seen.shown++;
      const chart = result.chart;
      const text = withoutNames(result.toText() + result.toMarkdown(), given);
      const bad = /.{0,60}(?:NaN|Infinity|undefined|\[object).{0,60}/.exec(text);
      if (bad) return `shows ${bad[0]}`;
      if (chart !== undefined && /NaN|Infinity/.test(withoutNames(JSON.stringify(chart), given)))
        return 'draws what is no number';
    }
  } catch (error) {
    return `answered and could not show it: ${String((error as Error).stack)
      .split('\n')
      .slice(0, 4)
      .join(' ')}`;
  }
  return undefined;
}

// A search may take its time: it gets fewer inputs. All others share alike.
const share = (r: AnyRecipe): number =>
  r.isAsync
    ? 0.01
    : (({ stackUp: 0.1, matchSlabs: 0.1, pileYield: 0.2, beam: 0.3, topSag: 0.3 } as Record<string, number>)[
        r.name
      ] ?? 1);
const shares = catalogue.reduce((sum, r) => sum + share(r), 0);

it.each(catalogue.map((r) => [r.name, r] as const))(
  '%s: an answer without NaN, or an InputError that names the field',
  { timeout: 7_200_000 },
  async (name, recipe) => {
    const count = Math.ceil((runs * share(recipe)) / shares);
    const faults = new Map<string, string>();
    let worst = { ms: 0, recipe: name, seed: 0 };
    for (let seed = 1; seed <= count; seed++) {
      const given = givenOf(recipe, seed);
      const start = performance.now();
      const fault = await faultOf(recipe, given, seed % 20 === 0);
      const ms = performance.now() - start;
      if (ms > worst.ms) worst = { ms, recipe: name, seed };
      if (fault && faults.size < 5)
        faults.set(fault.replace(/[\d.e+-]+/g, '#'), `seed ${seed}, given ${shownOf(given)}: ${fault}`);
    }
    slowest.push(worst);
    if (faults.size > 0) sound = false;
    expect([...faults.values()], `${count} inputs`).toEqual([]);
    expect(worst.ms, `slowest: seed ${worst.seed}, ${shownOf(givenOf(recipe, worst.seed))}`).toBeLessThan(
      5000,
    );
  },
);

it('had right and wrong inputs enough to mean something', () => {
  const tried = seen.answered + seen.refused;
  expect(tried).toBeGreaterThanOrEqual(runs);
  expect(seen.answered).toBeGreaterThan(tried * 0.1);
  expect(seen.refused).toBeGreaterThan(tried * 0.1);
  const last = slowest
    .filter((s) => catalogue.find((r) => r.name === s.recipe)?.isAsync === false)
    .sort((a, b) => b.ms - a.ms)[0];
  // A run that found a fault leaves no figures behind.
  if (sound && runs >= 1e5)
    storeFigures('fuzz-recipes', {
      tried,
      ...seen,
      recipes: catalogue.length,
      slowestMs: Math.round(last?.ms ?? 0),
      slowestRecipe: last?.recipe,
    });
});
