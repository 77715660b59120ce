import { lineChart } from '../../charts/line-chart.js';
import { InputError } from '../../units/input-error.js';
import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { tableRows, type DataRow } from '../../materials/data-tables.js';

const source = cite('fpl-gtr-190', 'ch. 13, moisture meters');

const correctionRule = formula({
  symbol: 'M',
  result: variable('moisture', 'moisture corrected for temperature', { unit: '%' }),
  source,
  expression: 'R + p * (T_c - T) / t',
  empirical: true,
  variables: {
    R: variable('moisture', 'reading of the meter', { unit: '%' }),
    p: variable('moisture', 'points of moisture a step', { unit: '%' }),
    T_c: variable('temperature', 'temperature the meter is set for', { unit: 'degC' }),
    T: variable('temperature', 'temperature of the wood', { unit: 'degC' }),
    t: variable('ratio', 'degrees a step'),
  },
});

/** What the handbook's table holds of the rule and of the range in which a meter can be trusted. */
const figures = () => {
  const rows = new Map(tableRows('meter-correction.fpl-gtr-190').map((r) => [r.text('item'), r]));
  const figure = (item: string, column: string): number =>
    (rows.get(item) as DataRow).number(column) as number;
  const [rule, range] = ['resistance meter temperature correction', 'reliable reading range'] as const;
  return {
    points: figure(rule, 'points_pct') / 100,
    step: figure(rule, 'per_kelvin'),
    low: figure(range, 'low_pct') / 100,
    high: figure(range, 'high_pct') / 100,
  };
};

/** The reading of a resistance (pin) meter corrected for the temperature of the wood. The maker's correction for the species comes on top and is not in here. */
export const meterCorrection = recipe({
  name: 'meterCorrection',
  title: 'Moisture meter reading, corrected for temperature',
  topic: 'moisture',
  about:
    "The moisture behind the reading of a resistance meter when the wood is colder or warmer than the meter is set for. Apply the maker's correction for the species as well.",
  sources: [source],
  inputs: {
    reading: field.moisture({ label: 'what the meter shows', min: '0 %', max: '120 %' }),
    woodTemperature: field.temperature({
      label: 'wood temperature',
      help: 'Temperature of the wood itself, not of the room.',
      min: '-30 degC',
      max: '90 degC',
    }),
    calibrationTemperature: field.temperature({
      label: 'meter setting',
      help: 'Temperature that the meter is set for, from its leaflet.',
      min: '-10 degC',
      max: '60 degC',
      default: '21.1 degC',
    }),
  },
  outputs: {
    moisture: out.moisture({ label: 'moisture content' }),
    correction: out.moisture({ label: 'correction', help: 'Points added to the reading.' }),
  },
  formulas: [correctionRule],
  solve: (given, trace) => {
    const { points, step } = figures();
    const moisture = trace.evaluate(correctionRule, {
      R: given.reading,
      p: points,
      T_c: given.calibrationTemperature,
      T: given.woodTemperature,
      t: step,
    });
    if (moisture < 0)
      throw new InputError({
        field: 'reading',
        message: `got ${(given.reading * 100).toFixed(1)} %, which the correction takes below 0 %; takes a reading on wood nearer the meter's temperature`,
      });
    return { moisture, correction: moisture - given.reading };
  },
  limits: [
    {
      when: (g) => g.reading < figures().low || g.reading > figures().high,
      message: () =>
        `a meter can be trusted from about ${figures().low * 100} to ${figures().high * 100} % moisture; this reading lies outside`,
      source,
    },
    {
      when: (g) => Math.abs(g.woodTemperature - g.calibrationTemperature) > 28,
      message:
        'the straight rule is meant for moderate differences of temperature: better warm or cool the wood and read again',
      source,
    },
  ],
  cautions: [
    note(
      'the rule is for pin meters and approximate; salt, glue, metal and wet surfaces throw a reading far off',
    ),
  ],
  chart: (given, answer) => {
    const { points, step } = figures();
    const ts = Array.from({ length: 11 }, (_, i) => given.calibrationTemperature - 25 + i * 5);
    const line = ts.map(
      (t) => Math.max(0, given.reading + (points * (given.calibrationTemperature - t)) / step) * 100,
    );
    return lineChart({
      title: `A reading of ${Number((given.reading * 100).toFixed(1))} % in colder and warmer wood`,
      x: { title: 'Temperature of the wood', unit: '°C', values: ts },
      y: { title: 'Moisture content', unit: '%' },
      series: [{ name: 'moisture behind the reading', values: line }],
      ...(given.woodTemperature >= (ts[0] as number) && given.woodTemperature <= (ts[10] as number)
        ? { marks: [{ x: given.woodTemperature, y: answer.moisture * 100 }] }
        : {}),
      rules: [{ y: answer.moisture * 100, label: `${(answer.moisture * 100).toFixed(1)} %` }],
      points: false,
    });
  },
  sentence: 'The wood is at {moisture}.',
  example: { reading: '12 %', woodTemperature: '9.9 degC' },
});
