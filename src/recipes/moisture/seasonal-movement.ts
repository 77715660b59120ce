import { field } from '../../engine/field.js';
import { estimate, note, outOfRange } from '../../engine/caution.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { nullTrace } from '../../engine/trace.js';
import { timberField } from '../../materials/timber-field.js';
import { monthNames, type Climate } from '../../materials/climate.js';
import {
  coefficientSource,
  atEnd,
  moveAcross,
  movementFormulas,
  ruleFor,
  saturationOf,
  spreadCautions,
} from './movement-model.js';
import { climateField } from './climate-field.js';
import { diffusion, lagged, lagRule, sealings } from './emc-lag.js';
import { slabModes, slabMoisture, slowingOf } from './slab-lag.js';
import { outsideTable, sorptionSource } from './sorption.js';
import { cutField, cutWords, moistureOf, optionalStateField } from './wood-state.js';
import { yearChart } from './year-chart.js';

/** How the air of a place was printed, where that is not the mean of the whole day. */
const placeDoubt = ({ place, months, row }: Climate) =>
  row.doubt !== '' && months.some((m) => typeof m !== 'number') ? [note(`${place}: ${row.doubt}`)] : [];

/**
 * A year in the life of a board or top: the air of twelve months, the moisture of the wood that lags behind it, and the width it
 * has in each. For fixing allowances and for choosing the day to fit a drawer. The lag is an estimate: see its caution.
 */
