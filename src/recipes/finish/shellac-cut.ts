import { lineChart } from '../../charts/lineChart.js';
import { formatQuantity } from '../../quantities/format.js';
import { Refusal } from '../../quantities/refusal.js';
import { dataCaution, note, type Caution } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { cite } from '../../recipe/source.js';
import { tableRows } from '../../timber/tables.js';
import { cutField, poundPerGallon } from './cut.js';
import { finishDangers } from './dangers.js';

const cut = letter('concentration', 'cut: flakes to the alcohol they are dissolved in', { in: 'g/L' });
const flakesOf = formula({
  symbol: 'm',
  gives: letter('mass', 'flakes', { in: 'g' }),
  text: 'C V',
  where: { C: cut, V: letter('liquid', 'alcohol', { in: 'L' }) },
  source: cite('woodcraft-42', 'ounces of flakes to a cup of alcohol'),
});
const alcoholOf = formula({
  symbol: 'V',
  gives: letter('liquid', 'alcohol', { in: 'L' }),
  text: 'm / C',
  where: { m: letter('mass', 'flakes', { in: 'g' }), C: cut },
  source: cite('woodcraft-42', 'ounces of flakes to a cup of alcohol'),
});
// 0.1 US gallon for each pound: what dissolved flakes add to the volume.
const room = letter('ratio', 'litres that a kilogram of dissolved flakes takes up', { bare: true });
const made = formula({
  symbol: 'V_s',
  gives: letter('liquid', 'shellac made', { in: 'L', bare: true }),
  text: 'V + b m',
  where: {
    V: letter('liquid', 'alcohol', { in: 'L', bare: true }),
    b: room,
    m: letter('mass', 'flakes', { in: 'kg', bare: true }),
  },
  source: cite('shellac-chart', 'room that flakes take: 0.1 gal a pound'),
});
const toAdd = formula({
  symbol: 'p',
  gives: letter('ratio', 'parts of alcohol to one of the shellac there is'),
  text: '(C_1 / C_2 - 1) / (1 + b C_1 / 1000)',
  where: {
    C_1: letter('concentration', 'cut there is', { in: 'g/L', bare: true }),
    C_2: letter('concentration', 'cut wanted', { in: 'g/L', bare: true }),
    b: room,
  },
  source: cite('shellac-chart', 'room that flakes take: 0.1 gal a pound'),
});
const addVolume = formula({
  symbol: 'V_a',
  gives: letter('liquid', 'alcohol to add', { in: 'mL' }),
  text: 'p V_1',
  where: {
    p: letter('ratio', 'parts of alcohol to one of the shellac there is'),
    V_1: letter('liquid', 'shellac there is', { in: 'mL' }),
  },
  basis: 'definition',
});

/** 0.1 US gallon a pound, in litres a kilogram. */
const roomOfFlakes = (0.1 * 3.785411784) / 0.45359237;

/**
 * Flakes and alcohol for a cut of shellac, and how to thin a cut there is to a weaker one. A cut is pounds of flakes to
 * a US gallon of alcohol (a plain number such as 2), or a mass per litre such as "240 g/L"; both of the alcohol, not of
 * the mix, whose volume is larger by what the flakes take up (0.1 gal a pound). `volume` in and out is alcohol.
 * @throws Refusal when neither flakes, volume nor existing is given, or the cut wanted is stronger than the one there is
 */
export const shellacCut = recipe({
  name: 'shellacCut',
  title: 'Cut of shellac',
  topic: 'finish',
  about:
    'Flakes and alcohol for a cut of shellac, or the alcohol that thins one cut to a weaker. Cuts are by pounds to the US gallon of alcohol, or grams to the litre.',
  sources: [],
  inputs: {
    cut: cutField({ says: 'cut wanted: pounds of flakes to a US gallon of alcohol' }),
    flakes: field.mass({ symbol: 'm', says: 'flakes there are', above: '0 g', max: '1 t', optional: true }),
    volume: field.liquid({
      symbol: 'V',
      says: 'alcohol to make it with',
      above: '0 mL',
      max: '10000 L',
      optional: true,
    }),
    existing: field.liquid({
      symbol: 'V_1',
      says: 'ready-made shellac there is, to thin',
      above: '0 mL',
      max: '10000 L',
      optional: true,
    }),
    existingCut: cutField({ says: 'cut of the ready-made shellac', optional: true }),
  },
  outputs: {
    mass: out.mass({ says: 'flakes, or those already dissolved' }),
    volume: out.liquid({ says: 'alcohol in all' }),
    made: out.liquid({ says: 'shellac made' }),
    addAlcohol: out.liquid({ says: 'alcohol to add to what there is', optional: true }),
    partsAlcohol: out.ratio({ says: 'parts of alcohol to one part of what there is', optional: true }),
    solids: out.share({ says: 'share of the volume that the flakes take' }),
  },
  formulas: [flakesOf, alcoholOf, made, toAdd, addVolume],
  solve: (given, work) => {
    const C = given.cut;
    const ways = (['flakes', 'volume', 'existing'] as const).filter((n) => given[n] !== undefined);
    if (ways.length !== 1)
      throw new Refusal({
        field: ways[1] ?? 'volume',
        says: `got ${ways.length === 0 ? 'none' : ways.join(' and ')}, takes one of volume (alcohol, such as "500 mL"), flakes (such as "100 g") or existing (shellac to thin)`,
      });
    const b = roomOfFlakes;
    if (given.existing === undefined) {
      if (given.existingCut !== undefined)
        throw new Refusal({
          field: 'existing',
          says: 'missing; takes how much of that cut there is, such as "500 mL"',
        });
      const m = given.flakes ?? work.apply(flakesOf, { C, V: given.volume as number });
      const V = given.volume ?? work.apply(alcoholOf, { m, C });
      const V_s = work.apply(made, { V, b, m });
      return { mass: m, volume: V, made: V_s, solids: (b * m) / 1000 / V_s };
    }
    const C_1 = given.existingCut;
    if (C_1 === undefined)
      throw new Refusal({
        field: 'existingCut',
        says: 'missing; takes the cut of the shellac there is, such as 3 or "360 g/L"',
      });
    if (C > C_1 * (1 + 1e-12))
      throw new Refusal({
        field: 'cut',
        says: `got ${formatQuantity({ kind: 'concentration', value: C })}, stronger than the ${formatQuantity({ kind: 'concentration', value: C_1 })} there is; takes a weaker cut: alcohol only thins`,
      });
    const p = Math.max(0, work.apply(toAdd, { C_1, C_2: C, b }));
    const V_a = work.apply(addVolume, { p, V_1: given.existing });
    // What is in the jar: its alcohol and its flakes, by the same rule.
    const alcohol = given.existing / (1 + (b * C_1) / 1000);
    const m = C_1 * alcohol;
    const V = alcohol + V_a;
    const V_s = work.apply(made, { V, b, m });
    return { mass: m, volume: V, made: V_s, addAlcohol: V_a, partsAlcohol: p, solids: (b * m) / 1000 / V_s };
  },
  cautions: (given) => [
    ...finishDangers(['ethyl alcohol']),
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
