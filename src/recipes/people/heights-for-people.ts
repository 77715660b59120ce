import { cumulativeNormal } from 'vega-statistics';
import { lineChart } from '../../charts/line-chart.js';
import { danger, estimate, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { accessWords } from './access-heights.js';
import { bodyOf, people, schoolSize, uses, type People, type Use } from './body-heights.js';

const mm = (label: string) => variable('length', label, { unit: 'mm' });

const bestHeight = formula({
  symbol: 'h_b',
  result: mm('height that suits the average person'),
  expression: 'm + s - (o_1 + o_2) / 2',
  variables: {
    m: mm('average of the body measure'),
    s: mm('shoes'),
    o_1: mm('least below the body measure'),
    o_2: mm('most below it'),
  },
  basis: 'definition',
});

/** Share of people of one kind whom a height suits: their measure with shoes lies between the offsets above it. */
function suited(who: 'men' | 'women', use: Use, height: number, shoes: number): number {
  const { mean, deviation } = bodyOf(who, uses[use].measure);
  const below = (x: number): number =>
    x === Infinity ? 1 : x === -Infinity ? 0 : cumulativeNormal(x, mean + shoes, deviation);
  return Math.max(0, below(height + uses[use].most) - below(height + uses[use].least));
}

const shareOf = (who: People, use: Use, height: number, shoes: number): number =>
  who === 'adults'
    ? (suited('men', use, height, shoes) + suited('women', use, height, shoes)) / 2
    : suited(who, use, height, shoes);

/**
 * The share of adults whom a height of counter, bench, seat or table suits, the height that suits most, what published
 * access rules ask for, and school sizes by a child's lower leg. Body measures vary normally; adults are half women.
 * Lengths in, a share out. Source: published body measures; how far a surface lies from the elbow is common practice.
 */
export const heightsForPeople = recipe({
  name: 'heightsForPeople',
  title: 'Heights that suit people',
  topic: 'people',
  about:
    'Whom a height of counter, bench, stool or table suits, by published body measures; the height that suits most; access for wheelchair users; school sizes by the lower leg.',
  sources: [
    cite('bodyspace-tables', 'body measures'),
    cite('bodyspace-us-adults', 'elbow height'),
    cite('ada-standards-2010', '306, 902 and 904'),
  ],
  inputs: {
    use: field.choice(Object.keys(uses) as Use[], { label: 'what it is', default: 'standing, light work' }),
    height: field.length({
      symbol: 'h',
      label: 'height',
      help: 'Height to check; of a table to sit at, the room under it.',
      above: '0 mm',
      max: '2 m',
    }),
    people: field.choice(people, { label: 'for whom', default: 'adults' }),
    shoes: field.length({
      symbol: 's',
      label: 'thickness of the shoes',
      min: '0 mm',
      max: '100 mm',
      default: '25 mm',
    }),
    lowerLeg: field.length({
      label: 'lower leg',
      help: 'Of a child who sits in shoes: from the floor to the back of the knee, for the school size.',
      min: '260 mm',
      max: '600 mm',
      optional: true,
    }),
  },
  outputs: {
    sentence: out.text({ label: 'in one sentence' }),
    share: out.share({ label: 'share suited', help: 'Share of people whom the height suits.' }),
    best: out.length({ label: 'best height', help: 'Height that suits the average person.' }),
    bestShare: out.share({ label: 'share at best', help: 'Share of people whom the best height suits.' }),
    low: out.length({ label: '5th percentile', help: 'Body measure of the 5th percentile, without shoes.' }),
    high: out.length({
      label: '95th percentile',
      help: 'Body measure of the 95th percentile, without shoes.',
    }),
    access: out.text({ label: 'access for wheelchair users' }),
    schoolSeat: out.length({
      label: 'school seat',
      help: 'Height of a school seat for that leg.',
      optional: true,
    }),
    schoolTable: out.length({
      label: 'school table',
      help: 'Height of a school table for that leg.',
      optional: true,
    }),
  },
  formulas: [bestHeight],
  solve: (given, trace) => {
    const { use, height, shoes } = given;
    const rule = uses[use];
    const who = given.people === 'adults' ? (['men', 'women'] as const) : ([given.people] as const);
    const bodies = who.map((w) => bodyOf(w, rule.measure));
    for (const body of bodies) trace.source(body.citation);
    const mean = bodies.reduce((s, b) => s + b.mean, 0) / bodies.length;
    // Where only one side counts, a seat or a knee room, the most people are suited at its comfortable end.
    const [o_1, o_2] = [
      Number.isFinite(rule.least) ? rule.least : rule.most,
      Number.isFinite(rule.most) ? rule.most : rule.least,
    ];
    const best = trace.evaluate(bestHeight, { m: mean, s: shoes, o_1, o_2 });
    const share = shareOf(given.people, use, height, shoes);
    trace.note(
      `Suits where the ${rule.measure} with shoes is ${rule.words}: ${(share * 100).toFixed(0)} % of ${given.people}.`,
    );
    const access = accessWords(use, height);
    const school = given.lowerLeg === undefined ? undefined : schoolSize(given.lowerLeg);
    if (school) trace.source(school.citation);
    return {
      sentence: `${(height * 1000).toFixed(0)} mm suits ${(share * 100).toFixed(0)} % of ${given.people} (${use}); the average person is best served by ${(best * 1000).toFixed(0)} mm.`,
      share,
      best,
      bestShare: shareOf(given.people, use, best, shoes),
      low: Math.min(...bodies.map((b) => b.fifth)),
      high: Math.max(...bodies.map((b) => b.ninetyFifth)),
      access,
      schoolSeat: school?.seat,
      schoolTable: school?.table,
    };
  },
  cautions: (given) => [
    danger(
      'follow the local building code and access rules where the public is served: they decide heights, clear floor and knee room, not this page',
    ),
    estimate(
      'how far a work surface lies below the elbow is common practice: 50 to 100 mm for light work, 100 to 250 for heavy, 50 to 100 above for fine work',
    ),
    ...(given.use === 'seat'
      ? [
          note(
            'a seat too high presses the thighs, one too low only folds the knees: rather 20 mm too low, with a foot rail on a high stool',
          ),
        ]
      : []),
    note(
      'body measures are of British adults, elbow heights of American ones, who are 15 mm taller on average; other people and children differ: try the height with a board on blocks before you cut the legs',
    ),
  ],
  chart: (given, answer) => {
    const centre = answer.best * 1000;
    const xs = Array.from({ length: 81 }, (_, i) => centre - 300 + (600 * i) / 80).filter((x) => x > 0);
    return lineChart({
      title: 'Share of people whom a height suits',
      subtitle: answer.sentence,
      x: { title: 'Height', unit: 'mm', values: xs },
      y: { title: 'Suited', unit: '%', domain: [0, 100] },
      series: (['men', 'women', 'adults'] as const).map((who) => ({
        name: who,
        values: xs.map((x) => 100 * shareOf(who, given.use, x / 1000, given.shoes)),
      })),
      rules: [{ x: given.height * 1000, label: 'this height' }],
      points: false,
    });
  },
  example: { use: 'standing, light work', height: '950 mm' },
});
