import { cumulativeNormal, densityNormal } from 'vega-statistics';
import { lineChart } from '../../charts/line-chart.js';
import { note } from '../../engine/caution.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import type { Trace } from '../../engine/trace.js';
import { InputError } from '../../units/input-error.js';
import { nanometres } from '../../engine/nanometres.js';
import { chanceAllFit } from './common-error.js';
import { jointFitFields } from './joint-fit-fields.js';

const mm = (label: string) => variable('length', label, { unit: 'mm' });

const clearance = formula({
  symbol: 'c',
  result: mm('clearance on average: slot less part'),
  expression: 'S - P',
  variables: { S: mm('size of the slot'), P: mm('size of the part') },
  basis: 'definition',
});
const spreadOf = formula({
  symbol: 'sigma',
  result: mm('standard deviation of the clearance'),
  expression: 'sqrt(t_S^2 + t_P^2 + t_c^2) / z',
  variables: {
    t_S: mm('tolerance of the slot, plus and minus'),
    t_P: mm('tolerance of the part, plus and minus'),
    t_c: mm('tolerance of the setting that all joints share, plus and minus'),
    z: variable('ratio', 'standard deviations in a tolerance'),
  },
  basis: 'definition',
});
const mostOff = formula({
  symbol: 'c_max',
  result: mm('clearance at most over or under its average'),
  expression: 't_S + t_P + t_c',
  variables: {
    t_S: mm('tolerance of the slot, plus and minus'),
    t_P: mm('tolerance of the part, plus and minus'),
    t_c: mm('tolerance of the setting that all joints share, plus and minus'),
  },
  basis: 'definition',
});
const aimOf = formula({
  symbol: 'P_0',
  result: mm('size to plane the part to'),
  expression: 'S - (c_1 + c_2) / 2',
  variables: {
    S: mm('size of the slot'),
    c_1: mm('tightest clearance that goes in'),
    c_2: mm('loosest clearance that holds'),
  },
  basis: 'geometry',
});

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
  inputs: jointFitFields,
  outputs: {
    chanceFits: out.share({ label: 'chance of a fit', help: 'Chance that it goes in and holds.' }),
    chanceJams: out.share({ label: 'chance too tight', help: 'Chance that it will not go in.' }),
    chanceLoose: out.share({ label: 'chance too loose', help: 'Chance that it is loose.' }),
    chanceAll: out.share({ label: 'chance all fit', help: 'Chance that all the joints fit.' }),
    worstTight: out.length({ label: 'tightest clearance', help: 'Clearance of the worst pair, tight.' }),
    worstLoose: out.length({ label: 'loosest clearance', help: 'Clearance of the worst pair, loose.' }),
    worstCase: out.text({ label: 'worst pair', help: 'Whether even the worst pair fits.' }),
    clearance: out.length({ label: 'clearance on average' }),
    spread: out.length({ label: 'spread of clearance', help: 'Standard deviation of the clearance.' }),
    aim: out.length({ label: 'size to aim for', help: 'Size to plane the part to.' }),
    chanceAtAim: out.share({
      label: 'chance when aimed',
      help: 'Chance that it fits when planed to that size.',
    }),
  },
  formulas: [clearance, spreadOf, mostOff, aimOf],
  solve: (given, trace) => {
    const { slot, part, tightest, loosest, setting: t_c } = given;
    if (loosest <= tightest)
      throw new InputError({
        field: 'loosest',
        message: `got ${(loosest * 1000).toFixed(3)} mm, takes more than the tightest clearance of ${(tightest * 1000).toFixed(3)} mm`,
      });
    const c = trace.evaluate(clearance, { S: slot.size, P: part.size });
    const sd = trace.evaluate(spreadOf, { t_S: slot.plusMinus, t_P: part.plusMinus, t_c, z: given.sigmas });
    const off = trace.evaluate(mostOff, { t_S: slot.plusMinus, t_P: part.plusMinus, t_c });
    const aim = trace.evaluate(aimOf, { S: slot.size, c_1: tightest, c_2: loosest });
    if (aim <= 0)
      throw new InputError({
        field: 'slot',
        message: 'the clearances wanted leave no part; takes a larger slot',
      });
    const jams = below(tightest, c, sd);
    const loose = below(-loosest, -c, sd);
    const fits = Math.max(0, 1 - jams - loose);
    trace.note(
      `Chances from the normal distribution of the clearance, between ${(tightest * 1000).toFixed(2)} and ${(loosest * 1000).toFixed(2)} mm.`,
    );
    const middle = (tightest + loosest) / 2;
    return {
      chanceFits: fits,
      chanceJams: jams,
      chanceLoose: loose,
      chanceAll: allFit({ ...given, mean: c, spread: sd }, fits, trace),
      worstTight: c - off,
      worstLoose: c + off,
      worstCase: worstWords(c - off, c + off, tightest, loosest),
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
      'timber moves between cutting and gluing: keep parts and slots in the same air, and fit them the day they are cut',
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
  sentence: (_given, out) =>
    `{chanceFits} of the joints fit; {chanceJams} jam and {chanceLoose} are loose.${out.chanceAtAim > out.chanceFits + 0.01 ? ' Plane the part to {aim}: then {chanceAtAim} fit.' : ''}`,
  mending: {
    fails: (_given, out) => out.chanceAtAim > out.chanceFits + 0.01,
    saidBySentence: 'the size to aim for is an output of the recipe itself',
  },
  example: {
    slot: { size: '6.2 mm', plusMinus: '0.1 mm' },
    part: { size: '6.15 mm', plusMinus: '0.1 mm' },
    tightest: '0 mm',
    loosest: '0.2 mm',
    joints: 4,
  },
});

/** Chance that a normal value lies below x; a spread of zero decides outright. */
function below(x: number, mean: number, sd: number): number {
  if (sd > 0) return cumulativeNormal(x, mean, sd);
  return nanometres(mean) < nanometres(x) ? 1 : 0;
}

/** Chance that all joints fit: the setting is one for all, what is left of the spread is each joint's own. */
function allFit(
  g: {
    readonly tightest: number;
    readonly loosest: number;
    readonly mean: number;
    readonly spread: number;
    readonly setting: number;
    readonly sigmas: number;
    readonly joints: number;
  },
  one: number,
  trace: Trace,
): number {
  if (g.setting === 0) return one ** g.joints;
  const common = g.setting / g.sigmas;
  const own = Math.sqrt(Math.max(0, g.spread ** 2 - common ** 2));
  trace.note(
    'The setting is off by the same in every joint: the chance that all fit is weighed over where it may be, instead of multiplied.',
  );
  return chanceAllFit({ ...g, own, common }, g.joints);
}

/** The worst pair in words. */
function worstWords(tight: number, loose: number, tightest: number, loosest: number): string {
  const jams = nanometres(tight) < nanometres(tightest);
  const slack = nanometres(loose) > nanometres(loosest);
  return jams && slack
    ? 'the tightest pair jams and the loosest is loose'
    : jams
      ? 'the tightest pair jams'
      : slack
        ? 'the loosest pair is loose'
        : 'even the worst pairs fit';
}
