import { cumulativeNormal, densityNormal } from 'vega-statistics';
import { lineChart } from '../../charts/lineChart.js';
import { note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { Refusal } from '../../quantities/refusal.js';
import { nanometres } from '../../recipe/nanometre.js';

const mm = (says: string) => letter('length', says, { in: 'mm' });

const clearance = formula({
  symbol: 'c',
  gives: mm('clearance on average: slot less part'),
  text: 'S - P',
  where: { S: mm('size of the slot'), P: mm('size of the part') },
  basis: 'definition',
});
const spreadOf = formula({
  symbol: 'sigma',
  gives: mm('standard deviation of the clearance'),
  text: 'sqrt(t_S^2 + t_P^2) / z',
  where: {
    t_S: mm('tolerance of the slot, plus and minus'),
    t_P: mm('tolerance of the part, plus and minus'),
    z: letter('ratio', 'standard deviations in a tolerance'),
  },
  basis: 'definition',
});
const aimOf = formula({
  symbol: 'P_0',
  gives: mm('size to plane the part to'),
  text: 'S - (c_1 + c_2) / 2',
  where: {
    S: mm('size of the slot'),
    c_1: mm('tightest clearance that goes in'),
    c_2: mm('loosest clearance that holds'),
  },
  basis: 'geometry',
});

const sized = (says: string) =>
  field.group(
    {
      size: field.length({ says: 'its size', above: '0 mm', max: '5 m' }),
      plusMinus: field.length({ says: 'how far it comes out over or under', min: '0 mm', max: '100 mm' }),
    },
    { says },
  );

/**
 * The chance that a spline, tenon or half lap goes into its slot and holds there, when both come out a little over or
 * under; and the size to aim for.
 */
export const jointFit = recipe({
  name: 'jointFit',
  title: 'Will the joint go together',
  topic: 'joinery',
  about:
    'The chance that a spline, tenon or lap goes into its slot and is not loose, when both sizes vary a little; and the size to plane to. Sizes are taken to vary normally and apart from each other.',
  sources: [],
  inputs: {
    slot: sized('the slot, mortise or housing'),
    part: sized('the spline, tenon or lap'),
    tightest: field.length({
      says: 'least clearance that still goes in; less than nought for a part that may be pressed',
      min: '-5 mm',
      max: '50 mm',
      default: '0 mm',
    }),
    loosest: field.length({
      says: 'greatest clearance that the glue still bridges',
      min: '-5 mm',
      max: '50 mm',
      default: '0.15 mm',
    }),
    sigmas: field.ratio({
      says: 'standard deviations in a plus-or-minus: 2 where one piece in twenty lies outside it, 3 where one in 370 does',
      min: 0.5,
      max: 6,
      default: 2,
    }),
    joints: field.count({ says: 'joints that must all go together', min: 1, max: 10_000, default: 1 }),
  },
  outputs: {
    chanceFits: out.share({ says: 'chance that it goes in and holds' }),
    chanceJams: out.share({ says: 'chance that it will not go in' }),
    chanceLoose: out.share({ says: 'chance that it is loose' }),
    chanceAll: out.share({ says: 'chance that all the joints fit' }),
    clearance: out.length({ says: 'clearance on average' }),
    spread: out.length({ says: 'standard deviation of the clearance' }),
    aim: out.length({ says: 'size to plane the part to' }),
    chanceAtAim: out.share({ says: 'chance that it fits when planed to that size' }),
  },
  formulas: [clearance, spreadOf, aimOf],
  solve: (given, work) => {
    const { slot, part, tightest, loosest } = given;
    if (loosest <= tightest)
      throw new Refusal({
        field: 'loosest',
        says: `got ${(loosest * 1000).toFixed(3)} mm, takes more than the tightest clearance of ${(tightest * 1000).toFixed(3)} mm`,
      });
    const c = work.apply(clearance, { S: slot.size, P: part.size });
    const sd = work.apply(spreadOf, { t_S: slot.plusMinus, t_P: part.plusMinus, z: given.sigmas });
    const aim = work.apply(aimOf, { S: slot.size, c_1: tightest, c_2: loosest });
    if (aim <= 0)
      throw new Refusal({ field: 'slot', says: 'the clearances wanted leave no part; takes a larger slot' });
    const jams = below(tightest, c, sd);
    const loose = below(-loosest, -c, sd);
    const fits = Math.max(0, 1 - jams - loose);
    work.say(
      `Chances from the normal distribution of the clearance, between ${(tightest * 1000).toFixed(2)} and ${(loosest * 1000).toFixed(2)} mm.`,
    );
    const middle = (tightest + loosest) / 2;
    return {
      chanceFits: fits,
      chanceJams: jams,
      chanceLoose: loose,
      chanceAll: fits ** given.joints,
      clearance: c,
      spread: sd,
      aim,
      chanceAtAim: Math.max(0, 1 - below(tightest, middle, sd) - below(-loosest, -middle, sd)),
    };
  },
  cautions: [
    note(
      'how tight a joint goes in and what glue bridges are common practice: 0 to 0.15 mm for white glue; cut a sample with the same cutter and try it',
    ),
    note(
      'timber moves between cutting and glueing: keep parts and slots in one room, and fit them the day they are cut',
    ),
  ],
  chart: (given, answer) => {
    const [low, high] = [given.tightest * 1000, given.loosest * 1000];
    const sd = Math.max(answer.spread * 1000, (high - low) / 500, 1e-6);
    const from = Math.min(low, answer.clearance * 1000 - 4 * sd, (low + high) / 2 - 4 * sd);
    const to = Math.max(high, answer.clearance * 1000 + 4 * sd, (low + high) / 2 + 4 * sd);
    const xs = Array.from({ length: 161 }, (_, i) => from + ((to - from) * i) / 160);
    const own = (mean: number) => xs.map((x) => densityNormal(x, mean, sd));
    const top = densityNormal(0, 0, sd);
    return lineChart({
      title: 'How the clearance comes out',
      subtitle: `${(answer.chanceFits * 100).toFixed(1)} % fit, ${(answer.chanceJams * 100).toFixed(1)} % jam, ${(answer.chanceLoose * 100).toFixed(1)} % are loose; planed to ${(answer.aim * 1000).toFixed(2)} mm, ${(answer.chanceAtAim * 100).toFixed(1)} % fit.`,
      x: { title: 'Clearance, slot less part', unit: 'mm', values: xs },
      y: { title: 'How often', unit: 'per mm', domain: [0, top * 1.15] },
      series: [
        { name: 'as planned', values: own(answer.clearance * 1000) },
        { name: 'planed to the size to aim for', values: own((low + high) / 2) },
      ],
      bands: [
        {
          name: 'goes in and holds',
          low: xs.map(() => 0),
          high: xs.map((x) => (x >= low && x <= high ? top * 1.15 : 0)),
        },
      ],
      rules: [
        { x: low, label: 'tightest' },
        { x: high, label: 'loosest' },
      ],
      points: false,
    });
  },
  example: {
    slot: { size: '6.2 mm', plusMinus: '0.1 mm' },
    part: { size: '6.15 mm', plusMinus: '0.1 mm' },
    tightest: '0 mm',
    loosest: '0.2 mm',
    joints: 4,
  },
});

/** Chance that a normal value lies below x; a spread of nought decides outright. */
function below(x: number, mean: number, sd: number): number {
  if (sd > 0) return cumulativeNormal(x, mean, sd);
  return nanometres(mean) < nanometres(x) ? 1 : 0;
}
