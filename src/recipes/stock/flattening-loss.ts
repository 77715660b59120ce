import { lineChart } from '../../charts/line-chart.js';
import { InputError } from '../../units/input-error.js';
import { danger, note } from '../../engine/caution.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { flatteningLossFields } from './flattening-loss-fields.js';

const depth = variable('length', 'depth of the curve as found', { unit: 'mm' });

/** A shallow curve is a parabola: its depth falls with the square of the span that is left. */
export const curveLeft = formula({
  symbol: 'd_1',
  result: variable('length', 'depth of the curve in the cut piece', { unit: 'mm' }),
  expression: 'd * (a / A)^2',
  variables: {
    d: depth,
    a: variable('length', 'span of the cut piece', { unit: 'mm' }),
    A: variable('length', 'span as found', { unit: 'mm' }),
  },
  basis: 'geometry',
});

/** A twisted board is a saddle: with opposite corners shimmed alike, half of the lift comes off the two faces together. */
const twistLeft = formula({
  symbol: 'h_1',
  result: variable('length', 'taken off both faces for twist', { unit: 'mm' }),
  expression: 'h / 2 * (w / W) * (l / L)',
  variables: {
    h: variable('length', 'lift of the free corner as found', { unit: 'mm' }),
    w: variable('length', 'width of the cut piece', { unit: 'mm' }),
    W: variable('length', 'width as found', { unit: 'mm' }),
    l: variable('length', 'length of the cut piece', { unit: 'mm' }),
    L: variable('length', 'length as found', { unit: 'mm' }),
  },
  basis: 'geometry',
});

const pieceSpan = formula({
  symbol: 'a',
  result: variable('length', 'span of the cut piece', { unit: 'mm' }),
  expression: '(A - n k) / (n + 1)',
  variables: {
    A: variable('length', 'span as found', { unit: 'mm' }),
    n: variable('count', 'cuts'),
    k: variable('length', 'saw kerf', { unit: 'mm' }),
  },
  basis: 'geometry',
});

const lost = formula({
  symbol: 'e',
  result: variable('length', 'thickness lost', { unit: 'mm' }),
  expression: 'c + b + h_1 + 2 p',
  variables: {
    c: variable('length', 'cup left', { unit: 'mm' }),
    b: variable('length', 'bow left', { unit: 'mm' }),
    h_1: variable('length', 'taken off for twist', { unit: 'mm' }),
    p: variable('length', 'cleaned off each face once flat', { unit: 'mm' }),
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
  inputs: flatteningLossFields,
  outputs: {
    dressedThickness: out.length({
      label: 'flattened thickness',
      help: 'Thickness once both faces are flat.',
    }),
    loss: out.length({ label: 'thickness lost' }),
    pieceWidth: out.length({ label: 'piece width', help: 'Width of a piece when flattened.' }),
    pieceLength: out.length({ label: 'piece length', help: 'Length of a piece when flattened.' }),
    byCause: out.table(
      {
        cause: out.text({ label: 'cause' }),
        asFound: out.length({ label: 'depth in board', help: 'Depth in the whole board.' }),
        lossWhole: out.length({ label: 'loss if planed whole' }),
        loss: out.length({ label: 'loss after the cuts' }),
      },
      { label: 'Loss by cause' },
    ),
  },
  formulas: [pieceSpan, curveLeft, twistLeft, lost],
  solve: (given, trace) => {
    const { thickness: t, width: W, length: L, cup, bow, twist, rips, crosscuts, kerf: k, cleanUp } = given;
    if (cup * 4 > W)
      throw new InputError({
        field: 'cup',
        message: `got ${(cup * 1000).toFixed(1)} mm over a width of ${(W * 1000).toFixed(0)} mm, takes a shallow curve of at most a quarter of the width`,
      });
    if (bow * 4 > L)
      throw new InputError({
        field: 'bow',
        message: `got ${(bow * 1000).toFixed(1)} mm over a length of ${(L * 1000).toFixed(0)} mm, takes a shallow curve of at most a quarter of the length`,
      });
    if (rips * k >= W)
      throw new InputError({
        field: 'rips',
        message: `got ${rips} cuts of ${(k * 1000).toFixed(1)} mm in a width of ${(W * 1000).toFixed(0)} mm; takes fewer`,
      });
    if (crosscuts * k >= L)
      throw new InputError({
        field: 'crosscuts',
        message: `got ${crosscuts} cuts of ${(k * 1000).toFixed(1)} mm in a length of ${(L * 1000).toFixed(0)} mm; takes fewer`,
      });
    const w = trace.evaluate(pieceSpan, { A: W, n: rips, k }, 'width of a piece');
    const l = trace.evaluate(pieceSpan, { A: L, n: crosscuts, k }, 'length of a piece');
    const c = trace.evaluate(
      curveLeft,
      { d: cup, a: w, A: W },
      'cup left in a piece, and lost in planing both faces flat',
    );
    const b = trace.evaluate(
      curveLeft,
      { d: bow, a: l, A: L },
      'bow left in a piece, and lost in planing both faces flat',
    );
    const h_1 = trace.evaluate(twistLeft, { h: twist, w, W, l, L });
    const e = trace.evaluate(lost, { c, b, h_1, p: cleanUp });
    if (e >= t) trace.note('Flattening takes the whole thickness: nothing is left of it.');
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
          note(
            'rip or crosscut it first, or use it where it need not be flat: nothing is left after flattening',
          ),
        ]
      : []),
    ...(answer.pieceLength < 0.3
      ? [
          danger(
            'flatten a piece while it is still long, or by hand: shorter than about 300 mm (common practice; the machine maker’s own limit rules) it must not go through a planer or thicknesser',
          ),
        ]
      : []),
    ...(answer.dressedThickness < 0.006 && answer.dressedThickness > 0
      ? [
          danger(
            'keep to the machine maker’s least thickness: under about 6 mm a board may shatter in a thicknesser',
          ),
        ]
      : []),
    note(
      'cup, bow and twist are added up, the worst way they can meet; a thicknesser alone presses bow flat and lets it spring back',
    ),
    danger('go over the timber with a metal detector first: nails, staples and grit break knives'),
  ],
  chart: (given, answer) => {
    const most = Math.max(10, Math.min(20, given.rips + 3));
    const rips = Array.from({ length: most + 1 }, (_, i) => i).filter((n) => n * given.kerf < given.width);
    const finished = (n: number, cuts: number): number => {
      const w = pieceSpan.evaluate({ A: given.width, n, k: given.kerf });
      const l = pieceSpan.evaluate({ A: given.length, n: cuts, k: given.kerf });
      const c = curveLeft.evaluate({ d: given.cup, a: w, A: given.width });
      const b = curveLeft.evaluate({ d: given.bow, a: l, A: given.length });
      const h_1 = twistLeft.evaluate({ h: given.twist, w, W: given.width, l, L: given.length });
      return Math.max(0, given.thickness - lost.evaluate({ c, b, h_1, p: given.cleanUp })) * 1000;
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
  sentence: (_given, out) =>
    out.dressedThickness > 0
      ? 'Flattening takes {loss}: {dressedThickness} is left.'
      : 'Flattening takes {loss}: nothing is left.',
  mending: {
    fails: (_given, out) => out.dressedThickness <= 0,
    remedies: [
      { input: 'rips', direction: 'up', step: 1, kind: 'count', reach: 6, say: 'rip it {value} times first' },
      {
        input: 'crosscuts',
        direction: 'up',
        step: 1,
        kind: 'count',
        reach: 6,
        say: 'crosscut it {value} times first',
      },
    ],
    then: '{dressedThickness} is left',
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
