import { InputError } from '../../units/input-error.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { note, danger } from '../../engine/caution.js';

const source = cite('fpl-gtr-190', 'Eq. 4-1');
const dry = variable('mass', 'mass dried in the oven', { unit: 'g' });

const moistureRule = formula({
  symbol: 'M',
  result: variable('moisture', 'moisture content on oven-dry mass', { unit: '%' }),
  source,
  expression: '(m_wet - m_dry) / m_dry',
  variables: { m_wet: variable('mass', 'mass as it is', { unit: 'g' }), m_dry: dry },
});
const targetRule = formula({
  symbol: 'm_t',
  result: variable('mass', 'mass at the wanted moisture', { unit: 'g' }),
  source,
  expression: 'm_dry * (1 + M_t)',
  variables: { m_dry: dry, M_t: variable('moisture', 'wanted moisture', { unit: '%' }) },
});

/** Moisture from two weighings, and the mass at which a sample board reaches a wanted moisture. The surest way there is; it costs a slice of the board. */
export const moistureByWeight = recipe({
  name: 'moistureByWeight',
  title: 'Moisture by weighing',
  topic: 'moisture',
  about:
    'The moisture content of a sample from its mass now and its mass dried in an oven; and the mass it will have at a moisture you wait for.',
  sources: [source],
  inputs: {
    wetMass: field.mass({
      label: 'mass of sample',
      help: 'Mass of the sample as it is.',
      above: '0 g',
      max: '10 t',
    }),
    ovenDryMass: field.mass({
      label: 'oven-dry mass',
      help: 'Mass of the same sample dried at 103 °C until it loses no more.',
      above: '0 g',
      max: '10 t',
    }),
    target: field.moisture({ label: 'moisture to wait for', min: '0 %', max: '300 %', optional: true }),
  },
  outputs: {
    moisture: out.moisture({
      label: 'moisture content',
      help: 'Mass of water as a share of the oven-dry mass.',
    }),
    water: out.mass({ label: 'water in the sample' }),
    targetMass: out.mass({
      label: 'target mass',
      help: 'Mass of the sample at the moisture to wait for.',
      optional: true,
    }),
  },
  formulas: [moistureRule, targetRule],
  solve: (given, trace) => {
    if (given.wetMass < given.ovenDryMass) {
      throw new InputError({
        field: 'wetMass',
        message: `got ${(given.wetMass * 1000).toFixed(1)} g, less than the oven-dry mass of ${(given.ovenDryMass * 1000).toFixed(1)} g; takes the mass before drying`,
      });
    }
    const moisture = trace.evaluate(moistureRule, { m_wet: given.wetMass, m_dry: given.ovenDryMass });
    return {
      moisture,
      water: given.wetMass - given.ovenDryMass,
      ...(given.target === undefined
        ? {}
        : { targetMass: trace.evaluate(targetRule, { m_dry: given.ovenDryMass, M_t: given.target }) }),
    };
  },
  cautions: (_given, answer) => [
    danger(
      'dry the sample in a ventilated oven kept for it and never leave it alone: wood above about 105 °C darkens, gases and can take fire',
    ),
    ...(answer.moisture > 3 + 1e-9
      ? [note('over 300 % is more water than any but the lightest green wood holds: check the two masses')]
      : []),
  ],
  sentence: 'The wood is at {moisture}: it holds {water} of water.',
  example: { wetMass: '136 g', ovenDryMass: '100 g', target: '10 %' },
});
