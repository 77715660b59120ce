import { drawing, type Place, type Shape } from '../../charts/drawing.js';
import { Refusal } from '../../quantities/refusal.js';
import { note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { silentWork } from '../../recipe/work.js';
import { timberField } from '../../timber/field.js';
import { moveAcross, movementFormulas } from './across-grain.js';
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
    if (given.width > 2 * given.ringRadius) {
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
    const side =
      eT === eR
        ? 'neither: it stays flat'
        : eT < eR
          ? 'the bark side goes hollow: the rings straighten as it dries'
          : 'the heart side goes hollow: the rings bend further as it takes up moisture';
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
  chart: (given, answer) => {
    const w = given.width * 1000;
    const R = given.ringRadius * 1000;
    const t = Math.max(w * 0.14, 12);
    const cup = answer.cup * 1000;
    const times = cup < 1e-6 ? 1 : Math.max(1, Math.min(50, Math.round((w * 0.08) / cup)));
    const sign = answer.side.startsWith('bark side', 4) ? 1 : -1;
    // Bark side up. Drying lifts the edges, so that the upper face goes hollow.
    const lift = (x: number): number => sign * cup * times * ((2 * x) / w) ** 2;
    const xs = Array.from({ length: 41 }, (_, i) => -w / 2 + (w * i) / 40);
    const outline: Place[] = [
      ...xs.map((x): Place => [x, lift(x)]),
      ...[...xs].reverse().map((x): Place => [x, lift(x) + t]),
    ];
    const rings = [0.25, 0.5, 0.75].map((k): Shape => ({
      kind: 'polyline',
      weight: 0.8,
      points: xs
        .filter((x) => ringAt(x, R, t, k) > 0 && ringAt(x, R, t, k) < t)
        .map((x): Place => [x, ringAt(x, R, t, k) + lift(x)]),
    }));
    return drawing({
      title: 'The board seen at its end',
      subtitle: `Bark side up. Cup of ${cup.toFixed(1)} mm${times > 1 ? `, drawn ${times} times as deep` : ''}: ${answer.side.split(':')[0]}.`,
      shapes: [
        { kind: 'polygon', points: outline, fill: 'wood' },
        ...rings.filter((r) => r.kind === 'polyline' && r.points.length > 1),
        {
          kind: 'dimension',
          from: [-w / 2, Math.max(lift(w / 2), 0) + t],
          to: [w / 2, Math.max(lift(w / 2), 0) + t],
          text: `${w.toFixed(0)} mm`,
          offset: 16,
        },
      ],
    });
  },
  example: { width: '200 mm', timber: 'white oak', ringRadius: '150 mm', from: '14 %', to: '8 %' },
});

/** Height of a ring above the lower face: an arc about the pith below. */
function ringAt(x: number, R: number, t: number, k: number): number {
  const r = R + t * k;
  return Math.abs(x) < r ? Math.sqrt(r * r - x * x) - R : -1;
}
