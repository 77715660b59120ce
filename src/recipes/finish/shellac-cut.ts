import { lineChart } from '../../charts/line-chart.js';
import { formatQuantity } from '../../units/format-quantity.js';
import { InputError } from '../../units/input-error.js';
import { dataCaution, note, type Caution } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { tableRows } from '../../materials/data-tables.js';
import { cutField, poundPerGallon } from './shellac-strength.js';
import { finishHazards } from './hazards.js';

const cut = variable('concentration', 'cut: flakes to the alcohol they are dissolved in', { unit: 'g/L' });
const flakesOf = formula({
  symbol: 'm',
  result: variable('mass', 'flakes', { unit: 'g' }),
  expression: 'C V',
  variables: { C: cut, V: variable('liquid', 'alcohol', { unit: 'L' }) },
  source: cite('woodcraft-42', 'ounces of flakes to a cup of alcohol'),
});
const alcoholOf = formula({
  symbol: 'V',
  result: variable('liquid', 'alcohol', { unit: 'L' }),
  expression: 'm / C',
  variables: { m: variable('mass', 'flakes', { unit: 'g' }), C: cut },
  source: cite('woodcraft-42', 'ounces of flakes to a cup of alcohol'),
});
// 0.1 US gallon for each pound: what dissolved flakes add to the volume.
const room = variable('ratio', 'litres that a kilogram of dissolved flakes takes up', {});
const made = formula({
  symbol: 'V_s',
  result: variable('liquid', 'shellac made', { unit: 'L' }),
  expression: 'V + b m',
  empirical: true,
  variables: {
    V: variable('liquid', 'alcohol', { unit: 'L' }),
    b: room,
    m: variable('mass', 'flakes', { unit: 'kg' }),
  },
  source: cite('shellac-chart', 'room that flakes take: 0.1 gal a pound'),
});
const toAdd = formula({
  symbol: 'p',
  result: variable('ratio', 'parts of alcohol to one of the shellac there is'),
  expression: '(C_1 / C_2 - 1) / (1 + b C_1 / 1000)',
  empirical: true,
  variables: {
    C_1: variable('concentration', 'cut there is', { unit: 'g/L' }),
    C_2: variable('concentration', 'cut wanted', { unit: 'g/L' }),
    b: room,
  },
  source: cite('shellac-chart', 'room that flakes take: 0.1 gal a pound'),
});
const addVolume = formula({
  symbol: 'V_a',
  result: variable('liquid', 'alcohol to add', { unit: 'mL' }),
  expression: 'p V_1',
  variables: {
    p: variable('ratio', 'parts of alcohol to one of the shellac there is'),
    V_1: variable('liquid', 'shellac there is', { unit: 'mL' }),
  },
  basis: 'definition',
});

/** 0.1 US gallon a pound, in litres a kilogram. */
const roomOfFlakes = (0.1 * 3.785411784) / 0.45359237;

/**
 * Flakes and alcohol for a cut of shellac, and how to thin a cut there is to a weaker one. A cut is pounds of flakes to
 * a US gallon of alcohol (a plain number such as 2), or a mass per litre such as "240 g/L"; both of the alcohol, not of
 * the mix, whose volume is larger by what the flakes take up (0.1 gal a pound). `volume` in and out is alcohol.
 * @throws InputError when neither flakes, volume nor existing is given, or the cut wanted is stronger than the one there is
 */
