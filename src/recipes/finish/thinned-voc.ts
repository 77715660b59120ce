import { lineChart } from '../../charts/line-chart.js';
import { formatQuantity } from '../../units/format-quantity.js';
import { InputError } from '../../units/input-error.js';
import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { finishHazards } from './hazards.js';

const voc = (label: string) => variable('concentration', label, { unit: 'g/L' });
const share = (label: string) => variable('share', label, { unit: '%' });

// Water does not count: neither in the mass that evaporates nor in the volume it is divided by.
const lessWater = formula({
  symbol: 'C_0',
  result: voc('VOC of the finish, less water'),
  expression: 'D * (1 - s - w) / (1 - w D / D_w)',
  variables: {
    s: share('solids by mass'),
    w: share('water by mass'),
    D: voc('density of the finish'),
    D_w: voc('density of water'),
  },
  source: cite('paintcenter-2004', 'VOC less water'),
});
const mixed = formula({
  symbol: 'C',
  result: voc('VOC of the mix, less water and exempt solvent'),
  expression: '(C_0 * (1 - e) + k C_1 * (1 - u)) / (1 - e + k * (1 - u))',
  variables: {
    C_0: voc('VOC of the finish'),
    C_1: voc('VOC of the thinner'),
    k: variable('ratio', 'parts of thinner to one of finish'),
    e: share('water and exempt solvent in the finish, by volume'),
    u: share('water and exempt solvent in the thinner, by volume'),
  },
  source: cite('metal-finishing-2013', 'appendix B, VOC of a mix, water excluded'),
});
const asIs = formula({
  symbol: 'C_a',
  result: voc('VOC in a litre of the mix as it stands'),
  expression: '(C_0 * (1 - e) + k C_1 * (1 - u)) / (1 + k)',
  variables: {
    C_0: voc('VOC of the finish'),
    C_1: voc('VOC of the thinner'),
    k: variable('ratio', 'parts of thinner to one of finish'),
    e: share('water and exempt solvent in the finish, by volume'),
    u: share('water and exempt solvent in the thinner, by volume'),
  },
  basis: 'definition',
});
const waterDensity = 8.33 * 119.82642731689663; // kg/m3; the source takes 8.33 lb a US gallon

/**
 * The volatile organic compounds (VOC, g/L) of a finish after thinning, as rules calculate them: water and exempt solvents
 * count neither in the mass nor in the volume. `density` is that of a thinner all of which evaporates; `thinnerVoc`
 * stands for it where the second part is itself a finish. `voc` is optional: its default is calculated from the data sheet's
 * mass shares (`solidsByMass`, `waterByMass`, `finishDensity`).
 * For a first look: what a rule counts as exempt, and its limits, are local law.
 */
