import { InputError } from '../../units/input-error.js';
import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { nanometres } from '../../engine/nanometres.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { nullTrace } from '../../engine/trace.js';
import { timberField } from '../../materials/timber-field.js';
import { coefficientRule, greenRule, moveAcross } from './movement-model.js';
import { boardDrawing } from './board-drawing.js';
import { moistureOf, stateField, type Cut } from './wood-state.js';

const flat: Cut = { angle: 0, unknown: false };
const quarter: Cut = { angle: Math.PI / 2, unknown: false };

const cupRule = formula({
  symbol: 'c',
  result: variable('length', 'depth of the cup', { unit: 'mm' }),
  basis: 'estimate',
  expression: 'abs(e_T - e_R) w^2 / (8 R)',
  variables: {
    e_T: variable('share', 'strain along the rings'),
    e_R: variable('share', 'strain across the rings'),
    w: variable('length', 'width of the board', { unit: 'mm' }),
    R: variable('length', 'radius of the rings at the board', { unit: 'mm' }),
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
    width: field.length({ label: 'width of the board', above: '0 mm', max: '2 m' }),
    timber: timberField({
      needs: ['movement', 'shrinkage'],
      label: 'timber',
      help: 'A species, or a group for the middle of its range.',
    }),
    ringRadius: field.length({
      label: 'ring radius',
      help: 'Radius of the growth rings at the middle of the board, read off its end.',
      above: '0 mm',
      max: '5 m',
    }),
    from: stateField('starting moisture content'),
    to: stateField('final moisture content'),
  },
  outputs: {
    cup: out.length({ label: 'depth of cup', help: 'Depth of the hollow at the middle of the board.' }),
    side: out.text({ label: 'which face goes hollow' }),
    strainTangential: out.share({ label: 'strain along the rings' }),
    strainRadial: out.share({ label: 'strain across the rings' }),
  },
  formulas: [cupRule, coefficientRule, greenRule],
  solve: (given, trace) => {
    if (nanometres(given.width) > nanometres(2 * given.ringRadius)) {
      throw new InputError({
        field: 'ringRadius',
        message: `got ${(given.ringRadius * 1000).toFixed(1)} mm, takes at least half the width (${(given.width * 500).toFixed(1)} mm): a wider board is cut through the pith and is not flat-sawn across its whole width`,
      });
    }
    const [m, s] = [given.timber.movement(), given.timber.shrinkage()];
    if (!(m?.tangential && m.radial) && !(s?.tangential && s.radial)) {
      throw new InputError({
        field: 'timber',
        message: `${given.timber.name} has a published figure for one direction alone, and a cup comes from the difference of two; takes another species, or "unknown ${given.timber.group === 'softwood' ? 'softwood' : 'hardwood'}"`,
      });
    }
    const from = moistureOf(trace, given.from, 'from');
    const to = moistureOf(trace, given.to, 'to');
    const T = moveAcross(trace, { width: given.width, timber: given.timber, cut: flat }, from, to);
    const R = moveAcross(nullTrace, { width: given.width, timber: given.timber, cut: quarter }, from, to);
    const [eT, eR] = [T.change / given.width, R.change / given.width];
    trace.note(
      `Across the rings the same change of moisture gives ${(eR * 100).toFixed(3)} %, along them ${(eT * 100).toFixed(3)} %.`,
    );
    const cup = trace.evaluate(cupRule, { e_T: eT, e_R: eR, w: given.width, R: given.ringRadius });
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
      message:
        'the formula takes the rings as flat arcs: with a board wider than its ring radius it overstates the cup',
    },
  ],
  cautions: [
    note('a board wetted or dried on one face alone cups far more than this, and with the dry side hollow'),
  ],
  chart: (given, answer) =>
    boardDrawing({ ...given, ...answer, upward: answer.side.startsWith('the bark side') }),
  sentence: 'The cup is {cup}; {side}.',
  example: { width: '200 mm', timber: 'white oak', ringRadius: '150 mm', from: '14 %', to: '8 %' },
});
