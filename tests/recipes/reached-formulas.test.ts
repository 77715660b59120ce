// Every formula that a recipe names is calculated for some input: for its example, for one of the cases below, or for inputs
// varied at random from the example. One that no input reaches is no part of the recipe.
import { afterEach, expect, it, vi } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { catalogue } from '../../src/recipes/catalogue.js';
import { SeededRandom } from '../fuzz/seeded-random.js';
import { variedInputs } from './varied-inputs.js';

type Given = Readonly<Record<string, unknown>>;

const notches = [
  { at: '0 mm', depth: '20 mm', side: 'bottom' },
  { at: '0 mm', depth: '20 mm', side: 'top', length: '40 mm' },
  { at: '300 mm', depth: '15 mm', side: 'top' },
];
const graded = ['C24', 'MGP10', 'MGP10 (working stress)', 'Hem-Fir No.2 2x-4x'];
const notched = notches.flatMap((notch) => graded.map((timber) => ({ notch, timber })));

const glued = [
  {
    section: {
      layers: [
        { width: '45 mm', depth: '45 mm' },
        { width: '45 mm', depth: '45 mm' },
      ],
    },
    timber: 'C24',
  },
];

/** Changes to the example that chance seldom finds. */
const cases: Readonly<Record<string, readonly Given[]>> = {
  // One panel alone is pressed both ways.
  slabStack: [
    {
      way: 'two-way',
      slabs: [{ length: '900 mm', width: '300 mm', thickness: '25 mm', glueLines: 4 }],
    },
  ],
  beam: [...notched, ...glued],
  fixingSlots: [{ cut: '30 deg' }, { cut: '30 deg', timber: 'red oak' }],
  movementAcross: [{ cut: '30 deg' }, { cut: '30 deg', from: '16 %', to: '25 %' }],
  railSpan: [...notched, ...glued, { limit: '3 mm', timber: undefined, modulus: '9 GPa' }],
  restraintStress: [{ cut: '30 deg' }, { cut: '30 deg', from: '16 %', to: '25 %' }],
  seasonalMovement: [
    { cut: '30 deg', climate: 'winter 5 %, summer 95 %', sealing: 'bare' },
    { climate: 'winter 80 %, summer 97 %', cut: '30 deg', sealing: 'bare', thickness: '5 mm' },
  ],
  squareness: [{ diagonalA: undefined, diagonalB: undefined, cornerOffset: '3 mm' }],
  thinningRatio: [
    { batch: '500 g' },
    { batch: undefined, have: { oil: '1 L', varnish: '200 mL' } },
    { batch: undefined, have: { oil: '1 kg', varnish: '200 g' }, by: 'mass' },
    {
      batch: '1 kg',
      by: 'volume',
      densities: { oil: '930 kg/m3', varnish: '900 kg/m3', spirit: '790 kg/m3' },
    },
    { batch: '1 L', by: 'mass', densities: { oil: '930 kg/m3', varnish: '900 kg/m3', spirit: '790 kg/m3' } },
  ],
};

afterEach(() => {
  vi.restoreAllMocks();
});

it.each(catalogue.filter((r) => r.formulas.length > 0).map((r) => [r.name, r] as const))(
  '%s calculates every formula it names, for some input',
  async (name, recipe) => {
    const spies = recipe.formulas.map((f) => ({ f, spy: vi.spyOn(f, 'evaluate') }));
    const unreached = (): string[] =>
      spies.filter(({ spy }) => spy.mock.calls.length === 0).map(({ f }) => f.plain);
    const work = async (given: Given): Promise<void> => {
      try {
        await recipe(given);
      } catch (error) {
        expect(error, JSON.stringify(given)).toBeInstanceOf(InputError);
      }
    };
    await recipe(recipe.example);
    const random = new SeededRandom(17);
    const changed = (cases[name] ?? []).map((change) => ({ ...recipe.example, ...change }));
    for (const given of changed) if (unreached().length > 0) await work(given);
    for (let tries = 0; tries < 300 && unreached().length > 0; tries++)
      await work(variedInputs(recipe, () => random.next()));
    expect(unreached(), `${name}: formulas that no input reaches`).toEqual([]);
  },
  60_000,
);
