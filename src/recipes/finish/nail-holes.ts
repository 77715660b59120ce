import { quantileNormal } from 'vega-statistics';
import { barChart } from '../../charts/bar-chart.js';
import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { InputError } from '../../units/input-error.js';

const count = (label: string) => variable('count', label);
const expectedHoles = formula({
  symbol: 'N',
  result: count('holes expected in all'),
  expression: 'n A / a',
  variables: {
    n: count('holes counted'),
    A: variable('area', 'area of the whole job', { unit: 'm2' }),
    a: variable('area', 'area that was counted', { unit: 'm2' }),
  },
  basis: 'definition',
});
/** Spread of the holes still to come: of the job, and of the sample it was foretold from. */
const spreadOf = formula({
  symbol: 's',
  result: variable('ratio', 'standard deviation of the holes in all'),
  expression: 'sqrt(D * n * (A / a) * (1 + A / a))',
  variables: {
    D: variable('ratio', 'variance over mean of the counts; 1 for holes that lie by chance'),
    n: count('holes counted'),
    A: variable('area', 'area of the whole job', { unit: 'm2' }),
    a: variable('area', 'area that was counted', { unit: 'm2' }),
  },
  basis: 'definition',
});
const fillerOf = formula({
  symbol: 'V',
  result: variable('liquid', 'filler to mix', { unit: 'mL' }),
  expression: 'N pi d^2 t * (1 + w) / 4',
  variables: {
    N: count('holes to be ready for'),
    d: variable('length', 'width of a hole', { unit: 'cm' }),
    t: variable('length', 'depth filled', { unit: 'cm' }),
    w: variable('share', 'filler left over, scraped off and shrunk'),
  },
  basis: 'geometry',
});

/**
 * Nail holes to fill or plug on a job, from counts on some sample pieces: holes expected and the number to be ready for,
 * with the volume of filler or the plugs. Counts may lie closer or farther apart than chance; the spread is theirs.
 * Counts, areas and sizes in. Source: prediction of a count from a sample (definition); the allowances are common practice.
 */
