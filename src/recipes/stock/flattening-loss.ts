import { lineChart } from '../../charts/lineChart.js';
import { Refusal } from '../../quantities/refusal.js';
import { danger, note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';

const depth = letter('length', 'depth of the curve as found', { in: 'mm' });

/** A shallow curve is a parabola: its depth falls with the square of the span that is left. */
export const curveLeft = formula({
  symbol: 'd_1',
  gives: letter('length', 'depth of the curve in the cut piece', { in: 'mm' }),
  text: 'd * (a / A)^2',
  where: {
    d: depth,
    a: letter('length', 'span of the cut piece', { in: 'mm' }),
    A: letter('length', 'span as found', { in: 'mm' }),
  },
  basis: 'geometry',
});

/** A twisted board is a saddle: with opposite corners shimmed alike, half of the lift comes off the two faces together. */
const twistLeft = formula({
  symbol: 'h_1',
  gives: letter('length', 'taken off both faces for twist', { in: 'mm' }),
  text: 'h / 2 * (w / W) * (l / L)',
  where: {
    h: letter('length', 'lift of the free corner as found', { in: 'mm' }),
    w: letter('length', 'width of the cut piece', { in: 'mm' }),
    W: letter('length', 'width as found', { in: 'mm' }),
    l: letter('length', 'length of the cut piece', { in: 'mm' }),
    L: letter('length', 'length as found', { in: 'mm' }),
  },
  basis: 'geometry',
});

const pieceSpan = formula({
  symbol: 'a',
  gives: letter('length', 'span of the cut piece', { in: 'mm' }),
  text: '(A - n k) / (n + 1)',
  where: {
    A: letter('length', 'span as found', { in: 'mm' }),
    n: letter('count', 'cuts'),
    k: letter('length', 'saw kerf', { in: 'mm' }),
  },
  basis: 'geometry',
});

const lost = formula({
  symbol: 'e',
  gives: letter('length', 'thickness lost', { in: 'mm' }),
  text: 'c + b + h_1 + 2 p',
  where: {
    c: letter('length', 'cup left', { in: 'mm' }),
    b: letter('length', 'bow left', { in: 'mm' }),
    h_1: letter('length', 'taken off for twist', { in: 'mm' }),
    p: letter('length', 'cleaned off each face once flat', { in: 'mm' }),
  },
  basis: 'geometry',
});

/**
 * How thin a cupped, bowed or twisted board gets by planing it flat, and how much of that is saved by ripping and
 * crosscutting first. The three are added up, the worst way they can meet. Not for kinks or for crook (edge bend).
 */
export const flatteningLoss = recipe({
  name: 'flatteningLoss',
  title: 'Loss in flattening',
  topic: 'stock',
  about:
    'How thin a cupped, bowed or twisted board gets by planing it flat, and what ripping or crosscutting it first saves. Not for kinks, nor for a bend along the edge.',
  sources: [],
  inputs: {
    thickness: field.length({ symbol: 't', says: 'rough thickness', above: '0 mm', max: '500 mm' }),
    width: field.length({ symbol: 'W', says: 'width as found', above: '0 mm', max: '3 m' }),
    length: field.length({ symbol: 'L', says: 'length as found', above: '0 mm', max: '30 m' }),
    cup: field.length({
      says: 'gap in the middle under a straightedge laid across the width',
      min: '0 mm',
      max: '300 mm',
      default: '0 mm',
    }),
    bow: field.length({
      says: 'gap in the middle under a line along the length',
      min: '0 mm',
      max: '2 m',
      default: '0 mm',
    }),
    twist: field.length({
      says: 'how far the fourth corner stands up when three lie on a flat bench',
      min: '0 mm',
      max: '1 m',
      default: '0 mm',
    }),
    rips: field.count({ says: 'cuts along the grain before planing', min: 0, max: 100, default: 0 }),
    crosscuts: field.count({ says: 'cuts across the grain before planing', min: 0, max: 100, default: 0 }),
    kerf: field.length({ says: 'saw kerf', min: '0 mm', max: '20 mm', default: '0 mm' }),
    cleanUp: field.length({
      says: 'cleaned off each face once flat',
      min: '0 mm',
      max: '20 mm',
      default: '0 mm',
    }),
  },
  outputs: {
    dressedThickness: out.length({ says: 'thickness once both faces are flat' }),
    loss: out.length({ says: 'thickness lost' }),
    pieceWidth: out.length({ says: 'width of a piece when flattened' }),
    pieceLength: out.length({ says: 'length of a piece when flattened' }),
    byCause: out.table(
      {
        cause: out.text({ says: 'cause' }),
        asFound: out.length({ says: 'depth in the whole board' }),
        lossWhole: out.length({ says: 'loss if planed whole' }),
        loss: out.length({ says: 'loss after the cuts' }),
      },
      { says: 'Loss by cause' },
    ),
  },
  formulas: [pieceSpan, curveLeft, twistLeft, lost],
  solve: (given, work) => {
    const { thickness: t, width: W, length: L, cup, bow, twist, rips, crosscuts, kerf: k, cleanUp } = given;
    if (cup * 4 > W)
      throw new Refusal({
        field: 'cup',
        says: `got ${(cup * 1000).toFixed(1)} mm over a width of ${(W * 1000).toFixed(0)} mm, takes a shallow curve of at most a quarter of the width`,
      });
    if (bow * 4 > L)
      throw new Refusal({
        field: 'bow',
        says: `got ${(bow * 1000).toFixed(1)} mm over a length of ${(L * 1000).toFixed(0)} mm, takes a shallow curve of at most a quarter of the length`,
      });
    if (rips * k >= W)
      throw new Refusal({
        field: 'rips',
        says: `got ${rips} cuts of ${(k * 1000).toFixed(1)} mm in a width of ${(W * 1000).toFixed(0)} mm; takes fewer`,
      });
    if (crosscuts * k >= L)
      throw new Refusal({
        field: 'crosscuts',
        says: `got ${crosscuts} cuts of ${(k * 1000).toFixed(1)} mm in a length of ${(L * 1000).toFixed(0)} mm; takes fewer`,
      });
    const w = work.apply(pieceSpan, { A: W, n: rips, k }, 'width of a piece');
    const l = work.apply(pieceSpan, { A: L, n: crosscuts, k }, 'length of a piece');
    const c = work.apply(
      curveLeft,
      { d: cup, a: w, A: W },
      'cup left in a piece, and lost in planing both faces flat',
    );
    const b = work.apply(
      curveLeft,
      { d: bow, a: l, A: L },
      'bow left in a piece, and lost in planing both faces flat',
    );
    const h_1 = work.apply(twistLeft, { h: twist, w, W, l, L });
    const e = work.apply(lost, { c, b, h_1, p: cleanUp });
    if (e >= t) work.say('Flattening takes the whole thickness: nothing is left of it.');
    return {
      dressedThickness: Math.max(0, t - e),
      loss: e,
      pieceWidth: w,
      pieceLength: l,
      byCause: [
        { cause: 'cup', asFound: cup, lossWhole: cup, loss: c },
        { cause: 'bow', asFound: bow, lossWhole: bow, loss: b },
        { cause: 'twist', asFound: twist, lossWhole: twist / 2, loss: h_1 },
        { cause: 'cleaning both faces', asFound: 0, lossWhole: 2 * cleanUp, loss: 2 * cleanUp },
      ],
    };
  },
  cautions: (given, answer) => [
    ...(answer.loss >= given.thickness
      ? [
          danger(
            'nothing is left after flattening: rip or crosscut it first, or use it where it need not be flat',
          ),
        ]
      : []),
    ...(answer.pieceLength < 0.3
      ? [
          danger(
            'a piece shorter than about 300 mm (common practice; the machine maker’s own limit rules) must not go through a planer or thicknesser: flatten it while it is still long, or by hand',
          ),
        ]
      : []),
    ...(answer.dressedThickness < 0.006 && answer.dressedThickness > 0
      ? [
          danger(
            'under about 6 mm a board may shatter in a thicknesser: keep to the machine maker’s least thickness',
          ),
        ]
      : []),
    note(
      'cup, bow and twist are added up, the worst way they can meet; a thicknesser alone presses bow flat and lets it spring back',
    ),
    danger('a metal detector first: nails, staples and grit break knives'),
  ],
  chart: (given, answer) => {
    const most = Math.max(10, Math.min(20, given.rips + 3));
    const rips = Array.from({ length: most + 1 }, (_, i) => i).filter((n) => n * given.kerf < given.width);
    const finished = (n: number, cuts: number): number => {
      const w = pieceSpan.of({ A: given.width, n, k: given.kerf });
      const l = pieceSpan.of({ A: given.length, n: cuts, k: given.kerf });
      const c = curveLeft.of({ d: given.cup, a: w, A: given.width });
      const b = curveLeft.of({ d: given.bow, a: l, A: given.length });
      const h_1 = twistLeft.of({ h: given.twist, w, W: given.width, l, L: given.length });
      return Math.max(0, given.thickness - lost.of({ c, b, h_1, p: given.cleanUp })) * 1000;
    };
    const cuts = given.crosscuts === 0 ? [0, 1] : [0, given.crosscuts];
    const name = (n: number): string =>
      n === 0 ? 'full length' : n === 1 ? 'cut once across' : `cut ${n} times across`;
    return lineChart({
      title: 'Finished thickness against number of rips',
      x: { title: 'Cuts along the grain', values: rips },
      y: { title: 'Finished thickness', unit: 'mm' },
      series: cuts.map((m) => ({ name: name(m), values: rips.map((n) => finished(n, m)) })),
      points: false,
      interpolate: 'linear',
      marks: [{ x: given.rips, y: answer.dressedThickness * 1000, label: 'these cuts' }],
      rules: [{ y: given.thickness * 1000, label: 'rough thickness' }],
    });
  },
  example: {
    thickness: '22 mm',
    width: '142 mm',
    length: '1.93 m',
    cup: '2.5 mm',
    bow: '4 mm',
    twist: '3 mm',
    rips: 1,
    crosscuts: 1,
  },
});
