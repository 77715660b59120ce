import { formatQuantity } from '../../units/format-quantity.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { givenLoss, lossOf } from './application-loss.js';
import { coatChart } from './coat-chart.js';
import { coverageNotes, printedCoverages } from './coverage.js';
import { finishHazards } from './hazards.js';
import { allFaces, pieceArea, topAndBottom, topAndEdges, topOnly, type Piece } from './coated-surface.js';
import { finishQuantityFields } from './finish-quantity-fields.js';

// Loss is a share of what leaves the tin, as coatings notes take it; adding it on top of the net volume gives too little.
const oneCoat = formula({
  symbol: 'V',
  result: variable('liquid', 'for a coat', { unit: 'L' }),
  expression: 'A / (c * (1 - q))',
  variables: {
    A: variable('area', 'area to coat', { unit: 'm2' }),
    c: variable('coverage', 'coverage of what goes on', { unit: 'm2/L' }),
    q: variable('share', 'loss, of what leaves the tin', { unit: '%' }),
  },
  source: cite('coatings-spreading-rate', 'consumption from area and rate'),
});
const unthinned = formula({
  symbol: 'F',
  result: variable('liquid', 'finish from the tin', { unit: 'L' }),
  expression: 'V / (1 + k)',
  variables: {
    V: variable('liquid', 'mix', { unit: 'L' }),
    k: variable('ratio', 'parts of thinner to one of finish'),
  },
  basis: 'definition',
});
// A billionth is taken off before rounding up, or 3 L in tins of 0.5 L could come out as 7 tins by the last binary digit.
const tinCount = formula({
  symbol: 'n',
  result: variable('count', 'tins to buy'),
  expression: 'ceil(F / T - 10^(-9))',
  variables: {
    F: variable('liquid', 'finish from the tin', { unit: 'L' }),
    T: variable('liquid', 'what a tin holds', { unit: 'L' }),
  },
  basis: 'definition',
});

/**
 * How much finish a job takes and how many tins: from areas, or from the pieces' own dimensions with all faces or
 * without the underside; coat by coat, with the loss of the method and with thinner.
 * `coverage` is that of the mix as it goes on (m² a litre); bare wood absorbs more, so `firstCoverage`.
 * `volume` is the mix, `finish` what comes from the tin, `thinner` the rest. Not for filling grain or flood coats.
 */
export const finishQuantity = recipe({
  name: 'finishQuantity',
  title: 'Finish for a job',
  topic: 'finish',
  about:
    'How much finish a job takes, coat by coat, and how many tins to buy: from areas or from the dimensions of the pieces. Not for filling grain or for poured coats.',
  sources: [],
  inputs: finishQuantityFields,
  outputs: {
    volume: out.liquid({ label: 'finish to mix', help: 'Finish with its thinner for all coats.' }),
    perCoat: out.list(out.liquid({ label: 'mix for the coat' }), { label: 'mix for each coat' }),
    tins: out.count({ label: 'tins to buy' }),
    finish: out.liquid({ label: 'finish from the tins' }),
    thinner: out.liquid({ label: 'thinner' }),
    area: out.area({ label: 'area of one coat' }),
    bought: out.liquid({ label: 'in the tins bought' }),
    spare: out.liquid({ label: 'left in the tins', help: 'What remains in the tins bought.' }),
    elapsed: out.time({
      label: 'time in all',
      help: 'From the first stroke until the last coat is dry.',
      optional: true,
    }),
  },
  formulas: [allFaces, topAndEdges, topAndBottom, topOnly, oneCoat, unthinned, tinCount],
  solve: (given, trace) => {
    const items = Array.isArray(given.surfaces)
      ? (given.surfaces as readonly (number | Piece)[])
      : [given.surfaces as Piece];
    const areas = items.map((s, i) =>
      typeof s === 'number' ? s : s.count * pieceArea(s, items.length > 1 ? ` of piece ${i + 1}` : '', trace),
    );
    const A = areas.reduce((a, b) => a + b, 0);
    if (!trace.silent && (areas.length > 1 || ((items[0] as Partial<Piece>).count as number) > 1))
      trace.note(`Together ${formatQuantity({ kind: 'area', value: A })}.`);
    const loss = given.loss === undefined ? lossOf(given.method, trace) : givenLoss(given.loss, trace);
    const coat = (first: boolean): { V: number; F: number } => {
      const c = (first ? given.firstCoverage : undefined) ?? given.coverage;
      const k = (first ? given.firstThinnerParts : undefined) ?? given.thinnerParts;
      const label =
        given.coats === 1
          ? 'the coat'
          : given.firstCoverage === undefined && given.firstThinnerParts === undefined
            ? 'each coat'
            : first
              ? 'the first coat'
              : 'each later coat';
      const V = trace.evaluate(oneCoat, { A, c, q: loss }, `mix for ${label}`);
      return { V, F: k === 0 ? V : trace.evaluate(unthinned, { V, k }, `finish in it for ${label}`) };
    };
    const first = coat(true);
    const alike = given.firstCoverage === undefined && given.firstThinnerParts === undefined;
    const later = given.coats === 1 || alike ? first : coat(false);
    const perCoat = Array.from({ length: given.coats }, (_, i) => (i === 0 ? first.V : later.V));
    const volume = first.V + (given.coats - 1) * later.V;
    const finish = first.F + (given.coats - 1) * later.F;
    const tins = trace.evaluate(
      tinCount,
      { F: finish, T: given.tinSize },
      `tins of ${formatQuantity({ kind: 'liquid', value: given.tinSize })} for ${String(given.coats)} coat${given.coats === 1 ? '' : 's'}`,
    );
    const bought = tins * given.tinSize;
    return {
      volume,
      perCoat,
      tins,
      finish,
      thinner: volume - finish,
      area: A,
      bought,
      // The last binary digits of a full tin are no rest.
      spare: bought - finish < 1e-9 * bought ? 0 : bought - finish,
      ...(given.dryTime === undefined ? {} : { elapsed: given.coats * (given.coatTime + given.dryTime) }),
    };
  },
  limits: [
    {
      when: (given) =>
        given.coverage < printedCoverages().low.amount - 1e-9 ||
        given.coverage > printedCoverages().high.amount + 1e-9,
      message: () => {
        const { low, high } = printedCoverages();
        return `printed coverages read here run from ${low.text} to ${high.text}; look at the tin again`;
      },
      source: cite('stain-coverage-logs', '200 ft2 a US gallon, first coat', {
        also: cite('self-sufficiency-painting', 'coverage of gloss'),
      }),
    },
  ],
  cautions: (given) => [
    ...finishHazards(given.finish === undefined ? [] : [given.finish], {
      food: true,
      sprayed: given.method?.includes('spray') === true,
    }),
    ...coverageNotes(given),
  ],
  chart: (given, answer) => coatChart(given, answer),
  sentence: (_given, out) =>
    `You need {volume}: buy {tins} ${out.tins === 1 ? 'tin' : 'tins'}, with {spare} left over.`,
  example: {
    surfaces: { length: '1.95 m', width: '640 mm', thickness: '42 mm' },
    coats: 3,
    coverage: '12 m2/L',
    firstCoverage: '8 m2/L',
    method: 'brush or roller',
    firstThinnerParts: 0.5,
    tinSize: '500 mL',
    coatTime: '30 min',
    dryTime: '12 h',
    finish: 'oil varnish',
  },
});
