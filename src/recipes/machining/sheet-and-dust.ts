import { barChart } from '../../charts/barChart.js';
import { formatQuantity } from '../../quantities/format.js';
import { Refusal } from '../../quantities/refusal.js';
import { danger } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { cite } from '../../recipe/source.js';
import { tableRows, type DataRow } from '../../timber/tables.js';

const solid = letter('liquid', 'wood taken off, solid', { in: 'L' });
const planed = formula({
  symbol: 'V',
  gives: letter('liquid', 'wood taken off, solid', { in: 'm3' }),
  text: 'A x',
  where: {
    A: letter('area', 'area planed', { in: 'm2' }),
    x: letter('length', 'depth taken off', { in: 'm' }),
  },
  basis: 'geometry',
});
const weight = formula({
  symbol: 'm',
  gives: letter('mass', 'mass of the waste', { in: 'kg' }),
  text: 'rho V',
  where: { rho: letter('density', 'density of the timber', { in: 'kg/L' }), V: solid },
  basis: 'definition',
});
const loose = formula({
  symbol: 'V_l',
  gives: letter('liquid', 'loose waste', { in: 'L' }),
  text: 'f V',
  where: { f: letter('ratio', 'times more room loose than solid'), V: solid },
  source: cite('briggs-1994', 'Table 7-1, expansion factor'),
});
const bagCount = formula({
  symbol: 'n',
  gives: letter('count', 'bags'),
  text: 'ceil(V_l / B - 10^(-9))',
  where: {
    V_l: letter('liquid', 'loose waste', { in: 'L' }),
    B: letter('liquid', 'what a bag holds', { in: 'L' }),
  },
  basis: 'definition',
});

/**
 * What planing and sawing leave behind: mass, loose volume and bags to fill, for the bag and the extractor. `volumeRemoved`
 * is solid wood; or give the area planed and the depth. The expansion is that of mill residues, loose and settled by
 * their own weight; an extractor bag packs tighter.
 * @throws Refusal when neither volumeRemoved nor area and depth are given
 */
export const sheetAndDust = recipe({
  name: 'sheetAndDust',
  title: 'Shavings and dust to carry away',
  topic: 'machining',
  about:
    'The mass and the loose volume of shavings or sawdust from the wood taken off, and the bags they fill.',
  sources: [],
  inputs: {
    volumeRemoved: field.volume({
      symbol: 'V',
      says: 'wood taken off, as solid wood',
      above: '0 m3',
      max: '1000 m3',
      optional: true,
    }),
    area: field.area({
      symbol: 'A',
      says: 'area planed, where the volume is not given',
      above: '0 mm2',
      max: '100000 m2',
      optional: true,
    }),
    depth: field.length({
      symbol: 'x',
      says: 'depth taken off that area',
      above: '0 mm',
      max: '500 mm',
      optional: true,
    }),
    density: field.density({
      symbol: 'rho',
      says: 'density of the timber as it is',
      min: '50 kg/m3',
      max: '1500 kg/m3',
    }),
    waste: field.choice(['planer shavings', 'sawdust'], {
      says: 'what it becomes',
      default: 'planer shavings',
    }),
    bagSize: field.liquid({
      symbol: 'B',
      says: 'what a bag holds',
      min: '1 L',
      max: '10000 L',
      default: '100 L',
    }),
  },
  outputs: {
    mass: out.mass({ says: 'mass of the waste' }),
    volume: out.liquid({ says: 'loose volume of the waste' }),
    solid: out.liquid({ says: 'as solid wood' }),
    bags: out.count({ says: 'bags' }),
    bulkDensity: out.density({ says: 'density of the loose waste' }),
  },
  formulas: [planed, weight, loose, bagCount],
  solve: (given, work) => {
    const { area: A, depth: x } = given;
    if (given.volumeRemoved === undefined && (A === undefined || x === undefined))
      throw new Refusal({
        field: 'volumeRemoved',
        says: 'missing; takes a volume such as "0.02 m3", or give area and depth',
      });
    if (given.volumeRemoved !== undefined && (A !== undefined || x !== undefined))
      throw new Refusal({
        field: 'volumeRemoved',
        says: 'got a volume together with area or depth, takes one or the other',
      });
    const V = given.volumeRemoved ?? work.apply(planed, { A: A as number, x: x as number });
    // The choices of `waste` are the rows of the table.
    const [row] = tableRows('residue-expansion.briggs-1994').filter(
      (r) => r.text('residue') === given.waste,
    ) as [DataRow];
    const m = work.apply(weight, { rho: given.density, V });
    const V_l = work.apply(loose, { f: row.number('expansion') as number, V }, `loose ${given.waste}`);
    return {
      mass: m,
      volume: V_l,
      solid: V,
      bags: work.apply(bagCount, { V_l, B: given.bagSize }),
      bulkDensity: m / V_l,
    };
  },
  cautions: [
    danger(
      'wood dust harms lungs and nose: extract at the machine and wear a fitted mask when bags are changed; limits in the United Kingdom are 3 mg/m³ for hardwood and 5 mg/m³ for softwood',
      cite('hse-wood-dust', 'workplace limits', {
        also: cite('osha-wood-dust', 'limits in the United States'),
      }),
    ),
    danger(
      'fine dust in air explodes and shavings smoulder: no spark, no hot nail into the duct, empty bags daily and outdoors, and keep oily sanding dust apart from them (common practice)',
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
  example: { area: '2.5 m2', depth: '6 mm', density: '520 kg/m3' },
});
