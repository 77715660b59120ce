// A failing answer names the smallest change that mends it: the change is made, and the answer passes.
import { describe, expect, it } from 'vitest';
import { mendedWays, mendedWords, type Mending } from '../../src/engine/mending.js';
import type { AnyRecipe } from '../../src/engine/any-recipe.js';
import { resultInternals } from '../../src/engine/result.js';
import { spokenAnswer } from '../../src/engine/spoken.js';
import { solveFor } from '../../src/explore/solve-for.js';
import type { Quantity } from '../../src/units/quantity.js';
import { catalogue } from '../../src/recipes/catalogue.js';
import { topSag } from '../../src/recipes/rails/top-sag.js';

type Given = Readonly<Record<string, unknown>>;

/** What is changed in the recipe's own example so that it fails; nothing where it fails as it stands. */
const failing: Readonly<Record<string, Given>> = {
  beam: { section: '25 x 45 mm' },
  caulCamber: { clampForceEach: '8 kN' },
  clampPlan: { reach: '600 mm' },
  flatteningLoss: { thickness: '2 mm' },
  glueTiming: {},
  halfLap: { moment: '20 N m' },
  mitreGap: {},
  passage: { length: '4 m' },
  rackingFrame: { push: '2 kN', frames: 1 },
  restraintStress: {},
  slabStack: { closedTime: '4 min' },
  splineSlot: { splineWidth: '62 mm' },
  tipping: {},
  topSag: {},
};

/** Answers that say how much or how likely, and leave to the reader whether that is enough. */
const withoutVerdict = new Map<string, string>([
  ['angledRail', 'lengths and angles'],
  ['bill', 'a price'],
  ['biscuitSpacing', 'places; what does not go is refused'],
  ['boardMeasure', 'an amount'],
  ['boardTally', 'an amount'],
  ['chamfer', 'a setting; what does not go is refused'],
  ['chipVolume', 'an amount'],
  ['cupDepth', 'a size'],
  ['cutterMarks', 'a size, beside the printed grades'],
  ['equilibriumMoisture', 'a moisture'],
  ['filmBuild', 'a thickness'],
  ['finishQuantity', 'an amount and whole tins, always enough'],
  ['fixingSlots', 'lengths of slots, always long enough'],
  ['glueQuantity', 'an amount'],
  ['gradeYield', 'a yield'],
  ['gritSequence', 'grits; a gap is refused'],
  ['heightsForPeople', 'a share of people, with the height that suits the average person in the sentence'],
  ['humidityFor', 'a humidity'],
  ['layerCount', 'layers, always enough'],
  ['meterCorrection', 'a moisture'],
  ['mitredEnd', 'lengths'],
  ['moistureByWeight', 'a moisture'],
  ['movementAcross', 'a size'],
  ['nailHoles', 'an amount'],
  ['palletBoards', 'an amount, or what the mark forbids'],
  ['partsCost', 'a price'],
  ['pieceWeight', 'a mass'],
  ['pileSampling', 'a number of pieces, always enough'],
  ['pileYield', 'an amount'],
  ['planingTime', 'a time'],
  ['postCasing', 'sizes; what does not go is refused'],
  ['prepTime', 'a time'],
  ['railSpan', 'the longest span'],
  ['roughToDressed', 'a size'],
  ['screwHold', 'the load that the screws hold'],
  ['seasonalMovement', 'a size'],
  ['shellacCut', 'an amount'],
  ['splayedCorner', 'settings'],
  ['squareness', 'how far to pull, which is the mend itself'],
  ['stackUp', 'a size with its spread, and the chance inside limits'],
  ['stainTrials', 'amounts'],
  ['stripCount', 'strips, always enough'],
  ['stripLayout', 'a layout; what does not go is refused'],
  ['thinToSolids', 'an amount'],
  ['thinnedVoc', 'a figure to hold against the local limit'],
  ['thinningRatio', 'amounts'],
  ['woodDensity', 'a density'],
]);

const withRemedies = catalogue.flatMap((r) => {
  const mending = r.mending as Mending<AnyRecipe['inputs'], AnyRecipe['outputs']> | undefined;
  return mending && 'remedies' in mending ? [{ recipe: r, mending }] : [];
});

const answerTo = (recipe: AnyRecipe, inputs: Given) => recipe.evaluate(inputs) as never;

