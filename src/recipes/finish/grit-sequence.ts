import { barChart } from '../../charts/bar-chart.js';
import { InputError } from '../../units/input-error.js';
import { danger, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { grits, gritField, type Grit } from './grit.js';

const step = formula({
  symbol: 'q',
  result: variable('ratio', 'how many times finer the next grit is'),
  expression: 'a / b',
  variables: {
    a: variable('thickness', 'grain of the grit before', { unit: 'um' }),
    b: variable('thickness', 'grain of the next grit', { unit: 'um' }),
  },
  basis: 'definition',
});
const leastSteps = formula({
  symbol: 'n',
  result: variable('count', 'steps that no sequence can go below'),
  expression: 'ceil(log(a / b) / log(q) - 10^(-9))',
  variables: {
    a: variable('thickness', 'grain of the first grit', { unit: 'um' }),
    b: variable('thickness', 'grain of the last grit', { unit: 'um' }),
    q: variable('ratio', 'the greatest step allowed'),
  },
  basis: 'geometry',
});

/**
 * Which grits to sand with from a coarse one to a fine one: the fewest, each at most `stepRatio` times finer in grain
 * than the one before, and of those sequences the most even. Sizes are averages of the FEPA (P) series; papers marked
 * without a P follow other series. How large a step may be is common practice: 1.5 for fine work, 2 for floors.
 * @throws InputError when `to` is coarser than `from`, or the grits there are leave too large a gap
 */
export const gritSequence = recipe({
  name: 'gritSequence',
  title: 'Grits from coarse to fine',
  topic: 'finish',
  about:
    'Which grits to sand with, the fewest whose steps are small enough to take the last scratches out. For papers of the FEPA (P) series.',
  sources: [],
  inputs: {
    from: gritField({ label: 'first grit' }),
    to: gritField({ label: 'the last grit' }),
    stepRatio: field.ratio({
      symbol: 'q',
      label: 'greatest step',
      help: 'How many times finer the next grit may be.',
      min: 1.1,
      max: 4,
      default: 1.8,
    }),
    grits: field.list(gritField({ label: 'a grit' }), {
      label: 'grits in stock',
      help: 'Leave it out to choose from all grits of the series.',
      optional: true,
      most: 100,
    }),
  },
  outputs: {
    steps: out.table(
      {
        grit: out.text({ label: 'grit' }),
        grain: out.thickness({ label: 'average grain' }),
        finer: out.ratio({
          label: 'step',
          help: 'How many times finer than the grit before.',
          optional: true,
        }),
      },
      { label: 'Sand in this order' },
    ),
    grades: out.text({ label: 'the sequence' }),
    count: out.count({ label: 'grits' }),
    largestStep: out.ratio({ label: 'the largest step' }),
  },
  formulas: [leastSteps, step],
  solve: (given, trace) => {
    const { from, to, stepRatio } = given;
    if (to.size > from.size)
      throw new InputError({
        field: 'to',
        message: `got ${to.name}, coarser than ${from.name}; takes ${from.name} or a finer grit`,
      });
    const there = [...new Map([from, to, ...(given.grits ?? grits())].map((g) => [g.name, g])).values()].sort(
      (a, b) => b.size - a.size,
    );
    const at = (grit: Grit): number => there.findIndex((g) => g.name === grit.name);
    const owned = there.slice(at(from), at(to) + 1);
    for (const g of owned) if (g.row.read === 'memory') trace.source(g.row.citation);
    trace.source((owned[0] as Grit).row.citation);
    if (from.name !== to.name) trace.evaluate(leastSteps, { a: from.size, b: to.size, q: stepRatio });
    const path = shortest(owned, stepRatio);
    trace.note(
      `${String(path.length)} grits out of the ${String(owned.length)} from ${from.name} to ${to.name}: the fewest whose steps are all at most ${String(stepRatio)}, and the most even of those.`,
    );
    const finer = path
      .slice(1)
      .map((g, i) =>
        trace.evaluate(
          step,
          { a: (path[i] as Grit).size, b: g.size },
          `${(path[i] as Grit).name} to ${g.name}`,
        ),
      );
    return {
      steps: [
        { grit: from.name, grain: from.size },
        ...path.slice(1).map((g, i) => ({ grit: g.name, grain: g.size, finer: finer[i] as number })),
      ],
      grades: path.map((g) => g.name).join(', '),
      count: path.length,
      largestStep: Math.max(1, ...finer),
    };
  },
  cautions: (given) => [
    danger(
      'extract at the tool and wear a fitted mask: wood dust harms lungs and nose; limits run from 1 to 5 mg/m³ by country and wood',
      cite('hse-wood-dust', 'UK limits', { also: cite('osha-wood-dust', 'NIOSH and ACGIH limits') }),
    ),
    note(
      'how large a step may be is common practice, not a published rule; look for scratches under a raking light after each grit',
    ),
    ...(given.to.size < (grits().find((g) => g.name === 'P220') as Grit).size
      ? [
          note(
            'under a film finish there is little to gain past P220, and stain takes less well on finer sanding (common practice)',
            cite('fine-lumber-sanding', 'final grit'),
          ),
        ]
      : []),
  ],
  chart: (_given, answer) =>
    barChart({
      title: 'Grain of each grit',
      subtitle: 'Average of the FEPA series; beside it how many times finer than the one before',
      of: '',
      value: { title: 'Average grain', unit: 'µm' },
      bars: answer.steps.map((s) => ({
        name: s.grit,
        value: s.grain * 1e6,
        label: `${String(Number((s.grain * 1e6).toPrecision(4)))} µm${s.finer === undefined ? '' : `, ${s.finer.toFixed(2)} times finer`}`,
      })),
    }),
  sentence: 'Sand with {grades}.',
  example: { from: 'P80', to: 'P220' },
});

/** The path with the fewest grits; among those the least sum of squared logarithms of its steps. @throws InputError naming the gap */
function shortest(owned: readonly Grit[], stepRatio: number): Grit[] {
  const best: { count: number; uneven: number; before: number }[] = owned.map((_, i) => ({
    count: i === 0 ? 1 : Infinity,
    uneven: 0,
    before: -1,
  }));
  for (let i = 1; i < owned.length; i++) {
    for (let j = 0; j < i; j++) {
      const ratio = (owned[j] as Grit).size / (owned[i] as Grit).size;
      const b = best[j] as (typeof best)[number];
      if (ratio > stepRatio * (1 + 1e-9)) continue;
      const uneven = b.uneven + Math.log(ratio) ** 2;
      const now = best[i] as (typeof best)[number];
      if (b.count + 1 < now.count || (b.count + 1 === now.count && uneven < now.uneven))
        best[i] = { count: b.count + 1, uneven, before: j };
    }
  }
  const gap = best.findIndex((b) => b.count === Infinity);
  const b = owned[gap];
  if (b) {
    const a = owned[gap - 1] as Grit;
    throw new InputError({
      field: 'stepRatio',
      message: `got ${String(stepRatio)}, but from ${a.name} to ${b.name} the grain gets ${(a.size / b.size).toFixed(2)} times finer with no grit between; takes at least that, or a grit between them`,
    });
  }
  const path: Grit[] = [];
  for (let i = owned.length - 1; i >= 0; i = (best[i] as (typeof best)[number]).before)
    path.unshift(owned[i] as Grit);
  return path;
}
