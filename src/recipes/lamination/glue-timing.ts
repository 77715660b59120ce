import { Refusal } from '../../quantities/refusal.js';
import { danger, note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { clockChart, minutes } from './glue-clock.js';
import { printedOpenTime } from './gluing.js';

const openLetter = letter('time', 'open time in this air', { in: 'min' });

// Chemists’ rule of thumb: ten degrees warmer, twice as fast. Makers print tables that differ; theirs decide.
const openHere = formula({
  symbol: 'o',
  gives: openLetter,
  text: 'O 2^((20 - T) / 10)',
  where: {
    O: letter('time', 'open time at 20 °C', { in: 'min' }),
    T: letter('temperature', 'temperature of room and timber'),
  },
  basis: 'estimate',
});

// A billionth is added before rounding down, or 10 / 2.5 could come out as 3 joints by the last binary digit.
const most = formula({
  symbol: 'k',
  gives: letter('count', 'most joints in one batch'),
  text: 'floor((o - c) / p + 10^(-9))',
  where: {
    o: openLetter,
    c: letter('time', 'open time used up by setting the clamps', { in: 'min' }),
    p: letter('time', 'time to spread one joint', { in: 'min' }),
  },
  basis: 'definition',
});

const batchesOf = formula({
  symbol: 'B',
  gives: letter('count', 'batches'),
  text: 'ceil(N / k)',
  where: { N: letter('count', 'joints'), k: letter('count', 'most joints in one batch') },
  basis: 'definition',
});

const left = formula({
  symbol: 'e',
  gives: letter('time', 'open time left over', { in: 'min' }),
  text: 'o - c - k p',
  where: {
    o: openLetter,
    c: letter('time', 'open time used up by setting the clamps', { in: 'min' }),
    k: letter('count', 'joints in the batch'),
    p: letter('time', 'time to spread one joint', { in: 'min' }),
  },
  basis: 'definition',
});

/**
 * Will the glue skin before the clamps are on? How many joints can be spread in one go, and in how many batches a glue-up
 * falls. All joints of a batch are spread one after another and then closed together, so the first waits longest.
 * Without a closed time the clamps must be set within the open time as well; with one they are set within that.
 * Times in; counts, times and a plan of batches out. Source: the working order is common practice, the change with
 * temperature an estimate; open times are the glue maker's.
 * @throws Refusal when not even one joint can be closed in time
 */
export const glueTiming = recipe({
  name: 'glueTiming',
  title: 'Glue-up against the clock',
  topic: 'lamination',
  about:
    'Will the glue skin before the clamps are on? How many joints go in one batch, and how many batches it takes.',
  sources: [],
  inputs: {
    joints: field.count({ symbol: 'N', says: 'joints in the whole glue-up', min: 1, max: 10_000 }),
    perJoint: field.time({
      symbol: 'p',
      says: 'time to spread one joint and lay it ready',
      min: '1 s',
      max: '2 h',
    }),
    openTime: field.time({
      symbol: 'O',
      says: 'how long spread glue stays wet in the open, from its sheet; at 20 °C when a temperature is given',
      above: '0 s',
      max: '24 h',
    }),
    closedTime: field.time({
      says: 'how long a closed joint may wait for pressure, from the glue’s sheet',
      above: '0 s',
      max: '24 h',
      optional: true,
    }),
    temperature: field.temperature({
      symbol: 'T',
      says: 'temperature of room and timber; the times are then taken as printed for 20 °C and corrected',
      min: '0 degC',
      max: '45 degC',
      optional: true,
    }),
    clampsUp: field.time({
      symbol: 'c',
      says: 'time to set all clamps of one batch',
      min: '0 s',
      max: '2 h',
      default: '0 min',
    }),
    hold: field.time({
      says: 'how long the clamps stay on before they serve the next batch',
      min: '0 s',
      max: '7 day',
      default: '30 min',
    }),
  },
  outputs: {
    batches: out.count({ symbol: 'B', says: 'batches' }),
    jointsPerBatch: out.count({ symbol: 'k', says: 'most joints that one batch may have' }),
    spare: out.time({ symbol: 'e', says: 'open time left over when such a batch is closed' }),
    openHere: out.time({ symbol: 'o', says: 'open time in this air' }),
    total: out.time({ says: 'from the first glue to the last clamp off, with one set of clamps' }),
    plan: out.table(
      {
        batch: out.count({ says: 'batch' }),
        joints: out.count({ says: 'joints' }),
        start: out.time({ says: 'first glue' }),
        closed: out.time({ says: 'joints closed' }),
        clampsOff: out.time({ says: 'clamps off' }),
        spare: out.time({ says: 'open time left over' }),
      },
      { says: 'Batches as equal as whole joints allow' },
    ),
  },
  formulas: [openHere, most, batchesOf, left],
  solve: (given, work) => {
    const printed = printedOpenTime();
    if (!work.silent)
      work.say(
        `Printed for PVA glue at 20 °C: ${printed.low / 60} to ${printed.high / 60} min in the open; the maker’s own sheet decides.`,
        printed.citation,
      );
    const here = (time: number, says?: string): number =>
      given.temperature === undefined ? time : work.apply(openHere, { O: time, T: given.temperature }, says);
    const o = here(given.openTime);
    const closed =
      given.closedTime === undefined ? Infinity : here(given.closedTime, 'closed time in this air');
    // A closed time of its own covers the setting of clamps; otherwise that eats into the open time.
    const c = given.closedTime === undefined ? given.clampsUp : 0;
    if (given.clampsUp > closed + 1e-9)
      throw new Refusal({
        field: 'clampsUp',
        says: `got ${minutes(given.clampsUp)}, takes at most the closed time of ${minutes(closed)}${given.temperature === undefined ? '' : ' in this air'}`,
      });
    const k = Math.min(given.joints, work.apply(most, { o, c, p: given.perJoint }));
    if (k < 1) {
      throw new Refusal({
        field: 'perJoint',
        says: `got ${minutes(given.perJoint)}${c > 0 ? ` beside ${minutes(c)} for the clamps` : ''}, takes at most ${minutes(Math.max(0, o - c))}: the glue skins in ${minutes(o)}${given.temperature === undefined ? '' : ' in this air'}, before one joint is closed; take a slower glue, a second pair of hands or cooler air`,
      });
    }
    const B = work.apply(batchesOf, { N: given.joints, k });
    const e = work.apply(left, { o, c, k, p: given.perJoint });
    let clock = 0;
    const plan = Array.from({ length: B }, (_, i) => {
      const joints = Math.floor(given.joints / B) + (i < given.joints % B ? 1 : 0);
      const start = clock;
      const shut = start + joints * given.perJoint;
      clock = shut + given.clampsUp + given.hold;
      return {
        batch: i + 1,
        joints,
        start,
        closed: shut,
        clampsOff: clock,
        spare: o - c - joints * given.perJoint,
      };
    });
    return { batches: B, jointsPerBatch: k, spare: e, openHere: o, total: clock, plan };
  },
  limits: [
    {
      when: (given) => (given.temperature ?? 20) < 10,
      says: 'below about 10 °C white and yellow glue turns chalky and does not hold (common practice; the label prints its own least): warm the timber, not only the air',
    },
    {
      when: (given) => (given.temperature ?? 20) > 35,
      says: 'above about 35 °C the rule that halves the open time with every 10 °C is a guess: try it on scrap',
    },
  ],
  cautions: (given, answer) => [
    ...(answer.plan.some((b) => b.spare < 0.1 * answer.openHere)
      ? [
          danger(
            'less than a tenth of the open time is left: the glue may skin before the joints are closed, and a skinned joint looks sound and fails; make the batches smaller',
          ),
        ]
      : []),
    note(
      'set everything up dry first: clamps open to size, cauls at hand, and the time of one joint taken with a watch',
    ),
    note('a skin shows when a fingertip comes away dry: scrape that joint clean and spread it anew'),
    ...(given.closedTime === undefined
      ? [note('no closed time was given: spreading and clamping together must fit the open time')]
      : []),
  ],
  chart: (given, answer) => clockChart(given, answer),
  example: {
    joints: 14,
    perJoint: '45 s',
    openTime: '10 min',
    temperature: '24 degC',
    clampsUp: '2 min',
    hold: '40 min',
  },
});
