import { moreSupport, railsOutward, thickerTop } from './rail-remedies.js';
import { note } from '../../engine/caution.js';
import { out, type RawOutput } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { nullTrace } from '../../engine/trace.js';
import { beamChart } from './beam-chart.js';
import { greatestMoment, greatestSag, worstOf } from './beam-worst.js';
import { acrossFormulas } from './cross-grain-properties.js';
import { longTermFactor } from '../../materials/working-stress/use-category.js';
import { loadBearingCautions, ownWeightOf } from './loads-and-creep.js';
import { sagLimitText } from './sag-limit.js';
import { materialFormulas } from './material-formulas.js';
import { baysOf, lineOf, topCases, topInputs, type Bay, type TopGiven } from './top-cases.js';

const outputs = {
  sag: out.length({ label: 'long-term sag', help: 'Greatest sag in the long run.' }),
  firstSag: out.length({ label: 'first sag', help: 'Greatest sag when the load comes on.' }),
  sagBetween: out.length({
    label: 'sag between supports',
    help: 'Greatest sag between supports in the long run.',
  }),
  sagAtEnd: out.length({
    label: 'sag of overhang',
    help: 'Greatest sag of an overhanging end in the long run.',
    optional: true,
  }),
  allowed: out.length({ label: 'sag allowed', help: 'Sag allowed where it comes nearest to its limit.' }),
  stress: out.stress({ label: 'greatest bending stress' }),
  ok: out.flag({ label: 'verdict', help: 'Whether sag and stress stay under their limits.' }),
  verdict: out.text({ label: 'why' }),
  basis: out.text({ label: 'the timber’s figures' }),
} as const;

/**
 * How far a top or a shelf sags between its rails and where it hangs over them, with the load put where it does most
 * harm. Grain along the span or, as between two long rails, across it.
 */
export const topSag = recipe({
  name: 'topSag',
  title: 'Sag of a top between its rails',
  topic: 'rails',
  about:
    'How far a top or shelf sags between its rails and past the last of them, and the stress in it. The load stands where it does most harm. For other supports use beam.',
  sources: [cite('fpl-gtr-190', 'ch. 9, Eq. 9-2, Table 9-1, p. 9-2')],
  inputs: topInputs,
  outputs,
  formulas: [lineOf, ownWeightOf, longTermFactor, ...acrossFormulas, ...materialFormulas],
  solve: (given, trace): RawOutput<typeof outputs> => {
    const { cases, material, facts } = topCases(given, trace);
    const bays = baysOf(given);
    let [between, end, stress, first, lasting] = [0, 0, 0, 0, 0];
    let nearest = { use: 0, allowed: allowedIn(given, (bays[0] as Bay).length, false), where: '' };
    for (const top of cases) {
      stress = Math.max(stress, greatestMoment(top.first) * facts.stressByMoment);
      for (const bay of bays) {
        first = Math.max(first, greatestSag(top.first, bay.from, bay.to));
        const sag = greatestSag(top.lasting, bay.from, bay.to);
        lasting = Math.max(lasting, sag);
        if (bay.over) end = Math.max(end, sag);
        else between = Math.max(between, sag);
        const allowed = allowedIn(given, bay.length, bay.over);
        if (sag / allowed > nearest.use)
          nearest = {
            use: sag / allowed,
            allowed,
            where: bay.over ? 'at an end that hangs over' : 'between supports',
          };
      }
    }
    trace.note(
      `Solved with the load over all, over each bay alone and over the ends alone${given.edgeLoad > 0 ? ', the single load at each end and in the middle of each bay' : ''}: ${cases.length} cases.`,
    );
    const limit = sagLimitText(given.limit);
    const tooFar = nearest.use > 1 + 1e-9;
    const tooMuch = stress > (material.bending ?? Infinity);
    const verdict = [
      tooFar
        ? `sags too far ${nearest.where}: ${mm(nearest.use * nearest.allowed)} where ${limit} allows ${mm(nearest.allowed)}`
        : `sag is ${Math.round(nearest.use * 100)} % of what ${limit} allows`,
      material.bending === undefined
        ? 'stress not checked'
        : `bending stress is ${Math.round((stress / material.bending) * 100)} % of what is allowed`,
    ].join('; ');
    return {
      sag: lasting,
      firstSag: first,
      sagBetween: between,
      sagAtEnd: bays.some((b) => b.over) ? end : undefined,
      allowed: nearest.allowed,
      stress,
      ok: !tooFar && !tooMuch,
      verdict,
      basis: material.basis,
    };
  },
  cautions: (given) => [
    ...loadBearingCautions,
    ...(given.grain === 'across'
      ? [
          note(
            'across the grain timber has a tenth or less of its stiffness, and splits: keep such overhangs short, or put a batten or a breadboard end under them, fixed so that the top can move',
          ),
        ]
      : []),
    note(
      'the top is taken as one board of full width that rests on its rails; a single load is spread over the whole width, so stand a heavy thing near the middle of the width',
    ),
  ],
  chart: (given) => {
    const worst = topCases(given, nullTrace)
      .cases.map((top) => ({
        top,
        of: worstOf(top.first),
        lasting: Math.abs(worstOf(top.lasting).sag.value),
      }))
      .reduce((a, b) => (b.lasting > a.lasting ? b : a));
    const first = Math.abs(worst.of.sag.value);
    return beamChart(worst.top.first, worst.of, first === 0 ? 1 : worst.lasting / first);
  },
  sentence: (_given, out) => (out.ok ? 'It holds: the {verdict}.' : 'The top {verdict}.'),
  mending: {
    fails: (_given, out) => !out.ok,
    remedies: [
      moreSupport<typeof topInputs, number>(
        (position) => position,
        (position) => position,
        'put another rail under the middle of the longest bay',
      ),
      thickerTop,
      ...railsOutward,
    ],
    then: 'it sags {sag}',
  },
  example: {
    length: '1950 mm',
    width: '640 mm',
    thickness: '40 mm',
    supports: ['200 mm', '1600 mm'],
    load: '1.5 kPa',
    edgeLoad: '800 N',
    grade: 'C16',
    category: 'hall',
  },
});

const allowedIn = (given: TopGiven, length: number, over: boolean): number =>
  given.limit.of === 'length' ? given.limit.most : ((over ? 2 : 1) * length) / given.limit.ratio;

const mm = (m: number): string => `${(m * 1000).toFixed(1)} mm`;
