import { barChart } from '../../charts/bar-chart.js';
import { danger, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { tableField } from '../../engine/table-field.js';
import { InputError } from '../../units/input-error.js';
import { studentTQuantile } from '../student-t.js';

const count = (label: string) => variable('count', label);
const hours = (label: string) => variable('time', label, { unit: 'min' });

const meanTime = formula({
  symbol: 'm',
  result: hours('average time for a piece'),
  expression: 'S / n',
  variables: { S: hours('time of all samples'), n: count('samples') },
  basis: 'definition',
});
const expectedTime = formula({
  symbol: 'T',
  result: hours('time expected for all pieces'),
  expression: 'N m',
  variables: { N: count('pieces to do'), m: hours('average time for a piece') },
  basis: 'definition',
});
/** What N pieces still to come take varies by their own spread and by that of the average they are foretold from. */
const halfWidth = formula({
  symbol: 'H',
  result: hours('either way of the time expected'),
  expression: 't * s * sqrt(N + N^2 / n)',
  variables: {
    t: variable('ratio', 'Student’s t for the chance wanted'),
    s: hours('standard deviation of a piece'),
    N: count('pieces to do'),
    n: count('samples'),
  },
  basis: 'definition',
});

/**
 * Hours of preparing timber, such as de-nailing, docking and planing, foretold from a few timed pieces of each work, with
 * the range that the job will lie in. For pieces alike enough that a sample speaks for them. Times and counts in, times out.
 * Source: prediction of a sum from a sample (definition), Student's t.
 * @throws InputError for a work with fewer than two timed pieces
 */
export const prepTime = recipe({
  name: 'prepTime',
  title: 'Time to prepare timber',
  topic: 'bill',
  about:
    'Hours of de-nailing, docking, planing and the like, foretold from a few timed pieces, with the range to plan for and what it costs.',
  sources: [],
  inputs: {
    works: tableField(
      {
        work: field.text({ label: 'what is done', default: 'work' }),
        times: field.list(field.time({ label: 'time of one piece', above: '0 s', max: '24 h' }), {
          label: 'times',
          help: 'Times of the pieces timed so far.',
          most: 200,
        }),
        pieces: field.count({ label: 'pieces still to do', min: 1, max: 100_000 }),
      },
      { label: 'operations', help: 'One row for each operation.', most: 50 },
    ),
    certainty: field.share({
      label: 'certainty',
      help: 'Chance that the job lies in the range.',
      min: '50 %',
      max: '99 %',
      default: '80 %',
    }),
    hourly: field.money({ label: 'cost of an hour', min: 0, max: 10_000, optional: true }),
  },
  outputs: {
    sentence: out.text({ label: 'in one sentence' }),
    expected: out.time({ label: 'time expected', unit: 'h' }),
    low: out.time({ label: 'least of the range', unit: 'h' }),
    high: out.time({ label: 'most of the range', unit: 'h' }),
    cost: out.money({ label: 'cost', help: 'Cost of the time expected.', optional: true }),
    costHigh: out.money({
      label: 'highest cost',
      help: 'Cost of the longest time of the range.',
      optional: true,
    }),
    works: out.table(
      {
        work: out.text({ label: 'work' }),
        each: out.time({ label: 'average of a piece', unit: 'min' }),
        pieces: out.count({ label: 'pieces' }),
        expected: out.time({ label: 'time expected', unit: 'h' }),
        high: out.time({ label: 'most of the range', unit: 'h' }),
      },
      { label: 'Work by work' },
    ),
  },
  formulas: [meanTime, expectedTime, halfWidth],
  solve: (given, trace) => {
    const rows = given.works.map((w, i) => {
      const n = w.times.length;
      if (n < 2)
        throw new InputError({
          field: `works[${i + 1}].times`,
          message: `got ${n} time${n === 1 ? '' : 's'}, takes two or more: one piece says nothing of how much they differ`,
        });
      const m = trace.evaluate(meanTime, { S: w.times.reduce((a, b) => a + b, 0), n });
      const s = Math.sqrt(w.times.reduce((sum, x) => sum + (x - m) ** 2, 0) / (n - 1));
      const T = trace.evaluate(expectedTime, { N: w.pieces, m });
      const t = studentTQuantile((1 + given.certainty) / 2, n - 1);
      const H = trace.evaluate(halfWidth, { t, s, N: w.pieces, n });
      return { work: w.work, each: m, pieces: w.pieces, expected: T, half: H };
    });
    const expected = rows.reduce((sum, r) => sum + r.expected, 0);
    // Works that err apart add their squares.
    const half = Math.sqrt(rows.reduce((sum, r) => sum + r.half ** 2, 0));
    const [low, high] = [Math.max(0, expected - half), expected + half];
    const h = (s: number): string => `${Number((s / 3600).toPrecision(2))} h`;
    return {
      sentence: `About ${h(expected)}; plan for ${h(high)}: ${Math.round(given.certainty * 100)} jobs in a hundred take between ${h(low)} and that.`,
      expected,
      low,
      high,
      ...(given.hourly === undefined
        ? {}
        : { cost: (given.hourly * expected) / 3600, costHigh: (given.hourly * high) / 3600 }),
      works: rows.map(({ half: own, ...r }) => ({ ...r, high: r.expected + own })),
    };
  },
  cautions: [
    danger(
      'break the work up, change between works, and stop the machines before clearing: a tired hand slips',
    ),
    note('time the pieces as they come, bad ones too; walking, setting up and sweeping are part of it'),
    note('give the expected hours to bill as a line, and the difference to the most as its contingency'),
  ],
  chart: (given, answer) =>
    barChart({
      title: 'Hours, work by work',
      subtitle: answer.sentence,
      of: '',
      value: { title: 'Time', unit: 'h', zero: true },
      bars: answer.works.map((w, i) => ({
        name: `${i + 1}: ${w.work}`,
        value: w.expected / 3600,
        low: Math.max(0, 2 * w.expected - w.high) / 3600,
        high: w.high / 3600,
        label: `${(w.expected / 3600).toFixed(1)} h`,
      })),
    }),
  example: {
    works: [
      { work: 'de-nailing', times: '7 min, 11 min, 5 min, 9 min, 8 min', pieces: 24 },
      { work: 'docking and planing', times: '4 min, 6 min, 5 min', pieces: 24 },
    ],
    hourly: 18,
  },
});