export const shellacCut = recipe({
  name: 'shellacCut',
  title: 'Cut of shellac',
  topic: 'finish',
  about:
    'Flakes and alcohol for a cut of shellac, or the alcohol that thins one cut to a weaker. Cuts are by pounds to the US gallon of alcohol, or grams to the litre.',
  sources: [],
  inputs: {
    cut: cutField({ label: 'cut wanted', help: 'Pounds of flakes to a US gallon of alcohol.' }),
    flakes: field.mass({ symbol: 'm', label: 'flakes there are', above: '0 g', max: '1 t', optional: true }),
    volume: field.liquid({
      symbol: 'V',
      label: 'alcohol',
      help: 'Alcohol to dissolve the flakes in.',
      above: '0 mL',
      max: '10000 L',
      optional: true,
    }),
    existing: field.liquid({
      symbol: 'V_1',
      label: 'ready-made shellac',
      help: 'Volume of ready-made shellac to be thinned.',
      above: '0 mL',
      max: '10000 L',
      optional: true,
    }),
    existingCut: cutField({ label: 'cut as bought', help: 'Cut of the ready-made shellac.', optional: true }),
  },
  outputs: {
    mass: out.mass({ label: 'flakes', help: 'Flakes to weigh out, or those already dissolved.' }),
    volume: out.liquid({ label: 'alcohol in all' }),
    made: out.liquid({ label: 'shellac made' }),
    addAlcohol: out.liquid({
      label: 'alcohol to add',
      help: 'Alcohol to add to what is there.',
      optional: true,
    }),
    partsAlcohol: out.ratio({
      label: 'parts of alcohol',
      help: 'Parts of alcohol to one part of what is there.',
      optional: true,
    }),
    solids: out.share({
      label: 'volume of the flakes',
      help: 'Share of the volume that the flakes take up.',
    }),
  },
  formulas: [flakesOf, alcoholOf, made, toAdd, addVolume],
  solve: (given, trace) => {
    const C = given.cut;
    const ways = (['flakes', 'volume', 'existing'] as const).filter((n) => given[n] !== undefined);
    if (ways.length !== 1)
      throw new InputError({
        field: ways[1] ?? 'volume',
        message: `got ${ways.length === 0 ? 'none' : ways.join(' and ')}, takes one of volume (alcohol, such as "500 mL"), flakes (such as "100 g") or existing (shellac to thin)`,
      });
    const b = roomOfFlakes;
    if (given.existing === undefined) {
      if (given.existingCut !== undefined)
        throw new InputError({
          field: 'existing',
          message: 'missing; takes how much of that cut there is, such as "500 mL"',
        });
      const m = given.flakes ?? trace.evaluate(flakesOf, { C, V: given.volume as number });
      const V = given.volume ?? trace.evaluate(alcoholOf, { m, C });
      const V_s = trace.evaluate(made, { V, b, m });
      return { mass: m, volume: V, made: V_s, solids: (b * m) / 1000 / V_s };
    }
    const C_1 = given.existingCut;
    if (C_1 === undefined)
      throw new InputError({
        field: 'existingCut',
        message: 'missing; takes the cut of the shellac there is, such as 3 or "360 g/L"',
      });
    if (C > C_1 * (1 + 1e-12))
      throw new InputError({
        field: 'cut',
        message: `got ${formatQuantity({ kind: 'concentration', value: C })}, stronger than the ${formatQuantity({ kind: 'concentration', value: C_1 })} there is; takes a weaker cut: alcohol only thins`,
      });
    const p = Math.max(0, trace.evaluate(toAdd, { C_1, C_2: C, b }));
    const V_a = trace.evaluate(addVolume, { p, V_1: given.existing });
    // What is in the jar: its alcohol and its flakes, by the same rule.
    const alcohol = given.existing / (1 + (b * C_1) / 1000);
    const m = C_1 * alcohol;
    const V = alcohol + V_a;
    const V_s = trace.evaluate(made, { V, b, m });
    return { mass: m, volume: V, made: V_s, addAlcohol: V_a, partsAlcohol: p, solids: (b * m) / 1000 / V_s };
  },
  cautions: (given) => [
    ...finishHazards(['ethyl alcohol']),
    note(
      'dissolved shellac keeps for months only: date the jar, and if a drop on glass stays soft overnight throw the batch out (common practice)',
    ),
    // Without a cut there is nothing to look up: no entry is near what is no number.
    ...fromChart((given.existingCut ?? NaN) / poundPerGallon, given.cut / poundPerGallon),
    note('shellac is not for surfaces that take heat, water or spirits'),
  ],
  chart: (given, answer) => {
    const from = given.cut * 1.8;
    const pounds = (c: number): number => c / poundPerGallon;
    const cuts = Array.from({ length: 41 }, (_, i) => pounds(from) * (0.1 + (0.9 * i) / 40));
    if (given.existingCut !== undefined) {
      const top = pounds(given.existingCut);
      const wanted = Array.from({ length: 41 }, (_, i) => top * (0.15 + (0.85 * i) / 40));
      return lineChart({
        title: `Thinning a ${String(Number(top.toPrecision(3)))} lb cut`,
        x: { title: 'Cut wanted', unit: 'lb/gal', values: wanted },
        y: { title: 'Parts of alcohol to one', zero: true },
        series: [{ name: 'alcohol', values: wanted.map((c) => (top / c - 1) / (1 + 0.1 * top)) }],
        marks: [
          {
            x: pounds(given.cut),
            y: answer.partsAlcohol as number,
            label: `${String(Number((answer.partsAlcohol as number).toPrecision(3)))} parts`,
          },
        ],
      });
    }
    return lineChart({
      title: `Flakes for ${formatQuantity({ kind: 'liquid', value: answer.volume })} of alcohol`,
      x: { title: 'Cut', unit: 'lb/gal', values: cuts },
      y: { title: 'Flakes', unit: 'g', zero: true },
      series: [{ name: 'flakes', values: cuts.map((c) => c * poundPerGallon * answer.volume * 1000) }],
      marks: [
        {
          x: pounds(given.cut),
          y: answer.mass * 1000,
          label: formatQuantity({ kind: 'mass', value: answer.mass }),
        },
      ],
    });
  },
  sentence: (_given, out) =>
    out.addAlcohol === undefined
      ? 'Dissolve {mass} of flakes in {volume} of alcohol.'
      : 'Add {addAlcohol} of alcohol.',
  example: { cut: 2, volume: '500 mL' },
});

/** What the printed chart has for this pair of cuts; it is in kitchen fractions, and four of its entries stray from the rule. */
function fromChart(from: number, to: number): Caution[] {
  const near = (text: string, n: number): boolean => Math.abs(Number(text) - n) < 1e-6;
  const row = tableRows('shellac-dilution.shellac-chart').find(
    (r) => near(r.text('from_cut'), from) && near(r.text('to_cut'), to),
  );
  if (!row) return [];
  const printed = `a printed chart gives ${row.text('printed_parts')} (alcohol to shellac) for this`;
  return [
    row.doubt === ''
      ? note(`${printed}, rounded to kitchen measures`, row.citation)
      : dataCaution(
          `${printed}, which does not follow from 0.1 gal a pound, the rule of its other entries; this answer keeps to the rule`,
          row.citation,
        ),
  ];
}
