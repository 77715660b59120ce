import { lineChart } from '../../charts/line-chart.js';
import { InputError } from '../../units/input-error.js';
import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { finishHazards } from './hazards.js';

// The printed formulas hold 1000 and 10 for micrometres and square metres a litre; in base units there are no such constants.
const wet = variable('thickness', 'wet film of a coat', { unit: 'um' });
const dry = variable('thickness', 'dry film of a coat', { unit: 'um' });
const solidsByVolume = variable('share', 'solids by volume', { unit: '%' });
const rate = variable('coverage', 'area that a litre covers', { unit: 'm2/L' });

const wetFromRate = formula({
  symbol: 'w',
  result: wet,
  expression: '1 / c',
  variables: { c: rate },
  source: cite('painting-advice-2014', 'wet film from spread rate'),
});
const dryFromWet = formula({
  symbol: 'd',
  result: dry,
  expression: 'w S',
  variables: { w: wet, S: solidsByVolume },
  source: cite('coatings-tech-note-5-3', 'wet and dry film'),
});
const wetFromDry = formula({
  symbol: 'w',
  result: wet,
  expression: 'd / S',
  variables: { d: dry, S: solidsByVolume },
  source: cite('coatings-tech-note-5-3', 'wet and dry film'),
});
const coverageOf = formula({
  symbol: 'c',
  result: rate,
  expression: 'S / d',
  variables: { S: solidsByVolume, d: dry },
  source: cite('coatings-spreading-rate', 'theoretical spreading rate'),
});
const build = formula({
  symbol: 'D',
  result: variable('thickness', 'dry film of all coats', { unit: 'um' }),
  expression: 'N d',
  variables: {
    N: variable('count', 'coats'),
    d: variable('thickness', 'dry film of a coat', { unit: 'um' }),
  },
  basis: 'definition',
});

/**
 * The film a finish leaves: wet and dry thickness and coverage, from how far a litre goes, from a wet film measured
 * with a comb, or from the dry film wanted. `volumeSolids` by volume; `wetFilm`, `coverage`, `dryPerCoat` of one coat,
 * `dryFilm` of all coats together. Theoretical: no loss, no soaking in. For what soaks into bare wood it says too much.
 * @throws InputError unless exactly one of spreadingRate, wetFilm and targetFilm is given
 */
export const filmBuild = recipe({
  name: 'filmBuild',
  title: 'Film of a finish',
  topic: 'finish',
  about:
    'How thick a film a finish leaves, wet and dry, and how far a litre goes, from its solids. For film finishes; not for oils that soak in.',
  sources: [],
  inputs: {
    volumeSolids: field.share({
      symbol: 'S',
      label: 'solids by volume',
      help: 'From the data sheet; for a thinned finish use thinToSolids first.',
      above: '0 %',
      max: '100 %',
    }),
    spreadingRate: field.coverage({
      symbol: 'c',
      label: 'coverage',
      help: 'Area that one litre covers in one coat, also called spreading rate.',
      min: '0.1 m2/L',
      max: '200 m2/L',
      optional: true,
    }),
    wetFilm: field.thickness({
      symbol: 'w',
      label: 'wet film',
      help: 'Thickness of one coat as a wet film comb shows it.',
      min: '1 um',
      max: '10 mm',
      optional: true,
    }),
    targetFilm: field.thickness({
      label: 'dry film wanted',
      help: 'Thickness of all coats together once dry.',
      min: '0.1 um',
      max: '50 mm',
      optional: true,
    }),
    coats: field.count({ symbol: 'N', label: 'number of like coats', min: 1, max: 100, default: 1 }),
  },
  outputs: {
    wetFilm: out.thickness({ label: 'wet film', help: 'Thickness of one coat before it dries.' }),
    dryFilm: out.thickness({ label: 'dry film', help: 'Thickness of all coats together once dry.' }),
    coverage: out.coverage({
      label: 'coverage',
      help: 'Area that one litre covers in one coat, also called spreading rate.',
    }),
    dryPerCoat: out.thickness({ label: 'dry film per coat', help: 'Thickness of one coat once dry.' }),
    perArea: out.liquid({
      label: 'finish per square metre',
      help: 'Finish for one square metre with all its coats.',
    }),
  },
  formulas: [wetFromRate, dryFromWet, wetFromDry, coverageOf, build],
  solve: (given, trace) => {
    const S = given.volumeSolids;
    const ways = (['spreadingRate', 'wetFilm', 'targetFilm'] as const).filter((n) => given[n] !== undefined);
    if (ways.length !== 1) {
      throw new InputError({
        field: ways[1] ?? 'spreadingRate',
        message: `got ${ways.length === 0 ? 'none' : ways.join(' and ')}, takes one of spreadingRate such as "8 m2/L", wetFilm such as "125 um", or targetFilm such as "80 um"`,
      });
    }
    if (given.targetFilm !== undefined)
      trace.note(
        `One of ${String(given.coats)} coat${given.coats === 1 ? '' : 's'} gives its share of the film wanted.`,
      );
    const w =
      given.wetFilm ??
      (given.spreadingRate !== undefined
        ? trace.evaluate(wetFromRate, { c: given.spreadingRate })
        : trace.evaluate(wetFromDry, { d: (given.targetFilm as number) / given.coats, S }));
    const d = trace.evaluate(dryFromWet, { w, S });
    const c = trace.evaluate(coverageOf, { S, d });
    return {
      wetFilm: w,
      dryPerCoat: d,
      coverage: c,
      dryFilm: trace.evaluate(build, { N: given.coats, d }),
      perArea: given.coats / c,
    };
  },
  cautions: [
    ...[
      note(
        'theoretical: no loss, and nothing that soaks in; on bare wood the first coats mostly fill the pores',
      ),
    ],
    ...finishHazards([]),
  ],
  chart: (given, answer) => {
    const low = Math.max(1, answer.coverage / 1000 / 3);
    const rates = Array.from({ length: 41 }, (_, i) => low + ((answer.coverage / 1000) * 2 * i) / 40);
    const rounded = (n: number): string => String(Number((n * 1e6).toPrecision(3)));
    return lineChart({
      title: 'Film of one coat against coverage',
      x: { title: 'Coverage', unit: 'm²/L', values: rates },
      y: { title: 'Film of one coat', unit: 'µm', zero: true },
      series: [
        { name: 'wet', values: rates.map((r) => 1000 / r) },
        {
          name: `dry, ${String(Number((given.volumeSolids * 100).toPrecision(3)))} % solids`,
          values: rates.map((r) => (1000 * given.volumeSolids) / r),
        },
      ],
      marks: [
        { x: answer.coverage / 1000, y: answer.wetFilm * 1e6, label: `${rounded(answer.wetFilm)} µm wet` },
        {
          x: answer.coverage / 1000,
          y: answer.dryPerCoat * 1e6,
          label: `${rounded(answer.dryPerCoat)} µm dry`,
        },
      ],
    });
  },
  sentence: 'Lay {wetFilm} wet in each coat: that covers {coverage} and dries to {dryFilm} in all.',
  example: { volumeSolids: '42 %', spreadingRate: '12 m2/L', coats: 3 },
});
