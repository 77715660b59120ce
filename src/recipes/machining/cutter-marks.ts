import { lineChart } from '../../charts/line-chart.js';
import { danger, note, type Caution } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { tableRows } from '../../materials/data-tables.js';

const spindleSpeed = variable('rotation', 'speed of the cutter block', { unit: '1/min' });
const knives = variable('count', 'knives that cut on the same circle');
const feed = variable('speed', 'feed of the timber', { unit: 'mm/min' });
const spacing = variable('length', 'distance from one knife mark to the next', { unit: 'mm' });

const pitch = formula({
  symbol: 'p',
  result: spacing,
  expression: 'v / (z n)',
  variables: { v: feed, z: knives, n: spindleSpeed },
  source: cite('fdm-knife-marks', 'marks from speed, knives and feed'),
});
const marks = formula({
  symbol: 'N',
  result: variable('marks', 'knife marks by length', { unit: '1/in' }),
  expression: '1 / p',
  variables: { p: variable('length', 'distance from one knife mark to the next', { unit: 'in' }) },
  basis: 'definition',
});
const wave = formula({
  symbol: 'h',
  result: variable('length', 'depth of the ripple a knife leaves', { unit: 'um' }),
  expression: 'p^2 / (4 d)',
  variables: {
    p: variable('length', 'distance from one knife mark to the next', { unit: 'um' }),
    d: variable('length', 'cutting circle diameter', { unit: 'um' }),
  },
  basis: 'geometry',
});
const feedFor = formula({
  symbol: 'v_w',
  result: variable('speed', 'feed for the marks wanted', { unit: 'm/min' }),
  expression: 'z n / N_w',
  variables: { z: knives, n: spindleSpeed, N_w: variable('marks', 'marks wanted', { unit: '1/m' }) },
  source: cite('fdm-knife-marks', 'marks from speed, knives and feed, turned round'),
});
const rim = formula({
  symbol: 'u',
  result: variable('speed', 'speed of the cutting edge', { unit: 'm/s' }),
  expression: 'pi d n',
  variables: {
    d: variable('length', 'cutting circle diameter', { unit: 'm' }),
    n: variable('rotation', 'speed of the cutter block', { unit: '1/s' }),
  },
  basis: 'geometry',
});

/** Speed of the cutting edge over which tools of wood-working machines are not made to run, m/s (common practice). */
const fastestRim = 80;

/**
 * How close the knife marks of a planer or moulder stand, how deep the ripple is, and the feed that gives the marks
 * wanted: for choosing a feed that needs little sanding. Knives that do not all reach the same circle leave the marks
 * of fewer; count those that cut. Not for spiral blocks with staggered inserts, whose marks overlap.
 */