export const seasonalMovement = recipe({
  name: 'seasonalMovement',
  title: 'Seasonal movement of a top',
  topic: 'moisture',
  about:
    'Width of a board or top month by month, from twelve months of air: wood follows the air by diffusion across its thickness, slowed by its finish. Give the air of the room it will stand in; the table of places is outdoor air under cover.',
  sources: [coefficientSource],
  inputs: {
    width: field.length({
      label: 'width',
      help: 'Width across the grain as measured.',
      above: '0 mm',
      max: '100 m',
    }),
    thickness: field.length({ label: 'thickness', above: '0 mm', max: '1 m' }),
    timber: timberField({
      needs: ['movement', 'shrinkage'],
      label: 'timber',
      help: 'A species, or a group for a range.',
    }),
    cut: cutField({
      label: 'cut',
      help: 'How it was sawn, or the angle of the rings to the face.',
      default: 'flat-sawn',
    }),
    climate: climateField('climate'),
    sealing: field.choice(Object.keys(sealings) as (keyof typeof sealings)[], {
      label: 'sealing',
      help: 'Bare, oiled, varnished on all faces, or open to the air on one face only.',
      default: 'bare',
    }),
    lag: field.time({
      label: 'lag',
      help: 'Time constant; give it in place of the one calculated from thickness and sealing.',
      min: '0 s',
      max: '1e6 day',
      optional: true,
    }),
    madeAt: optionalStateField('moisture when made', 'the mean of the year'),
  },
  outputs: {
    widest: out.length({ label: 'greatest width', help: 'Greatest width in the year.' }),
    narrowest: out.length({ label: 'least width', help: 'Least width in the year.' }),
    swing: out.length({ label: 'difference between the two' }),
    swingLow: out.length({ label: 'swing, low', help: 'Lower end of what is expected.' }),
    swingHigh: out.length({ label: 'swing, high', help: 'Upper end of what is expected.' }),
    widestIn: out.text({ label: 'widest month', help: 'Month in which it is widest.' }),
    narrowestIn: out.text({ label: 'narrowest month', help: 'Month in which it is narrowest.' }),
    driest: out.moisture({
      label: 'least moisture',
      help: 'Least moisture content of the wood in the year.',
    }),
    wettest: out.moisture({
      label: 'greatest moisture',
      help: 'Greatest moisture content of the wood in the year.',
    }),
    timeConstant: out.time({
      label: 'lag',
      help: 'Time constant with which the wood follows the air.',
      unit: 'day',
    }),
    months: out.table(
      {
        month: out.text({ label: 'month' }),
        airMoisture: out.moisture({
          label: 'moisture in this air',
          help: 'Moisture content that the air would bring the wood to.',
        }),
        moisture: out.moisture({ label: 'moisture of the wood' }),
        width: out.length({ label: 'width' }),
      },
      { label: 'Month by month' },
    ),
  },
  formulas: [lagRule, ...movementFormulas],
  solve: (given, trace) => {
    const s = slowingOf(given.thickness, given.sealing);
    const tau = given.lag ?? trace.evaluate(lagRule, { s, t: given.thickness, d: diffusion });
    if (given.lag !== undefined)
      trace.note(`The lag is given: a time constant of ${Number((given.lag / 86400).toPrecision(3))} days.`);
    const air = given.climate.moisture;
    const wood =
      given.lag === undefined
        ? slabMoisture(air, slabModes(given.thickness, given.sealing))
        : lagged(air, given.lag);
    const mean = air.reduce((a, b) => a + b, 0) / 12;
    trace.note(
      'The air runs straight from the middle of one month to the middle of the next; the wood closes on it at a rate of the gap divided by the time constant, and the year repeats.',
    );
    const { place } = given.climate;
    if (place) trace.source(place.row.citation);
    if (!place || place.months.some((m) => typeof m !== 'number')) trace.source(sorptionSource);
    const start = given.madeAt === undefined ? mean : moistureOf(trace, given.madeAt, 'madeAt');
    const [dry, wet] = [Math.min(...wood), Math.max(...wood)];
    const f = saturationOf(given.timber);
    const piece = { width: given.width, timber: given.timber, cut: given.cut };
    // One rule for the whole year, or the widths would jump where the range of the coefficients ends.
    const rule = ruleFor(given.timber, given.cut, Math.min(start, dry, f), Math.min(Math.max(start, wet), f));
    const at = (m: number) => moveAcross(nullTrace, piece, start, m, rule);
    const widths = wood.map((m) => given.width + at(m).change);
    moveAcross(trace, piece, dry, wet, rule);
    const [narrowest, widest] = [Math.min(...widths), Math.max(...widths)];
    const swing = widest - narrowest;
    const swingWith = (end: 0 | 1): number => {
      const one = atEnd(rule, given.timber, end);
      return (
        moveAcross(nullTrace, piece, start, wet, one).change -
        moveAcross(nullTrace, piece, start, dry, one).change
      );
    };
    return {
      widest,
      narrowest,
      swing,
      swingLow: swingWith(0),
      swingHigh: swingWith(1),
      widestIn: monthNames[widths.indexOf(widest)] as string,
      narrowestIn: monthNames[widths.indexOf(narrowest)] as string,
      driest: dry,
      wettest: wet,
      timeConstant: tau,
      months: monthNames.map((month, i) => ({
        month,
        airMoisture: air[i] as number,
        moisture: wood[i] as number,
        width: widths[i] as number,
      })),
    };
  },
  cautions: (given) => [
    ...spreadCautions([given]),
    estimate(
      `the lag is an estimate: diffusion of ${diffusion.toFixed(1)} mm² a day across the grain and a slowing of ${sealings[given.sealing]} at 25 mm for "${given.sealing}"; a threefold error either way is possible, so look at the swing with half and double the lag`,
    ),
    ...(given.climate.place
      ? [
          note(
            'the table of places is the air outdoors under cover: a heated room is far drier in winter, so measure the air where the piece will stand',
          ),
          ...placeDoubt(given.climate.place),
        ]
      : []),
    ...(given.climate.outside ? [outOfRange(outsideTable, sorptionSource)] : []),
  ],
  chart: (given, answer) =>
    yearChart({
      title: `The year in ${(given.width * 1000).toFixed(0)} mm of ${given.timber.name}, ${cutWords(given.cut)}`,
      place: given.climate.name,
      months: answer.months,
    }),
  sentence: (_given, out) =>
    out.swing === 0
      ? 'It keeps its width over the year: {narrowest}.'
      : 'It moves {swing} over the year: narrowest in {narrowestIn}, widest in {widestIn}.',
  example: {
    width: '640 mm',
    thickness: '40 mm',
    timber: 'white oak',
    climate: 'winter 45 %, summer 70 %',
    sealing: 'oiled',
  },
});
