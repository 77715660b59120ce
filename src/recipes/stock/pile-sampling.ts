import { lineChart } from '../../charts/line-chart.js';
import { formatQuantity } from '../../units/format-quantity.js';
import { InputError } from '../../units/input-error.js';
import { danger, dataCaution, estimate, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { amountOutput, neededField, sampleField } from './sampled-amount.js';
import { studentTQuantile } from '../student-t.js';

const mean = variable('ratio', 'mean yield of a piece');
const sd = variable('ratio', 'standard deviation of the yields');
const total = formula({
  symbol: 'T',
  result: variable('ratio', 'expected yield of further pieces'),
  expression: 'm x',
  variables: { m: variable('count', 'further pieces'), x: mean },
  basis: 'definition',
});
const names = { length: 'a length', area: 'an area', volume: 'a volume', ratio: 'a plain number' };

/** Half the width of the interval for the sum of m further draws, when mean and spread come from n draws. */
const halfWidth = formula({
  symbol: 'h',
  result: variable('ratio', 'half width of the prediction interval'),
  expression: 't s * sqrt(m + m^2 / n)',
  variables: {
    t: variable('ratio', 'Student’s t'),
    s: sd,
    m: variable('count', 'further pieces'),
    n: variable('count', 'pieces in the sample'),
  },
  basis: 'definition',
});

/** More pieces than any yard holds: beyond it a sample promises nothing. A power of two, since the search doubles. */
const most = 2 ** 20;

/** Least whole number of pieces whose total, shifted by t standard errors, reaches what is needed; Infinity beyond `most`. */
function pieces(needed: number, x: number, s: number, n: number, t: number): number {
  const reaches = (m: number): boolean =>
    total.evaluate({ m, x }) + halfWidth.evaluate({ t, s, m, n }) >= needed * (1 - 1e-12);
  // With a negative t the bound rises only once pieces average the spread out, so a first crossing is found by doubling, then halving.
  let high = 1;
  while (!reaches(high)) {
    if (high === most) return Infinity;
    high *= 2;
  }
  let low = high / 2;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (reaches(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/**
 * How many more pallets, beams or boards to take apart, judged by a few already done. A prediction interval on Student's t:
 * right for yields that scatter evenly about their mean and for pieces like those sampled; not for a pile sorted best first.
 */
export const pileSampling = recipe({
  name: 'pileSampling',
  title: 'How many more pallets or boards to break down',
  topic: 'stock',
  about:
    'How many more pallets or boards to take apart for what is still needed, judged by a few already done. For pieces like those sampled; not for a pile sorted best first.',
  sources: [],
  inputs: {
    sample: sampleField,
    needed: neededField,
    confidence: field.share({
      label: 'confidence',
      help: 'How sure the answer should be.',
      min: '50 %',
      max: '99.9 %',
      default: '90 %',
    }),
  },
  outputs: {
    piecesToPull: out.count({
      label: 'pieces to break down',
      help: 'Pieces to take apart so that the need is met with this confidence.',
    }),
    low: out.count({ label: 'pieces, low', help: 'Pieces that may already be enough.' }),
    high: out.count({ label: 'pieces, high', help: 'Pieces that may be needed.' }),
    expected: out.count({ label: 'pieces, mean', help: 'Pieces needed at the mean yield.' }),
    meanYield: amountOutput('mean yield'),
    spread: amountOutput('spread of yields'),
    yieldLow: amountOutput('yield, low'),
    yieldHigh: amountOutput('yield, high'),
  },
  formulas: [total, halfWidth],
  solve: (given, trace) => {
    const { kind, values } = given.sample;
    const needed = given.needed.value;
    if (given.needed.kind !== kind)
      throw new InputError({
        field: 'needed',
        message: `got ${names[given.needed.kind]}, takes ${names[kind]} as in the sample`,
      });
    const n = values.length;
    const x = values.reduce((a, b) => a + b, 0) / n;
    if (x === 0)
      throw new InputError({
        field: 'sample',
        message: 'got a sample that yields nothing, takes at least one piece with some yield',
      });
    const expected = Math.ceil(needed / x - 1e-9);
    if (expected > most)
      throw new InputError({
        field: 'needed',
        message: `got ${formatQuantity(given.needed)}, takes at most ${formatQuantity({ kind, value: most * x })}, what ${most} such pieces give`,
      });
    const s = Math.sqrt(values.reduce((a, v) => a + (v - x) ** 2, 0) / (n - 1));
    const c = given.confidence;
    const [one, two] = [studentTQuantile(c, n - 1), studentTQuantile((1 + c) / 2, n - 1)];
    const piecesToPull = pieces(needed, x, s, n, -one);
    const high = pieces(needed, x, s, n, -two);
    if (high === Infinity)
      throw new InputError({
        field: 'sample',
        message: `got ${n} yields that scatter too widely to promise anything at ${Number((c * 100).toFixed(1))} %; takes more pieces, or a lower confidence`,
      });
    trace.note(
      `Mean and standard deviation of ${n} pieces; Student’s t for ${n - 1} degrees of freedom is ${one.toFixed(3)} to one side and ${two.toFixed(3)} to both.`,
    );
    const T = trace.evaluate(total, { m: piecesToPull, x });
    const h = trace.evaluate(halfWidth, { t: two, s, m: piecesToPull, n });
    return {
      piecesToPull,
      low: pieces(needed, x, s, n, two),
      high,
      expected,
      meanYield: { kind, value: x },
      spread: { kind, value: s },
      yieldLow: { kind, value: Math.max(0, T - h) },
      yieldHigh: { kind, value: T + h },
    };
  },
  limits: [
    {
      when: (g) => g.sample.values.length < 5,
      message: 'fewer than five pieces make a wide and shaky interval: take more apart before you rely on it',
    },
  ],
  cautions: (_given, answer) => [
    danger('wear gloves and eye protection; draw or cut every nail before a board meets a blade'),
    danger(
      'take no pallet marked MB (methyl bromide), stained or from unknown loads: heat-treated ones are marked HT',
    ),
    estimate('yields are taken to scatter evenly (normally) about their mean'),
    ...(answer.spread.value > answer.meanYield.value / 2
      ? [dataCaution('the yields differ a great deal: sort the pile and sample each sort on its own')]
      : []),
    note('sample at random: the best-looking pieces first would promise too much'),
  ],
  chart: (given, answer) => {
    const { kind, values } = given.sample;
    const n = values.length;
    const unit = { length: 'm', area: 'm²', volume: 'm³', ratio: '' }[kind];
    const top = Math.max(answer.high + 2, Math.ceil(answer.high * 1.15));
    const step = Math.max(1, Math.ceil(top / 60));
    const ms = Array.from({ length: Math.floor(top / step) + 1 }, (_, i) => i * step);
    const t = studentTQuantile((1 + given.confidence) / 2, n - 1);
    const T = ms.map((m) => total.evaluate({ m, x: answer.meanYield.value }));
    const h = ms.map((m) => halfWidth.evaluate({ t, s: answer.spread.value, m, n }));
    return lineChart({
      title: 'Yield of further pieces',
      subtitle: `Band: ${Number((given.confidence * 100).toFixed(1))} % prediction interval`,
      x: { title: 'Further pieces taken apart', values: ms },
      y: { title: 'Usable yield', unit, zero: true },
      series: [{ name: 'expected', values: T }],
      bands: [
        {
          name: 'prediction interval',
          low: T.map((v, i) => Math.max(0, v - (h[i] as number))),
          high: T.map((v, i) => v + (h[i] as number)),
        },
      ],
      rules: [{ y: given.needed.value, label: 'needed' }],
      marks: [
        {
          x: answer.piecesToPull,
          y: total.evaluate({ m: answer.piecesToPull, x: answer.meanYield.value }),
          label: `${answer.piecesToPull} pieces`,
        },
      ],
      points: false,
    });
  },
  sentence: 'Break down {piecesToPull} more; {low} may be enough.',
  example: {
    sample: ['1.62 m', '1.48 m', '1.71 m', '1.33 m', '1.57 m', '1.66 m'],
    needed: '14 m',
    confidence: '90 %',
  },
});