export const cutterMarks = recipe({
  name: 'cutterMarks',
  title: 'Knife marks of a thicknesser',
  topic: 'machining',
  about:
    'How close the knife marks stand and how deep the ripple is, from speed, knives and feed, and the feed for the marks wanted. Not for spiral blocks.',
  sources: [],
  inputs: {
    spindleSpeed: field.quantity('rotation', {
      symbol: 'n',
      label: 'cutter block speed',
      help: 'Turns of the cutter block in a minute.',
      above: '0 rpm',
      max: '60000 rpm',
    }),
    knives: field.count({
      symbol: 'z',
      label: 'knives',
      help: 'Knives that cut on the same circle.',
      min: 1,
      max: 24,
    }),
    feed: field.speed({ symbol: 'v', label: 'feed of the timber', above: '0 m/min', max: '300 m/min' }),
    cutterDiameter: field.length({
      symbol: 'd',
      label: 'cutting diameter',
      help: 'Diameter of the circle that the knife edges run on.',
      min: '10 mm',
      max: '1000 mm',
      default: '72 mm',
    }),
    mostFeed: field.speed({
      label: 'fastest feed',
      help: 'Fastest feed that the machine has.',
      above: '0 m/min',
      max: '300 m/min',
      optional: true,
    }),
    wanted: field.quantity('marks', {
      symbol: 'N_w',
      label: 'marks wanted',
      min: '1 1/in',
      max: '200 1/in',
      default: '20 1/in',
    }),
  },
  steps: [pitch, marks, wave, feedFor, rim],
  outputs: {
    pitch: out.length({
      symbol: 'p',
      label: 'knife mark pitch',
      help: 'Distance from one knife mark to the next.',
    }),
    marksPerInch: out.marks({ symbol: 'N', label: 'knife marks by length', unit: '1/in' }),
    waveDepth: out.length({
      symbol: 'h',
      label: 'ripple depth',
      help: 'Depth of the wave that each knife leaves.',
      unit: 'um',
    }),
    feedForWanted: out.speed({
      symbol: 'v_w',
      label: 'feed for marks wanted',
      help: 'Feed speed that gives the marks wanted.',
    }),
    rimSpeed: out.speed({
      symbol: 'u',
      label: 'cutting speed',
      help: 'Speed of the knife edge.',
      unit: 'm/s',
    }),
  },
  limits: [
    {
      when: (_, answer) => answer.rimSpeed > fastestRim,
      message:
        'the edge runs faster than 80 m/s, over which cutters are not made to run (common practice): a slower speed or a smaller cutter, never over the speed engraved on it',
    },
    {
      when: (given, answer) => answer.feedForWanted > (given.mostFeed ?? Infinity) * (1 + 1e-9),
      message: 'the marks wanted would take a feed that the machine does not have',
    },
    {
      when: (given) => given.feed > (given.mostFeed ?? Infinity) * (1 + 1e-9),
      message: 'the machine does not feed as fast as this',
    },
    {
      when: (given, answer) => answer.pitch > given.cutterDiameter / 4,
      message:
        'the ripple is calculated for marks much closer than the cutting circle is wide; here it is a rough figure',
    },
  ],
  cautions: (given, answer) => [
    ...(answer.rimSpeed > fastestRim
      ? [danger('do not start the cutter at this speed: one that runs too fast bursts')]
      : []),
    danger(
      'keep to the machine maker’s least length and greatest cut; never plane timber that a metal detector has not passed',
      cite('club-planer-rules', 'reclaimed lumber'),
    ),
    gradeOf(answer.marksPerInch * 0.0254),
    ...(given.knives > 1
      ? [
          note(
            'knives set a few hundredths of a millimetre apart cut as one: then calculate with one knife (common practice)',
          ),
        ]
      : []),
  ],
  chart: (given, answer) => {
    const perFeed = 1000 / (given.knives * given.spindleSpeed * 60);
    const most = Math.max(given.feed * 60 * 1.6, 2.4 / perFeed);
    const feeds = Array.from({ length: 41 }, (_, i) => (most * i) / 40);
    const grades = tableRows('knife-marks.various');
    const least = (name: string): number =>
      grades.find((r) => r.text('grade').startsWith(name))?.number('low_per_in') as number;
    const [fine, medium] = [25.4 / least('highest'), 25.4 / least('medium')];
    return lineChart({
      title: 'Spacing of the knife marks against feed',
      subtitle: `${String(given.knives)} ${given.knives === 1 ? 'knife' : 'knives'} at ${String(Math.round(given.spindleSpeed * 60))} rpm; shaded: highest and medium grade of millwork`,
      x: { title: 'Feed', unit: 'm/min', values: feeds, domain: [0, most] },
      y: { title: 'Distance between marks', unit: 'mm' },
      series: [{ name: 'spacing', values: feeds.map((f) => f * perFeed) }],
      // The two overlap, so the finer grade comes out darker.
      bands: [
        { name: 'highest grade', low: feeds.map(() => 0), high: feeds.map(() => fine) },
        { name: 'medium grade', low: feeds.map(() => 0), high: feeds.map(() => medium) },
      ],
      rules: [
        { y: fine, label: `below: highest grade, ${String(least('highest'))} marks an inch` },
        { y: medium, label: `below: medium grade, ${String(least('medium'))} marks an inch` },
      ],
      marks: [
        {
          x: given.feed * 60,
          y: answer.pitch * 1000,
          label: `${String(Number((answer.pitch * 1000).toPrecision(3)))} mm`,
        },
      ],
    });
  },
  sentence: 'The knife marks stand {pitch} apart and {waveDepth} deep.',
  example: { spindleSpeed: '6000 rpm', knives: 4, feed: '60 ft/min' },
});

/** Where the marks stand among the printed grades of millwork. */
function gradeOf(perInch: number): Caution {
  // Rounded, so that 20 marks calculated as 19.999 999 999 are still 20.
  const marks = Number(perInch.toFixed(6));
  // The table goes from the low grade, which has no lower end, to the highest.
  const row = tableRows('knife-marks.various')
    .filter((r) => r.text('grade').includes('grade millwork'))
    .reduce((grade, finer) => (marks >= (finer.number('low_per_in') as number) ? finer : grade));
  return note(
    `${perInch.toFixed(1)} marks an inch: ${row.text('grade')}; a hardwood to be finished needs 20 or more`,
    row.citation,
  );
}
