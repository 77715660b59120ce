import { fullest, slowerGlue, tooTight } from './glue-remedies.js';
import { InputError } from '../../units/input-error.js';
import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { clockChart, minutes } from './glue-clock.js';
import { printedOpenTime } from './gluing-data.js';

const openLetter = variable('time', 'open time in this air', { unit: 'min' });

// Chemists’ rule of thumb: ten degrees warmer, twice as fast. Makers print tables that differ; theirs decide.
export const openHere = formula({
  symbol: 'o',
  result: openLetter,
  expression: 'O 2^((20 - T) / 10)',
  empirical: true,
  variables: {
    O: variable('time', 'open time at 20 °C', { unit: 'min' }),
    T: variable('temperature', 'temperature of room and timber', { unit: 'degC' }),
  },
  basis: 'estimate',
});

// A billionth is added before rounding down, or 10 / 2.5 could come out as 3 joints by the last binary digit.
const most = formula({
  symbol: 'k',
  result: variable('count', 'most joints in one batch'),
  expression: 'floor((o - c) / p + 10^(-9))',
  variables: {
    o: openLetter,
    c: variable('time', 'open time used up by setting the clamps', { unit: 'min' }),
    p: variable('time', 'time to spread one joint', { unit: 'min' }),
  },
  basis: 'definition',
});

const batchesOf = formula({
  symbol: 'B',
  result: variable('count', 'batches'),
  expression: 'ceil(N / k)',
  variables: { N: variable('count', 'joints'), k: variable('count', 'most joints in one batch') },
  basis: 'definition',
});

const left = formula({
  symbol: 'e',
  result: variable('time', 'open time left over', { unit: 'min' }),
  expression: 'o - c - k p',
  variables: {
    o: openLetter,
    c: variable('time', 'open time used up by setting the clamps', { unit: 'min' }),
    k: variable('count', 'joints in the batch'),
    p: variable('time', 'time to spread one joint', { unit: 'min' }),
  },
  basis: 'definition',
});

/**
 * Will the glue skin before the clamps are on? How many joints can be spread in one go, and in how many batches a glue-up
 * falls. All joints of a batch are spread one after another and then closed together, so the first waits longest.
 * Without a closed time the clamps must be set within the open time as well; with one they are set within that.
 * Times in; counts, times and a plan of batches out. Source: the working order is common practice, the change with
 * temperature an estimate; open times are the glue maker's.
 * @throws InputError when not even one joint can be closed in time
 */