export const thinnedVoc = recipe({
  name: 'thinnedVoc',
  title: 'VOC of a thinned finish',
  topic: 'finish',
  about:
    'The volatile organic compounds of a finish once thinned, as the rules calculate them, less water and exempt solvent. Not a statement of compliance.',
  sources: [],
  inputs: {
    voc: field.concentration({
      symbol: 'C_0',
      label: 'VOC as bought',
      help: 'VOC of the finish as bought, less water, from its label.',
      min: '0 g/L',
      max: '1500 g/L',
      optional: true,
    }),
    thinnerParts: field.ratio({
      symbol: 'k',
      label: 'parts of thinner',
      help: 'Parts of thinner to one part of finish.',
      min: 0,
      max: 100,
    }),
    density: field.density({
      label: 'density of thinner',
      help: 'For a thinner that evaporates completely.',
      min: '600 g/L',
      max: '1600 g/L',
      default: '790 g/L',
    }),
    thinnerVoc: field.concentration({
      symbol: 'C_1',
      label: 'VOC of thinner',
      help: 'For a thinner or second part that does not evaporate completely.',
      min: '0 g/L',
      max: '1600 g/L',
      optional: true,
    }),
    exempt: field.share({
      symbol: 'e',
      label: 'exempt share, finish',
      help: 'Water and exempt solvent in the finish, by volume.',
      min: '0 %',
      max: '99 %',
      default: '0 %',
    }),
    thinnerExempt: field.share({
      symbol: 'u',
      label: 'exempt share, thinner',
      help: 'Water and exempt solvent in the thinner by volume; for water 100 %.',
      min: '0 %',
      max: '100 %',
      default: '0 %',
    }),
    solidsByMass: field.share({
      symbol: 's',
      label: 'solids by mass',
      help: 'Needed where the VOC is not given.',
      min: '0 %',
      max: '100 %',
      optional: true,
    }),
    waterByMass: field.share({
      symbol: 'w',
      label: 'water by mass',
      help: 'Needed where the VOC is not given.',
      min: '0 %',
      max: '100 %',
      optional: true,
    }),
    finishDensity: field.density({
      symbol: 'D',
      label: 'density of finish',
      help: 'Needed where the VOC is not given.',
      min: '600 g/L',
      max: '3000 g/L',
      optional: true,
    }),
  },
  outputs: {
    voc: out.concentration({
      label: 'VOC of the mix',
      help: 'Less water and exempt solvent, the figure that rules set a limit to.',
    }),
    vocAsIs: out.concentration({
      label: 'VOC per litre',
      help: 'VOC in one litre of the mix with its water.',
    }),
    before: out.concentration({ label: 'VOC before thinning', help: 'VOC of the finish as bought.' }),
    rise: out.concentration({ label: 'what the thinner adds' }),
  },
  formulas: [lessWater, mixed, asIs],
  solve: (given, trace) => {
    const { solidsByMass: s, waterByMass: w, finishDensity: D } = given;
    let C_0 = given.voc;
    if (C_0 === undefined) {
      if (s === undefined || D === undefined)
        throw new InputError({
          field: 'voc',
          message:
            'missing; takes a mass per volume such as "350 g/L", or solidsByMass and finishDensity (and waterByMass) from the data sheet',
        });
      const water = w ?? 0;
      if (s + water > 1)
        throw new InputError({
          field: 'waterByMass',
          message: `got ${((s + water) * 100).toPrecision(4)} % together with the solids, takes at most 100 %`,
        });
      if (water * D >= waterDensity * 0.999)
        throw new InputError({
          field: 'waterByMass',
          message:
            'got water that alone fills the whole volume at this density; takes the mass shares of one data sheet',
        });
      C_0 = trace.evaluate(lessWater, { s, w: water, D, D_w: waterDensity });
    }
    const at = {
      C_0,
      C_1: given.thinnerVoc ?? given.density,
      k: given.thinnerParts,
      e: given.exempt,
      u: given.thinnerExempt,
    };
    const C = trace.evaluate(mixed, at);
    return { voc: C, vocAsIs: trace.evaluate(asIs, at), before: C_0, rise: C - C_0 };
  },
  cautions: (given) => [
    ...finishHazards([]),
    note(
      'what counts as exempt, and how much is allowed where and for what use, is local law: ask before you sell',
    ),
    ...(given.thinnerVoc === undefined && given.thinnerParts > 0
      ? [
          note(
            'the thinner is taken to evaporate whole, at the density given (790 g/L unless you gave one: between the 6.4 and 6.8 lb a gallon of the printed examples)',
            cite('metal-finishing-2013', 'appendix B, examples'),
          ),
        ]
      : []),
  ],
  chart: (given, answer) => {
    const thin = given.thinnerVoc ?? given.density;
    const [e, u] = [1 - given.exempt, 1 - given.thinnerExempt];
    const ks = Array.from({ length: 41 }, (_, i) => (Math.max(0.5, given.thinnerParts * 1.8) * i) / 40);
    return lineChart({
      title: 'VOC against thinner',
      x: { title: 'Thinner to one of finish', values: ks },
      y: { title: 'VOC', unit: 'g/L' },
      series: [
        {
          name: 'less water and exempt',
          values: ks.map((k) => (answer.before * e + k * thin * u) / (e + k * u)),
        },
        { name: 'as it stands', values: ks.map((k) => (answer.before * e + k * thin * u) / (1 + k)) },
      ].slice(0, given.exempt > 0 || given.thinnerExempt > 0 ? 2 : 1),
      marks: [
        {
          x: given.thinnerParts,
          y: answer.voc,
          label: formatQuantity({ kind: 'concentration', value: answer.voc }),
        },
      ],
    });
  },
  sentence: 'Thinned it holds {voc} of solvent.',
  example: { voc: '350 g/L', thinnerParts: 0.25, density: '6.6 lb/gal' },
});
