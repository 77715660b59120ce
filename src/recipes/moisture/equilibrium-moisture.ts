import { lineChart } from '../../charts/line-chart.js';
import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { airLimits, equilibrium, inTable, outsideTable, sorptionSource, sorptionSteps } from './sorption.js';

/**
 * The moisture that wood comes to if it stays in air of one temperature and humidity: for judging whether timber is
 * ready for the room it will live in. Thick timber takes months to get there, and kiln-dried or very old wood rests about a point lower.
 */
export const equilibriumMoisture = recipe({
  name: 'equilibriumMoisture',
  title: 'Equilibrium moisture content (EMC)',
  topic: 'moisture',
  about:
    'The moisture content that wood comes to when it stays in air of one temperature and relative humidity, by the sorption equation of the Wood Handbook.',
  sources: [sorptionSource],
  inputs: {
    temperature: field.temperature({
      symbol: 'T',
      label: 'temperature of the air',
      min: airLimits.coldest,
      max: airLimits.hottest,
    }),
    humidity: field.humidity({
      symbol: 'h',
      label: 'relative humidity',
      help: 'Relative humidity of the air.',
      min: '0 %',
      max: '100 %',
    }),
  },
  steps: sorptionSteps,
  outputs: {
    moisture: out.moisture({
      symbol: 'M',
      label: 'moisture content',
      help: 'Moisture content that wood comes to in this air.',
    }),
  },
  limits: [
    { when: (g) => !inTable(g.temperature, g.humidity), message: outsideTable, source: sorptionSource },
  ],
  cautions: [
    note(
      'one curve for all species: oily or resinous timber, and wood long heated or very old, rests up to a point or two lower; drying wood rests a little higher than wetting wood',
    ),
  ],
  chart: (given, answer) => {
    const humidities = Array.from({ length: 48 }, (_, i) => i * 2);
    const temperatures = [0, 30, 50, 70].filter((t) => Math.abs(t - given.temperature) > 4);
    const curve = (t: number): number[] => humidities.map((h) => equilibrium(t, h / 100) * 100);
    const own = `${Number(given.temperature.toFixed(1))} °C (this air)`;
    return lineChart({
      title: 'Moisture that wood comes to in air',
      x: { title: 'Relative humidity', unit: '%', values: humidities, domain: [0, 100] },
      y: { title: 'Moisture content', unit: '%' },
      series: [
        { name: own, values: curve(given.temperature) },
        ...temperatures.map((t) => ({ name: `${t} °C`, values: curve(t) })),
      ],
      marks: [{ x: given.humidity * 100, y: answer.moisture * 100 }],
      rules: [{ y: answer.moisture * 100, label: `${(answer.moisture * 100).toFixed(1)} % moisture` }],
      points: false,
    });
  },
  sentence: 'The wood comes to {moisture} moisture content.',
  example: { temperature: '21 degC', humidity: '50 %' },
});