export const glueTiming = recipe({
  name: 'glueTiming',
  title: 'Glue-up against the clock',
  topic: 'lamination',
  about:
    'Will the glue skin before the clamps are on? How many joints go in one batch, and how many batches it takes.',
  sources: [],
  inputs: {
    joints: field.count({
      symbol: 'N',
      label: 'joints',
      help: 'Joints in the whole glue-up.',
      min: 1,
      max: 10_000,
    }),
    perJoint: field.time({
      symbol: 'p',
      label: 'time per joint',
      help: 'Time to spread one joint and lay it ready.',
      min: '1 s',
      max: '2 h',
    }),
    openTime: field.time({
      symbol: 'O',
      label: 'open time',
      help: 'How long spread glue stays wet in the open, from its data sheet; at 20 °C when a temperature is given.',
      above: '0 s',
      max: '24 h',
    }),
    closedTime: field.time({
      label: 'closed time',
      help: 'How long a closed joint may wait for pressure, from the glue’s data sheet.',
      above: '0 s',
      max: '24 h',
      optional: true,
    }),
    temperature: field.temperature({
      symbol: 'T',
      label: 'temperature',
      help: 'Of air and timber; the times are then taken as printed for 20 °C and corrected.',
      min: '0 degC',
      max: '45 degC',
      optional: true,
    }),
    clampsUp: field.time({
      symbol: 'c',
      label: 'clamping time',
      help: 'Time to set all clamps of one batch.',
      min: '0 s',
      max: '2 h',
      default: '0 min',
    }),
    hold: field.time({
      label: 'hold',
      help: 'How long the clamps stay on before they serve the next batch.',
      min: '0 s',
      max: '7 day',
      default: '30 min',
    }),
  },
  outputs: {
    batches: out.count({ symbol: 'B', label: 'batches' }),
    jointsPerBatch: out.count({
      symbol: 'k',
      label: 'joints per batch',
      help: 'Most joints that one batch may have.',
    }),
    spare: out.time({
      symbol: 'e',
      label: 'spare time',
      help: 'Open time left over when such a batch is closed.',
    }),
    openHere: out.time({ symbol: 'o', label: 'open time here', help: 'Open time at this temperature.' }),
    total: out.time({
      label: 'time in all',
      help: 'From the first glue to the last clamp off, with one set of clamps.',
    }),
    plan: out.table(
      {
        batch: out.count({ label: 'batch' }),
        joints: out.count({ label: 'joints' }),
        start: out.time({ label: 'first glue' }),
        closed: out.time({ label: 'joints closed' }),
        clampsOff: out.time({ label: 'clamps off' }),
        spare: out.time({ label: 'open time left over' }),
      },
      { label: 'Batches', help: 'As equal as whole joints allow.' },
    ),
  },
  formulas: [openHere, most, batchesOf, left],
  solve: (given, trace) => {
    const printed = printedOpenTime();
    if (!trace.silent)
      trace.note(
        `Printed for PVA glue at 20 °C: ${printed.low / 60} to ${printed.high / 60} min in the open; the maker’s own sheet decides.`,
        printed.citation,
      );
    const here = (time: number, label?: string): number =>
      given.temperature === undefined
        ? time
        : trace.evaluate(openHere, { O: time, T: given.temperature }, label);
    const o = here(given.openTime);
    const closed =
      given.closedTime === undefined ? Infinity : here(given.closedTime, 'closed time in this air');
    // A closed time of its own covers the setting of clamps; otherwise that eats into the open time.
    const c = given.closedTime === undefined ? given.clampsUp : 0;
    if (given.clampsUp > closed + 1e-9)
      throw new InputError({
        field: 'clampsUp',
        message: `got ${minutes(given.clampsUp)}, takes at most the closed time of ${minutes(closed)}${given.temperature === undefined ? '' : ' in this air'}`,
      });
    const k = Math.min(given.joints, trace.evaluate(most, { o, c, p: given.perJoint }));
    if (k < 1) {
      throw new InputError({
        field: 'perJoint',
        message: `got ${minutes(given.perJoint)}${c > 0 ? ` beside ${minutes(c)} for the clamps` : ''}, takes at most ${minutes(Math.max(0, o - c))}: the glue skins in ${minutes(o)}${given.temperature === undefined ? '' : ' in this air'}, before one joint is closed; take a slower glue, a second pair of hands or cooler air`,
      });
    }
    const B = trace.evaluate(batchesOf, { N: given.joints, k });
    const e = trace.evaluate(left, { o, c, k, p: given.perJoint });
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
      message:
        'below about 10 °C white and yellow glue turns chalky and does not hold (common practice; the label prints its own least): warm the timber, not only the air',
    },
    {
      when: (given) => (given.temperature ?? 20) > 35,
      message:
        'above about 35 °C the rule that halves the open time with every 10 °C is a guess: try it on scrap',
    },
  ],
  cautions: (given, answer) => [
    ...(tooTight(answer)
      ? [
          note(
            'make the batches smaller: less than a tenth of the open time is left, and a joint that skinned before it was closed looks sound and fails',
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
  sentence: (_given, out) => {
    const { joints, left } = fullest(out);
    return `${out.batches === 1 ? `Glue all ${joints} joints at once` : `Glue {batches} batches of ${joints} joints at most`}, with ${left} to spare${tooTight(out) ? ': too tight' : ''}.`;
  },
  mending: {
    fails: (_given, out) => tooTight(out),
    remedies: slowerGlue,
  },
  example: {
    joints: 14,
    perJoint: '45 s',
    openTime: '10 min',
    temperature: '24 degC',
    clampsUp: '2 min',
    hold: '40 min',
  },
});
