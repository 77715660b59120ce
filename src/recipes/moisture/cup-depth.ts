import { Refusal } from '../../quantities/refusal.js';
import { note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { nanometres } from '../../recipe/nanometre.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { silentWork } from '../../recipe/work.js';
import { timberField } from '../../timber/field.js';
import { moveAcross, movementFormulas } from './across-grain.js';
import { boardPicture } from './board-picture.js';
import { moistureOf, stateField, type Cut } from './wood-state.js';

const flat: Cut = { angle: 0, unknown: false };
const quarter: Cut = { angle: Math.PI / 2, unknown: false };

const cupRule = formula({
  symbol: 'c',
  gives: letter('length', 'depth of the cup', { in: 'mm' }),
  basis: 'estimate',
  text: 'abs(e_T - e_R) w^2 / (8 R)',
  where: {
    e_T: letter('share', 'strain along the rings'),
    e_R: letter('share', 'strain across the rings'),
    w: letter('length', 'width of the board', { in: 'mm' }),
    R: letter('length', 'radius of the rings at the board', { in: 'mm' }),
  },
});

/**
 * How deep a flat-sawn board cups when it dries or takes up moisture, and which way. An estimate for a board free to move, with the
 * pith below its middle; salvaged boards carry old strains that no formula knows.
 */
export const cupDepth = recipe({
  name: 'cupDepth',
  title: 'Cup of a flat-sawn board',
  topic: 'moisture',
  about:
    'Depth of the cup of a flat-sawn board when its moisture changes, because wood moves more along the rings than across them, and which face goes hollow. For narrow strips cut from it the depth falls with the square of the width.',
  sources: [],
  inputs: {
    width: field.length({ says: 'width of the board', above: '0 mm', max: '2 m' }),
    timber: timberField({
      needs: ['movement', 'shrinkage'],
      says: 'species, or a group for the middle of its range',
    }),
    ringRadius: field.length({
      says: 'radius of the growth rings at the middle of the board, read off its end',
      above: '0 mm',
      max: '5 m',
    }),
    from: stateField('moisture at first, or air'),
    to: stateField('moisture at last, or air'),
  },
  outputs: {
    cup: out.length({ says: 'depth of the hollow at the middle of the board' }),
    side: out.text({ says: 'which face goes hollow' }),
    strainTangential: out.share({ says: 'strain along the rings' }),
    strainRadial: out.share({ says: 'strain across the rings' }),
  },
  formulas: [cupRule, ...movementFormulas],
  solve: (given, work) => {
    if (nanometres(given.width) > nanometres(2 * given.ringRadius)) {
      throw new Refusal({
        field: 'ringRadius',
        says: `got ${(given.ringRadius * 1000).toFixed(1)} mm, takes at least half the width (${(given.width * 500).toFixed(1)} mm): a wider board is cut through the pith and is not flat-sawn across its whole width`,
      });
    }
    const [m, s] = [given.timber.movement(), given.timber.shrinkage()];
    if (!(m?.tangential && m.radial) && !(s?.tangential && s.radial)) {
      throw new Refusal({
        field: 'timber',
        says: `${given.timber.name} has a published figure for one direction alone, and a cup comes from the difference of two; takes another species, or "unknown ${given.timber.group === 'softwood' ? 'softwood' : 'hardwood'}"`,
      });
    }
    const from = moistureOf(work, given.from, 'from');
    const to = moistureOf(work, given.to, 'to');
    const T = moveAcross(work, { width: given.width, timber: given.timber, cut: flat }, from, to);
    const R = moveAcross(silentWork, { width: given.width, timber: given.timber, cut: quarter }, from, to);
    const [eT, eR] = [T.change / given.width, R.change / given.width];
    work.say(
      `Across the rings the same change of moisture gives ${(eR * 100).toFixed(3)} %, along them ${(eT * 100).toFixed(3)} %.`,
    );
    const cup = work.apply(cupRule, { e_T: eT, e_R: eR, w: given.width, R: given.ringRadius });
    const side = [
      'the bark side goes hollow: the rings straighten as it dries',
      'neither: it stays flat',
      'the heart side goes hollow: the rings bend further as it takes up moisture',
    ][Math.sign(eT - eR) + 1] as string;
    return { cup, side, strainTangential: eT, strainRadial: eR };
  },
  limits: [
    {
      when: (g) => g.width > g.ringRadius,
      says: 'the formula takes the rings as flat arcs: with a board wider than its ring radius it overstates the cup',
    },
  ],
  cautions: [
    note('a board wetted or dried on one face alone cups far more than this, and with the dry side hollow'),
  ],
  chart: (given, answer) =>
    boardPicture({ ...given, ...answer, upward: answer.side.startsWith('the bark side') }),
  example: { width: '200 mm', timber: 'white oak', ringRadius: '150 mm', from: '14 %', to: '8 %' },
});
