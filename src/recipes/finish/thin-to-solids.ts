import { lineChart } from '../../charts/line-chart.js';
import { InputError } from '../../units/input-error.js';
import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { finishHazards } from './hazards.js';

const tin = variable('share', 'solids of the finish as it comes, by volume', { unit: '%' });
const thinned = variable('share', 'solids of the thinned finish, by volume', { unit: '%' });
const parts = variable('ratio', 'parts of thinner to one of finish');

const solidsAfter = formula({
  symbol: 'S',
  result: thinned,
  expression: 'S_0 / (1 + k)',
  variables: { S_0: tin, k: parts },
  source: cite('strands-volume-solids', 'volume solids after thinning'),
});
const partsFor = formula({
  symbol: 'k',
  result: parts,
  expression: 'S_0 / S - 1',
  variables: { S_0: tin, S: thinned },
  source: cite('strands-volume-solids', 'volume solids after thinning, turned round'),
});
const share = formula({
  symbol: 'p',
  result: variable('share', 'thinner as a share of the mix', { unit: '%' }),
  expression: 'k / (1 + k)',
  variables: { k: parts },
  basis: 'definition',
});

/**
 * How far thinning takes the solids of a finish down, or how much thinner brings them to a wanted figure, such as a
 * wiping finish from a brushing one. Shares by volume; `thinnerParts` to one part of finish as it comes from the tin.
 * @throws InputError when neither or both of target and thinnerParts are given, or the target is above the tin's solids
 */
export const thinToSolids = recipe({
  name: 'thinToSolids',
  title: 'Thinning a finish to a wanted strength',
  topic: 'finish',
  about:
    'The solids a finish has once thinned, or how much thinner brings it to the solids wanted. By volume; not for two-pack finishes beyond what their maker allows.',
  sources: [],
  inputs: {
    volumeSolids: field.share({
      symbol: 'S_0',
      label: 'solids as bought',
      help: 'Solids by volume of the finish as bought, from its data sheet.',
      above: '0 %',
      max: '100 %',
    }),
    target: field.share({
      symbol: 'S',
      label: 'solids wanted after thinning',
      above: '0 %',
      max: '100 %',
      optional: true,
    }),
    thinnerParts: field.ratio({
      symbol: 'k',
      label: 'parts of thinner',
      help: 'Parts of thinner to one part of finish.',
      min: 0,
      max: 1000,
      optional: true,
    }),
  },
  outputs: {
    thinnerParts: out.ratio({ label: 'parts of thinner', help: 'Parts of thinner to one part of finish.' }),
    solids: out.share({ label: 'solids of the mix', help: 'Solids of the mix by volume.' }),
    thinnerShare: out.share({ label: 'share of thinner', help: 'Thinner as a share of the mix.' }),
    perLitre: out.liquid({ label: 'thinner per litre', help: 'Thinner to one litre of finish.' }),
  },
  formulas: [solidsAfter, partsFor, share],
  solve: (given, trace) => {
    const S_0 = given.volumeSolids;
    if ((given.target === undefined) === (given.thinnerParts === undefined)) {
      throw new InputError({
        field: 'target',
        message: `got ${given.target === undefined ? 'neither target nor thinnerParts' : 'target and thinnerParts both'}, takes one of them: the solids wanted, such as "20 %", or the parts of thinner, such as 0.5`,
      });
    }
    const target = given.target ?? 0;
    if (target > S_0) {
      throw new InputError({
        field: 'target',
        message: `got ${(target * 100).toPrecision(3)} %, takes at most the ${(S_0 * 100).toPrecision(3)} % of the finish itself: thinner only brings solids down`,
      });
    }
    const k = given.thinnerParts ?? trace.evaluate(partsFor, { S_0, S: given.target as number });
    const solids = trace.evaluate(solidsAfter, { S_0, k });
    return { thinnerParts: k, solids, thinnerShare: trace.evaluate(share, { k }), perLitre: k * 1e-3 };
  },
  cautions: (_given, answer) => [
    ...finishHazards([]),
    ...(answer.solids < 0.1
      ? [
          note(
            'below some 10 % of solids several more coats are needed for the same film: see filmBuild (common practice)',
          ),
        ]
      : []),
    note('thin no further than the tin allows: past it a finish may not form a film or dry'),
  ],
  chart: (given, answer) => {
    const ks = Array.from({ length: 41 }, (_, i) => (Math.max(1, answer.thinnerParts * 2) * i) / 40);
    return lineChart({
      title: 'Solids against thinner',
      x: { title: 'Thinner to one of finish', values: ks },
      y: { title: 'Solids by volume', unit: '%', zero: true },
      series: [{ name: 'mix', values: ks.map((k) => (given.volumeSolids * 100) / (1 + k)) }],
      marks: [
        {
          x: answer.thinnerParts,
          y: answer.solids * 100,
          label: `1 : ${Number(answer.thinnerParts.toPrecision(3))} leaves ${Number((answer.solids * 100).toPrecision(3))} %`,
        },
      ],
    });
  },
  sentence: 'Add {perLitre} of thinner to a litre: {solids} of it is then solids.',
  example: { volumeSolids: '42 %', target: '28 %' },
});