export const nailHoles = recipe({
  name: 'nailHoles',
  title: 'Nail holes to fill or plug',
  topic: 'finish',
  about:
    'From counts on a few sample pieces: how many nail holes the job has, how many to be ready for, and the filler or plugs they take.',
  sources: [],
  inputs: {
    counts: field.list(field.count({ label: 'holes in a sample piece', min: 0, max: 10_000 }), {
      label: 'counts',
      help: 'Holes counted in each sample piece.',
      most: 500,
    }),
    sampleArea: field.area({
      label: 'sample area',
      help: 'Area of one sample piece.',
      above: '0 m2',
      max: '100 m2',
    }),
    area: field.area({
      symbol: 'A',
      label: 'area',
      help: 'Area of the whole job.',
      above: '0 m2',
      max: '1000 m2',
    }),
    holeWidth: field.length({
      symbol: 'd',
      label: 'width of a hole',
      above: '0 mm',
      max: '30 mm',
      default: '5 mm',
    }),
    depth: field.length({
      symbol: 't',
      label: 'depth that is filled',
      above: '0 mm',
      max: '100 mm',
      default: '10 mm',
    }),
    method: field.choice(['filler', 'plugs'], { label: 'filled or plugged', default: 'filler' }),
    leftOver: field.share({
      symbol: 'w',
      label: 'filler lost',
      help: 'Share of the filler left over, scraped off and shrunk.',
      min: '0 %',
      max: '300 %',
      default: '50 %',
    }),
    certainty: field.share({
      label: 'certainty',
      help: 'Chance that what is made is enough.',
      min: '50 %',
      max: '99.9 %',
      default: '90 %',
    }),
    finish: field.choice(['clear', 'stain', 'paint'], { label: 'what goes over it', default: 'clear' }),
  },
  outputs: {
    sentence: out.text({ label: 'in one sentence' }),
    expected: out.count({ label: 'holes expected in all' }),
    ready: out.count({ label: 'holes to fill', help: 'Holes to be ready for.' }),
    filler: out.liquid({ label: 'filler to mix', unit: 'mL', optional: true }),
    plugs: out.count({ label: 'plugs to cut', optional: true }),
    perArea: out.ratio({ label: 'holes per area', help: 'Holes in a square metre.' }),
    spread: out.ratio({ label: 'standard deviation', help: 'Standard deviation of the number of holes.' }),
  },
  formulas: [expectedHoles, spreadOf, fillerOf],
  solve: (given, trace) => {
    const n = given.counts.reduce((sum, c) => sum + c, 0);
    const a = given.counts.length * given.sampleArea;
    if (given.counts.length < 3)
      throw new InputError({
        field: 'counts',
        message: `got ${given.counts.length} piece${given.counts.length === 1 ? '' : 's'}, takes at least 3: one board says nothing of how much they differ`,
      });
    const N = trace.evaluate(expectedHoles, { n, A: given.area, a });
    const D = dispersion(given.counts);
    const s = trace.evaluate(spreadOf, { D, n, A: given.area, a });
    // None counted does not mean none there: three is the most that a sample of none leaves likely, at 95 %.
    const most =
      n === 0 ? (-Math.log(1 - given.certainty) * given.area) / a : N + quantileNormal(given.certainty) * s;
    const ready = Math.ceil(Math.max(N, most) - 1e-9);
    trace.note(
      `Ready for ${ready}: the expected number and ${quantileNormal(given.certainty).toFixed(2)} standard deviations of it.`,
    );
    const filler =
      given.method === 'filler'
        ? trace.evaluate(fillerOf, { N: ready, d: given.holeWidth, t: given.depth, w: given.leftOver })
        : undefined;
    return {
      sentence: `About ${Math.round(N)} holes; be ready for ${ready}: ${filler === undefined ? `cut ${ready} plugs` : `mix ${(filler * 1e6).toFixed(0)} mL of filler, in batches that you use within its pot life`}.`,
      expected: Math.round(N),
      ready,
      filler,
      plugs: given.method === 'plugs' ? ready : undefined,
      perArea: n / a,
      spread: s,
    };
  },
  cautions: (given) => [
    note('draw or punch every nail before any machine: a magnet finds what the eye does not'),
    ...(given.method === 'filler'
      ? [
          note(
            'deep holes in two fills: the first dries before the second, or it sinks; read the tin for the time',
          ),
          ...(given.finish === 'stain'
            ? [
                note(
                  'filler takes stain unlike wood: stain a filled offcut first, or plug with the same wood instead',
                ),
              ]
            : []),
        ]
      : [
          note(
            'plugs of the same wood with the grain along the board nearly vanish; iron in oak turns black round them',
          ),
        ]),
    ...(given.finish === 'paint'
      ? [
          note(
            'knots and resin of bare softwood bleed through paint: two coats of knotting or shellac sealer on each first (common practice)',
          ),
        ]
      : []),
  ],
  chart: (given, answer) =>
    barChart({
      title: `Holes counted in ${given.counts.length} pieces`,
      subtitle: answer.sentence,
      of: 'Piece',
      value: { title: 'Holes', zero: true },
      bars: given.counts.slice(0, 30).map((c, i) => ({ name: `${i + 1}`, value: c, label: `${c}` })),
    }),
  example: {
    counts: [7, 4, 9, 5, 6],
    sampleArea: '0.2 m2',
    area: '1.3 m2',
    holeWidth: '5 mm',
    depth: '12 mm',
  },
});

/** Variance over mean of the counts, at least 1: boards that differ more than chance spread the job more. */
function dispersion(counts: readonly number[]): number {
  const mean = counts.reduce((s, c) => s + c, 0) / counts.length;
  if (mean === 0) return 1;
  const variance = counts.reduce((s, c) => s + (c - mean) ** 2, 0) / (counts.length - 1);
  return Math.max(1, variance / mean);
}
