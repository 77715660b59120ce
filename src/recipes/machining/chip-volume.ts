import { barChart } from '../../charts/bar-chart.js';
import { formatQuantity } from '../../units/format-quantity.js';
import { InputError } from '../../units/input-error.js';
import { danger } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { tableRows, type DataRow } from '../../materials/data-tables.js';

const solid = variable('liquid', 'wood taken off, solid', { unit: 'L' });
const planed = formula({
  symbol: 'V',
  result: variable('liquid', 'wood taken off, solid', { unit: 'm3' }),
  expression: 'A x',
  variables: {
    A: variable('area', 'area planed', { unit: 'm2' }),
    x: variable('length', 'depth taken off', { unit: 'm' }),
  },
  basis: 'geometry',
});
const weight = formula({
  symbol: 'm',
  result: variable('mass', 'mass of the waste', { unit: 'kg' }),
  expression: 'rho V',
  variables: { rho: variable('density', 'density of the timber', { unit: 'kg/L' }), V: solid },
  basis: 'definition',
});
const loose = formula({
  symbol: 'V_l',
  result: variable('liquid', 'loose waste', { unit: 'L' }),
  expression: 'f V',
  variables: { f: variable('ratio', 'times more room loose than solid'), V: solid },
  source: cite('briggs-1994', 'Table 7-1, expansion factor'),
});
const bagCount = formula({
  symbol: 'n',
  result: variable('count', 'bags'),
  expression: 'ceil(V_l / B - 10^(-9))',
  variables: {
    V_l: variable('liquid', 'loose waste', { unit: 'L' }),
    B: variable('liquid', 'what a bag holds', { unit: 'L' }),
  },
  basis: 'definition',
});

/**
 * What planing and sawing leave behind: mass, loose volume and bags to fill, for the bag and the extractor. `volumeRemoved`
 * is solid wood; or give the area planed and the depth. The expansion is that of mill residues, loose and settled by
 * their own weight; an extractor bag packs tighter.
 * @throws InputError when neither volumeRemoved nor area and depth are given
 */
export const chipVolume = recipe({
  name: 'chipVolume',
  title: 'Shavings and sawdust to dispose of',
  topic: 'machining',
  about:
    'The mass and the loose volume of shavings or sawdust from the wood taken off, and the bags they fill.',
  sources: [],
  inputs: {
    volumeRemoved: field.volume({
      symbol: 'V',
      label: 'wood removed',
      help: 'Volume taken off, as solid wood.',
      above: '0 m3',
      max: '1000 m3',
      optional: true,
    }),
    area: field.area({
      symbol: 'A',
      label: 'area planed',
      help: 'Needed where the volume is not given.',
      above: '0 mm2',
      max: '100000 m2',
      optional: true,
    }),
    depth: field.length({
      symbol: 'x',
      label: 'depth removed',
      help: 'Depth taken off the area.',
      above: '0 mm',
      max: '500 mm',
      optional: true,
    }),
    density: field.density({
      symbol: 'rho',
      label: 'density of timber',
      help: 'Density at the moisture it has.',
      min: '50 kg/m3',
      max: '1500 kg/m3',
    }),
    waste: field.choice(['planer shavings', 'sawdust'], {
      label: 'what it becomes',
      default: 'planer shavings',
    }),
    bagSize: field.liquid({
      symbol: 'B',
      label: 'what a bag holds',
      min: '1 L',
      max: '10000 L',
      default: '100 L',
    }),
  },
  outputs: {
    mass: out.mass({ label: 'mass of the waste' }),
    volume: out.liquid({ label: 'loose volume', help: 'Volume of the chips as they fall.' }),
    solid: out.liquid({ label: 'as solid wood' }),
    bags: out.count({ label: 'bags' }),
    bulkDensity: out.density({ label: 'loose density', help: 'Density of the chips as they fall.' }),
  },
  formulas: [planed, weight, loose, bagCount],
  solve: (given, trace) => {
    const { area: A, depth: x } = given;
    if (given.volumeRemoved === undefined && (A === undefined || x === undefined))
      throw new InputError({
        field: 'volumeRemoved',
        message: 'missing; takes a volume such as "0.02 m3", or give area and depth',
      });
    if (given.volumeRemoved !== undefined && (A !== undefined || x !== undefined))
      throw new InputError({
        field: 'volumeRemoved',
        message: 'got a volume together with area or depth, takes one or the other',
      });
    const V = given.volumeRemoved ?? trace.evaluate(planed, { A: A as number, x: x as number });
    // The choices of `waste` are the rows of the table.
    const [row] = tableRows('residue-expansion.briggs-1994').filter(
      (r) => r.text('residue') === given.waste,
    ) as [DataRow];
    const m = trace.evaluate(weight, { rho: given.density, V });
    const V_l = trace.evaluate(loose, { f: row.number('expansion') as number, V }, `loose ${given.waste}`);
    return {
      mass: m,
      volume: V_l,
      solid: V,
      bags: trace.evaluate(bagCount, { V_l, B: given.bagSize }),
      bulkDensity: m / V_l,
    };
  },
  cautions: [
    danger(
      'extract at the machine and wear a fitted mask when bags are changed: wood dust harms lungs and nose; limits in the United Kingdom are 3 mg/m³ for hardwood and 5 mg/m³ for softwood',
      cite('hse-wood-dust', 'workplace limits', {
        also: cite('osha-wood-dust', 'limits in the United States'),
      }),
    ),
    danger(
      'let no spark or hot nail into the duct, empty bags daily and outdoors, and keep oily sanding dust apart from them: fine dust in air explodes and shavings smoulder (common practice)',
    ),
  ],
  chart: (given, answer) => {
    const text = (v: number): string => formatQuantity({ kind: 'liquid', value: v }, { digits: 3 });
    return barChart({
      title: `${formatQuantity({ kind: 'mass', value: answer.mass }, { digits: 3 })} of ${given.waste}`,
      of: '',
      value: { title: 'Room it takes', unit: 'L' },
      bars: [
        { name: 'as solid wood', value: answer.solid * 1000, label: text(answer.solid) },
        {
          name: `as ${given.waste}`,
          value: answer.volume * 1000,
          label: `${text(answer.volume)}, ${String(answer.bags)} bag${answer.bags === 1 ? '' : 's'} of ${text(given.bagSize)}`,
        },
      ],
    });
  },
  sentence: (_given, out) =>
    `Expect {volume} of shavings, {mass}: {bags} ${out.bags === 1 ? 'bag' : 'bags'}.`,
  example: { area: '2.5 m2', depth: '6 mm', density: '520 kg/m3' },
});