describe('a failing answer', () => {
  it('is known of every recipe: it names a remedy, says why not, or has no verdict', () => {
    const unaccounted = catalogue.filter((r) => !r.mending && !withoutVerdict.has(r.name));
    expect(unaccounted.map((r) => r.name)).toEqual([]);
    expect(catalogue.filter((r) => r.mending && withoutVerdict.has(r.name)).map((r) => r.name)).toEqual([]);
    expect(withRemedies.map(({ recipe }) => recipe.name).sort()).toEqual(Object.keys(failing).sort());
  });

  it.each(withRemedies.map((w) => [w.recipe.name, w] as const))(
    '%s: each change that is named makes it pass, and one step less does not',
    (name, { recipe, mending }) => {
      const given = { ...recipe.example, ...failing[name] } as never;
      const parsed = recipe.read(given) as never;
      expect(mending.fails(parsed, answerTo(recipe, parsed))).toBe(true);
      const ways = mendedWays(recipe as never, parsed, answerTo(recipe, parsed), (changed) =>
        answerTo(recipe, changed),
      );
      expect(ways.length).toBeGreaterThanOrEqual(1);
      for (const way of ways)
        expect(mending.fails(way.inputs as never, answerTo(recipe, way.inputs)), way.say).toBe(false);
      const said = mendedWords(ways, recipe.mending as never, recipe.outputs);
      expect(said).toMatch(/^[A-Z][^{}]*\.$/);
      expect(spokenAnswer(resultInternals(recipe(given))!)).toMatch(/\. [A-Z]/);
      expect(spokenAnswer(resultInternals(recipe(given))!).endsWith(said)).toBe(true);
    },
  );

  it.each(withRemedies.map((w) => [w.recipe.name, w] as const))(
    '%s: each remedy is of use by itself, and the smallest of its kind',
    (name, { recipe, mending }) => {
      if (!('remedies' in mending)) return;
      const parsed = recipe.read({ ...recipe.example, ...failing[name] }) as never;
      const run = (changed: never) => answerTo(recipe, changed);
      for (const remedy of mending.remedies) {
        if (!('input' in remedy)) continue;
        const alone = { inputs: recipe.inputs, mending: { ...mending, remedies: [remedy] } } as never;
        const [way] = mendedWays(alone, parsed, run(parsed), run as never);
        if (!way) continue;
        const path = remedy.input.split('.');
        const at = (of: unknown): number =>
          path.reduce<unknown>(
            (here, word) =>
              Array.isArray(here) ? here.at(word === 'last' ? -1 : Number(word)) : (here as Given)[word],
            of,
          ) as number;
        const sign = remedy.direction === 'up' ? 1 : -1;
        expect((at(way.inputs) - at(parsed)) * sign, remedy.input).toBeGreaterThan(0);
      }
    },
  );

  it('is silent where the answer passes', () => {
    for (const { recipe } of withRemedies) {
      const inner = resultInternals(recipe(recipe.example))!;
      const failsItself = Object.keys(failing[recipe.name] ?? {}).length === 0;
      expect(inner.mend() !== '', recipe.name).toBe(failsItself);
    }
  });

  it('of a top agrees with solveFor: the least thickness in whole millimetres at which the sag is the one allowed', () => {
    const inputs = { ...topSag.example, supports: ['0 mm', '1950 mm'], thickness: '30 mm' } as const;
    const said = resultInternals(topSag(inputs))!.mend();
    // The limit of L/300 over 1950 mm is 6.5 mm.
    const found = solveFor(topSag, 'thickness', { sag: '6.5 mm' }, inputs, { from: '30 mm', to: '90 mm' });
    const least = Math.ceil((found.roots[0] as Quantity).in('mm') - 1e-9);
    expect(said).toContain(`ake it ${least} mm thick`);
  });

  it('costs a failing answer a bounded number of runs and a passing one none', () => {
    for (const { recipe, mending } of withRemedies) {
      const parsed = recipe.read({ ...recipe.example, ...failing[recipe.name] }) as never;
      let runs = 0;
      const counted = (changed: never) => {
        runs += 1;
        return answerTo(recipe, changed);
      };
      mendedWays(recipe as never, parsed, answerTo(recipe, parsed), counted as never);
      expect(runs, recipe.name).toBeLessThan(80);
      const passing = { ...mending, fails: () => false };
      runs = 0;
      mendedWays({ inputs: recipe.inputs, mending: passing }, parsed, {}, counted as never);
      expect(runs).toBe(0);
    }
  });
});
