import { lineChart } from '../../charts/lineChart.js';
import { Refusal } from '../../quantities/refusal.js';
import { note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { cite } from '../../recipe/source.js';
import { finishDangers } from './dangers.js';

const tin = letter('share', 'solids of the finish as it comes, by volume', { in: '%' });
const thinned = letter('share', 'solids of the thinned finish, by volume', { in: '%' });
const parts = letter('ratio', 'parts of thinner to one of finish');

const solidsAfter = formula({
  symbol: 'S',
  gives: thinned,
  text: 'S_0 / (1 + k)',
  where: { S_0: tin, k: parts },
  source: cite('strands-volume-solids', 'volume solids after thinning'),
});
const partsFor = formula({
  symbol: 'k',
  gives: parts,
  text: 'S_0 / S - 1',
  where: { S_0: tin, S: thinned },
  source: cite('strands-volume-solids', 'volume solids after thinning, turned round'),
});
const share = formula({
  symbol: 'p',
  gives: letter('share', 'thinner as a share of the mix', { in: '%' }),
  text: '100 k / (1 + k)',
  where: { k: parts },
  basis: 'definition',
});

/**
 * How far thinning takes the solids of a finish down, or how much thinner brings them to a wanted figure, such as a
 * wiping finish from a brushing one. Shares by volume; `thinnerParts` to one part of finish as it comes from the tin.
 * @throws Refusal when neither or both of target and thinnerParts are given, or the target is above the tin's solids
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
      says: 'solids of the finish as it comes, by volume, from its data sheet',
      above: '0 %',
      max: '100 %',
    }),
    target: field.share({
      symbol: 'S',
      says: 'solids wanted after thinning',
      above: '0 %',
      max: '100 %',
      optional: true,
    }),
    thinnerParts: field.ratio({
      symbol: 'k',
      says: 'parts of thinner to one part of finish',
      min: 0,
      max: 1000,
      optional: true,
    }),
  },
  outputs: {
    thinnerParts: out.ratio({ says: 'parts of thinner to one part of finish' }),
    solids: out.share({ says: 'solids of the mix, by volume' }),
    thinnerShare: out.share({ says: 'thinner as a share of the mix' }),
    perLitre: out.liquid({ says: 'thinner to a litre of finish' }),
  },
  formulas: [solidsAfter, partsFor, share],
  solve: (given, work) => {
    const S_0 = given.volumeSolids;
    if ((given.target === undefined) === (given.thinnerParts === undefined)) {
      throw new Refusal({
        field: 'target',
        says: `got ${given.target === undefined ? 'neither target nor thinnerParts' : 'target and thinnerParts both'}, takes one of them: the solids wanted, such as "20 %", or the parts of thinner, such as 0.5`,
      });
    }
    const target = given.target ?? 0;
    if (target > S_0) {
      throw new Refusal({
        field: 'target',
        says: `got ${(target * 100).toPrecision(3)} %, takes at most the ${(S_0 * 100).toPrecision(3)} % of the finish itself: thinner only brings solids down`,
      });
    }
    const k = given.thinnerParts ?? work.apply(partsFor, { S_0, S: given.target as number });
    const solids = work.apply(solidsAfter, { S_0, k });
    return { thinnerParts: k, solids, thinnerShare: work.apply(share, { k }), perLitre: k * 1e-3 };
  },
  cautions: (_given, answer) => [
    ...finishDangers([]),
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
      x: { title: 'Parts of thinner to one of finish', values: ks },
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
  example: { volumeSolids: '42 %', target: '28 %' },
});
