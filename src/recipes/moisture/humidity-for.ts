import { lineChart } from '../../charts/line-chart.js';
import { InputError } from '../../units/input-error.js';
import { field } from '../../engine/field.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import {
  airLimits,
  equilibrium,
  inTable,
  outsideTable,
  sorptionSource,
  sorptionSteps,
  workEquilibrium,
} from './sorption.js';

/** Humidity as a fraction at which the equation gives `moisture`; the curve only rises, so halving always finds it. */
export function humidityAt(temperature: number, moisture: number): number {
  let low = 0;
  let high = 1;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (equilibrium(temperature, middle) < moisture) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * The relative humidity that keeps wood at a wanted moisture: for setting a store or a drying room, or for reading what
 * air a measured board has lived in.
 */
export const humidityFor = recipe({
  name: 'humidityFor',
  title: 'Humidity for a target moisture content',
  topic: 'moisture',
  about:
    'The relative humidity at which wood rests at a given moisture content: the sorption equation solved the other way round.',
  sources: [sorptionSource],
  inputs: {
    temperature: field.temperature({
      label: 'temperature of the air',
      min: airLimits.coldest,
      max: airLimits.hottest,
    }),
    moisture: field.moisture({ label: 'moisture content to hold', min: '0 %', max: '40 %' }),
  },
  outputs: {
    humidity: out.humidity({ label: 'relative humidity', help: 'Relative humidity of the air.' }),
  },
  formulas: sorptionSteps,
  solve: (given, trace) => {
    const most = equilibrium(given.temperature, 1);
    if (given.moisture > most) {
      throw new InputError({
        field: 'moisture',
        message: `got ${(given.moisture * 100).toFixed(1)} %, takes at most ${(Math.floor(most * 1000) / 10).toFixed(1)} %, where air of this temperature is saturated; wetter wood only dries`,
      });
    }
    const humidity = given.moisture === 0 ? 0 : humidityAt(given.temperature, given.moisture);
    trace.note(
      'The equation cannot be turned round in closed form; its curve only rises, so the humidity is found by halving the interval until the last digit. Put back in:',
    );
    workEquilibrium(trace, given.temperature, humidity, 'moisture at the humidity found');
    return { humidity };
  },
  limits: [
    { when: (g, o) => !inTable(g.temperature, o.humidity), message: outsideTable, source: sorptionSource },
  ],
  chart: (given, answer) => {
    const humidities = Array.from({ length: 50 }, (_, i) => i * 2);
    return lineChart({
      title: `Wood at rest in air of ${Number(given.temperature.toFixed(1))} °C`,
      x: { title: 'Relative humidity', unit: '%', values: humidities, domain: [0, 100] },
      y: { title: 'Moisture content', unit: '%' },
      series: [
        { name: 'moisture', values: humidities.map((h) => equilibrium(given.temperature, h / 100) * 100) },
      ],
      marks: [{ x: answer.humidity * 100, y: given.moisture * 100 }],
      rules: [{ x: answer.humidity * 100, label: `${(answer.humidity * 100).toFixed(0)} % humidity` }],
      points: false,
    });
  },
  sentence: 'Keep the air at {humidity} relative humidity.',
  example: { temperature: '20 degC', moisture: '9 %' },
});
